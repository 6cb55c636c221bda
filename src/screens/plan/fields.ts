/** What each part of the form is handed. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { Book } from '#records/book.ts';
import type { PlanDraft } from './planDraft.ts';

export interface PlanFields {
  readonly book: Book;
  readonly today: string;
  readonly draft: PlanDraft;
  readonly onChange: (part: Partial<PlanDraft>) => void;
  readonly errors: readonly FieldError[];
}
