/** Tables on paper: a head that repeats on every page, rows that are never broken, figures right-aligned under their unit. */
import { placeLines, type SetLine } from './lines.ts';
import type { Block, Cell, Measure } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import { rule } from './pieces.ts';
import { ink, styles } from './typography.ts';

export interface TableColumn {
  readonly widthPt: number;
  readonly align: 'left' | 'right';
  readonly head: readonly SetLine[];
}

export interface SetCell {
  readonly lines: readonly SetLine[];
  readonly spanCount: number;
}

export interface Table {
  readonly id: string;
  readonly measure: Measure;
  readonly xPt: number;
  readonly columns: readonly TableColumn[];
  readonly rowPaddingPt: number;
  /** Rows to be written on by hand: taller, each cell with a line of its own. */
  readonly writeOnPt: number | null;
  /** All rows on one page; by default those that are written on. */
  readonly keepTogether?: boolean;
}

/** Space that stays free at the right of each cell. */
export const gutterPt = 8;
const figureBaselinePt = 10.3;
const headBaselinePt = 7.6;

const widthOf = (columns: readonly TableColumn[]): number => columns.reduce((sum, column) => sum + column.widthPt, 0);

function placeCells(table: Table, cells: readonly SetCell[], firstBaselinePt: number, fromBottom: boolean): Cell[] {
  const deepest = Math.max(...cells.map((cell) => cell.lines.length));
  let column = 0;
  let xPt = table.xPt;
  return cells.map(({ lines, spanCount }) => {
    const spanned = table.columns.slice(column, column + spanCount);
    const widthPt = widthOf(spanned);
    const align = spanCount > 1 ? 'left' : (spanned[0]?.align ?? 'left');
    const lowerPt = fromBottom ? (deepest - lines.length) * styles.columnHead.leadingPt : 0;
    const place = { xPt, firstBaselinePt: firstBaselinePt + lowerPt, widthPt: widthPt - gutterPt, align } as const;
    column += spanCount;
    xPt += widthPt;
    return { lines: placeLines(table.measure, lines, place), spanCount };
  });
}

function headPiece(table: Table, repeated: boolean, gapBeforePt: number): Piece {
  const cells = table.columns.map((column) => ({ lines: column.head, spanCount: 1 }));
  const heightPt = Math.max(...cells.map((cell) => cell.lines.length)) * styles.columnHead.leadingPt + 5;
  return {
    heightPt,
    gapBeforePt,
    keepWithNext: true,
    repeats: null,
    place: (topPt) => [
      {
        kind: 'tableHead',
        table: table.id,
        repeated,
        cells: placeCells(table, cells, topPt + headBaselinePt, true),
      },
      rule(table.xPt, topPt + heightPt, widthOf(table.columns), 1, ink.accent),
    ],
  };
}

/** Short lines to write on, under each cell of a row. */
function writingLines(table: Table, cells: readonly SetCell[], bottomPt: number): Block[] {
  let xPt = table.xPt;
  return table.columns.map((column, index) => {
    const isLast = index === table.columns.length - 1;
    const line = rule(xPt, bottomPt, column.widthPt - (isLast || !cells[index] ? 0 : gutterPt), 0.75, ink.rule);
    xPt += column.widthPt;
    return line;
  });
}

function rowHeight(table: Table, cells: readonly SetCell[]): number {
  const deepest = Math.max(...cells.map(({ lines }) => lines.length));
  const textPt = Math.max(1, deepest) * styles.figure.leadingPt + 2 * table.rowPaddingPt;
  return Math.max(textPt, table.writeOnPt ?? 0);
}

function rowPiece(table: Table, cells: readonly SetCell[]): Piece {
  const heightPt = rowHeight(table, cells);
  const repeats = headPiece(table, true, 0);
  return {
    heightPt,
    gapBeforePt: 0,
    keepWithNext: table.keepTogether ?? table.writeOnPt !== null,
    repeats,
    place: (topPt) => {
      const deepest = Math.max(1, ...cells.map(({ lines }) => lines.length));
      const baselinePt =
        table.writeOnPt === null
          ? topPt + table.rowPaddingPt + figureBaselinePt
          : topPt + heightPt - 4 - (deepest - 1) * styles.figure.leadingPt;
      const under =
        table.writeOnPt === null
          ? [rule(table.xPt, topPt + heightPt, widthOf(table.columns), 0.5, ink.faint)]
          : writingLines(table, cells, topPt + heightPt);
      return [{ kind: 'tableRow', table: table.id, cells: placeCells(table, cells, baselinePt, false) }, ...under];
    },
  };
}

export const tablePieces = (table: Table, rows: readonly (readonly SetCell[])[], gapBeforePt: number): Piece[] => [
  headPiece(table, false, gapBeforePt),
  ...rows.map((cells) => rowPiece(table, cells)),
];
