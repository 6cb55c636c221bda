/** Low occasions in a row, each far enough from the one before: 29 CFR 1926.62(d)(6)(ii), (iii). */
import { daysBetween } from '#core/calendar.ts';

export interface Low {
  readonly on: string;
  readonly belowActionLevel: boolean;
}

/** Adds to the low occasions in a row; one that comes too soon begins the row anew. */
export function chained(chain: readonly Low[], low: Low, daysApart: number): readonly Low[] {
  const last = chain.at(-1);
  return last && daysBetween(last.on, low.on) >= daysApart ? [...chain, low] : [low];
}

export const belowAtEnd = (chain: readonly Low[]): readonly Low[] =>
  chain.slice(chain.findLastIndex(({ belowActionLevel }) => !belowActionLevel) + 1);
