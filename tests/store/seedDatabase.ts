/** Fills a device with a generated book, quickly: rows straight into the tables, as a backup taken in would leave them. */
import { prefixOf } from '#records/sampleNumber.ts';
import { BookDatabase, databaseNames } from '#store/database.ts';
import { derivedEdition } from '#store/edition.ts';
import { setHeldMark } from '#store/marks.ts';
import type { GeneratedBook } from './generateBook.ts';

/** `journalOfLastCount`: only so many of the newest facts go into the journal, where a test needs no more. */
export async function seedDatabase(
  { bookId, writer, rows, derived }: GeneratedBook,
  { journalOfLastCount = rows.length }: { journalOfLastCount?: number } = {},
): Promise<void> {
  const db = new BookDatabase(databaseNames.book);
  await db.open();
  await db.journal.bulkAdd(rows.slice(-journalOfLastCount));
  await db.records.bulkAdd([...derived()]);
  await db.meta.bulkPut([
    { key: 'bookId', value: bookId },
    { key: 'writer', value: writer },
    { key: 'prefix', value: prefixOf(writer) },
    { key: 'derived', value: derivedEdition },
  ]);
  setHeldMark('book', { bookId, writer, lastSequence: rows.length });
  db.close();
}
