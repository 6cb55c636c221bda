/**
 * Every minute of a worker's day, one after the other: sampled, away from the lead area, the same as a sample, or unknown. A minute
 * is the most that is known of it: the sample first, then what somebody said of it with a reason, then what the run says.
 */
import { epochMsToInstant } from '#core/calendar.ts';
import { lowerOf } from '#core/estimate.ts';
import type { WorkdayRecord } from '#records/book.ts';
import { type Explained, explainedOf, type SampleOfDay, saidAt } from './explainedMinutes.ts';
import { type Reason, reason } from './reason.ts';
import type { Segment } from './workday.ts';
import { addOutsideHours, type Piece, piecesOf } from './workPieces.ts';

export interface DaySegments {
  readonly segments: readonly Segment[];
  readonly reasons: readonly Reason[];
}

const msPerMin = 60_000;
const covers = (s: Piece, atMs: number): boolean => s.fromMs <= atMs && atMs < s.toMs;

type Known = Pick<Segment, 'as' | 'sampleId' | 'reason'> & { readonly because: string };

class Sweep {
  readonly overlaps = new Set<string>();
  /** Facts of two hands that say different things of the same minutes. */
  readonly differing = new Set<string>();
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
    const said = saidAt(atMs, this.explained, this.samples, this.differing);
    if (said) return { as: said.as, sampleId: said.sampleId, reason: said.note, because: said.because };
    return this.awayAt(atMs) ?? { as: 'unknown', sampleId: null, reason: null, because: '' };
  }
}

const sameKind = (a: Known, b: Known): boolean =>
  a.as === b.as &&
  a.sampleId === b.sampleId &&
  a.reason === b.reason &&
  (a.as === 'sampled' || a.because === b.because);

function add(list: Piece[], more: readonly Piece[]): void {
  for (const one of more) list.push(one);
}

/** What belongs to the day: its hours, and what was worn outside them; without hours, whatever the samples tell. */
function domainOf(pieces: readonly Piece[], samples: readonly SampleOfDay[]): Piece[] {
  const domain = [...pieces];
  for (const { run } of samples) {
    add(domain, run.sampled);
    add(domain, run.unsampled);
    if (pieces.length > 0) continue;
    add(domain, run.away);
    add(domain, run.off);
  }
  return domain;
}

/** Every moment at which something may change, in order, each once. */
function edgesOf(domain: readonly Piece[], explained: readonly Explained[], samples: readonly SampleOfDay[]): number[] {
  const all = [...domain, ...explained];
  for (const { run } of samples) add(all, run.away);
  const edges: number[] = [];
  for (const { fromMs, toMs } of all) edges.push(fromMs, toMs);
  return edges.sort((a, b) => a - b).filter((edge, i) => edge !== edges[i - 1]);
}

interface Open {
  readonly from: number;
  readonly to: number;
  readonly known: Known;
}

/** Neighbours of one kind become one segment; a minute outside the day ends the one before. */
function stretchesOfDay(domain: readonly Piece[], edges: readonly number[], sweep: Sweep): Open[] {
  const found: Open[] = [];
  let from = edges[0] ?? 0;
  for (const to of edges) {
    const last = found.at(-1);
    if (to > from && domain.some((piece) => covers(piece, from))) {
      const known = sweep.at(from);
      if (last && last.to === from && sameKind(last.known, known))
        found[found.length - 1] = { from: last.from, to, known };
      else found.push({ from, to, known });
    }
    from = to;
  }
  return found;
}

/** The segments of a day, in order; `reasons` names what is wrong with how its minutes were explained. */
export function segmentsOf(day: WorkdayRecord, samples: readonly SampleOfDay[]): DaySegments {
  const reasons: Reason[] = [];
  const pieces = piecesOf(day, reasons);
  const explained = explainedOf(day, samples, reasons);
  const domain = domainOf(pieces, samples);
  const sweep = new Sweep(samples, explained);
  const stretches = stretchesOfDay(domain, edgesOf(domain, explained, samples), sweep);
  if (sweep.overlaps.size > 0) reasons.push(reason('samplesOverlap', [], { samplesCount: sweep.overlaps.size }));
  if (sweep.differing.size > 0) reasons.push(reason('explanationsDiffer', [...sweep.differing].sort()));
  addOutsideHours(pieces, samples, day, reasons);
  return { segments: stretches.map(({ from, to, known }) => segmentFrom(from, to, known, samples)), reasons };
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
