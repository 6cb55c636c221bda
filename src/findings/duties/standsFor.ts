/** Whom a measurement stands for. */
import type { Book } from '#records/book.ts';
import type { Measurement } from './measurement.ts';
import type { GroupDay } from './taskGroup.ts';

/** Worker ids, the measured one first: same shift and task group by the roster, and whoever is named in writing. */
export function standsFor(_measurement: Measurement, _book: Book, _days: readonly GroupDay[]): readonly string[] {
  throw new Error('not written yet');
}
