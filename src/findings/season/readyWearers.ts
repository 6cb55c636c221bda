/** The day as it was made ready, for the pages of the day itself: who is still to wear what, and which label is free for it. */
import type { Book, DayPlanRecord } from '#records/book.ts';

export type ReadyWearer = NonNullable<DayPlanRecord['prepared']>['wearers'][number] & {
  /** Number of the label made for this worker and not on a cassette yet; null = none. */
  readonly sampleNumber: string | null;
};

interface Whose {
  readonly workerId: string | null;
  readonly blank: boolean;
}

/** Numbers of labels of that day which are on no cassette yet, in the order in which they were made. */
export function freeLabels(book: Book, shiftId: string, { workerId, blank }: Whose): readonly string[] {
  const used = new Set([...book.samples.values()].map(({ sampleNumber }) => sampleNumber));
  return (book.dayPlans.get(shiftId)?.labels ?? [])
    .filter((label) => label.workerId === workerId && label.blank === blank && !used.has(label.sampleNumber))
    .map(({ sampleNumber }) => sampleNumber);
}

/** Those who have no cassette on this day yet, a void one left out. */
export function readyWearers(book: Book, shiftId: string): readonly ReadyWearer[] {
  const wearing = new Set(
    [...book.samples.values()]
      .filter((one) => one.shiftId === shiftId && one.sampleKind === 'air' && !one.voided)
      .map(({ workerId }) => workerId),
  );
  return (book.dayPlans.get(shiftId)?.prepared?.wearers ?? [])
    .filter(({ workerId }) => !wearing.has(workerId))
    .map((wearer) => ({
      ...wearer,
      sampleNumber: freeLabels(book, shiftId, { workerId: wearer.workerId, blank: false })[0] ?? null,
    }));
}
