/** The custody sheet's table: one cassette a row. Every absence prints as its word, every text too long for its cell as a note. */
import { addDays } from '#core/calendar.ts';
import { type AbsentValue, type CustodyRow, type CustodySheet, isAbsent, type Stated } from '#records/custodySheet.ts';
import { en, figures } from '#words/custody.ts';
import { en as gearWords } from '#words/gearOnPaper.ts';
import { type SetLine, setLines } from './lines.ts';
import type { Notes } from './notes.ts';
import type { Measure } from './pageModel.ts';
import { gutterPt, type SetCell, type TableColumn } from './table.ts';
import type { StyleName } from './typography.ts';

type ColumnName = Exclude<keyof typeof en.columns, 'workerIdentifier'>;

/** Fixed widths, the lot's at least; the number takes what its longest needs, and worker and remarks share what is left. */
const fixedPt: Record<Exclude<ColumnName, 'sampleNumber' | 'worker' | 'remarks'>, number> = {
  workOn: 64,
  lotNumber: 52,
  startedAt: 38,
  stoppedAt: 44,
  durationMin: 34,
  flowBeforeLPerMin: 48,
  flowAfterLPerMin: 48,
  averageFlowLPerMin: 55,
  volumeL: 54,
};
const order: readonly ColumnName[] = [
  'sampleNumber',
  'workOn',
  'worker',
  'lotNumber',
  'startedAt',
  'stoppedAt',
  'durationMin',
  'flowBeforeLPerMin',
  'flowAfterLPerMin',
  'averageFlowLPerMin',
  'volumeL',
  'remarks',
];
const rightAligned: readonly ColumnName[] = [
  'durationMin',
  'flowBeforeLPerMin',
  'flowAfterLPerMin',
  'averageFlowLPerMin',
  'volumeL',
];
const leastNumberPt = 48;
const mostLotPt = 92;
const units: readonly string[] = ['min', 'L/min', 'L'];

/** A number is compared with a cassette by eye, so it never breaks over two lines. */
function numberWidth(sheet: CustodySheet, measure: Measure): number {
  const widths = sheet.rows.map(({ sampleNumber }) => measure.widthPt(sampleNumber, 'number'));
  return Math.max(leastNumberPt, ...widths) + gutterPt;
}

/** A lot as long as the ones printed on bags stays on one line; a longer one breaks, so that the worker's name keeps its room. */
function lotWidth(sheet: CustodySheet, measure: Measure): number {
  const widths = sheet.rows.map(({ lotNumber }) => measure.widthPt(lotNumber, 'plain') + gutterPt);
  return Math.min(mostLotPt, Math.max(fixedPt.lotNumber, ...widths));
}

/** Columns of the table on a page with this much room. */
export function custodyColumns(sheet: CustodySheet, measure: Measure, widthPt: number): TableColumn[] {
  const numberPt = numberWidth(sheet, measure);
  const fixed = { ...fixedPt, lotNumber: lotWidth(sheet, measure) };
  const sharedPt = widthPt - numberPt - Object.values(fixed).reduce((sum, each) => sum + each, 0);
  const widths = { ...fixed, sampleNumber: numberPt, worker: sharedPt * 0.52, remarks: sharedPt * 0.48 };
  return order.map((name) => {
    const isIdentifier = name === 'worker' && sheet.workersShownAs === 'identifier';
    const words = isIdentifier ? en.columns.workerIdentifier : en.columns[name];
    return {
      widthPt: widths[name],
      align: rightAligned.includes(name) ? 'right' : 'left',
      head: words.map((text) => ({ text, style: units.includes(text) ? 'unit' : 'columnHead', gluedToNext: false })),
    };
  });
}

interface Setting {
  readonly measure: Measure;
  /** Numbers of the cassettes that rest on gear in doubt: told beside their figures. */
  readonly inDoubt: ReadonlySet<string>;
  readonly notes: Notes;
  readonly columns: readonly TableColumn[];
}

const single = (lines: readonly SetLine[]): SetCell => ({ lines, spanCount: 1 });
const widthOf = ({ columns }: Setting, name: ColumnName): number =>
  (columns[order.indexOf(name)]?.widthPt ?? 0) - gutterPt;

const setWord = (setting: Setting, value: AbsentValue, name: ColumnName): SetCell =>
  single(setLines(setting.measure, en.absent[value.why], 'word', widthOf(setting, name)));

