/** What an edited entry amounts to as facts: a new name, and a correction with its reason for every other value that differs. */
import type { AnyRecord } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { newFact, type Entry as Occasion } from '#store/newFact.ts';

export interface Change {
  readonly name: string;
  readonly old: unknown;
  readonly new: unknown;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);

/** The values of the form that differ from the record. */
export const changesOf = (record: AnyRecord, body: Readonly<Record<string, unknown>>): readonly Change[] =>
  Object.entries(body)
    .map(([name, value]) => ({
      name,
      old: (record as unknown as Record<string, unknown>)[name] ?? null,
      new: value ?? null,
    }))
    .filter((change) => !same(change.old, change.new));

/** Does any of these changes need a reason? A new name does not. */
export const needsReason = (changes: readonly Change[]): boolean => changes.some(({ name }) => name !== 'name');

export function factsOf(record: AnyRecord, changes: readonly Change[], occasion: Occasion): NewFact[] {
  const about = [record.key];
  const replaces = record.factIds[0] ?? '';
  return changes.map((change) =>
    change.name === 'name'
      ? newFact('nameChanged.v1', { name: String(change.new) }, { ...occasion, why: null, about })
      : newFact(
          'valueCorrected.v1',
          {
            replaces,
            path: `/${change.name}`,
            old: change.old as never,
            new: change.new as never,
            supersedes: record.strikes.findLast(({ path }) => path === `/${change.name}`)?.correctionId ?? null,
          },
          { ...occasion, about },
        ),
  );
}
