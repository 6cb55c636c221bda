/**
 * A book as text: a header line (JSON), one line per fact (`<link> <text>`) by writer and sequence, and an end mark with counts and a
 * hash of all lines before it, so that a cut file is recognised. Readable with any editor. The store packs it beside the files.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { z } from 'zod';
import { type JournalEntry, writerOf } from './chain.ts';
import { instant, recordId } from './common.ts';

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
  sheet: z
    .looseObject({ boxId: recordId, revision: z.string().regex(/^[1-9]\d*$/), paper: z.enum(['letter', 'a4']) })
    .optional()
    .describe('Only in a custody sheet: the revision that this record stands behind, and on which paper it was made'),
});
export type BookHeader = z.infer<typeof bookHeader>;

export const endMark = z.looseObject({ end: z.literal('fullshift-book'), factsCount: z.number(), hash: z.string() });

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

interface Head {
  readonly factId: string;
  readonly link: string;
}

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
  readonly sheet?: { readonly boxId: string; readonly revision: string; readonly paper: 'letter' | 'a4' };
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
