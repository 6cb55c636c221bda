/** A take-in from its first transaction to its last: small files in one, large ones papers first, then facts in the order of writers. */
import type { BookDatabase, FileRow } from '../database.ts';
import { derivedEdition } from '../edition.ts';
import { storageFailure } from '../failures.ts';
import { hashOf } from '../files.ts';
import { derivedRow } from '../folding.ts';
import { readTwice, reopen } from '../reopening.ts';
import type { Session } from '../session.ts';
import type { Contents } from './contents.ts';
import type { Progress } from './handOver.ts';
import { takeInSteps } from './limits.ts';
import { makeLists } from './lists.ts';
import type { StoredFile } from './source.ts';
import { put, type Run } from './steps.ts';

export interface TakeInOptions {
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

const { atOnce, chunkRows, chunkBytes } = takeInSteps;

/** The bytes as they are now; null when the file is not any more what it was when it was looked into. */
async function rowOf({ hash, type, read }: StoredFile): Promise<FileRow | null> {
  const bytes = await read().catch(() => null);
  return bytes === null || hashOf(bytes) !== hash ? null : { hash, type, bytes };
}

async function refold(db: BookDatabase, keys: Iterable<string>): Promise<void> {
  for (const key of keys) {
    const row = derivedRow(key, await db.journal.where('about').equals(key).toArray());
    if (row !== null) await db.records.put(row);
  }
}

async function allAtOnce(run: Run, { rows, rowsByKey, files }: Contents): Promise<void> {
  const read = await Promise.all(files.map(rowOf));
  const restored = run.session === null;
  const whole = async ({ db }: Session): Promise<void> => {
    await refold(db, rowsByKey.keys());
    if (restored) await db.meta.put({ key: 'derived', value: derivedEdition });
  };
  await put(run, { rows, files: read.filter((row) => row !== null), last: true, whole });
}

/** Papers and pictures, read one at a time. False when a person stopped it. */
async function putFiles(run: Run, { files, rows }: Contents, { signal, onProgress }: TakeInOptions): Promise<boolean> {
  let waiting: FileRow[] = [];
  let bytesCount = 0;
  const flush = async (): Promise<void> => {
    if (waiting.length > 0) await put(run, { rows: [], files: waiting, last: rows.length === 0, whole: null });
    waiting = [];
    bytesCount = 0;
  };
  for (const [index, file] of files.entries()) {
    // What was read is kept: a stop after each one still comes to the end.
    if (signal?.aborted) break;
    const row = await rowOf(file);
    if (row !== null) waiting.push(row);
    bytesCount += row?.bytes.length ?? 0;
    if (bytesCount >= chunkBytes) await flush();
    onProgress?.({ step: 'taking', done: index + 1, total: files.length });
  }
  await flush();
  return signal?.aborted !== true;
}

async function putRows(run: Run, { rows }: Contents, { signal, onProgress }: TakeInOptions): Promise<boolean> {
  for (let from = 0; from < rows.length; from += chunkRows) {
    if (signal?.aborted) return false;
    const slice = rows.slice(from, from + chunkRows);
    await put(run, { rows: slice, files: [], last: from + chunkRows >= rows.length, whole: null });
    onProgress?.({ step: 'taking', done: run.mark?.doneCount ?? 0, total: run.mark?.totalCount ?? rows.length });
  }
  return true;
}

const isHalfIn = async ({ db, session }: Run): Promise<boolean> =>
  session !== null && (await readTwice(db, async () => db.meta.get('takeIn'))) !== undefined;

/** `stopped`: by a person; what was taken stays, under the mark. Rejects with `NoStep` or what the database throws. */
export async function runThrough(run: Run, options: TakeInOptions): Promise<'whole' | 'stopped'> {
  const { found } = run;
  const { rows, rowsByKey, files } = found;
  const restored = run.session === null;
  if (options.signal?.aborted) return 'stopped';
  const isSmall = rows.length <= atOnce.rows && rowsByKey.size <= atOnce.records && files.length <= atOnce.files;
  // The rest of a large one is small too; but its lists are not whole, and its mark stays until they are.
  if (isSmall && !(await isHalfIn(run))) {
    await allAtOnce(run, found);
    return 'whole';
  }
  const finished = (await putFiles(run, found, options)) && (await putRows(run, found, options));
  // Everything was in already, or its papers could not be read any more.
  if (finished && run.mark === null) await put(run, { rows: [], files: [], last: true, whole: null });
  const { session, derivedWhole } = run;
  const tell = options.onProgress ?? (() => undefined);
  if (session !== null && run.mark !== null) {
    const lists = { derivedWhole, restored, finished };
    await makeLists(session, found, lists, tell).catch(async (error) => {
      if (storageFailure(error) !== 'lost') throw error;
      await reopen(session.db);
      await makeLists(session, found, lists, tell);
    });
  }
  return finished ? 'whole' : 'stopped';
}
