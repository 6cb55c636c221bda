/** A new book and the practice book: each ends in an open book, or in a sentence that says what to do. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { newBook, switchBook } from '#store/opening.ts';
import { bookState } from '#store/session.ts';
import { failedSentence } from '#words/saving.ts';
import { en as words } from '#words/start.ts';

export type Begun =
  | { readonly kind: 'open'; readonly next: string }
  | { readonly kind: 'errors'; readonly errors: readonly FieldError[] };

const errors = (field: string | null, text: string): Begun => ({ kind: 'errors', errors: [{ field, text }] });
const firmNameMost = 400;

/** Which of the two databases the state of the book speaks of. */
const lookedAt = (): string | null => {
  const state = bookState();
  return 'which' in state ? state.which : null;
};

export async function openNew(typed: string): Promise<Begun> {
  const firmName = typed.trim();
  if (firmName === '') return errors('firmName', words.firmNameMissing);
  if (firmName.length > firmNameMost) return errors('firmName', words.firmNameLong);
  if (lookedAt() !== 'book') await switchBook('book');
  if (bookState().kind === 'open') return { kind: 'open', next: '/' };
  const written = await newBook({ firmName, practice: false });
  if (written.kind === 'written') return { kind: 'open', next: '/who' };
  return errors(null, failedSentence(written.kind === 'failed' ? written.why : 'unknown'));
}

/** A practice book that is there opens as it was left; else it is written, which takes a moment. */
export async function openPractice(): Promise<Begun> {
  await switchBook('practice');
  if (bookState().kind === 'open') return { kind: 'open', next: '/' };
  const [{ writePracticeBook }, { writeSeason }] = await Promise.all([
    import('./practiceBook.ts'),
    import('./practice/season.ts'),
  ]);
  const failed = await writePracticeBook(writeSeason);
  return failed === null ? { kind: 'open', next: '/' } : errors(null, failedSentence(failed));
}
