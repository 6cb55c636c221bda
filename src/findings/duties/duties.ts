/** The duties that follow from a book: each row of shared/duties whose trigger is met, with what was done of it. */
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import type { Duty } from './duty.ts';
import type { GroupDay } from './taskGroup.ts';

/** What duties follow from. */
export interface DutyParts extends Omit<DutiesOfBook, 'today' | 'duties' | 'notHeld'> {
  readonly days: readonly GroupDay[];
}

/** Overdue first, then by day, then those without a day; done ones last. None where the rule of the site is not held complete. */
export function dutiesOf(_parts: DutyParts, _book: Book, _today: string): readonly Duty[] {
  return [];
}
