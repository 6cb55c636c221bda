/** Bytes kept by their SHA-256: the PDFs that left the firm. The same bytes are kept once. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { FileRow } from './database.ts';
import { theSession } from './session.ts';

/** SHA-256 in lower-case hex. */
export const hashOf = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));

/** Keeps bytes; hands back their hash. A fact that names the hash should be written together with them: `write(..., { files })`. */
export async function putFile(bytes: Uint8Array, type: string): Promise<string> {
  const hash = hashOf(bytes);
  await theSession().db.files.put({ hash, type, bytes });
  return hash;
}

/** The bytes of a hash; null when this device does not hold them. */
export async function getFile(hash: string): Promise<FileRow | null> {
  return (await theSession().db.files.get(hash)) ?? null;
}
