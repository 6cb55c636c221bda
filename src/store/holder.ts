/** Who holds this device: picked from the book, shown in the header, asked again after twelve hours. A matter of the device, not a fact. */
import { now, nowMs } from './device.ts';
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

/** Someone said who holds the device now. */
export async function setHolder(personId: string): Promise<void> {
  await theSession().db.meta.put({ key: 'holder', value: { personId, askedAt: now() } satisfies Holder });
}

/** Nobody was picked, twelve hours went by, or the clock went back behind the question: ask. */
export function holderIsDue(held: Holder | null): boolean {
  if (held === null) return true;
  const agoMs = nowMs() - Date.parse(held.askedAt);
  return agoMs < 0 || agoMs >= askAgainMs;
}
