/** Tomorrow's sheet as pages: who wears what on lines to tick and write on, then what goes along, then what to look at first. */
import { spacedDigits } from '#words/digits.ts';
import { en as paperWords } from '#words/papers.ts';
import { en } from '#words/tomorrowSheet.ts';
import { frameOn, layOut } from './layOut.ts';
import { setLines } from './lines.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import type { Paper } from './paper.ts';
import { type FieldColumn, type Frame, fieldsPiece, fieldWidths } from './pieces.ts';
import { closing, footOf, headed, opening, paragraph } from './reading.ts';
import { gutterPt, type SetCell, tablePieces } from './table.ts';
import type { TomorrowPumpText, TomorrowRow, TomorrowValues } from './tomorrowValues.ts';
import type { StyleName } from './typography.ts';

export const tomorrowAttachment = 'tomorrow.json';

type ColumnName = keyof typeof en.columns;
const box = '☐';

/** Widths in points; work takes what is left. */
const fixedPt: Record<Exclude<ColumnName, 'task' | 'number'>, number> = {
  who: 122,
  pump: 74,
  lot: 62,
  minutes: 58,
  tonight: 46,
  morning: 46,
  write: 96,
};
const order: readonly ColumnName[] = ['who', 'task', 'pump', 'lot', 'number', 'minutes', 'tonight', 'morning', 'write'];
const styleOf: Partial<Record<ColumnName, StyleName>> = { who: 'plainStrong', number: 'plainStrong', task: 'word' };
const rowPt = 25;
const leastNumberPt = 62;

const cellTexts = (row: TomorrowRow): Record<ColumnName, string> => ({
  who: row.who ?? '',
  task: row.tasks.join('; '),
  pump: row.pump?.serial ?? '',
  lot: row.lotNumber ?? '',
  number: row.sampleNumber === null ? '' : spacedDigits(row.sampleNumber),
  minutes: row.leastMin === null ? '' : en.minutes(row.leastMin),
  tonight: box,
  morning: box,
  write: '',
});

function wearers(frame: Frame, { rows }: TomorrowValues): Piece[] {
  if (rows.length === 0) return paragraph(frame, en.nobody);
  const { measure, xPt, widthPt } = frame;
  const numbers = rows.map((row) => measure.widthPt(cellTexts(row).number, 'plainStrong') + gutterPt);
  const numberPt = Math.max(leastNumberPt, ...numbers);
  const takenPt = Object.values(fixedPt).reduce((sum, each) => sum + each, numberPt);
  const widths: Record<ColumnName, number> = { ...fixedPt, number: numberPt, task: widthPt - takenPt };
  const columns = order.map((name) => ({
    widthPt: widths[name],
    align: 'left' as const,
    head: setLines(measure, en.columns[name], 'columnHead', widths[name] - gutterPt),
  }));
  const cells = rows.map((row) =>
    order.map((name): SetCell => {
      const text = cellTexts(row)[name];
      const lines = text === '' ? [] : setLines(measure, text, styleOf[name] ?? 'plain', widths[name] - gutterPt);
      return { lines, spanCount: 1 };
    }),
  );
  const table = { id: 'wearers', measure, xPt, columns, rowPaddingPt: 3, writeOnPt: rowPt, keepTogether: false };
  return tablePieces(table, cells, 3);
}

const oneLinePump = ({ serial, chargedOn }: TomorrowPumpText): string =>
  chargedOn === null ? serial : `${serial} (${en.charged(chargedOn)})`;

const mostListedCount = 24;
/** The first of many numbers; the rest is counted. */
const listed = (numbers: readonly string[]): string[] => {
  const shown = numbers.slice(0, mostListedCount).map(spacedDigits);
  return numbers.length > mostListedCount ? [...shown, en.others(numbers.length - mostListedCount)] : shown;
};

const labelPt = 92;

function beside(frame: Frame, values: TomorrowValues): Piece[] {
  const { sparePumps, spareNumbers, blankNumbers, meters, remark } = values;
  const list = (texts: readonly string[]) => (texts.length === 0 ? en.none : texts.join('; '));
  const { labels } = en;
  const { valuePt } = fieldWidths(frame, 2, labelPt);
  const field = (label: string, value: string) => ({
    label,
    value: setLines(frame.measure, value, 'value', valuePt),
  });
  const columns: FieldColumn[] = [
    {
      heading: en.beside,
      fields: [
        field(labels.sparePumps, list(sparePumps.map(oneLinePump))),
        field(labels.spareCassettes, en.spareNumbers(values.spareCassettesCount, listed(spareNumbers))),
        field(labels.blanks, en.blanksNeeded(values.blanksCount, values.cassettesCount, listed(blankNumbers))),
      ],
    },
    {
      heading: en.gear,
      fields: [
        field(labels.chargedBy, values.chargedBy ?? en.nobodyCharges),
        field(labels.meters, list(meters.map(({ serial, dueOn }) => en.meter(serial, dueOn)))),
      ],
    },
  ];
  return [
    fieldsPiece(frame, columns, labelPt, 9),
    ...(remark === null || remark === '' ? [] : paragraph(frame, en.remark(remark), 'plain', 6)),
  ];
}

const mostDutiesCount = 6;

/** Boxes to tick, one a sentence; duties beyond the first few are counted. */
function toTick(frame: Frame, heading: string, texts: readonly string[], moreCount = 0): Piece[] {
  if (texts.length === 0) return [];
  return [
    ...headed(frame, heading, 9),
    ...texts.flatMap((text) => paragraph(frame, `${box} ${text}`, 'plain', 1)),
    ...(moreCount > 0 ? paragraph(frame, en.more(moreCount), 'plain', 1) : []),
  ];
}

export function tomorrowPages(values: TomorrowValues, paper: Paper, measure: Measure): PageModel {
  const frame = frameOn(measure, paper, 'lying');
  const said = { title: en.title, lead: en.lead(values.siteName, values.workOn), revision: null, why: null };
  const { duties } = values;
  const hasMinutes = values.rows.some(({ leastMin }) => leastMin !== null);
  return layOut(measure, {
    paper,
    stance: 'lying',
    title: en.documentTitle(values.siteName, values.workOn),
    author: values.firmName,
    across: values.practice ? paperWords.example : null,
    sections: [
      {
        lang: paperWords.lang,
        pieces: [
          ...opening(frame, paperWords, values, said),
          ...paragraph(frame, en.asked[values.asked ?? 'planned'], 'body', 4),
          ...headed(frame, en.wearers, 6),
          ...wearers(frame, values),
          ...(values.rows.length === 0 ? [] : paragraph(frame, en.minutesNote(hasMinutes), 'body', 4)),
          ...beside(frame, values),
          ...toTick(frame, en.cautions, values.cautions),
          ...toTick(frame, en.duties, duties.slice(0, mostDutiesCount), duties.length - mostDutiesCount),
          ...closing(frame, paperWords, values, tomorrowAttachment),
        ],
        goesOn: [paperWords.goesOn(en.title), values.siteName, values.workOn].join(' · '),
        foot: footOf(paperWords, values, en.documentTitle(values.siteName, values.workOn), null),
      },
    ],
  });
}
