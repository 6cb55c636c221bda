/**
 * A book as text: a header line (JSON), one line per fact (`<link> <text>`) by writer and sequence, and an end mark with counts and a
 * hash of all lines before it, so that a cut file is recognised. Readable with any editor. The store packs it beside the files.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { z } from 'zod';
import { type JournalEntry, link, noLink, sequenceOf, writerOf } from './chain.ts';
import { factId, instant } from './common.ts';

export const formatVersion = 1;

const head = z.looseObject({ factId: z.string(), link: z.string() });

export const bookHeader = z.looseObject({
  format: z.literal('fullshift-book'),
  formatVersion: z.number().int().min(1),
  bookId: z.string(),
  practice: z.boolean(),
  writtenBy: z.string().describe('Version of the app'),
  heads: z.array(head).max(1000).describe('Last fact and link of each writer in the file'),
  part: z
    .string()
    .optional()
    .describe('everything; lacking: what one other device lacked; paper: what stands behind a sheet that was issued'),
  from: z
    .looseObject({ writer: z.string(), deviceName: z.string().max(80).nullable(), madeAt: instant })
    .optional()
    .describe('The device that made the file'),
  holds: z
    .array(head)
    .max(1000)
    .optional()
    .describe(
      'Up to where, without a gap, the device that made the file held each writer: what need not be sent back to it',
    ),
  since: z
    .array(head)
    .max(1000)
    .optional()
    .describe('The file begins after these: it holds only what the other side lacked. Absent or empty: everything'),
  lacksFiles: z
    .array(z.string())
    .max(5000)
    .optional()
    .describe('SHA-256 of papers and pictures named and not held by it'),
});
export type BookHeader = z.infer<typeof bookHeader>;

const endMark = z.looseObject({ end: z.literal('fullshift-book'), factsCount: z.number(), hash: z.string() });

export type BookTextFault =
  /** No book of ours. */
  | { readonly why: 'foreign' }
  /** Written by a newer version in a format that this one does not know. */
  | { readonly why: 'newerFormat'; readonly formatVersion: number }
  | { readonly why: 'cut' }
  /** Line counted from 1; its link does not follow from what it says. */
  | { readonly why: 'damaged'; readonly line: number };

export type ReadBookText =
  | { readonly kind: 'read'; readonly header: BookHeader; readonly entries: readonly JournalEntry[] }
  /** `intact`: the facts that could be read and verified before the fault, so that nothing is lost that is still there. */
  | {
      readonly kind: 'refused';
      readonly fault: BookTextFault;
      readonly header: BookHeader | null;
      readonly intact: readonly JournalEntry[];
    };

/** The last fact and link of each writer. */
export function headsOf(
  entries: Iterable<Pick<JournalEntry, 'id' | 'link'>>,
): readonly { factId: string; link: string }[] {
  const heads = new Map<string, { factId: string; link: string }>();
  for (const entry of entries) {
    const head = heads.get(writerOf(entry.id));
    if (!head || entry.id > head.factId) heads.set(writerOf(entry.id), { factId: entry.id, link: entry.link });
  }
  return [...heads.values()].sort((a, b) => (a.factId < b.factId ? -1 : 1));
}

type Head = z.infer<typeof head>;

/** What the header says beside its format and the heads of what is in the file. */
export interface BookAbout {
  readonly bookId: string;
  readonly practice: boolean;
  readonly writtenBy: string;
  readonly part?: 'everything' | 'lacking' | 'paper';
  readonly from?: { readonly writer: string; readonly deviceName: string | null; readonly madeAt: string };
  readonly holds?: readonly Head[];
  readonly since?: readonly Head[];
  readonly lacksFiles?: readonly string[];
}

/** The three kinds of line, each with its line feed, for whoever writes a large book in slices. Facts go in the order of their ids. */
export const headerLine = (about: BookAbout, heads: readonly Head[]): string =>
  `${JSON.stringify({ format: 'fullshift-book', formatVersion, ...about, heads })}\n`;
