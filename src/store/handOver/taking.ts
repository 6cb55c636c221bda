/**
 * Takes in what a preview showed: a union by fact id, into the open book or, where none is, as a restore with a writer of its own. Large
 * files go in chunks under a mark, so that a stop, a full disk or a dead battery leaves a union of what came so far, said as such, and the
 * same file goes on where it stood. Nothing that is here is changed; an id that stands on other bytes is left out aloud.
 */
import type { SameNumber } from '#records/sampleNumber.ts';
import type { BookDatabase } from '../database.ts';
import { derivedIsCurrent } from '../edition.ts';
import { type StorageFailure, storageFailure } from '../failures.ts';
import { keepBeside } from '../keepBeside.ts';
import { setDerivedComplete } from '../marks.ts';
import { hold, opened } from '../openDatabase.ts';
import { closeBook, settleOpening } from '../opening.ts';
import { rebuildNow, rebuildSettled, rebuildSoon } from '../rebuild.ts';
import { openSession, type Session, theSession } from '../session.ts';
import { withTakeInLock } from '../takeInLock.ts';
import type { FailedWhy } from '../write.ts';
import { type Contents, contents } from './contents.ts';
import { elsewhereIn, isOutdated, noteElsewhere } from './elsewhere.ts';
import type { Preview } from './handOver.ts';
import { missingHere } from './held.ts';
import { noteLackedFiles } from './lackedFiles.ts';
import { notePartner } from './partners.ts';
import { runThrough, type TakeInOptions } from './running.ts';
import { NoStep, type Run } from './steps.ts';

export type TakenIn =
  | {
      readonly kind: 'takenIn';
      /** Facts added by this call. */
      readonly newCount: number;
      /** Papers and pictures added by this call. */
      readonly filesCount: number;
      /** Labels of the file that now stand on more than one sample. */
      readonly sharedNumbers: readonly SameNumber[];
      readonly bothChangedCount: number;
    }
  /** Stopped by a person: what was taken stays, under the mark; the same file goes on where it stood. */
  | { readonly kind: 'cancelled'; readonly doneCount: number; readonly totalCount: number }
  /**
   * `stale`: the book was closed or switched, or another file came in, since the preview: look into the file again. `begun`: another
   * file is half taken in, or another window is taking this one in: choose that file again, or leave it at that.
   */
  | { readonly kind: 'refused'; readonly why: 'stale' | 'forks' | 'begun' }
  | { readonly kind: 'failed'; readonly why: FailedWhy };

/** The record in a custody sheet's PDF was made before the act of issuing it: the act follows, from the sheet. */
async function afterPaper({ part }: Preview, { paperHashes }: Contents): Promise<void> {
  if (part !== 'paper') return;
  const { issueFromPaper } = await import('./paperIssue.ts');
  for (const hash of paperHashes) await issueFromPaper(hash);
}

/** Whatever came of it, an open book is seen to be open. */
async function settle(run: Run): Promise<void> {
  const { session, db } = run;
  if (session === null) {
    db.close();
    return settleOpening(run.found.which);
  }
  if (openSession() === null) hold(session, []);
}

/** Rows that could not be folded meanwhile are rebuilt: not under the lock, which the rebuild takes itself. */
async function listsAfter(): Promise<void> {
  const session = openSession();
  try {
    if (session !== null && (await session.db.meta.get('derived')) === undefined) rebuildSoon(session);
    await rebuildSettled();
  } catch (error) {
    if (storageFailure(error) === null) throw error;
  }
}

async function taken(run: Run, preview: Preview, options: TakeInOptions): Promise<TakenIn> {
  const { found } = run;
  const outcome = await runThrough(run, options);
  await settle(run);
  if (outcome === 'stopped') {
    const { doneCount = 0, totalCount = found.rows.length } = run.mark ?? {};
    return { kind: 'cancelled', doneCount, totalCount };
  }
  await notePartner(found.header);
  await noteLackedFiles(found.lackedFiles);
  await afterPaper(preview, found);
  return {
    kind: 'takenIn',
    newCount: run.newCount,
    filesCount: run.filesCount,
    sharedNumbers: found.shared,
    bothChangedCount: preview.bothChanged.length,
  };
}

