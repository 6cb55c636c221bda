/** What waits to be settled: the records for it, how many there are, and the boxes one slice after the other. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useEffect, useRef, useState, useSyncExternalStore } from 'react';
import type { Book } from '#records/book.ts';
import type { BookDatabase } from '../database.ts';
import { type BoxSlice, boxCount, issuedBoxes, openCount, openRecords, sharedNumberCount } from '../openRecords.ts';
import { boxBook } from '../reading.ts';
import { readTwice } from '../reopening.ts';
import { onBookState, openSession, type Session } from '../session.ts';

const useSession = (): Session | null => useSyncExternalStore(onBookState, openSession);

/** A slice with everything in dispute but the sheets; `undefined` while the answer is on its way. */
export function useOpenRecords(): Book | undefined {
  const session = useSession();
  return useLiveQuery(() => (session === null ? undefined : readTwice(session.db, openRecords)), [session]);
}

/**
 * For a line on another page: how many things wait to be settled, sheets not counted. Shared numbers come in with a file, so they are
 * looked for once when the page opens.
 */
export function useOpenMatterCount(): number | undefined {
  const session = useSession();
  const [sharedCount, setSharedCount] = useState(0);
  useEffect(() => {
    let here = true;
    if (session === null) return;
    // A connection lost on the way leaves the numbers out; the list finds them.
    void sharedNumberCount(session.db)
      .then((count) => here && setSharedCount(count))
      .catch(() => undefined);
    return () => {
      here = false;
    };
  }, [session]);
  const count = useLiveQuery(() => (session === null ? undefined : readTwice(session.db, openCount)), [session]);
  return count === undefined ? undefined : count + sharedCount;
}

export interface ThroughBoxes<T> {
  readonly found: readonly T[];
  readonly doneCount: number;
  /** Boxes that will be looked at. */
  readonly totalCount: number;
  readonly ended: boolean;
  /** There are older boxes that are not looked at here. */
  readonly capped: boolean;
}

/** Decided here: a year of a firm that sends a box each week, four times over; slices short enough for a phone to stay at hand. */
const mostBoxes = 200;
const sliceOfBoxes = 5;

/**
 * Looks through the boxes that have a sheet, newest first, a slice at a time, with a breath between. `look` is handed a box's own
 * slice of the book.
 */
export function useThroughBoxes<T>(look: (boxId: string, book: Book) => readonly T[]): ThroughBoxes<T> {
  const session = useSession();
  const looking = useRef(look);
  looking.current = look;
  const [state, setState] = useState<ThroughBoxes<T>>(begun);
  useEffect(() => {
    if (session === null) return;
    const leaving = new AbortController();
    const told = (now: ThroughBoxes<T>): void => {
      if (!leaving.signal.aborted) setState(now);
    };
    // A connection lost on the way ends the look; the page says how far it came, and looks anew when it is opened again.
    void through(session.db, (boxId, book) => looking.current(boxId, book), told, leaving.signal).catch(
      () => undefined,
    );
    return () => leaving.abort();
  }, [session]);
  return state;
}

type Look<T> = (boxId: string, book: Book) => readonly T[];

async function through<T>(
  db: BookDatabase,
  look: Look<T>,
  tell: (now: ThroughBoxes<T>) => void,
  signal: AbortSignal,
): Promise<void> {
  const all = await boxCount(db);
  let now: ThroughBoxes<T> = { ...begun, totalCount: Math.min(all, mostBoxes), capped: all > mostBoxes };
  let before: string | null = null;
  do {
    const slice: BoxSlice = await issuedBoxes(db, sliceOfBoxes, before);
    const found = [...now.found];
    for (const boxId of slice.boxIds) {
      const book = await boxBook(db, boxId);
      if (book !== null) found.push(...look(boxId, book));
    }
    before = slice.older;
    now = { ...now, found, doneCount: now.doneCount + slice.count };
    tell(now);
    await new Promise((resolve) => setTimeout(resolve, 0));
  } while (before !== null && now.doneCount < mostBoxes && !signal.aborted);
  tell({ ...now, ended: true });
}

const begun = { found: [], doneCount: 0, totalCount: 0, ended: false, capped: false } as const;
