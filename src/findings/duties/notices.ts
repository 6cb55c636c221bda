/** Which notices of results are owed, to whom and by when: 29 CFR 1926.62(d)(8). */
import type { Book } from '#records/book.ts';
import type { Measurement } from './measurement.ts';
import type { NoticeOwed } from './notice.ts';
import type { GroupDay } from './taskGroup.ts';

/** One for each measurement with a result, in the order of receipt. */
export function noticesOwed(
  _measurements: ReadonlyMap<string, Measurement>,
  _book: Book,
  _days: readonly GroupDay[],
  _today: string,
): readonly NoticeOwed[] {
  throw new Error('not written yet');
}
