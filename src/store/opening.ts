/** Opening a book, making one, and what to say when it is gone, newer or held up. What writes and rebuilds is loaded when needed. */
import { lookAtClock } from './clock.ts';
import type { Which } from './database.ts';
import { newId } from './device.ts';
import { flushDrafts } from './drafts.ts';
import { derivedIsCurrent } from './edition.ts';
import { storageFailure } from './failures.ts';
import { noteError } from './lastErrors.ts';
import { heldMark, lastOpened, setDerivedComplete, setLastOpened } from './marks.ts';
import { hold, opened } from './openDatabase.ts';
import { notePersisted } from './persistence.ts';
import { openSession, type Session, setBookState } from './session.ts';
import { watchPage } from './watching.ts';
import { noteClock, type Written } from './write.ts';
import { writerFor } from './writer.ts';

async function openOne(which: Which): Promise<void> {
  const db = await opened(which);
  if (db === 'blocked') return setBookState({ kind: 'failed', which, why: 'blocked' }, null);
  if (db === 'newerVersion') return setBookState({ kind: 'newerVersion', which }, null);
  const [bookId, unreadable] = await db.meta.bulkGet(['bookId', 'unreadable']);
  if (bookId === undefined) {
    db.close();
    return setBookState(heldMark(which) === null ? { kind: 'none', which } : { kind: 'evicted', which }, null);
  }
  const session: Session = { which, db, bookId: String(bookId.value), ...(await writerFor(which, db)) };
  const current = await derivedIsCurrent(db);
  if (!current) setDerivedComplete(which, false);
  hold(session, (unreadable?.value as string[] | undefined) ?? []);
  if (!current) (await import('./rebuild.ts')).rebuildSoon(session);
  await noteClock(session);
  void notePersisted(session);
}

/** Opens a database, whatever comes of it: the outcome is the book state. */
export async function settleOpening(which: Which): Promise<void> {
  try {
    await openOne(which);
  } catch (error) {
    noteError(error);
    if (storageFailure(error) === null) console.error(error);
    setBookState({ kind: 'failed', which, why: 'unknown' }, null);
  }
}

/** Opens the book that was open last, the real one at first. Never rejects: the outcome is the book state. */
export async function openBooks(): Promise<void> {
  watchPage();
  const which = lastOpened();
  setBookState({ kind: 'opening' }, null);
  await settleOpening(which);
}

/** Opens the other database; the book state tells whether a book is in it. */
export async function switchBook(which: Which): Promise<void> {
  await closeBook();
  setLastOpened(which);
  await settleOpening(which);
}

/** Closes the book in this tab; what is being typed is written down first. */
export async function closeBook(): Promise<void> {
  await flushDrafts();
  openSession()?.db.close();
  setBookState({ kind: 'opening' }, null);
}

/** A new book in an empty database, with its own writer. `failed: unknown` when that database already holds one. */
export async function newBook({ firmName, practice }: { firmName: string; practice: boolean }): Promise<Written> {
  const which: Which = practice ? 'practice' : 'book';
  await closeBook();
  const { begin, notBegun } = await import('./beginning.ts');
  try {
    const db = await opened(which);
    if (typeof db === 'string') {
      await settleOpening(which);
      return { kind: 'failed', why: db === 'blocked' ? 'lost' : 'newer' };
    }
    setDerivedComplete(which, true);
    const begun = await begin(db, which, newId(), firmName);
    if (begun === null) {
      db.close();
      await settleOpening(which);
      return { kind: 'failed', why: 'unknown' };
    }
    begun.session.lastSequence = begun.outcome.factIds.length;
    hold(begun.session, []);
    lookAtClock();
    return begun.outcome;
  } catch (error) {
    const failed = notBegun(error);
    await settleOpening(which);
    return failed;
  }
}
