/** Passphrases made here, and what is made of one that was typed. Load this file when it is needed: it holds the list of words. */
import { drawBelow } from '../device.ts';
import { passphraseWords } from './passphraseWords.ts';

const wordsCount = 7;
const listed: readonly string[] = passphraseWords.trim().split(/\s+/);
/** Four words of the list carry a hyphen. They are never drawn: whoever types a passphrase may put hyphens between its words. */
const drawn: readonly string[] = listed.filter((word) => !word.includes('-'));
const known: ReadonlySet<string> = new Set(drawn);

/** Seven words, drawn evenly from 7,772: 90 bits (7 x log2 7,772). Lower case, with single spaces. */
export const newPassphrase = (): string =>
  Array.from({ length: wordsCount }, () => drawn[drawBelow(drawn.length)]).join(' ');

const wordsIn = (typed: string): readonly string[] =>
  typed
    .toLowerCase()
    .split(/[\s\p{Dash}]+/u)
    .filter(Boolean);

/** Whether it is seven or more different words of the list: then it has the strength of one that was drawn. */
export function isDrawn(typed: string): boolean {
  const words = wordsIn(typed);
  return words.length >= wordsCount && new Set(words).size >= wordsCount && words.every((word) => known.has(word));
}

/**
 * Whether somebody's own passphrase may seal a file. Our own figures, no source: people choose predictably, so 20 characters stand for
 * far fewer than 20 random ones; with 8 different ones at least it is no single key held down.
 */
export function isStrongEnough(typed: string): boolean {
  const own = ownPassphrase(typed);
  return isDrawn(typed) || ([...own].length >= 20 && new Set(own).size >= 8);
}

/** Somebody's own is kept as it is, but for blanks at its ends, which phones add, and the way its accents are put together. */
const ownPassphrase = (typed: string): string => typed.trim().normalize('NFC');

/** What seals: words of the list as they are shown, whatever case, blanks or hyphens were typed; anything else as it is. */
export const passphraseOf = (typed: string): string =>
  wordsIn(typed).length > 0 && wordsIn(typed).every((word) => known.has(word))
    ? wordsIn(typed).join(' ')
    : ownPassphrase(typed);

/** What may open a file, most likely first: another program may have sealed it with the very characters that were typed. */
export const candidatesOf = (typed: string): readonly string[] => [
  ...new Set([passphraseOf(typed), ownPassphrase(typed), typed]),
];
