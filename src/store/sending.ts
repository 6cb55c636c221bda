/** How files were last sent from this device, so that the next one is one tap. Beside the book, never in it nor in any file. */
import { theSession } from './session.ts';

export interface SendChoice {
  /** Writer of the device it was for; null: a device of which nothing is known. */
  readonly partner: string | null;
  readonly seal: 'none' | 'made' | 'own';
  /** Kept only when someone asked for it: whoever holds this device unlocked can read the book itself anyway. */
  readonly passphrase: string | null;
}

export async function keepSendChoice(choice: SendChoice): Promise<void> {
  await theSession().db.meta.put({ key: 'sending', value: choice });
}

/** When a backup was last read through and found to hold all that was here. */
export async function noteVerified(at: string): Promise<void> {
  await theSession().db.meta.put({ key: 'verified', value: { at } });
}
