/**
 * The custody sheet as PDF: page model, then bytes. PDF/A-3a with the sheet's data attached, and the record that it rests on, made on
 * the device. The same sheet, record, paper and typefaces give the same bytes in one engine; engines differ in how they compress, so
 * the bytes handed out are kept.
 */
import type { DoubtOnSheet } from '#findings/gear/doubtsOnPaper.ts';
import type { CustodySheet } from '#records/custodySheet.ts';
import { en } from '#words/custody.ts';
import { custodyPages } from './custodyPages.ts';
import type { Paper } from './paper.ts';
import type { FontBytes } from './pdf/open.ts';
import { type Attachment, writePdf } from './pdf/write.ts';

export interface CustodyPdfOptions {
  readonly paper: Paper;
  readonly fonts: FontBytes;
  /** The book's text behind the sheet (store/recordOfBox.ts): what a lost phone's shift is rebuilt from. null: only the sheet. */
  readonly record?: string | null;
  /** Gear in doubt that cassettes rest on (doubtsOnSheet): told in a note on the paper, not in what is attached. */
  readonly gearDoubts?: readonly DoubtOnSheet[];
}

/** Name of the attached file: the JSON of the sheet, which is also what the fact custodySheetIssued.v1 holds. */
export const attachmentName = 'custody-sheet.json';
/** Name of the second one: one line a fact, readable with any editor. */
export const recordName = 'record.txt';

/** Throws only if a typeface is not a font. */
export async function custodyPdf(
  sheet: CustodySheet,
  { paper, fonts, record = null, gearDoubts = [] }: CustodyPdfOptions,
): Promise<Uint8Array> {
  const data: Attachment = {
    name: attachmentName,
    type: 'application/json',
    description: en.attached,
    relationship: 'Data',
    text: JSON.stringify(sheet),
  };
  const beside = (text: string): Attachment => ({
    name: recordName,
    type: 'text/plain',
    description: en.attachedRecord[sheet.workersShownAs],
    relationship: 'Source',
    text,
  });
  return writePdf({
    fonts,
    lang: en.lang,
    issuedInstant: sheet.issuedInstant,
    app: sheet.editions.app,
    pagesOf: (measure) => custodyPages(sheet, paper, measure, gearDoubts),
    attachments: record === null ? [data] : [data, beside(record)],
  });
}
