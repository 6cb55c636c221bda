/**
 * The whole book in memory, for what follows from all of it. Read in slices with a breath between, and kept: after a write only the
 * records that the new facts name are read again, so that what did not change is the same object as before.
 */
import type { Book } from '#records/book.ts';
import { sequenceOf, writerOf } from '#records/chain.ts';
import { pacer } from './breath.ts';
import type { BookDatabase, DerivedRow } from './database.ts';
import { headsIn, idsOf } from './heads.ts';
import { besideKeys, bookOf } from './slices.ts';

interface Held {
  readonly rows: Map<string, DerivedRow>;
  /** Up to which sequence of each writer the rows stand. */
  readonly heads: ReadonlyMap<string, number>;
  readonly standing: string;
  readonly book: Book;
}

/** What tells that the book changed: cheap to ask, so a live query may ask it after every write. */
export interface BookSignal {
  readonly heads: ReadonlyMap<string, number>;
  /** Of the lists and of a file half taken in: where it changed, every row is read anew. */
  readonly standing: string;
}

const heldBy = new WeakMap<BookDatabase, Held>();
const sliceOfRows = 500;
/** So many new facts of one writer are read row by row; beyond, the book is read anew. */
const mostNewFacts = 2000;

export async function bookSignal(db: BookDatabase): Promise<BookSignal> {
  const heads = await headsIn(db);
  const meta = await db.meta.bulkGet([...besideKeys, 'derived']);
  return {
    heads: new Map(heads.map(({ factId }) => [writerOf(factId), sequenceOf(factId)])),
    standing: JSON.stringify(meta.map((row) => row?.value ?? null)),
  };
}

/** The lists were rebuilt: what is held is not to be trusted. */
export const forgetWholeBook = (db: BookDatabase): void => void heldBy.delete(db);

async function allRows(db: BookDatabase): Promise<Map<string, DerivedRow>> {
  const rows = new Map<string, DerivedRow>();
  const pause = pacer();
  let after = '';
  for (;;) {
    const slice = await db.records.where('key').above(after).limit(sliceOfRows).toArray();
    for (const row of slice) rows.set(row.key, row);
    const last = slice.at(-1);
    if (last === undefined || slice.length < sliceOfRows) return rows;
    after = last.key;
    await pause();
  }
}

/** Keys of the records that facts written since name; null when there are too many, or when the journal went back. */
async function changedKeys(db: BookDatabase, held: Held, signal: BookSignal): Promise<ReadonlySet<string> | null> {
  const keys = new Set<string>();
  for (const writer of held.heads.keys()) if (!signal.heads.has(writer)) return null;
  for (const [writer, toCount] of signal.heads) {
    const fromCount = held.heads.get(writer) ?? 0;
    if (toCount === fromCount) continue;
    if (toCount < fromCount || toCount - fromCount > mostNewFacts) return null;
    for (const { about } of await idsOf(db, writer, fromCount + 1, toCount).toArray())
      for (const key of about) keys.add(key);
  }
  return keys;
}

async function refreshed(db: BookDatabase, held: Held, signal: BookSignal): Promise<Map<string, DerivedRow> | null> {
  const keys = await changedKeys(db, held, signal);
  if (keys === null) return null;
  const wanted = [...keys];
  const found = await db.records.bulkGet(wanted);
  wanted.forEach((key, at) => {
    const row = found[at];
    if (row === undefined) held.rows.delete(key);
    else held.rows.set(key, row);
  });
  return held.rows;
}

const sameHeads = (a: ReadonlyMap<string, number>, b: ReadonlyMap<string, number>): boolean =>
  a.size === b.size && [...a].every(([writer, count]) => b.get(writer) === count);

let reading: Promise<unknown> = Promise.resolve();

/** The book as it stands now: one reader at a time, so that two pages do not read it twice. Rejects with what the database throws. */
export function wholeBook(db: BookDatabase): Promise<Book> {
  const next = reading.then(() => readWhole(db));
  reading = next.catch(() => undefined);
  return next;
}

async function readWhole(db: BookDatabase): Promise<Book> {
  // Asked ahead of the rows: what is written while they are read is read again the next time.
  const signal = await bookSignal(db);
  const held = heldBy.get(db);
  const isWhole = held !== undefined && held.standing === signal.standing;
  if (isWhole && sameHeads(held.heads, signal.heads)) return held.book;
  const rows = (isWhole ? await refreshed(db, held, signal) : null) ?? (await allRows(db));
  const beside = await db.meta.bulkGet([...besideKeys]);
  const book = bookOf([...rows.values()], beside);
  heldBy.set(db, { rows, heads: signal.heads, standing: signal.standing, book });
  return book;
}
