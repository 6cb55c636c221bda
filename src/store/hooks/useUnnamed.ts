/** People without an entry of their own here, live. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import { onBookState, openSession } from '../session.ts';
import { type Unnamed, unnamedPeople } from '../unnamed.ts';

/** Empty while the answer is on its way. */
export function useUnnamed(): readonly Unnamed[] {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(() => (session === null ? [] : unnamedPeople(session.db)), [session]) ?? [];
}
