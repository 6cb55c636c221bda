/**
 * Every measurement of a book as duties see it: worker's days that we sampled, and what was reported to us. Several of one worker and day
 * (an inspector's beside ours) stand side by side, and the highest judges them all.
 */
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { Book, ReportedRecord } from '#records/book.ts';
import { changedSince, isSameList, type Snapshot, snapshotOf } from '../changedSince.ts';
import { wasWorn } from '../groups/taskGroups.ts';
import { atOnce, type Steps } from '../steps.ts';
import { higherBand } from './band.ts';
import { type BookIndex, bookIndexOf } from './bookIndex.ts';
import { type DayParts, daySliceOf, ingredientsOf } from './daySlice.ts';
import type { Measurement } from './measurement.ts';
import { reportedMeasurement } from './reportedMeasurement.ts';
import { judgedBeside, sampledDay } from './sampledDay.ts';

/** What a measurement was made from. It only spares making it again: the same ingredients make the same finding. */
interface Made {
  readonly ingredients: readonly unknown[];
  readonly lookedUp: readonly string[];
}

type MadeById = Map<string, Made>;

interface Read {
  readonly snapshot: Snapshot;
  readonly index: BookIndex;
  readonly days: readonly DayParts[];
  readonly made: MadeById;
}

/** What a book was when its measurements were found. */
const readBefore = new WeakMap<ReadonlyMap<string, Measurement>, Read>();

/** Infinity where nothing bounds it from above, so that its lower end counts. */
const height = ({ twa8UgPerM3: average }: Measurement): number => {
  if (average === null) return Number.NEGATIVE_INFINITY;
  return Number.isFinite(upperOf(average)) ? upperOf(average) : lowerOf(average);
};

const statements = ['no', 'unresolved', 'yes'] as const;

type Proof = Pick<Measurement, 'band' | 'provesBelowActionLevel' | 'provesNotAbovePel'>;

const together = (proofs: readonly Proof[]): Proof => ({
  band: proofs.map(({ band }) => band).reduce(higherBand),
  provesBelowActionLevel: proofs.every((one) => one.provesBelowActionLevel),
  provesNotAbovePel: proofs.every((one) => one.provesNotAbovePel),
});

const isHigher = (one: Measurement, most: Measurement): boolean =>
  one.band === most.band ? height(one) > height(most) : higherBand(most.band, one.band) === one.band;

/** The highest judges them all; one that is not known yet leaves them open. */
function sideBySide(found: readonly Measurement[]): readonly Measurement[] {
  if (found.length < 2) return found;
  const highest = found.reduce((most, one) => (isHigher(one, most) ? one : most));
  const worst = Math.max(...found.map(({ atOrAbovePel }) => statements.indexOf(atOrAbovePel)));
  const byOwn = found.some(({ byRule }) => byRule !== undefined);
  const shared = {
    ...together(found),
    twa8UgPerM3: highest.twa8UgPerM3,
    atOrAbovePel: statements[worst] ?? 'unresolved',
    ...(byOwn ? { byRule: together(found.map((one) => one.byRule ?? one)) } : {}),
  };
  return found.map((one) => {
    if (one === highest) return { ...one, ...shared };
    const beside = judgedBeside(highest.id, highest.because.slice(0, 1));
    return { ...one, ...shared, blocks: [...one.blocks, ...highest.blocks, beside], judgedById: highest.id };
  });
}

function make(parts: DayParts, slice: Book): readonly Measurement[] {
  const { workdayId, samples, reported } = parts;
  const ours = workdayId === null ? [] : [sampledDay(workdayId, samples, slice.workdays.get(workdayId), slice)];
  return sideBySide([...ours, ...reported.map((one) => reportedMeasurement(one, slice))]);
}

const idsOf = ({ workdayId, reported }: DayParts): string[] => [
  ...(workdayId === null ? [] : [workdayId]),
  ...reported.map(({ id }) => id),
];

type Earlier = ReadonlyMap<string, Measurement>;

/** Found before, all of them, from what is the same now; null where one is to be made again. */
function reusable(
  ids: readonly string[],
  earlier: Earlier,
  made: MadeById,
  isSame: (made: Made) => boolean,
): readonly Measurement[] | null {
  const found: Measurement[] = [];
  for (const id of ids) {
    const before = earlier.get(id);
    const of = made.get(id);
    if (!before || !of || !isSame(of)) return null;
    found.push(before);
  }
  return found;
}

function daysOf(book: Book, index: BookIndex): readonly DayParts[] {
  const found: DayParts[] = [];
  const taken = new Set<ReportedRecord>();
  for (const [workdayId, samples] of index.airByWorkday) {
    if (!samples.some(wasWorn)) continue;
    const reported = index.reportedByWorkday.get(workdayId) ?? [];
    for (const one of reported) taken.add(one);
    found.push({ workdayId, samples, reported });
  }
  for (const one of book.reported.values()) {
    if (taken.has(one)) continue;
    const beside = one.workerId === null ? [one] : (index.reportedByWorkday.get(`${one.workerId}.${one.workOn}`) ?? []);
    for (const other of beside) taken.add(other);
    found.push({ workdayId: null, samples: [], reported: beside });
  }
  return found;
}

function readingOf(book: Book, snapshot: Snapshot): Read {
  const index = bookIndexOf(book);
  return { snapshot, index, days: daysOf(book, index), made: new Map() };
}

/** Days to a step: decided here, some tens of milliseconds on a phone. */
const daysToStep = 250;

/** By id. `earlier`: what was found before; a measurement whose records are the same objects is not made again. */
export function* measurementsInSteps(book: Book, earlier: Earlier = new Map()): Steps<Earlier> {
  const before = readBefore.get(earlier);
  const snapshot = snapshotOf(book);
  const changed = before ? changedSince(before.snapshot, snapshot) : null;
  const read = before && changed ? { ...before, snapshot, made: new Map(before.made) } : readingOf(book, snapshot);
  const found = new Map<string, Measurement>();
  let madeCount = 0;
  for (const parts of read.days) {
    const untouched = changed && untouchedOf(parts, read, earlier, changed);
    for (const one of untouched ?? ofDay(parts, read, book, earlier, before?.made ?? nothing)) found.set(one.id, one);
    if (!untouched && ++madeCount % daysToStep === 0) yield;
  }
  readBefore.set(found, read);
  return found;
}

export const measurementsOf = (book: Book, earlier?: Earlier): Earlier => atOnce(measurementsInSteps(book, earlier));

const nothing: MadeById = new Map();

const untouchedOf = (parts: DayParts, { made }: Read, earlier: Earlier, changed: ReadonlySet<string>) =>
  reusable(idsOf(parts), earlier, made, ({ lookedUp }) => !lookedUp.some((key) => changed.has(key)));

function ofDay(
  parts: DayParts,
  { index, made }: Read,
  book: Book,
  earlier: Earlier,
  before: MadeById,
): readonly Measurement[] {
  const { slice, lookedUp } = daySliceOf(parts, index, book);
  const ingredients = ingredientsOf(slice);
  const ids = idsOf(parts);
  const same = reusable(ids, earlier, before, (one) => isSameList(one.ingredients, ingredients));
  for (const id of ids) made.set(id, { ingredients, lookedUp });
  return same ?? make(parts, slice);
}
