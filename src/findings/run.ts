/**
 * The minutes of one sample: on the worker with the pump running, as the record and the pump's own minutes agree. Extra running
 * off the worker counts as clean air drawn; fewer pump minutes leave the rest unsampled (design.md section 4, item 4).
 */
import { epochMsToInstant, instantToEpochMs } from '#core/calendar.ts';
import type { Interval, SampleRecord } from '#records/book.ts';
import { pumpSurplusMin, pumpWitnessMin } from './practice.ts';
import { type Reason, reason } from './reason.ts';

const msPerMin = 60_000;

/** A stretch of time in milliseconds since 1970: arithmetic in whole milliseconds is exact. */
export interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
  readonly because: string;
  readonly note: string | null;
}

export interface Run {
  /** On the worker and sampled. */
  readonly sampled: readonly Stretch[];
  /** On the worker, the pump's run not shown. */
  readonly unsampled: readonly Stretch[];
  /** Off the worker and away from the lead area, with the reason given. */
  readonly away: readonly Stretch[];
  /** Off the worker, not said to be away from the lead area. */
  readonly off: readonly Stretch[];
  readonly sampledMin: number;
  readonly unsampledMin: number;
  readonly recordedRunMin: number;
  readonly pumpRunMin: number | null;
  readonly running: boolean;
  readonly reasons: readonly Reason[];
}

export const lengthMin = (stretches: readonly Stretch[]): number => {
  let ms = 0;
  for (const { fromMs, toMs } of stretches) ms += toMs - fromMs;
  return ms / msPerMin;
};

/** Takes minutes away from the end of the stretches, backwards: a pump that stopped early stopped late in the day. */
function cutFromEnd(stretches: readonly Stretch[], min: number): { kept: Stretch[]; cut: Stretch[]; leftMin: number } {
  const kept = [...stretches];
  const cut: Stretch[] = [];
  let leftMs = Math.round(min * msPerMin);
  while (leftMs > 0) {
    const last = kept.pop();
    if (!last) break;
    const length = last.toMs - last.fromMs;
    if (length <= leftMs) {
      cut.unshift(last);
      leftMs -= length;
      continue;
    }
    kept.push({ ...last, toMs: last.toMs - leftMs });
    cut.unshift({ ...last, fromMs: last.toMs - leftMs });
    leftMs = 0;
  }
  return { kept, cut, leftMin: leftMs / msPerMin };
}

/**
 * Doubtful stretches of which the display shows nothing: the pump ran, but with the tubing off (or another fault than standing still)
 * nobody knows of air through the filter. They go on across the edge of the lead area until the pump is set right.
 */
function airlessOf({ faults, intervals }: SampleRecord): ReadonlySet<Interval> {
  if (faults.length === 0) return noInterval;
  const found = new Set<Interval>();
  const because = new Set(faults.flatMap(({ fault, factId }) => (withoutAir.has(fault) ? [factId] : [])));
  if (because.size === 0) return found;
  let before: Interval | null = null;
  for (const interval of intervals) {
    const goesOn = before !== null && found.has(before) && before.toAt === interval.fromAt;
    if (interval.state === 'doubtful' && (goesOn || because.has(interval.becauseFactId))) found.add(interval);
    before = interval;
  }
  return found;
}

const none: readonly Stretch[] = [];
const noInterval: ReadonlySet<Interval> = new Set();
const withoutAir: ReadonlySet<string> = new Set(['tubingOff', 'other']);

function stretchesOf(
  intervals: readonly Interval[],
  nowMs: number | null,
  wanted: (i: Interval) => boolean,
): Stretch[] {
  const found: Stretch[] = [];
  for (const interval of intervals) {
    if (!wanted(interval)) continue;
    const fromMs = instantToEpochMs(interval.fromAt);
    const toMs = interval.toAt === null ? nowMs : instantToEpochMs(interval.toAt);
    if (toMs === null || toMs <= fromMs) continue;
    found.push({ fromMs, toMs, because: interval.becauseFactId, note: interval.reason });
  }
  return found.sort(byTime);
}

interface Witness {
  readonly min: number;
  readonly because: string;
}

/** The pump's own minutes: from its display at the stop, else from a fault that ended the run. */
function witnessOf(sample: SampleRecord): Witness | null {
  const { stopped, faults } = sample;
  if (stopped && stopped.pumpMin !== null) return { min: stopped.pumpMin, because: stopped.factId };
  const last = faults.at(-1);
  if (!last || last.pumpMin === null) return null;
  const ranOn = sample.intervals.some(({ state, fromAt }) => state !== 'offStopped' && fromAt >= last.at);
  return ranOn ? null : { min: last.pumpMin, because: last.factId };
}

