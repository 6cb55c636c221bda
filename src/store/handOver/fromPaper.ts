/**
 * Reads the record out of a custody sheet that was issued as PDF. Not a reader of PDF files: it looks for attached files by their mark
 * and inflates those that our own writer wrote, also after another program saved the file anew. Format: ISO 32000-1, 7.3.8, 7.11.4.
 */
import { Unzlib } from 'fflate';
import { hashOf } from '../files.ts';

/** Decided here: a sheet with 200 cassettes and its record is below 2 MB. */
export const paperLimits = { fileBytes: 30_000_000, inflatedBytes: 20_000_000, attachedCount: 20 } as const;

export type ReadPaper =
  | {
      readonly kind: 'paper';
      /** The book's text, with part `paper`. */
      readonly text: string;
      /** The values that the sheet shows, as they were attached; null where they cannot be read. */
      readonly sheet: unknown;
      readonly pdf: Uint8Array;
      readonly hash: string;
    }
  /**
   * `sheetOnly`: issued by the first version, which attached the sheet alone: values worked out, not the readings behind them, so
   * nothing of the record can be rebuilt. `notAsIssued`: locked, or saved by a program that packs attachments in a way that is not
   * ours, or damaged.
   */
  | { readonly kind: 'refused'; readonly why: 'notABackup' | 'notAsIssued' | 'tooLarge' | 'sheetOnly' };

type RefusedWhy = Extract<ReadPaper, { kind: 'refused' }>['why'];

const refused = (why: RefusedWhy): ReadPaper => ({ kind: 'refused', why });
const mark = '/EmbeddedFile';
/** No dictionary of an attached file of ours comes near it. */
const dictionaryBytes = 2000;
const sliceBytes = 1 << 14;

class TooLarge extends Error {}

/** Counts while it inflates: what the file says of its sizes is not trusted. Throws on what is no zlib stream. */
function inflated(packed: Uint8Array, limitBytes: number): Uint8Array {
  const chunks: Uint8Array[] = [];
  let bytesCount = 0;
  const unzlib = new Unzlib((chunk) => {
    bytesCount += chunk.length;
    if (bytesCount > limitBytes) throw new TooLarge();
    chunks.push(chunk);
  });
  for (let from = 0; from < packed.length; from += sliceBytes) {
    unzlib.push(packed.subarray(from, from + sliceBytes), from + sliceBytes >= packed.length);
  }
  const whole = new Uint8Array(bytesCount);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** The length of a stream: a number, or the number of an object that holds it. NaN where neither is there. */
function lengthIn(dictionary: string, text: string): number {
  const found = /\/Length\s+(\d{1,10})(\s+\d{1,5}\s+R)?/.exec(dictionary);
  if (found === null) return Number.NaN;
  if (found[2] === undefined) return Number(found[1]);
  const object = new RegExp(`[\\r\\n]${Number(found[1])}\\s{1,4}\\d{1,5}\\s{1,4}obj\\s{1,4}(\\d{1,10})\\s`).exec(text);
  return Number(object?.[1] ?? Number.NaN);
}

/** The bytes of one attached file. Throws where they are not as our writer, or one that saved it anew, leaves them. */
function attachedAt(at: number, text: string, pdf: Uint8Array, limitBytes: number): Uint8Array {
  const begins = text.lastIndexOf(' obj', at);
  const ends = text.indexOf('stream', at);
  if (begins < 0 || ends < 0 || ends - begins > dictionaryBytes) throw new Error('no stream');
  const dictionary = text.slice(begins, ends);
  const from = ends + 'stream'.length + (text[ends + 'stream'.length] === '\r' ? 2 : 1);
  const bytes = pdf.subarray(from, from + lengthIn(dictionary, text));
  if (!text.slice(from + bytes.length, from + bytes.length + 12).includes('endstream')) throw new Error('cut');
  if (/\/DecodeParms/.test(dictionary)) throw new Error('packed in a way that is not ours');
  if (!/\/Filter/.test(dictionary)) {
    if (bytes.length > limitBytes) throw new TooLarge();
    return bytes;
  }
  if (!/\/Filter\s*\[?\s*\/FlateDecode\s*\]?\s*(\/|>>)/.test(dictionary)) throw new Error('packed by another method');
  return inflated(bytes, limitBytes);
}

/** Where attached files stand; `/EmbeddedFiles` is the list of their names. */
function placesIn(text: string): number[] {
  const places: number[] = [];
  for (let at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + mark.length)) {
    if (!/[A-Za-z]/.test(text[at + mark.length] ?? '')) places.push(at);
    if (places.length > paperLimits.attachedCount) return places;
  }
  return places;
}

function jsonOrNull(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

interface Found {
  record: string | null;
  sheet: unknown;
  isDamaged: boolean;
}

/** Reads what is attached, by what it says of itself: names stand elsewhere, and another program may have packed them. */
function foundIn(text: string, pdf: Uint8Array): Found {
  const found: Found = { record: null, sheet: null, isDamaged: false };
  let leftBytes: number = paperLimits.inflatedBytes;
  for (const at of placesIn(text)) {
    try {
      const bytes = attachedAt(at, text, pdf, leftBytes);
      leftBytes -= bytes.length;
      const content = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
      if (content.startsWith('{"format":"fullshift-book"')) found.record ??= content;
      else if (content.startsWith('{') && content.includes('"sheetFormat":"custodySheet.')) {
        found.sheet ??= jsonOrNull(content);
      }
    } catch (error) {
      if (error instanceof TooLarge) throw error;
      found.isDamaged = true;
    }
  }
  return found;
}

export const looksLikePaper = async (file: Blob): Promise<boolean> => (await file.slice(0, 5).text()) === '%PDF-';

/** Never throws for what is in the file. Whether the text is whole and follows is told by who reads it. */
export async function readPaper(file: Blob): Promise<ReadPaper> {
  if (file.size > paperLimits.fileBytes) return refused('tooLarge');
  if (!(await looksLikePaper(file))) return refused('notABackup');
  const pdf = new Uint8Array(await file.arrayBuffer());
  const text = new TextDecoder('latin1').decode(pdf);
  if (placesIn(text).length > paperLimits.attachedCount) return refused('notABackup');
  try {
    const { record, sheet, isDamaged } = foundIn(text, pdf);
    if (record !== null) return { kind: 'paper', text: record, sheet, pdf, hash: hashOf(pdf) };
    if (isDamaged) return refused('notAsIssued');
    return refused(sheet === null ? 'notABackup' : 'sheetOnly');
  } catch (error) {
    if (error instanceof TooLarge) return refused('tooLarge');
    throw error;
  }
}
