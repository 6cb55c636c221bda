/**
 * What costs once each: an analysis, a blank, a cassette, a box, a rented pump or meter for a day. Planned ones from the places of plans;
 * those to come from what was taken and from the places still to do, before bills are taken off.
 */
import type { Book, PlanRecord, PumpRecord, SampleRecord } from '#records/book.ts';
import { blanksNeeded } from '../blanks.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { dayOfShift, wasWorn } from '../duties/groups/taskGroups.ts';
import type { MoneyKind, PriceName } from './moneyFinding.ts';
import { planStanding, type SlotFinding } from './plan.ts';

export interface Unit {
  readonly of: MoneyKind;
  readonly price: PriceName;
  readonly siteId: string | null;
  /** The day whose price holds: its own, or today where it is still open. */
  readonly on: string;
  /** Of what is rented: which piece of gear, on which day. */
  readonly gearDay?: string;
}

/** One worker and day of a plan. */
export interface Slot {
  readonly siteId: string | null;
  /** The site of the plan, or the plan where it names none: what was planned together stays together once a part of it was measured. */
  readonly jobKey: string;
  readonly workerId: string;
  /** null: still open. */
  readonly workOn: string | null;
  readonly toDo: boolean;
  readonly cassettesCount: number;
}

export interface Time {
  readonly fromOn: string;
  readonly toOn: string;
  readonly today: string;
}

export const isWithin = (day: string, { fromOn, toOn }: Pick<Time, 'fromOn' | 'toOn'>): boolean =>
  fromOn <= day && day <= toOn;

/** A place without a day belongs to a time that is not over, of a plan that was made by its end. */
function isSlotWithin(workOn: string | null, plan: PlanRecord, time: Time): boolean {
  if (workOn !== null) return isWithin(workOn, time);
  return time.today <= time.toOn && (plan.plannedAt ?? '').slice(0, 10) <= time.toOn;
}

/** null: not of that time. */
function slotOf(plan: PlanRecord, slot: SlotFinding, duties: DutiesOfBook, time: Time): Slot | null {
  const toDo = slot.state === 'toDo';
  const workOn = toDo ? slot.workOn : (slot.measuredOn ?? slot.workOn);
  if (!isSlotWithin(workOn, plan, time)) return null;
  const measured = toDo ? undefined : duties.measurements.get(slot.measurementId ?? '');
  const siteId = plan.siteId ?? measured?.siteId ?? null;
  const { cassettesCount } = plan;
  return { siteId, jobKey: plan.siteId ?? plan.id, workerId: slot.workerId, workOn, toDo, cassettesCount };
}

/** Of plans that were not dropped, done and still to do. */
export function slotsOfSeason(book: Book, duties: DutiesOfBook, time: Time): readonly Slot[] {
  const plans = [...book.plans.values()].filter(({ dropped }) => dropped === null);
  return plans.flatMap((plan) =>
    planStanding(plan, book, duties).slots.flatMap((slot) => slotOf(plan, slot, duties, time) ?? []),
  );
}

interface DayOfJob {
  /** Where a part of it was measured, when the plan names none. */
  siteId: string | null;
  readonly jobKey: string;
  readonly workOn: string | null;
  cassettesCount: number;
}

/** Places by job and day; those without a day fill as few days as their workers allow. */
function daysOfJobs(slots: readonly Slot[]): readonly DayOfJob[] {
  const byKey = new Map<string, DayOfJob>();
  const openCounts = new Map<string, number>();
  for (const { siteId, jobKey, workerId, workOn, cassettesCount } of slots) {
    const who = `${jobKey} ${workerId}`;
    const open = (openCounts.get(who) ?? 0) + (workOn === null ? 1 : 0);
    openCounts.set(who, open);
    const key = `${jobKey} ${workOn ?? `open ${open}`}`;
    const day = byKey.get(key) ?? { siteId, jobKey, workOn, cassettesCount: 0 };
    day.siteId ??= siteId;
    day.cassettesCount += cassettesCount;
    byKey.set(key, day);
  }
  return [...byKey.values()];
}

const times = (count: number, unit: Unit): Unit[] => Array.from({ length: count }, () => unit);

const isRentedOn = ({ held }: Pick<PumpRecord, 'held'>, on: string): boolean =>
  held?.held === 'rented' && !held.retired && (held.backOn === null || held.backOn >= on);

