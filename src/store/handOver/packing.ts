/** Zip out, in slices so that a phone stays awake to taps. */
import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';

export interface Packed {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** PDFs are compressed already. */
  readonly stored: boolean;
}

const sliceBytes = 1 << 20;
const breath = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

/** Packs entries in the order given; `modified` is an epoch number, written as each entry's date. */
export async function pack(entries: readonly Packed[], modified: number): Promise<Blob> {
  const parts: BlobPart[] = [];
  let failed: Error | null = null;
  const zip = new Zip((error, chunk) => {
    if (error) failed = error;
    else parts.push(chunk as Uint8Array<ArrayBuffer>);
  });
  for (const { name, bytes, stored } of entries) {
    const entry = stored ? new ZipPassThrough(name) : new ZipDeflate(name, { level: 6 });
    entry.mtime = modified;
    zip.add(entry);
    for (let from = 0; from < bytes.length || from === 0; from += sliceBytes) {
      entry.push(bytes.subarray(from, from + sliceBytes), from + sliceBytes >= bytes.length);
      await breath();
    }
  }
  zip.end();
  if (failed !== null) throw failed;
  return new Blob(parts, { type: 'application/zip' });
}
