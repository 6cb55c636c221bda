/**
 * A large file taken in beside a bare bulk write of the same rows into tables of the same shape: strict, the same chunks, one after the
 * other. Ours reads, verifies and compares the file first, and makes the lists afterwards; both are timed apart and told.
 */
import Dexie from 'dexie';
import { strToU8, zipSync } from 'fflate';
import { writeBookText } from '#records/fileFormat.ts';
import { BookDatabase, databaseNames, type JournalRow } from '#store/database.ts';
import { takeInSteps } from '#store/handOver/limits.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { closeBook, openBooks } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { generateBook } from '#tests/store/generateBook.ts';

const { chunkRows } = takeInSteps;
export interface TakeInTimes {
  readonly factsCount: number;
  readonly fileBytes: number;
  readonly rawMs: readonly number[];
  readonly lookMs: readonly number[];
  readonly takeMs: readonly number[];
  /** Of the taking, until the last fact was in. */
  readonly factsMs: readonly number[];
  readonly longestTaskMs: number;
  readonly tasksOver50Count: number;
}

async function raw(rows: readonly JournalRow[]): Promise<number> {
  const db = new BookDatabase('bench-raw');
  await db.open();
  const startedMs = performance.now();
  for (let from = 0; from < rows.length; from += chunkRows) {
    await db.transaction('rw', db.journal, async () => {
      await db.journal.bulkAdd(rows.slice(from, from + chunkRows));
    });
  }
  const tookMs = performance.now() - startedMs;
  const count = await db.journal.count();
  if (count !== rows.length) throw new Error(`${count} rows`);
  db.close();
  await Dexie.delete('bench-raw');
  return tookMs;
}

async function wipe(): Promise<void> {
  await closeBook();
  await Dexie.delete(databaseNames.book);
  localStorage.clear();
  await openBooks();
}

async function ours(file: Blob, factsCount: number) {
  await wipe();
  const startedMs = performance.now();
  const looked = await lookInto(file);
  const lookedMs = performance.now();
  if (looked.kind !== 'preview' || looked.newCount !== factsCount)
    throw new Error(JSON.stringify(looked).slice(0, 300));
  let factsMs = 0;
  const taken = await takeIn(looked, {
    onProgress: ({ step, done, total }) => {
      if (step === 'taking' && done === total) factsMs = performance.now() - lookedMs;
    },
  });
  const endedMs = performance.now();
  if (taken.kind !== 'takenIn' || taken.newCount !== factsCount) throw new Error(JSON.stringify(taken));
  const count = await theSession().db.journal.count();
  if (count !== factsCount) throw new Error(`${count} rows`);
  return { lookMs: lookedMs - startedMs, takeMs: endedMs - lookedMs, factsMs };
}

/** `samples`: eight facts to each. */
export async function timeTakeIn(samples: number, rounds: number): Promise<TakeInTimes> {
  const book = generateBook({ samples, seed: 20261125 });
  const text = writeBookText({ bookId: book.bookId, practice: false, writtenBy: '0.1.0' }, [...book.rows]);
  const file = new Blob([zipSync({ 'book.txt': strToU8(text) }) as Uint8Array<ArrayBuffer>]);
  const tasks: number[] = [];
  const observer = new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) tasks.push(duration);
  });
  const rawMs: number[] = [];
  const times: Awaited<ReturnType<typeof ours>>[] = [];
  for (let round = 0; round < rounds; round += 1) {
    rawMs.push(await raw(book.rows));
    observer.observe({ type: 'longtask' });
    times.push(await ours(file, book.rows.length));
    observer.disconnect();
  }
  return {
    factsCount: book.rows.length,
    fileBytes: file.size,
    rawMs,
    lookMs: times.map(({ lookMs }) => lookMs),
    takeMs: times.map(({ takeMs }) => takeMs),
    factsMs: times.map(({ factsMs }) => factsMs),
    longestTaskMs: Math.max(0, ...tasks),
    tasksOver50Count: tasks.length,
  };
}
