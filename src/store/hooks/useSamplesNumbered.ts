/** Samples that bear a number: one as a rule, none for a slip of the keys, two after a merge of two devices. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { SampleRecord } from '#records/book.ts';
import { samplesOf } from '../lookup.ts';
import { numberLink } from '../rows.ts';
import { onBookState, openSession } from '../session.ts';

/** `undefined` while the answer is on its way; without a number, none. */
export function useSamplesNumbered(sampleNumber: string | null): readonly SampleRecord[] | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(async () => {
    if (session === null || sampleNumber === null) return [];
    return samplesOf(await session.db.records.where('links').equals(numberLink(sampleNumber)).toArray());
  }, [session, sampleNumber]);
}

/** The same, asked once. */
export async function samplesNumbered(sampleNumber: string): Promise<readonly SampleRecord[]> {
  const session = openSession();
  if (session === null) return [];
  return samplesOf(await session.db.records.where('links').equals(numberLink(sampleNumber)).toArray());
}
