/** The shape of what one filter cassette shows. */
import type { Term } from '#core/formula.ts';
import type { SampleRecord } from '#records/book.ts';
import type { FlowCheckFinding } from './flow.ts';
import type { Reason } from './reason.ts';
import type { Run } from './run.ts';
import type { FlowRule } from './sampleFlow.ts';

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
  /** What the flow meters read, where one of them was found to be off since: what the custody sheet says. Else the same as beside it. */
  readonly asRead: Readonly<Record<'flowBefore' | 'flowAfter' | 'averageFlow' | 'volume', Term | null>>;
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

const nothingRead: SampleFinding['asRead'] = { flowBefore: null, flowAfter: null, averageFlow: null, volume: null };

/** Before anything is known of it. */
export const emptyFinding = (sample: SampleRecord, run: Run) => ({
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
  asRead: nothingRead,
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
