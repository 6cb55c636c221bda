/** Everybody who asked to see records, newest first. By index of the kind. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { RequestRecord } from '#records/book.ts';
import type { BookDatabase } from '../database.ts';
import { readTwice } from '../reopening.ts';
import { onBookState, openSession } from '../session.ts';

async function requestsIn(db: BookDatabase): Promise<readonly RequestRecord[]> {
  const rows = await db.records.where('[kind+sort]').between(['request', ''], ['request', '\uffff']).toArray();
  const found = rows.map(({ record }) => record as RequestRecord);
  return found.sort((a, b) => (a.askedOn > b.askedOn ? -1 : a.askedOn < b.askedOn ? 1 : a.id < b.id ? -1 : 1));
}

/** `undefined` while the answer is on its way. */
export function useRequests(): readonly RequestRecord[] | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(() => (session === null ? [] : readTwice(session.db, requestsIn)), [session]);
}
