/** Looks into a backup and says what it holds against the open book, or against an empty device. Changes nothing. */

import { readBookText } from '#records/bookReading.ts';
import { readFact } from '#records/canonical.ts';
import type { JournalEntry } from '#records/chain.ts';
import { compareTakeIn, type Have, type HeldEntry, type TakeInComparison } from '#records/merge.ts';
import { sameNumber } from '#records/sampleNumber.ts';
import type { FileRow, Which } from '../database.ts';
import { hashOf } from '../files.ts';
import { openSession, type Session } from '../session.ts';
import type { Looked, LookOptions, LookRefusal, Preview } from './handOver.ts';
import { unpack } from './unpacking.ts';

/** What a preview stands on, kept apart from what screens see. */
export interface Contents {
  readonly which: Which;
  readonly entries: readonly JournalEntry[];
  readonly files: readonly FileRow[];
  /** The session it was compared with; null for a restore. */
  readonly against: Session | null;
}
const contents = new WeakMap<Preview, Contents>();
export const contentsOf = (preview: Preview): Contents | undefined => contents.get(preview);

const refused = (why: LookRefusal, intactCount = 0): Looked => ({ kind: 'refused', why, intactCount });
const fileName = /^files\/([0-9a-f]{64})\.(pdf|bin)$/;

type Parts =
  | { readonly kind: 'parts'; readonly text: string; readonly files: readonly FileRow[]; readonly damagedCount: number }
  | { readonly kind: 'refused'; readonly why: LookRefusal };

/** The text alone is taken too: someone may have unpacked it. */
async function plainText(file: Blob): Promise<Parts> {
  const head = await file.slice(0, 200).text();
  if (!head.startsWith('{') || !head.includes('fullshift-book')) return { kind: 'refused', why: 'notABackup' };
  return { kind: 'parts', text: await file.text(), files: [], damagedCount: 0 };
}

async function partsOf(file: Blob, salvage: boolean): Promise<Parts> {
  const unpacked = await unpack(file, (name) => name === 'book.txt' || fileName.test(name), { evenCut: salvage });
  if (unpacked.kind === 'refused') return unpacked.why === 'notABackup' ? plainText(file) : unpacked;
  const text = unpacked.entries.get('book.txt');
  if (text === undefined) return { kind: 'refused', why: 'notABackup' };
  const files = [...unpacked.entries].flatMap(([name, bytes]): FileRow[] => {
    const found = fileName.exec(name);
    if (found === null || hashOf(bytes) !== found[1]) return [];
    return [{ hash: found[1], type: found[2] === 'pdf' ? 'application/pdf' : 'application/octet-stream', bytes }];
  });
  const damagedCount = unpacked.entries.size - 1 - files.length;
  return { kind: 'parts', text: new TextDecoder().decode(text), files, damagedCount };
}

/** The firm's name, or the book's id where the first fact is not in the file. */
function firmNameIn(entries: readonly JournalEntry[], bookId: string): string {
  for (const { text } of entries) {
    if (!text.includes('"bookOpened.v1"')) continue;
    const { body } = JSON.parse(text) as { body?: { bookId?: unknown; firmName?: unknown } };
    if (body?.bookId === bookId) return String(body.firmName);
  }
  return bookId;
}

/** Labels that two samples would bear, among all these facts. */
function sharedNumbersIn(texts: Iterable<string>): readonly string[] {
  const samples = new Map<string, { id: string; sampleNumber: string }>();
  for (const text of texts) {
    if (!/"(samplePrepared|blankOpened)\.v1"/.test(text)) continue;
    const read = readFact(text);
    if (read.kind !== 'known') continue;
    const { sampleId, sampleNumber } = read.fact.body as { sampleId: string; sampleNumber: string };
    samples.set(sampleId, { id: sampleId, sampleNumber });
  }
  return sameNumber(samples.values()).map(({ sampleNumber }) => sampleNumber);
}

async function haveIn(session: Session): Promise<Have> {
  const rows = await session.db.journal.toArray();
  const entries = new Map(rows.map(({ id, text, link }) => [id, { text, link }]));
  return { bookId: session.bookId, practice: session.which === 'practice', entries };
}

const mismatch = (found: TakeInComparison, practice: boolean): LookRefusal | null => {
  if (found.practiceMismatch) return practice ? 'practiceIntoReal' : 'realIntoPractice';
  return found.otherBook ? 'otherBook' : null;
};

/** Never throws for what is in the file. `salvage` shows what is left of a damaged one. */
export async function lookInto(file: Blob, { salvage = false }: LookOptions = {}): Promise<Looked> {
  const parts = await partsOf(file, salvage);
  if (parts.kind === 'refused') return refused(parts.why);
  const read = readBookText(parts.text);
  if (read.kind === 'refused' && !(salvage && read.header !== null && read.intact.length > 0)) {
    const { why } = read.fault;
    const named = { foreign: 'notABackup', newerFormat: 'newerFormat', cut: 'damaged', damaged: 'damaged' } as const;
    return refused(named[why], read.intact.length);
  }
  const entries = read.kind === 'read' ? read.entries : read.intact;
  const header = read.header;
  if (header === null) return refused('damaged');
  const { bookId, practice } = header;
  const session = openSession();
  const have = session === null ? { bookId, practice, entries: new Map<string, HeldEntry>() } : await haveIn(session);
  const found = compareTakeIn(have, { bookId, practice, entries });
  const why = mismatch(found, practice);
  if (why !== null) return refused(why);
  if (found.brokenChain.length > 0 && found.forks.length === 0 && !salvage) return refused('damaged', found.new.length);
  const preview: Preview = {
    kind: 'preview',
    fileName: file instanceof File ? file.name : '',
    from: null,
    part: 'everything',
    newByKind: {},
    newBetween: null,
    bothChanged: [],
    voidAgainstResult: [],
    brokenCount: found.brokenChain.length,
    filesMissingCount: 0,
    bookId,
    firmName: firmNameIn(entries, bookId),
    practice,
    factsCount: entries.length,
    newCount: found.new.length,
    sameCount: found.same.length,
    forks: found.forks.map(({ id }) => id),
    sharedNumbers: sharedNumbersIn([...have.entries.values(), ...found.new].map(({ text }) => text)),
    gaps: found.gaps,
    unreadableCount: found.unreadable.length,
    newerCount: found.newer.unknownKinds.length,
    filesCount: parts.files.length,
    filesDamagedCount: parts.damagedCount,
    salvaged: read.kind === 'refused',
  };
  const which = practice ? 'practice' : 'book';
  contents.set(preview, { which, entries: found.new, files: parts.files, against: session });
  return preview;
}
