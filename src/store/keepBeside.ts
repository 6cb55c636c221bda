/**
 * What is kept beside the book (a name, a mark, who holds the device): one row, written by itself. A lost connection is opened again and
 * the row written once more; what did not work is an answer, so that a page never waits for a promise that nobody hears.
 */
import type { BookDatabase } from './database.ts';
import { type StorageFailure, storageFailure } from './failures.ts';
import { noteError } from './lastErrors.ts';
import { readTwice } from './reopening.ts';

/** null: it is kept. `keep` may run twice and must come to the same. Throws only for a bug. */
export async function keepBeside(
  db: BookDatabase,
  keep: (db: BookDatabase) => PromiseLike<unknown>,
): Promise<StorageFailure | null> {
  try {
    await readTwice(db, async () => keep(db));
    return null;
  } catch (error) {
    noteError(error);
    const why = storageFailure(error);
    if (why === null) throw error;
    return why;
  }
}
