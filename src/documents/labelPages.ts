/** Labels as pages: where each stands on its sheet, and how number, text and code share it. A text too long is cut with an ellipsis. */
import { spacedDigits } from '#words/digits.ts';
import { en } from '#words/labels.ts';
import { codeBlock } from './code.ts';
import { type Box, type LabelSheetShape, labelAt, pageSizeOf, placesCount, roomOf } from './labelPlaces.ts';
import { baselineOf, placeLines, type SetLine, setLines } from './lines.ts';
import type { Occasion } from './occasion.ts';
import type { Block, Measure, Page, PageModel } from './pageModel.ts';
import { rule } from './pieces.ts';
import { printable } from './printable.ts';
import { ink, type StyleName, styles } from './typography.ts';

export interface LabelText {
  readonly sampleNumber: string;
  readonly kind: 'worker' | 'blank' | 'spare';
  /** Name or identifier as chosen; null = room to write it. */
  readonly who: string | null;
}

export interface LabelValues extends Occasion {
  readonly labelFormat: 'labels.v1';
  readonly sheet: LabelSheetShape;
  /** Place on the first sheet at which the first label goes, from 1: the labels before it are used up. */
  readonly startAt: number;
  readonly siteName: string;
  readonly workOn: string;
  readonly labels: readonly LabelText[];
}

const numberStyles: readonly StyleName[] = [
  'cassette30',
  'cassette25',
  'cassette21',
  'cassette18',
  'cassette15',
  'cassette12',
  'cassette10',
  'cassette8',
];
const textStyles = [
  ['tag11', 'tag11Strong'],
  ['tag9', 'tag9Strong'],
  ['tag75', 'tag75Strong'],
  ['tag6', 'tag6Strong'],
] as const satisfies readonly (readonly [StyleName, StyleName])[];
const smallest = textStyles[3];
/** Of a label's height: the rest is for who, day and site. */
const mostNumberShare = 0.4;
const heightOf = (style: StyleName): number => styles[style].leadingPt;
/** Digits have nothing below their baseline: what follows may come closer than after text. */
const digitsPt = (style: StyleName): number => baselineOf(style) + styles[style].sizePt * 0.08;

/** The largest number that fits on one line. */
function numberStyle(measure: Measure, text: string, widthPt: number, label: Box): StyleName {
  const fits = (style: StyleName) =>
    measure.widthPt(text, style) <= widthPt && heightOf(style) <= label.heightPt * mostNumberShare;
  return numberStyles.find(fits) ?? 'cassette8';
}

/** As much of a text as fits before an ellipsis; `about` letters fill a line. */
function cutTo(measure: Measure, text: string, about: number, style: StyleName, widthPt: number): string {
  const letters = [...text];
  const cut = (count: number) => `${letters.slice(0, count).join('').trimEnd()}…`;
  const fits = (count: number) => measure.widthPt(cut(count), style) <= widthPt;
  let count = Math.min(letters.length - 1, about);
  while (count < letters.length - 1 && fits(count + 1)) count += 1;
  while (count > 1 && !fits(count)) count -= 1;
  return cut(count);
}

/** Lines that each stand whole, in the largest type in which they do; else the smallest, each cut to its share with an ellipsis. */
function fitted(measure: Measure, texts: readonly Said[], { widthPt, heightPt }: Box): SetLine[] {
  const inStyle = ([plain, strong]: (typeof textStyles)[number]) =>
    texts.map(({ text, isStrong }) => setLines(measure, text, isStrong ? strong : plain, widthPt));
  const height = (set: readonly (readonly SetLine[])[]) =>
    set.flat().reduce((sum, { style }) => sum + heightOf(style), 0);
  const whole = textStyles
    .map(inStyle)
    .find((set) => height(set) <= heightPt && !set.flat().some((l) => l.gluedToNext));
  if (whole) return whole.flat();
  const [plain, strong] = smallest;
  const mostCount = Math.max(texts.length, Math.floor(heightPt / heightOf(plain)));
  let spareCount = mostCount - texts.length;
  return texts.flatMap(({ text, isStrong }) => {
    const style = isStrong ? strong : plain;
    const lines = setLines(measure, text, style, widthPt);
    const takenCount = Math.min(lines.length, 1 + spareCount);
    spareCount -= takenCount - 1;
    if (lines.length <= takenCount) return lines;
    const rest = lines.slice(takenCount - 1).map((line) => line.text + (line.gluedToNext ? '' : ' '));
    const about = [...(lines[takenCount - 1]?.text ?? '')].length;
    const last = cutTo(measure, rest.join('').trim(), about, style, widthPt);
    return [...lines.slice(0, takenCount - 1), { text: last, style, gluedToNext: false }];
  });
}

interface Said {
  readonly text: string;
  readonly isStrong: boolean;
}

function saidOn(values: LabelValues, label: LabelText): Said[] {
  const strong = (text: string) => ({ text, isStrong: true });
  const plain = (text: string) => ({ text: text.replaceAll('\n', ' '), isStrong: false });
  const kinds = { blank: en.blank, spare: en.spare, worker: label.who ?? '' } as const;
  const who = kinds[label.kind].replaceAll('\n', ' ');
  return [
    ...(values.practice ? [strong(en.example)] : []),
    ...(who === '' ? [] : [strong(who)]),
    plain(values.workOn),
    plain(values.siteName),
  ];
}

/** A line to write a name on, where none is printed and one belongs. */
function writingLine(label: LabelText, room: Box, usedPt: number): Block[] {
  const isWritten = label.kind === 'spare' || (label.kind === 'worker' && label.who === null);
  const lowestPt = room.heightPt - 1;
  return isWritten && usedPt + 9 <= room.heightPt
    ? [rule(room.xPt, room.yPt + lowestPt, room.widthPt - 6, 0.5, ink.rule)]
    : [];
}

function blocksOf(measure: Measure, values: LabelValues, label: LabelText, place: number): Block[] {
  const box = labelAt(values.sheet, place);
  const spaced = spacedDigits(label.sampleNumber);
  const bare = roomOf(box, 0);
  const style = numberStyle(measure, spaced, bare.number.widthPt, box);
  const room = roomOf(box, digitsPt(style));
  const at = (lines: readonly SetLine[], { xPt, yPt, widthPt }: Box, first: StyleName) =>
    placeLines(measure, lines, { xPt, widthPt, firstBaselinePt: yPt + baselineOf(first), align: 'left' });
  const lines = fitted(measure, saidOn(values, label), room.text);
  const usedPt = lines.reduce((sum, line) => sum + heightOf(line.style), 0);
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
