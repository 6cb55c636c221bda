/** Pieces to write on by hand: labelled lines, rows to tick, and tables whose cells have a line of their own. */
import { baselineOf, heightPtOf, placeLines, setLines } from './lines.ts';
import type { Block } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import { type Frame, rule } from './pieces.ts';
import { gutterPt, type SetCell, type Table, type TableColumn, tablePieces } from './table.ts';
import { ink, type StyleName, styles } from './typography.ts';

/** A box to tick and its word, never parted. */
export const tick = (word: string): string => `☐\u00a0${word.replaceAll(' ', '\u00a0')}`;
export const ticks = (words: readonly string[]): string => words.map(tick).join('\u00a0\u00a0 ');

export interface WriteField {
  readonly label: string;
  readonly share: number;
  /** What is known already, printed on the line. */
  readonly value?: string | null;
}

const fieldGapPt = 14;
const writeHeightPt = 30;

/** Lines to write on side by side, each with its label above. */
export function writeRow(frame: Frame, fields: readonly WriteField[], gapBeforePt = 0): Piece {
  const { measure, xPt, widthPt } = frame;
  const total = fields.reduce((sum, { share }) => sum + share, 0);
  const roomPt = widthPt - fieldGapPt * (fields.length - 1);
  return {
    heightPt: writeHeightPt,
    gapBeforePt,
    keepWithNext: false,
    repeats: null,
    place: (topPt) => {
      let x = xPt;
      return fields.flatMap(({ label, share, value }) => {
        const eachPt = (roomPt * share) / total;
        const at = (text: string, style: StyleName, baselinePt: number) =>
          placeLines(measure, setLines(measure, text, style, eachPt).slice(0, 1), {
            xPt: x,
            widthPt: eachPt,
            firstBaselinePt: baselinePt,
            align: 'left',
          });
        const lines = [
          ...at(label, 'label', topPt + baselineOf('label')),
          ...(value ? at(value, 'value', topPt + writeHeightPt - 4) : []),
        ];
        const line = rule(x, topPt + writeHeightPt - 1, eachPt, 0.75, ink.rule);
        x += eachPt + fieldGapPt;
        return [{ kind: 'text' as const, tag: 'P' as const, lines }, line];
      });
    },
  };
}

/** A question and what may be ticked, on one ruled line or more. */
export function tickRow(frame: Frame, label: string, options: readonly string[], labelPt = 150): Piece {
  const { measure, xPt, widthPt } = frame;
  const labelled = setLines(measure, label, 'word', labelPt - gutterPt);
  const lines = setLines(measure, ticks(options), 'plain', widthPt - labelPt);
  const heightPt = Math.max(heightPtOf(labelled), heightPtOf(lines)) + 5;
  const place = (set: typeof lines, x: number, topPt: number) =>
    placeLines(measure, set, { xPt: x, widthPt, firstBaselinePt: topPt + 2 + baselineOf('plain'), align: 'left' });
  return {
    heightPt,
    gapBeforePt: 0,
    keepWithNext: false,
    repeats: null,
    place: (topPt): Block[] => [
      { kind: 'text', tag: 'P', lines: [...place(labelled, xPt, topPt), ...place(lines, xPt + labelPt, topPt)] },
      rule(xPt, topPt + heightPt, widthPt, 0.5, ink.faint),
    ],
  };
}

/** A cell of a form: a text printed in it, or room to write. */
export type FormCell = string | null;

const rowPt = 21;

/**
 * A table to write in. The first column prints its text; the others are lines to write on, or texts to tick. Rows stand together as
 * pages allow, and the head repeats.
 */
export function formTable(
  frame: Frame,
  id: string,
  heads: readonly string[],
  shares: readonly number[],
  rows: readonly (readonly FormCell[])[],
): Piece[] {
  const { measure, xPt, widthPt } = frame;
  const total = shares.reduce((sum, share) => sum + share, 0);
  const widths = shares.map((share) => (widthPt * share) / total);
  const columns = heads.map(
    (head, at): TableColumn => ({
      widthPt: widths[at] ?? 0,
      align: 'left',
      head: setLines(measure, head, 'columnHead', (widths[at] ?? 0) - gutterPt),
    }),
  );
  const table: Table = { id, measure, xPt, columns, rowPaddingPt: 3, writeOnPt: rowPt, keepTogether: false };
  const cells = rows.map((row) =>
    row.map((text, at): SetCell => {
      const style: StyleName = at === 0 ? 'quietWord' : 'word';
      return {
        lines: text === null || text === '' ? [] : setLines(measure, text, style, (widths[at] ?? 0) - gutterPt),
        spanCount: 1,
      };
    }),
  );
  return tablePieces(table, cells, 3);
}

/** Empty ruled lines. */
export const emptyLines = (frame: Frame, count: number): Piece[] =>
  Array.from({ length: count }, () => ({
    heightPt: styles.big.leadingPt / 2,
    gapBeforePt: 0,
    keepWithNext: false,
    repeats: null,
    place: (topPt: number) => [rule(frame.xPt, topPt + styles.big.leadingPt / 2, frame.widthPt, 0.75, ink.rule)],
  }));
