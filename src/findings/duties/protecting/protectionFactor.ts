/** From a needed factor to one of 29 CFR 1910.134 Table 1. Exactly at what a factor holds to, the next one is recommended. */
import { sideOf } from '#core/comparison.ts';
import { type Estimate, lowerOf, upperOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import { immediatelyDangerous, respirators } from '#reference/respirators.ts';

export interface NeededFactor {
  /** null: no respirator follows from the figure. */
  readonly apf: number | null;
  readonly exactlyAt: 'pel' | 'maximumUse' | null;
  /** Just enough by the rule's words, where the figure lies exactly at what it holds to. */
  readonly apfByRule: number | null;
  /** No factor of the table reaches. */
  readonly outOfTable: boolean;
}

const none: NeededFactor = { apf: null, exactlyAt: null, apfByRule: null, outOfTable: false };

/** The factors of the table, each once, the lowest first. */
export const tableFactors = (): readonly number[] =>
  [...new Set(respirators().map(({ apf }) => apf.value))].sort((a, b) => a - b);

/** The factor of the table for a needed one. An upper bound counts; of an *at least* figure its lower end, and the caller adds to it. */
export function factorFor(needed: Term | null): NeededFactor {
  if (needed === null) return none;
  const upper = upperOf(needed.estimate);
  return apfFor(Number.isFinite(upper) ? upper : lowerOf(needed.estimate));
}

/** As `factorFor`, from a plain number of times that the limit is exceeded. */
export function apfFor(factor: number): NeededFactor {
  const atLimit = sideOf(factor, 1);
  if (atLimit < 0) return none;
  if (atLimit === 0) return { ...none, exactlyAt: 'pel' };
  const factors = tableFactors();
  const at = factors.find((one) => sideOf(factor, one) === 0);
  const apf = factors.find((one) => sideOf(factor, one) < 0) ?? null;
  if (at !== undefined) return { apf: apf ?? at, exactlyAt: 'maximumUse', apfByRule: at, outOfTable: false };
  return apf === null ? { ...none, outOfTable: true } : { ...none, apf };
}

/** The more protective of two. */
export function higherOf(a: NeededFactor, b: NeededFactor): NeededFactor {
  if (a.outOfTable || b.outOfTable) return a.outOfTable ? a : b;
  if (a.apf !== b.apf) return (a.apf ?? 0) > (b.apf ?? 0) ? a : b;
  return a.exactlyAt !== null ? a : b;
}

/** At or above what is immediately dangerous to life or health: no maximum use concentration holds there. */
export function isDangerous(estimate: Estimate): boolean {
  const upper = upperOf(estimate);
  return sideOf(Number.isFinite(upper) ? upper : lowerOf(estimate), immediatelyDangerous().value) >= 0;
}
