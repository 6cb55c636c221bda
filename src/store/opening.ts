/** Opening a book, making one, and what to say when it is gone, newer or held up. */
import { keyOf } from '#records/common.ts';
import { type Appended, append } from './append.ts';
import { lastSeenAt, lookAtClock } from './clock.ts';
import type { BookDatabase, Which } from './database.ts';
import { deviceZone, happenedNow, newId } from './device.ts';
import { flushDrafts } from './drafts.ts';
import { storageFailure } from './failures.ts';
import { heldMark, lastOpened, setDerivedComplete, setLastOpened } from './marks.ts';
import { hold, opened } from './openDatabase.ts';
import { notePersisted } from './persistence.ts';
import { derivedEdition, derivedIsCurrent, rebuildSoon } from './rebuild.ts';
import { openSession, type Session, setBookState } from './session.ts';
import { watchPage } from './watching.ts';
import { noteClock, type Written } from './write.ts';
import { drawWriter, writerFor } from './writer.ts';

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
  if (!current) rebuildSoon(session);
  await noteClock(session);
  void notePersisted(session);
}

/** Opens a database, whatever comes of it: the outcome is the book state. */
export async function settleOpening(which: Which): Promise<void> {
  try {
    await openOne(which);
  } catch (error) {
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

/** Everything of a new book in one transaction: its id, its writer, its first fact. */
const begin = (db: BookDatabase, which: Which, bookId: string, firmName: string) =>
  db.transaction('rw', [db.journal, db.records, db.drafts, db.files, db.meta], async () => {
    if ((await db.meta.get('bookId')) !== undefined) return null;
    for (const table of [db.journal, db.records, db.files, db.meta]) await table.clear();
    await db.meta.bulkPut([
      { key: 'bookId', value: bookId },
      { key: 'derived', value: derivedEdition },
    ]);
    const session: Session = { which, db, bookId, ...(await drawWriter(db, [])) };
    const opening = {
      kind: 'bookOpened.v1',
      about: [keyOf('book', bookId)],
      happened: happenedNow(deviceZone()),
      by: null,
      why: null,
      body: { bookId, firmName, practice: which === 'practice' },
    } as const;
    const outcome = await append(session, [opening], { lastSeenAt: lastSeenAt(), tried: [] });
    if (outcome.kind !== 'written') throw new Refused(outcome);
    return { session, outcome };
  });

/** Carries a refusal out of the transaction, so that nothing of it stays. */
class Refused extends Error {
  readonly outcome: Exclude<Appended, { kind: 'written' }>;
  constructor(outcome: Exclude<Appended, { kind: 'written' }>) {
    super(outcome.kind);
    this.name = 'Refused';
    this.outcome = outcome;
  }
}

function notBegun(error: unknown): Written {
  if (error instanceof Refused) {
    return error.outcome.kind === 'refused' ? error.outcome : { kind: 'failed', why: 'evicted' };
  }
  const why = storageFailure(error);
  if (why === null) throw error;
  return { kind: 'failed', why };
}

/** A new book in an empty database, with its own writer. `failed: unknown` when that database already holds one. */
export async function newBook({ firmName, practice }: { firmName: string; practice: boolean }): Promise<Written> {
  const which: Which = practice ? 'practice' : 'book';
  await closeBook();
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
