/** What a backup holds, read through to the end: ids with links, and papers and pictures whose bytes are what their name says. */
import { readBookText } from '#records/bookReading.ts';
import { hashOf } from '../files.ts';
import type { LookRefusal, Progress } from './handOver.ts';
import { unpack } from './unpacking.ts';

export interface Whole {
  readonly kind: 'whole';
  readonly bookId: string;
  readonly practice: boolean;
  /** Fact id -> link. */
  readonly linkById: ReadonlyMap<string, string>;
  readonly fileHashes: ReadonlySet<string>;
}

export interface WholeOptions {
  readonly passphrase?: string;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

const fileName = /^files\/([0-9a-f]{64})\.\w{1,5}$/;

/** Never throws for what is in the file. */
export async function readWhole(
  file: Blob,
  options: WholeOptions = {},
): Promise<Whole | { readonly kind: 'sealed' } | { readonly kind: 'refused'; readonly why: LookRefusal }> {
  options.onProgress?.({ step: 'reading', done: 0, total: 1 });
  const unpacked = await unpack(file, (name) => name === 'book.txt' || fileName.test(name));
  if (unpacked.kind === 'refused') return unpacked;
  const text = unpacked.entries.get('book.txt');
  if (text === undefined) return { kind: 'refused', why: 'notABackup' };
  const read = readBookText(new TextDecoder().decode(text));
  if (read.kind === 'refused')
    return { kind: 'refused', why: read.fault.why === 'newerFormat' ? 'newerFormat' : 'damaged' };
  const fileHashes = new Set<string>();
  for (const [name, bytes] of unpacked.entries) {
    const hash = fileName.exec(name)?.[1];
    if (hash !== undefined && hashOf(bytes) === hash) fileHashes.add(hash);
  }
  const { bookId, practice } = read.header;
  const linkById = new Map(read.entries.map(({ id, link }) => [id, link]));
  return { kind: 'whole', bookId, practice, linkById, fileHashes };
}
