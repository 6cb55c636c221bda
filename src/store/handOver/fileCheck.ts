/** Papers and pictures in a file: which are what their name says. Read one at a time and let go; only where they lie is kept. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { pacer } from '../breath.ts';
import { takeInLimits } from './limits.ts';
import type { StoredFile } from './source.ts';
import { Unfit } from './unfit.ts';

const sliceBytes = 1 << 18;

/** The browser's own hash is several times faster and leaves the page awake; an address without https has none. */
async function hashed(bytes: Uint8Array, pace: () => Promise<void>): Promise<string> {
  if (globalThis.crypto?.subtle !== undefined)
    return bytesToHex(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>)));
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
  let wastedBytes = 0;
  for (const [index, file] of files.entries()) {
    onFile(index);
    try {
      const bytes = await file.read();
      bytesCount += bytes.length;
      if ((await hashed(bytes, pace)) === file.hash) sound.push(file);
    } catch (error) {
      // One that is damaged or too large is left out; the others are not.
      if (!(error instanceof Unfit)) throw error;
      wastedBytes += error.inflatedBytes;
    }
    if (bytesCount > takeInLimits.inflatedBytes || wastedBytes > takeInLimits.wastedBytes) throw new Unfit('tooLarge');
    await pace();
  }
  return { sound, damagedCount: files.length - sound.length };
}
