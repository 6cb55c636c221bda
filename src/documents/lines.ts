/** From text to placed lines: wrapping by the typeface's widths, and where each baseline stands. */
import type { Measure, TextLine } from './pageModel.ts';
import { printable } from './printable.ts';
import { type StyleName, styles } from './typography.ts';
import { wrap } from './wrap.ts';

/** A line that knows its style but not yet its place. */
export interface SetLine {
  readonly text: string;
  readonly style: StyleName;
  readonly gluedToNext: boolean;
}

/** Capital height of DejaVu Sans over its size (OS/2 table: 1493 of 2048 units): capitals stand centred in their leading. */
const capHeightFraction = 0.729;
export const baselineOf = (style: StyleName): number =>
  (styles[style].leadingPt + capHeightFraction * styles[style].sizePt) / 2;

export const setLines = (measure: Measure, text: string, style: StyleName, widthPt: number): SetLine[] =>
  wrap(printable(text, measure.holds), widthPt, (part) => measure.widthPt(part, style)).map((line) => ({
    ...line,
    style,
  }));

export const heightPtOf = (lines: readonly SetLine[]): number =>
  lines.reduce((sum, line) => sum + styles[line.style].leadingPt, 0);

export interface Place {
  readonly xPt: number;
  readonly firstBaselinePt: number;
  readonly widthPt: number;
  readonly align: 'left' | 'right';
}

export function placeLines(measure: Measure, lines: readonly SetLine[], place: Place): TextLine[] {
  let baselinePt = place.firstBaselinePt;
  return lines.map((line, index) => {
    if (index > 0) baselinePt += styles[line.style].leadingPt;
    const shiftPt = place.align === 'right' ? place.widthPt - measure.widthPt(line.text, line.style) : 0;
    return { ...line, xPt: place.xPt + shiftPt, baselinePt };
  });
}

/** One line, cut with an ellipsis where it is too wide: for what is only repeated for the eye. */
export function oneLine(measure: Measure, text: string, style: StyleName, widthPt: number): string {
  const [first, ...rest] = setLines(measure, text.replaceAll('\n', ' '), style, widthPt);
  return rest.length === 0 ? (first?.text ?? '') : `${first?.text.slice(0, -1) ?? ''}…`;
}
