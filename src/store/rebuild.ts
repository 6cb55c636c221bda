/** Derived rows from the journal, in chunks, when the fold's edition changed, after a large take-in, or after they were given up. */
import type { BookDatabase } from './database.ts';
import { derivedEdition } from './edition.ts';
import { storageFailure } from './failures.ts';
import { derivedRow, isReadable } from './folding.ts';
import type { TakeInMark } from './handOver/handOver.ts';
import { setDerivedComplete } from './marks.ts';
import { bookState, openSession, type Session, setBookState } from './session.ts';
import { afterTakeIn } from './takeInLock.ts';

const chunkKeys = 200;

interface Survey {
  readonly keys: readonly string[];
  readonly unreadable: readonly string[];
}

/** Reads the journal through once, in slices: every record it names, and every row that cannot be read. */
async function survey(db: BookDatabase): Promise<Survey> {
  const keys = new Set<string>();
  const unreadable: string[] = [];
  let from = '';
  for (;;) {
    const rows = await db.journal.where('id').above(from).limit(1000).toArray();
    for (const row of rows) {
      if (!isReadable(row)) unreadable.push(row.id);
      for (const key of row.about) keys.add(key);
    }
    const last = rows.at(-1);
    if (last === undefined) return { keys: [...keys].sort(), unreadable };
    from = last.id;
  }
}

/** One chunk: fresh facts in, rows out, in one transaction, so that a write in between is never overwritten by what was read before. */
export const rebuildChunk = async (db: BookDatabase, keys: readonly string[]): Promise<void> =>
  db.transaction('rw', db.journal, db.records, async () => {
    const facts = await Promise.all(keys.map((key) => db.journal.where('about').equals(key).toArray()));
    const rows = keys.flatMap((key, index) => derivedRow(key, facts[index] ?? []) ?? []);
    await db.records.bulkPut(rows);
  });

const tell = (session: Session, rebuilding: { done: number; total: number } | null, unreadable: readonly string[]) => {
  const state = bookState();
  if (openSession() === session && state.kind === 'open') setBookState({ ...state, rebuilding, unreadable });
};

/** Rows of records that no fact names. Asked again inside the transaction: a write may have made one meanwhile. */
async function removeStale(db: BookDatabase, keys: readonly string[]): Promise<void> {
  const named = new Set(keys);
  const held = await db.records.toCollection().primaryKeys();
  const suspects = held.filter((key) => !named.has(key));
  if (suspects.length === 0) return;
  await db.transaction('rw', db.journal, db.records, async () => {
    for (const key of suspects) {
      if ((await db.journal.where('about').equals(key).count()) === 0) await db.records.delete(key);
    }
  });
}

const markOf = async (db: BookDatabase): Promise<TakeInMark | undefined> =>
  (await db.meta.get('takeIn'))?.value as TakeInMark | undefined;

/**
 * The rows are whole, unless a take-in moved on meanwhile in another window. A file whose facts were all in already is whole with them:
 * its mark goes.
 */
const declareWhole = (db: BookDatabase, before: TakeInMark | undefined, unreadable: readonly string[]) =>
  db.transaction('rw', db.meta, async () => {
    const mark = await markOf(db);
    if (mark?.of !== before?.of || mark?.doneCount !== before?.doneCount) return false;
    await db.meta.bulkPut([
      { key: 'derived', value: derivedEdition },
      { key: 'unreadable', value: unreadable },
    ]);
    if (mark !== undefined && mark.doneCount >= mark.totalCount) await db.meta.delete('takeIn');
    return true;
  });

/** The same for whoever holds the lock already. */
export async function rebuildNow(session: Session): Promise<void> {
  const { db, which } = session;
  setDerivedComplete(which, false);
  const before = await markOf(db);
  const { keys, unreadable } = await survey(db);
  for (let from = 0; from < keys.length; from += chunkKeys) {
    tell(session, { done: from, total: keys.length }, unreadable);
    await rebuildChunk(db, keys.slice(from, from + chunkKeys));
  }
  await removeStale(db, keys);
  if (await declareWhole(db, before, unreadable)) setDerivedComplete(which, true);
  tell(session, null, unreadable);
}

/** Rebuilds every derived row. Interrupted, it starts again at the next opening. Rejects with what the database throws. */
export const rebuild = (session: Session): Promise<void> => afterTakeIn(session.which, () => rebuildNow(session));

let running: Promise<void> = Promise.resolve();

/** Rebuilds in the background; a disk that is still full leaves it to the next opening. */
export function rebuildSoon(session: Session): void {
  running = running
    .then(() => (openSession() === session ? rebuild(session) : undefined))
    .catch((error) => {
      if (storageFailure(error) === null) throw error;
    });
}

/** Settles when no rebuild is under way in this tab. */
export const rebuildSettled = (): Promise<void> => running;
