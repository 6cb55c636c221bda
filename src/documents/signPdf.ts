/** The sign for a lead work area and the label for containers, in the words that the rule prescribes. */
import type { MadePaper, Occasion, Printing } from './occasion.ts';

export interface SignInput extends Occasion, Printing {}

export interface SignValues extends Occasion {
  readonly signFormat: 'sign.v1';
  /** The prescribed words, line by line, as they are printed. */
  readonly sign: readonly string[];
  readonly label: string;
}

export async function makeSignPdf(_input: SignInput): Promise<MadePaper<SignValues>> {
  throw new Error('not made yet');
}
