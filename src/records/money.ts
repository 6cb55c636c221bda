/** The firm's own prices, and what was spent. */
import type { BookRecord, Conflict, SpendingRecord } from './book.ts';
import type { Fact } from './fact.ts';
import { type FoldInput, firstOf, ofKind } from './foldCase.ts';
import { saidOf, unknownToOthers } from './revised.ts';
import { standingStatement } from './statements.ts';

const pricesIn = ({ body: { bookId: _id, knew: _knew, ...body } }: Fact<'pricesStated.v1'>) => body;

/**
 * One list of prices a day, that of the latest day first; prices said anew for a day follow those that they knew of. Of two that did not
 * know of each other those said first stand, and both are shown.
 */
export function pricesOf(input: FoldInput): {
  readonly prices: NonNullable<BookRecord['prices']>;
  readonly conflicts: readonly Conflict[];
} {
  const facts = ofKind(input.facts, 'pricesStated.v1');
  const days = [...new Set(facts.map(({ body }) => body.fromOn))].sort().reverse();
  const standing = days.map((on) =>
    standingStatement({
      facts: unknownToOthers(facts.filter(({ body }) => body.fromOn === on)),
      path: `/prices/${on}`,
      valueIn: pricesIn,
      careful: null,
      ...saidOf(input),
    }),
  );
  return {
    prices: standing.flatMap(({ fact }) => (fact === null ? [] : [{ ...pricesIn(fact), factId: fact.id }])),
    conflicts: standing.flatMap(({ conflict }) => conflict ?? []),
  };
}

/** Null until the entry itself has arrived. */
export function foldSpending({ base, facts }: FoldInput): SpendingRecord | null {
  const spent = firstOf(facts, 'moneySpent.v1');
  const struck = firstOf(facts, 'spendingStruck.v1');
  return (
    spent && {
      ...spent.body,
      ...base,
      spentFactId: spent.id,
      struck: struck && { why: struck.why, factId: struck.id },
    }
  );
}
