/** A file into a database without a book: same book, new writer. */
import type { BookDatabase, JournalRow, Which } from '../database.ts';
import type { Session } from '../session.ts';
import { drawWriter } from '../writer.ts';

/**
 * Inside the caller's transaction over all tables: makes the empty database one of this book. null when it holds a book already.
 * `numbered`: rows that name sample numbers, so that the new writer's own begin otherwise.
 */
export async function groundOf(
  db: BookDatabase,
  which: Which,
  bookId: string,
  numbered: readonly JournalRow[],
): Promise<Session | null> {
  if ((await db.meta.get('bookId')) !== undefined) return null;
  for (const table of [db.journal, db.records, db.files, db.meta]) await table.clear();
  await db.meta.put({ key: 'bookId', value: bookId });
  return { which, db, bookId, ...(await drawWriter(db, numbered)) };
}
