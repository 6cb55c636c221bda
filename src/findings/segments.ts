/**
 * Every minute of a worker's day, one after the other: sampled, away from the lead area, the same as a sample, or unknown. A minute
 * is the most that is known of it: the sample first, then what somebody said of it with a reason, then what the run says.
 */
import { epochMsToInstant, instantToEpochMs } from '#core/calendar.ts';
import { lowerOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import type { WorkdayRecord } from '#records/book.ts';
import { type Reason, reason } from './reason.ts';
import type { Run, Stretch } from './run.ts';
import type { Segment } from './workday.ts';

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

interface Explained extends Stretch {
  readonly as: 'away' | 'sameAs' | 'unknown';
  readonly sampleId: string | null;
}

interface Piece {
  readonly fromMs: number;
  readonly toMs: number;
}

export interface DaySegments {
  readonly segments: readonly Segment[];
  readonly reasons: readonly Reason[];
}

const msPerMin = 60_000;
const covers = (s: Piece, atMs: number): boolean => s.fromMs <= atMs && atMs < s.toMs;

function piecesOf(day: WorkdayRecord): Piece[] {
  return (day.pieces ?? [])
    .map(({ startedAt, endedAt }) => ({ fromMs: instantToEpochMs(startedAt), toMs: instantToEpochMs(endedAt) }))
    .filter(({ fromMs, toMs }) => toMs > fromMs);
}

/** What somebody said of minutes, checked: without a reason, or the same as a sample that shows nothing, it stays unknown. */
function explainedOf(day: WorkdayRecord, samples: readonly SampleOfDay[], reasons: Reason[]): Explained[] {
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

type Known = Pick<Segment, 'as' | 'sampleId' | 'reason'> & { readonly because: string };

class Sweep {
  readonly overlaps = new Set<string>();
  private readonly samples: readonly SampleOfDay[];
  private readonly explained: readonly Explained[];

  constructor(samples: readonly SampleOfDay[], explained: readonly Explained[]) {
    this.samples = samples;
    this.explained = explained;
  }

  /** Two pumps on one worker at one time: the higher of the two stands for the minute. */
  private sampledAt(atMs: number): Known | null {
    let found: Known | null = null;
    let highest = Number.NEGATIVE_INFINITY;
    for (const sample of this.samples) {
      if (sample.lost) continue;
      const stretch = sample.run.sampled.find((s) => covers(s, atMs));
      if (!stretch) continue;
      if (found?.sampleId) for (const id of [found.sampleId, sample.sampleId]) this.overlaps.add(id);
      const value = sample.protective ? lowerOf(sample.protective.estimate) : Number.NEGATIVE_INFINITY;
      if (found && value <= highest) continue;
      highest = value;
      found = { as: 'sampled', sampleId: sample.sampleId, reason: null, because: stretch.because };
    }
    return found;
  }

  private awayAt(atMs: number): Known | null {
    for (const { run } of this.samples) {
      const stretch = run.away.find((s) => covers(s, atMs));
      if (stretch) return { as: 'away', sampleId: null, reason: stretch.note, because: stretch.because };
    }
    return null;
  }

  at(atMs: number): Known {
    const sampled = this.sampledAt(atMs);
    if (sampled) return sampled;
    const said = this.explained.findLast((s) => covers(s, atMs));
    if (said) return { as: said.as, sampleId: said.sampleId, reason: said.note, because: said.because };
    return this.awayAt(atMs) ?? { as: 'unknown', sampleId: null, reason: null, because: '' };
  }
}

const sameKind = (a: Known, b: Known): boolean =>
  a.as === b.as &&
  a.sampleId === b.sampleId &&
  a.reason === b.reason &&
  (a.as === 'sampled' || a.because === b.because);

function outside(pieces: readonly Piece[], samples: readonly SampleOfDay[]): number {
  let ms = 0;
  for (const { run } of samples)
    for (const { fromMs, toMs } of run.sampled) {
      const inside = pieces.reduce(
        (sum, p) => sum + Math.max(0, Math.min(p.toMs, toMs) - Math.max(p.fromMs, fromMs)),
        0,
      );
      ms += Math.max(0, toMs - fromMs - inside);
    }
  return ms / msPerMin;
}

/** The segments of a day, in order; `why` names what is wrong with how its minutes were explained. */
export function segmentsOf(day: WorkdayRecord, samples: readonly SampleOfDay[]): DaySegments {
  const reasons: Reason[] = [];
  const pieces = piecesOf(day);
  const explained = explainedOf(day, samples, reasons);
  const runs = samples.flatMap(({ run }) => [...run.sampled, ...run.unsampled]);
  const domain: Piece[] = [
    ...pieces,
    ...runs,
    ...(pieces.length > 0 ? [] : samples.flatMap(({ run }) => [...run.away, ...run.off])),
  ];
  const cuts = [...domain, ...explained, ...samples.flatMap(({ run }) => run.away)].flatMap((s) => [s.fromMs, s.toMs]);
  const edges = [...new Set(cuts)].sort((a, b) => a - b);
  const sweep = new Sweep(samples, explained);
  const segments: Segment[] = [];
  let open: { from: number; to: number; known: Known } | null = null;
  const close = (): void => {
    if (open) segments.push(segmentFrom(open.from, open.to, open.known, samples));
    open = null;
  };
  for (let i = 0; i + 1 < edges.length; i++) {
    const from = edges[i] ?? 0;
    const to = edges[i + 1] ?? from;
    if (!domain.some((piece) => covers(piece, from))) {
      close();
      continue;
    }
    const known = sweep.at(from);
    const before = open as { from: number; to: number; known: Known } | null;
    if (before && before.to === from && sameKind(before.known, known)) {
      open = { from: before.from, to, known };
      continue;
    }
    close();
    open = { from, to, known };
  }
  close();
  if (sweep.overlaps.size > 0) reasons.push(reason('samplesOverlap', [], { samplesCount: sweep.overlaps.size }));
  if (pieces.length > 0) {
    const outsideMin = outside(pieces, samples);
    if (outsideMin > 0) reasons.push(reason('sampledOutsideHours', [], { outsideMin }));
  }
  return { segments, reasons };
}

function segmentFrom(fromMs: number, toMs: number, known: Known, samples: readonly SampleOfDay[]): Segment {
  const sample = samples.find(({ sampleId }) => sampleId === known.sampleId);
  return {
    fromAt: epochMsToInstant(fromMs),
    toAt: epochMsToInstant(toMs),
    durationMin: (toMs - fromMs) / msPerMin,
    as: known.as,
    sampleId: known.sampleId,
    reason: known.reason,
    concentration: sample?.judged ?? null,
    because: known.because === '' ? [] : [known.because],
  };
}

export const minutesAs = (segments: readonly Segment[], as: Segment['as']): number =>
  segments.reduce((sum, segment) => (segment.as === as ? sum + segment.durationMin : sum), 0);
