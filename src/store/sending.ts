/** How files were last sent from this device, so that the next one is one tap. Beside the book, never in it nor in any file. */
import { now } from './device.ts';
import type { StorageFailure } from './failures.ts';
import type { HandOver } from './handOver/handOver.ts';
import { keepBeside } from './keepBeside.ts';
import { theSession } from './session.ts';

export interface SendChoice {
  /** Writer of the device it was for; null: a device of which nothing is known. */
  readonly partner: string | null;
  readonly seal: 'none' | 'made' | 'own';
  /** Kept only when someone asked for it: whoever holds this device unlocked can read the book itself anyway. */
  readonly passphrase: string | null;
}

/** null: kept. */
export function keepSendChoice(choice: SendChoice): Promise<StorageFailure | null> {
  return keepBeside(theSession().db, ({ meta }) => meta.put({ key: 'sending', value: choice }));
}

/** When a backup was last read through and found to hold all that was here. null: kept. */
export function noteVerified(at: string): Promise<StorageFailure | null> {
  return keepBeside(theSession().db, ({ meta }) => meta.put({ key: 'verified', value: { at } }));
}

/**
 * The file left the device: shared, saved, downloaded or written into a folder. null: noted. Otherwise the backup counts as not made,
 * and is asked for again.
 */
export function noteHandedOut({ part, partner, bookFactsCount }: HandOver): Promise<StorageFailure | null> {
  const row =
    part === 'everything'
      ? { key: 'lastBackup', value: { at: now(), factsCount: bookFactsCount } }
      : { key: 'lastNews', value: { at: now(), partner } };
  return keepBeside(theSession().db, ({ meta }) => meta.put(row));
}
