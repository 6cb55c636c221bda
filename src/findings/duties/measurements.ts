/**
 * Every measurement of a book as duties see it: worker's days that we sampled, and what was reported to us. Several of one worker and day
 * (an inspector's beside ours) stand side by side, and the highest judges them all.
 */
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { Book, ReportedRecord } from '#records/book.ts';
import { higherBand } from './band.ts';
import { bookIndexOf } from './bookIndex.ts';
import { type DayParts, daySliceOf, ingredientsOf } from './daySlice.ts';
import type { Measurement } from './measurement.ts';
import { reportedMeasurement } from './reportedMeasurement.ts';
import { judgedBeside, sampledDay } from './sampledDay.ts';
import { wasWorn } from './taskGroups.ts';

/** What a measurement was made from. It only spares making it again: the same ingredients make the same finding. */
const madeFrom = new WeakMap<Measurement, readonly unknown[]>();

const isSame = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((one, i) => one === b[i]);

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

/** Found before, all of them, from the same records. */
function reusable(ids: readonly string[], made: readonly unknown[], earlier: ReadonlyMap<string, Measurement>) {
  const found: Measurement[] = [];
  for (const id of ids) {
    const before = earlier.get(id);
    const from = before && madeFrom.get(before);
    if (!before || !from || !isSame(from, made)) return null;
    found.push(before);
  }
  return found;
}

function daysOf(book: Book, index: ReturnType<typeof bookIndexOf>): DayParts[] {
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

/** By id. `earlier`: what was found before; a measurement whose records are the same objects is not made again. */
export function measurementsOf(
  book: Book,
  earlier: ReadonlyMap<string, Measurement> = new Map(),
): ReadonlyMap<string, Measurement> {
  const index = bookIndexOf(book);
  const found = new Map<string, Measurement>();
  for (const parts of daysOf(book, index)) {
    const slice = daySliceOf(parts, index, book);
    const made = ingredientsOf(slice);
    const before = reusable(idsOf(parts), made, earlier);
    const measurements = before ?? make(parts, slice);
    for (const one of measurements) {
      found.set(one.id, one);
      if (!before) madeFrom.set(one, made);
    }
  }
  return found;
}
