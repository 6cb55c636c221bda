/**
 * The transactions of a take-in. The first begins under the mark (and, on an empty device, with a writer of its own); each puts some
 * papers or some facts and moves the mark on; a small file is whole after one.
 */
import type { BookDatabase, FileRow, JournalRow } from '../database.ts';
import { now } from '../device.ts';
import { derivedEdition } from '../edition.ts';
import { storageFailure } from '../failures.ts';
import { setDerivedComplete } from '../marks.ts';
import { reopen } from '../reopening.ts';
import type { Session } from '../session.ts';
import { giveUpDerived } from '../write.ts';
import type { Writer } from '../writer.ts';
import type { Contents } from './contents.ts';
import { isOutdated, noteElsewhere } from './elsewhere.ts';
import type { TakeInMark } from './handOver.ts';
import { heldAmong } from './held.ts';
import { goOnAs, writerAfter } from './ownWriter.ts';
import { groundOf } from './restoring.ts';

/**
 * Why a step was not made: the database was emptied or holds a book; another file is begun; the mark was taken away by a person; the book
 * changed since the file was looked into.
 */
export type NotTaken = 'evicted' | 'unknown' | 'begun' | 'left' | 'stale';

export class NoStep extends Error {
  readonly why: NotTaken;
  constructor(why: NotTaken) {
    super(why);
    this.name = 'NoStep';
    this.why = why;
  }
}

export interface Run {
  readonly db: BookDatabase;
  readonly found: Contents;
  readonly bookId: string;
  readonly fileName: string;
  /** null until the first transaction of a restore is complete. */
  session: Session | null;
  /** null until something was put. */
  mark: TakeInMark | null;
  /** The derived rows were whole when this began, so that only what is touched must be folded anew. */
  derivedWhole: boolean;
  newCount: number;
  filesCount: number;
}

const markIn = async (db: BookDatabase): Promise<TakeInMark | undefined> =>
  (await db.meta.get('takeIn'))?.value as TakeInMark | undefined;

interface Begun {
  readonly session: Session;
  readonly mark: TakeInMark;
  readonly derivedWhole: boolean;
  /** A writer drawn in this step, to go on with instead of the session's. */
  readonly drawn: Writer | null;
}

const newMark = ({ fileName, found }: Run): TakeInMark => ({
  fileName,
  startedAt: now(),
  doneCount: 0,
  totalCount: found.rows.length,
  of: found.of,
});

/** In the first transaction. */
async function begin(run: Run): Promise<Begun> {
  const { db, found, bookId } = run;
  if (run.session === null) {
    const rows = found.numbered.map(({ row }) => row);
    const session = await groundOf(db, found.which, bookId, rows);
    if (session === null) throw new NoStep('unknown');
    await noteElsewhere(db, found);
    return { session, mark: newMark(run), derivedWhole: true, drawn: null };
  }
  if ((await db.meta.get('bookId'))?.value !== bookId) throw new NoStep('evicted');
  const before = await markIn(db);
  if (before !== undefined && before.of !== found.of) throw new NoStep('begun');
  if (before === undefined && (await isOutdated(db, found))) throw new NoStep('stale');
  await noteElsewhere(db, found);
  const derivedWhole = (await db.meta.get('derived'))?.value === derivedEdition;
  const drawn = await writerAfter(run.session, found);
  const mark = before === undefined ? newMark(run) : { ...before, doneCount: before.totalCount - found.rows.length };
  return { session: run.session, mark: { ...mark, doneCount: Math.max(0, mark.doneCount) }, derivedWhole, drawn };
}

/** In every later one: the book is still there, and nobody took the mark away. */
async function goOn(run: Run, session: Session, mark: TakeInMark): Promise<Begun> {
  const { db, found, bookId, derivedWhole } = run;
  if ((await db.meta.get('bookId'))?.value !== bookId) throw new NoStep('evicted');
  if ((await markIn(db))?.of !== found.of) throw new NoStep('left');
  return { session, mark, derivedWhole, drawn: null };
}

async function addRows(db: BookDatabase, rows: readonly JournalRow[]): Promise<number> {
  const held = await heldAmong(
    db,
    rows.map(({ id }) => id),
  );
  const fresh = held.size === 0 ? rows : rows.filter(({ id }) => !held.has(id));
  // Held since the file was looked into: the same bytes, or it is looked into again and the fork is told.
  const twins = await db.journal.bulkGet([...held]);
  const byId = new Map(twins.flatMap((row) => (row === undefined ? [] : [[row.id, row] as const])));
  const isOther = ({ id, text, link }: JournalRow): boolean => {
    const twin = byId.get(id);
    return twin !== undefined && (twin.text !== text || twin.link !== link);
  };
  if (rows.some(isOther)) throw new NoStep('stale');
  await db.journal.bulkAdd([...fresh]);
  return fresh.length;
}

export interface Put {
  readonly rows: readonly JournalRow[];
  readonly files: readonly FileRow[];
  /** The last facts: what is still missing is noted. */
  readonly last: boolean;
  /** All of it at once: folds and leaves no mark. */
  readonly whole: ((session: Session) => Promise<void>) | null;
}

const once = async (run: Run, { rows, files, last, whole }: Put) => {
  const { db, found, session, mark } = run;
  return db.transaction('rw', [db.journal, db.records, db.files, db.meta], async () => {
    const begun = session === null || mark === null ? await begin(run) : await goOn(run, session, mark);
    const addedCount = await addRows(db, rows);
    if (files.length > 0) await db.files.bulkPut([...files]);
    if (last) await db.meta.put({ key: 'missing', value: found.missing });
    const moved = { ...begun.mark, doneCount: begun.mark.doneCount + rows.length };
    if (whole !== null) {
      await whole(begun.session);
      await db.meta.delete('takeIn');
    } else {
      await db.meta.put({ key: 'takeIn', value: moved });
      await db.meta.delete('derived');
    }
    return { ...begun, mark: moved, addedCount };
  });
};

async function recover(run: Run, error: unknown): Promise<void> {
  const why = storageFailure(error);
  // A restore has nothing to give up, and a first transaction that was lost may have arrived: the file is then looked into again.
  if (run.session === null || why === null || why === 'unknown') throw error;
  if (why === 'lost') return reopen(run.db);
  run.derivedWhole = false;
  await giveUpDerived(run.session);
}

/** One transaction, tried once more after a lost connection or a full disk. Rejects with `NoStep` or what the database throws. */
export async function put(run: Run, what: Put): Promise<void> {
  if (what.whole === null) setDerivedComplete(run.found.which, false);
  let made: Awaited<ReturnType<typeof once>>;
  try {
    made = await once(run, what);
  } catch (error) {
    await recover(run, error);
    made = await once(run, what);
  }
  const first = run.mark === null;
  run.session = made.session;
  run.mark = made.mark;
  if (made.drawn !== null) goOnAs(made.session, made.drawn);
  if (first) run.derivedWhole = made.derivedWhole;
  run.newCount += made.addedCount;
  run.filesCount += what.files.length;
}
