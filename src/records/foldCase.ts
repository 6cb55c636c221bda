/** What every fold case is given: the sorted facts of one record with their corrections applied, and the part all records share. */
import type { RecordBase } from './book.ts';
import type { Fact, FactKind } from './fact.ts';

export interface FoldInput {
  readonly base: RecordBase;
  /** Sorted by recorded and id; corrections applied and left out. */
  readonly facts: readonly Fact[];
  readonly settlements: readonly Fact<'correctionSettled.v1'>[];
}

export const ofKind = <K extends FactKind>(facts: readonly Fact[], kind: K): readonly Fact<K>[] =>
  facts.filter((fact) => fact.kind === kind) as unknown as readonly Fact<K>[];

export const firstOf = <K extends FactKind>(facts: readonly Fact[], kind: K): Fact<K> | null =>
  (facts.find((fact) => fact.kind === kind) as Fact<K> | undefined) ?? null;

/** The same record with more conflicts. */
export const withConflicts = (
  base: RecordBase,
  conflicts: readonly (RecordBase['conflicts'][number] | null)[],
): RecordBase => ({
  ...base,
  conflicts: [...base.conflicts, ...conflicts.filter((conflict) => conflict !== null)],
});
