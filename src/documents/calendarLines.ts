/**
 * Lines of a calendar file, RFC 5545 section 3.1: each ends in CR LF and is folded so that no line is longer than 75 octets, ends left
 * out, without cutting a letter in two; 3.3.11: what would end a text value stands behind a backslash.
 */

const octets = (letter: string): number => {
  const code = letter.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
};

/** Longest line in octets, its end left out; RFC 5545 section 3.1. */
const longestOctets = 75;

/** One content line, folded: each further line begins with one space, which counts. */
export function folded(line: string): string {
  let text = '';
  let length = 0;
  for (const letter of line) {
    const more = octets(letter);
    if (length + more > longestOctets) {
      text += '\r\n ';
      length = 1;
    }
    text += letter;
    length += more;
  }
  return `${text}\r\n`;
}

/** A text value. Control letters other than the tab may not stand in one; a lone half of a letter cannot be written. */
export const escaped = (text: string): string =>
  text
    .toWellFormed()
    .replace(/\r\n?/g, '\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 5545 refuses exactly these
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '')
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replaceAll('\n', '\\n');

/** '2026-12-04' as 20261204. */
export const dateValue = (day: string): string => day.replaceAll('-', '');

/** An instant in UTC as 20261125T101200Z; parts of a second are left out. */
export const instantValue = (at: string): string => `${at.slice(0, 19).replace(/[-:]/g, '')}Z`;
