/**
 * Makes a revision of the custody sheet on the device: values from the record, bytes from the PDF writer, and both in one transaction
 * with the fact that names them. Works without a connection once the app is on the device.
 */
import { custodySheetFor } from '#findings/custody.ts';
import type { Gap } from '#findings/gaps.ts';
import { doubtsOnSheet } from '#findings/gear/doubtsOnPaper.ts';
import type { Book } from '#records/book.ts';
import { editions } from '#reference/editions.ts';
import { happenedNow } from '#store/device.ts';
import { hashOf } from '#store/files.ts';
import { chainHeads } from '#store/heads.ts';
import { newFact } from '#store/newFact.ts';
import { recordOfBox } from '#store/recordOfBox.ts';
import { appVersion } from '#store/version.ts';
import { type Written, write } from '#store/write.ts';

export type Paper = 'letter' | 'a4';

export interface SheetWanted {
  readonly boxId: string;
  readonly book: Book;
  readonly zone: string;
  readonly paper: Paper;
  /** From the second revision on. */
  readonly why: string | null;
  readonly by: string | null;
  readonly draftKey: string;
}

export type Made = Written | { readonly kind: 'gaps'; readonly gaps: readonly Gap[] } | { readonly kind: 'notMade' };

/** The writer of PDFs and its typeface are fetched when a sheet is first made, from what is kept on the device. */
const loadWriter = () => Promise.all([import('#documents/custodyPdf.ts'), import('#documents/fonts/load.ts')]);

export async function makeSheet({ boxId, book, zone, paper, why, by, draftKey }: SheetWanted): Promise<Made> {
  const happened = happenedNow(zone);
  const madeWith = { app: appVersion, ...editions() };
  const heads = await chainHeads();
  const made = custodySheetFor(boxId, book, { issuedInstant: happened.at, why, heads, editions: madeWith });
  if (made.kind === 'gaps') return made;
  let bytes: Uint8Array;
  const { revision } = made.sheet;
  try {
    const [{ custodyPdf }, { loadFonts }] = await loadWriter();
    const record = await recordOfBox({ boxId, revision, paper, writtenBy: appVersion });
    const gearDoubts = doubtsOnSheet(boxId, book);
    bytes = await custodyPdf(made.sheet, { paper, fonts: await loadFonts(), record, gearDoubts });
  } catch (error) {
    console.error(error);
    return { kind: 'notMade' };
  }
  const file = { hash: hashOf(bytes), type: 'application/pdf', bytes };
  const body = {
    boxId,
    revision,
    paper,
    sheet: made.sheet,
    pdfHash: file.hash,
    editions: madeWith,
    heads: made.sheet.heads,
  };
  return write([newFact('custodySheetIssued.v1', body, { happened, by, why })], { files: [file], draftKey });
}
