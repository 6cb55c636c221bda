/**
 * Will this sample prove anything? From method, reporting limit, flow, shift and number of cassettes: what the day's average may be at
 * most if all come back below the limit, and what it would take for less. A plan proves nothing; these are bounds of what it could show.
 */
import { sideOf } from '#core/comparison.ts';
import { concentration } from '#core/concentration.ts';
import { exactly } from '#core/estimate.ts';
import { recorded } from '#core/formula.ts';
import { sampledVolume } from '#core/sampledVolume.ts';
import { dayBound } from '#core/sampleShareOfTwa.ts';
import { limitSetOn } from '#reference/limits.ts';
import { methodById } from '#reference/methods.ts';
import { curvesOf } from './aheadCurves.ts';
import type { SampleAhead, SampleAheadInput } from './aheadFinding.ts';
import { boundOf, type Planned, termsOf, toComeBelow } from './aheadLevels.ts';
import { fullAfterMin, loadingAhead, rangeOf } from './aheadMethod.ts';
import { aheadReasons, blocksOf } from './aheadReasons.ts';

export type {
  AheadReason,
  AheadReasonKey,
  CurvePoint,
  LoadingAhead,
  RangeOfMethod,
  SampleAhead,
  SampleAheadInput,
  ToComeBelow,
} from './aheadFinding.ts';

function refuseNothing(input: SampleAheadInput, sampledMin: number): void {
  const { reportingLimitUg, flowLPerMin, shiftMin, cassettesCount, shareOfActionLevel, dustMgPerM3 } = input;
  const all = { reportingLimitUg, flowLPerMin, shiftMin, sampledMin, cassettesCount, shareOfActionLevel };
  for (const [name, value] of Object.entries(all)) if (!(value > 0)) throw new Error(`${name} is not above zero`);
  if (dustMgPerM3 !== null && !(dustMgPerM3 > 0)) throw new Error('dustMgPerM3 is not above zero');
}

function chargeOf(sampledMin: number, said: number | null): SampleAhead['charge'] {
  const neededHours = sampledMin / 60;
  const enough = said === null ? 'notSaid' : sideOf(said, neededHours) < 0 ? 'no' : 'yes';
  return { neededHours, saidHours: said, enough };
}

/** Throws (a bug) where a quantity is not above zero: forms refuse those before. */
export function sampleAhead(input: SampleAheadInput): SampleAhead {
  const { reportingLimitUg, flowLPerMin, shiftMin, cassettesCount, shareOfActionLevel, actionLevelUgPerM3 } = input;
  const sampledMin = Math.min(input.sampledMin ?? shiftMin, shiftMin);
  refuseNothing(input, sampledMin);
  const method = input.methodId === null ? undefined : methodById(input.methodId);
  const plan: Planned = { reportingLimitUg, flowLPerMin, shiftMin, sampledMin, cassettesCount };
  const { n, R, Q } = termsOf(plan);
  const t = recorded('minutesOfOneCassette', 'min', exactly(sampledMin / cassettesCount), []);
  const volume = sampledVolume.of({ Q, t });
  const volumeL = (sampledMin / cassettesCount) * flowLPerMin;
  const { actionLevel } = limitSetOn(input.on, 'CA').set;
  const loading = loadingAhead(plan, input.dustMgPerM3, method);
  // a filter that is full before the minutes are over shows nothing low, whatever its figures
  const dusty: Planned = loading ? { ...plan, lastsMin: fullAfterMin(loading) } : plan;
  const found = {
    kind: 'ahead' as const,
    input,
    sampledMin,
    dayBound: dayBound.of({ n, R, Q }),
    bound: boundOf(plan),
    boundOfOne: boundOf({ ...plan, cassettesCount: 1 }),
    share: toComeBelow(dusty, shareOfActionLevel * actionLevelUgPerM3, method),
    actionLevel: toComeBelow(dusty, actionLevelUgPerM3, method),
    pel: toComeBelow(dusty, input.pelUgPerM3, method),
    california: { ...toComeBelow(dusty, shareOfActionLevel * actionLevel.value, method), source: actionLevel.source },
    volume,
    leastSeen: concentration.of({ m: R, V: volume }),
    volumeRange: rangeOf(volumeL, method?.volume),
    twaVolumeRange: rangeOf(volumeL, method?.twaVolume),
    flowRange: rangeOf(flowLPerMin, method?.flow),
    loading,
    charge: chargeOf(sampledMin, input.chargeHours ?? null),
  };
  const reasons = aheadReasons(found, method);
  return { ...found, reasons, blocks: blocksOf(reasons), curves: curvesOf(plan, input.pelUgPerM3, loading) };
}
