/** Papers and pictures in a file: which are what their name says. Read one at a time and let go; only where they lie is kept. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { pacer } from '../breath.ts';
import { takeInLimits } from './limits.ts';
import type { StoredFile } from './source.ts';
import { Unfit } from './unfit.ts';

const sliceBytes = 1 << 18;

async function hashInSlices(bytes: Uint8Array, pace: () => Promise<void>): Promise<string> {
  const hash = sha256.create();
  for (let from = 0; from < bytes.length; from += sliceBytes) {
    hash.update(bytes.subarray(from, from + sliceBytes));
    await pace();
  }
  return bytesToHex(hash.digest());
}

export interface CheckedFiles {
  readonly sound: readonly StoredFile[];
  readonly damagedCount: number;
}

/** One after the other; `onFile` hears of each and may throw to stop. Throws `Unfit` when there is more than any book has. */
export async function checkFiles(files: readonly StoredFile[], onFile: (count: number) => void): Promise<CheckedFiles> {
  const sound: StoredFile[] = [];
  const pace = pacer();
  let bytesCount = 0;
  for (const [index, file] of files.entries()) {
    onFile(index);
    try {
      const bytes = await file.read();
      bytesCount += bytes.length;
      if ((await hashInSlices(bytes, pace)) === file.hash) sound.push(file);
    } catch (error) {
      // One that is damaged or too large is left out; the others are not.
      if (!(error instanceof Unfit)) throw error;
    }
    if (bytesCount > takeInLimits.inflatedBytes) throw new Unfit('tooLarge');
    await pace();
  }
  return { sound, damagedCount: files.length - sound.length };
}
