/**
 * The work of sealing and opening, in the worker or, where there is none, in place. Format: age v1,
 * https://github.com/C2SP/C2SP/blob/main/age.md (READ). Bytes come and go as streams: 150 MB are never in memory as a whole.
 */
import { armor, Decrypter, Encrypter } from 'age-encryption';

export type Told = (doneBytes: number, totalBytes: number) => void;

export type SealRefusal = 'wrongPassphrase' | 'sealNotOurs' | 'damaged' | 'tooLarge';
export type Opened = { readonly kind: 'opened'; readonly blob: Blob } | Refused;
type Refused = { readonly kind: 'refused'; readonly why: SealRefusal };

export interface SealTask {
  readonly do: 'seal';
  readonly blob: Blob;
  readonly passphrase: string;
  /** Drawn by chance: strong enough for half the memory when a phone has no more. */
  readonly drawn: boolean;
}
export interface OpenTask {
  readonly do: 'open';
  readonly blob: Blob;
  readonly candidates: readonly string[];
  readonly mostBytes: number;
}

/** scrypt needs 128 x 8 x 2^logN bytes: 17 is 128 MiB and the floor that OWASP names (READ); 16 is half of it, 18 the most we read. */
const workFactor = { usual: 17, lean: 16, mostRead: 18 } as const;

const refused = (why: SealRefusal): Refused => ({ kind: 'refused', why });
const lacksMemory = (error: unknown): boolean => error instanceof RangeError;

class TooLarge extends Error {}

/** Counts what flows through; breaks the flow beyond `mostBytes`. */
function counted(
  total: number,
  told: Told,
  mostBytes = Number.POSITIVE_INFINITY,
): TransformStream<Uint8Array, Uint8Array> {
  let done = 0;
  return new TransformStream({
    transform(chunk, controller) {
      done += chunk.length;
      if (done > mostBytes) throw new TooLarge();
      told(Math.min(done, total), total);
      controller.enqueue(chunk);
    },
  });
}

/** The browser may put on disk what is gathered. */
const gathered = (stream: ReadableStream<Uint8Array>): Promise<Blob> =>
  new Response(stream as ReadableStream<Uint8Array<ArrayBuffer>>).blob();

async function sealedWith(logN: number, { blob, passphrase }: SealTask, told: Told): Promise<Blob> {
  const encrypter = new Encrypter();
  encrypter.setPassphrase(passphrase);
  encrypter.setScryptWorkFactor(logN);
  return gathered(await encrypter.encrypt(blob.stream().pipeThrough(counted(blob.size, told))));
}

/** Throws a RangeError when the device has not the memory, and when somebody's own passphrase would have to do with less. */
export async function sealNow(task: SealTask, told: Told): Promise<Blob> {
  told(0, task.blob.size);
  try {
    return await sealedWith(workFactor.usual, task, told);
  } catch (error) {
    if (!task.drawn || !lacksMemory(error)) throw error;
    return sealedWith(workFactor.lean, task, told);
  }
}

const headerShape =
  /^age-encryption\.org\/v1\n-> scrypt ([A-Za-z0-9+/]{22}) ([1-9][0-9]{0,2})\n[A-Za-z0-9+/]{43}\n--- [A-Za-z0-9+/]{43}\n/;
/** Another version, another way to seal, or more than one: whole lines only, so that a cut file is damaged and no more. */
const otherSeal = [
  /^age-encryption\.org\/(?!v1\r?\n)[^\r\n]+\n/,
  /^age-encryption\.org\/v1\n-> (?!scrypt )[^\r\n]+\n/,
  /^age-encryption\.org\/v1\n-> scrypt [^\r\n]+\n[^\r\n]+\n-> /,
];

/** Said by the header alone, before any work is done. null: ours to try. */
async function faultOfHeader(file: Blob): Promise<SealRefusal | null> {
  const bytes = new Uint8Array(await file.slice(0, 1000).arrayBuffer());
  const head = String.fromCharCode(...bytes);
  const found = headerShape.exec(head);
  if (found === null) return otherSeal.some((shape) => shape.test(head)) ? 'sealNotOurs' : 'damaged';
  return Number(found[2]) > workFactor.mostRead ? 'sealNotOurs' : null;
}

/** The payload as it opens, or why the header does not. The library tells the reasons apart by their sentence alone. */
async function opening(file: Blob, candidates: readonly string[]): Promise<ReadableStream<Uint8Array> | SealRefusal> {
  const decrypter = new Decrypter();
  for (const candidate of candidates) decrypter.addPassphrase(candidate);
  try {
    return await decrypter.decrypt(file.stream() as ReadableStream<Uint8Array>);
  } catch (error) {
    if (lacksMemory(error)) return 'sealNotOurs';
    return error instanceof Error && error.message.startsWith('no identity matched') ? 'wrongPassphrase' : 'damaged';
  }
}

/** Never throws for what is in the file. */
export async function openNow({ blob, candidates, mostBytes }: OpenTask, told: Told): Promise<Opened> {
  const file = await bare(blob);
  if (file === null) return refused('damaged');
  // What seals adds 16 bytes to each 64 KiB and a short header.
  if (file.size > mostBytes * 1.001 + 1000) return refused('tooLarge');
  const fault = await faultOfHeader(file);
  if (fault !== null) return refused(fault);
  told(0, file.size);
  const opened = await opening(file, candidates);
  if (typeof opened === 'string') return refused(opened);
  try {
    return { kind: 'opened', blob: await gathered(opened.pipeThrough(counted(file.size, told, mostBytes))) };
  } catch (error) {
    return refused(error instanceof TooLarge ? 'tooLarge' : 'damaged');
  }
}

const armourBegin = '-----BEGIN AGE ENCRYPTED FILE-----';
const armourEnd = '-----END AGE ENCRYPTED FILE-----';
const lineChars = 64;
const lineBytes = 48;

/** The file without its armour, piece by piece: all lines but the last are equally long. null: its armour is damaged. */
async function bare(file: Blob): Promise<Blob | null> {
  const start = await file.slice(0, 200).text();
  const lead = start.length - start.trimStart().length;
  if (!start.startsWith(armourBegin, lead)) return file;
  const lineEnd = start.slice(lead + armourBegin.length).startsWith('\r\n') ? '\r\n' : '\n';
  const tail = await file.slice(-200).text();
  const trail = tail.length - tail.trimEnd().length;
  if (!tail.trimEnd().endsWith(`${lineEnd}${armourEnd}`)) return null;
  const from = lead + armourBegin.length + lineEnd.length;
  const to = file.size - trail - armourEnd.length;
  const pieceChars = (lineChars + lineEnd.length) * 16_384;
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  try {
    for (let at = from; at < to; at += pieceChars) {
      const text = await file.slice(at, Math.min(at + pieceChars, to)).text();
      const bytes = armor.decode(`${armourBegin}${lineEnd}${text}${armourEnd}`);
      if (at + pieceChars < to && bytes.length !== 16_384 * lineBytes) return null;
      pieces.push(bytes as Uint8Array<ArrayBuffer>);
    }
  } catch {
    return null;
  }
  return new Blob(pieces);
}
