/** A slice with the registers and some records by key, so that they can be called by their names. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { Book } from '#records/book.ts';
import { registerRows } from '../reading.ts';
import { onBookState, openSession } from '../session.ts';
import { bookOf } from '../slices.ts';

/** `undefined` while the answer is on its way, or while no book is open. */
export function useRecordsNamed(keys: readonly string[]): Book | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  const asked = keys.join(' ');
  return useLiveQuery(async () => {
    if (session === null) return undefined;
    const { db } = session;
    const rows = await db.records.bulkGet(asked === '' ? [] : asked.split(' '));
    return bookOf([...(await registerRows(db)), ...rows.filter((row) => row !== undefined)]);
  }, [session, asked]);
}
