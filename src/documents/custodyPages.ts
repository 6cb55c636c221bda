/** The custody sheet as pages: what stands where, at what height, on which paper. Bytes come after (custodyPdf.ts). */
import type { DoubtOnSheet } from '#findings/gear/doubtsOnPaper.ts';
import { type CustodySheet, isAbsent } from '#records/custodySheet.ts';
import { en } from '#words/custody.ts';
import { en as gearWords } from '#words/gearOnPaper.ts';
import { custodyFields } from './custodyFields.ts';
import { custodyColumns, custodyRowCells } from './custodyRows.ts';
import { handOverPieces } from './handOver.ts';
import { type Foot, frameOn, layOut } from './layOut.ts';
import { takeNotes } from './notes.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import type { Paper } from './paper.ts';
import { type Frame, rulePiece, textPieces } from './pieces.ts';
import { needsNumbers } from './printable.ts';
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

function cassettes(
  frame: Frame,
  sheet: CustodySheet,
  notes: ReturnType<typeof takeNotes>,
  inDoubt: ReadonlySet<string>,
): Piece[] {
  const { measure, xPt } = frame;
  const columns = custodyColumns(sheet, measure, frame.widthPt);
  const rows = sheet.rows.map((row) => custodyRowCells({ measure, notes, columns, inDoubt }, row));
  return tablePieces({ id: 'cassettes', measure, xPt, columns, rowPaddingPt: 2, writeOnPt: null }, rows, 14);
}

const textsOf = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : [];
};

/** Gear found bad is told after what did not fit a cell; it is no part of the sheet's own data. */
function closing(frame: Frame, sheet: CustodySheet, notes: readonly string[], gear: readonly string[]): Piece[] {
  const body = (text: string) => textPieces(frame, text, { tag: 'P', style: 'body', gapBeforePt: 2 });
  const isNumbered = textsOf([sheet, gear]).some((text) => needsNumbers(text, frame.measure.holds));
  const said = [...notes, ...gear, ...(isNumbered ? [en.bracketNote] : [])];
  const headed = textPieces(frame, en.notes, { tag: 'H2', style: 'heading', gapBeforePt: 12, keepWithNext: true });
  const heads = sheet.heads.map(({ factId, link }) => `${factId} ${link}`).join(', ');
  return [
    ...(said.length > 0 ? [...headed, ...said.flatMap(body)] : []),
    ...textPieces(frame, `${en.attached} ${en.heads(heads)}`, { tag: 'P', style: 'small', gapBeforePt: 4 }),
  ];
}

/** The foot of each page: what the sheet is, which page, and in small type what it was made with. */
function footOf(sheet: CustodySheet): Foot {
  const made = [en.title, en.madeOn(dayOf(sheet.issuedAt), timeOf(sheet.issuedAt)), en.revision(sheet.revision)].join(
    ' · ',
  );
  const { app, rules, formulas } = sheet.editions;
  const links = sheet.heads.map(({ factId, link }) => `${factId} ${link.slice(0, 16)}`).join(', ');
  return {
    left: sheet.practice ? `${en.example} · ${made}` : made,
    page: en.page,
    basis: [en.editions(app, rules, formulas), en.headsShort(links)].join(' · '),
  };
}

/** `gearDoubts`: gear that the cassettes rest on and that is in doubt, told in a note. */
export function custodyPages(
  sheet: CustodySheet,
  paper: Paper,
  measure: Measure,
  gearDoubts: readonly DoubtOnSheet[] = [],
): PageModel {
  const frame = frameOn(measure, paper, 'lying');
  const notes = takeNotes(measure);
  const fields = custodyFields(frame, sheet, notes);
  const inDoubt = new Set(gearDoubts.flatMap(({ sampleNumbers }) => sampleNumbers));
  const table = cassettes(frame, sheet, notes, inDoubt);
  const hands = handOverPieces(frame, sheet, notes);
  const closed = closing(frame, sheet, notes.taken(), gearDoubts.map(gearWords.sheet));
  const pieces = [...opening(frame, sheet), fields, ...table, ...hands, ...closed];
  const goesOn = [en.goesOn, sheet.firmName, sheet.site.name].join(' · ');
  return layOut(measure, {
    paper,
    stance: 'lying',
    title: en.documentTitle(sheet.site.name, dayOf(sheet.issuedAt), sheet.revision),
    author: sheet.firmName,
    across: sheet.practice ? en.example : null,
    sections: [{ lang: en.lang, pieces, goesOn, foot: footOf(sheet) }],
  });
}
