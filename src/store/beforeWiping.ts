/** What is on this device before it may be wiped: which books, and what stands in the way. */
import Dexie from 'dexie';
import type { BookRecord } from '#records/book.ts';
import { type BookDatabase, databaseNames, type Which } from './database.ts';
import { flushDrafts, forgetDrafts } from './drafts.ts';
import { derivedIsCurrent } from './edition.ts';
import { databaseOf, openSession } from './session.ts';

/** What must be done before anything may be wiped. */
export interface InTheWay {
  readonly runningCount: number;
  /** What is being typed and not written down: names of drafts, such as `sample:<id>/stop`. */
  readonly drafts: readonly { readonly which: Which; readonly name: string; readonly savedAt: string }[];
  /** Lists are being made anew: whether a pump runs is not known yet. */
  readonly listsIncomplete: boolean;
}

export interface BooksHere {
  /** The book that a backup must hold: the real one where there is one, else the practice book. null: no book is here. */
  readonly which: Which | null;
  readonly bookId: string | null;
  /** Of that book; empty while its lists are not there. */
  readonly firmName: string;
  readonly both: boolean;
  readonly inTheWay: InTheWay;
}

export const bothBooks: readonly Which[] = ['book', 'practice'];

/** Runs `use` on a database of this device without switching to it; null where there is none. */
export async function withDatabase<T>(which: Which, use: (db: BookDatabase) => Promise<T>): Promise<T | null> {
  const session = openSession();
  if (session?.which === which) return use(session.db);
  if (!(await Dexie.exists(databaseNames[which]))) return null;
  const db = databaseOf(which);
  await db.openWhole();
  try {
    return await use(db);
  } finally {
    db.close();
  }
}

const bookIdIn = async (db: BookDatabase): Promise<string | null> =>
  ((await db.meta.get('bookId'))?.value as string | undefined) ?? null;

async function firmNameIn(db: BookDatabase): Promise<string> {
  const row = await db.records.where('[kind+sort]').between(['book', ''], ['book', '\uffff']).first();
  return (row?.record as BookRecord | undefined)?.firmName ?? '';
}

/** Callable inside a transaction over records, drafts and meta. */
export async function standingInTheWay(db: BookDatabase, which: Which): Promise<InTheWay> {
  const runningCount = await db.records.where('links').equals('running').count();
  const drafts = await db.drafts.toArray();
  const hasBook = (await bookIdIn(db)) !== null;
  const current = await derivedIsCurrent(db);
  return {
    runningCount,
    drafts: drafts.map(({ key, savedAt }) => ({ which, name: key.slice(0, key.lastIndexOf('#')), savedAt })),
    listsIncomplete: hasBook && !current,
  };
}

const nothingInTheWay: InTheWay = { runningCount: 0, drafts: [], listsIncomplete: false };

export const isClear = (found: InTheWay): boolean =>
  found.runningCount === 0 && found.drafts.length === 0 && !found.listsIncomplete;

/**
 * Which books are on this device, and what stands in the way of wiping them. What is being typed is written down first. A practice book
 * beside a real one stands in nobody's way; alone it is treated as the real one is.
 */
export async function booksHere(): Promise<BooksHere> {
  await flushDrafts();
  const found = new Map<Which, { readonly bookId: string; readonly firmName: string; readonly standing: InTheWay }>();
  for (const which of bothBooks) {
    const one = await withDatabase(which, async (db) => ({
      bookId: await bookIdIn(db),
      firmName: await firmNameIn(db),
      standing: await standingInTheWay(db, which),
    }));
    if (one !== null && one.bookId !== null) found.set(which, { ...one, bookId: one.bookId });
  }
  const which = bothBooks.find((each) => found.has(each)) ?? null;
  const book = which === null ? undefined : found.get(which);
  return {
    which,
    bookId: book?.bookId ?? null,
    firmName: book?.firmName ?? '',
    both: found.size === 2,
    inTheWay: book?.standing ?? nothingInTheWay,
  };
}

/** Throws away what is being typed, in whichever window it was. */
export async function discardDrafts(which: Which): Promise<void> {
  forgetDrafts();
  await withDatabase(which, async (db) => db.drafts.clear());
}
