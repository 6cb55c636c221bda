/** What stands on which page of a custody sheet, read from the page model. */
import { describe, expect, test } from 'vitest';
import { custodyPages } from '#documents/custodyPages.ts';
import type { Block, PageModel, TextLine } from '#documents/pageModel.ts';
import { marginPt } from '#documents/paper.ts';
import { measureOf, openPdf } from '#documents/pdf/open.ts';
import { styles } from '#documents/typography.ts';
import { absent, contradictionsOf, custodySheet } from '#records/custodySheet.ts';
import { airRow, blankRow, fonts, openRow, sheetOf, sheetWith } from './sheets.ts';

const opened = {
  paper: { widthPt: 1, heightPt: 1 },
  lang: 'en',
  createdAt: '2026-01-01T00:00:00.000Z',
  creator: 'test',
};
const measure = measureOf(openPdf(fonts, opened));
const joined = (lines: readonly TextLine[]) => lines.map((line) => line.text).join(' ');
const linesOf = (block: Block): readonly TextLine[] =>
  block.kind === 'text' ? block.lines : 'cells' in block ? block.cells.flatMap((cell) => cell.lines) : [];
const blocksOf = (model: PageModel) => model.pages.flatMap((page) => page.blocks);
const textOf = (model: PageModel) =>
  blocksOf(model)
    .map((block) => joined(linesOf(block)))
    .join('\n');
const rowsOf = (model: PageModel, table: string) =>
  blocksOf(model).flatMap((block) =>
    block.kind === 'tableRow' && block.table === table ? [block.cells.map((cell) => joined(cell.lines))] : [],
  );
const headsOn = (model: PageModel, table: string) =>
  model.pages.map((page) => page.blocks.filter((block) => block.kind === 'tableHead' && block.table === table));

