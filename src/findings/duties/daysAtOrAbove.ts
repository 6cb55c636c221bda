/** Days at or above the action level, each worker's, over any twelve consecutive months: 29 CFR 1926.62(j)(1). */
import type { Book } from '#records/book.ts';
import type { ExposureDays } from './exposureDays.ts';
import type { Measurement } from './measurement.ts';
import type { GroupDay } from './taskGroup.ts';

/** By worker id. */
export function exposureDaysOf(
  _measurements: ReadonlyMap<string, Measurement>,
  _days: readonly GroupDay[],
  _book: Book,
  _today: string,
): ReadonlyMap<string, ExposureDays> {
  throw new Error('not written yet');
}
