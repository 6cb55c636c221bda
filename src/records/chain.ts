/**
 * The hash chain of one writer: link = H(previous link + H(text of the fact)), SHA-256 in lower-case hex, the first link over an empty
 * previous one. It proves a change only against a head that left the device: papers and hand-over files carry the heads.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** A fact with its link, as stored and handed over. */
export interface JournalEntry {
  readonly id: string;
  readonly text: string;
  readonly link: string;
}

/** What precedes the first fact of a writer. */
export const noLink = '';

const hex = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** SHA-256 of the fact's text in UTF-8, as hex. */
export const factHash = (text: string): string => hex(text);

/** The link after `previousLink` (hex, or empty before the first fact). Computed synchronously: it runs inside a transaction. */
export const link = (previousLink: string, text: string): string => linkOver(previousLink, factHash(text));

/** The same over a text that was hashed already. */
export const linkOver = (previousLink: string, hashOfText: string): string => hex(previousLink + hashOfText);

export const writerOf = (factId: string): string => factId.slice(0, 12);
export const sequenceOf = (factId: string): number => Number(factId.slice(13));
export const factIdOf = (writer: string, sequence: number): string => `${writer}.${String(sequence).padStart(8, '0')}`;

/**
 * Verifies the facts of one writer in order, from `previousLink` on. Tells the id of the first fact whose link does not follow, or null.
 * Ids must follow one another too: a fact left out is a break.
 */
export function verifyChain(entries: readonly JournalEntry[], previousLink: string = noLink): string | null {
  let previous = previousLink;
  let expected: number | null = null;
  for (const entry of entries) {
    const sequence = sequenceOf(entry.id);
    if ((expected !== null && sequence !== expected) || entry.link !== link(previous, entry.text)) return entry.id;
    previous = entry.link;
    expected = sequence + 1;
  }
  return null;
}
