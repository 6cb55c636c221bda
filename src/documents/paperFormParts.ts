/** Parts of the blank form, in the order in which the phone asks. */
import type { paperFormWords } from '#words/paperForm.ts';
import { emptyLines, type FormCell, formTable, tick, tickRow, ticks, writeRow } from './form.ts';
import type { Piece } from './paginate.ts';
import type { Frame } from './pieces.ts';
import { headed, paragraph } from './reading.ts';

/** One sheet in one language. */
export interface Sheet {
  readonly frame: Frame;
  readonly words: (typeof paperFormWords)['en'];
  /** Apart from the tables of other sheets. */
  readonly id: string;
}

const empty = (count: number): null[] => Array.from({ length: count }, () => null);

export function flowRows({ frame, words, id }: Sheet, name: string, rows: readonly string[]): Piece[] {
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

export function before(sheet: Sheet): Piece[] {
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

export function on(sheet: Sheet): Piece[] {
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

export function after(sheet: Sheet): Piece[] {
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

export function day(sheet: Sheet): Piece[] {
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
