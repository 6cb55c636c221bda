/** Which gear a sample rests on: its pump, its lot, and the flow meters of the flow checks that speak for it. */
import type { Book, FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { checksOfSample } from '../checks.ts';
import { type BookIndex, bookIndexOf } from '../duties/measuring/bookIndex.ts';
import { addPump, type Gathered } from '../duties/measuring/pumpWindow.ts';
import { type DaysOfUse, daysOfCheck, daysOfSample, type GearKind, type GearRecord } from './doubtsOf.ts';

const indexes = new WeakMap<Book, BookIndex>();

/** Made once for a book: its lists are never changed. */
export function indexOf(book: Book): BookIndex {
  const held = indexes.get(book) ?? bookIndexOf(book);
  indexes.set(book, held);
  return held;
}

/** The book with no more of this sample's pump than bears on it, so that one of ten thousand samples is read at speed. */
export function besideSample(sample: SampleRecord, book: Book): Book {
  const found: Gathered = { samples: new Set([sample]), checks: new Set(), boxes: new Set() };
  addPump(sample, indexOf(book), found);
  const samples = new Map([...found.samples].map((one) => [one.id, one]));
  return { ...book, samples, flowChecks: new Map([...found.checks].map((one) => [one.id, one])) };
}

/** The checks that the sample's flow is made of. */
export function ownChecks(sample: SampleRecord, book: Book): readonly FlowCheckRecord[] {
  if (sample.pumpId === null) return [];
  const { before, after } = checksOfSample(sample, besideSample(sample, book));
  return [before, after].filter((check) => check !== null);
}

export interface GearOfSample {
  readonly gear: GearKind;
  readonly record: GearRecord | undefined;
  readonly days: DaysOfUse;
}

export function gearOfSample(sample: SampleRecord, book: Book): readonly GearOfSample[] {
  const days = daysOfSample(sample, book);
  const meters = ownChecks(sample, book).map((check) => ({
    gear: 'meter' as const,
    record: book.meters.get(check.meterId),
    days: daysOfCheck(check, book),
  }));
  return [
    { gear: 'pump', record: book.pumps.get(sample.pumpId ?? ''), days },
    { gear: 'lot', record: book.lots.get(sample.lotId), days },
    ...meters,
  ];
}
