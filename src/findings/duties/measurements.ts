/** Every measurement of a book as duties see it: worker's days that we sampled, and what was reported to us. */
import type { Book } from '#records/book.ts';
import type { Measurement } from './measurement.ts';

/** By id. `earlier`: what was found before; a measurement whose records are the same objects is not made again. */
export function measurementsOf(
  _book: Book,
  _earlier?: ReadonlyMap<string, Measurement>,
): ReadonlyMap<string, Measurement> {
  throw new Error('not written yet');
}
