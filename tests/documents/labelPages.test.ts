/**
 * Labels: each in its own place, its code read by a reader that is none of ours (zxing-wasm) from a page of 200 dpi (pdftoppm). Sizes of
 * paper: ANSI letter 8.5 × 11 in, ISO 216 A4 210 × 297 mm. Quiet zone of four modules: ISO/IEC 18004.
 */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { modulesOf } from '#documents/code.ts';
import { labelPages } from '#documents/labelPages.ts';
import { type LabelInput, labelValues, makeLabelPdf } from '#documents/labelPdf.ts';
import { type Box, labelAt, moduleMmOf, pageSizeOf, placesCount, quietPtOf } from '#documents/labelPlaces.ts';
import type { CodeBlock, PageModel, TextLine } from '#documents/pageModel.ts';
import { styles } from '#documents/typography.ts';
import { sampleNumberOf } from '#records/sampleNumber.ts';
import { type LabelSheet, labelSheetById, labelSheets } from '#reference/labelSheets.ts';
import { oracle } from '../house/oracles.ts';
import { codesIn, drawnAt200, greyPage } from './codesOnPages.ts';
import { idOf, occasion, peopleOf } from './papers.ts';
import { joined, linesOf, measure } from './readPages.ts';
import { fonts } from './sheets.ts';

const out = 'tests/out/labels';
mkdirSync(out, { recursive: true });

const long =
  'Old Public Library, reading rooms on the second floor, south windows, the long staircase and the cellar below';
/** Every fourth number has ten digits; the last three are two blanks and a spare. */
const labelsOf = (count: number): LabelInput['labels'] =>
  Array.from({ length: count }, (_, at) => ({
    sampleNumber: at % 4 === 3 ? sampleNumberOf('99', 1_234_500 + at) : sampleNumberOf('41', 7 + at),
    workerId: at < count - 3 ? idOf(at % 5) : null,
    blank: at >= count - 3 && at < count - 1,
  }));

const inputOf = (sheet: LabelSheet, more: Partial<LabelInput> = {}): LabelInput => ({
  ...occasion,
  fonts,
  sheet,
  startAt: 1,
  siteName: 'Old Public Library, reading rooms',
  workOn: '2026-09-23',
  labels: labelsOf(12),
  people: peopleOf(5),
  shownAs: 'name',
  ...more,
});
const modelOf = (input: LabelInput): PageModel => labelPages(labelValues(input), measure);
const sheetOf = (id: string): LabelSheet => {
  const sheet = labelSheetById(id);
  if (!sheet) throw new Error(id);
  return sheet;
};
const sheets = labelSheets().map((sheet) => [sheet.id, sheet] as const);

const isIn = (inner: Box, outer: Box): boolean =>
  inner.xPt >= outer.xPt - 0.01 &&
  inner.yPt >= outer.yPt - 0.01 &&
  inner.xPt + inner.widthPt <= outer.xPt + outer.widthPt + 0.01 &&
  inner.yPt + inner.heightPt <= outer.yPt + outer.heightPt + 0.01;
const meets = (a: Box, b: Box): boolean =>
  a.xPt < b.xPt + b.widthPt - 0.01 &&
  b.xPt < a.xPt + a.widthPt - 0.01 &&
  a.yPt < b.yPt + b.heightPt - 0.01 &&
  b.yPt < a.yPt + a.heightPt - 0.01;
/** Ink of a line: from its capitals' top, with accents, to below its baseline. */
const inkOf = ({ text, style, xPt, baselinePt }: TextLine): Box => ({
  xPt,
  yPt: baselinePt - styles[style].sizePt * 0.76,
  widthPt: measure.widthPt(text, style),
  // digits have nothing below their baseline
  heightPt: styles[style].sizePt * (/^[\d\u00a0]+$/.test(text) ? 0.77 : 0.98),
});
const codesOf = (model: PageModel): CodeBlock[] =>
  model.pages.flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'code' ? [block] : [])));
const squareOf = ({ xPt, yPt, sidePt }: CodeBlock): Box => ({ xPt, yPt, widthPt: sidePt, heightPt: sidePt });

