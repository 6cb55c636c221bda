/** The sign for a lead work area and the label for containers, in the words that the rule prescribes. */
import { en } from '#words/papers.ts';
import { madePaper } from './madePaper.ts';
import { type MadePaper, type Occasion, occasionOf, type Printing } from './occasion.ts';
import { type SignValues, signAttachment, signPages, signValues } from './signPages.ts';

export interface SignInput extends Occasion, Printing {}

/** Throws only if a typeface is not a font. */
export function makeSignPdf(input: SignInput): Promise<MadePaper<SignValues>> {
  return madePaper(input, {
    values: signValues(occasionOf(input)),
    lang: en.lang,
    attachment: signAttachment,
    attached: en.attached(signAttachment),
    pages: signPages,
  });
}
