/**
 * Reads a book's text as it comes, in slices of bytes, so that a large one need not lie in memory twice and whoever reads it can let
 * others work in between. Each line is parsed once and verified against the one before it. Never throws for what is in the text.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import {
  type BookTextFault,
  joined,
  json,
  lenient,
  lineFeed,
  linesIn,
  longestLineBytes,
  type ReadEntry,
  readHeader,
  readLine,
} from './bookLines.ts';
import { factHash, type JournalEntry } from './chain.ts';
import { type BookHeader, endMark } from './fileFormat.ts';
import { fitted } from './fitting.ts';

export type ReadBookText =
  | { readonly kind: 'read'; readonly header: BookHeader; readonly entries: readonly JournalEntry[] }
  /** `intact`: the facts that could be read and verified before the fault, so that nothing is lost that is still there. */
  | {
      readonly kind: 'refused';
      readonly fault: BookTextFault;
      readonly header: BookHeader | null;
      readonly intact: readonly JournalEntry[];
    };

export interface BookReader {
  /** A slice of bytes. Nothing more is read once there is a fault. */
  readonly push: (bytes: Uint8Array) => void;
  /** The facts read since the last call. */
  readonly take: () => readonly ReadEntry[];
  readonly header: () => BookHeader | null;
  readonly fault: () => BookTextFault | null;
  /** After the last slice. Null when the text is whole. */
  readonly end: () => BookTextFault | null;
}

const nothing = new Uint8Array();
const withoutMark = (bytes: Uint8Array): Uint8Array =>
  bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? bytes.subarray(3) : bytes;

/** A reader for one text. */
export function bookReader(): BookReader {
  const hash = sha256.create();
  let rest: Uint8Array = nothing;
  /** The last whole line: it may be the end mark, which the hash does not cover. */
  let kept: Uint8Array = nothing;
  let header: BookHeader | null = null;
  let fault: BookTextFault | null = null;
  let last: ReadEntry | null = null;
  let ready: ReadEntry[] = [];
  let linesCount = 0;
  let factsCount = 0;

  const meet = (line: string, hashed: () => string): BookTextFault | null => {
    linesCount += 1;
    if (linesCount === 1) {
      const read = readHeader(line);
      if ('fault' in read) return read.fault;
      header = read.header;
      return null;
    }
    const entry = readLine(line, last, hashed);
    if (entry === null) return { why: 'damaged', line: linesCount };
    last = entry;
    factsCount += 1;
    ready.push(entry);
    return null;
  };
  const meetAll = (bytes: Uint8Array): void => {
    if (bytes.length === 0 || fault !== null) return;
    hash.update(bytes);
    for (const { line, hashed } of linesIn(bytes)) {
      fault = meet(line, hashed);
      if (fault !== null) return;
    }
  };
  const push = (bytes: Uint8Array): void => {
    if (fault !== null) return;
    const end = bytes.lastIndexOf(lineFeed) + 1;
    if (end === 0) rest = joined(rest, bytes.slice());
    else {
      const whole = joined(rest, bytes.subarray(0, end));
      rest = bytes.slice(end);
      const first = linesCount === 0 && kept.length === 0 ? withoutMark(whole) : whole;
      const from = first.lastIndexOf(lineFeed, first.length - 2) + 1;
      meetAll(joined(kept, first.subarray(0, from)));
      // With nothing before it the kept line goes out now, and what came becomes the one to keep.
      kept = first.slice(from);
    }
    if (rest.length > longestLineBytes)
      fault ??= header === null ? { why: 'foreign' } : { why: 'damaged', line: linesCount + 2 };
  };
  /** What the end mark says against the text; `none` where there is no mark. */
  const marked = (): BookTextFault | null | 'none' => {
    if (rest.length > 0 || linesCount === 0) return 'none';
    const mark = fitted(endMark, json(lenient.decode(kept)));
    if (!mark.success) return 'none';
    if (mark.data.factsCount !== factsCount) return { why: 'cut' };
    // Every link follows, so what differs is the header, or a fact whose predecessor is not in the file.
    return bytesToHex(hash.digest()) === mark.data.hash ? null : { why: 'damaged', line: 1 };
  };
  const ended = (): BookTextFault | null => {
    const found = marked();
    if (found !== 'none') return found;
    meetAll(kept);
    if (fault !== null) return fault;
    const line = lenient.decode(linesCount === 0 ? withoutMark(rest) : rest);
    const left = meet(line, () => factHash(line.slice(65)));
    return linesCount === 1 && left !== null ? left : { why: 'cut' };
  };
  return {
    push,
    take: () => {
      const taken = ready;
      ready = [];
      return taken;
    },
    header: () => header,
    fault: () => fault,
    end: () => {
      fault ??= ended();
      return fault;
    },
  };
}

/** Reads a book's text. Never throws for what is in it. Whether it is the right book is told by `compareTakeIn`. */
export function readBookText(text: string): ReadBookText {
  const reader = bookReader();
  reader.push(utf8ToBytes(text));
  const fault = reader.end();
  const entries = reader.take().map(({ id, text, link }) => ({ id, text, link }));
  const header = reader.header();
  if (fault === null && header !== null) return { kind: 'read', header, entries };
  return { kind: 'refused', fault: fault ?? { why: 'foreign' }, header, intact: entries };
}
