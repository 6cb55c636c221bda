/** What is refused, warned of and filled in by decide, told briefly, for facts written by one device. */
import { expect } from 'vitest';
import { decide } from '#records/decide.ts';
import type { NewFact } from '#records/fact.ts';
import { personAdded } from './dutyFacts.ts';
import { at, freshOf, ids, journal, phone } from './facts.ts';

const context = { now: at('18:00', '2026-12-02'), lastSeenAt: null };
export const people = [personAdded(), personAdded(ids.ben, 'Ben Sill')];
export const first = `${phone}.00000001`;

const decided = (before: readonly NewFact[], wish: NewFact | readonly NewFact[], takingIn = false) =>
  decide([wish].flat(), { ...freshOf(journal(before)), takingIn }, context);
/** Reason keys, with the place in the first fact. */
export function refused(
  before: readonly NewFact[],
  wish: NewFact | readonly NewFact[],
  takingIn = false,
): readonly string[] {
  const decision = decided(before, wish, takingIn);
  return decision.kind === 'refused' ? decision.refusals.map(({ key, fields }) => `${key} ${fields.join(' ')}`) : [];
}
export function cautions(before: readonly NewFact[], wish: NewFact): readonly string[] {
  const decision = decided(before, wish);
  return decision.kind === 'facts' ? decision.cautions.map(({ key }) => key) : ['refused'];
}
export function bodyOf(before: readonly NewFact[], wish: NewFact): Readonly<Record<string, unknown>> {
  const decision = decided(before, wish);
  expect(decision.kind === 'refused' ? decision.refusals : []).toEqual([]);
  return decision.kind === 'facts' ? ((decision.facts[0] as NewFact).body as Readonly<Record<string, unknown>>) : {};
}
export const tomorrow = '2026-12-03';
