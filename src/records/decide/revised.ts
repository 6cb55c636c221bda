/** What is said anew when it changes: each statement is given the ones that it knew of, so that it follows them. */
import type { BookRecord, PersonRecord } from '../book.ts';
import { canonicalJson } from '../canonical.ts';
import { keyOf } from '../common.ts';
import type { FactKind, NewFact } from '../fact.ts';
import type { Ask } from './ask.ts';

/** As many as the fact holds: beyond them a statement stands beside the oldest ones, and the careful side judges. */
const mostKnown = 50;

/** Ids of the statements of one kind about a record, newest first. */
export function statedBefore({ view, fact }: Ask, factIds: readonly string[], ofKind: FactKind = fact.kind): string[] {
  const kind = `"kind":"${ofKind}"`;
  const before = factIds.filter((id) => view.fresh.facts.get(id)?.includes(kind));
  return before.reverse().slice(0, mostKnown);
}

export const same = (now: object | null | undefined, next: object): boolean =>
  now !== null &&
  now !== undefined &&
  Object.entries(next).every(
    ([name, value]) => canonicalJson((now as Record<string, unknown>)[name]) === canonicalJson(value),
  );

export function employmentDecided(ask: Ask<'employmentStated.v1'>): NewFact {
  const { fact, view, refuse } = ask;
  const { personId, fromOn, toOn } = fact.body;
  const key = keyOf('person', personId);
  const person = view.record(key) as PersonRecord | null;
  if (!person) {
    refuse('recordUnknown', ['body/personId'], { key });
    return fact;
  }
  if (fromOn !== null && toOn !== null && toOn < fromOn) refuse('endBeforeStart', ['body/toOn']);
  if (person.conflicts.length === 0 && same(person.employed, { fromOn, toOn })) refuse('sameValue', ['body']);
  return { ...fact, body: { ...fact.body, knew: statedBefore(ask as Ask, person.factIds) } };
}

/** The firm's own action level lies below its own limit, as the rule's does. */
export function limitsDecided(ask: Ask<'limitsChosen.v1'>): NewFact {
  const { fact, view, refuse } = ask;
  const { bookId, besideIds, ownActionLevelUgPerM3, ownPelUgPerM3 } = fact.body;
  const key = keyOf('book', bookId);
  const book = view.record(key) as BookRecord | null;
  if (!book) {
    refuse('recordUnknown', ['body/bookId'], { key });
    return fact;
  }
  if (ownActionLevelUgPerM3 !== null && ownPelUgPerM3 !== null && ownActionLevelUgPerM3 > ownPelUgPerM3)
    refuse('actionAboveLimit', ['body/ownActionLevelUgPerM3']);
  const next = { besideIds: [...new Set(besideIds)].sort(), ownActionLevelUgPerM3, ownPelUgPerM3 };
  if (book.conflicts.length === 0 && same(book.limits, next)) refuse('sameValue', ['body']);
  return { ...fact, body: { ...fact.body, knew: statedBefore(ask as Ask, book.factIds) } };
}
