/**
 * What lies in a zip archive and where, by the directory at its end (PKWARE APPNOTE 6.3.3, sections 4.3.7, 4.3.12, 4.3.16), so that one
 * entry can be read again without the others. Sizes are the file's word: they are counted once more while inflating.
 */
import { Inflate } from 'fflate';
import { type Limits, takeInLimits } from './limits.ts';
import { Unfit } from './unfit.ts';

export interface ArchiveEntry {
  readonly name: string;
  readonly deflated: boolean;
  readonly packedBytes: number;
  /** null where the file does not say. */
  readonly bytesCount: number | null;
  readonly headerAt: number;
}

const localBytes = 30;
const directoryBytes = 46;
const endBytes = 22;
const signature = { local: 0x04034b50, directory: 0x02014b50, end: 0x06054b50 } as const;

const viewOf = async (file: Blob, from: number, to: number): Promise<DataView> =>
  new DataView(await file.slice(from, to).arrayBuffer());

export async function isZip(file: Blob): Promise<boolean> {
  const head = await viewOf(file, 0, 4);
  return head.byteLength === 4 && head.getUint32(0, true) === signature.local;
}

interface End {
  readonly at: number;
  readonly entriesCount: number;
  readonly directoryBytes: number;
  readonly directoryAt: number;
}

/** The mark that ends every archive; without it the file was cut. Up to 64 KiB of remark may follow it. */
async function endOf(file: Blob): Promise<End> {
  const from = Math.max(0, file.size - (0xffff + endBytes));
  const tail = await viewOf(file, from, file.size);
  for (let at = tail.byteLength - endBytes; at >= 0; at -= 1) {
    if (tail.getUint32(at, true) !== signature.end) continue;
    return {
      at: from + at,
      entriesCount: tail.getUint16(at + 10, true),
      directoryBytes: tail.getUint32(at + 12, true),
      directoryAt: tail.getUint32(at + 16, true),
    };
  }
  throw new Unfit('damaged');
}

const nameIn = (view: DataView, at: number, length: number): string =>
  new TextDecoder().decode(new Uint8Array(view.buffer, view.byteOffset + at, length));

const fits = (view: DataView, at: number, length: number): boolean => at + length <= view.byteLength;
const methods: readonly number[] = [0, 8];

/** One line of the directory, and where the next one begins. */
function entryAt(view: DataView, at: number): { readonly entry: ArchiveEntry; readonly next: number } {
  if (!fits(view, at, directoryBytes) || view.getUint32(at, true) !== signature.directory) throw new Unfit('damaged');
  const nameLength = view.getUint16(at + 28, true);
  const next = at + directoryBytes + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  const method = view.getUint16(at + 10, true);
  const encrypted = (view.getUint16(at + 8, true) & 1) === 1;
  if (next > view.byteLength || encrypted || !methods.includes(method)) throw new Unfit('damaged');
  const packedBytes = view.getUint32(at + 20, true);
  const bytesCount = view.getUint32(at + 24, true);
  if (method === 0 && packedBytes !== bytesCount) throw new Unfit('damaged');
  const name = nameIn(view, at + directoryBytes, nameLength);
  return {
    entry: { name, deflated: method === 8, packedBytes, bytesCount, headerAt: view.getUint32(at + 42, true) },
    next,
  };
}

/** Two names alike, or one stretch of the file that counts for two entries: no honest archive has either. */
function refuseOverlaps(entries: readonly ArchiveEntry[], directoryAt: number): void {
  if (new Set(entries.map(({ name }) => name)).size < entries.length) throw new Unfit('damaged');
  let end = 0;
  for (const { headerAt, packedBytes } of [...entries].sort((a, b) => a.headerAt - b.headerAt)) {
    if (headerAt < end) throw new Unfit('damaged');
    end = headerAt + localBytes + packedBytes;
  }
  if (end > directoryAt) throw new Unfit('damaged');
}

/** Every entry of an archive. Throws `Unfit`. */
export async function entriesOf(file: Blob, limits: Limits = takeInLimits): Promise<readonly ArchiveEntry[]> {
  const end = await endOf(file);
  if (end.entriesCount > limits.entriesCount) throw new Unfit('tooManyEntries');
  if (end.directoryAt + end.directoryBytes !== end.at) throw new Unfit('damaged');
  const view = await viewOf(file, end.directoryAt, end.at);
  const entries: ArchiveEntry[] = [];
  for (let at = 0; at < view.byteLength; ) {
    if (entries.length > limits.entriesCount) throw new Unfit('tooManyEntries');
    const { entry, next } = entryAt(view, at);
    entries.push(entry);
    at = next;
  }
  if (entries.length !== end.entriesCount) throw new Unfit('damaged');
  refuseOverlaps(entries, end.directoryAt);
  if (entries.reduce((sum, { bytesCount }) => sum + (bytesCount ?? 0), 0) > limits.inflatedBytes)
    throw new Unfit('tooLarge');
  return entries;
}

