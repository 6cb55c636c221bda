/** What stands beside the book about files out and in: what was sent and verified, what is half taken in, what is missing. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { MissingEntries } from '#records/book.ts';
import type { BookDatabase } from '../database.ts';
import type { TakeInMark } from '../handOver/handOver.ts';
import { readTwice } from '../reopening.ts';
import type { SendChoice } from '../sending.ts';
import { onBookState, openSession } from '../session.ts';

export interface Keeping {
  /** A file that is half taken in. */
  readonly takeIn: TakeInMark | null;
  readonly missing: readonly MissingEntries[];
  /** The last file with everything that left this device. */
  readonly lastBackupAt: string | null;
  /** The last file of either kind. */
  readonly lastSentAt: string | null;
  readonly verifiedAt: string | null;
  readonly sending: SendChoice | null;
}

export async function keepingIn(db: BookDatabase): Promise<Keeping> {
  const rows = await db.meta.bulkGet(['takeIn', 'missing', 'lastBackup', 'lastNews', 'verified', 'sending']);
  const [takeIn, missing, backup, news, verified, sending] = rows.map((row) => row?.value);
  const atOf = (value: unknown): string | null => (value as { readonly at: string } | undefined)?.at ?? null;
  const sent = [atOf(backup), atOf(news)].filter((at) => at !== null).sort();
  return {
    takeIn: (takeIn as TakeInMark | undefined) ?? null,
    missing: (missing as readonly MissingEntries[] | undefined) ?? [],
    lastBackupAt: atOf(backup),
    lastSentAt: sent.at(-1) ?? null,
    verifiedAt: atOf(verified),
    sending: (sending as SendChoice | undefined) ?? null,
  };
}

/** `undefined` while the answer is on its way, or while no book is open. */
export function useKeeping(): Keeping | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(() => (session === null ? undefined : readTwice(session.db, keepingIn)), [session]);
}
