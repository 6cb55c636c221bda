/** A shift with everyone who worked there, and the last earlier day of the same site that has a roster. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { Book } from '#records/book.ts';
import { rosterBook } from '../reading.ts';
import { readTwice } from '../reopening.ts';
import { onBookState, openSession } from '../session.ts';

/** undefined while loading, null when this device does not hold the shift. */
export function useRosterBook(shiftId: string): Book | null | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(
    () => (session === null ? undefined : readTwice(session.db, (db) => rosterBook(db, shiftId))),
    [session, shiftId],
  );
}
