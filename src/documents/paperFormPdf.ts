/** A blank form for a whole shift on paper, in the order in which the phone asks, so that it can be keyed in afterwards. */
import type { MadePaper, Occasion, PaperLanguage, Printing } from './occasion.ts';

export interface PaperFormInput extends Occasion, Printing {
  readonly languages: readonly PaperLanguage[];
  /** Known before the shift, printed where known; null leaves the line to write on. */
  readonly siteName: string | null;
  readonly workOn: string | null;
  /** Two workers a sheet. */
  readonly sheetsCount: number;
}

export interface PaperFormValues extends Occasion {
  readonly formFormat: 'paperForm.v1';
  readonly languages: readonly PaperLanguage[];
  readonly siteName: string | null;
  readonly workOn: string | null;
  readonly sheetsCount: number;
}

export async function makePaperFormPdf(_input: PaperFormInput): Promise<MadePaper<PaperFormValues>> {
  throw new Error('not made yet');
}
