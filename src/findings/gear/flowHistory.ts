/** The change of a pump's flow from before to after over the months, as data for a picture and its table. */
import type { Book } from '#records/book.ts';

export interface FlowPoint {
  readonly sampleId: string;
  readonly sampleNumber: string;
  readonly workOn: string;
  readonly flowBeforeLPerMin: number;
  readonly flowAfterLPerMin: number;
  /** After over before, with its sign: a pump that weakens lies below zero. */
  readonly changePct: number;
  /** Held to the tolerance without its sign. */
  readonly within: 'average' | 'flagged' | 'over';
}

export interface AxisTick {
  readonly at: number;
  readonly label: string;
}

export interface FlowHistory {
  readonly pumpId: string;
  /** By day, then by number. */
  readonly points: readonly FlowPoint[];
  /** Samples that have no flow before or after. */
  readonly withoutChangeCount: number;
  readonly averageUpToPct: number;
  readonly flaggedUpToPct: number;
  /** Days since `fromOn`. */
  readonly x: { readonly fromOn: string; readonly toOn: string; readonly ticks: readonly AxisTick[] } | null;
  readonly y: { readonly fromPct: number; readonly toPct: number; readonly ticks: readonly AxisTick[] };
}

export function flowHistory(pumpId: string, _book: Book): FlowHistory {
  return {
    pumpId,
    points: [],
    withoutChangeCount: 0,
    averageUpToPct: 5,
    flaggedUpToPct: 10,
    x: null,
    y: { fromPct: -10, toPct: 10, ticks: [] },
  };
}
