import { createHash } from 'node:crypto';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { checksum } from '#store/handOver/checksum.ts';
import { Packing } from '#store/handOver/packing.ts';
import { zip } from '../hostile/zipMaking.ts';
import { processorMs } from '../house/processorTime.ts';
import { readByOthers } from './otherZip.ts';
import { packingLimits, unpack } from './unpacking.ts';

const blobOf = (bytes: Uint8Array): Blob => new Blob([bytes as Uint8Array<ArrayBuffer>]);
const all = (): boolean => true;
const limits = { fileBytes: 4_000_000, inflatedBytes: 1_000_000, entriesCount: 50 };

const packedAt = { day: '2026-11-25', time: '11:07' };

interface Entry {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly stored: boolean;
}

async function pack(entries: readonly Entry[]): Promise<Blob> {
  const zip = new Packing(packedAt);
  for (const { name, bytes, stored } of entries) await (stored ? zip.store(name, bytes) : zip.deflate(name, [bytes]));
  return zip.end();
}

describe('packing', () => {
  const large = Uint8Array.from({ length: 2_500_000 }, (_, index) => (index * 7919) % 251);
  // The marks that stand ahead of an entry, behind one and in the list at the end: in a picture they are just bytes.
  const marks = [0x04034b50, 0x08074b50, 0x02014b50, 0x06054b50];
  const misleading = new Uint8Array(Uint32Array.from([7, ...marks.flatMap((mark) => [mark, 11]), 7]).buffer);
  const entries: readonly Entry[] = [
    { name: 'empty.txt', bytes: new Uint8Array(), stored: false },
    { name: 'empty.bin', bytes: new Uint8Array(), stored: true },
    { name: 'large.bin', bytes: large, stored: true },
    { name: 'misleading.jpg', bytes: misleading, stored: true },
    { name: 'large.txt', bytes: large, stored: false },
    { name: 'text.txt', bytes: strToU8('µg/m³'), stored: false },
  ];

  test('what is packed comes back byte for byte, by our own reader from the front', async () => {
    const unpacked = await unpack(await pack(entries), all);
    expect(unpacked.kind).toBe('unpacked');
    if (unpacked.kind !== 'unpacked') return;
    for (const { name, bytes } of entries) {
      expect([name, Buffer.compare(unpacked.entries.get(name) ?? Buffer.from('none'), bytes)]).toEqual([name, 0]);
    }
  });

  test('and by others, who check every checksum', async () => {
    const read = await readByOthers(await pack(entries));
    const wanted = Object.fromEntries(
      entries.map(({ name, bytes }) => [name, createHash('sha256').update(bytes).digest('hex')]),
    );
    if (read.byPython !== null) expect(read.byPython).toEqual(wanted);
    if (read.byUnzip !== null) expect(read.byUnzip).toBe(true);
    for (const { name, bytes } of entries) expect(Buffer.compare(read.entries.get(name) as Uint8Array, bytes)).toBe(0);
  });

  test('the checksum is that of the published check value', () => {
    // Over the digits 1 to 9, by Python's zlib.crc32.
    expect(checksum(strToU8('123456789'))).toBe(0xcbf43926);
    expect(checksum(strToU8('6789'), checksum(strToU8('12345')))).toBe(0xcbf43926);
  });

  test('only what is wanted is inflated', async () => {
    const file = blobOf(zipSync({ 'a.txt': strToU8('a'), 'zeros.bin': new Uint8Array(2_000_000) }));
    const unpacked = await unpack(file, (name) => name === 'a.txt', { limits });
    expect(unpacked.kind === 'unpacked' && [...unpacked.entries.keys()]).toEqual(['a.txt']);
  });
});

describe('hostile archives are refused, soon and small', () => {
  test('a bomb: 300 MB of zeros in 300 kB', async () => {
    const file = zip([{ name: 'book.txt', bytes: new Uint8Array(300_000_000) }]);
    expect(file.size).toBeLessThan(limits.fileBytes);
    const heapBefore = process.memoryUsage().arrayBuffers;
    const spentMs = processorMs();
    expect(await unpack(file, all, { limits })).toEqual({ kind: 'refused', why: 'tooLarge' });
    expect(spentMs()).toBeLessThan(5000);
    expect(process.memoryUsage().arrayBuffers - heapBefore).toBeLessThan(300_000_000);
  }, 30_000);

  test('a header that lies about the size changes nothing: bytes are counted while they come', async () => {
    const bytes = zipSync({ 'book.txt': new Uint8Array(3_000_000) });
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    view.setUint32(22, 10, true);
    expect(await unpack(blobOf(bytes), all, { limits })).toMatchObject({ kind: 'refused' });
  });

  test('more entries than any book has', async () => {
    const entries = Object.fromEntries(Array.from({ length: 51 }, (_, index) => [`${index}.txt`, strToU8('x')]));
    expect(await unpack(blobOf(zipSync(entries)), all, { limits })).toEqual({ kind: 'refused', why: 'tooManyEntries' });
  });

  test('a file larger than any book', async () => {
    const file = blobOf(new Uint8Array(limits.fileBytes + 1));
    expect(await unpack(file, all, { limits })).toEqual({ kind: 'refused', why: 'tooLarge' });
  });

  test('one name twice', async () => {
    const one = zipSync({ 'book.txt': strToU8('first') });
    const two = zipSync({ 'book.txt': strToU8('second') });
    const joined = new Uint8Array(one.length + two.length);
    joined.set(one);
    joined.set(two, one.length);
    expect(await unpack(blobOf(joined), all, { limits })).toMatchObject({ kind: 'refused' });
  });

  test('an archive inside an archive is bytes, and is not opened', async () => {
    const inner = zipSync({ 'book.txt': new Uint8Array(500_000) });
    const unpacked = await unpack(blobOf(zipSync({ 'inner.zip': inner }, { level: 0 })), all, { limits });
    expect(unpacked.kind === 'unpacked' && unpacked.entries.get('inner.zip')?.length).toBe(inner.length);
  });

  test('bits turned over at 200 places never crash and never hang', async () => {
    const bytes = zipSync({ 'book.txt': strToU8('word '.repeat(2000)), 'files/x.pdf': strToU8('%PDF') });
    for (let index = 0; index < 200; index += 1) {
      const turned = bytes.slice();
      const at = Math.floor((index * bytes.length) / 200);
      turned[at] = (turned[at] ?? 0) ^ 0x41;
      const unpacked = await unpack(blobOf(turned), all, { limits });
      expect(['unpacked', 'refused']).toContain(unpacked.kind);
    }
  });

  test('the limits in use hold a book of 5,000 samples and not a phone that dies', () => {
    expect(packingLimits.inflatedBytes).toBeGreaterThan(40_000_000);
    expect(packingLimits.inflatedBytes).toBeLessThanOrEqual(500_000_000);
  });
});
