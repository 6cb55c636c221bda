/** One window at a time takes a file in or rebuilds the lists of a book. Where the browser has no locks, the mark in the book must do. */
import type { Which } from './database.ts';

const locks = (): LockManager | null =>
  typeof navigator === 'undefined' ? null : ((navigator as { locks?: LockManager }).locks ?? null);
const nameOf = (which: Which): string => `fullshift.takeIn.${which}`;

/** null when another window holds it. */
export async function withTakeInLock<T>(which: Which, work: () => Promise<T>): Promise<T | null> {
  const held = locks();
  if (held === null) return work();
  return held.request(nameOf(which), { ifAvailable: true }, (lock) => (lock === null ? null : work()));
}

/** Waits for its turn. */
export async function afterTakeIn<T>(which: Which, work: () => Promise<T>): Promise<T> {
  const held = locks();
  return held === null ? work() : held.request(nameOf(which), work);
}
