/**
 * Wiping this device: only after a backup was read through and found to hold every entry (by id and link) and every paper and picture of
 * the book. It is looked again inside the transaction that empties the tables, so that nothing written meanwhile in another window is lost.
 */
import Dexie from 'dexie';
import { booksHere, bothBooks, type InTheWay, isClear, standingInTheWay, withDatabase } from './beforeWiping.ts';
import { type BookDatabase, databaseNames, type Which } from './database.ts';
import { forgetDrafts } from './drafts.ts';
import { storageFailure } from './failures.ts';
import type { LookRefusal, Progress } from './handOver/handOver.ts';
import { readWhole, type Whole } from './handOver/wholeFile.ts';
import { forgetErrors, noteError } from './lastErrors.ts';
import { clearMarks } from './marks.ts';
import { openSession, setBookState } from './session.ts';

/** A backup that was read through and holds all that is here. */
export interface VerifiedBackup {
  readonly kind: 'holdsAll';
  readonly which: Which;
  readonly bookId: string;
  readonly factsCount: number;
  readonly filesCount: number;
}

export type BackupCheck =
  | VerifiedBackup
  | { readonly kind: 'sealed' }
  | { readonly kind: 'refused'; readonly why: LookRefusal }
  /** What is here and not in the file, or not as it is here. */
  | { readonly kind: 'lacks'; readonly entriesCount: number; readonly filesCount: number };

export type Wiped =
  | { readonly kind: 'wiped' }
  | { readonly kind: 'inTheWay'; readonly inTheWay: InTheWay }
  /** Something was written since the backup was read through: make and choose a new one. */
  | { readonly kind: 'changed' }
  | { readonly kind: 'failed'; readonly why: 'lost' | 'quota' | 'unknown' };

export interface CheckOptions {
  readonly passphrase?: string;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

const verified = new WeakMap<VerifiedBackup, Whole>();

interface Lacking {
  readonly entriesCount: number;
  readonly filesCount: number;
}

/** Callable inside a transaction over journal and files. */
async function lackingIn(db: BookDatabase, whole: Whole): Promise<Lacking> {
  let entriesCount = 0;
  let filesCount = 0;
  await db.journal.each(({ id, link }) => {
    if (whole.linkById.get(id) !== link) entriesCount += 1;
  });
  await db.files.toCollection().eachPrimaryKey((hash) => {
    if (!whole.fileHashes.has(hash)) filesCount += 1;
  });
  return { entriesCount, filesCount };
}

/** Reads a backup through and compares it with the book of this device. Changes nothing; never throws for what is in the file. */
export async function checkBackup(file: Blob, options: CheckOptions = {}): Promise<BackupCheck> {
  const { which, bookId } = await booksHere();
  const whole = await readWhole(file, options);
  if (whole.kind !== 'whole') return whole;
  if (which === null || bookId === null || whole.bookId !== bookId) return { kind: 'refused', why: 'otherBook' };
  const lacking = await withDatabase(which, async (db) =>
    db.transaction('r', db.journal, db.files, async () => lackingIn(db, whole)),
  );
  if (lacking === null || lacking.entriesCount > 0 || lacking.filesCount > 0)
    return { kind: 'lacks', ...(lacking ?? { entriesCount: 0, filesCount: 0 }) };
  const backup: VerifiedBackup = {
    kind: 'holdsAll',
    which,
    bookId,
    factsCount: whole.linkById.size,
    filesCount: whole.fileHashes.size,
  };
  verified.set(backup, whole);
  return backup;
}

/** Empties the book's tables in one transaction, unless something speaks against it by now. */
async function emptied(db: BookDatabase, which: Which, whole: Whole): Promise<Wiped> {
  const tables = [db.journal, db.records, db.drafts, db.files, db.meta];
  return db.transaction('rw', tables, async (): Promise<Wiped> => {
    const inTheWay = await standingInTheWay(db, which);
    if (!isClear(inTheWay)) return { kind: 'inTheWay', inTheWay };
    const lacking = await lackingIn(db, whole);
    if (lacking.entriesCount > 0 || lacking.filesCount > 0) return { kind: 'changed' };
    for (const table of tables) await table.clear();
    return { kind: 'wiped' };
  });
}

/** Files that another app handed over and nobody took in. The app itself stays, so that it opens without a connection. */
async function forgetReceivedFiles(): Promise<void> {
  if (typeof caches === 'undefined') return;
  for (const name of await caches.keys()) if (/received/i.test(name)) await caches.delete(name);
}

/** Once the tables are empty, the databases go with all that is left in them, the practice book too. */
async function wipeAll(which: Which, whole: Whole): Promise<Wiped> {
  const done = await withDatabase(which, async (db) => emptied(db, which, whole));
  if (done === null) return { kind: 'changed' };
  if (done.kind !== 'wiped') return done;
  // Not by way of `opening`: the page that wipes stays up, so that it can say what came of it.
  forgetDrafts();
  openSession()?.db.close();
  setBookState({ kind: 'none', which: 'book' }, null);
  for (const each of bothBooks) await Dexie.delete(databaseNames[each]);
  return done;
}

/** Wipes both books, the marks beside them and files received. Afterwards this device is as it was before the first book. */
export async function wipe(backup: VerifiedBackup): Promise<Wiped> {
  const whole = verified.get(backup);
  if (whole === undefined) return { kind: 'changed' };
  try {
    const { which, bookId, inTheWay } = await booksHere();
    if (!isClear(inTheWay)) return { kind: 'inTheWay', inTheWay };
    if (which !== backup.which || bookId !== backup.bookId) return { kind: 'changed' };
    const done = await wipeAll(which, whole);
    if (done.kind !== 'wiped') return done;
    await forgetReceivedFiles();
    forgetErrors();
    clearMarks();
    return done;
  } catch (error) {
    noteError(error);
    const why = storageFailure(error);
    if (why === null) throw error;
    return { kind: 'failed', why };
  }
}
