/**
 * On which of three stretches a figure lies: below the action level, from there to the PEL, above. The firm's own stricter limits count
 * beside those of the rule and never relax them.
 */
import { type Limit, sideOf } from '#core/comparison.ts';
import type { BookRecord } from '#records/book.ts';
import type { LimitSet } from '#reference/limits.ts';
import { noOwnLimits, tightened } from '#reference/ownLimits.ts';
import type { Band } from './measurement.ts';

const rank: Readonly<Record<Band, number>> = { belowActionLevel: 0, open: 1, actionLevelToPel: 2, abovePel: 3 };

/** The more careful of two: what nobody knows may be more than what is known to be low. */
export const higherBand = (a: Band, b: Band): Band => (rank[a] >= rank[b] ? a : b);

export type TwoLimits = Pick<LimitSet, 'actionLevel' | 'pel'>;

/** The limits of the rule with the firm's own in their place where those are stricter; the same object where none is. */
export const ownLimitsOf = (set: LimitSet, book: BookRecord | null): LimitSet =>
  tightened(set, book?.limits ?? noOwnLimits);

const reached = (value: number, { value: limit, reachedWhen }: Limit): boolean =>
  reachedWhen === 'atOrAbove' ? sideOf(value, limit) >= 0 : sideOf(value, limit) > 0;

export type ClosedBand = Exclude<Band, 'open'>;

export const bandOf = (valueUgPerM3: number, { actionLevel, pel }: TwoLimits): ClosedBand =>
  reached(valueUgPerM3, pel)
    ? 'abovePel'
    : reached(valueUgPerM3, actionLevel)
      ? 'actionLevelToPel'
      : 'belowActionLevel';
