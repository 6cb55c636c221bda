/**
 * Sample numbers: the label written on a cassette by hand, never the identity. Digits only: two of the writer, a running number of at
 * least three, and a check digit by ISO 7064 MOD 11,10, which finds every single wrong digit. Prefixes run from 10, because
 * spreadsheets drop a leading zero.
 */
import type { SampleRecord } from './book.ts';

/** The check digit of a string of digits (ISO 7064 MOD 11,10, hybrid system; DERIVED, checked against published numbers in tests). */
export function checkDigitOf(digits: string): string {
  let product = 10;
  for (const digit of digits) product = (((product + Number(digit)) % 10 || 10) * 2) % 11;
  return String((11 - product) % 10);
}

const longest = 10;
const shortest = 6;
const prefixesFrom = 10;
const prefixesCount = 90;

export type CheckedNumber =
  | { readonly kind: 'right'; readonly sampleNumber: string }
  | { readonly kind: 'wrong'; readonly mistake: 'empty' | 'notDigits' | 'tooShort' | 'tooLong' | 'checkDigit' };

/** Reads a number as somebody keyed it; blanks and hyphens between digits are left out. Tells which mistake was made. */
export function checkSampleNumber(text: string): CheckedNumber {
  const digits = text.replace(/[\s\u00a0-]/g, '');
  if (digits === '') return { kind: 'wrong', mistake: 'empty' };
  if (!/^[0-9]+$/.test(digits)) return { kind: 'wrong', mistake: 'notDigits' };
  if (digits.length < shortest) return { kind: 'wrong', mistake: 'tooShort' };
  if (digits.length > longest) return { kind: 'wrong', mistake: 'tooLong' };
  if (checkDigitOf(digits.slice(0, -1)) !== digits.slice(-1)) return { kind: 'wrong', mistake: 'checkDigit' };
  return { kind: 'right', sampleNumber: digits };
}

export const isSampleNumber = (text: string): boolean => /^\d+$/.test(text) && checkSampleNumber(text).kind === 'right';

export const prefixOfNumber = (sampleNumber: string): string => sampleNumber.slice(0, 2);

const runningOf = (sampleNumber: string): number => Number(sampleNumber.slice(2, -1));

/** The number of a prefix and a running number counted from 1. Throws beyond what a label holds (9,999,999 samples of one writer). */
export function sampleNumberOf(prefix: string, running: number): string {
  const digits = `${prefix}${String(running).padStart(3, '0')}`;
  if (digits.length >= longest) throw new Error('no sample numbers left under this prefix');
  return digits + checkDigitOf(digits);
}

/** The next free number under a prefix, after the highest in `used`; numbers of other prefixes are passed over. */
export function nextSampleNumber(prefix: string, used: Iterable<string>): string {
  let last = 0;
  for (const number of used)
    if (prefixOfNumber(number) === prefix && number.length >= shortest) last = Math.max(last, runningOf(number));
  return sampleNumberOf(prefix, last + 1);
}

const alphabet = '0123456789abcdefghjkmnpqrstvwxyz';

/**
 * The two digits of a writer: follows from the writer, and steps on past those that other writers of the book hold. When all ninety
 * are held it falls back on its own: then numbers may coincide, and `sameNumber` names them.
 */
export function prefixOf(writer: string, taken: ReadonlySet<string> = new Set()): string {
  let own = 0;
  for (const character of writer) own = (own * 32 + alphabet.indexOf(character)) % prefixesCount;
  const prefixAt = (step: number): string => String(prefixesFrom + ((own + step) % prefixesCount));
  for (let step = 0; step < prefixesCount; step += 1) if (!taken.has(prefixAt(step))) return prefixAt(step);
  return prefixAt(0);
}

export interface SameNumber {
  readonly sampleNumber: string;
  readonly sampleIds: readonly string[];
}

/** Labels that stand on more than one sample, as two devices with one prefix make them. Void samples count: their cassette exists. */
export function sameNumber(samples: Iterable<Pick<SampleRecord, 'id' | 'sampleNumber'>>): readonly SameNumber[] {
  const idsByNumber = new Map<string, string[]>();
  for (const { id, sampleNumber } of samples) {
    const ids = idsByNumber.get(sampleNumber);
    if (ids) ids.push(id);
    else idsByNumber.set(sampleNumber, [id]);
  }
  return [...idsByNumber]
    .filter(([, ids]) => ids.length > 1)
    .map(([number, ids]) => ({ sampleNumber: number, sampleIds: ids.sort() }))
    .sort((a, b) => (a.sampleNumber < b.sampleNumber ? -1 : 1));
}
