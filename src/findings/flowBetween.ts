/** After a cassette change one flow check speaks for both cassettes, if it is made before the new one goes on. */
import type { Book, SampleRecord } from '#records/book.ts';
import { checksOfSample } from './checks.ts';

/** The cassette follows another on this pump, is not on yet, and the one before it has no flow after. */
export function wantsFlowBetween(sample: SampleRecord, book: Book): boolean {
  const earlier = book.samples.get(sample.follows ?? '');
  if (earlier === undefined || earlier.stopped === null || sample.putOn !== null) return false;
  return earlier.pumpId === sample.pumpId && checksOfSample(earlier, book).after === null;
}