function witnessReasons(run: { recordedMin: number; doubtfulMin: number }, sample: SampleRecord): Reason[] {
  if (!sample.stopped) return [];
  const witness = witnessOf(sample);
  if (!witness) return [reason('pumpMinutesBlank', [sample.stopped.factId])];
  const params = { recordedMin: run.recordedMin, pumpMin: witness.min };
  if (witness.min > run.recordedMin + pumpSurplusMin.value)
    return [reason('pumpMinutesNotOfRun', [witness.because], params)];
  if (witness.min > run.recordedMin + pumpWitnessMin.value)
    return [reason('pumpMinutesMore', [witness.because], params)];
  const sure = run.recordedMin - run.doubtfulMin - pumpWitnessMin.value;
  return witness.min < sure ? [reason('pumpMinutesFewer', [witness.because], params)] : [];
}

const isWorn = ({ state }: Interval): boolean => state === 'worn';
const isDoubtful = ({ state }: Interval): boolean => state === 'doubtful';
const isOffRunning = ({ state }: Interval): boolean => state === 'offRunning';
const isOff = ({ state }: Interval): boolean => state === 'offRunning' || state === 'offStopped';
const isAway = (i: Interval): boolean => isOff(i) && i.awayFromLead && i.reason !== null;
const isOffHere = (i: Interval): boolean => isOff(i) && !isAway(i);
const byTime = (a: Stretch, b: Stretch): number => a.fromMs - b.fromMs;

/**
 * Minutes on the worker that no running pump stands behind. A display that shows more than the record may hide a stop: it vouches for
 * no doubtful minute.
 */
function missingOf(witness: Witness | null, recordedMin: number, doubtfulMin: number, onWorkerMin: number): number {
  if (!witness || witness.min > recordedMin + pumpWitnessMin.value) return doubtfulMin;
  if (witness.min >= recordedMin - pumpWitnessMin.value) return 0;
  return Math.min(recordedMin - witness.min, onWorkerMin);
}

/** `nowAt` closes what still runs (the run sheet); null leaves it out. */
export function runOf(sample: SampleRecord, nowAt: string | null): Run {
  const nowMs = nowAt === null ? null : instantToEpochMs(nowAt);
  const { intervals } = sample;
  const worn = stretchesOf(intervals, nowMs, isWorn);
  const airlessOnes = airlessOf(sample);
  const vouchable = airlessOnes.size === 0 ? isDoubtful : (i: Interval) => isDoubtful(i) && !airlessOnes.has(i);
  const doubtful = stretchesOf(intervals, nowMs, vouchable);
  const airless = airlessOnes.size === 0 ? none : stretchesOf(intervals, nowMs, (i) => airlessOnes.has(i));
  const airlessMin = lengthMin(airless);
  const [wornMin, doubtfulMin] = [lengthMin(worn), lengthMin(doubtful)];
  const recordedMin = wornMin + doubtfulMin + airlessMin + lengthMin(stretchesOf(intervals, nowMs, isOffRunning));
  const witness = witnessOf(sample);

  const ofDoubtful = cutFromEnd(doubtful, missingOf(witness, recordedMin, doubtfulMin, wornMin + doubtfulMin));
  const ofWorn = cutFromEnd(worn, ofDoubtful.leftMin);
  const sampled = [...ofWorn.kept, ...ofDoubtful.kept].sort(byTime);
  const unsure = [...ofDoubtful.cut, ...airless];
  const unsampled = [...ofWorn.cut, ...unsure].sort(byTime);

  const unsureMin = lengthMin(unsure);
  const reasons = witnessReasons({ recordedMin, doubtfulMin: doubtfulMin + airlessMin }, sample);
  const because = unsure.map((s) => s.because);
  if (unsureMin > 0) reasons.push(reason('runNotSure', because, { unsureMin }));
  return {
    sampled,
    unsampled,
    away: stretchesOf(intervals, nowMs, isAway),
    off: stretchesOf(intervals, nowMs, isOffHere),
    sampledMin: lengthMin(sampled),
    unsampledMin: lengthMin(unsampled),
    recordedRunMin: recordedMin,
    pumpRunMin: witness?.min ?? null,
    running: intervals.some((i) => i.toAt === null && i.state !== 'offStopped'),
    reasons,
  };
}

export const stretchAt = ({ fromMs, toMs }: Stretch): { fromAt: string; toAt: string } => ({
  fromAt: epochMsToInstant(fromMs),
  toAt: epochMsToInstant(toMs),
});
