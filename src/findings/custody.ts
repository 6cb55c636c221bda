/** The values of a box's custody sheet, from the record; or what is missing. And whether an issued sheet still says what the record says. */
import type { Book } from '#records/book.ts';
import type { CustodySheet } from '#records/custodySheet.ts';
import type { Gap } from './gaps.ts';

/** What the record does not know: given by the device when a sheet is made. */
export interface SheetOccasion {
  readonly issuedInstant: string;
  /** Why this revision replaces the one before; null for the first. */
  readonly why: string | null;
  readonly heads: readonly { readonly factId: string; readonly link: string }[];
  readonly editions: { readonly app: string; readonly rules: string; readonly formulas: string };
}

export type SheetOrGaps =
  | { readonly kind: 'sheet'; readonly sheet: CustodySheet; readonly open: readonly Gap[] }
  | { readonly kind: 'gaps'; readonly gaps: readonly Gap[] };

export function custodySheetFor(_boxId: string, _book: Book, _occasion: SheetOccasion): SheetOrGaps {
  throw new Error('being written');
}

/** One place where the sheet last issued and the record differ. `path` is a JSON pointer into the sheet. */
export interface SheetDifference {
  readonly path: string;
  readonly onSheet: unknown;
  readonly onRecord: unknown;
}

/** Empty when no sheet was issued, or when it still says what the record says; else: raise its revision. */
export function sheetDiffers(_boxId: string, _book: Book): SheetDifference[] {
  throw new Error('being written');
}
