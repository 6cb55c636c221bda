/** What one filter cassette shows: flow, minutes, litres, micrograms per cubic metre, and whether it is good. */
import { concentration } from '#core/concentration.ts';
import { exactly, lowerOf, upperOf } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { sampledVolume } from '#core/sampledVolume.ts';
import { sampleShareOfTwa } from '#core/sampleShareOfTwa.ts';
import { atLeastOf } from '#core/stillShown.ts';
import { wornTime } from '#core/wornTime.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { laboratoryReasons } from './laboratory.ts';
import { methodOf, type SampleMethod } from './method.ts';
import { blocking, type Reason, reason } from './reason.ts';
import { type Run, runOf } from './run.ts';
import { emptyFinding, type Quality, type SampleFinding } from './sampleFinding.ts';
import { type SampleFlow, sampleFlowOf } from './sampleFlow.ts';
import { type SampleMass, sampleMassOf } from './sampleMass.ts';
import { fieldReasons } from './sampleReasons.ts';

export type { FlowRule, Quality, SampleFinding } from './sampleFinding.ts';

interface Figures {
  readonly volume: Term | null;
  readonly concentration: Term | null;
  readonly protective: Term | null;
  readonly judged: Term | null;
}

/** Void, or the flow dropped on the way: less air went through than the checks say, so there is at least so much in each cubic metre. */
const showsOnlyLeast = ({ voided, faults }: SampleRecord): boolean =>
  voided !== null || faults.some(({ fault }) => fault === 'flowDropped');

/** Over a flow known only from above there is at least so much lead in each cubic metre. */
function figuresOf(flow: SampleFlow, worn: Term | null, mass: Term | null, onlyLeast: boolean): Figures {
  if (!worn) return { volume: null, concentration: null, protective: null, judged: null };
  const volumeAt = (Q: Term): Term => sampledVolume.of({ Q, t: worn });
  const volume = flow.flow ? volumeAt(flow.flow) : null;
  if (!mass) return { volume, concentration: null, protective: null, judged: null };
  if (!volume || !flow.protective) {
    const least = concentration.of({ m: mass, V: volumeAt(flow.atMost) });
    return { volume, concentration: null, protective: least, judged: least };
  }
  const shown = concentration.of({ m: mass, V: volume });
  const protective =
    flow.protective === flow.flow ? shown : concentration.of({ m: mass, V: volumeAt(flow.protective) });
  if (!onlyLeast) return { volume, concentration: shown, protective, judged: shown };
  return { volume, concentration: shown, protective: atLeastOf(protective), judged: atLeastOf(shown) };
}

function volumeReasons(volume: Term | null, method: SampleMethod): Reason[] {
  if (!volume) return [];
  const [least, most] = [lowerOf(volume.estimate), upperOf(volume.estimate)];
  const { leastL, mostL } = method;
  const found: Reason[] = [];
  if (leastL !== null && least < leastL) found.push(reason('volumeBelowMethod', [], { volumeL: least, leastL }));
  if (mostL !== null && most > mostL) found.push(reason('volumeAboveMethod', [], { volumeL: most, mostL }));
  return found;
}

/** The laboratory knows the volume as read: its figures are held against those. */
function asReadOf(
  { flow, flowAsRead }: SampleFlow,
  { volume, concentration: shown }: Figures,
  worn: Term | null,
  m: Term | null,
) {
  if (!flowAsRead || flowAsRead === flow || !worn) return { volume, concentration: shown };
  const V = sampledVolume.of({ Q: flowAsRead, t: worn });
  return { volume: V, concentration: m ? concentration.of({ m, V }) : shown };
}

function wornOf(run: Run): Term | null {
  if (run.sampledMin <= 0) return null;
  const d = run.sampled.map((s) => recorded('interval', 'min', exactly((s.toMs - s.fromMs) / 60_000), [s.because]));
  return wornTime.of({ d });
}

function qualityOf(sample: SampleRecord, reasons: readonly Reason[]): Quality {
  if (reasons.some(({ weight }) => weight === 'voids')) return 'void';
  if (sample.sampleKind === 'air' && !sample.stopped) return 'open';
  return reasons.some(({ weight }) => weight === 'doubts') ? 'doubtful' : 'good';
}

