/** The run sheet: what a pump that is on a worker now has drawn so far. */
import type { Term } from '#core/formula.ts';
import type { Book } from '#records/book.ts';
import type { Reason } from './reason.ts';

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

/** `now` is an instant. Throws when the sample is not in the slice. */
export function findOnWorker(_sampleId: string, _book: Book, _now: string, _aim: OnWorkerAim | null): OnWorkerFinding {
  throw new Error('being written');
}
