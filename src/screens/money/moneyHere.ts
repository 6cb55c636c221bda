/** The book, what follows from it, the day, and whose hands the device is in: what every page of money is handed. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Book } from '#records/book.ts';
import { en } from '#words/moneyScreen.ts';

export interface MoneyHere {
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly today: string;
  readonly zone: string;
  /** Person id of whoever holds the device. */
  readonly by: string | null;
}

/** Choices that name nothing. */
export const noOne = '-';

/** Dollars as typed: a dollar sign before the figure is no word. */
export const withoutSign = (text: string): string => text.trim().replace(/^\$/, '');

/** The sentence for an amount with parts of a cent; null when it has none. */
export const brokenCents = (label: string, text: string): string | null =>
  /[.,]\d{3,}\s*$/.test(withoutSign(text)) ? en.cents(label) : null;
