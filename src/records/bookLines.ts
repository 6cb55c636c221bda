/** The lines of a book's text: what each must be, and the bytes that it stands in. Never throws for what is in them. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { factHash, type JournalEntry, linkOver, noLink, sequenceOf, writerOf } from './chain.ts';
import { type BookHeader, bookHeader, formatVersion } from './fileFormat.ts';
import { fitted } from './fitting.ts';

export type BookTextFault =
  /** No book of ours. */
  | { readonly why: 'foreign' }
  /** Written by a newer version in a format that this one does not know. */
  | { readonly why: 'newerFormat'; readonly formatVersion: number }
  | { readonly why: 'cut' }
  /** Line counted from 1; its link does not follow from what it says. */
  | { readonly why: 'damaged'; readonly line: number };

/** A fact as it stands in the text. */
export interface ReadEntry extends JournalEntry {
  /** The line, parsed. */
  readonly value: unknown;
  /** The link that it was verified to follow; null where its predecessor is not in the text. */
  readonly after: string | null;
}

/** Decided here: a header with a thousand writers and five thousand lacking files has 700 kB; a fact has 256 KiB at most. */
export const longestLineBytes = 1_000_000;
export const lineFeed = 10;

/** Parsed, or null. */
export const json = (line: string): unknown => {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
};

/** The first line. */
export function readHeader(line: string): { readonly header: BookHeader } | { readonly fault: BookTextFault } {
  const value = json(line) as { format?: unknown; formatVersion?: unknown } | null;
  if (value === null || typeof value !== 'object' || value.format !== 'fullshift-book')
    return { fault: { why: 'foreign' } };
  const version = value.formatVersion;
  if (typeof version === 'number' && version > formatVersion)
    return { fault: { why: 'newerFormat', formatVersion: version } };
  const header = fitted(bookHeader, value);
  return header.success ? { header: header.data } : { fault: { why: 'damaged', line: 1 } };
}

const linkPattern = /^[0-9a-f]{64} /;
const idPattern = /^[0-9a-hjkmnp-tv-z]{12}\.\d{8}$/;

/** One fact line, verified against the one before it where that is the same writer's previous fact. `hashed` gives the text's hash. */
export function readLine(line: string, last: JournalEntry | null, hashed: () => string): ReadEntry | null {
  const text = line.slice(65);
  const value = json(text);
  const id = (value as { id?: unknown } | null)?.id;
  if (!linkPattern.test(line) || typeof id !== 'string' || !idPattern.test(id)) return null;
  if (last !== null && id <= last.id) return null;
  const entry = { id, text, link: line.slice(0, 64), value };
  const follows = last !== null && writerOf(last.id) === writerOf(id) && sequenceOf(id) === sequenceOf(last.id) + 1;
  const after = follows ? last.link : sequenceOf(id) === 1 ? noLink : null;
  return after !== null && entry.link !== linkOver(after, hashed()) ? null : { ...entry, after };
}

/** Both, one after the other. */
export function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  if (first.length === 0) return second;
  const whole = new Uint8Array(first.length + second.length);
  whole.set(first);
  whole.set(second, first.length);
  return whole;
}

/** Strict, so that bytes and text say the same and the bytes can be hashed as they came. */
const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
export const lenient = new TextDecoder('utf-8', { ignoreBOM: true });

/** The lines in bytes that end with a line feed, each with the hash of what follows its link. */
export function linesIn(bytes: Uint8Array): readonly { readonly line: string; readonly hashed: () => string }[] {
  let text: string;
  let exact = true;
  try {
    text = strict.decode(bytes);
  } catch {
    text = lenient.decode(bytes);
    exact = false;
  }
  let from = 0;
  return text
    .slice(0, -1)
    .split('\n')
    .map((line) => {
      const start = from;
      const end = bytes.indexOf(lineFeed, start);
      from = end + 1;
      const own = (): string => bytesToHex(sha256(bytes.subarray(start + 65, end)));
      return { line, hashed: exact ? own : () => factHash(line.slice(65)) };
    });
}
