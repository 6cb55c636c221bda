/** Everything that rests on gear that was found bad, in the time of the doubt. */
import { dayOf } from '#core/calendar.ts';
import type { Book, GearDoubt, SampleRecord } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { siteOfShift } from '../duties/groups/taskGroups.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { dayOfCheck, daysOfCheck, daysOfSample, effectOf, type GearKind, touchesUse } from './doubtsOf.ts';
import { ownChecks } from './restsOn.ts';
import type { Touched, TouchedOne } from './touched.ts';

export { gearDoubtsOfPaper } from './gearDoubtsOf.ts';

/** The lists of a book by kind of gear. */
export const gearIn = (book: Book, gear: GearKind) =>
  gear === 'pump' ? book.pumps : gear === 'meter' ? book.meters : book.lots;

const thing = (
  id: string,
  onDay: string | null,
  siteId: string | null,
  workerId: string | null = null,
  number: string | null = null,
): TouchedOne => ({ id, onDay, siteId, workerId, number, groupKey: null });

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const order = (a: TouchedOne, b: TouchedOne): number => compare(a.onDay ?? '', b.onDay ?? '') || compare(a.id, b.id);
const inOrder = (found: readonly TouchedOne[]): readonly TouchedOne[] => [...found].sort(order);

/** Ids of the flow checks that were made with the flow meter in that time. */
function checksWith(doubt: GearDoubt, book: Book): ReadonlySet<string> {
  const found = new Set<string>();
  if (doubt.gear !== 'meter') return found;
  for (const check of book.flowChecks.values()) {
    if (check.meterId !== doubt.gearId) continue;
    const days = () => daysOfCheck(check, book);
    if (touchesUse(doubt, dayOfCheck(check, book), check.happened.at, days)) found.add(check.id);
  }
  return found;
}

/** Checks of a sample as its finding has them, where it has one. */
function foundChecks({ measurements }: DutiesOfBook): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  for (const { finding } of measurements.values())
    for (const { sampleId, checkBefore, checkAfter } of finding?.samples ?? [])
      found.set(sampleId, [checkBefore?.flowCheckId ?? '', checkAfter?.flowCheckId ?? '']);
  return found;
}

function samplesOn(doubt: GearDoubt, checkIds: ReadonlySet<string>, book: Book, duties: DutiesOfBook): SampleRecord[] {
  const samples = [...book.samples.values()];
  if (doubt.gear !== 'meter') {
    const of = doubt.gear === 'pump' ? 'pumpId' : 'lotId';
    return samples.filter((sample) => {
      if (sample[of] !== doubt.gearId) return false;
      return touchesUse(doubt, sample.workOn, sample.stopped?.at ?? null, () => daysOfSample(sample, book));
    });
  }
  if (checkIds.size === 0) return [];
  const pumpIds = new Set([...checkIds].map((id) => book.flowChecks.get(id)?.pumpId));
  const known = foundChecks(duties);
  return samples.filter((sample) => {
    if (sample.pumpId === null || !pumpIds.has(sample.pumpId)) return false;
    const own = known.get(sample.id) ?? ownChecks(sample, book).map(({ id }) => id);
    return own.some((id) => checkIds.has(id));
  });
}

const ofSample = ({ id, workOn, siteId, workerId, sampleNumber }: SampleRecord): TouchedOne =>
  thing(id, workOn, siteId, workerId, sampleNumber);

const ofMeasurement = ({ id, workOn, siteId, workerId }: Measurement): TouchedOne =>
  thing(id, workOn, siteId, workerId);

function workdaysOf(samples: readonly SampleRecord[]): ReadonlyMap<string, TouchedOne> {
  const found = new Map<string, TouchedOne>();
  for (const { workdayId, workOn, siteId, workerId } of samples)
    if (workdayId !== null && !found.has(workdayId)) found.set(workdayId, thing(workdayId, workOn, siteId, workerId));
  return found;
}

/** Of one worker and day the highest judges them all: where that one rests on the gear, so do those beside it. */
function measurementsOn(
  sampleIds: ReadonlySet<string>,
  { measurements }: DutiesOfBook,
): ReadonlyMap<string, Measurement> {
  const own = new Map<string, Measurement>();
  for (const [id, one] of measurements)
    if (one.finding?.samples.some(({ sampleId }) => sampleIds.has(sampleId))) own.set(id, one);
  const found = new Map(own);
  for (const [id, one] of measurements) if (own.has(one.judgedById ?? '')) found.set(id, one);
  return found;
}

type Ids = ReadonlyMap<string, unknown>;
const anyOf = (ids: readonly string[], among: Ids): boolean => ids.some((id) => among.has(id));

