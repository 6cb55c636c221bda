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

const ownCount = (db: BookDatabase, writer: string) =>
  db.journal.where('id').between(`${writer}.`, `${writer}/`).count();

/** Folded from what is in memory, unless something was written here meanwhile: then from the journal. */
async function fromMemory(session: Session, { rowsByKey }: Contents, keys: readonly string[]): Promise<void> {
  const { db, writer } = session;
  const pace = pacer();
  const rows: DerivedRow[] = [];
  for (const key of keys) {
    const row = derivedRow(key, rowsByKey.get(key) ?? []);
    if (row !== null) rows.push(row);
    await pace();
  }
  const put = await db.transaction('rw', db.journal, db.records, async () => {
    if ((await ownCount(db, writer)) > 0) return false;
    await db.records.bulkPut(rows);
    return true;
  });
  if (!put) await rebuildChunk(db, keys);
}

/** Only records that the file touched. */
async function touched(session: Session, found: Contents, restored: boolean, onProgress: (progress: Progress) => void) {
  const keys = [...found.rowsByKey.keys()].sort();
  for (let from = 0; from < keys.length; from += chunkKeys) {
    onProgress({ step: 'lists', done: from, total: keys.length });
    const slice = keys.slice(from, from + chunkKeys);
    await (restored ? fromMemory(session, found, slice) : rebuildChunk(session.db, slice));
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
  if (derivedWhole) await touched(session, found, restored, onProgress);
  else await rebuildNow(session);
  await db.transaction('rw', db.meta, async () => {
    await db.meta.put({ key: 'derived', value: derivedEdition });
    if (!finished) return;
    await db.meta.put({ key: 'missing', value: found.missing });
    await db.meta.delete('takeIn');
  });
  setDerivedComplete(which, true);
}
