/** The sign on one sheet, the label for containers on a second, as large as the sheet allows. */
import { en as paperEn, es as paperEs } from '#words/papers.ts';
import { en, es, labelLegend, signLegend } from '#words/signs.ts';
import { frameOn, layOut, type Section } from './layOut.ts';
import type { Occasion } from './occasion.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import type { Paper } from './paper.ts';
import { type Frame, rulePiece, textPieces } from './pieces.ts';
import { closing, footOf, paragraph } from './reading.ts';
import { ink, type StyleName } from './typography.ts';

export const signAttachment = 'sign.json';

export interface SignValues extends Occasion {
  readonly signFormat: 'sign.v1';
  /** The prescribed words, line by line, as they are printed. */
  readonly sign: readonly string[];
  readonly label: readonly string[];
}

const line = (frame: Frame, text: string, style: StyleName, gapBeforePt: number, tag: 'H1' | 'P' = 'P'): Piece[] =>
  textPieces(frame, text, { tag, style, gapBeforePt });

/** Prescribed words, a heavy rule, then the translation, marked as ours. */
function sheet(
  frame: Frame,
  large: readonly Piece[],
  translation: readonly string[],
  basis: string,
  quiet: StyleName,
): Piece[] {
  return [
    rulePiece(frame, 0, 6, ink.text),
    ...large,
    rulePiece(frame, 18, 6, ink.text),
    ...paragraph(frame, en.translation, 'body', 10),
    ...translation.flatMap((text) => line(frame, text, quiet, 1)),
    ...paragraph(frame, basis, 'body', 8),
  ];
}

/** The first line larger than the rest. */
const legend = (frame: Frame, lines: readonly string[], first: StyleName, rest: StyleName, gapPt: number): Piece[] =>
  lines.flatMap((text, at) =>
    at === 0 ? line(frame, text, first, 8, 'H1') : line(frame, text, rest, at === 1 ? 6 : gapPt),
  );

export function signPages(values: SignValues, paper: Paper, measure: Measure): PageModel {
  const frame = frameOn(measure, paper, 'upright');
  const foot = footOf(paperEn, values, en.title, null);
  const example = values.practice ? paragraph(frame, `${paperEn.exampleNote} ${paperEs.exampleNote}`, 'body', 4) : [];
  const section = (pieces: readonly Piece[]): Section => ({
    lang: paperEn.lang,
    pieces,
    goesOn: paperEn.goesOn(en.title),
    foot,
  });
  const sign = sheet(
    frame,
    legend(frame, values.sign, 'signDanger', 'signLegend', 10),
    es.sign,
    en.signBasis,
    'signQuiet',
  );
  const label = sheet(
    frame,
    legend(frame, values.label, 'labelDanger', 'labelLegend', 8),
    es.label,
    en.labelBasis,
    'labelQuiet',
  );
  return layOut(measure, {
    paper,
    stance: 'upright',
    title: en.documentTitle,
    author: values.firmName,
    across: values.practice ? paperEn.example : null,
    sections: [section([...sign, ...example]), section([...label, ...closing(frame, paperEn, values, signAttachment)])],
  });
}

export const signValues = (occasion: Occasion): SignValues => ({
  signFormat: 'sign.v1',
  ...occasion,
  sign: [...signLegend],
  label: [...labelLegend],
});
