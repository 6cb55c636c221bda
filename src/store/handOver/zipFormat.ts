/** The three structures of a zip archive. Format: PKWARE APPNOTE 6.3.3, sections 4.3.7, 4.3.12, 4.3.16. Little-endian throughout. */

export interface EntryHead {
  readonly name: string;
  readonly deflated: boolean;
  readonly crc: number;
  readonly packedBytes: number;
  readonly bytesCount: number;
  /** Wall time, shown by readers as each entry's date. */
  readonly packedAt: { readonly day: string; readonly time: string };
}

const most = { bytes: 0xffff_fffe, entries: 0xfffe } as const;

/** Throws beyond what the plain format can say: no book comes near it. */
function fits(value: number, limit: number): number {
  if (value > limit) throw new RangeError('An archive beyond what the plain zip format can say');
  return value;
}

/** Date and time as two 16-bit words (4.4.6): years from 1980, seconds in twos. */
function dosTime({ day, time }: EntryHead['packedAt']): readonly [number, number] {
  const [year = 1980, month = 1, dayOfMonth = 1] = day.split('-').map(Number);
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return [(hours << 11) | (minutes << 5), (Math.max(0, year - 1980) << 9) | (month << 5) | dayOfMonth];
}

/** Fields from `at` on that stand alike in both headers: version needed, flags (bit 11: the name is UTF-8), method, time, sizes, name. */
function common(view: DataView, at: number, head: EntryHead, nameBytes: number): void {
  const [time, date] = dosTime(head.packedAt);
  view.setUint16(at, 20, true);
  view.setUint16(at + 2, 0x0800, true);
  view.setUint16(at + 4, head.deflated ? 8 : 0, true);
  view.setUint16(at + 6, time, true);
  view.setUint16(at + 8, date, true);
  view.setUint32(at + 10, head.crc, true);
  view.setUint32(at + 14, fits(head.packedBytes, most.bytes), true);
  view.setUint32(at + 18, fits(head.bytesCount, most.bytes), true);
  view.setUint16(at + 22, nameBytes, true);
}

function structure(bytesCount: number, signature: number): { readonly bytes: Uint8Array; readonly view: DataView } {
  const bytes = new Uint8Array(bytesCount);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, signature, true);
  return { bytes, view };
}

/** 4.3.7: stands ahead of an entry's bytes. */
export function localHeader(head: EntryHead): Uint8Array {
  const name = new TextEncoder().encode(head.name);
  const { bytes, view } = structure(30 + name.length, 0x04034b50);
  common(view, 4, head, name.length);
  bytes.set(name, 30);
  return bytes;
}

/** 4.3.12: the entry in the list at the end; `at` is where its local header begins. */
export function directoryEntry(head: EntryHead, at: number): Uint8Array {
  const name = new TextEncoder().encode(head.name);
  const { bytes, view } = structure(46 + name.length, 0x02014b50);
  view.setUint16(4, 20, true);
  common(view, 6, head, name.length);
  view.setUint32(42, fits(at, most.bytes), true);
  bytes.set(name, 46);
  return bytes;
}

/** 4.3.16: the last thing in the archive. */
export function directoryEnd(entriesCount: number, directoryBytes: number, at: number): Uint8Array {
  const { bytes, view } = structure(22, 0x06054b50);
  view.setUint16(8, fits(entriesCount, most.entries), true);
  view.setUint16(10, entriesCount, true);
  view.setUint32(12, directoryBytes, true);
  view.setUint32(16, fits(at, most.bytes), true);
  return bytes;
}