describe('label sheets', () => {
  test.each(sheets)('%s: margins, labels and steps add up to the paper, the same on both sides', (_, sheet) => {
    const paperMm = { letter: [8.5 * 25.4, 11 * 25.4], a4: [210, 297] } as const;
    const [widthMm, heightMm] = sheet.paper ? paperMm[sheet.paper] : [sheet.widthMm, sheet.heightMm];
    expect(2 * sheet.leftMm + (sheet.columnsCount - 1) * sheet.stepAcrossMm + sheet.widthMm).toBeCloseTo(widthMm, 6);
    expect(2 * sheet.topMm + (sheet.rowsCount - 1) * sheet.stepDownMm + sheet.heightMm).toBeCloseTo(heightMm, 6);
    expect(sheet.stepAcrossMm).toBeGreaterThanOrEqual(sheet.widthMm);
    expect(sheet.stepDownMm).toBeGreaterThanOrEqual(sheet.heightMm);
    expect(sheet.source.mark).toBe('MEMORY');
  });

  test('the second label of the third row of thirty begins 2 15/16 in from the left and 2 1/2 in from the top', () => {
    const { xPt, yPt } = labelAt(sheetOf('letter30'), 7);
    expect(xPt).toBeCloseTo((3 / 16 + 2.75) * 72, 6);
    expect(yPt).toBeCloseTo(2.5 * 72, 6);
  });

  test('a place that the sheet does not have is refused', () => {
    for (const startAt of [0, 31, 1.5]) expect(() => modelOf(inputOf(sheetOf('letter30'), { startAt }))).toThrow();
  });
});

describe.each(sheets)('labels on %s', (id, sheet) => {
  test.each([
    ['short', 'Footbridge', false],
    ['too long', long, true],
    ['one endless word', 'Wolfeschlegelsteinhausenbergerdorff'.repeat(2), true],
  ])(
    'a site that is %s: texts stay on their label and off the code; modules are wide enough',
    (_, siteName, practice) => {
      const startAt = Math.min(5, placesCount(sheet));
      const model = modelOf(inputOf(sheet, { startAt, siteName, practice }));
      const labels = labelsOf(12);
      expect({ widthPt: model.widthPt, heightPt: model.heightPt }).toEqual(pageSizeOf(sheet));
      let at = startAt - 1;
      for (const { blocks } of model.pages) {
        for (let from = 0; from < blocks.length; at += 1) {
          const to = blocks.findIndex((block, place) => place >= from && block.kind === 'code') + 1;
          const [code, ...others] = blocks.slice(from, to).reverse();
          from = to;
          const label = labelAt(sheet, at % placesCount(sheet));
          if (code?.kind !== 'code') throw new Error('each label ends with its code');
          expect(code.holds).toBe(labels[at - startAt + 1]?.sampleNumber);
          expect(isIn(squareOf(code), label)).toBe(true);
          expect(moduleMmOf(squareOf(code))).toBeGreaterThanOrEqual(0.449);
          expect(quietPtOf(squareOf(code))).toBeCloseTo((4 * code.sidePt) / 29, 6);
          const inks = others.flatMap(linesOf).map(inkOf);
          expect(inks.length).toBeGreaterThanOrEqual(3);
          for (const ink of inks) expect([isIn(ink, label), meets(ink, squareOf(code))]).toEqual([true, false]);
        }
      }
      expect(at).toBe(startAt + 11);
    },
  );

  const pdftoppm = oracle('pdftoppm');
  test.skipIf(pdftoppm === null)('every code is read from its own label at 200 dpi, and is its number', async () => {
    const count = sheet.paper === null ? 4 : placesCount(sheet);
    const startAt = sheet.paper === null ? 1 : 3;
    const labels = labelsOf(count);
    const { bytes } = await makeLabelPdf(inputOf(sheet, { startAt, labels, practice: true }));
    writeFileSync(`${out}/${id}.pdf`, bytes);
    pdftoppm?.(drawnAt200(`${out}/${id}.pdf`, `${out}/${id}`));
    const pages = readdirSync(out)
      .filter((name) => new RegExp(`^${id}-\\d+\\.pgm$`).test(name))
      .sort()
      .map((name) => greyPage(`${out}/${name}`));
    const read: string[][] = [];
    for (let at = 0; at < count; at += 1) {
      const place = startAt - 1 + at;
      const page = pages[Math.floor(place / placesCount(sheet))];
      read.push(page ? await codesIn(page, labelAt(sheet, place % placesCount(sheet))) : []);
    }
    expect(read).toEqual(labels.map(({ sampleNumber }) => [sampleNumber]));
  });
});