/** All that is rented is paid for on a day of work, once, whatever jobs it has; it goes to the first of them. */
function rentalOf(days: readonly DayOfJob[], book: Book, today: string): Unit[] {
  const firsts = new Map<string, DayOfJob>();
  for (const [place, day] of days.entries()) {
    const key = day.workOn ?? `open ${place}`;
    if (!firsts.has(key)) firsts.set(key, day);
  }
  return [...firsts.values()].flatMap(({ siteId, workOn }) => {
    const on = workOn ?? today;
    const unitsOf = (gear: Iterable<Pick<PumpRecord, 'id' | 'held'>>, price: Unit['price']): Unit[] =>
      [...gear]
        .filter((one) => isRentedOn(one, on))
        .map(({ id }) => ({
          ...{ of: 'rental', siteId, on, price },
          ...(workOn === null ? {} : { gearDay: `${id} ${workOn}` }),
        }));
    return [...unitsOf(book.pumps.values(), 'pumpRentalUsd'), ...unitsOf(book.meters.values(), 'meterRentalUsd')];
  });
}

/** Field blanks go with the cassettes of a day by the default rule; one box goes with each job (our choice). */
export function unitsOfSlots(slots: readonly Slot[], book: Book, today: string): readonly Unit[] {
  const days = daysOfJobs(slots);
  const boxed = new Set<string>();
  const units = days.flatMap(({ siteId, jobKey, workOn, cassettesCount }) => {
    const at = { siteId, on: workOn ?? today };
    const blanksCount = blanksNeeded(cassettesCount, 'tenPercent').count;
    const boxesCount = boxed.has(jobKey) ? 0 : 1;
    boxed.add(jobKey);
    return [
      ...times(cassettesCount, { ...at, of: 'analysis', price: 'analysisUsd' }),
      ...times(blanksCount, { ...at, of: 'blank', price: 'blankUsd' }),
      ...times(cassettesCount + blanksCount, { ...at, of: 'cassettes', price: 'cassetteUsd' }),
      ...times(boxesCount, { ...at, of: 'courier', price: 'courierUsd' }),
    ];
  });
  return [...units, ...rentalOf(days, book, today)];
}

/** A void cassette that was not sent costs no analysis. */
const isAnalysed = (sample: SampleRecord, boxedIds: ReadonlySet<string>): boolean => {
  if (sample.sampleKind === 'air' && !wasWorn(sample)) return false;
  return sample.voided === null || sample.results.length > 0 || boxedIds.has(sample.id);
};

function rentalOfTaken(samples: readonly SampleRecord[], book: Book, time: Time): Unit[] {
  const byKey = new Map<string, Unit>();
  for (const { pumpId, siteId, workOn } of samples) {
    const pump = pumpId === null ? undefined : book.pumps.get(pumpId);
    const gearDay = `${pumpId} ${workOn}`;
    if (pump && isRentedOn(pump, workOn))
      byKey.set(gearDay, { of: 'rental', price: 'pumpRentalUsd', siteId, on: workOn, gearDay });
  }
  for (const { meterId, shiftId } of book.flowChecks.values()) {
    const [meter, on] = [book.meters.get(meterId ?? ''), dayOfShift(shiftId)];
    const [gearDay, siteId] = [`${meterId} ${on}`, shiftId.slice(0, -11)];
    if (meter && isWithin(on, time) && isRentedOn(meter, on))
      byKey.set(gearDay, { of: 'rental', price: 'meterRentalUsd', siteId, on, gearDay });
  }
  return [...byKey.values()];
}

/** Of what is to come: gear that was rented for a day already is not rented for it again. */
export function withoutTaken(units: readonly Unit[], taken: readonly Unit[]): readonly Unit[] {
  const gearDays = new Set(taken.flatMap(({ gearDay }) => gearDay ?? []));
  return units.filter(({ gearDay }) => gearDay === undefined || !gearDays.has(gearDay));
}

/** What was taken in that time: it is billed, or it will be. */
export function unitsTaken(book: Book, time: Time): readonly Unit[] {
  const boxes = [...book.boxes.values()];
  const boxedIds = new Set(boxes.flatMap(({ packed }) => packed.sampleIds));
  const taken = [...book.samples.values()].filter(({ workOn }) => isWithin(workOn, time));
  const units = taken.flatMap((sample): Unit[] => {
    const { siteId, workOn: on, sampleKind } = sample;
    const cassette: Unit = { of: 'cassettes', price: 'cassetteUsd', siteId, on };
    if (!isAnalysed(sample, boxedIds)) return sampleKind === 'air' && !wasWorn(sample) ? [] : [cassette];
    const of = sampleKind === 'air' ? 'analysis' : 'blank';
    return [{ of, price: of === 'analysis' ? 'analysisUsd' : 'blankUsd', siteId, on }, cassette];
  });
  const sent = boxes.flatMap(({ packed, packedAt }): Unit[] => {
    const on = packedAt.slice(0, 10);
    const { siteId } = packed;
    return isWithin(on, time) ? [{ of: 'courier', price: 'courierUsd', siteId, on }] : [];
  });
  return [...units, ...sent, ...rentalOfTaken(taken, book, time)];
}
