/** Which shape is drawn for a verdict: only a day that nothing speaks against is drawn as below. */
import type { Verdict } from '#findings/workday.ts';
import type { Standing } from '#parts/StandingMark.tsx';

export const markByVerdict: Readonly<Record<Verdict, Standing>> = {
  below: 'below',
  exactlyAt: 'exactlyAt',
  above: 'above',
  atOrAbove: 'above',
  unresolved: 'unresolved',
  atLeastBelow: 'unresolved',
};
