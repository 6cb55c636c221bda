/** The exposure record as PDF, with its values attached. */
import type { ExposureRecordInput, ExposureRecordValues } from './exposureRecordValues.ts';
import type { MadePaper } from './occasion.ts';

export async function makeExposureRecordPdf(_input: ExposureRecordInput): Promise<MadePaper<ExposureRecordValues>> {
  throw new Error('not made yet');
}
