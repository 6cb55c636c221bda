/** What it would take for the day's bound to come below a level, and the honest answer where no time suffices. */
import { sideOf } from '#core/comparison.ts';
import { exactly, upperOf } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { boundOfMinutes, flowForLevel, minutesForLevel, reportingLimitForLevel } from '#core/sampleAhead.ts';
import type { Method } from '#reference/methods.ts';
import type { ToComeBelow } from './aheadFinding.ts';

/** What was planned, as numbers. */
export interface Planned {
  readonly reportingLimitUg: number;
  readonly flowLPerMin: number;
  readonly shiftMin: number;
  readonly sampledMin: number;
  readonly cassettesCount: number;
  /** Minutes after which a filter holds all that the method lets it, at the dust guessed; left out: not known. */
  readonly lastsMin?: number;
}

const term = {
  n: (count: number): Term => recorded('cassettes', '', exactly(count), []),
  R: (ug: number): Term => recorded('reportingLimit', 'µg', exactly(ug), []),
  Q: (lPerMin: number): Term => recorded('averageFlow', 'L/min', exactly(lPerMin), []),
  T: (min: number): Term => recorded('minutesOfShift', 'min', exactly(min), []),
  t: (min: number): Term => recorded('minutesSampled', 'min', exactly(min), []),
  L: (level: number): Term => recorded('levelToStayUnder', 'µg/m³', exactly(level), []),
};
export const termsOf = (plan: Planned) => ({
  n: term.n(plan.cassettesCount),
  R: term.R(plan.reportingLimitUg),
  Q: term.Q(plan.flowLPerMin),
  T: term.T(plan.shiftMin),
  t: term.t(plan.sampledMin),
});

export const boundOf = (plan: Planned): Term => boundOfMinutes.of(termsOf(plan));

export const highestOf = ({ estimate }: Term): number => upperOf(estimate);

/** Minutes that n cassettes may be on together: by the method's volumes, until their filters are full, and no longer than the shift. */
function windowOf({ cassettesCount, flowLPerMin, shiftMin, lastsMin }: Planned, method: Method | undefined) {
  const { low = null, high = null } = method?.volume ?? {};
  const at = (volumeL: number): number => (volumeL * cassettesCount) / flowLPerMin;
  const ends = [shiftMin, ...(high === null ? [] : [at(high)])];
  if (lastsMin !== undefined) ends.push(lastsMin * cassettesCount);
  return { leastMin: low === null ? 0 : at(low), mostMin: Math.min(...ends) };
}

const flowAllowed = (flowLPerMin: number, method: Method | undefined): boolean => {
  const { low = null, high = null } = method?.flow ?? {};
  return (low === null || flowLPerMin >= low) && (high === null || flowLPerMin <= high);
};

/** Least whole minutes with which the bound lies under the level, not at it; null where there are none. */
function wholeMinutes(plan: Planned, level: number, method: Method | undefined): number | null {
  if (!flowAllowed(plan.flowLPerMin, method)) return null;
  const { cassettesCount: n, reportingLimitUg: R, flowLPerMin: Q, shiftMin: T } = plan;
  const { leastMin, mostMin } = windowOf(plan, method);
  const first = Math.ceil(Math.max(minutesForLevel.compute({ n, R, Q, T, L: level }), leastMin));
  // a shift of part minutes ends with the part: sampled whole, it has all that it has
  const isEnough = (t: number): boolean =>
    t >= leastMin && t <= mostMin && sideOf(boundOfMinutes.compute({ n, R, Q, T, t }), level) < 0;
  return [first, first + 1, mostMin].find(isEnough) ?? null;
}

function showsAsPlanned(plan: Planned, level: number, method: Method | undefined): boolean {
  const { leastMin, mostMin } = windowOf(plan, method);
  const inMethod = flowAllowed(plan.flowLPerMin, method) && plan.sampledMin >= leastMin && plan.sampledMin <= mostMin;
  return inMethod && sideOf(highestOf(boundOf(plan)), level) < 0;
}

export function toComeBelow(plan: Planned, level: number, method: Method | undefined): ToComeBelow {
  const { n, R, Q, T } = termsOf(plan);
  const L = term.L(level);
  const asPlanned = showsAsPlanned(plan, level, method);
  const minutesNeededMin = wholeMinutes(plan, level, method);
  const flowNeeded = flowForLevel.of({ n, R, L });
  const most = method?.flow?.high ?? null;
  return {
    levelUgPerM3: level,
    couldShow: asPlanned ? 'yes' : minutesNeededMin === null ? 'no' : 'withOtherMinutes',
    minutesNeededMin,
    oneMinutesNeededMin: wholeMinutes({ ...plan, cassettesCount: 1 }, level, method),
    minutesWorking: minutesForLevel.of({ n, R, Q, T, L }),
    reportingLimitNeeded: reportingLimitForLevel.of({ n, Q, L }),
    flowNeeded,
    flowNeededAllowed: most === null ? null : sideOf(highestOf(flowNeeded), most) < 0,
  };
}