function noticesOn(measured: ReadonlyMap<string, Measurement>, book: Book, { notices }: DutiesOfBook) {
  const issued = [...book.notices.values()].flatMap(({ id, issued: paper }) => {
    const of = measured.get(paper.measurementId);
    if (!of) return [];
    const zone = book.sites.get(of.siteId ?? '')?.zone ?? 'UTC';
    return [thing(id, dayOf(paper.at, zone), of.siteId, of.workerId, paper.revision)];
  });
  const owed = notices.flatMap(({ measurementId, dueOn, openIds }) => {
    const of = measured.get(measurementId);
    return of && openIds.length > 0 ? [thing(of.id, dueOn, of.siteId, of.workerId)] : [];
  });
  return { noticesIssued: inOrder(issued), noticesOwed: inOrder(owed) };
}

function determinationsOn(measured: Ids, reliances: Ids, book: Book, duties: DutiesOfBook) {
  const written = [...book.determinations.values()].flatMap(({ id, written: paper }) => {
    const { measurementIds, relianceIds, siteId, determinedOn } = paper;
    const touched = anyOf(measurementIds, measured) || anyOf(relianceIds, reliances);
    return touched ? [thing(id, determinedOn, siteId)] : [];
  });
  const open = duties.determinations.flatMap(({ siteId, groupKey, measurementIds, relianceIds, writtenId }) => {
    const touched = anyOf(measurementIds, measured) || anyOf(relianceIds, reliances);
    return touched && writtenId === null ? [{ ...thing(`${siteId} ${groupKey}`, null, siteId), groupKey }] : [];
  });
  return { determinations: inOrder(written), determinationsNotWritten: inOrder(open) };
}

function reliancesOn(measured: Ids, book: Book): ReadonlyMap<string, TouchedOne> {
  const found = new Map<string, TouchedOne>();
  for (const { id, measurementId, shiftId } of book.reliances.values())
    if (measured.has(measurementId)) found.set(id, thing(id, shiftId.slice(-10), siteOfShift(shiftId)));
  return found;
}

const dutiesOn = (measured: Ids, { duties }: DutiesOfBook): readonly TouchedOne[] =>
  duties.flatMap(({ id, dueOn, siteId, workerIds, measurementIds }) =>
    anyOf(measurementIds, measured)
      ? [thing(id, dueOn, siteId, workerIds.length === 1 ? (workerIds[0] ?? null) : null)]
      : [],
  );

/** The last revision of each stands for it. */
const recordsOn = (workdays: ReadonlyMap<string, TouchedOne>, book: Book): readonly TouchedOne[] =>
  [...workdays.values()].flatMap((one) => {
    const last = book.workdays.get(one.id)?.recordsIssued?.at(-1);
    return last ? [{ ...one, number: last.revision }] : [];
  });

const sheetsOn = (sampleIds: ReadonlySet<string>, book: Book): readonly TouchedOne[] =>
  [...book.boxes.values()].flatMap(({ id, packed, issues }) => {
    const last = issues.at(-1);
    if (!last || !packed.sampleIds.some((sampleId) => sampleIds.has(sampleId))) return [];
    const { siteId } = packed;
    const zone = book.sites.get(siteId)?.zone ?? 'UTC';
    return [thing(id, dayOf(last.at, zone), siteId, null, last.revision)];
  });

/** null where the book has no such doubt. */
export function touchedBy(
  gear: GearKind,
  gearId: string,
  doubtId: string,
  book: Book,
  duties: DutiesOfBook,
): Touched | null {
  const doubt = gearIn(book, gear)
    .get(gearId)
    ?.doubts?.find((one) => one.doubtId === doubtId);
  if (!doubt) return null;
  const checkIds = checksWith(doubt, book);
  const samples = samplesOn(doubt, checkIds, book, duties);
  const sampleIds = new Set(samples.map(({ id }) => id));
  const workdays = workdaysOf(samples);
  const measured = measurementsOn(sampleIds, duties);
  const reliances = reliancesOn(measured, book);
  return {
    ...{ gear, gearId, doubtId, effect: effectOf(doubt) },
    flowChecks: inOrder(
      [...checkIds].flatMap((id) => {
        const check = book.flowChecks.get(id);
        const siteId = check ? siteOfShift(check.shiftId) : null;
        return check ? [thing(id, dayOfCheck(check, book), siteId)] : [];
      }),
    ),
    samples: inOrder(samples.map(ofSample)),
    workdays: inOrder([...workdays.values()]),
    measurements: inOrder([...measured.values()].map(ofMeasurement)),
    ...noticesOn(measured, book, duties),
    ...determinationsOn(measured, reliances, book, duties),
    reliances: inOrder([...reliances.values()]),
    duties: inOrder(dutiesOn(measured, duties)),
    exposureRecords: inOrder(recordsOn(workdays, book)),
    custodySheets: inOrder(sheetsOn(sampleIds, book)),
  };
}
