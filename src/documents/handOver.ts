/** The lines on which a box changes hands, written on by hand by people who have not seen the sheet before. */
import type { CustodySheet } from '#records/custodySheet.ts';
import { en } from '#words/custody.ts';
import { type SetLine, setLines } from './lines.ts';
import type { Notes } from './notes.ts';
import type { Piece } from './paginate.ts';
import { type Frame, textPieces } from './pieces.ts';
import { gutterPt, type SetCell, type Table, tablePieces } from './table.ts';

type ColumnName = keyof typeof en.handOverColumns;

/** Shares of the page's width. */
const shares: Record<ColumnName, number> = {
  from: 0.16,
  fromSigned: 0.15,
  fromWhen: 0.12,
  to: 0.16,
  toSigned: 0.18,
  toWhen: 0.12,
  seal: 0.11,
};
const names = Object.keys(shares) as ColumnName[];
/** Sampler to carrier, carrier to laboratory, and one for a hand between them. */
const handsCount = 3;

const head = (name: ColumnName): SetLine[] =>
  en.handOverColumns[name].map((text) => ({ text, style: 'columnHead', gluedToNext: false }));

export function handOverPieces(frame: Frame, sheet: CustodySheet, notes: Notes): Piece[] {
  const { measure, widthPt } = frame;
  const columns = names.map((name) => ({ widthPt: widthPt * shares[name], align: 'left' as const, head: head(name) }));
  const table: Table = { id: 'handOver', measure, xPt: frame.xPt, columns, rowPaddingPt: 2, writeOnPt: 24 };
  const samplerPt = widthPt * shares.from - gutterPt;
  const sampler = notes.fit(sheet.samplerName, en.sampler.toLowerCase(), 'word', samplerPt, 1);
  const row = (index: number): SetCell[] =>
    names.map((name) => {
      if (name === 'seal') return { lines: setLines(measure, en.sealBoxes, 'word', widthPt), spanCount: 1 };
      return { lines: name === 'from' && index === 0 ? sampler : [], spanCount: 1 };
    });
  const rows = Array.from({ length: handsCount }, (_, index) => row(index));
  return [
    ...textPieces(frame, en.handOver, { tag: 'H2', style: 'heading', gapBeforePt: 11, keepWithNext: true }),
    ...textPieces(frame, en.handOverNote, { tag: 'P', style: 'body', gapBeforePt: 0, keepWithNext: true }),
    ...tablePieces(table, rows, 4),
    ...textPieces(frame, en.arrival(sheet.rows.length), { tag: 'P', style: 'body', gapBeforePt: 7 }),
  ];
}