/** What can still be found from the front of a file whose end is gone. The last entry may be cut. */
export async function entriesFromFront(file: Blob, limits: Limits = takeInLimits): Promise<readonly ArchiveEntry[]> {
  const entries: ArchiveEntry[] = [];
  for (let at = 0; entries.length < limits.entriesCount; ) {
    const view = await viewOf(file, at, at + localBytes);
    if (view.byteLength < localBytes || view.getUint32(0, true) !== signature.local) return entries;
    const nameLength = view.getUint16(26, true);
    const named = await viewOf(file, at + localBytes, at + localBytes + nameLength);
    const name = nameIn(named, 0, named.byteLength);
    const dataAt = at + localBytes + nameLength + view.getUint16(28, true);
    // Without sizes ahead of the bytes the entry reaches, for all that is known, to the end.
    const sized = (view.getUint16(6, true) & 8) === 0;
    const left = Math.max(0, file.size - dataAt);
    const packedBytes = sized ? Math.min(left, view.getUint32(18, true)) : left;
    entries.push({ name, deflated: view.getUint16(8, true) === 8, packedBytes, bytesCount: null, headerAt: at });
    at = dataAt + packedBytes;
  }
  return entries;
}

const slabBytes = 1 << 20;
/** Small: a slice of zeros inflates a thousandfold before anyone can count it. */
const sliceBytes = 1 << 12;

async function* slices(file: Blob, from: number, length: number, step: number): AsyncGenerator<Uint8Array> {
  for (let at = from; at < from + length; at += slabBytes) {
    const slab = new Uint8Array(await file.slice(at, Math.min(at + slabBytes, from + length)).arrayBuffer());
    for (let start = 0; start < slab.length; start += step) yield slab.subarray(start, start + step);
  }
}

async function* inflated(packed: AsyncIterable<Uint8Array>, evenCut: boolean): AsyncGenerator<Uint8Array> {
  let out: Uint8Array[] = [];
  const inflate = new Inflate((chunk) => out.push(chunk));
  const turn = (bytes: Uint8Array, final: boolean): readonly Uint8Array[] => {
    out = [];
    try {
      inflate.push(bytes, final);
    } catch {
      if (!evenCut) throw new Unfit('damaged');
    }
    return out;
  };
  for await (const slice of packed) for (const chunk of turn(slice, false)) if (chunk.length > 0) yield chunk;
  for (const chunk of turn(new Uint8Array(), true)) if (chunk.length > 0) yield chunk;
}

/** The bytes of one entry as they come, at most `mostBytes`. `evenCut`: what is left of it. Throws `Unfit`. */
export async function* bytesOf(
  file: Blob,
  entry: ArchiveEntry,
  mostBytes: number,
  evenCut = false,
): AsyncGenerator<Uint8Array> {
  const head = await viewOf(file, entry.headerAt, entry.headerAt + localBytes);
  if (head.byteLength < localBytes || head.getUint32(0, true) !== signature.local) throw new Unfit('damaged');
  const dataAt = entry.headerAt + localBytes + head.getUint16(26, true) + head.getUint16(28, true);
  const step = entry.deflated ? sliceBytes : slabBytes / 4;
  const packed = slices(file, dataAt, entry.packedBytes, step);
  // At once, not at the end: hundreds of entries that say they are small would be inflated to the limit, each of them.
  const saidBytes = evenCut ? mostBytes : (entry.bytesCount ?? mostBytes);
  let count = 0;
  for await (const chunk of entry.deflated ? inflated(packed, evenCut) : packed) {
    count += chunk.length;
    if (count > mostBytes) throw new Unfit('tooLarge', 0, count);
    if (count > saidBytes) throw new Unfit('damaged', 0, count);
    yield chunk;
  }
  // Where no size is said, whoever reads the bytes has their hash.
  if (!evenCut && entry.bytesCount !== null && count !== entry.bytesCount) throw new Unfit('damaged', 0, count);
}
