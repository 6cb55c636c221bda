/** The higher of what the figures need and of what is presumed; where nothing bounds the figure, the tier stands, or the highest one. */
import type { Term } from '#core/formula.ts';
import type { Tier } from '#reference/presumption.ts';
import type { Measurement } from '../measuring/measurement.ts';
import { highestPresumedApf, type PresumedFactor } from './presumedFactor.ts';
import type { NeededFactor } from './protectionFactor.ts';

export interface DecidedFactor {
  readonly floorApf: number | null;
  /** `noFactor`: the rule gives no bound, so that none can be named; `tier`: the factor stands on a tier. */
  readonly unbounded: 'no' | 'tier' | 'noFactor';
  readonly exactlyAt: NeededFactor['exactlyAt'];
  readonly apfByRule: number | null;
  readonly byResult: boolean;
}

export interface FactorsKnown {
  readonly known: NeededFactor;
  readonly presumed: PresumedFactor | null;
  readonly day: Term | null;
  readonly task: Term | null;
  readonly measurement: Measurement | null;
  readonly tier: Tier;
}

const isOpen = (term: Term | null): boolean => term?.estimate.kind === 'atLeast';

function unboundedBy({ presumed, measurement, day }: FactorsKnown, open: boolean): DecidedFactor['unbounded'] {
  const nothingBounds = open || measurement === null || day === null || measurement.blocks.length > 0;
  if (presumed !== null && !presumed.bounded && nothingBounds) return 'noFactor';
  return open ? 'tier' : 'no';
}

/** Of a task that the list does not name, an *at least* figure that reaches the action level is read most carefully. */
function tierFactor({ presumed, measurement, tier }: FactorsKnown, open: boolean): number | null {
  if (presumed !== null) return presumed.apf;
  const reaches = open && measurement !== null && measurement.band !== 'open';
  return reaches && tier === 'none' ? highestPresumedApf() : null;
}

export function decidedFactor(all: FactorsKnown): DecidedFactor {
  const { known, day, task } = all;
  const open = isOpen(day) || isOpen(task);
  const fromTier = tierFactor(all, open);
  const byFigure = known.apf ?? 0;
  const higher = Math.max(byFigure, fromTier ?? 0);
  const byResult = fromTier === null ? day !== null || task !== null : byFigure > fromTier;
  return {
    floorApf: higher > 0 ? higher : null,
    unbounded: unboundedBy(all, open),
    exactlyAt: byResult ? known.exactlyAt : null,
    apfByRule: byResult ? known.apfByRule : null,
    byResult,
  };
}