async function failed(run: Run, error: unknown): Promise<TakenIn> {
  const why = error instanceof NoStep ? error.why : storageFailure(error);
  if (why === null) throw error;
  try {
    await settle(run);
  } catch (second) {
    if (storageFailure(second) === null) throw second;
  }
  if (why === 'begun' || why === 'stale') return { kind: 'refused', why };
  if (why !== 'left') return { kind: 'failed', why };
  const { doneCount = 0, totalCount = 0 } = run.mark ?? {};
  return { kind: 'cancelled', doneCount, totalCount };
}

async function databaseFor({ which, against }: Contents): Promise<BookDatabase | FailedWhy> {
  if (against !== null) return against.db;
  await closeBook();
  const db = await opened(which);
  if (typeof db !== 'string') {
    setDerivedComplete(which, true);
    return db;
  }
  await settleOpening(which);
  return db === 'blocked' ? 'lost' : 'newer';
}

/** Never throws for what a device can do to us. */
export async function takeIn(preview: Preview, options: TakeInOptions = {}): Promise<TakenIn> {
  const found = contents.get(preview);
  if (found === undefined || found.against !== openSession()) return { kind: 'refused', why: 'stale' };
  if (preview.forks.length > 0) return { kind: 'refused', why: 'forks' };
  await rebuildSettled();
  const done = await withTakeInLock(found.which, async (): Promise<TakenIn> => {
    let run: Run | null = null;
    try {
      const db = await databaseFor(found);
      if (typeof db === 'string') return { kind: 'failed', why: db };
      run = {
        ...{ db, found, bookId: preview.bookId, fileName: preview.fileName, session: found.against },
        ...{ mark: null, derivedWhole: true, newCount: 0, filesCount: 0 },
      };
      return await taken(run, preview, options);
    } catch (error) {
      if (run !== null) return await failed(run, error);
      const why = storageFailure(error);
      if (why === null) throw error;
      if (openSession() === null) await settleOpening(found.which);
      return { kind: 'failed', why };
    }
  });
  await listsAfter();
  return done ?? { kind: 'refused', why: 'begun' };
}

/** What the header tells of entries that are not here. Nothing, when another file came in meanwhile: that one's look was later. */
async function noteTold({ db }: Session, found: Contents): Promise<void> {
  await db.transaction('rw', db.meta, async () => {
    const known = JSON.stringify(await elsewhereIn(db));
    if (known === JSON.stringify(found.elsewhere) || (await isOutdated(db, found))) return;
    await noteElsewhere(db, found);
    await db.meta.put({ key: 'missing', value: found.missing });
  });
}

/**
 * A file that was looked into and brings nothing still says what its device holds: there is nothing to take in, so it counts as taken.
 * Without that a device whose last file brought nothing new would be sent the same entries for ever. The book is not touched.
 */
export async function noteNothingNew(preview: Preview): Promise<void> {
  const found = contents.get(preview);
  const brings = preview.newCount + preview.newFilesCount + preview.forks.length + preview.brokenCount > 0;
  if (found === undefined || found.against === null || found.against !== openSession() || brings) return;
  if (preview.salvaged || preview.part === 'paper') return;
  try {
    await notePartner(found.header);
    await noteTold(found.against, found);
  } catch (error) {
    // Looking goes on on a full disk; the next file tells it again.
    if (storageFailure(error) === null) throw error;
  }
}

/** A person leaves a half-taken file at what was taken: the mark goes, and what is missing is noted. null: done; else the mark stands. */
export const leaveTakeIn = (session: Session = theSession()): Promise<StorageFailure | null> =>
  keepBeside(session.db, () => leave(session));

async function leave(session: Session): Promise<void> {
  const { db, which } = session;
  // Lists first: until they tell what came, the mark keeps everything from being called low.
  if (!(await derivedIsCurrent(db))) await withTakeInLock(which, () => rebuildNow(session));
  const missing = await missingHere(db);
  await db.transaction('rw', db.meta, async () => {
    await db.meta.put({ key: 'missing', value: missing });
    await db.meta.delete('takeIn');
  });
}
