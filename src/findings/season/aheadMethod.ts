/** What the method says of the plan: its ranges, and how long one filter lasts at a guessed level of dust. */
import { sideOf } from '#core/comparison.ts';
import { exactly } from '#core/estimate.ts';
import { filterLoading } from '#core/filterLoading.ts';
import { recorded } from '#core/formula.ts';
import type { Method } from '#reference/methods.ts';
import type { LoadingAhead, RangeOfMethod } from './aheadFinding.ts';
import { boundOf, highestOf, type Planned, termsOf } from './aheadLevels.ts';

/** null: the method states no range. */
export function rangeOf(value: number, stated: Method['volume'] | Method['flow'] | undefined): RangeOfMethod | null {
  if (!stated) return null;
  const { low, high, source } = stated;
  const stands = low !== null && value < low ? 'below' : high !== null && value > high ? 'above' : 'inside';
  return { low, high, source, stands };
}

/** Without the last digits of binary fractions. */
export const fullAfterMin = ({ minutesToLimit }: Pick<LoadingAhead, 'minutesToLimit'>): number =>
  Number(highestOf(minutesToLimit).toPrecision(12));

export function loadingAhead(
  plan: Planned,
  dustMgPerM3: number | null,
  method: Method | undefined,
): LoadingAhead | null {
  const load = method?.maxLoad ?? null;
  if (dustMgPerM3 === null || load === null) return null;
  const minutesToLimit = filterLoading.of({
    M: recorded('mostDustOnFilter', 'mg', exactly(load.value), [`limit:${method?.id}`]),
    Q: termsOf(plan).Q,
    D: recorded('dustInAir', 'mg/m³', exactly(dustMgPerM3), []),
  });
  const fullMin = highestOf(minutesToLimit);
  const changes = sideOf(fullMin, plan.sampledMin / plan.cassettesCount) < 0;
  // part minutes are not used: the filter is changed before it is full
  const lastsMin = Math.max(1, Math.floor(fullAfterMin({ minutesToLimit })));
  const cassettesCount = changes ? Math.ceil(plan.sampledMin / lastsMin) : plan.cassettesCount;
  return {
    dustMgPerM3,
    maxLoadMg: load.value,
    source: load.source,
    minutesToLimit,
    changeAfterMin: changes ? lastsMin : null,
    cassettesCount,
    bound: boundOf({ ...plan, cassettesCount }),
  };
}
