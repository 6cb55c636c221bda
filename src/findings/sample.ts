/** What one filter cassette shows: flow, minutes, litres, micrograms per cubic metre, and whether it is good. */
import type { Term } from '#core/formula.ts';
import type { Book, FlowCheckRecord } from '#records/book.ts';
import type { FlowCheckFinding } from './flow.ts';
import type { Reason } from './reason.ts';

/** `open`: not put on yet, or still on the worker. A sample without a result has its quality all the same. */
export type Quality = 'good' | 'doubtful' | 'void' | 'open';

/**
 * How the flow before and after became one flow. `average`; `averageFlagged`: over 5 to 10 %, the lower flow judges where the two
 * straddle a limit; `atLeastOnly`: over 10 %, or a reading missing; `decided`: someone decided, with a reason.
 */
export type FlowRule = 'average' | 'averageFlagged' | 'atLeastOnly' | 'decided';

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
  /** The lowest flow that the readings allow: the protective figure. */
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
  /** From the lower flow; where no average may be formed, at least the mass over the method's highest flow. */
  readonly protectiveConcentration: Term | null;
  /** The figure shown and carried into the day: the concentration, or what a void or half-checked sample still shows. */
  readonly judged: Term | null;
  /** One-sided 95 % limits on the concentration, where the laboratory gave a sampling and analytical error. */
  readonly sae: { readonly lower: Term; readonly upper: Term } | null;
  /** m / (0.48 Q): what this sample adds to the 8-hour average, whatever its minutes. */
  readonly twaShare: Term | null;
  readonly laboratoryVolumeDifferencePct: number | null;
  readonly laboratoryConcentrationDifferencePct: number | null;
  readonly methodId: string | null;
  readonly blocksBelow: readonly Reason[];
  /** Ids of every fact used. */
  readonly because: readonly string[];
}

/** The flow checks that belong to a sample: the last before at or ahead of put-on, the first after at or past the stop. */
export interface ChecksOfSample {
  readonly before: FlowCheckRecord | null;
  readonly after: FlowCheckRecord | null;
}

export function checksOfSample(_sampleId: string, _book: Book): ChecksOfSample {
  throw new Error('being written');
}

/** Throws when the sample is not in the slice. */
export function findSample(_sampleId: string, _book: Book): SampleFinding {
  throw new Error('being written');
}
