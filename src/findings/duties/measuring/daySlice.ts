/**
 * The slice of a book that one worker's day stands on: its cassettes, the flow checks that may speak for them, other cassettes of the same
 * pumps at that time, boxes, blanks, and what they all refer to. A finding on it equals the finding on the whole book (tested).
 */
import type { Book, BoxRecord, FlowCheckRecord, ReportedRecord, SampleRecord } from '#records/book.ts';
import { type AroundKind, aroundKey, wholeOf } from '../changedSince.ts';
import { siteOfShift } from '../groups/taskGroups.ts';
import type { BookIndex } from './bookIndex.ts';
import { addPump, type Gathered } from './pumpWindow.ts';

/** One worker's day: ours, reported ones beside it, or a reported one alone. */
export interface DayParts {
  readonly workdayId: string | null;
  readonly samples: readonly SampleRecord[];
  readonly reported: readonly ReportedRecord[];
}

/** Blanks of the shift, and whatever lies in the same boxes: a cassette that is missing there may be a blank. */
function addBoxed(sample: SampleRecord, index: BookIndex, book: Book, into: Gathered): void {
  for (const blank of index.blanksByShift.get(sample.shiftId) ?? []) into.samples.add(blank);
  for (const box of index.boxesBySample.get(sample.id) ?? []) {
    into.boxes.add(box);
    for (const id of box.packed.sampleIds) {
      const other = book.samples.get(id);
      if (other) into.samples.add(other);
    }
  }
}

function gather({ samples }: DayParts, index: BookIndex, book: Book): Gathered {
  const found: Gathered = { samples: new Set(samples), checks: new Set(), boxes: new Set() };
  for (const sample of samples) {
    addPump(sample, index, found);
    addBoxed(sample, index, book, found);
  }
  const judged = [...found.samples].filter((one) => one.sampleKind === 'blank' || samples.includes(one));
  for (const one of judged) {
    for (const same of index.byNumber.get(one.sampleNumber) ?? []) found.samples.add(same);
    for (const box of index.boxesBySample.get(one.id) ?? []) found.boxes.add(box);
  }
  return found;
}

/** In the order of the book. */
function inOrder<T extends SampleRecord | FlowCheckRecord | BoxRecord>(found: Set<T>, { placeOf }: BookIndex): T[] {
  return found.size < 2 ? [...found] : [...found].sort((a, b) => (placeOf.get(a) ?? 0) - (placeOf.get(b) ?? 0));
}

/** Looks records up by id, and remembers under `kind:id` what was looked for, found or not. */
class LookUps {
  readonly keys: string[] = [];

  pick<T>(kind: AroundKind, ids: Iterable<string | null>, from: ReadonlyMap<string, T>): Map<string, T> {
    const found = new Map<string, T>();
    for (const id of new Set(ids)) {
      if (id === null) continue;
      this.keys.push(aroundKey(kind, id));
      const one = from.get(id);
      if (one) found.set(id, one);
    }
    return found;
  }
}

const byId = <T extends { readonly id: string }>(records: readonly T[]): Map<string, T> =>
  new Map(records.map((one) => [one.id, one]));

const nothing: ReadonlyMap<string, never> = new Map<string, never>();

export interface DaySlice {
  readonly slice: Book;
  /** Keys of the records that it refers to, in the book or not. */
  readonly lookedUp: readonly string[];
}

export function daySliceOf(parts: DayParts, index: BookIndex, book: Book): DaySlice {
  const gathered = gather(parts, index, book);
  const samples = inOrder(gathered.samples, index);
  const checks = inOrder(gathered.checks, index);
  const read = samples.filter((one) => one.sampleKind === 'blank' || parts.samples.includes(one));
  const lookUps = new LookUps();
  const workdays = lookUps.pick('workdays', [parts.workdayId], book.workdays);
  const workday = parts.workdayId === null ? undefined : workdays.get(parts.workdayId);
  const worked = workday?.worked ?? [];
  const shiftIds = [...read, ...checks, ...worked].map(({ shiftId }) => shiftId);
  const shifts = lookUps.pick('shifts', shiftIds, book.shifts);
  const siteIds: (string | null)[] = [...shifts.values(), ...read, ...parts.reported].map(({ siteId }) => siteId);
  for (const { shiftId } of worked) siteIds.push(siteOfShift(shiftId));
  const workerIds = [...parts.samples, ...parts.reported, ...workdays.values()].map(({ workerId }) => workerId);
  const ids = (of: 'pumpId' | 'lotId'): (string | null)[] => read.map((one) => one[of]);
  const meterIds = checks.map(({ meterId }) => meterId);
  const slice: Book = {
    book: book.book,
    sites: lookUps.pick('sites', siteIds, book.sites),
    people: lookUps.pick('people', workerIds, book.people),
    jobClassifications: nothing,
    pumps: lookUps.pick('pumps', ids('pumpId'), book.pumps),
    meters: lookUps.pick('meters', meterIds, book.meters),
    lots: lookUps.pick('lots', ids('lotId'), book.lots),
    laboratories: nothing,
    shifts,
    flowChecks: byId(checks),
    samples: byId(samples),
    workdays,
    boxes: byId(inOrder(gathered.boxes, index)),
    reported: byId(parts.reported),
    reliances: nothing,
    notices: nothing,
    determinations: nothing,
    duties: nothing,
    requests: nothing,
    plans: nothing,
    dayPlans: nothing,
    spendings: nothing,
    ...(book.missing ? { missing: book.missing } : {}),
    ...(book.takingIn === undefined ? {} : { takingIn: book.takingIn }),
  };
  return { slice, lookedUp: lookUps.keys };
}

/** What the slice is made of, for telling whether it is the same as before: records are the same when they are the same objects. */
export function ingredientsOf(slice: Book): readonly unknown[] {
  const { sites, people, pumps, meters, lots, shifts, flowChecks, samples, workdays, boxes, reported } = slice;
  const found: unknown[] = [...wholeOf(slice)];
  for (const records of [sites, people, pumps, meters, lots, shifts, flowChecks, samples, workdays, boxes, reported])
    for (const one of records.values()) found.push(one);
  return found;
}
