/** What each part of the form is handed. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { Book } from '#records/book.ts';
import type { DayDraft } from './dayDraft.ts';

export interface DayFields {
  readonly shiftId: string;
  readonly book: Book;
  readonly draft: DayDraft;
  readonly onChange: (part: Partial<DayDraft>) => void;
  readonly errors: readonly FieldError[];
}
