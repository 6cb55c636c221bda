/** A connection that the device dropped (a phone that was locked, memory that was short) is opened again, once for everybody who waits. */
import type { BookDatabase } from './database.ts';
import { monotonicMs } from './device.ts';
import { storageFailure } from './failures.ts';

interface Reopened {
  readonly done: Promise<unknown>;
  readonly atMs: number;
}
const reopened = new WeakMap<BookDatabase, Reopened>();
/** Whoever fails this soon after a reopening failed on the old connection. */
const sameLossMs = 1000;

/** Closes and opens; who asks meanwhile or just after shares the one attempt. Rejects with what the database throws. */
export async function reopen(db: BookDatabase): Promise<void> {
  const before = reopened.get(db);
  if (before === undefined || monotonicMs() - before.atMs > sameLossMs || !db.isOpen()) {
    db.close();
    reopened.set(db, { done: Promise.resolve(db.open()), atMs: monotonicMs() });
  }
  await reopened.get(db)?.done;
}

/** Reads; a lost connection is reopened and read once more. */
export async function readTwice<T>(db: BookDatabase, read: (db: BookDatabase) => Promise<T>): Promise<T> {
  try {
    return await read(db);
  } catch (error) {
    if (storageFailure(error) !== 'lost') throw error;
    await reopen(db);
    return await read(db);
  }
}
