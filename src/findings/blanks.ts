/** How many field blanks a box needs, by which rule. */
import type { Source } from '#core/formula.ts';
import { blankRule } from '#reference/blankRule.ts';

/** `tenPercent`: at least two, or a tenth of the samples rounded up. `twoPerTen`: two for each ten begun, at most ten. */
export type BlankRule = 'tenPercent' | 'twoPerTen';

export interface BlanksNeeded {
  readonly count: number;
  readonly rule: BlankRule;
  readonly source: Source;
}

/** NIOSH Manual of Analytical Methods, Chapter D, p. 32 step 6: two per 10 samples, at most 10 per set. */
const perTen = { count: 2, samples: 10, most: 10 };

export function blanksNeeded(samplesCount: number, rule: BlankRule): BlanksNeeded {
  const { least, share, positions } = blankRule();
  if (samplesCount <= 0) return { count: 0, rule, source: share.source };
  if (rule === 'twoPerTen') {
    const begun = Math.ceil(samplesCount / perTen.samples);
    const source = positions.find(({ key }) => key === 'nmamd')?.source ?? least.source;
    return { count: Math.min(perTen.most, perTen.count * begun), rule, source };
  }
  return { count: Math.max(least.value, Math.ceil((samplesCount * share.value) / 100)), rule, source: share.source };
}