/** The same of the same: both flow checks with one meter that is out of date say so once. */
function isSame(a: Reason, b: Reason): boolean {
  if (a.key !== b.key || a.weight !== b.weight || a.because[0] !== b.because[0]) return false;
  return Object.keys(a.params).every((name) => a.params[name] === b.params[name]);
}

function uniqueReasons(reasons: readonly Reason[]): Reason[] {
  const found: Reason[] = [];
  for (const one of reasons) if (!found.some((other) => isSame(one, other))) found.push(one);
  return found;
}

function blankFinding(
  sample: SampleRecord,
  run: Run,
  mass: SampleMass | null,
  reasons: readonly Reason[],
): SampleFinding {
  return {
    ...emptyFinding(sample, run),
    quality: qualityOf(sample, reasons),
    reasons,
    mass: mass?.mass ?? null,
    blocksBelow: blocking(reasons),
    because: sample.factIds,
  };
}

function saeTerm(mass: SampleMass | null): Term | null {
  if (!mass || mass.result.saeFraction === null) return null;
  return recorded('samplingAndAnalyticalError', '', exactly(mass.result.saeFraction), [mass.result.factId]);
}

function witnessTerm(sample: SampleRecord, run: Run): Term | null {
  if (run.pumpRunMin === null) return null;
  return recorded('pumpMinutes', 'min', exactly(run.pumpRunMin), sample.stopped ? [sample.stopped.factId] : []);
}

function runReasons(sample: SampleRecord, run: Run, worn: Term | null): Reason[] {
  return sample.stopped && !worn
    ? [...run.reasons, reason('noMinutesWorn', [sample.stopped.factId])]
    : [...run.reasons];
}

/** Throws when the sample is not in the slice. */
export function findSample(sampleId: string, book: Book): SampleFinding {
  const sample = book.samples.get(sampleId);
  if (!sample) throw new Error(`no sample ${sampleId} in this slice of the book`);
  const run = runOf(sample, null);
  const field = fieldReasons(sample, book);
  const mass = sampleMassOf(sample, book);
  if (sample.sampleKind === 'blank') return blankFinding(sample, run, mass, field);

  const method = methodOf(sample, book);
  const flow = sampleFlowOf(sample, book, method.flowRange, method.highestLPerMin);
  const worn = wornOf(run);
  const figures = figuresOf(flow, worn, mass?.mass ?? null, showsOnlyLeast(sample));
  const asRead = asReadOf(flow, figures, worn, mass?.mass ?? null);
  const laboratory = laboratoryReasons(mass?.result ?? null, asRead.volume, asRead.concentration);
  const reasons = uniqueReasons([
    ...field,
    ...flow.reasons,
    ...runReasons(sample, run, worn),
    ...method.reasons,
    ...(sample.stopped ? volumeReasons(figures.volume, method) : []),
    ...(mass?.reasons ?? []),
    ...laboratory.reasons,
  ]);
  return {
    sampleId: sample.id,
    sampleNumber: sample.sampleNumber,
    sampleKind: 'air',
    quality: qualityOf(sample, reasons),
    reasons,
    checkBefore: flow.checkBefore,
    checkAfter: flow.checkAfter,
    flowBefore: flow.checkBefore?.flow ?? null,
    flowAfter: flow.checkAfter?.flow ?? null,
    flowChange: flow.change,
    flowRule: flow.rule,
    averageFlow: flow.flow,
    lowerFlow: flow.protective,
    asRead: {
      flowBefore: flow.checkBefore?.ends[0] ?? null,
      flowAfter: flow.checkAfter?.ends[0] ?? null,
      averageFlow: flow.flowAsRead,
      volume: asRead.volume,
    },
    wornMin: worn,
    unsampledMin: run.unsampledMin,
    pumpRunMin: witnessTerm(sample, run),
    volume: figures.volume,
    mass: mass?.mass ?? null,
    concentration: figures.concentration,
    protectiveConcentration: figures.protective,
    judged: figures.judged,
    sae: saeTerm(mass),
    twaShare: mass && flow.flow && worn ? sampleShareOfTwa.of({ m: mass.mass, Q: flow.flow }) : null,
    laboratoryVolumeDifferencePct: laboratory.volumePct,
    laboratoryConcentrationDifferencePct: laboratory.concentrationPct,
    methodId: method.id,
    wallOpen: mass?.wallOpen ?? false,
    run,
    blocksBelow: blocking(reasons),
    because: sample.factIds,
  };
}
