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

export interface Comparison {
  readonly limit: Limit;
  readonly standing: Standing;
  /** By the limit's sign: has the limit been reached (action level) or exceeded (PEL)? */
  readonly crossed: 'yes' | 'no' | 'unresolved';
  /** At or above the number: what the notice's statement asks (29 CFR 1926.62(d)(8)(ii)). */
  readonly atOrAbove: 'yes' | 'no' | 'unresolved';
}

/** Within one part in 10^9 counts as exactly at (design.md 3.3). */
export const relativeTolerance = 1e-9;

const side = (value: number, limit: number): -1 | 0 | 1 =>
  Math.abs(value - limit) <= relativeTolerance * Math.abs(limit) ? 0 : value < limit ? -1 : 1;

const agreed = (lower: boolean, upper: boolean): 'yes' | 'no' | 'unresolved' =>
  lower ? 'yes' : upper ? 'unresolved' : 'no';

/** Holds an estimate against a limit. Bounds that straddle it are unresolved, never below. */
export function compareWithLimit(estimate: Estimate, limit: Limit): Comparison {
  const low = side(lowerOf(estimate), limit.value);
  const high = side(upperOf(estimate), limit.value);
  const standing: Standing = low === high ? (['below', 'exactlyAt', 'above'] as const)[low + 1]! : 'unresolved';
  const atOrAbove = agreed(low >= 0, high >= 0);
  const above = agreed(low > 0, high > 0);
  return {
    limit,
    standing,
    atOrAbove,
    crossed: limit.reachedWhen === 'atOrAbove' ? atOrAbove : above,
  };
}
