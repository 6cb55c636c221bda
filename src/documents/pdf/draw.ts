/**
 * Draws a page model with its tags: Document, H1, H2, P, Table with THead, TBody, TR, TH and TD. What repeats for the eye alone
 * (running heads, footers, repeated table heads, rules) is an artifact.
 */
import type PDFDocument from 'pdfkit';
import type { StructureElement } from 'pdfkit';
import type { Block, Cell, CodeBlock, PageModel, RuleBlock, TextLine } from '../pageModel.ts';
import { ink, styles } from '../typography.ts';

interface OpenTable {
  readonly table: StructureElement;
  readonly body: StructureElement;
}

function drawLine(document: PDFDocument, line: TextLine, then: string): void {
  const style = styles[line.style];
  document.font(style.face).fontSize(style.sizePt).fillColor(style.colour);
  document.text(line.text + then, line.xPt, line.baselinePt, { lineBreak: false, baseline: 'alphabetic' });
}

/** Lines of one element: a space stands between two lines, except inside a word. */
function drawLines(document: PDFDocument, lines: readonly TextLine[]): void {
  for (const [index, line] of lines.entries())
    if (line.text !== '') drawLine(document, line, index < lines.length - 1 && !line.gluedToNext ? ' ' : '');
}

function asArtifact(document: PDFDocument, type: 'Layout' | 'Pagination' | 'Background', draw: () => void): void {
  document.markContent('Artifact', { type });
  draw();
  document.endMarkedContent();
}

const drawRule = (document: PDFDocument, { xPt, yPt, widthPt, weightPt, colour }: RuleBlock): void =>
  asArtifact(document, 'Layout', () => {
    document.rect(xPt, yPt, widthPt, weightPt).fill(colour);
  });

/** White below it, so that nothing printed across the page reaches into it; its dark parts are one path, so that no seam shows. */
function drawCode(document: PDFDocument, { xPt, yPt, sidePt, rectangles }: CodeBlock): void {
  document.rect(xPt, yPt, sidePt, sidePt).fill('#ffffff');
  for (const { xPt: x, yPt: y, widthPt, heightPt } of rectangles) document.rect(x, y, widthPt, heightPt);
  document.fill('#000000');
}

function addCells(document: PDFDocument, row: StructureElement, cells: readonly Cell[], isHead: boolean): void {
  for (const [index, { lines, spanCount }] of cells.entries()) {
    const scope = isHead ? 'Column' : index === 0 ? 'Row' : null;
    const cell = scope ? document.struct('TH', { scope }) : document.struct('TD');
    if (spanCount > 1) cell.dictionary.data.A = { O: 'Table', ColSpan: spanCount };
    row.add(cell);
    if (lines.length > 0) cell.add(() => drawLines(document, lines));
    cell.end();
  }
  row.end();
}

function drawWatermark(document: PDFDocument, model: PageModel, across: string): void {
  asArtifact(document, 'Background', () => {
    const centre: [number, number] = [model.widthPt / 2, model.heightPt / 2];
    document.save().rotate(-32, { origin: centre });
    const sizePt = Math.min(150, model.widthPt / 5.1);
    document.font('bold').fontSize(sizePt).fillColor(ink.example);
    const startPt = centre[0] - document.widthOfString(across) / 2;
    document.text(across, startPt, centre[1] + sizePt / 3, { lineBreak: false, baseline: 'alphabetic' });
    document.restore();
  });
}

/** Draws every page and closes the tag tree; the caller ends the document. */
export function drawPages(document: PDFDocument, model: PageModel): void {
  const root = document.struct('Document');
  document.addStructure(root);
  // A part in another language than the whole says so, so that it is read aloud in that language.
  let part = { lang: model.lang, element: root };
  const turnTo = (lang: string) => {
    if (lang === part.lang) return;
    part = { lang, element: lang === model.lang ? root : document.struct('Sect', { lang }) };
    if (part.element !== root) root.add(part.element);
  };
  const tables = new Map<string, OpenTable>();
  const tableOf = (id: string): OpenTable => {
    const found = tables.get(id);
    if (found) return found;
    const opened = { table: document.struct('Table'), body: document.struct('TBody') };
    part.element.add(opened.table);
    tables.set(id, opened);
    return opened;
  };
  const drawHead = (id: string, cells: readonly Cell[]) => {
    const { table, body } = tableOf(id);
    const head = document.struct('THead');
    table.add(head);
    const row = document.struct('TR');
    head.add(row);
    addCells(document, row, cells, true);
    head.end();
    table.add(body);
  };
  const drawRow = (id: string, cells: readonly Cell[]) => {
    const row = document.struct('TR');
    tableOf(id).body.add(row);
    addCells(document, row, cells, false);
  };
  const drawBlock = (block: Block) => {
    if (block.kind === 'rule') return drawRule(document, block);
    if (block.kind === 'tableRow') return drawRow(block.table, block.cells);
    if (block.kind === 'tableHead' && !block.repeated) return drawHead(block.table, block.cells);
    if (block.kind === 'tableHead')
      return asArtifact(document, 'Pagination', () => {
        for (const { lines } of block.cells) drawLines(document, lines);
      });
    if (block.kind === 'code') {
      const figure = document.struct('Figure', { alt: block.alt });
      part.element.add(figure);
      figure.add(() => drawCode(document, block));
      return figure.end();
    }
    const element = document.struct(block.tag);
    part.element.add(element);
    element.add(() => drawLines(document, block.lines));
    element.end();
  };
  for (const page of model.pages) {
    turnTo(page.lang ?? model.lang);
    document.addPage({ size: [model.widthPt, model.heightPt], margin: 0 });
    if (model.across) drawWatermark(document, model, model.across);
    const repeated = [...page.runningHead, ...page.footer];
    asArtifact(document, 'Pagination', () => {
      for (const line of repeated) drawLine(document, line, '');
    });
    for (const block of page.blocks) drawBlock(block);
  }
  for (const { table, body } of tables.values()) {
    body.end();
    table.end();
  }
  root.end();
}
