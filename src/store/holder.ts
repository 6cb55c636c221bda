/** Who holds this device: picked from the book, shown in the header, asked again after twelve hours. A matter of the device, not a fact. */
import { now, nowMs } from './device.ts';
import type { StorageFailure } from './failures.ts';
import { keepBeside } from './keepBeside.ts';
import { openSession, theSession } from './session.ts';

export interface Holder {
  readonly personId: string;
  readonly askedAt: string;
}

const askAgainMs = 12 * 60 * 60_000;

/** The holder on this device; null before anyone was picked. */
export async function holder(): Promise<Holder | null> {
  const row = await openSession()?.db.meta.get('holder');
  return (row?.value as Holder | undefined) ?? null;
}

/** Someone said who holds the device now. null: kept. */
export function setHolder(personId: string): Promise<StorageFailure | null> {
  const value: Holder = { personId, askedAt: now() };
  return keepBeside(theSession().db, ({ meta }) => meta.put({ key: 'holder', value }));
}

/** Nobody was picked, twelve hours went by, or the clock went back behind the question: ask. */
export function holderIsDue(held: Holder | null): boolean {
  if (held === null) return true;
  const agoMs = nowMs() - Date.parse(held.askedAt);
  return agoMs < 0 || agoMs >= askAgainMs;
}
