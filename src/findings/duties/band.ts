/**
 * On which of three stretches a figure lies: below the action level, from there to the PEL, above. The firm's own stricter limits count
 * beside those of the rule and never relax them.
 */
import { type Limit, sideOf } from '#core/comparison.ts';
import type { BookRecord } from '#records/book.ts';
import type { LimitSet } from '#reference/limits.ts';
import type { Band } from './measurement.ts';

const rank: Readonly<Record<Band, number>> = { belowActionLevel: 0, open: 1, actionLevelToPel: 2, abovePel: 3 };

/** The more careful of two: what nobody knows may be more than what is known to be low. */
export const higherBand = (a: Band, b: Band): Band => (rank[a] >= rank[b] ? a : b);

export interface Limits {
  readonly actionLevel: Limit;
  readonly pel: Limit;
  /** The firm's own, where it is stricter. */
  readonly ownActionLevel: Limit | null;
  readonly ownPel: Limit | null;
}

const stricter = (own: number | null | undefined, limit: Limit): Limit | null =>
  own === null || own === undefined || sideOf(own, limit.value) >= 0 ? null : { ...limit, value: own };

export function limitsFor({ actionLevel, pel }: LimitSet, book: BookRecord | null): Limits {
  const own = book?.limits;
  return {
    actionLevel,
    pel,
    ownActionLevel: stricter(own?.ownActionLevelUgPerM3, actionLevel),
    ownPel: stricter(own?.ownPelUgPerM3, pel),
  };
}

const reached = (value: number, { value: limit, reachedWhen }: Limit): boolean =>
  reachedWhen === 'atOrAbove' ? sideOf(value, limit) >= 0 : sideOf(value, limit) > 0;

export type ClosedBand = Exclude<Band, 'open'>;

const between = (value: number, actionLevel: Limit, pel: Limit): ClosedBand =>
  reached(value, pel) ? 'abovePel' : reached(value, actionLevel) ? 'actionLevelToPel' : 'belowActionLevel';

/** By the rule alone. */
export const bandByRule = (valueUgPerM3: number, { actionLevel, pel }: Limits): ClosedBand =>
  between(valueUgPerM3, actionLevel, pel);

/** By the rule and the firm's own limits. */
export const bandOf = (valueUgPerM3: number, limits: Limits): ClosedBand =>
  between(valueUgPerM3, limits.ownActionLevel ?? limits.actionLevel, limits.ownPel ?? limits.pel);
