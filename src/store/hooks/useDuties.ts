/**
 * What follows from the whole book, found once and kept between pages: the caller hands in how it is found, since the store knows no
 * findings. It is looked for when the page stands and the device is idle, and again after each write.
 */
import { useLiveQuery } from 'dexie-react-hooks';
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import type { Book } from '#records/book.ts';
import { breathe } from '../breath.ts';
import type { BookDatabase } from '../database.ts';
import { storageFailure } from '../failures.ts';
import { noteError } from '../lastErrors.ts';
import { readTwice } from '../reopening.ts';
import { bookState, onBookState, openSession } from '../session.ts';
import { bookSignal, forgetWholeBook, wholeBook } from '../wholeBook.ts';

/**
 * Finds from a book on a day, at once or in steps between which the page has its turn; `before` is what was found last, of which it may
 * keep what did not change.
 */
export type Find<T> = (book: Book, today: string, before?: T) => T | Generator<void, T>;

export interface FoundInBook<T> {
  readonly book: Book;
  readonly found: T;
}

interface Kept {
  readonly find: unknown;
  readonly today: string;
  readonly book: Book;
  readonly found: unknown;
}

const keptOf = new WeakMap<BookDatabase, Kept>();

function keptFor<T>(db: BookDatabase, find: Find<T>): (Kept & { readonly found: T }) | null {
  const kept = keptOf.get(db);
  return kept?.find === find ? (kept as Kept & { readonly found: T }) : null;
}

const isSteps = <T>(found: T | Generator<void, T>): found is Generator<void, T> =>
  typeof (found as Partial<Generator<void, T>> | null)?.next === 'function';

async function throughSteps<T>(found: T | Generator<void, T>): Promise<T> {
  if (!isSteps(found)) return found;
  for (;;) {
    const step = found.next();
    if (step.done === true) return step.value;
    await breathe();
  }
}

async function look<T>(db: BookDatabase, find: Find<T>, today: string): Promise<FoundInBook<T>> {
  const book = await readTwice(db, wholeBook);
  const kept = keptFor(db, find);
  if (kept?.book === book && kept.today === today) return { book, found: kept.found };
  await breathe();
  const found = await throughSteps(kept === null ? find(book, today) : find(book, today, kept.found));
  keptOf.set(db, { find, today, book, found });
  return { book, found };
}

const isRebuilding = (): boolean => {
  const state = bookState();
  return state.kind === 'open' && state.rebuilding !== null;
};

/**
 * `undefined` while it is looked for; then always the last answer, until the next one is there. A bug in finding is thrown to the page;
 * with `quiet` it is only noted: a line beside other things must not take them along.
 */
export function useFoundInBook<T>(find: Find<T>, today: string, quiet = false): FoundInBook<T> | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  const rebuilding = useSyncExternalStore(onBookState, isRebuilding);
  const [answer, setAnswer] = useState<FoundInBook<T> | undefined>(undefined);
  const [failure, setFailure] = useState<unknown>(null);
  const wasRebuilding = useRef(rebuilding);
  const signal = useLiveQuery(() => (session === null ? undefined : readTwice(session.db, bookSignal)), [session]);
  useEffect(() => {
    if (session === null || signal === undefined) return;
    if (wasRebuilding.current && !rebuilding) forgetWholeBook(session.db);
    wasRebuilding.current = rebuilding;
    if (rebuilding) return;
    let here = true;
    look(session.db, find, today)
      .then((found) => here && setAnswer(found))
      .catch((error: unknown) => {
        noteError(error);
        // A connection lost on the way: looked for again after the next write, or when the page is opened again.
        if (here && !quiet && storageFailure(error) === null) setFailure(error);
      });
    return () => {
      here = false;
    };
  }, [session, signal, rebuilding, find, today, quiet]);
  if (failure !== null) throw failure;
  return answer;
}

/** Whether a quiet moment has come after the page stood: for what must never be in the way of the first look. */
export function useIdle(): boolean {
  const [idle, setIdle] = useState(false);
  useEffect(() => {
    const ready = (): void => setIdle(true);
    if (typeof requestIdleCallback === 'function') {
      const handle = requestIdleCallback(ready, { timeout: 5000 });
      return () => cancelIdleCallback(handle);
    }
    const timer = setTimeout(ready, 500);
    return () => clearTimeout(timer);
  }, []);
  return idle;
}
