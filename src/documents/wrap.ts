/** Breaks text into lines of a width. Words stay whole unless one alone is wider than the line. */

export interface WrappedLine {
  readonly text: string;
  /** The line ends inside a word. */
  readonly gluedToNext: boolean;
}

type WidthOf = (text: string) => number;

/** Cuts a word wider than the line into pieces that fit, at least one character each. */
function pieces(word: string, widthPt: number, widthOf: WidthOf): string[] {
  const parts: string[] = [];
  let part = '';
  for (const character of word) {
    if (part !== '' && widthOf(part + character) > widthPt) {
      parts.push(part);
      part = '';
    }
    part += character;
  }
  return [...parts, part];
}

function wrapParagraph(paragraph: string, widthPt: number, widthOf: WidthOf): WrappedLine[] {
  const lines: WrappedLine[] = [];
  const space = widthOf(' ');
  let line = '';
  let filled = 0;
  for (const word of paragraph.split(' ')) {
    const width = widthOf(word);
    if (line !== '' && filled + space + width <= widthPt) {
      line += ` ${word}`;
      filled += space + width;
      continue;
    }
    if (line !== '') lines.push({ text: line, gluedToNext: false });
    const parts = width > widthPt ? pieces(word, widthPt, widthOf) : [word];
    for (const part of parts.slice(0, -1)) lines.push({ text: part, gluedToNext: true });
    line = parts.at(-1) ?? '';
    filled = widthOf(line);
  }
  return [...lines, { text: line, gluedToNext: false }];
}

/** Lines of `text`, each at most `widthPt` wide by `widthOf`; a line feed always breaks. Trailing spaces go. */
export const wrap = (text: string, widthPt: number, widthOf: WidthOf): WrappedLine[] =>
  text.split('\n').flatMap((paragraph) => wrapParagraph(paragraph.trim().replace(/ {2,}/g, ' '), widthPt, widthOf));
