/** How many field blanks a box needs, by which rule. */
import type { Term } from '#core/formula.ts';

/** `tenPercent`: at least two, or one for each ten samples begun. `twoPerTen`: two for each ten begun, at most ten. */
export type BlankRule = 'tenPercent' | 'twoPerTen';

export function blanksNeeded(_samplesCount: number, _rule: BlankRule): Term {
  throw new Error('being written');
}
