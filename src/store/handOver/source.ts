/** What a chosen file is (archive, plain book text, custody sheet), and how its text and its papers are read. By its bytes, not its name. */
import { type ArchiveEntry, bytesOf, entriesFromFront, entriesOf, isZip } from './archive.ts';
import { takeInLimits } from './limits.ts';
import { Unfit } from './unfit.ts';

/** A paper or picture in the file; its bytes are read when they are wanted, and may not be what the name says. */
export interface StoredFile {
  readonly hash: string;
  readonly type: string;
  readonly read: () => Promise<Uint8Array>;
}

export interface Source {
  readonly text: () => AsyncIterable<Uint8Array>;
  /** Of the text, as far as the file says; for showing how far the reading is. */
  readonly textBytes: number;
  readonly files: readonly StoredFile[];
}

const fileName = /^files\/([0-9a-f]{64})\.(pdf|jpg|bin)$/;
const types: Readonly<Record<string, string>> = { pdf: 'application/pdf', jpg: 'image/jpeg' };

async function whole(pieces: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const piece of pieces) parts.push(piece);
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

function storedFile(file: Blob, entry: ArchiveEntry): readonly StoredFile[] {
  const found = fileName.exec(entry.name);
  if (found === null) return [];
  const [, hash = '', extension = ''] = found;
  const type = types[extension] ?? 'application/octet-stream';
  return [{ hash, type, read: () => whole(bytesOf(file, entry, takeInLimits.oneFileBytes)) }];
}

function archived(file: Blob, entries: readonly ArchiveEntry[], evenCut: boolean): Source {
  const book = entries.find(({ name }) => name === 'book.txt');
  if (book === undefined) throw new Unfit('notABackup');
  if ((book.bytesCount ?? 0) > takeInLimits.bookTextBytes) throw new Unfit('tooLarge');
  return {
    text: () => bytesOf(file, book, takeInLimits.bookTextBytes, evenCut),
    textBytes: book.bytesCount ?? book.packedBytes * 4,
    files: entries.flatMap((entry) => storedFile(file, entry)),
  };
}

async function* slabs(file: Blob): AsyncGenerator<Uint8Array> {
  const step = 1 << 18;
  for (let from = 0; from < file.size; from += step)
    yield new Uint8Array(await file.slice(from, from + step).arrayBuffer());
}

/** Someone may have unpacked the text, or been sent it alone. */
async function plainText(file: Blob): Promise<Source> {
  const head = (await file.slice(0, 200).text()).trimStart();
  if (!head.startsWith('{') || !head.includes('fullshift-book')) throw new Unfit('notABackup');
  if (file.size > takeInLimits.bookTextBytes) throw new Unfit('tooLarge');
  return { text: () => slabs(file), textBytes: file.size, files: [] };
}

async function paper(file: Blob): Promise<Source> {
  if (file.size > takeInLimits.oneFileBytes) throw new Unfit('tooLarge');
  const { readPaper } = await import('./fromPaper.ts');
  const read = await readPaper(file);
  if (read.kind === 'refused') throw new Unfit(read.why);
  const text = new Blob([read.text]);
  const { pdf, hash } = read;
  return {
    text: () => slabs(text),
    textBytes: text.size,
    files: [{ hash, type: types.pdf ?? '', read: async () => pdf }],
  };
}

/** `evenCut`: what is left of a damaged archive. Throws `Unfit`. */
export async function sourceOf(file: Blob, evenCut: boolean): Promise<Source> {
  if (file.size > takeInLimits.fileBytes) throw new Unfit('tooLarge');
  if (await isZip(file)) {
    if (!evenCut) return archived(file, await entriesOf(file), false);
    const entries = await entriesOf(file).catch(() => entriesFromFront(file));
    return archived(file, entries, true);
  }
  return (await file.slice(0, 5).text()) === '%PDF-' ? paper(file) : plainText(file);
}
