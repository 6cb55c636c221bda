/** Labels as pages: where each stands on its sheet, and how number, text and code share it. A text too long is cut with an ellipsis. */
import { spacedDigits } from '#words/digits.ts';
import { en } from '#words/labels.ts';
import { codeBlock } from './code.ts';
import { fitted, isWrittenOn, type LabelText, writingPt } from './labelFit.ts';
import { type Box, type LabelSheetShape, labelAt, pageSizeOf, placesCount } from './labelPlaces.ts';
import { baselineOf, heightPtOf, placeLines, type SetLine } from './lines.ts';
import type { Occasion } from './occasion.ts';
import type { Block, Measure, Page, PageModel } from './pageModel.ts';
import { rule } from './pieces.ts';
import { printable } from './printable.ts';
import { ink, type StyleName } from './typography.ts';

export interface LabelValues extends Occasion {
  readonly labelFormat: 'labels.v1';
  readonly sheet: LabelSheetShape;
  /** Place on the first sheet at which the first label goes, from 1: the labels before it are used up. */
  readonly startAt: number;
  readonly siteName: string;
  readonly workOn: string;
  readonly labels: readonly LabelText[];
}

function writingLine(label: LabelText, room: Box, usedPt: number): Block[] {
  const lowestPt = room.heightPt - 1;
  return isWrittenOn(label) && usedPt + writingPt <= room.heightPt
    ? [rule(room.xPt, room.yPt + lowestPt, room.widthPt - 6, 0.5, ink.rule)]
    : [];
}

function blocksOf(measure: Measure, values: LabelValues, label: LabelText, place: number): Block[] {
  const box = labelAt(values.sheet, place);
  const spaced = spacedDigits(label.sampleNumber);
  const { style, room, lines } = fitted(measure, values, label, box, spaced);
  const at = (lines: readonly SetLine[], { xPt, yPt, widthPt }: Box, first: StyleName) =>
    placeLines(measure, lines, { xPt, widthPt, firstBaselinePt: yPt + baselineOf(first), align: 'left' });
  const usedPt = heightPtOf(lines);
  const { code } = room;
  return [
    { kind: 'text', tag: 'P', lines: at([{ text: spaced, style, gluedToNext: false }], room.number, style) },
    { kind: 'text', tag: 'P', lines: at(lines, room.text, lines[0]?.style ?? 'tag6') },
    ...writingLine(label, room.text, usedPt),
    codeBlock(label.sampleNumber, code.xPt, code.yPt, code.widthPt, en.codeOf(spaced)),
  ];
}

/** Throws only for a place that the sheet does not have. */
export function labelPages(values: LabelValues, measure: Measure): PageModel {
  const { sheet, startAt, labels, practice } = values;
  const count = placesCount(sheet);
  if (!Number.isInteger(startAt) || startAt < 1 || startAt > count) throw new Error('no such place on the label sheet');
  const pages: Page[] = [];
  for (const [index, label] of labels.entries()) {
    const place = startAt - 1 + index;
    const at = Math.floor(place / count);
    const blocks = blocksOf(measure, values, label, place % count);
    const before = pages[at];
    pages[at] = { runningHead: [], footer: [], blocks: [...(before?.blocks ?? []), ...blocks] };
  }
  const plain = (text: string) => printable(text, measure.holds).replaceAll('\n', ' ');
  return {
    paper: sheet.paper ?? 'a4',
    ...pageSizeOf(sheet),
    title: plain(en.documentTitle(values.siteName, values.workOn)),
    author: plain(values.firmName),
    lang: en.lang,
    across: practice ? en.example : null,
    pages,
  };
}
