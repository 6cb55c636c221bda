/** A backup into a database without a book: same book, new writer. */
import type { FileRow, JournalRow, Which } from '../database.ts';
import { setDerivedComplete } from '../marks.ts';
import { hold, opened } from '../openDatabase.ts';
import { closeBook } from '../opening.ts';
import { rebuildSoon } from '../rebuild.ts';
import type { Session } from '../session.ts';
import { drawWriter } from '../writer.ts';

/**
 * Fills an empty database with a book and opens it; the derived rows follow. `unknown` when it holds a book already. Rejects with what
 * the database throws; then nothing of it stays.
 */
export async function restoreInto(
  which: Which,
  bookId: string,
  rows: readonly JournalRow[],
  files: readonly FileRow[],
): Promise<Session | 'lost' | 'newer' | 'unknown'> {
  await closeBook();
  const db = await opened(which);
  if (db === 'blocked') return 'lost';
  if (db === 'newerVersion') return 'newer';
  const session = await db.transaction('rw', [db.journal, db.records, db.files, db.meta], async () => {
    if ((await db.meta.get('bookId')) !== undefined) return null;
    for (const table of [db.journal, db.records, db.files, db.meta]) await table.clear();
    await db.meta.put({ key: 'bookId', value: bookId });
    await db.journal.bulkAdd([...rows]);
    await db.files.bulkPut([...files]);
    return { which, db, bookId, ...(await drawWriter(db, rows)) } satisfies Session;
  });
  if (session === null) {
    db.close();
    return 'unknown';
  }
  setDerivedComplete(which, false);
  hold(session, []);
  rebuildSoon(session);
  return session;
}
