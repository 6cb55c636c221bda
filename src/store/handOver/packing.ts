/**
 * Zip out, entry by entry, so that neither the book nor its files are ever in memory as a whole: what is ready lies in blobs, which the
 * browser may put on disk. Sizes and checksums stand ahead of the bytes, so that a reader from the front need not search for the end of
 * an entry: any four bytes of a picture could look like one. Format: PKWARE APPNOTE 6.3.3, sections 4.3.7, 4.3.12, 4.3.16.
 */
import { Deflate } from 'fflate';
import { pacer } from '../breath.ts';
import { checksum } from './checksum.ts';
import { directoryEnd, directoryEntry, type EntryHead, localHeader } from './zipFormat.ts';

/** Bytes come in pieces; a piece is looked at once and then let go. */
export type Pieces = Iterable<Uint8Array> | AsyncIterable<Uint8Array>;

const gatherBytes = 4 << 20;
const sliceBytes = 1 << 17;

/** Small enough that a slow phone hashes or packs one in a few milliseconds. */
export function* slicesOf(bytes: Uint8Array): Generator<Uint8Array> {
  for (let from = 0; from < bytes.length; from += sliceBytes) yield bytes.subarray(from, from + sliceBytes);
}

/** Collects bytes into blobs of a few MB. */
export class Gatherer {
  private readonly blobs: Blob[] = [];
  private waiting: BlobPart[] = [];
  private waitingBytes = 0;
  bytesCount = 0;

  push(bytes: Uint8Array): void {
    this.waiting.push(bytes as Uint8Array<ArrayBuffer>);
    this.waitingBytes += bytes.length;
    this.bytesCount += bytes.length;
    if (this.waitingBytes >= gatherBytes) this.settle();
  }

  pushBlob(blob: Blob): void {
    this.settle();
    this.blobs.push(blob);
    this.bytesCount += blob.size;
  }

  private settle(): void {
    if (this.waitingBytes > 0) this.blobs.push(new Blob(this.waiting));
    this.waiting = [];
    this.waitingBytes = 0;
  }

  blob(type = ''): Blob {
    this.settle();
    return new Blob(this.blobs, { type });
  }
}

/** The bytes of a blob, a piece of a few MB at a time. */
export async function* piecesOf(blob: Blob): AsyncGenerator<Uint8Array> {
  for (let from = 0; from < blob.size; from += gatherBytes) {
    yield new Uint8Array(await blob.slice(from, from + gatherBytes).arrayBuffer());
  }
}

/** Wall time at which the archive was made, for the date of each entry. */
export interface PackedAt {
  readonly day: string;
  readonly time: string;
}

export class Packing {
  private readonly out = new Gatherer();
  private readonly directory: Uint8Array[] = [];
  private readonly packedAt: PackedAt;

  constructor(packedAt: PackedAt) {
    this.packedAt = packedAt;
  }

  private begin(head: Omit<EntryHead, 'packedAt'>): void {
    const whole = { ...head, packedAt: this.packedAt };
    this.directory.push(directoryEntry(whole, this.out.bytesCount));
    this.out.push(localHeader(whole));
  }

  /** Pictures and PDFs are compressed already. */
  async store(name: string, bytes: Uint8Array): Promise<void> {
    const pace = pacer();
    let crc = 0;
    for (const slice of slicesOf(bytes)) {
      crc = checksum(slice, crc);
      await pace();
    }
    this.begin({ name, deflated: false, crc, packedBytes: bytes.length, bytesCount: bytes.length });
    this.out.push(bytes);
  }

  /** `onPiece` hears how many bytes went in, after each piece. */
  async deflate(name: string, pieces: Pieces, onPiece: (bytesCount: number) => void = () => undefined): Promise<void> {
    const pace = pacer();
    const packed = new Gatherer();
    const deflate = new Deflate({ level: 6 }, (chunk) => packed.push(chunk));
    let crc = 0;
    let bytesCount = 0;
    for await (const piece of pieces) {
      for (const slice of slicesOf(piece)) {
        crc = checksum(slice, crc);
        deflate.push(slice);
        bytesCount += slice.length;
        await pace();
      }
      onPiece(bytesCount);
    }
    deflate.push(new Uint8Array(), true);
    this.begin({ name, deflated: true, crc, packedBytes: packed.bytesCount, bytesCount });
    this.out.pushBlob(packed.blob());
  }

  /** Throws beyond what the plain format can say (4 GiB, 65,535 entries): no book comes near it. */
  end(): Blob {
    const at = this.out.bytesCount;
    for (const entry of this.directory) this.out.push(entry);
    this.out.push(directoryEnd(this.directory.length, this.out.bytesCount - at, at));
    return this.out.blob('application/zip');
  }
}
