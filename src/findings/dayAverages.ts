/** From segments to the day's averages: the one shown, the protective one, and the one with the wall deposit that is left open. */
import { atLeast, exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { twa8 } from '#core/twa.ts';
import { wallDepositPct } from './practice.ts';
import type { Reason } from './reason.ts';
import type { SampleFinding } from './sample.ts';
import type { DayAverages } from './standing.ts';
import type { Segment } from './workday.ts';

/** Minutes that carry one concentration: a sample's, those said to be like it, those away, those without a figure. */
export interface Part {
  readonly sample: SampleFinding | null;
  readonly as: 'sampled' | 'away' | 'sameAs' | 'open';
  readonly min: number;
  readonly minutes: Term;
}

/** In the order of the day, so that the order of entry changes no figure. */
export function partsOf(segments: readonly Segment[], samples: readonly SampleFinding[]): Part[] {
  const minByKey = new Map<string, { sample: SampleFinding | null; as: Part['as']; min: number; because: string[] }>();
  for (const segment of segments) {
    const sample = samples.find(({ sampleId }) => sampleId === segment.sampleId) ?? null;
    const as = segment.as === 'unknown' || (segment.as !== 'away' && !sample?.judged) ? 'open' : segment.as;
    const key = as === 'open' || as === 'away' ? as : `${as} ${segment.sampleId}`;
    const part = minByKey.get(key);
    if (part) {
      part.min += segment.durationMin;
      part.because.push(...segment.because);
    } else
      minByKey.set(key, {
        sample: as === 'open' ? null : sample,
        as,
        min: segment.durationMin,
        because: [...segment.because],
      });
  }
  return [...minByKey.values()].map(({ sample, as, min, because }) => ({
    sample,
    as,
    min,
    minutes: recorded(minutesName[as], 'min', exactly(min), because),
  }));
}

const minutesName = {
  sampled: 'minutesSampled',
  away: 'minutesAway',
  sameAs: 'minutesSameAs',
  open: 'minutesUnknown',
} as const;

const nothing = recorded('awayFromLead', 'µg/m³', exactly(0), []);
const unknown = recorded('notKnown', 'µg/m³', atLeast(0), []);

type Figure = (sample: SampleFinding) => Term | null;

function averageOf(parts: readonly Part[], figure: Figure): Term {
  const C = parts.map(({ as, sample }) => (as === 'away' ? nothing : ((sample && figure(sample)) ?? unknown)));
  return twa8.of({ C, t: parts.map(({ minutes }) => minutes) });
}

/** Scales the figure as if the largest share found were on the wall and not in the result. */
function withWall(sample: SampleFinding): Term | null {
  const C = sample.protectiveConcentration;
  if (!C || !sample.wallOpen) return C;
  const factor = 1 / (1 - wallDepositPct.value / 100);
  const { estimate } = C;
  if (estimate.kind !== 'atLeast') {
    const upper = (estimate.kind === 'exact' ? estimate.value : estimate.upper) * factor;
    return recorded(
      'withWallDeposit',
      'µg/m³',
      { kind: 'between', lower: estimate.kind === 'exact' ? estimate.value : estimate.lower, upper },
      [],
    );
  }
  return C;
}

/** Errors of every sample, over its own minutes and those like it together; empty unless the laboratory gave one for each. */
function errorsOf(parts: readonly Part[]): DayAverages['errors'] {
  const minBySample = new Map<SampleFinding, number>();
  for (const { sample, as, min } of parts) {
    if (as === 'away') continue;
    if (!sample?.sae || !sample.protectiveConcentration) return [];
    minBySample.set(sample, (minBySample.get(sample) ?? 0) + min);
  }
  return [...minBySample].flatMap(([{ sae: S, protectiveConcentration: X, because }, min]) =>
    S && X ? [{ S, X, t: recorded('minutesOfSample', 'min', exactly(min), because) }] : [],
  );
}

export function dayAveragesOf(parts: readonly Part[], blocks: readonly Reason[]): DayAverages {
  const known = parts.filter(({ as }) => as !== 'open');
  const wallOpen = known.some(({ sample }) => sample?.wallOpen);
  const differs = known.some(({ sample }) => sample && sample.protectiveConcentration !== sample.judged);
  const shown = averageOf(parts, ({ judged }) => judged);
  return {
    twa8: shown,
    protective: differs ? averageOf(parts, ({ protectiveConcentration }) => protectiveConcentration) : shown,
    withWall: wallOpen ? averageOf(parts, withWall) : null,
    openMin: parts.reduce((sum, { as, min }) => (as === 'open' ? sum + min : sum), 0),
    known: averageOf(known, ({ protectiveConcentration }) => protectiveConcentration),
    errors: errorsOf(parts),
    blocks,
  };
}
