/**
 * The least protective respirator that is enough, from a result or from what is presumed: 29 CFR 1926.62(f) and 1910.134 Table 1. By the
 * day's average and by the air of the task's minutes; the higher factor is recommended. Doubt never lowers it.
 */
import type { Term } from '#core/formula.ts';
import type { Respirator } from '#reference/respirators.ts';
import type { ReadSource } from '#reference/source.ts';

export interface RespiratorAdvice {
  readonly from: 'result' | 'presumed' | 'notNeededByResult';
  /** Least assigned protection factor; null where the rule gives no bound, or where no factor is enough (`beyond`). */
  readonly leastApf: number | null;
  readonly byDay: Term | null;
  readonly byTask: Term | null;
  /** How a presumed level gives its factor; null where it was measured, or where the tier has no upper level to work from. */
  readonly presumedWorking: Term | null;
  /** The air itself is at or above what is immediately dangerous, or no factor reaches. */
  readonly beyond: boolean;
  /** No upper bound is known: the factor stands on the presumed tier, or on the highest one. */
  readonly unbounded: boolean;
  /** Not less than this: `leastApf`, or what is known to be too little where no factor can be named; null: no respirator follows. */
  readonly floorApf: number | null;
  /** The figure lies exactly at the PEL (none is asked for, said beside), or at what a factor holds to (the next one is recommended). */
  readonly exactlyAt: 'pel' | 'maximumUse' | null;
  /** The factor that is just enough by the rule's words, where the figure lies exactly at what it holds to. */
  readonly apfByRule: number | null;
  /** The firm's own stricter limit asks for it, the rule does not. */
  readonly byOwnLimit: boolean;
  readonly choices: readonly Respirator[];
  /** Among them the powered ones: a worker may choose one that protects adequately, (f)(3). */
  readonly powered: readonly Respirator[];
  /** Helmets and hoods that reach it only with the maker's evidence in hand. */
  readonly withEvidence: readonly Respirator[];
  /** Air-purifying ones need HEPA-class filters (N100, R100, P100); N95 is never offered. */
  readonly hepaClass: true;
  readonly sources: readonly ReadSource[];
  readonly because: readonly string[];
}
