/** Points of the two curves: the bound against the minutes sampled, and the dust on one filter against its minutes. */
import { axisTo } from '#core/axis.ts';
import { boundOfMinutes, dustOnFilter, minutesForLevel } from '#core/sampleAhead.ts';
import type { CurvePoint, LoadingAhead, SampleAhead } from './aheadFinding.ts';
import { boundOf, highestOf, type Planned } from './aheadLevels.ts';

const cassettesShown = [1, 2, 3, 4] as const;
/** Points of a curve at most, so that a table beside it stays readable. */
const mostPoints = 25;

/** Whole minutes from one to another, both ends in. */
function minutesBetween(fromMin: number, toMin: number): readonly number[] {
  const stepMin = Math.max(5, Math.ceil((toMin - fromMin) / (mostPoints - 2) / 5) * 5);
  const inner: number[] = [];
  for (let at = Math.floor(fromMin / stepMin + 1) * stepMin; at < toMin; at += stepMin) inner.push(at);
  return fromMin < toMin ? [fromMin, ...inner, toMin] : [toMin];
}

function boundCurve(plan: Planned, cassettesCount: number, topUgPerM3: number): readonly CurvePoint[] {
  const { reportingLimitUg: R, flowLPerMin: Q, shiftMin: T } = plan;
  const parts = { n: cassettesCount, R, Q, T };
  const fromMin = minutesForLevel.compute({ ...parts, L: topUgPerM3 });
  if (fromMin > T) return [];
  return minutesBetween(fromMin, T).map((t) => ({ durationMin: t, value: boundOfMinutes.compute({ ...parts, t }) }));
}

function loadCurve(plan: Planned, { dustMgPerM3: D, maxLoadMg }: LoadingAhead) {
  const lastMin = plan.sampledMin / plan.cassettesCount;
  const at = (t: number): CurvePoint => ({
    durationMin: t,
    value: t === 0 ? 0 : dustOnFilter.compute({ Q: plan.flowLPerMin, D, t }),
  });
  const points = minutesBetween(0, lastMin).map(at);
  return { points, loadAxisMg: axisTo(Math.max(maxLoadMg, points.at(-1)?.value ?? 0)) };
}

/** The axis reaches over the PEL and over what the plan itself leaves open. */
export function curvesOf(plan: Planned, pelUgPerM3: number, loading: LoadingAhead | null): SampleAhead['curves'] {
  const boundAxisUgPerM3 = axisTo(Math.max(pelUgPerM3, highestOf(boundOf(plan))) * 1.1);
  return {
    bound: cassettesShown.map((cassettesCount) => ({
      cassettesCount,
      points: boundCurve(plan, cassettesCount, boundAxisUgPerM3.maximum),
    })),
    boundAxisUgPerM3,
    minutesAxisMin: axisTo(plan.shiftMin),
    load: loading && loadCurve(plan, loading),
  };
}
