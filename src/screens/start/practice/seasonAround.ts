/** What the papers of the season are made from: the book as it stands, what follows from it, and the makers of values, loaded late. */
import type { Occasion } from '#documents/occasion.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Book } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { taskById } from '#reference/tasks.ts';
import type { WriteOptions } from '#store/write.ts';
import type { SeasonClock } from './seasonClock.ts';
import type { SeasonIds } from './seasonIds.ts';

export interface Papers {
  readonly facts: readonly NewFact[];
  readonly files: NonNullable<WriteOptions['files']>;
}

export interface Around {
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly occasion: Occasion;
  readonly ids: SeasonIds;
  readonly clock: SeasonClock;
}

export const named = (taskIds: readonly string[]) =>
  taskIds.map((id) => ({ en: taskById(id)?.en ?? id, es: taskById(id)?.es ?? id }));

export const loadValues = () =>
  Promise.all([
    import('#documents/noticeValues.ts'),
    import('#documents/determinationValues.ts'),
    import('#documents/exampleNote.ts'),
  ]);
export type Makers = Awaited<ReturnType<typeof loadValues>>;
