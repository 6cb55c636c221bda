/** A blank form for a whole shift on paper, in the order in which the phone asks, so that it can be keyed in afterwards. */
import { paperWords } from '#words/papers.ts';
import { madePaper } from './madePaper.ts';
import { type MadePaper, type Occasion, occasionOf, type PaperLanguage, type Printing } from './occasion.ts';
import { type PaperFormValues, paperFormAttachment, paperFormPages } from './paperFormPages.ts';

export interface PaperFormInput extends Occasion, Printing {
  readonly languages: readonly PaperLanguage[];
  /** Known before the shift, printed where known; null leaves the line to write on. */
  readonly siteName: string | null;
  readonly workOn: string | null;
  /** Two workers a sheet. */
  readonly sheetsCount: number;
}

/** Throws only if a typeface is not a font. */
export function makePaperFormPdf(input: PaperFormInput): Promise<MadePaper<PaperFormValues>> {
  const { lang, attached } = paperWords[input.languages[0] ?? 'en'];
  const { siteName, workOn, sheetsCount, languages } = input;
  return madePaper(input, {
    values: {
      formFormat: 'paperForm.v1',
      ...occasionOf(input),
      languages: [...languages],
      siteName,
      workOn,
      sheetsCount,
    },
    lang,
    attachment: paperFormAttachment,
    attached: attached(paperFormAttachment),
    pages: paperFormPages,
  });
}
