/** Text as the typeface can print it: nothing is lost silently, nothing reorders the line. */

const isInvisible = (character: string): boolean => /\p{C}|[\u2028\u2029]/u.test(character);
const named = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;

/** The narrow space between groups of digits is none of the typeface's: one that does not break stands for it. */
const lineOrdered = (text: string): string =>
  text.normalize('NFC').replace(/\r\n?/g, '\n').replaceAll('\t', ' ').replaceAll('\u202f', '\u00a0');

const isShown = (character: string, holds: (codePoint: number) => boolean): boolean =>
  character === '\n' || (!isInvisible(character) && holds(character.codePointAt(0) ?? 0));

/** Whether `printable` has to show any character of this text by its number. */
export const needsNumbers = (text: string, holds: (codePoint: number) => boolean): boolean =>
  [...lineOrdered(text)].some((character) => !isShown(character, holds));

/**
 * Characters that the face does not hold, controls and direction marks are shown by their Unicode numbers in square brackets, a run
 * of them in one pair: [U+0645 U+062D]. Line feeds stay. The document's attached data keeps the text as it was written.
 */
export function printable(text: string, holds: (codePoint: number) => boolean): string {
  const shown: string[] = [];
  let run: string[] = [];
  const endRun = () => {
    if (run.length > 0) shown.push(`[${run.join(' ')}]`);
    run = [];
  };
  for (const character of lineOrdered(text)) {
    if (!isShown(character, holds)) {
      run.push(named(character));
      continue;
    }
    endRun();
    shown.push(character);
  }
  endRun();
  return shown.join('');
}
