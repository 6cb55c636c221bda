/**
 * Things that are stated once of a record: hours of a day, a regular day or not, conditions, a decision on a flow. A writer's later
 * statement follows its own earlier one; two writers who state different things are a conflict, seen by structure.
 */
import type { Conflict } from './book.ts';
import { canonicalJson } from './canonical.ts';
import { type Careful, mostCareful } from './careful.ts';
import { writerOf } from './chain.ts';
import type { Fact, FactKind } from './fact.ts';

export interface Standing<K extends FactKind> {
  readonly fact: Fact<K> | null;
  readonly conflict: Conflict | null;
}

export interface Statement<K extends FactKind> {
  /** Sorted, corrections applied. */
  readonly facts: readonly Fact<K>[];
  readonly path: string;
  readonly valueIn: (fact: Fact<K>) => unknown;
  /** Null where no direction is known: the first statement stands. */
  readonly careful: Careful | null;
  readonly settlements: readonly Fact<'correctionSettled.v1'>[];
}

const latestOfEachWriter = <K extends FactKind>(facts: readonly Fact<K>[]): readonly Fact<K>[] => {
  const latest = new Map<string, Fact<K>>();
  for (const fact of facts) {
    const known = latest.get(writerOf(fact.id));
    if (!known || fact.id > known.id) latest.set(writerOf(fact.id), fact);
  }
  return facts.filter((fact) => latest.get(writerOf(fact.id)) === fact);
};

/** The settlement that knew of every candidate, the last one where there are several. */
function settledBy<K extends FactKind>(heads: readonly Fact<K>[], statement: Statement<K>): Fact<K> | undefined {
  const knowing = statement.settlements.filter(({ body }) => {
    const known = body.over ?? heads.map(({ id }) => id);
    return heads.every(({ id }) => id === body.chosen || known.includes(id));
  });
  const chosen = knowing.map(({ body }) => heads.find(({ id }) => id === body.chosen));
  return chosen.findLast((fact) => fact !== undefined);
}

/** Which of several statements stands, and the conflict while nobody has settled it. */
export function standingStatement<K extends FactKind>(statement: Statement<K>): Standing<K> {
  const { path, valueIn, careful } = statement;
  const heads = latestOfEachWriter(statement.facts);
  const values = new Set(heads.map((fact) => canonicalJson(valueIn(fact))));
  if (values.size <= 1) return { fact: heads.at(-1) ?? null, conflict: null };
  const settled = settledBy(heads, statement);
  if (settled) return { fact: settled, conflict: null };
  const first = heads[0] as Fact<K>;
  const fact = mostCareful(careful, heads, valueIn) ?? first;
  const judges = careful === null ? 'first' : 'careful';
  const candidates = heads.map((head) => ({ correctionId: head.id, value: valueIn(head), by: head.by }));
  return {
    fact,
    conflict: { factId: first.id, path, candidates, standing: fact.id, judges, standingValue: valueIn(fact) },
  };
}
