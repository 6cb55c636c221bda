/** Tomorrow's sheet as PDF, to hang up in the evening and write on in the morning. */
import { en } from '#words/papers.ts';
import { madePaper } from './madePaper.ts';
import type { MadePaper } from './occasion.ts';
import { tomorrowAttachment, tomorrowPages } from './tomorrowPages.ts';
import { type TomorrowInput, type TomorrowValues, tomorrowValues } from './tomorrowValues.ts';

export type { TomorrowInput } from './tomorrowValues.ts';

/** Throws only if a typeface is not a font. */
export function makeTomorrowPdf(input: TomorrowInput): Promise<MadePaper<TomorrowValues>> {
  return madePaper(input, {
    values: tomorrowValues(input),
    lang: en.lang,
    attachment: tomorrowAttachment,
    attached: en.attached(tomorrowAttachment),
    pages: tomorrowPages,
  });
}
