/** The next free sample number of this device, for a cassette that gets another one. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import { nextSampleNumber } from '#records/sampleNumber.ts';
import { numbersOf } from '../lookup.ts';
import { numberLink } from '../rows.ts';
import { onBookState, openSession } from '../session.ts';

/** `undefined` while the answer is on its way. Taken by somebody else meanwhile, it is refused when it is written. */
export function useNextNumber(): string | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(async () => {
    if (session === null) return undefined;
    const { db, prefix } = session;
    const from = numberLink(prefix);
    const highest = await db.records.where('links').between(from, `${from}\uffff`).last();
    return nextSampleNumber(prefix, highest === undefined ? [] : numbersOf([highest]));
  }, [session]);
}
