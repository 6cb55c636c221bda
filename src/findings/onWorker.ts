/** The run sheet: what a pump that is on a worker now has drawn so far. */
import { addMinutes } from '#core/calendar.ts';
import { sideOf } from '#core/comparison.ts';
import { volumeNeeded } from '#core/concentration.ts';
import { exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { sampledVolume } from '#core/sampledVolume.ts';
import { wornTime } from '#core/wornTime.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import { methodById } from '#reference/methods.ts';
import { nextLookOf } from './due.ts';
import type { Reason } from './reason.ts';
import { lengthMin, type Run, runOf } from './run.ts';
import { sampleFlowOf } from './sampleFlow.ts';
import { fieldReasons } from './sampleReasons.ts';

export interface OnWorkerFinding {
  readonly sampleId: string;
  readonly workerId: string | null;
  readonly state: 'worn' | 'offRunning' | 'offStopped' | 'doubtful' | 'notPutOn' | 'stopped';
  /** Minutes on the worker with the pump running, up to now. */
  readonly soFarMin: number;
  /** Litres if the flow held; null without a flow before. */
  readonly litresIfHeld: Term | null;
  /** Litres that a result at the reporting limit needs to lie at the share of the action level asked for. */
  readonly litresNeeded: Term | null;
  readonly enough: 'yes' | 'notYet' | 'notKnown';
  /** Minutes still to go at this flow until enough air is drawn. */
  readonly minutesToGoMin: number | null;
  /** The method's largest volume is reached, at this flow, at this instant; null when not known. */
  readonly methodFullAt: string | null;
  readonly nextLookAt: string | null;
  readonly lookOverdue: boolean;
  readonly lastLookAt: string | null;
  readonly reasons: readonly Reason[];
}

export interface OnWorkerAim {
  readonly methodId: string;
  /** Reporting limit asked of the laboratory, µg a sample. */
  readonly reportingLimitUg: number;
  /** Share of the action level that a result at the reporting limit must be able to prove; 1 = the action level itself. */
  readonly actionLevelFraction: number;
}

function stateOf(sample: SampleRecord): OnWorkerFinding['state'] {
  if (!sample.putOn) return 'notPutOn';
  if (sample.stopped) return 'stopped';
  return sample.intervals.at(-1)?.state ?? 'doubtful';
}

/** Minutes so far: while it runs there is no display to witness them, so doubtful stretches do not count. */
function minutesOf(run: Run): Term | null {
  const min = lengthMin(run.sampled);
  if (min <= 0) return null;
  const because = run.sampled.map((s) => s.because);
  return wornTime.of({ d: [recorded('interval', 'min', exactly(min), because)] });
}

/** Volume in which the reporting limit lies at the asked share of the action level; never less than the method's least. */
function neededOf(sample: SampleRecord, book: Book, aim: OnWorkerAim): Term {
  const stateCode = book.sites.get(sample.siteId)?.stateCode ?? '';
  const { set } = limitSetOn(sample.workOn, stateCode);
  const needed = volumeNeeded.of({
    m: recorded('reportingLimit', 'µg', exactly(aim.reportingLimitUg), []),
    L: recorded('actionLevel', 'µg/m³', exactly(set.actionLevel.value), [`limit:${set.id}`]),
    s: recorded('shareOfLimit', '', exactly(aim.actionLevelFraction), []),
  });
  const leastL = methodById(aim.methodId)?.volume?.low ?? null;
  if (leastL === null || exactOf(needed) >= leastL) return needed;
  return recorded('leastVolumeOfMethod', 'L', exactly(leastL), [`method:${aim.methodId}`]);
}

const exactOf = (term: Term): number => (term.estimate.kind === 'exact' ? term.estimate.value : Number.NaN);

/** Now plus the minutes that the rest of the volume takes at this flow. */
const reachedAt = (wantedL: number, drawnL: number, flowLPerMin: number, now: string): string =>
  addMinutes(now, Math.max(0, (wantedL - drawnL) / flowLPerMin));

interface Drawn {
  readonly litres: Term | null;
  readonly flowLPerMin: number | null;
  readonly drawnL: number;
}

function drawnOf(sample: SampleRecord, book: Book, minutes: Term | null): Drawn {
  const ends = sampleFlowOf(sample, book, null, 0).checkBefore?.ends ?? [];
  // of a meter that was found to be off the lower flow: then the worker stays on longer
  const flow = ends.reduce<Term | null>((least, one) => (least && exactOf(least) <= exactOf(one) ? least : one), null);
  if (!flow) return { litres: null, flowLPerMin: null, drawnL: 0 };
  const litres = minutes ? sampledVolume.of({ Q: flow, t: minutes }) : null;
  return { litres, flowLPerMin: exactOf(flow), drawnL: litres ? exactOf(litres) : 0 };
}

/** `now` is an instant. Throws when the sample is not in the slice. */
export function findOnWorker(sampleId: string, book: Book, now: string, aim: OnWorkerAim | null): OnWorkerFinding {
  const sample = book.samples.get(sampleId);
  if (!sample) throw new Error(`no sample ${sampleId} in this slice of the book`);
  const run = runOf(sample, now);
  const minutes = minutesOf(run);
  const { litres, flowLPerMin, drawnL } = drawnOf(sample, book, minutes);
  const needed = aim ? neededOf(sample, book, aim) : null;
  const known = needed !== null && flowLPerMin !== null && sample.putOn !== null;
  const enough = known && sideOf(drawnL, exactOf(needed)) >= 0;
  const mostL = aim ? (methodById(aim.methodId)?.volume?.high ?? null) : null;
  const nextLookAt = nextLookOf(sample);
  const looks = sample.looks.map(({ at }) => at).sort();
  return {
    sampleId,
    workerId: sample.workerId,
    state: stateOf(sample),
    soFarMin: run.sampledMin,
    litresIfHeld: litres,
    litresNeeded: needed,
    enough: known ? (enough ? 'yes' : 'notYet') : 'notKnown',
    minutesToGoMin: known ? Math.max(0, (exactOf(needed) - drawnL) / flowLPerMin) : null,
    methodFullAt:
      flowLPerMin === null || mostL === null || sample.stopped ? null : reachedAt(mostL, drawnL, flowLPerMin, now),
    nextLookAt,
    lookOverdue: nextLookAt !== null && nextLookAt <= now,
    lastLookAt: looks.at(-1) ?? null,
    reasons: fieldReasons(sample, book),
  };
}
