/**
 * What is presumed for tasks until they are measured, and what must be worn meanwhile (29 CFR 1926.62(d)(2)). Paint whose lead is
 * not known counts as lead paint: the standard names no lower limit for it, and doubt moves to the careful side.
 */
import { type Presumption, presumptionFor } from '#reference/presumption.ts';
import { type Respirator, respirators } from '#reference/respirators.ts';

export interface PresumptionFinding extends Presumption {
  /** Respirators whose assigned protection factor is enough, the least protective first; empty where nothing is presumed. */
  readonly respirators: readonly Respirator[];
  /** Lead in the paint is taken for granted, because nobody tested it. */
  readonly leadTakenAsPresent: boolean;
}

export function findPresumption(
  taskIds: readonly string[],
  paintLead: 'tested' | 'presumed' | 'notKnown' | null = null,
): PresumptionFinding {
  const presumed = presumptionFor(taskIds);
  const least = presumed.leastApf?.value;
  return {
    ...presumed,
    respirators: least === undefined ? [] : respirators().filter(({ apf }) => apf.value >= least),
    leadTakenAsPresent: paintLead !== 'tested',
  };
}
