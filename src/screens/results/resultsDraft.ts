/** What is typed of a report, as typed: its head once, and a line for each cassette. A blank line always waits at the end. */

export type Answer = 'yes' | 'no' | 'notStated';

export interface ReportText {
  readonly reportNumber: string;
  /** '' = not in the lists. */
  readonly laboratoryId: string;
  readonly accreditation: string;
  readonly methodId: string;
  readonly receivedOn: string;
  readonly reportedOn: string;
  readonly analysedOn: string;
  readonly blankCorrected: Answer | null;
  readonly wallDeposit: Answer | null;
  readonly sae: string;
}

export interface RowText {
  readonly key: string;
  readonly number: string;
  readonly mass: string;
  readonly limit: string;
  readonly volume: string;
  readonly concentration: string;
  /** Which cassette is meant, where the number stands on more than one. Absent until somebody says. */
  readonly sampleId?: string | null;
}

export interface ResultsDraft {
  readonly report: ReportText;
  readonly rows: readonly RowText[];
}

export const rowFields = ['number', 'mass', 'limit', 'volume', 'concentration'] as const;
export type RowField = (typeof rowFields)[number];

/** The name of the choice between cassettes with one number. */
export const chooserName = (row: RowText): string => `row-${row.key}-cassette`;

export const fieldName = (row: RowText, field: RowField): string => `row-${row.key}-${field}`;

export const emptyReport = (today: string): ReportText => ({
  reportNumber: '',
  laboratoryId: '',
  accreditation: '',
  methodId: '',
  receivedOn: today,
  reportedOn: '',
  analysedOn: '',
  blankCorrected: null,
  wallDeposit: null,
  sae: '',
});

/** Blank but for the reporting limit, which is carried on from the line above. */
const blankRow = (key: string, limit: string): RowText => ({
  key,
  number: '',
  mass: '',
  limit,
  volume: '',
  concentration: '',
});

/** Nothing typed in it; a carried reporting limit does not count. */
export const isBlankRow = ({ number, mass, volume, concentration }: RowText): boolean =>
  [number, mass, volume, concentration].every((text) => text.trim() === '');

const nextKey = (rows: readonly RowText[]): string =>
  String(rows.reduce((highest, { key }) => Math.max(highest, Number(key)), 0) + 1);

/** With one blank line at the end. */
export function withBlankRow(rows: readonly RowText[]): readonly RowText[] {
  const last = rows.at(-1);
  return last !== undefined && isBlankRow(last) ? rows : [...rows, blankRow(nextKey(rows), last?.limit ?? '')];
}

export const changedRow = (rows: readonly RowText[], key: string, part: Partial<RowText>): readonly RowText[] =>
  withBlankRow(
    rows.map((row) => (row.key === key ? { ...row, ...(part.number === undefined ? {} : another), ...part } : row)),
  );

/** Another number may be another cassette. */
const another = { sampleId: null };

export const withoutRow = (rows: readonly RowText[], key: string): readonly RowText[] =>
  withBlankRow(rows.filter((row) => row.key !== key));

/** Lines for these numbers, after those that are typed already; a number that stands there is not put in twice. */
export function withNumbers(rows: readonly RowText[], numbers: readonly string[]): readonly RowText[] {
  const typed = rows.filter((row) => !isBlankRow(row));
  const there = new Set(typed.map(({ number }) => number.trim()));
  const limit = rows.at(-1)?.limit ?? '';
  const added: RowText[] = [];
  for (const number of numbers)
    if (!there.has(number)) added.push({ ...blankRow(nextKey([...rows, ...added]), limit), number });
  return withBlankRow([...typed, ...added]);
}