describe('a custody sheet on pages', () => {
  test('the sheets used here are sound', () => {
    for (const sheet of [sheetWith(1), sheetWith(20), sheetWith(60)]) {
      expect(custodySheet.parse(sheet)).toEqual(sheet);
      expect(contradictionsOf(sheet)).toEqual([]);
    }
  });

  test('a lot number of eight signs stays on one line, and a revised sheet of five cassettes on one page', () => {
    const lotNumber = 'M37-2208';
    const sheet = sheetWith(5);
    const model = custodyPages(
      {
        ...sheet,
        heads: sheet.heads.slice(0, 1),
        revision: '2',
        why: 'Stop of the last cassette put right by five minutes',
        rows: sheet.rows.map((row) => ({ ...row, lotNumber })),
        lots: [{ lotNumber, media: 'MCE 0.8 µm, 37 mm, closed face' }],
      },
      'letter',
      measure,
    );
    const lots = blocksOf(model).flatMap((block) =>
      block.kind === 'tableRow' && block.table === 'cassettes' ? [block.cells[3]?.lines.map(({ text }) => text)] : [],
    );
    expect(lots).toEqual(Array.from({ length: 5 }, () => [lotNumber]));
    expect(model.pages).toHaveLength(1);
  });

  test('has one row for each cassette, in order, with its figures', () => {
    const model = custodyPages(sheetWith(20), 'letter', measure);
    const rows = rowsOf(model, 'cassettes');
    expect(rows.map(([number]) => number)).toEqual(Array.from({ length: 20 }, (_, index) => String(410010 + index)));
    // 2.011 and 1.951 L/min average 1.981 L/min; over 401 min that is 794.381 L (by hand)
    expect(rows[0]).toEqual([
      '410010',
      '2026-05-12',
      'Íñigo Muñoz Güemes',
      'K2417',
      '07:00',
      '14:00',
      '401',
      '2.011',
      '1.951',
      '1.981',
      '794.4',
      'none',
    ]);
    expect(textOf(model)).toContain('20 filter cassettes in this box: 18 air samples, 2 field blanks');
  });

  test('a number of ten digits stands on one line', () => {
    const model = custodyPages(sheetOf([{ ...airRow(0), sampleNumber: '9988776654' }]), 'letter', measure);
    const [row] = blocksOf(model).filter((block) => block.kind === 'tableRow');
    expect(row?.kind === 'tableRow' && row.cells[0]?.lines.map(({ text }) => text)).toEqual(['9988776654']);
  });

  test('a field blank says that no air was drawn and shows no figure', () => {
    const [row] = rowsOf(custodyPages(sheetOf([blankRow(0)]), 'a4', measure), 'cassettes');
    expect(row).toEqual([
      '410010',
      '2026-05-12',
      'Field blank',
      'K2417',
      'no air drawn: analyze, report in µg',
      'none',
    ]);
  });

  test('what was not taken stands as a word, never as 0; a stop past midnight says so', () => {
    const [row] = rowsOf(custodyPages(sheetOf([openRow(0)]), 'letter', measure), 'cassettes');
    expect(row?.slice(5, 11)).toEqual(['00:41 next day', '401', '2.011', 'not taken', 'no average', 'no average']);
    const asked = { reportingLimitUg: absent('notStated'), method: absent('notStated') };
    const text = textOf(custodyPages(sheetWith(1, asked), 'letter', measure));
    expect(text).toContain('Reporting limit not stated');
    expect(text).toContain('Method not stated');
  });

  test('what happened to a cassette and that it was voided stand before the remarks', () => {
    const rows = [{ ...airRow(0), mishaps: ['wet' as const], void: true, remarks: ['Rain'] }];
    const [row] = rowsOf(custodyPages(sheetOf(rows), 'a4', measure), 'cassettes');
    expect(row?.at(-1)).toBe('marked void by the firm; got wet; Rain');
  });

  test('says what is asked of the laboratory', () => {
    const text = textOf(custodyPages(sheetWith(3), 'letter', measure));
    for (const asked of [
      '0.75 µg on each filter',
      'include it in the result',
      'call before any',
      '5 working days',
      'NIOSH 7303',
    ])
      expect(text).toContain(asked);
    const change = { includeWallDeposit: false, callBeforeReanalysis: false };
    const other = textOf(custodyPages(sheetWith(3, change), 'letter', measure));
    expect(other).toContain('do not include it');
    expect(other).toContain('no call needed');
  });

  test.each(['letter', 'a4'] as const)(
    '60 rows on %s: the head repeats on every page, no row and no line leaves the page',
    (paper) => {
      const model = custodyPages(sheetWith(60), paper, measure);
      const [widthPt, heightPt] = paper === 'letter' ? [792, 612] : [841.89, 595.28];
      expect([model.widthPt, model.heightPt]).toEqual([widthPt, heightPt]);
      expect(model.pages.length).toBeGreaterThan(2);
      const heads = headsOn(model, 'cassettes').map((found) =>
        found.map((head) => head.kind === 'tableHead' && head.repeated),
      );
      const pagesWithRows = model.pages.map((page) =>
        page.blocks.some((block) => block.kind === 'tableRow' && block.table === 'cassettes'),
      );
      expect(heads).toEqual(pagesWithRows.map((has, index) => (has ? [index > 0] : [])));
      expect(rowsOf(model, 'cassettes')).toHaveLength(60);
      for (const page of model.pages)
        for (const line of [...page.blocks.flatMap(linesOf), ...page.footer, ...page.runningHead]) {
          expect(line.xPt).toBeGreaterThanOrEqual(marginPt - 0.01);
          expect(line.xPt + measure.widthPt(line.text, line.style)).toBeLessThanOrEqual(widthPt - marginPt + 0.01);
          expect(line.baselinePt + styles[line.style].sizePt * 0.25).toBeLessThanOrEqual(heightPt - marginPt + 8);
        }
    },
  );

  test('every page says which it is, its revision, the editions and the record heads', () => {
    const model = custodyPages(sheetWith(60), 'letter', measure);
    for (const [index, page] of model.pages.entries()) {
      const foot = joined(page.footer);
      expect(foot).toContain(`page ${index + 1} of ${model.pages.length}`);
      expect(foot).toContain('Made 2026-05-12 at 16:40 · revision 1');
      expect(foot).toContain('Fullshift 0.1.0 · rules 2026-11 · formulas 1');
      expect(foot).toContain('k3v9q0d7h2mn.00000214 9f2c4b7e1d6a3805');
    }
    expect(textOf(model)).toContain('9f2c4b7e1d6a3805c4e7f1b2a9d8063c5e4f7a1b2c3d9e8f70615243a4b5c6d7');
  });

  test('hand-over lines stand on one page: who, signature, date and time, tracking number, seal', () => {
    for (const count of [1, 9, 11, 14, 20, 60]) {
      const model = custodyPages(sheetWith(count), 'letter', measure);
      const pages = model.pages.filter((page) =>
        page.blocks.some((block) => block.kind === 'tableRow' && block.table === 'handOver'),
      );
      expect(pages).toHaveLength(1);
      const text = pages.flatMap((page) => page.blocks.map((block) => joined(linesOf(block)))).join('\n');
      expect(text).toContain(
        'Handed over by Signature Date and time Received by Signature, or carrier and tracking number Date and time',
      );
      expect(text).toContain('tracking number stands for the carrier’s signature');
      expect(text).toContain(`cassettes counted ________ of ${count}`);
    }
    const rows = rowsOf(custodyPages(sheetWith(5), 'a4', measure), 'handOver');
    expect(rows.map((row) => [row[0], row.at(-1)])).toEqual([
      ['Wilhelmina Harrow', '☐ yes ☐ no'],
      ['', '☐ yes ☐ no'],
      ['', '☐ yes ☐ no'],
    ]);
  });

  test('a later revision says what it replaces and why; the first says nothing of it', () => {
    const change = { revision: '3', why: 'Lot number of 410011 misread' };
    const text = textOf(custodyPages(sheetWith(4, change), 'letter', measure));
    expect(text).toContain('Revision 3 replaces revision 2');
    expect(text).toContain('Lot number of 410011 misread');
    expect(textOf(custodyPages(sheetWith(4), 'letter', measure))).not.toContain('replaces');
  });

  test('a practice book stands across every page and in words', () => {
    const model = custodyPages(sheetWith(20, { practice: true }), 'letter', measure);
    expect(model.across).toBe('EXAMPLE');
    expect(textOf(model)).toContain('EXAMPLE from a practice book');
    for (const page of model.pages) expect(joined(page.footer)).toContain('EXAMPLE');
    expect(custodyPages(sheetWith(20), 'letter', measure).across).toBeNull();
  });

  test('a sheet whose parts contradict each other is told', () => {
    const sheet = sheetWith(4);
    const [first, second, ...rest] = sheet.rows;
    if (!first || !second) throw new Error('rows');
    const twice = {
      ...sheet,
      rows: [first, { ...second, sampleNumber: first.sampleNumber, lotNumber: 'Z9' }, ...rest],
    };
    expect(contradictionsOf(twice)).toEqual(['numberTwice', 'lotMissing']);
    expect(contradictionsOf({ ...sheet, rows: [first, ...sheet.rows] })).toEqual([
      'countsDiffer',
      'sampleTwice',
      'numberTwice',
    ]);
    expect(contradictionsOf({ ...sheet, revision: '2' })).toEqual(['revisionWithoutReason']);
    expect(airRow(0).sampleNumber).toBe('410010');
  });
});