describe('what stands on a label', () => {
  const textsOf = (more: Partial<LabelInput>): string[] => {
    const texts: string[] = [''];
    for (const block of modelOf(inputOf(sheetOf('letter10'), more)).pages.flatMap(({ blocks }) => blocks))
      if (block.kind === 'code') texts.push('');
      else texts.push([texts.pop(), joined(linesOf(block))].filter((text) => text).join(' | '));
    return texts.slice(0, -1);
  };
  const labels: LabelInput['labels'] = [
    { sampleNumber: '410075', workerId: idOf(0), blank: false },
    { sampleNumber: '410083', workerId: idOf(3), blank: false },
    { sampleNumber: '410091', workerId: null, blank: true },
    { sampleNumber: '410106', workerId: null, blank: false },
  ];

  test('number digit by digit, who, day, site; blanks and spares say what they are', () => {
    expect(textsOf({ labels })).toEqual([
      '4 1 0 0 7 5 | Íñigo Muñoz Güemes 2026-09-23 Old Public Library, reading rooms',
      '4 1 0 0 8 3 | Joe Whitlock 2026-09-23 Old Public Library, reading rooms',
      '4 1 0 0 9 1 | FIELD BLANK 2026-09-23 Old Public Library, reading rooms',
      '4 1 0 1 0 6 | SPARE 2026-09-23 Old Public Library, reading rooms',
    ]);
  });

  test('by identifier no name is printed or attached; who has none leaves a line to write on', () => {
    const [first, second] = textsOf({ labels, shownAs: 'identifier' });
    expect([first, second]).toEqual([
      '4 1 0 0 7 5 | W-4 2026-09-23 Old Public Library, reading rooms',
      '4 1 0 0 8 3 | 2026-09-23 Old Public Library, reading rooms',
    ]);
    const values = labelValues(inputOf(sheetOf('letter10'), { labels, shownAs: 'identifier' }));
    expect(JSON.stringify(values)).not.toMatch(/Muñoz|Whitlock/);
  });

  test('EXAMPLE stands on each label of a practice book', () => {
    for (const text of textsOf({ labels, practice: true })) expect(text).toContain('EXAMPLE');
  });

  test('what does not fit ends in an ellipsis, never the number or the day', () => {
    const model = modelOf(inputOf(sheetOf('a4Of65'), { siteName: long, practice: true }));
    const texts = model.pages.flatMap(({ blocks }) => blocks.flatMap(linesOf)).map(({ text }) => text);
    expect(texts.filter((text) => text === '2026-09-23')).toHaveLength(12);
    expect(
      texts.filter(
        (text) => text.endsWith('…') && !text.includes('Muñoz') && !text.includes('Peñalv') && !text.includes('Okonk'),
      ),
    ).toHaveLength(12);
  });

  const usual = sheets.map(([, sheet]) => [sheet.id, modelOf(inputOf(sheet))] as const);
  test.each(usual)(
    '%s: a worker with a long name is read as easily as the others, and a spare has a line for a name',
    (id, model) => {
      const blocks = model.pages.flatMap((page) => page.blocks);
      const sizes = blocks.flatMap(linesOf).map(({ style }) => styles[style].sizePt);
      // 65 to a sheet: its labels are 21 mm high
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(id === 'a4Of65' ? 6 : 7.5);
      expect(blocks.filter(({ kind }) => kind === 'rule')).toHaveLength(1);
    },
  );

  test('a code holds digits and nothing else', () => {
    for (const text of ['', '12a4', 'https://x', '12345678901']) expect(() => modulesOf(text)).toThrow();
    expect(modulesOf('4100')).toHaveLength(29);
    expect(codesOf(modelOf(inputOf(sheetOf('a4Of21'))))).toHaveLength(12);
  });
});
