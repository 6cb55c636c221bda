/** The PEL that a respirator is held against: the rule's, or the firm's own where that is stricter. Own limits never relax. */
import { sideOf } from '#core/comparison.ts';
import { exactly } from '#core/estimate.ts';
import { type Recorded, recorded } from '#core/formula.ts';
import type { LimitsHere } from '#reference/limits.ts';

export interface PelQuestion {
  readonly limits: LimitsHere;
  readonly ownPelUgPerM3?: number | null;
}

export const isOwnJudging = ({ limits, ownPelUgPerM3 }: PelQuestion): boolean =>
  typeof ownPelUgPerM3 === 'number' && sideOf(ownPelUgPerM3, limits.set.pel.value) < 0;

export function judgingPel(question: PelQuestion): Recorded {
  const { limits, ownPelUgPerM3 } = question;
  return typeof ownPelUgPerM3 === 'number' && isOwnJudging(question)
    ? recorded('ownLimit', 'µg/m³', exactly(ownPelUgPerM3), [])
    : recorded('pel', 'µg/m³', exactly(limits.set.pel.value), [`limit:${limits.set.id}`]);
}
