/** The other devices of this book, and what each lacked. Answers again when something was written or taken in. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { Partner } from '../handOver/handOver.ts';
import { deviceNameIn, partnersIn } from '../handOver/partners.ts';
import { onBookState, openSession } from '../session.ts';

/** `undefined` while the answer is on its way. */
export function usePartners(): readonly Partner[] | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(() => (session === null ? [] : partnersIn(session.db)), [session]);
}

/** What this device calls itself; null when it has no name, `undefined` while the answer is on its way. */
export function useDeviceName(): string | null | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(() => (session === null ? null : deviceNameIn(session.db)), [session]);
}
