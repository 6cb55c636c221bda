/** What one filter cassette shows: flow, minutes, litres, micrograms per cubic metre, and whether it is good. */
import { concentration } from '#core/concentration.ts';
import { exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { sampledVolume } from '#core/sampledVolume.ts';
import { sampleShareOfTwa } from '#core/sampleShareOfTwa.ts';
import { atLeastOf } from '#core/stillShown.ts';
import { wornTime } from '#core/wornTime.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import type { FlowCheckFinding } from './flow.ts';
import { laboratoryReasons } from './laboratory.ts';
import { methodOf, type SampleMethod } from './method.ts';
import { blocking, type Reason, reason } from './reason.ts';
import { type Run, runOf } from './run.ts';
import { type FlowRule, type SampleFlow, sampleFlowOf } from './sampleFlow.ts';
import { type SampleMass, sampleMassOf } from './sampleMass.ts';
import { fieldReasons } from './sampleReasons.ts';

export type { FlowRule } from './sampleFlow.ts';

/** `open`: not put on yet, or still on the worker. A sample without a result has its quality all the same. */
export type Quality = 'good' | 'doubtful' | 'void' | 'open';

export interface SampleFinding {
  readonly sampleId: string;
  readonly sampleNumber: string;
  readonly sampleKind: 'air' | 'blank';
  readonly quality: Quality;
  readonly reasons: readonly Reason[];
  readonly checkBefore: FlowCheckFinding | null;
  readonly checkAfter: FlowCheckFinding | null;
  readonly flowBefore: Term | null;
  readonly flowAfter: Term | null;
  /** Change in per cent of the flow before. */
  readonly flowChange: Term | null;
  readonly flowRule: FlowRule | null;
  /** The flow of the figure; null when no average may be formed. */
  readonly averageFlow: Term | null;
  /** The flow that judges: lower where the average is flagged or the float bounced. */
  readonly lowerFlow: Term | null;
  /** Minutes on the worker with the pump running, as the record and the pump's own minutes agree. */
  readonly wornMin: Term | null;
  /** Minutes on the worker for which the pump's run is not shown: they stay unsampled. */
  readonly unsampledMin: number;
  /** The pump's own minutes, the independent witness. */
  readonly pumpRunMin: Term | null;
  readonly volume: Term | null;
  readonly mass: Term | null;
  /** From the average flow; null without one, or without a result. */
  readonly concentration: Term | null;
  /** From the flow that judges; where no average may be formed, at least the mass over the method's highest flow. */
  readonly protectiveConcentration: Term | null;
  /** The figure shown and carried into the day: the concentration, or what a void or half-checked sample still shows. */
  readonly judged: Term | null;
  /** Sampling and analytical error, where the laboratory gave one. */
  readonly sae: Term | null;
  /** m / (0.48 Q): what this sample adds to the 8-hour average, whatever its minutes. */
  readonly twaShare: Term | null;
  readonly laboratoryVolumeDifferencePct: number | null;
  readonly laboratoryConcentrationDifferencePct: number | null;
  readonly methodId: string | null;
  /** The deposit on the inner wall is not shown to be in the figure. */
  readonly wallOpen: boolean;
  readonly run: Run;
  readonly blocksBelow: readonly Reason[];
  /** Ids of every fact used. */
  readonly because: readonly string[];
}

interface Figures {
  readonly volume: Term | null;
  readonly concentration: Term | null;
  readonly protective: Term | null;
  readonly judged: Term | null;
}

/** Over a flow known only from above there is at least so much lead in each cubic metre. */
function figuresOf(flow: SampleFlow, worn: Term | null, mass: Term | null, isVoid: boolean): Figures {
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
  if (!isVoid) return { volume, concentration: shown, protective, judged: shown };
  return { volume, concentration: shown, protective: atLeastOf(protective), judged: atLeastOf(shown) };
}

function volumeReasons(volume: Term | null, method: SampleMethod): Reason[] {
  if (volume?.estimate.kind !== 'exact') return [];
  const volumeL = volume.estimate.value;
  const { leastL, mostL } = method;
  if (leastL !== null && volumeL < leastL) return [reason('volumeBelowMethod', [], { volumeL, leastL })];
  if (mostL !== null && volumeL > mostL) return [reason('volumeAboveMethod', [], { volumeL, mostL })];
  return [];
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

function uniqueReasons(reasons: readonly Reason[]): Reason[] {
  const seen = new Set<string>();
  return reasons.filter((one) => {
    const key = `${one.key} ${one.weight} ${JSON.stringify(one.params)} ${one.because[0] ?? ''}`;
    return seen.has(key) ? false : seen.add(key);
  });
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

const emptyFinding = (sample: SampleRecord, run: Run) => ({
  sampleId: sample.id,
  sampleNumber: sample.sampleNumber,
  sampleKind: sample.sampleKind,
  checkBefore: null,
  checkAfter: null,
  flowBefore: null,
  flowAfter: null,
  flowChange: null,
  flowRule: null,
  averageFlow: null,
  lowerFlow: null,
  wornMin: null,
  unsampledMin: run.unsampledMin,
  pumpRunMin: null,
  volume: null,
  concentration: null,
  protectiveConcentration: null,
  judged: null,
  sae: null,
  twaShare: null,
  laboratoryVolumeDifferencePct: null,
  laboratoryConcentrationDifferencePct: null,
  methodId: null,
  wallOpen: false,
  run,
});

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
  const figures = figuresOf(flow, worn, mass?.mass ?? null, sample.voided !== null);
  const laboratory = laboratoryReasons(mass?.result ?? null, figures.volume, figures.concentration);
  const noMinutes = sample.stopped && !worn ? [reason('noMinutesWorn', [sample.stopped.factId])] : [];
  const reasons = uniqueReasons([
    ...field,
    ...flow.reasons,
    ...run.reasons,
    ...noMinutes,
    ...method.reasons,
    ...(sample.stopped ? volumeReasons(figures.volume, method) : []),
    ...(mass?.reasons ?? []),
    ...laboratory.reasons,
  ]);
  const sae = mass?.result.saeFraction ?? null;
  return {
    ...emptyFinding(sample, run),
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
    wornMin: worn,
    pumpRunMin:
      run.pumpRunMin === null
        ? null
        : recorded('pumpMinutes', 'min', exactly(run.pumpRunMin), sample.stopped ? [sample.stopped.factId] : []),
    volume: figures.volume,
    mass: mass?.mass ?? null,
    concentration: figures.concentration,
    protectiveConcentration: figures.protective,
    judged: figures.judged,
    sae: sae === null || !mass ? null : recorded('samplingAndAnalyticalError', '', exactly(sae), [mass.result.factId]),
    twaShare: mass && flow.flow && worn ? sampleShareOfTwa.of({ m: mass.mass, Q: flow.flow }) : null,
    laboratoryVolumeDifferencePct: laboratory.volumePct,
    laboratoryConcentrationDifferencePct: laboratory.concentrationPct,
    methodId: method.id,
    wallOpen: mass?.wallOpen ?? false,
    blocksBelow: blocking(reasons),
    because: sample.factIds,
  };
}
