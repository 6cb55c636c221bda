/** What tests of the duty list share: the duties of a book by kind, and records that say what was done. */

import { findDuties } from '#findings/duties/findDuties.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { Book, DutyRecord } from '#records/book.ts';
import { base, factId } from '../sliceRegisters.ts';

export const dutiesIn = (book: Book, today: string): readonly Duty[] => findDuties(book, today).duties;
export const kindsIn = (book: Book, today: string): readonly string[] => [
  ...new Set(dutiesIn(book, today).map(({ kind }) => kind)),
];

/** The only duty of a kind; throws where there is none, or more than one. */
export function dutyOf(kind: string, book: Book, today: string): Duty {
  const found = dutiesIn(book, today).filter((one) => one.kind === kind);
  if (found.length !== 1 || !found[0]) throw new Error(`${found.length} duties of kind ${kind}`);
  return found[0];
}

/** Done on these days, by nobody named. */
export const done = (id: string, ...days: readonly string[]): DutyRecord => ({
  ...base('duty', id),
  done: days.map((doneOn) => ({
    doneOn,
    doneById: null,
    whereItLies: 'green folder',
    remark: null,
    factId: factId(),
    at: `${doneOn}T18:00:00.000Z`,
    by: null,
  })),
});

export const withDone = (book: Book, ...records: readonly DutyRecord[]): Book => ({
  ...book,
  duties: new Map([...book.duties, ...records.map((one) => [one.id, one] as const)]),
});
