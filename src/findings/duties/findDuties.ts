/** Everything that follows from a book on a day. */
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';

/** `before`: what was found earlier of the same book, so that only what changed is found again; the same as from nothing. */
export function findDuties(_book: Book, today: string, _before?: DutiesOfBook): DutiesOfBook {
  return {
    today,
    measurements: new Map(),
    groups: new Map(),
    courses: [],
    exposureDays: new Map(),
    notices: [],
    determinations: [],
    duties: [],
  };
}
