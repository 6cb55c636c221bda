/** What somebody said of minutes that no sample covers: away from the lead area, the same as a sample, or not known. */
import { instantToEpochMs } from '#core/calendar.ts';
import { lowerOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import type { WorkdayRecord } from '#records/book.ts';
import { writerOf } from '#records/chain.ts';
import { type Reason, reason } from './reason.ts';
import type { Run, Stretch } from './run.ts';

const msPerMin = 60_000;

/** What the day needs of a sample. */
export interface SampleOfDay {
  readonly sampleId: string;
  readonly sampleNumber: string;
  readonly run: Run;
  readonly judged: Term | null;
  readonly protective: Term | null;
  /** Voided and without a result: its minutes prove nothing and are not sampled. */
  readonly lost: boolean;
}

export interface Explained extends Stretch {
  readonly as: 'away' | 'sameAs' | 'unknown';
  readonly sampleId: string | null;
}

/** What somebody said of minutes, checked: without a reason, or the same as a sample that shows nothing, it stays unknown. */
export function explainedOf(day: WorkdayRecord, samples: readonly SampleOfDay[], reasons: Reason[]): Explained[] {
  const explained: Explained[] = [];
  for (const said of day.explained) {
    const fromMs = instantToEpochMs(said.fromAt);
    const toMs = instantToEpochMs(said.toAt);
    if (toMs <= fromMs) continue;
    const base = { fromMs, toMs, because: said.factId, note: said.reason };
    const like = said.as === 'sameAs' ? samples.find(({ sampleId }) => sampleId === said.sampleId) : undefined;
    const problem = problemWith(said.as, said.reason, like);
    if (problem) reasons.push(reason(problem, [said.factId], { durationMin: (toMs - fromMs) / msPerMin }));
    explained.push({ ...base, as: problem ? 'unknown' : said.as, sampleId: problem ? null : (like?.sampleId ?? null) });
  }
  return explained;
}

function problemWith(
  as: Explained['as'],
  why: string | null,
  like: SampleOfDay | undefined,
): 'awayWithoutReason' | 'sameAsWithoutReason' | 'sameAsNotUsable' | null {
  if (as === 'unknown') return null;
  if (why === null) return as === 'away' ? 'awayWithoutReason' : 'sameAsWithoutReason';
  if (as === 'sameAs' && (!like || like.lost || like.run.sampledMin <= 0)) return 'sameAsNotUsable';
  return null;
}

/** How much lead the words leave, at least: nothing known is more than nothing breathed. */
function leavesAtLeast({ as, sampleId }: Explained, samples: readonly SampleOfDay[]): number {
  if (as !== 'sameAs') return as === 'away' ? -2 : -1;
  const like = samples.find((sample) => sample.sampleId === sampleId);
  return like?.protective ? lowerOf(like.protective.estimate) : 0;
}

const differ = (a: Explained, b: Explained): boolean => a.as !== b.as || a.sampleId !== b.sampleId;

/**
 * What was said of one moment. Whoever says something later puts their own words right; two hands that differ are a doubt, and their
 * facts go into `differing`: then what leaves the most lead stands.
 */
export function saidAt(
  atMs: number,
  explained: readonly Explained[],
  samples: readonly SampleOfDay[],
  differing: Set<string>,
): Explained | null {
  const covering = explained.filter(({ fromMs, toMs }) => fromMs <= atMs && atMs < toMs);
  if (covering.length < 2) return covering[0] ?? null;
  const latest = new Map<string, Explained>();
  for (const said of covering) latest.set(writerOf(said.because), said);
  let found: Explained | null = null;
  for (const said of latest.values()) {
    if (found && differ(said, found)) {
      differing.add(found.because);
      differing.add(said.because);
    }
    if (!found || leavesAtLeast(said, samples) > leavesAtLeast(found, samples)) found = said;
  }
  return found;
}
