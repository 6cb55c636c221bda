/** Opening a book, making one, and what to say when it is gone, newer or held up. */
import type { Which } from './database.ts';
import type { Written } from './write.ts';

/** Opens the book that was open last, the real one at first. Never rejects: the outcome is the book state. */
export async function openBooks(): Promise<void> {}

/** Opens the other database; the book state tells whether a book is in it. */
export async function switchBook(which: Which): Promise<void> {
  void which;
}

/** Closes the book in this tab. */
export async function closeBook(): Promise<void> {}

/** A new book in an empty database, with its own writer. `failed: unknown` when that database already holds one. */
export async function newBook(book: { firmName: string; practice: boolean }): Promise<Written> {
  void book;
  return { kind: 'failed', why: 'unknown' };
}
