/** The custody sheet as pages: what stands where, at what height, on which paper. Bytes come after (custodyPdf.ts). */
import { type CustodySheet, isAbsent } from '#records/custodySheet.ts';
import { en } from '#words/custody.ts';
import { custodyFields } from './custodyFields.ts';
import { custodyColumns, custodyRowCells } from './custodyRows.ts';
import { handOverPieces } from './handOver.ts';
import { oneLine, placeLines } from './lines.ts';
import { takeNotes } from './notes.ts';
import type { Block, Measure, PageModel, TextLine } from './pageModel.ts';
import { type Piece, paginate } from './paginate.ts';
import { footerHeightPt, marginPt, type Paper, papers, runningHeadHeightPt } from './paper.ts';
import { type Frame, rulePiece, textPieces } from './pieces.ts';
import { needsNumbers, printable } from './printable.ts';
import { tablePieces } from './table.ts';
import { ink, type StyleName } from './typography.ts';

const dayOf = (at: string): string => at.slice(0, 10);
const timeOf = (at: string): string => at.slice(11, 16);
const previous = (revision: string): string => String(Number(revision) - 1);

function opening(frame: Frame, sheet: CustodySheet): Piece[] {
  const { airCount, blankCount } = sheet.counts;
  const paragraph = (text: string, style: StyleName, gapBeforePt: number) =>
    textPieces(frame, text, { tag: 'P', style, gapBeforePt });
  return [
    ...textPieces(frame, en.title, { tag: 'H1', style: 'title', gapBeforePt: 0 }),
    ...paragraph(en.inBox(airCount, blankCount), 'lead', 0),
    rulePiece(frame, 5, 1.5, ink.accent),
    ...(sheet.practice ? paragraph(en.exampleNote, 'bodyStrong', 6) : []),
    ...(isAbsent(sheet.why)
      ? []
      : paragraph(en.replaces(sheet.revision, previous(sheet.revision), sheet.why), 'bodyStrong', 6)),
  ];
}

function cassettes(frame: Frame, sheet: CustodySheet, notes: ReturnType<typeof takeNotes>): Piece[] {
  const { measure, xPt } = frame;
  const columns = custodyColumns(sheet, measure, frame.widthPt);
  const rows = sheet.rows.map((row) => custodyRowCells({ measure, notes, columns }, row));
  return tablePieces({ id: 'cassettes', measure, xPt, columns, rowPaddingPt: 2, writeOnPt: null }, rows, 14);
}

const textsOf = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : [];
};

function closing(frame: Frame, sheet: CustodySheet, notes: readonly string[]): Piece[] {
  const body = (text: string) => textPieces(frame, text, { tag: 'P', style: 'body', gapBeforePt: 2 });
  const isNumbered = textsOf(sheet).some((text) => needsNumbers(text, frame.measure.holds));
  const said = isNumbered ? [...notes, en.bracketNote] : notes;
  const headed = textPieces(frame, en.notes, { tag: 'H2', style: 'heading', gapBeforePt: 12, keepWithNext: true });
  const heads = sheet.heads.map(({ factId, link }) => `${factId} ${link}`).join(', ');
  return [
    ...(said.length > 0 ? [...headed, ...said.flatMap(body)] : []),
    ...textPieces(frame, `${en.attached} ${en.heads(heads)}`, { tag: 'P', style: 'small', gapBeforePt: 4 }),
  ];
}

/** The foot of each page: what the sheet is, which page, and in small type what it was made with. */
function footer(frame: Frame, sheet: CustodySheet, heightPt: number, number: number, count: number): TextLine[] {
  const { measure, xPt, widthPt } = frame;
  const line = (text: string, style: StyleName, baselinePt: number, align: 'left' | 'right') =>
    placeLines(measure, [{ text, style, gluedToNext: false }], { xPt, widthPt, firstBaselinePt: baselinePt, align });
  const made = [en.title, en.madeOn(dayOf(sheet.issuedAt), timeOf(sheet.issuedAt)), en.revision(sheet.revision)].join(
    ' · ',
  );
  const left = sheet.practice ? `${en.example} · ${made}` : made;
  const { app, rules, formulas } = sheet.editions;
  const links = sheet.heads.map(({ factId, link }) => `${factId} ${link.slice(0, 16)}`).join(', ');
  const basis = [en.editions(app, rules, formulas), en.headsShort(links)].join(' · ');
  const firstPt = heightPt - marginPt - footerHeightPt + 16;
  return [
    ...line(left, 'bodyStrong', firstPt, 'left'),
    ...line(en.page(number, count), 'bodyStrong', firstPt, 'right'),
    ...line(oneLine(measure, basis, 'small', widthPt), 'small', firstPt + 11, 'left'),
  ];
}

function runningHead(frame: Frame, sheet: CustodySheet): TextLine[] {
  const { measure, xPt, widthPt } = frame;
  const text = oneLine(measure, [en.goesOn, sheet.firmName, sheet.site.name].join(' · '), 'body', widthPt);
  const place = { xPt, widthPt, firstBaselinePt: marginPt + 9, align: 'left' } as const;
  return placeLines(measure, [{ text, style: 'body', gluedToNext: false }], place);
}

export function custodyPages(sheet: CustodySheet, paper: Paper, measure: Measure): PageModel {
  const { widthPt, heightPt } = papers[paper];
  const frame: Frame = { measure, xPt: marginPt, widthPt: widthPt - 2 * marginPt };
  const notes = takeNotes(measure);
  const fields = custodyFields(frame, sheet, notes);
  const table = cassettes(frame, sheet, notes);
  const hands = handOverPieces(frame, sheet, notes);
  const pieces = [...opening(frame, sheet), fields, ...table, ...hands, ...closing(frame, sheet, notes.taken())];
  const bodies: Block[][] = paginate(pieces, {
    firstTopPt: marginPt - 6,
    nextTopPt: marginPt + runningHeadHeightPt,
    bottomPt: heightPt - marginPt - footerHeightPt,
  });
  const plain = (text: string) => printable(text, measure.holds).replaceAll('\n', ' ');
  return {
    paper,
    widthPt,
    heightPt,
    title: plain(en.documentTitle(sheet.site.name, dayOf(sheet.issuedAt), sheet.revision)),
    author: plain(sheet.firmName),
    lang: en.lang,
    across: sheet.practice ? en.example : null,
    pages: bodies.map((blocks, index) => ({
      blocks,
      runningHead: index === 0 ? [] : runningHead(frame, sheet),
      footer: footer(frame, sheet, heightPt, index + 1, bodies.length),
    })),
  };
}
