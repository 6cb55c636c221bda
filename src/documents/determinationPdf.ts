/** A written initial determination as PDF, negative or positive, with its values attached. */
import { en } from '#words/papers.ts';
import { determinationAttachment, determinationPages } from './determinationPages.ts';
import { type DeterminationInput, type DeterminationValues, determinationValues } from './determinationValues.ts';
import { madePaper } from './madePaper.ts';
import type { MadePaper } from './occasion.ts';

/** Throws (a bug) where a negative one is asked for that the finding does not allow, and if a typeface is not a font. */
export async function makeDeterminationPdf(input: DeterminationInput): Promise<MadePaper<DeterminationValues>> {
  if (input.outcome === 'negative' && input.finding.outcome !== 'negativeMayBeWritten')
    throw new Error(`a negative determination is blocked: ${input.finding.blocks.map(({ key }) => key).join(', ')}`);
  return madePaper(input, {
    values: determinationValues(input),
    lang: en.lang,
    attachment: determinationAttachment,
    attached: en.attached(determinationAttachment),
    pages: determinationPages,
  });
}
