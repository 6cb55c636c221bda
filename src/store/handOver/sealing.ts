/** Seals a file with a passphrase and opens it again: age v1, so that the standard command line opens it without this app. */
import type { Progress } from './handOver.ts';

export interface SealOptions {
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

export type Unsealed =
  | { readonly kind: 'opened'; readonly blob: Blob }
  | {
      readonly kind: 'refused';
      readonly why: 'wrongPassphrase' | 'sealNotOurs' | 'damaged' | 'tooLarge' | 'stopped';
    };

/** Whether the file begins as an age file does, binary or armoured. */
export async function isSealed(_file: Blob): Promise<boolean> {
  throw new Error('not written yet');
}

/** Rejects with the signal's reason when stopped. A passphrase that `isStrongEnough` refuses is a bug of the caller. */
export async function seal(_blob: Blob, _passphrase: string, _options: SealOptions = {}): Promise<Blob> {
  throw new Error('not written yet');
}

/** Never throws for what is in the file. */
export async function unseal(_file: Blob, _passphrase: string, _options: SealOptions = {}): Promise<Unsealed> {
  throw new Error('not written yet');
}