export const factLine = (entry: Pick<JournalEntry, 'text' | 'link'>): string => `${entry.link} ${entry.text}\n`;
/** `hash`: SHA-256, hex, of all bytes before this line. */
export const endLine = (factsCount: number, hash: string): string =>
  `${JSON.stringify({ end: 'fullshift-book', factsCount, hash })}\n`;

/** The whole book as text, each line ended by a line feed. The order of `entries` does not matter. */
export function writeBookText(about: BookAbout, entries: readonly JournalEntry[]): string {
  const sorted = [...entries].sort((a, b) => (a.id < b.id ? -1 : 1));
  const before = `${headerLine(about, headsOf(sorted))}${sorted.map(factLine).join('')}`;
  return `${before}${endLine(sorted.length, bytesToHex(sha256(utf8ToBytes(before))))}`;
}

const json = (line: string): unknown => {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
};

function readHeader(line: string): { readonly header: BookHeader } | { readonly fault: BookTextFault } {
  const value = json(line) as { format?: unknown; formatVersion?: unknown } | null;
  if (value === null || typeof value !== 'object' || value.format !== 'fullshift-book')
    return { fault: { why: 'foreign' } };
  const version = value.formatVersion;
  if (typeof version === 'number' && version > formatVersion)
    return { fault: { why: 'newerFormat', formatVersion: version } };
  const header = bookHeader.safeParse(value);
  return header.success ? { header: header.data } : { fault: { why: 'damaged', line: 1 } };
}

/** One fact line, verified against the one before it where that is the same writer's previous fact. */
function readLine(line: string, last: JournalEntry | null): JournalEntry | null {
  const text = line.slice(65);
  const id = (json(text) as { id?: unknown } | null)?.id;
  if (!/^[0-9a-f]{64} /.test(line) || typeof id !== 'string' || !factId.safeParse(id).success) return null;
  if (last !== null && id <= last.id) return null;
  const entry = { id, text, link: line.slice(0, 64) };
  const follows = last !== null && writerOf(last.id) === writerOf(id) && sequenceOf(id) === sequenceOf(last.id) + 1;
  const previous = follows ? last.link : sequenceOf(id) === 1 ? noLink : null;
  return previous !== null && entry.link !== link(previous, text) ? null : entry;
}

interface Lines {
  readonly facts: readonly string[];
  readonly end: z.infer<typeof endMark> | null;
}

/** Lines between header and end mark. Without a line feed after the mark the file was cut. */
function linesOf(text: string): Lines {
  const lines = text.split('\n');
  const end = lines.at(-1) === '' ? endMark.safeParse(json(lines.at(-2) ?? '')) : null;
  return end?.success ? { facts: lines.slice(1, -2), end: end.data } : { facts: lines.slice(1), end: null };
}

function endFault(text: string, end: Lines['end'], readCount: number): BookTextFault | null {
  if (end === null || end.factsCount !== readCount) return { why: 'cut' };
  const before = text.slice(0, text.lastIndexOf('\n', text.length - 2) + 1);
  // Every link follows, so what differs is the header, or a fact whose predecessor is not in the file.
  return bytesToHex(sha256(utf8ToBytes(before))) === end.hash ? null : { why: 'damaged', line: 1 };
}

/** Reads a book's text. Never throws for what is in it. Whether it is the right book is told by `compareTakeIn`. */
export function readBookText(text: string): ReadBookText {
  const head = readHeader(text.split('\n', 1)[0] ?? '');
  if ('fault' in head) return { kind: 'refused', fault: head.fault, header: null, intact: [] };
  const { header } = head;
  const intact: JournalEntry[] = [];
  const { facts, end } = linesOf(text);
  for (const [index, line] of facts.entries()) {
    const entry = readLine(line, intact.at(-1) ?? null);
    if (entry === null) {
      const cut = end === null && index === facts.length - 1;
      return { kind: 'refused', fault: cut ? { why: 'cut' } : { why: 'damaged', line: index + 2 }, header, intact };
    }
    intact.push(entry);
  }
  const fault = endFault(text, end, intact.length);
  return fault === null ? { kind: 'read', header, entries: intact } : { kind: 'refused', fault, header, intact };
}
