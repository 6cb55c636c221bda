/** What factor a presumed level needs, and when a measurement ends the presumption: 29 CFR 1926.62(d)(2). */
import { sideOf } from '#core/comparison.ts';
import { exactly, lowerOf, upperOf } from '#core/estimate.ts';
import { type Recorded, recorded, type Term, type Working } from '#core/formula.ts';
import { neededFactor } from '#core/protection.ts';
import { allowableAverage } from '#core/twa.ts';
import type { LimitsHere } from '#reference/limits.ts';
import { type Presumption, presumedTiers } from '#reference/presumption.ts';
import { tableFactors } from './protectionFactor.ts';
import type { RespiratorQuestion } from './respirators.ts';

/** The rule's own PEL, which its presumed levels are multiples of: 50, 10 times 50, 50 times 50. */
const rulePel = (): number => presumedTiers().find(({ tier }) => tier === '1')?.presumedAbove?.value ?? Number.NaN;

/** Presumed levels are multiples of the PEL: where a lower one holds they lie lower. */
export const ofPel = (levelUgPerM3: number, pelUgPerM3: number): number => (levelUgPerM3 * pelUgPerM3) / rulePel();

export const highestPresumedApf = (): number =>
  presumedTiers().reduce((top, { leastApf }) => Math.max(top, leastApf?.value ?? 0), 0);

/**
 * The level up to which the tier is taken: as stated, or, where the rule states none, up to where the next tier begins. null: neither.
 * In µg/m³ of the limit that holds: levels are multiples of the PEL.
 */
function takenUpTo({ tier, presumedUpTo }: Presumption, pel: number): number | null {
  const next = tier === '2' ? presumedTiers().find((one) => one.tier === '3')?.presumedAbove : null;
  const top = presumedUpTo ?? next ?? null;
  return top === null ? null : ofPel(top.value, pel);
}

export interface PresumedFactor {
  readonly apf: number;
  /** The rule says up to where. Of tier 3 the factor is ours too, but it is the highest that is asked for. */
  readonly bounded: boolean;
  /** How it was worked out; null where the tier has no upper level to work from. */
  readonly working: Working | null;
}

/** null: nothing is presumed. Over 8 hours the level is an average over the shift and held against what such a shift may reach. */
export function presumedFactor(
  presumption: Presumption,
  pel: Recorded,
  limits: LimitsHere,
  hours: Term | null,
): PresumedFactor | null {
  const least = presumption.leastApf?.value;
  if (least === undefined) return null;
  const top = takenUpTo(presumption, limits.set.pel.value);
  const bounded = presumption.tier !== '1b';
  if (top === null) return { apf: least, bounded, working: null };
  const A = hours === null ? pel : allowed(pel, limits, hours);
  const C = recorded('presumedLevel', 'µg/m³', exactly(top), ['limit:presumed']);
  const working = neededFactor.of({ C, A });
  const needed = upperOf(working.estimate);
  // the top of a presumed level is the rule's own bound, included in it: what reaches it is enough
  const apf = tableFactors().find((one) => one >= least && sideOf(needed, one) <= 0);
  return { apf: apf ?? Math.max(...tableFactors()), bounded, working };
}

/**
 * The allowable average of so many hours: the limit's own dose over them (29 CFR 1926.62(c)(2): 50 over 8 hours is 400). A set without
 * that clause holds the 8-hour average against its limit, which comes to the same.
 */
export function allowed(pel: Recorded, limits: LimitsHere, hours: Term): Working {
  const dose = lowerOf(pel.estimate) * (limits.set.pel.twaMin.value / 60);
  return allowableAverage.of({
    L: pel,
    D: recorded('allowableDose', 'µg·h/m³', exactly(dose), [...pel.because]),
    h: hours,
  });
}

/**
 * Documented not above the level that the tier begins at: proven, bounded, with nothing against it. A task that the list does not name
 * has no presumption to end.
 */
export function presumptionEnds({ measurement, presumption, limits }: RespiratorQuestion): boolean {
  if (presumption.tier === 'none') return true;
  if (!measurement?.twa8UgPerM3 || measurement.resultOwed || measurement.atLeastOnly) return false;
  if (measurement.blocks.length > 0) return false;
  const begins = ofPel(presumption.presumedAbove?.value ?? rulePel(), limits.set.pel.value);
  return sideOf(upperOf(measurement.twa8UgPerM3), begins) <= 0;
}
