/**
 * A measurement as duties see it: one worker's day, sampled by us or reported to us, without regard to respirators. Duties run on the
 * larger of point value and upper bound; a step-down or a negative determination asks for proof, and doubt is no proof.
 */
import type { Estimate } from '#core/estimate.ts';
import type { LimitsHere } from '#reference/limits.ts';
import type { Reason } from '../../reason.ts';
import type { WorkdayFinding } from '../../workday.ts';

/**
 * Where a measurement stands for duties. `open`: its known part lies below the action level and nothing bounds it from above, or a
 * result is owed: it restarts nothing and proves nothing.
 */
export type Band = 'belowActionLevel' | 'actionLevelToPel' | 'abovePel' | 'open';

/** One receipt of results: the clock of a notice. A revised report is a receipt of its own. */
export interface Receipt {
  readonly factId: string;
  readonly reportNumber: string | null;
  readonly receivedOn: string;
}

export interface Measurement {
  /** The work day's id, or that of a reported one. */
  readonly id: string;
  readonly from: 'sampled' | 'consultant' | 'ownEarlier' | 'inspector' | 'otherEmployer' | 'other';
  readonly workerId: string | null;
  readonly workOn: string;
  readonly siteId: string | null;
  readonly shiftIds: readonly string[];
  readonly groupKey: string;
  /** Other groups that it may have been, or was in part. It can raise there, and relaxes nothing. */
  readonly mayBeKeys?: readonly string[];
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly limits: LimitsHere;
  /** The 8-hour average that judges; null while nothing is known of it. */
  readonly twa8UgPerM3: Estimate | null;
  readonly band: Band;
  /** Below the action level, and nothing stands against saying so. */
  readonly provesBelowActionLevel: boolean;
  /** Not above the PEL, and nothing stands against saying so. */
  readonly provesNotAbovePel: boolean;
  /** At or above the PEL: the notice's statement. `unresolved` where bounds straddle it. */
  readonly atOrAbovePel: 'yes' | 'no' | 'unresolved';
  /** Ours only: a result, or a part of the day, is still owed. */
  readonly resultOwed: boolean;
  /** Void, or no flow after: only *at least*. It keeps its notice. */
  readonly atLeastOnly: boolean;
  readonly receipts: readonly Receipt[];
  /** What keeps it from proving anything low. */
  readonly blocks: readonly Reason[];
  readonly finding: WorkdayFinding | null;
  /** What the rule alone gives, where a stricter limit of the firm's own gives more: said as *by our own limit*. */
  readonly byRule?: Pick<Measurement, 'band' | 'provesBelowActionLevel' | 'provesNotAbovePel'>;
  /** Another measurement of the same worker and day that is higher, and judges this one too. */
  readonly judgedById?: string;
  readonly because: readonly string[];
}
