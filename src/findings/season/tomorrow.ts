/**
 * One day at one site, the evening before: who wears what, what lies ready beside it, and what is still missing. Read from what was
 * made ready (`dayPrepared.v1`), else from the plans that name this day. It proves nothing and ends no duty.
 */

import type { Book, DayPlanRecord, PumpRecord } from '#records/book.ts';
import { blanksNeeded } from '../blanks.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Duty } from '../duties/list/duty.ts';
import { certificateInForce, judgingDueOn } from '../gear/certificateInForce.ts';
import { tomorrowCautions } from './tomorrowCautions.ts';
import type { Tomorrow, TomorrowLot, TomorrowMeter, TomorrowPump, TomorrowWearer } from './tomorrowDay.ts';
import { plannedWearers, type Wearer } from './tomorrowWearers.ts';

export type {
  Tomorrow,
  TomorrowCaution,
  TomorrowCautionKey,
  TomorrowLot,
  TomorrowMeter,
  TomorrowPump,
  TomorrowWearer,
} from './tomorrowDay.ts';

/** Site and day of a shift's id. */
export const siteIn = (shiftId: string): string => shiftId.slice(0, 12);
export const dayIn = (shiftId: string): string => shiftId.slice(13);

const lastFull = (pump: PumpRecord): string | null => pump.charges?.findLast(({ full }) => full)?.at ?? null;

function pumpOf(book: Book, id: string | null): TomorrowPump | null {
  const pump = id === null ? undefined : book.pumps.get(id);
  return pump ? { pumpId: pump.id, serial: pump.serial, chargedAt: lastFull(pump) } : null;
}

function lotOf(book: Book, id: string | null): TomorrowLot | null {
  const lot = id === null ? undefined : book.lots.get(id);
  return lot ? { lotId: lot.id, lotNumber: lot.lotNumber, expiresOn: lot.expiresOn } : null;
}

/** Meters in use, with the due date of the certificate in force on that day; the one due soonest first. */
function metersOn(book: Book, day: string): TomorrowMeter[] {
  return [...book.meters.values()]
    .filter(({ held }) => !held?.retired)
    .map((meter) => ({
      meterId: meter.id,
      serial: meter.serial,
      dueOn: judgingDueOn(certificateInForce(meter, day)),
    }))
    .sort((a, b) => (a.dueOn ?? '').localeCompare(b.dueOn ?? '') || a.serial.localeCompare(b.serial));
}

/** Numbers of labels and of samples already prepared, one for each wearer in turn. */
function numbered(book: Book, shiftId: string, record: DayPlanRecord | undefined, wearers: readonly Wearer[]) {
  const samples = [...book.samples.values()].filter((one) => one.shiftId === shiftId && one.sampleKind === 'air');
  const taken = new Set<string>();
  const free = (number: string) => !taken.has(number);
  return wearers.map((wearer): TomorrowWearer => {
    const { workerId, pumpId, lotId, ...rest } = wearer;
    const own = (one: { readonly workerId: string | null; readonly sampleNumber: string }) =>
      one.workerId === workerId && free(one.sampleNumber);
    const sample = samples.find((one) => own(one) && !one.voided);
    const used = new Set(samples.map(({ sampleNumber }) => sampleNumber));
    const label = record?.labels.find((one) => !one.blank && own(one) && !used.has(one.sampleNumber));
    const sampleNumber = sample?.sampleNumber ?? label?.sampleNumber ?? null;
    if (sampleNumber !== null) taken.add(sampleNumber);
    const pump = pumpOf(book, sample?.pumpId ?? pumpId);
    const lot = lotOf(book, sample?.lotId ?? lotId);
    return { ...rest, workerId, pump, lot, sampleNumber, sampleId: sample?.id ?? null };
  });
}

/** Duties that are to be done before this work goes on: overdue, due by that day, or before work starts. */
function dutiesBefore(
  duties: DutiesOfBook | null,
  siteId: string,
  day: string,
  workerIds: ReadonlySet<string>,
): Duty[] {
  const starts: ReadonlySet<Duty['when']> = new Set(['beforeWorkStarts', 'beforeOrOnFirstDayAgain', 'atTheNextShift']);
  return (duties?.duties ?? []).filter(
    (duty) =>
      duty.done === null &&
      (duty.siteId === null ? duty.workerIds.some((id) => workerIds.has(id)) : duty.siteId === siteId) &&
      (duty.overdue || starts.has(duty.when) || (duty.dueOn !== null && duty.dueOn <= day)),
  );
}

/** `book` is the slice of the whole book, or one that holds the site, its day, its plans and the gear. */
export function tomorrowOf(book: Book, shiftId: string, duties: DutiesOfBook | null): Tomorrow {
  const [siteId, workOn] = [siteIn(shiftId), dayIn(shiftId)];
  const record = book.dayPlans.get(shiftId);
  const prepared = record?.prepared ?? null;
  const said: Wearer[] = (prepared?.wearers ?? []).map((wearer) => ({ ...wearer, from: 'prepared' as const }));
  const planned = plannedWearers(book, siteId, workOn, said);
  const wearers = numbered(book, shiftId, record, prepared ? said : planned);
  const cassettesCount = wearers.reduce((sum, { planId }) => {
    const plan = planId === null ? undefined : book.plans.get(planId);
    return sum + (plan?.cassettesCount ?? 1);
  }, 0);
  const used = new Set(wearers.map(({ sampleNumber }) => sampleNumber));
  const numbersOf = (blank: boolean) =>
    (record?.labels ?? [])
      .filter((one) => one.blank === blank && one.workerId === null && !used.has(one.sampleNumber))
      .map(({ sampleNumber }) => sampleNumber);
  const bare = {
    shiftId,
    siteId,
    workOn,
    asked: prepared?.asked ?? null,
    wearers,
    sparePumps: (prepared?.sparePumpIds ?? []).flatMap((id) => pumpOf(book, id) ?? []),
    spareCassettesCount: prepared?.spareCassettesCount ?? 0,
    blankNumbers: numbersOf(true),
    spareNumbers: numbersOf(false),
    blanks: blanksNeeded(cassettesCount, 'tenPercent'),
    cassettesCount,
    chargedById: prepared?.chargedById ?? null,
    remark: prepared?.remark ?? null,
    meters: metersOn(book, workOn),
    duties: dutiesBefore(duties, siteId, workOn, new Set(wearers.map(({ workerId }) => workerId))),
  };
  return { ...bare, cautions: tomorrowCautions(book, bare, prepared ? planned : []) };
}
