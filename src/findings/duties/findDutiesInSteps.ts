/**
 * The same as findDuties, found in small steps, so that a page that is looked at answers meanwhile. The steps find the measurements of
 * some days at a time; the last one finds everything, and spares what the steps found from the same records.
 */
import type { Book, SampleRecord } from '#records/book.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import { findDuties } from './findDuties.ts';
import type { Measurement } from './measurement.ts';
import { measurementsOf } from './measurements.ts';

/** Cassettes to a step: decided here, some tens of milliseconds on a phone. */
const samplesToStep = 250;

/** Whole shifts to a step, in the order of days: the cassettes and blanks of one shift stay together. */
function* slicesOf(samples: ReadonlyMap<string, SampleRecord>): Generator<Map<string, SampleRecord>> {
  const sorted = [...samples.values()].sort((a, b) =>
    a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : a.shiftId < b.shiftId ? -1 : 1,
  );
  let slice = new Map<string, SampleRecord>();
  let shiftId = '';
  for (const sample of sorted) {
    if (slice.size >= samplesToStep && sample.shiftId !== shiftId) {
      yield slice;
      slice = new Map();
    }
    slice.set(sample.id, sample);
    shiftId = sample.shiftId;
  }
  if (slice.size > 0) yield slice;
}

/** Yields between steps; what it returns equals what findDuties finds. */
export function* findDutiesInSteps(book: Book, today: string, before?: DutiesOfBook): Generator<void, DutiesOfBook> {
  if (before !== undefined || book.samples.size <= samplesToStep) return findDuties(book, today, before);
  const found = new Map<string, Measurement>();
  for (const samples of slicesOf(book.samples)) {
    for (const [id, one] of measurementsOf({ ...book, samples, reported: new Map() })) found.set(id, one);
    yield;
  }
  return findDuties(book, today, { ...nothing, today, measurements: found });
}

const nothing = {
  groups: new Map(),
  courses: [],
  exposureDays: new Map(),
  notices: [],
  determinations: [],
  duties: [],
} as const satisfies Omit<DutiesOfBook, 'today' | 'measurements'>;