function setFigure(
  setting: Setting,
  value: Stated<number>,
  name: ColumnName,
  figure: (value: number) => string,
): SetCell {
  if (isAbsent(value)) return setWord(setting, value, name);
  return single(setLines(setting.measure, figure(value), 'figure', widthOf(setting, name)));
}

function setText(setting: Setting, row: CustodyRow, text: string, name: ColumnName, style: StyleName): SetCell {
  const subject = en.ofSample(row.sampleNumber, en.columns[name].join(' ').toLowerCase());
  return single(setting.notes.fit(text, subject, style, widthOf(setting, name), 3));
}

/** The digits of a local time as they stand, with the day where it is not the work day. */
function setTime(setting: Setting, row: CustodyRow, value: Stated<string>, name: ColumnName): SetCell {
  if (isAbsent(value)) return setWord(setting, value, name);
  const day = value.slice(0, 10);
  const clock = setLines(setting.measure, value.slice(11, 16), 'figure', widthOf(setting, name));
  const words = day === addDays(row.workOn, 1) ? en.nextDay : day;
  const other = day === row.workOn ? [] : setLines(setting.measure, words, 'word', widthOf(setting, name));
  return single([...clock, ...other]);
}

const remarksOf = (row: CustodyRow, inDoubt: ReadonlySet<string>): string[] => [
  ...(inDoubt.has(row.sampleNumber) ? [gearWords.beside] : []),
  ...(row.void ? [en.markedVoid] : []),
  ...row.mishaps.map((mishap) => en.mishaps[mishap]),
  ...row.remarks,
];

function setRemarks(setting: Setting, row: CustodyRow): SetCell {
  const remarks = remarksOf(row, setting.inDoubt);
  return remarks.length === 0
    ? single(setLines(setting.measure, en.noRemarks, 'quietWord', widthOf(setting, 'remarks')))
    : setText(setting, row, remarks.join('; '), 'remarks', 'word');
}

const setDrawn = (setting: Setting, row: CustodyRow): SetCell[] => [
  setTime(setting, row, row.startedAt, 'startedAt'),
  setTime(setting, row, row.stoppedAt, 'stoppedAt'),
  setFigure(setting, row.durationMin, 'durationMin', figures.minutes),
  setFigure(setting, row.flowBeforeLPerMin, 'flowBeforeLPerMin', figures.flow),
  setFigure(setting, row.flowAfterLPerMin, 'flowAfterLPerMin', figures.flow),
  setFigure(setting, row.averageFlowLPerMin, 'averageFlowLPerMin', figures.flow),
  setFigure(setting, row.volumeL, 'volumeL', figures.volume),
];

const setBlank = (setting: Setting): SetCell[] => {
  const spanned = order.slice(order.indexOf('startedAt'), order.indexOf('remarks'));
  const widthPt = spanned.reduce((sum, name) => sum + widthOf(setting, name) + gutterPt, -gutterPt);
  return [{ lines: setLines(setting.measure, en.blankRow, 'word', widthPt), spanCount: spanned.length }];
};

function setWorker(setting: Setting, row: CustodyRow): SetCell {
  if (row.sampleKind === 'blank')
    return single(setLines(setting.measure, en.fieldBlank, 'plainStrong', widthOf(setting, 'worker')));
  if (isAbsent(row.worker)) return setWord(setting, row.worker, 'worker');
  return setText(setting, row, row.worker, 'worker', 'plain');
}

const drewNothing = (row: CustodyRow): boolean =>
  row.sampleKind === 'blank' &&
  [row.startedAt, row.stoppedAt, row.durationMin, row.flowBeforeLPerMin, row.flowAfterLPerMin, row.volumeL].every(
    isAbsent,
  );

/** One cassette. A blank's cells from start to volume are one, which says that no air was drawn. */
export const custodyRowCells = (setting: Setting, row: CustodyRow): SetCell[] => [
  single(setLines(setting.measure, row.sampleNumber, 'number', widthOf(setting, 'sampleNumber'))),
  single(setLines(setting.measure, row.workOn, 'plain', widthOf(setting, 'workOn'))),
  setWorker(setting, row),
  setText(setting, row, row.lotNumber, 'lotNumber', 'plain'),
  ...(drewNothing(row) ? setBlank(setting) : setDrawn(setting, row)),
  setRemarks(setting, row),
];
