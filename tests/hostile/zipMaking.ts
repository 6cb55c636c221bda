/** Archives written byte by byte (PKWARE APPNOTE 4.3.7, 4.3.12, 4.3.16), so that each field can lie. */
import { crc32, deflateRawSync } from 'node:zlib';

export interface EntryWish {
  readonly name: string | Uint8Array;
  readonly bytes?: Uint8Array;
  readonly stored?: boolean;
  /** Packed bytes as they are; `bytes` then only gives size and checksum. */
  readonly packed?: Uint8Array;
  readonly says?: {
    readonly method?: number;
    readonly flags?: number;
    readonly crc?: number;
    readonly packedBytes?: number;
    readonly bytesCount?: number;
    readonly localName?: string;
    readonly signature?: number;
    /** Where its local header stands, by the directory's word. */
    readonly at?: number;
    readonly extra?: Uint8Array;
  };
}

export interface EndWish {
  readonly entriesCount?: number;
  readonly directoryBytes?: number;
  readonly directoryAt?: number;
  readonly remark?: Uint8Array;
  readonly none?: boolean;
  /** Between the directory and the end. */
  readonly ahead?: Uint8Array;
}

const nameBytes = (name: string | Uint8Array): Uint8Array =>
  typeof name === 'string' ? new TextEncoder().encode(name) : name;

function fields(bytesCount: number, list: readonly (readonly [at: number, size: 2 | 4, value: number])[]): Buffer {
  const bytes = Buffer.alloc(bytesCount);
  for (const [at, size, value] of list) size === 2 ? bytes.writeUInt16LE(value, at) : bytes.writeUInt32LE(value, at);
  return bytes;
}

/** The same bytes are packed and summed once, however many entries hold them. */
const packedFrom = new WeakMap<Uint8Array, { readonly packed: Uint8Array; readonly crc: number }>();
function packedOf(bytes: Uint8Array): { readonly packed: Uint8Array; readonly crc: number } {
  const known = packedFrom.get(bytes);
  if (known) return known;
  const made = { packed: deflateRawSync(bytes, { level: 9 }), crc: crc32(bytes) };
  packedFrom.set(bytes, made);
  return made;
}

function written(entry: EntryWish, at: number): { readonly local: Buffer; readonly line: Buffer } {
  const { bytes = new Uint8Array(), stored = false, says = {} } = entry;
  const packed = entry.packed ?? (stored ? bytes : packedOf(bytes).packed);
  const name = nameBytes(entry.name);
  const local = nameBytes(says.localName ?? entry.name);
  const extra = says.extra ?? new Uint8Array();
  const common = (from: number): (readonly [number, 2 | 4, number])[] => [
    [from, 2, 20],
    [from + 2, 2, says.flags ?? 0x0800],
    [from + 4, 2, says.method ?? (stored ? 0 : 8)],
    [from + 8, 2, 0x5b79],
    [from + 10, 4, says.crc ?? (stored ? crc32(bytes) : packedOf(bytes).crc)],
    [from + 14, 4, says.packedBytes ?? packed.length],
    [from + 18, 4, says.bytesCount ?? bytes.length],
  ];
  const head = fields(30, [
    [0, 4, says.signature ?? 0x04034b50],
    ...common(4),
    [26, 2, local.length],
    [28, 2, extra.length],
  ]);
  const line = fields(46, [
    [0, 4, 0x02014b50],
    [4, 2, 20],
    ...common(6),
    [28, 2, name.length],
    [30, 2, extra.length],
    [42, 4, says.at ?? at],
  ]);
  return { local: Buffer.concat([head, local, extra, packed]), line: Buffer.concat([line, name, extra]) };
}

export function zip(entries: readonly EntryWish[], end: EndWish = {}): Blob {
  const locals: Buffer[] = [];
  const lines: Buffer[] = [];
  let at = 0;
  for (const entry of entries) {
    const { local, line } = written(entry, at);
    locals.push(local);
    lines.push(line);
    at += local.length;
  }
  const directory = Buffer.concat(lines);
  const remark = end.remark ?? new Uint8Array();
  const count = end.entriesCount ?? entries.length;
  const mark = fields(22, [
    [0, 4, 0x06054b50],
    [8, 2, count],
    [10, 2, count],
    [12, 4, end.directoryBytes ?? directory.length],
    [16, 4, end.directoryAt ?? at],
    [20, 2, remark.length],
  ]);
  const ahead = end.ahead ?? new Uint8Array();
  return new Blob([...locals, directory, ahead, ...(end.none === true ? [] : [mark, remark])] as BlobPart[]);
}
