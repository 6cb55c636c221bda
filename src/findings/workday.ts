/** One worker's day: every minute accounted for, the 8-hour average, and where it stands to each limit. */
import type { Comparison, Limit } from '#core/comparison.ts';
import type { Term } from '#core/formula.ts';
import type { Book } from '#records/book.ts';
import type { Reason } from './reason.ts';
import type { SampleFinding } from './sample.ts';

export interface Segment {
  readonly fromAt: string;
  readonly toAt: string;
  readonly durationMin: number;
  readonly as: 'sampled' | 'away' | 'sameAs' | 'unknown';
  readonly sampleId: string | null;
  /** In the words of whoever explained the minutes; null for sampled and unexplained ones. */
  readonly reason: string | null;
  /** null: not known (yet). */
  readonly concentration: Term | null;
  readonly because: readonly string[];
}

/**
 * `below` only when nothing blocks it. `atOrAbove`: at least the limit, and how far above is not known. `atLeastBelow`: the part
 * that is known lies below the limit, which proves nothing. `unresolved`: bounds straddle the limit, or a reason blocks *below*.
 */
export type Verdict = 'below' | 'exactlyAt' | 'above' | 'atOrAbove' | 'unresolved' | 'atLeastBelow';

export interface DayStanding {
  readonly limitSetId: string;
  readonly which: 'actionLevel' | 'pel';
  readonly limit: Limit;
  /** The 8-hour average shown, held against the limit. */
  readonly comparison: Comparison;
  /** The protective 8-hour average (lower flows), held against the limit: this one judges. */
  readonly protective: Comparison;
  readonly verdict: Verdict;
  /** By the limit's own sign. `no` only where the verdict is known and nothing blocks it. */
  readonly crossed: 'yes' | 'no' | 'unresolved';
  readonly atOrAbove: 'yes' | 'no' | 'unresolved';
  /** The judging figure is the protective one, because the two lie on different sides. */
  readonly protectiveJudges: boolean;
  /** What keeps *below* from being said at this limit. */
  readonly why: readonly Reason[];
  /** The average of the minutes without a figure that would bring the day to this limit; null where there are none. */
  readonly unknownWouldReach: Term | null;
}

export interface WorkdayFinding {
  readonly workdayId: string;
  readonly workerId: string;
  readonly workOn: string;
  readonly segments: readonly Segment[];
  readonly samples: readonly SampleFinding[];
  readonly hoursWorked: Term | null;
  readonly unknownMin: number;
  /** Sampled minutes whose result is not in. */
  readonly awaitedMin: number;
  /** null when nothing at all was sampled or explained. */
  readonly twa8: Term | null;
  readonly protectiveTwa8: Term | null;
  readonly shiftAverage: Term | null;
  /** 400 / h, only for more than 8 hours worked. Held against the shift average, never against the 8-hour average. */
  readonly allowableAverage: Term | null;
  readonly shiftComparison: Comparison | null;
  readonly standings: readonly DayStanding[];
  readonly regular: 'yes' | 'no' | null;
  /** Whose rule governs; where it is not held complete, figures are shown and no list of duties. */
  readonly stateCode: string | null;
  readonly ruleHeld: boolean;
  readonly reasons: readonly Reason[];
  readonly blocksBelow: readonly Reason[];
  readonly because: readonly string[];
}

/** Throws when the work day is not in the slice. Limits are those of the site's state on that day. */
export function findWorkday(_workdayId: string, _book: Book): WorkdayFinding {
  throw new Error('being written');
}
