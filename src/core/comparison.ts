/** The only place where a quantity is held against a limit. */
import { type Estimate, lowerOf, upperOf } from './estimate.ts';

/** `reachedWhen`: the limit's own sign. The action level is reached at or above it; the PEL is exceeded only above it. */
export interface Limit {
  readonly id: string;
  readonly value: number;
  readonly unit: 'µg/m³';
  readonly reachedWhen: 'atOrAbove' | 'above';
}

/** Where a quantity stands to the number itself, whatever the sign. */
export type Standing = 'below' | 'exactlyAt' | 'above' | 'unresolved';
export type Answer = 'yes' | 'no' | 'unresolved';

export interface Comparison {
  readonly limit: Limit;
  readonly standing: Standing;
  /** By the limit's sign: has the limit been reached (action level) or exceeded (PEL)? */
  readonly crossed: Answer;
  /** At or above the number: what the notice's statement asks (29 CFR 1926.62(d)(8)(ii)). */
  readonly atOrAbove: Answer;
}

/** Within one part in 10^9 counts as exactly at (design.md 3.3). */
export const relativeTolerance = 1e-9;

/** On which side of a number a value lies: -1 below, 0 exactly at, 1 above. Throws (a bug) when there is no value. */
export function sideOf(value: number, limit: number): -1 | 0 | 1 {
  if (Number.isNaN(value) || !Number.isFinite(limit)) throw new Error(`cannot compare ${value} with ${limit}`);
  return Math.abs(value - limit) <= relativeTolerance * Math.abs(limit) ? 0 : value < limit ? -1 : 1;
}

const agreed = (lower: boolean, upper: boolean): Answer => (lower ? 'yes' : upper ? 'unresolved' : 'no');

const crosses = (side: -1 | 0 | 1, limit: Limit): boolean => (limit.reachedWhen === 'atOrAbove' ? side >= 0 : side > 0);

const standingOf = (side: -1 | 0 | 1): Standing => (side < 0 ? 'below' : side > 0 ? 'above' : 'exactlyAt');

/** Holds an estimate against a limit. Bounds that straddle it are unresolved, never below; at least can only reach it. */
export function compareWithLimit(estimate: Estimate, limit: Limit): Comparison {
  const low = sideOf(lowerOf(estimate), limit.value);
  const high = sideOf(upperOf(estimate), limit.value);
  return {
    limit,
    standing: low === high ? standingOf(low) : 'unresolved',
    atOrAbove: agreed(low >= 0, high >= 0),
    crossed: agreed(crosses(low, limit), crosses(high, limit)),
  };
}

/** One-sided 95 % limits as shares of the limit (core/saeLimits.ts), from the error that the laboratory gave. */
export interface ConfidenceLimits {
  readonly lower: Estimate;
  readonly upper: Estimate;
}

/**
 * `above`: even the lower confidence limit crosses. `below`: not even the upper one does. `possiblyAbove`: they lie on two sides.
 * `notGiven`: the laboratory gave no error, and none is made up.
 */
export type Confidence = 'above' | 'possiblyAbove' | 'below' | 'notGiven';

export interface QualifiedComparison extends Comparison {
  readonly confidence: Confidence;
  /**
   * `crossed` with the error's caution added: what the figure leaves *no* becomes *unresolved* when the upper confidence limit
   * crosses. A *yes* stays a *yes*: the error relieves nothing.
   */
  readonly crossedWithCaution: Answer;
}

/** As `compareWithLimit`, with the laboratory's sampling and analytical error beside it. */
export function compareWithConfidence(
  estimate: Estimate,
  limit: Limit,
  shares: ConfidenceLimits | null,
): QualifiedComparison {
  const comparison = compareWithLimit(estimate, limit);
  if (!shares) return { ...comparison, confidence: 'notGiven', crossedWithCaution: comparison.crossed };
  const low = crosses(sideOf(lowerOf(shares.lower), 1), limit);
  const high = crosses(sideOf(upperOf(shares.upper), 1), limit);
  const confidence = low ? 'above' : high ? 'possiblyAbove' : 'below';
  const crossedWithCaution = comparison.crossed === 'no' && high ? 'unresolved' : comparison.crossed;
  return { ...comparison, confidence, crossedWithCaution };
}

/** Does a figure on either side of this pair decide otherwise against the limit? Then the more careful one judges. */
export const straddles = (a: Estimate, b: Estimate, limit: Limit): boolean =>
  compareWithLimit(a, limit).crossed !== compareWithLimit(b, limit).crossed ||
  compareWithLimit(a, limit).atOrAbove !== compareWithLimit(b, limit).atOrAbove;
