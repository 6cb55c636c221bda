/** Who of the day made ready is still to wear a pump, and who does not wear one today, as it was noted in the plans. */
import { type ReadyWearer, readyWearers } from '#findings/season/readyWearers.ts';
import type { PlanRecord } from '#records/book.ts';
import { useRecordsNamed } from '#store/hooks/useRecordsNamed.ts';
import type { ShiftDay } from './useShift.ts';

export interface NotToday {
  readonly wearer: ReadyWearer;
  readonly missed: PlanRecord['missed'][number];
}

export interface StillToWear {
  readonly wearers: readonly ReadyWearer[];
  readonly notToday: readonly NotToday[];
}

/** undefined while the plans are looked up. */
export function useStillToWear({ book, place: { shift } }: ShiftDay): StillToWear | undefined {
  const ready = readyWearers(book, shift.id);
  const keys = ready.flatMap(({ planId }) => (planId === null ? [] : [`plan:${planId}`]));
  const plans = useRecordsNamed([...new Set(keys)])?.plans;
  if (plans === undefined) return undefined;
  const wearers: ReadyWearer[] = [];
  const notToday: NotToday[] = [];
  for (const wearer of ready) {
    const missed = plans
      .get(wearer.planId ?? '')
      ?.missed.findLast((one) => one.workerId === wearer.workerId && one.workOn === shift.workOn);
    if (missed === undefined) wearers.push(wearer);
    else notToday.push({ wearer, missed });
  }
  return { wearers, notToday };
}
