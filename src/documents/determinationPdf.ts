/** A written initial determination as PDF, negative or positive, with its values attached. */
import type { DeterminationInput, DeterminationValues } from './determinationValues.ts';
import type { MadePaper } from './occasion.ts';

/** Throws (a bug) where a negative one is asked for that the finding does not allow. */
export async function makeDeterminationPdf(_input: DeterminationInput): Promise<MadePaper<DeterminationValues>> {
  throw new Error('not made yet');
}
