/** What the papers of a day are made from, and how they are wanted. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Tomorrow } from '#findings/season/tomorrow.ts';
import type { Book, SiteRecord } from '#records/book.ts';
import type { BookMeta } from '#store/bookMeta.ts';

export interface PapersProps {
  readonly shiftId: string;
  readonly site: SiteRecord;
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly meta: BookMeta;
  /** What stands on the page may differ from what was saved. */
  readonly isChanged: boolean;
}

export interface PaperChoice {
  readonly paper: 'letter' | 'a4';
  readonly shownAs: 'name' | 'identifier';
}

export interface LabelsProps extends PapersProps {
  /** As it was saved. */
  readonly tomorrow: Tomorrow;
  readonly shownAs: PaperChoice['shownAs'];
}
