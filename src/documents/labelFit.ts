/** How number and text share a label: in which sizes they stand, what is cut, and where room is kept to write a name. */
import { en } from '#words/labels.ts';
import { type Box, type LabelRoom, roomOf } from './labelPlaces.ts';
import { baselineOf, heightPtOf, type SetLine, setLines } from './lines.ts';
import type { Measure } from './pageModel.ts';
import { type StyleName, styles } from './typography.ts';

export interface LabelText {
  readonly sampleNumber: string;
  readonly kind: 'worker' | 'blank' | 'spare';
  /** Name or identifier as chosen; null = room to write it. */
  readonly who: string | null;
}

/** What stands alike on every label of a sheet. */
interface LabelSaid {
  readonly practice: boolean;
  readonly siteName: string;
  readonly workOn: string;
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
const readable = textStyles.slice(0, 3);
/** Of a label's height: the rest is for who, day and site. */
const mostNumberShare = 0.4;
/** A number gives way to the text beside it by so many steps less one. */
const mostNumberSteps = 3;
const heightOf = (style: StyleName): number => styles[style].leadingPt;
/** Digits have nothing below their baseline: what follows may come closer than after text. */
const digitsPt = (style: StyleName): number => baselineOf(style) + styles[style].sizePt * 0.08;

/** Sizes in which the number fits on one line, the largest first; with fewer, text that would be tiny stays readable. */
function numberStylesFor(measure: Measure, text: string, widthPt: number, label: Box): readonly StyleName[] {
  const fits = (style: StyleName) =>
    measure.widthPt(text, style) <= widthPt && heightOf(style) <= label.heightPt * mostNumberShare;
  const fitting = numberStyles.filter(fits).slice(0, mostNumberSteps);
  return fitting.length === 0 ? ['cassette8'] : fitting;
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

type Pair = (typeof textStyles)[number];
const setIn = (measure: Measure, texts: readonly Said[], [plain, strong]: Pair, widthPt: number) =>
  texts.flatMap(({ text, isStrong }) => setLines(measure, text, isStrong ? strong : plain, widthPt));

/** Lines that each stand whole, in the largest of these types in which they do; null: in none of them. */
function whole(measure: Measure, texts: readonly Said[], room: Box, pairs: readonly Pair[]): SetLine[] | null {
  for (const pair of pairs) {
    const lines = setIn(measure, texts, pair, room.widthPt);
    if (heightPtOf(lines) <= room.heightPt && !lines.some(({ gluedToNext }) => gluedToNext)) return lines;
  }
  return null;
}

/** In the smallest type, each text cut to its share with an ellipsis where it must. */
function cutLines(measure: Measure, texts: readonly Said[], { widthPt, heightPt }: Box): SetLine[] {
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

function saidOn(values: LabelSaid, label: LabelText): Said[] {
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

/** A name is to be written where none is printed and one belongs. */
export const isWrittenOn = ({ kind, who }: LabelText): boolean =>
  kind === 'spare' || (kind === 'worker' && who === null);
export const writingPt = 9;

interface Fitted {
  readonly style: StyleName;
  readonly room: LabelRoom;
  readonly lines: readonly SetLine[];
}

/** The largest number beside which the text stands whole and readable; else the largest, and the text as small as it must be. */
export function fitted(measure: Measure, values: LabelSaid, label: LabelText, box: Box, spaced: string): Fitted {
  const texts = saidOn(values, label);
  const widthPt = roomOf(box, 0).number.widthPt;
  const styles = numberStylesFor(measure, spaced, widthPt, box);
  const roomFor = (style: StyleName) => roomOf(box, digitsPt(style));
  const textRoom = ({ text }: LabelRoom): Box =>
    isWrittenOn(label) ? { ...text, heightPt: text.heightPt - writingPt } : text;
  for (const style of styles) {
    const room = roomFor(style);
    const lines = whole(measure, texts, textRoom(room), readable);
    if (lines) return { style, room, lines };
  }
  const [style = 'cassette8'] = styles;
  const room = roomFor(style);
  const text = textRoom(room);
  return { style, room, lines: whole(measure, texts, text, [smallest]) ?? cutLines(measure, texts, text) };
}
