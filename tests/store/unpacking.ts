/** Zip in, in slices so that a phone stays awake to taps. Sizes are counted while inflating: a header's word is not trusted. */
import { Unzip, UnzipInflate } from 'fflate';
import { takeInLimits } from '#store/handOver/limits.ts';

export interface PackingLimits {
  readonly fileBytes: number;
  readonly inflatedBytes: number;
  readonly entriesCount: number;
}

/** The same as for looking into a file: what was taken in can be read through again. */
export const packingLimits: PackingLimits = takeInLimits;

export type Unpacked =
  | { readonly kind: 'unpacked'; readonly entries: ReadonlyMap<string, Uint8Array> }
  | { readonly kind: 'refused'; readonly why: 'notABackup' | 'damaged' | 'tooLarge' | 'tooManyEntries' };

type Refused = Extract<Unpacked, { kind: 'refused' }>['why'];

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** Collects the wanted entries of one archive and stops at the first broken promise. */
function collector(wanted: (name: string) => boolean, limits: PackingLimits) {
  const entries = new Map<string, Uint8Array>();
  const open = new Set<string>();
  let inflated = 0;
  let count = 0;
  let refused: Refused | null = null;
  const unzip = new Unzip((entry) => {
    count += 1;
    if (count > limits.entriesCount) refused ??= 'tooManyEntries';
    if (refused !== null || !wanted(entry.name)) return;
    if (open.has(entry.name) || entries.has(entry.name)) {
      refused = 'damaged';
      return;
    }
    const chunks: Uint8Array[] = [];
    open.add(entry.name);
    entry.ondata = (error, chunk, final) => {
      if (error) refused ??= 'damaged';
      inflated += chunk?.length ?? 0;
      if (inflated > limits.inflatedBytes) refused ??= 'tooLarge';
      if (refused !== null) return;
      chunks.push(chunk);
      if (!final) return;
      open.delete(entry.name);
      entries.set(entry.name, joined(chunks));
    };
    entry.start();
  });
  unzip.register(UnzipInflate);
  return { unzip, entries, refusal: (): Refused | null => refused, unfinished: (): boolean => open.size > 0 };
}

const isZip = async (file: Blob): Promise<boolean> => {
  const head = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  return head[0] === 0x50 && head[1] === 0x4b && head[2] === 3 && head[3] === 4;
};

/** The mark that ends every archive; without it the file was cut. Up to 64 KiB of remark may follow it. */
async function isWhole(file: Blob): Promise<boolean> {
  const tail = new Uint8Array(await file.slice(-(0xffff + 22)).arrayBuffer());
  for (let at = tail.length - 22; at >= 0; at -= 1) {
    if (tail[at] === 0x50 && tail[at + 1] === 0x4b && tail[at + 2] === 5 && tail[at + 3] === 6) return true;
  }
  return false;
}

/** Unpacks the entries that `wanted` names; others are counted and skipped. `evenCut` takes what is whole in a cut file. Never throws for what is in the file. */
export async function unpack(
  file: Blob,
  wanted: (name: string) => boolean,
  { limits = packingLimits, evenCut = false }: { limits?: PackingLimits; evenCut?: boolean } = {},
): Promise<Unpacked> {
  if (file.size > limits.fileBytes) return { kind: 'refused', why: 'tooLarge' };
  if (!(await isZip(file))) return { kind: 'refused', why: 'notABackup' };
  if (!evenCut && !(await isWhole(file))) return { kind: 'refused', why: 'damaged' };
  const collected = collector(wanted, limits);
  // Small slices: one slice of zeros inflates a thousandfold before anyone can count it.
  const step = 1 << 16;
  try {
    for (let from = 0; from < file.size; from += step) {
      const slice = new Uint8Array(await file.slice(from, from + step).arrayBuffer());
      collected.unzip.push(slice, from + step >= file.size);
      const why = collected.refusal();
      if (why !== null) return { kind: 'refused', why };
    }
  } catch {
    return { kind: 'refused', why: collected.refusal() ?? 'damaged' };
  }
  return collected.unfinished() && !evenCut
    ? { kind: 'refused', why: 'damaged' }
    : { kind: 'unpacked', entries: collected.entries };
}
