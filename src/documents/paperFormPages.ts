/** The blank form as pages: one sheet for two workers, in the order in which the phone asks; each language on pages of its own. */
import { paperFormWords } from '#words/paperForm.ts';
import { paperWords } from '#words/papers.ts';
import { formatDay } from '#words/quantity.ts';
import { emptyLines, type FormCell, formTable, tick, tickRow, ticks, writeRow } from './form.ts';
import { frameOn, layOut, type Section } from './layOut.ts';
import type { Occasion, PaperLanguage } from './occasion.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import type { Paper } from './paper.ts';
import type { Frame } from './pieces.ts';
import { footOf, headed, opening, paragraph } from './reading.ts';

export const paperFormAttachment = 'paper-form.json';

export interface PaperFormValues extends Occasion {
  readonly formFormat: 'paperForm.v1';
  readonly languages: readonly PaperLanguage[];
  /** Known before the shift, printed where known; null leaves the line to write on. */
  readonly siteName: string | null;
  readonly workOn: string | null;
  /** Two workers a sheet. */
  readonly sheetsCount: number;
}

/** One sheet in one language. */
interface Sheet {
  readonly frame: Frame;
  readonly words: (typeof paperFormWords)['en'];
  /** Apart from the tables of other sheets. */
  readonly id: string;
}

const empty = (count: number): null[] => Array.from({ length: count }, () => null);

function flowRows({ frame, words, id }: Sheet, name: string, rows: readonly string[]): Piece[] {
  const { flow } = words;
  const heads = [
    '',
    flow.pump,
    flow.meter,
    flow.time,
    flow.reading(1),
    flow.reading(2),
    flow.reading(3),
    flow.temperature,
    flow.pressure,
    flow.lot,
  ];
  const shares = [10, 10, 11, 9, 13, 13, 13, 7, 8, 11];
  return formTable(
    frame,
    `${name}-${id}`,
    heads,
    shares,
    rows.map((row) => [row, ...empty(9)]),
  );
}

const workerTable = ({ frame, words, id }: Sheet, name: string, rows: readonly (readonly FormCell[])[]): Piece[] =>
  formTable(frame, `${name}-${id}`, ['', ...words.workers], [29, 35.5, 35.5], rows);

const both = (label: string, text: FormCell = null): FormCell[] => [label, text, text];

function before(sheet: Sheet): Piece[] {
  const { words, frame } = sheet;
  const { worker } = words;
  return [
    ...headed(frame, words.before, 9),
    ...workerTable(sheet, 'before', [
      both(worker.name),
      both(worker.job),
      both(worker.tasks),
      both(worker.respirator),
      both(worker.pump),
      both(worker.lot),
      both(worker.number),
      both(worker.points, ticks(words.points)),
      both(worker.fitted, ticks(words.modes)),
      both(worker.initials),
    ]),
  ];
}

function on(sheet: Sheet): Piece[] {
  const { words, frame } = sheet;
  const rows = words.onRows;
  return [
    ...headed(frame, words.on, 9),
    ...workerTable(sheet, 'on', [
      both(rows.putOn),
      ...Array.from({ length: 4 }, () => both(rows.looked, ticks(words.lookTicks))),
      both(rows.away),
      both(rows.away),
      both(rows.off, ticks(words.offTicks)),
      both(rows.change),
      both(rows.happened, ticks(words.mishaps)),
      both(rows.happenedNote),
    ]),
  ];
}

function after(sheet: Sheet): Piece[] {
  const { words, frame } = sheet;
  const fields = words.afterFields;
  return [
    ...headed(frame, words.after, 9),
    ...workerTable(sheet, 'after', [
      both(fields.stopped),
      both(fields.pumpMin),
      both(fields.regular, ticks(words.regular)),
      both(fields.different),
      both(fields.hours),
      both(fields.other, ticks(words.others)),
      both(fields.otherHours),
      both(fields.minutes),
      both(fields.sealed, tick(words.labelled)),
      both(fields.locked),
    ]),
    ...paragraph(frame, words.flowAfter, 'readStrong', 6),
    ...flowRows(sheet, 'flowAfter', words.afterRows),
  ];
}

function day(sheet: Sheet): Piece[] {
  const { words, frame, id } = sheet;
  const { blank, person, boxRow } = words;
  const numbered = (count: number) => Array.from({ length: count }, (_, at) => String(at + 1));
  return [
    ...headed(frame, words.blanks, 9),
    ...formTable(
      frame,
      `blanks-${id}`,
      ['', blank.number, blank.lot, blank.where, blank.time],
      [4, 20, 18, 40, 18],
      numbered(2).map((row) => [row, ...empty(4)]),
    ),
    ...headed(frame, words.conditions, 9),
    ...words.conditionTicks.map(({ label, options }) => tickRow(frame, label, options)),
    ...headed(frame, words.roster, 9),
    ...paragraph(frame, words.rosterHint, 'body', 1),
    ...formTable(
      frame,
      `roster-${id}`,
      ['', person.name, person.firm, person.job, person.tasks, person.respirator, person.hours],
      [4, 22, 13, 15, 22, 13, 11],
      numbered(8).map((row) => [row, ...empty(6)]),
    ),
    ...headed(frame, words.box, 9),
    writeRow(frame, [
      { label: boxRow.laboratory, share: 40 },
      { label: boxRow.packed, share: 15 },
      { label: boxRow.given, share: 45 },
    ]),
    ...headed(frame, words.remarks, 9),
    ...emptyLines(frame, 2),
  ];
}

function sheetSection(values: PaperFormValues, language: PaperLanguage, number: number, frame: Frame): Section {
  const words = paperFormWords[language];
  const paper = paperWords[language];
  const sheet: Sheet = { frame, words, id: `${language}-${number}` };
  const { siteName, workOn, sheetsCount } = values;
  const title = { title: words.title, lead: words.lead, revision: null, why: null };
  return {
    lang: paper.lang,
    pieces: [
      ...opening(frame, paper, values, title),
      ...paragraph(frame, words.strike, 'body', 5),
      writeRow(
        frame,
        [
          { label: words.head.site, share: 36, value: siteName },
          { label: words.head.workOn, share: 24, value: workOn === null ? null : formatDay(workOn, language) },
          { label: words.head.by, share: 28 },
          { label: words.head.sheet, share: 12, value: words.sheetOf(number, sheetsCount) },
        ],
        6,
      ),
      ...headed(frame, words.flowBefore, 9),
      ...paragraph(frame, words.flowHint, 'body', 1),
      ...flowRows(sheet, 'flowBefore', words.beforeRows),
      ...before(sheet),
      ...on(sheet),
      ...after(sheet),
      ...day(sheet),
    ],
    goesOn: [paper.goesOn(words.title), words.sheetOf(number, sheetsCount)].join(' · '),
    foot: footOf(paper, values, words.short, null),
  };
}

export function paperFormPages(values: PaperFormValues, paper: Paper, measure: Measure): PageModel {
  const frame = frameOn(measure, paper, 'upright');
  const numbers = Array.from({ length: values.sheetsCount }, (_, at) => at + 1);
  const words = paperFormWords[values.languages[0] ?? 'en'];
  return layOut(measure, {
    paper,
    stance: 'upright',
    title: [words.title, ...(values.siteName === null ? [] : [values.siteName])].join(', '),
    author: values.firmName,
    across: values.practice ? paperWords.en.example : null,
    sections: values.languages.flatMap((language) =>
      numbers.map((number) => sheetSection(values, language, number, frame)),
    ),
  });
}
