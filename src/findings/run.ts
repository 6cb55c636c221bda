/**
 * The minutes of one sample: on the worker with the pump running, as the record and the pump's own minutes agree. Extra running
 * off the worker counts as clean air drawn; fewer pump minutes leave the rest unsampled (design.md section 4, item 4).
 */
import { epochMsToInstant, instantToEpochMs } from '#core/calendar.ts';
import type { Interval, SampleRecord } from '#records/book.ts';
import { pumpWitnessMin } from './practice.ts';
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
  return found.sort((a, b) => a.fromMs - b.fromMs);
}

/** The pump's own minutes: from its display at the stop, else from a fault that ended the run. */
function witnessOf(sample: SampleRecord): { min: number; because: string } | null {
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
  if (witness.min > run.recordedMin + pumpWitnessMin.value)
    return [reason('pumpMinutesMore', [witness.because], params)];
  const sure = run.recordedMin - run.doubtfulMin - pumpWitnessMin.value;
  return witness.min < sure ? [reason('pumpMinutesFewer', [witness.because], params)] : [];
}

/** `nowAt` closes what still runs (the run sheet); null leaves it out. */
export function runOf(sample: SampleRecord, nowAt: string | null): Run {
  const nowMs = nowAt === null ? null : instantToEpochMs(nowAt);
  const part = (wanted: (i: Interval) => boolean): Stretch[] => stretchesOf(sample.intervals, nowMs, wanted);
  const worn = part((i) => i.state === 'worn');
  const doubtful = part((i) => i.state === 'doubtful');
  const offRunning = part((i) => i.state === 'offRunning');
  const isAway = (i: Interval): boolean => i.awayFromLead && i.reason !== null;
  const off = (i: Interval): boolean => i.state === 'offRunning' || i.state === 'offStopped';
  const [wornMin, doubtfulMin, offMin] = [lengthMin(worn), lengthMin(doubtful), lengthMin(offRunning)];
  const recordedMin = wornMin + doubtfulMin + offMin;
  const witness = witnessOf(sample);

  let missingMin = 0;
  if (!witness) missingMin = doubtfulMin;
  else if (witness.min < recordedMin - pumpWitnessMin.value)
    missingMin = Math.min(recordedMin - witness.min, wornMin + doubtfulMin);
  const ofDoubtful = cutFromEnd(doubtful, missingMin);
  const ofWorn = cutFromEnd(worn, ofDoubtful.leftMin);
  const byTime = (a: Stretch, b: Stretch): number => a.fromMs - b.fromMs;
  const sampled = [...ofWorn.kept, ...ofDoubtful.kept].sort(byTime);
  const unsampled = [...ofWorn.cut, ...ofDoubtful.cut].sort(byTime);

  const unsureMin = lengthMin(ofDoubtful.cut);
  const reasons = witnessReasons({ recordedMin, doubtfulMin }, sample);
  if (unsureMin > 0)
    reasons.push(
      reason(
        'runNotSure',
        ofDoubtful.cut.map((s) => s.because),
        { unsureMin },
      ),
    );
  return {
    sampled,
    unsampled,
    away: part((i) => off(i) && isAway(i)),
    off: part((i) => off(i) && !isAway(i)),
    sampledMin: lengthMin(sampled),
    unsampledMin: lengthMin(unsampled),
    recordedRunMin: recordedMin,
    pumpRunMin: witness?.min ?? null,
    running: sample.intervals.some((i) => i.toAt === null && i.state !== 'offStopped'),
    reasons,
  };
}

export const stretchAt = ({ fromMs, toMs }: Stretch): { fromAt: string; toAt: string } => ({
  fromAt: epochMsToInstant(fromMs),
  toAt: epochMsToInstant(toMs),
});
