/** The derived rows of what a file touched, after its facts are in; then the mark goes, with the row that says they are whole. */
import { pacer } from '../breath.ts';
import type { BookDatabase, DerivedRow } from '../database.ts';
import { derivedEdition } from '../edition.ts';
import { derivedRow } from '../folding.ts';
import { setDerivedComplete } from '../marks.ts';
import { rebuildChunk, rebuildNow } from '../rebuild.ts';
import type { Session } from '../session.ts';
import type { Contents } from './contents.ts';
import type { Progress } from './handOver.ts';

const chunkKeys = 200;
/** Folded outside the transaction, so that more may go into one. */
const foldedKeys = 600;

const ownCount = (db: BookDatabase, writer: string) =>
  db.journal.where('id').between(`${writer}.`, `${writer}/`).count();

/** Folded from what is in memory. */
async function foldedFromMemory({ rowsByKey }: Contents, keys: readonly string[]): Promise<readonly DerivedRow[]> {
  const pace = pacer();
  const rows: DerivedRow[] = [];
  for (const key of keys) {
    const row = derivedRow(key, rowsByKey.get(key) ?? []);
    if (row !== null) rows.push(row);
    await pace();
  }
  return rows;
}

/** Puts what was folded from memory, unless something was written here meanwhile: then it is folded from the journal. */
async function putFolded({ db, writer }: Session, keys: readonly string[], rows: readonly DerivedRow[]): Promise<void> {
  const put = await db.transaction('rw', db.journal, db.records, async () => {
    if ((await ownCount(db, writer)) > 0) return false;
    await db.records.bulkPut([...rows]);
    return true;
  });
  if (!put) await rebuildChunk(db, keys);
}

/** Everything in the journal came with this file, so nothing is read again; the next rows are folded while the last ones are written. */
async function fromMemory(session: Session, found: Contents, onSlice: (done: number, total: number) => void) {
  const keys = [...found.rowsByKey.keys()];
  let writing: Promise<void> = Promise.resolve();
  for (let from = 0; from < keys.length; from += foldedKeys) {
    onSlice(from, keys.length);
    const slice = keys.slice(from, from + foldedKeys);
    // A write that failed is heard by the await below; until then nobody else shall call it unheard.
    writing.catch(() => undefined);
    const rows = await foldedFromMemory(found, slice);
    await writing;
    writing = putFolded(session, slice, rows);
  }
  await writing;
}

/** Only records that the file touched, from the journal. */
async function fromJournal({ db }: Session, found: Contents, onSlice: (done: number, total: number) => void) {
  const keys = [...found.rowsByKey.keys()];
  for (let from = 0; from < keys.length; from += chunkKeys) {
    onSlice(from, keys.length);
    await rebuildChunk(db, keys.slice(from, from + chunkKeys));
  }
}

export interface Lists {
  /** The derived rows were whole before. */
  readonly derivedWhole: boolean;
  /** On an empty device: everything that the journal holds came with this file. */
  readonly restored: boolean;
  /** Everything is in: the mark goes. */
  readonly finished: boolean;
}

/** Rejects with what the database throws; then the rows are rebuilt at the next opening, and the mark stands until they are. */
export async function makeLists(
  session: Session,
  found: Contents,
  { derivedWhole, restored, finished }: Lists,
  onProgress: (progress: Progress) => void,
): Promise<void> {
  const { db, which } = session;
  const onSlice = (done: number, total: number): void => onProgress({ step: 'lists', done, total });
  if (!derivedWhole) await rebuildNow(session);
  // Stopped before its end, memory holds more than the journal does.
  else await (restored && finished ? fromMemory : fromJournal)(session, found, onSlice);
  await db.transaction('rw', db.meta, async () => {
    await db.meta.put({ key: 'derived', value: derivedEdition });
    if (!finished) return;
    await db.meta.put({ key: 'missing', value: found.missing });
    await db.meta.delete('takeIn');
  });
  setDerivedComplete(which, true);
}
