/** Reads page models in tests: text in reading order, rows of tables, and whether anything leaves its page. */
import { expect } from 'vitest';
import type { Block, PageModel, TextLine } from '#documents/pageModel.ts';
import { marginPt } from '#documents/paper.ts';
import { measureOf, openPdf } from '#documents/pdf/open.ts';
import { styles } from '#documents/typography.ts';
import { fonts } from './sheets.ts';

const opened = {
  paper: { widthPt: 1, heightPt: 1 },
  lang: 'en',
  createdAt: '2026-01-01T00:00:00.000Z',
  creator: 'test',
};
export const measure = measureOf(openPdf(fonts, opened));

/** Lines of one block as one text; a space between two lines, except inside a word; spaces that do not break as spaces. */
export const joined = (lines: readonly TextLine[]): string =>
  lines
    .map(({ text, gluedToNext }, at) => text + (gluedToNext || at === lines.length - 1 ? '' : ' '))
    .join('')
    .replaceAll('\u00a0', ' ');

export const linesOf = (block: Block): readonly TextLine[] =>
  block.kind === 'rule' || block.kind === 'code'
    ? []
    : block.kind === 'text'
      ? block.lines
      : block.cells.flatMap(({ lines }) => lines);

/** Text of the pages in reading order, a line for each block; repeated heads of tables left out. */
export const textOf = (model: PageModel, lang?: string): string =>
  model.pages
    .filter((page) => lang === undefined || page.lang === lang)
    .flatMap(({ blocks }) => blocks)
    .filter(
      (block) => block.kind !== 'rule' && block.kind !== 'code' && !(block.kind === 'tableHead' && block.repeated),
    )
    .map((block) => joined(linesOf(block)))
    .join('\n');

export const rowsOf = (model: PageModel, table: string): string[][] =>
  model.pages.flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === 'tableRow' && block.table === table ? [block.cells.map(({ lines }) => joined(lines))] : [],
    ),
  );

/** How many heads of a table stand on each page. */
export const headsOf = (model: PageModel, table: string): number[] =>
  model.pages.map(({ blocks }) => blocks.filter((one) => one.kind === 'tableHead' && one.table === table).length);

export const pagesWithRows = (model: PageModel, table: string): boolean[] =>
  model.pages.map(({ blocks }) => blocks.some((one) => one.kind === 'tableRow' && one.table === table));

/** Every line lies between the margins, and no text of the body reaches into the foot. */
export function expectInsideMargins(model: PageModel): void {
  for (const page of model.pages) {
    for (const line of [...page.blocks.flatMap(linesOf), ...page.footer, ...page.runningHead]) {
      expect(line.xPt).toBeGreaterThanOrEqual(marginPt - 0.01);
      expect(line.xPt + measure.widthPt(line.text, line.style)).toBeLessThanOrEqual(model.widthPt - marginPt + 0.01);
    }
    for (const line of page.blocks.flatMap(linesOf))
      expect(line.baselinePt + styles[line.style].sizePt * 0.25).toBeLessThanOrEqual(model.heightPt - marginPt - 28);
  }
}
