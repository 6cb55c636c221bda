/**
 * Tables for a spreadsheet. Read back by a reader written here after RFC 4180, 2 (quotes, doubled quotes, CR LF); what a spreadsheet would
 * run is the list of OWASP, "CSV Injection" (=, +, -, @, tab, carriage return), from memory.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CsvCell, csvText } from '#documents/csv.ts';
import { billsCsv, moneyCsv } from '#documents/moneyCsv.ts';
import type { Money, MoneySum } from '#findings/season/money.ts';
import type { SpendingRecord } from '#records/book.ts';
import { base, factId, siteId } from '../findings/sliceRegisters.ts';

/** RFC 4180, 2: fields between commas, records between CR LF, quoted ones may hold both. */
function readBack(text: string): string[][] {
  const rows: string[][] = [[]];
  const field = /("(?:[^"]|"")*"|[^",\r\n]*)(,|\r\n|$)/y;
  field.lastIndex = text.startsWith('\ufeff') ? 1 : 0;
  while (field.lastIndex < text.length) {
    const found = field.exec(text);
    if (!found) throw new Error(`not RFC 4180 at ${field.lastIndex}`);
    const [, raw = '', end] = found;
    rows.at(-1)?.push(raw.startsWith('"') ? raw.slice(1, -1).replaceAll('""', '"') : raw);
    if (end === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe('comma-separated text', () => {
  test('quotes, commas and line ends in a text come back as they were; letters keep their signs', () => {
    const row: CsvCell[] = ['say "lead"', 'a,b', 'two\r\nlines', 'Muñoz, Dvořák', { number: '-5.25' }, null];
    expect(readBack(csvText([row]))).toEqual([['say "lead"', 'a,b', 'two\r\nlines', 'Muñoz, Dvořák', '-5.25', '']]);
  });

  test('whatever the texts are, rows and columns come back, and none begins as a formula', () => {
    const letter = fc.constantFrom(...'=+-@＝\t\r\n ",;\'a1ñ😀\u0000');
    const rows = fc.integer({ min: 1, max: 5 }).chain((width) =>
      fc.array(fc.array(fc.string({ unit: letter, maxLength: 12 }), { minLength: width, maxLength: width }), {
        minLength: 1,
        maxLength: 6,
      }),
    );
    fc.assert(
      fc.property(rows, (table) => {
        const back = readBack(csvText(table));
        expect(back.map((row) => row.length)).toEqual(table.map((row) => row.length));
        const faults = back.flatMap((row, at) =>
          row.filter(
            (text, column) =>
              text.replace(/^'/, '') !== table[at]?.[column]?.replace(/^'/, '') || /^\s*[=+\-@\t\r]/.test(text),
          ),
        );
        expect(faults).toEqual([]);
      }),
      { numRuns: 100, seed: 20261125 },
    );
  });

  test.each(['=HYPERLINK("x")', '+1', '-2+3', '@SUM(A1)', '\t=1', '  =1', '\r=1', '＝1'])(
    '%j gets an apostrophe before it',
    (text) => expect(readBack(csvText([[text]]))).toEqual([[`'${text}`]]),
  );

  test('a number is a plain one, and rows are of one length', () => {
    expect(() => csvText([[{ number: '1e3' }]])).toThrow();
    expect(() => csvText([['a'], ['a', 'b']])).toThrow();
  });
});

const amount = (count: number, amountUsd: number | null) => ({ count, amountUsd });
const sum = (plannedUsd: number | null): MoneySum => ({
  lines: [
    {
      of: 'analysis',
      planned: amount(6, plannedUsd),
      spent: { count: 4, amountUsd: 96.4, entriesCount: 2 },
      toCome: amount(2, null),
      billsWithoutCount: 0,
    },
  ],
  plannedUsd,
  knownPlannedUsd: 0,
  spentUsd: 96.4,
  toComeUsd: null,
  knownToComeUsd: 0,
  missing: [],
  slotsCount: 6,
  openDaysCount: 0,
});
const season: Money = {
  ...sum(144),
  fromOn: '2026-10-01',
  toOn: '2027-03-31',
  siteId: null,
  jobs: [
    { ...sum(144), siteId },
    { ...sum(null), siteId: null },
  ],
  determinationsCount: 0,
  perDeterminationUsd: null,
  pricesFromOn: null,
};
const siteName = (id: string | null): string => (id === null ? '=no single job' : 'Old public library');

describe('money', () => {
  test('a row for each job and kind, then the total; what is not known is a word, never 0', () => {
    const rows = readBack(moneyCsv(season, siteName));
    expect(rows.slice(1)).toEqual([
      [
        'Old public library',
        '2026-10-01',
        '2027-03-31',
        'Samples analysed',
        '6',
        '144.00',
        '4',
        '96.40',
        '2',
        'not known',
      ],
      [
        "'=no single job",
        '2026-10-01',
        '2027-03-31',
        'Samples analysed',
        '6',
        'not known',
        '4',
        '96.40',
        '2',
        'not known',
      ],
      ['All jobs', '2026-10-01', '2027-03-31', 'Total', '', '144.00', '', '96.40', '', 'not known'],
    ]);
    expect(rows[0]).toHaveLength(10);
  });

  test('bills: oldest first, struck ones with their reason', () => {
    const bill = (spentOn: string, more: Partial<SpendingRecord>): SpendingRecord => ({
      ...base('spending', `v0000000000${spentOn.at(-1)}`),
      spendingId: `v0000000000${spentOn.at(-1)}`,
      spentOn,
      spentFor: 'courier',
      amountUsd: 38.5,
      count: null,
      siteId,
      boxId: null,
      bill: 'B-7',
      remark: null,
      spentFactId: factId(),
      struck: null,
      ...more,
    });
    const struck = { why: 'Entered twice', factId: factId() };
    const rows = readBack(billsCsv([bill('2026-11-03', { struck }), bill('2026-10-02', { count: 1 })], siteName));
    expect(rows.slice(1)).toEqual([
      ['2026-10-02', 'Courier', '1', '38.50', 'Old public library', 'B-7', '', ''],
      ['2026-11-03', 'Courier', '', '38.50', 'Old public library', 'B-7', '', 'struck: Entered twice'],
    ]);
  });
});
