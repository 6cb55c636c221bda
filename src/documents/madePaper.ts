/** Values and pages to a made paper: bytes, and the values that are kept and attached. */
import type { MadePaper, Occasion, Printing } from './occasion.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Paper } from './paper.ts';
import { writePdf } from './pdf/write.ts';

interface Making<Values extends Occasion> {
  readonly values: Values;
  readonly lang: string;
  readonly attachment: string;
  /** What the attached file is, in words. */
  readonly attached: string;
  readonly pages: (values: Values, paper: Paper, measure: Measure) => PageModel;
}

/** Throws only if a typeface is not a font. */
export async function madePaper<Values extends Occasion>(
  { paper, fonts }: Printing,
  { values, lang, attachment, attached, pages }: Making<Values>,
): Promise<MadePaper<Values>> {
  const bytes = await writePdf({
    fonts,
    lang,
    issuedInstant: values.issuedInstant,
    app: values.editions.app,
    pagesOf: (measure) => pages(values, paper, measure),
    attachments: [
      {
        name: attachment,
        type: 'application/json',
        description: attached,
        relationship: 'Data',
        text: JSON.stringify(values),
      },
    ],
  });
  return { bytes, values };
}
