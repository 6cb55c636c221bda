/** The exposure record as PDF, with its values attached. */
import { en } from '#words/papers.ts';
import { exposureRecordAttachment, exposureRecordPages } from './exposureRecordPages.ts';
import { type ExposureRecordInput, type ExposureRecordValues, exposureRecordValues } from './exposureRecordValues.ts';
import { madePaper } from './madePaper.ts';
import type { MadePaper } from './occasion.ts';

/** Throws only if a typeface is not a font. */
export function makeExposureRecordPdf(input: ExposureRecordInput): Promise<MadePaper<ExposureRecordValues>> {
  return madePaper(input, {
    values: exposureRecordValues(input),
    lang: en.lang,
    attachment: exposureRecordAttachment,
    attached: en.attached(exposureRecordAttachment),
    pages: exposureRecordPages,
  });
}
