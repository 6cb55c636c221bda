/**
 * May a job rest on an earlier measurement? 29 CFR 1926.62(d)(3)(iii): the employer's own, obtained within the past twelve months, under
 * conditions that closely resemble today's in five respects, by a method that is accurate enough. Every reason it fails is told.
 */
import type { Book, RelianceRecord } from '#records/book.ts';
import type { DeterminationBlock } from './determination.ts';
import type { Measurement } from './measurement.ts';

export interface RelianceFinding {
  readonly relianceId: string;
  readonly measurementId: string;
  readonly shiftId: string;
  readonly siteId: string;
  /** The day of the job: the measurement's age is held against it. */
  readonly reliedOn: string;
  readonly groupKey: string;
  /** Last day on which it may be relied on; null without a measurement. */
  readonly reliableUntilOn: string | null;
  readonly valid: boolean;
  /** Every reason it fails. `unlike` and `resemblanceNotAsked` carry `term`: one of the five, or `jobClassification`. */
  readonly blocks: readonly DeterminationBlock[];
  readonly because: readonly string[];
}

export function relianceOf(
  _reliance: RelianceRecord,
  _measurements: ReadonlyMap<string, Measurement>,
  _book: Book,
): RelianceFinding {
  throw new Error('not written yet');
}

/** By reliance id. */
export function reliancesOf(
  _measurements: ReadonlyMap<string, Measurement>,
  _book: Book,
): ReadonlyMap<string, RelianceFinding> {
  throw new Error('not written yet');
}
