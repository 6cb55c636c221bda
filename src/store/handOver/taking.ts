/**
 * Takes in what a preview showed: a union by fact id, in one transaction, into the open book or, where none is, as a restore with a
 * writer of its own. Nothing that is here is changed; an id that stands on other bytes is left out aloud.
 */
import { prefixOf, type SameNumber, sameNumber } from '#records/sampleNumber.ts';
import type { BookDatabase, FileRow, JournalRow } from '../database.ts';
import { storageFailure } from '../failures.ts';
import { derivedRow } from '../folding.ts';
import { samplesOf } from '../lookup.ts';
import { setDerivedComplete } from '../marks.ts';
import { settleOpening } from '../opening.ts';
import { rebuildSettled, rebuildSoon } from '../rebuild.ts';
import { reopen } from '../reopening.ts';
import { openSession, type Session, theSession } from '../session.ts';
import { type FailedWhy, giveUpDerived } from '../write.ts';
import { prefixesOfOthers } from '../writer.ts';
import type { Preview, Progress } from './handOver.ts';
import { type Contents, contentsOf } from './looking.ts';
import { restoreInto } from './restoring.ts';

export type TakenIn =
  | {
      readonly kind: 'takenIn';
      /** Facts added by this call. */
      readonly newCount: number;
      /** Papers and pictures added by this call. */
      readonly filesCount: number;
      /** Labels that now stand on more than one sample. */
      readonly sharedNumbers: readonly SameNumber[];
      readonly bothChangedCount: number;
    }
  /** Stopped by a person: what was taken stays, under the mark; the same file goes on where it stood. */
  | { readonly kind: 'cancelled'; readonly doneCount: number; readonly totalCount: number }
  /**
   * `stale`: the book was closed or switched since the preview: look into the file again. `begun`: another file is half taken in, or
   * another window is taking this one in: choose that file again, or leave it at that.
   */
  | { readonly kind: 'refused'; readonly why: 'stale' | 'forks' | 'begun' }
  | { readonly kind: 'failed'; readonly why: FailedWhy };

export interface TakeInOptions {
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

/** Beyond this many records the derived rows are rebuilt after the transaction instead of inside it. */
const refoldAtOnce = 300;

const asRow = ({ id, text, link }: { id: string; text: string; link: string }): JournalRow => ({
  id,
  text,
  link,
  about: (JSON.parse(text) as { about: string[] }).about,
});

async function refoldKeys(db: BookDatabase, keys: ReadonlySet<string>): Promise<void> {
  for (const key of keys) {
    const row = derivedRow(key, await db.journal.where('about').equals(key).toArray());
    if (row !== null) await db.records.put(row);
  }
}

/** Compared at every take-in: where another writer of the book gives numbers under our two digits, we step on. */
async function stepOnPrefix(session: Session): Promise<void> {
  const { db, writer } = session;
  const taken = prefixesOfOthers(await db.journal.toArray(), writer);
  if (!taken.has(session.prefix)) return;
  session.prefix = prefixOf(writer, taken);
  await db.meta.put({ key: 'prefix', value: session.prefix });
}

/** Adds what is not here; hands back how many, or null when the database was emptied meanwhile. */
const union = (session: Session, rows: readonly JournalRow[], files: readonly FileRow[]): Promise<number | null> => {
  const { db, which } = session;
  const keys = new Set(rows.flatMap((row) => row.about));
  const whole = keys.size <= refoldAtOnce;
  return db.transaction('rw', [db.journal, db.records, db.files, db.meta], async () => {
    if ((await db.meta.get('bookId'))?.value !== session.bookId) return null;
    const held = await db.journal.bulkGet(rows.map(({ id }) => id));
    const fresh = rows.filter((_, index) => held[index] === undefined);
    await db.journal.bulkAdd(fresh);
    await db.files.bulkPut([...files]);
    await stepOnPrefix(session);
    if (whole) await refoldKeys(db, keys);
    else {
      setDerivedComplete(which, false);
      await db.meta.delete('derived');
    }
    return fresh.length;
  }) as unknown as Promise<number | null>;
};

async function unionTwice(session: Session, rows: readonly JournalRow[], files: readonly FileRow[]) {
  try {
    return await union(session, rows, files);
  } catch (error) {
    const why = storageFailure(error);
    if (why === 'lost') await reopen(session.db);
    else if (why === 'quota') await giveUpDerived(session);
    else throw error;
    return await union(session, rows, files);
  }
}

async function sharedNumbers(db: BookDatabase): Promise<readonly SameNumber[]> {
  const rows = await db.records.where('[kind+sort]').between(['sample', ''], ['sample', '\uffff']).toArray();
  return sameNumber(samplesOf(rows));
}

async function takenInto(session: Session, { entries, files }: Contents): Promise<TakenIn> {
  const newCount = await unionTwice(session, entries.map(asRow), files);
  if (newCount === null) return { kind: 'failed', why: 'evicted' };
  if ((await session.db.meta.get('derived')) === undefined) rebuildSoon(session);
  await rebuildSettled();
  return {
    kind: 'takenIn',
    newCount,
    filesCount: files.length,
    sharedNumbers: await sharedNumbers(session.db),
    bothChangedCount: 0,
  };
}

async function restored({ which, entries, files }: Contents, bookId: string): Promise<TakenIn> {
  const session = await restoreInto(which, bookId, entries.map(asRow), files);
  if (typeof session === 'string') {
    await settleOpening(which);
    return { kind: 'failed', why: session };
  }
  await rebuildSettled();
  return {
    kind: 'takenIn',
    newCount: entries.length,
    filesCount: files.length,
    sharedNumbers: await sharedNumbers(session.db),
    bothChangedCount: 0,
  };
}

/** The record in a custody sheet's PDF was made before the act of issuing it: the act follows, from the sheet. */
async function afterPaper({ part }: Preview, taken: TakenIn, pdfHashes: readonly string[]): Promise<TakenIn> {
  if (part !== 'paper' || taken.kind !== 'takenIn') return taken;
  const { issueFromPaper } = await import('./paperIssue.ts');
  for (const hash of pdfHashes) await issueFromPaper(hash);
  return taken;
}

/** Never throws for what a device can do to us. */
export async function takeIn(preview: Preview, _options: TakeInOptions = {}): Promise<TakenIn> {
  const found = contentsOf(preview);
  if (found === undefined || found.against !== openSession()) return { kind: 'refused', why: 'stale' };
  if (preview.forks.length > 0) return { kind: 'refused', why: 'forks' };
  try {
    const taken =
      found.against === null ? await restored(found, preview.bookId) : await takenInto(found.against, found);
    return await afterPaper(
      preview,
      taken,
      found.files.map(({ hash }) => hash),
    );
  } catch (error) {
    const why = storageFailure(error);
    if (why === null) throw error;
    if (openSession() === null) await settleOpening(found.which);
    return { kind: 'failed', why };
  }
}

/** A person leaves a half-taken file at what was taken: the mark goes, and what is missing is missing. */
export async function leaveTakeIn(): Promise<void> {
  await theSession().db.meta.delete('takeIn');
}
