/**
 * Things that are stated once of a record: hours of a day, a regular day or not, conditions, a decision on a flow. A writer's later
 * statement follows its own earlier one; two writers who state different things are a conflict, seen by structure.
 */
import type { Conflict, Strike } from './book.ts';
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
  /** Corrections of the record: a settlement that did not know of one to what it set aside is no settlement of that. */
  readonly strikes: readonly Strike[];
}

/** A writer's later statement follows its own earlier one. */
export const latestOfEachWriter = <K extends FactKind>(facts: readonly Fact<K>[]): readonly Fact<K>[] => {
  const latest = new Map<string, Fact<K>>();
  for (const fact of facts) {
    const known = latest.get(writerOf(fact.id));
    if (!known || fact.id > known.id) latest.set(writerOf(fact.id), fact);
  }
  return facts.filter((fact) => latest.get(writerOf(fact.id)) === fact);
};

type Settlement = Fact<'correctionSettled.v1'>;

/** Knew of every candidate, and of every correction to those that it set aside. */
function knewAll<K extends FactKind>({ body }: Settlement, heads: readonly Fact<K>[], strikes: readonly Strike[]) {
  const { chosen, over = heads.map(({ id }) => id) } = body;
  const aside = new Set(heads.map(({ id }) => id).filter((id) => id !== chosen));
  const corrections = strikes.filter(({ factId }) => aside.has(factId)).map(({ correctionId }) => correctionId);
  return [...aside, ...corrections].every((id) => over.includes(id));
}

/** What a person settled on who knew of everything; of two who did not know of each other and differ, neither. */
export function settledBy<K extends FactKind>(
  heads: readonly Fact<K>[],
  { settlements, strikes }: Pick<Statement<K>, 'settlements' | 'strikes'>,
): Fact<K> | undefined {
  const knowing = settlements.filter(
    (one) => heads.some(({ id }) => id === one.body.chosen) && knewAll(one, heads, strikes),
  );
  const superseded = new Set(knowing.flatMap(({ id, body }) => (body.over ?? []).filter((other) => other !== id)));
  const open = knowing.filter(({ id }) => !superseded.has(id));
  const [chosen, ...others] = new Set((open.length > 0 ? open : knowing).map(({ body }) => body.chosen));
  return others.length > 0 ? undefined : heads.find(({ id }) => id === chosen);
}

/** Everything that was said of these statements beside themselves. */
export function besides<K extends FactKind>(
  heads: readonly Fact<K>[],
  { settlements, strikes }: Pick<Statement<K>, 'settlements' | 'strikes'>,
): string[] {
  const ids = new Set(heads.map(({ id }) => id));
  return [
    ...settlements.filter(({ body }) => ids.has(body.chosen)).map(({ id }) => id),
    ...strikes.filter(({ factId }) => ids.has(factId)).map(({ correctionId }) => correctionId),
  ];
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
    conflict: {
      factId: first.id,
      path,
      candidates,
      standing: fact.id,
      judges,
      standingValue: valueIn(fact),
      besides: besides(heads, statement),
    },
  };
}
