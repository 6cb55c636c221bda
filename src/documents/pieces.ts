/** The pieces that papers are built of: paragraphs, ruled lines, and labelled values in columns. */
import { baselineOf, heightPtOf, placeLines, type SetLine, setLines } from './lines.ts';
import type { Block, Measure, RuleBlock, TextBlock } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import { ink, type StyleName, styles } from './typography.ts';

export interface Frame {
  readonly measure: Measure;
  readonly xPt: number;
  readonly widthPt: number;
}

export const rule = (xPt: number, yPt: number, widthPt: number, weightPt = 0.5, colour = ink.rule): RuleBlock => ({
  kind: 'rule',
  xPt,
  yPt,
  widthPt,
  weightPt,
  colour,
});

interface TextOptions {
  readonly tag: TextBlock['tag'];
  readonly style: StyleName;
  readonly gapBeforePt: number;
  readonly keepWithNext?: boolean;
}

/** At most this many lines stand together; a longer text may go on over the page. */
const linesTogetherCount = 8;

export function textPieces(frame: Frame, text: string, options: TextOptions): Piece[] {
  const lines = setLines(frame.measure, text, options.style, frame.widthPt);
  const parts: SetLine[][] = [];
  for (let at = 0; at < lines.length; at += linesTogetherCount) parts.push(lines.slice(at, at + linesTogetherCount));
  return parts.map((part, index) => ({
    heightPt: heightPtOf(part),
    gapBeforePt: index === 0 ? options.gapBeforePt : 0,
    keepWithNext: options.keepWithNext ?? false,
    repeats: null,
    place: (topPt) => [{ kind: 'text', tag: options.tag, lines: placeText(frame, part, topPt, options.style) }],
  }));
}

const placeText = (frame: Frame, lines: readonly SetLine[], topPt: number, style: StyleName) =>
  placeLines(frame.measure, lines, {
    xPt: frame.xPt,
    firstBaselinePt: topPt + baselineOf(style),
    widthPt: frame.widthPt,
    align: 'left',
  });

export const rulePiece = (frame: Frame, gapBeforePt: number, weightPt: number, colour: string): Piece => ({
  heightPt: weightPt,
  gapBeforePt,
  keepWithNext: false,
  repeats: null,
  place: (topPt) => [rule(frame.xPt, topPt, frame.widthPt, weightPt, colour)],
});

export interface Field {
  readonly label: string;
  readonly value: readonly SetLine[];
}
export interface FieldColumn {
  readonly heading: string;
  readonly fields: readonly Field[];
}

export const fieldGutterPt = 22;
const rowPaddingPt = 1.5;
/** Width that values have in one of `columnCount` columns beside a label of `labelPt`. */
export const fieldWidths = (frame: Frame, columnCount: number, labelPt: number) => {
  const columnPt = (frame.widthPt - fieldGutterPt * (columnCount - 1)) / columnCount;
  return { columnPt, valuePt: columnPt - labelPt };
};

const fieldHeight = (field: Field): number => heightPtOf(field.value) + 2 * rowPaddingPt;
const headingHeight = styles.heading.leadingPt + 2;

function placeColumn(frame: Frame, column: FieldColumn, xPt: number, labelPt: number, topPt: number): Block[] {
  const columnPt = frame.widthPt;
  const place = (lines: readonly SetLine[], x: number, firstBaselinePt: number) =>
    placeLines(frame.measure, lines, { xPt: x, firstBaselinePt, widthPt: columnPt, align: 'left' });
  const heading = setLines(frame.measure, column.heading, 'heading', columnPt);
  const blocks: Block[] = [
    { kind: 'text', tag: 'H2', lines: place(heading, xPt, topPt + baselineOf('heading')) },
    rule(xPt, topPt + headingHeight, columnPt, 0.75, ink.accent),
  ];
  let atPt = topPt + headingHeight;
  for (const field of column.fields) {
    const baselinePt = atPt + rowPaddingPt + baselineOf('value');
    const label = setLines(frame.measure, field.label, 'label', labelPt);
    const lines = [...place(label, xPt, baselinePt), ...place(field.value, xPt + labelPt, baselinePt)];
    atPt += fieldHeight(field);
    blocks.push({ kind: 'text', tag: 'P', lines }, rule(xPt, atPt, columnPt, 0.5, ink.faint));
  }
  return blocks;
}

/** Columns of labelled values side by side, read column by column. */
export function fieldsPiece(
  frame: Frame,
  columns: readonly FieldColumn[],
  labelPt: number,
  gapBeforePt: number,
): Piece {
  const { columnPt } = fieldWidths(frame, columns.length, labelPt);
  const heights = columns.map((column) =>
    column.fields.reduce((sum, field) => sum + fieldHeight(field), headingHeight),
  );
  return {
    heightPt: Math.max(...heights),
    gapBeforePt,
    keepWithNext: false,
    repeats: null,
    place: (topPt) =>
      columns.flatMap((column, index) =>
        placeColumn(
          { ...frame, widthPt: columnPt },
          column,
          frame.xPt + index * (columnPt + fieldGutterPt),
          labelPt,
          topPt,
        ),
      ),
  };
}
