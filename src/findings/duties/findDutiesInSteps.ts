/** The same as findDuties, found in small steps, so that a page that is looked at answers meanwhile. A small book takes one. */
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import { dutiesInSteps, findDuties } from './findDuties.ts';
import type { Steps } from './steps.ts';

/** Below this nobody notices: decided here. */
const samplesAtOnce = 250;

export function* findDutiesInSteps(book: Book, today: string, before?: DutiesOfBook): Steps<DutiesOfBook> {
  if (book.samples.size <= samplesAtOnce) return findDuties(book, today, before);
  return yield* dutiesInSteps(book, today, before);
}
