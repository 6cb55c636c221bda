/**
 * Seals a file with a passphrase and opens it again: age v1, so that the standard command line opens it without this app. The work is
 * done in a worker; where there is none (tests, the command line), in place.
 */
import type { OpenTask, SealTask, Told } from './ageFile.ts';
import type { Progress } from './handOver.ts';
import { takeInLimits } from './limits.ts';
import type { SealMessage } from './sealingWorker.ts';

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
export async function isSealed(file: Blob): Promise<boolean> {
  const head = await file.slice(0, 200).text();
  return head.startsWith('age-encryption.org/') || head.trimStart().startsWith('-----BEGIN AGE ENCRYPTED FILE-----');
}

/** Every browser has workers. The built app is told so, that it does not ship the work twice; tests and the command line have none. */
const hasWorker: boolean = import.meta.env?.PROD || typeof Worker !== 'undefined';

async function inPlace(task: SealTask | OpenTask, told: Told): Promise<SealMessage> {
  const { openNow, sealNow } = await import('./ageFile.ts');
  return task.do === 'open' ? openNow(task, told) : { kind: 'sealed', blob: await sealNow(task, told) };
}

async function away(task: SealTask | OpenTask, told: Told, signal?: AbortSignal): Promise<SealMessage> {
  const { inSealingWorker } = await import('./sealingAway.ts');
  return inSealingWorker(task, told, signal);
}

/** Rejects with the signal's reason when stopped. */
async function done(task: SealTask | OpenTask, { onProgress, signal }: SealOptions): Promise<SealMessage> {
  const step = task.do === 'open' ? 'opening' : 'sealing';
  const told: Told = (done, total) => {
    signal?.throwIfAborted();
    onProgress?.({ step, done, total });
  };
  signal?.throwIfAborted();
  const message = await (hasWorker ? away(task, told, signal) : inPlace(task, told));
  signal?.throwIfAborted();
  return message;
}

/**
 * Rejects with the signal's reason when stopped, and with a RangeError when the device has not the memory. A passphrase that
 * `isStrongEnough` refuses is a bug of the caller: a RangeError too.
 */
export async function seal(blob: Blob, passphrase: string, options: SealOptions = {}): Promise<Blob> {
  const { isDrawn, isStrongEnough, passphraseOf } = await import('./passphrase.ts');
  if (!isStrongEnough(passphrase))
    throw new RangeError('The passphrase is too weak to seal with: ask isStrongEnough first');
  const drawn = isDrawn(passphrase);
  const message = await done({ do: 'seal', blob, passphrase: passphraseOf(passphrase), drawn }, options);
  if (message.kind !== 'sealed') throw new Error(`Sealing ended with ${message.kind}`);
  return message.blob.slice(0, message.blob.size, 'application/octet-stream');
}

/** Never throws for what is in the file. */
export async function unseal(file: Blob, passphrase: string, options: SealOptions = {}): Promise<Unsealed> {
  const { candidatesOf } = await import('./passphrase.ts');
  const task: OpenTask = {
    do: 'open',
    blob: file,
    candidates: candidatesOf(passphrase),
    mostBytes: takeInLimits.fileBytes,
  };
  try {
    const message = await done(task, options);
    if (message.kind === 'opened' || message.kind === 'refused') return message;
    throw new Error(`Opening ended with ${message.kind}`);
  } catch (error) {
    if (options.signal?.aborted) return { kind: 'refused', why: 'stopped' };
    throw error;
  }
}
