/** What one flow check says: the local volume flow, and what was wrong with it, told at once. */
import type { Term } from '#core/formula.ts';
import type { Book, FlowCheckRecord } from '#records/book.ts';
import type { Reason } from './reason.ts';

export interface FlowCheckFinding {
  readonly flowCheckId: string;
  /** Local volume flow, L/min: midpoints, their mean, the certificate's pairs, the rotameter's correction. null: no figure. */
  readonly flow: Term | null;
  /** The same from the low ends, where the float bounced more than 5 % of its midpoint; else null. */
  readonly lowFlow: Term | null;
  /** Largest half-width of a reading, in per cent of its midpoint. */
  readonly halfWidthPct: number;
  readonly reasons: readonly Reason[];
}

/** The method's range of flow, as far as a flow check needs it. */
export interface FlowRange {
  readonly id: string;
  readonly flowFromLPerMin: number;
  readonly flowToLPerMin: number;
}

export function findFlowCheck(_check: FlowCheckRecord, _book: Book, _method: FlowRange | null): FlowCheckFinding {
  throw new Error('being written');
}
