/**
 * Statements that are said anew when things change: who works here until when, which limits the firm holds itself to. Each names the
 * earlier ones that it knew of and follows them, whoever wrote those. What none knew of stand beside each other, as of things stated once.
 */
import type { BookRecord, Conflict, PersonRecord, ShiftRecord } from './book.ts';
import type { Careful } from './careful.ts';
import type { Fact, FactKind } from './fact.ts';
import { type FoldInput, ofKind } from './foldCase.ts';
import { type Standing, standingStatement } from './statements.ts';

/** A statement that names the earlier ones that it knew of. */
interface Revised {
  readonly id: string;
  readonly body: { readonly knew?: readonly string[] | undefined };
}

/** What no other knew of. Where each claims to have been known, all stay. */
export function unknownToOthers<T extends Revised>(facts: readonly T[]): readonly T[] {
  const known = new Set(facts.flatMap(({ id, body }) => (body.knew ?? []).filter((other) => other !== id)));
  const open = facts.filter(({ id }) => !known.has(id));
  return open.length > 0 ? open : facts;
}

/** Puts all sides together into the value that stands while they differ; it may be nobody's. */
function together<V>(conflict: Conflict, join: (a: V, b: V) => V): { value: V; conflict: Conflict } {
  const value = conflict.candidates.map((candidate) => candidate.value as V).reduce(join);
  return { value, conflict: { ...conflict, standingValue: value } };
}

export type Stood<V> = { readonly value: (V & { readonly factId: string }) | null; readonly conflict: Conflict | null };

/** The value that stands, and the fact that corrections of it replace. */
export function stood<K extends FactKind, V extends object>(
  { fact, conflict }: Standing<K>,
  valueIn: (fact: Fact<K>) => V,
  join: (a: V, b: V) => V,
): Stood<V> {
  if (fact === null) return { value: null, conflict: null };
  if (conflict === null) return { value: { ...valueIn(fact), factId: fact.id }, conflict };
  const joined = together(conflict, join);
  return { value: { ...joined.value, factId: fact.id }, conflict: joined.conflict };
}

type Said = Pick<FoldInput, 'settlements'> & Pick<FoldInput['base'], 'strikes'>;
export const saidOf = ({ base, settlements }: FoldInput): Said => ({ settlements, strikes: base.strikes });

type Employed = Omit<NonNullable<PersonRecord['employed']>, 'factId'>;
const employedIn = ({ body: { fromOn, toOn } }: Fact<'employmentStated.v1'>): Employed => ({ fromOn, toOn });
const earlierOrNone = (a: string | null, b: string | null): string | null =>
  a === null || b === null ? null : a < b ? a : b;
const laterOrNone = (a: string | null, b: string | null): string | null =>
  a === null || b === null ? null : a > b ? a : b;
const longer = (a: Employed, b: Employed): Employed => ({
  fromOn: earlierOrNone(a.fromOn, b.fromOn),
  toOn: laterOrNone(a.toOn, b.toOn),
});
/** A day that nobody said makes the time the longest. */
const laterEnd: Careful = (a, b) => {
  const [one, other] = [(a as Employed).toOn ?? '9', (b as Employed).toOn ?? '9'];
  return one < other ? -1 : one > other ? 1 : 0;
};

/** From when to when a person works here: of two that differ the longer time stands. */
export const employmentOf = (input: FoldInput): Stood<Employed> =>
  stood(
    standingStatement({
      facts: unknownToOthers(ofKind(input.facts, 'employmentStated.v1')),
      path: '/employed',
      valueIn: employedIn,
      careful: laterEnd,
      ...saidOf(input),
    }),
    employedIn,
    longer,
  );

type Limits = Omit<NonNullable<BookRecord['limits']>, 'factId' | 'knew'>;
const limitsIn = ({ body }: Fact<'limitsChosen.v1'>): Limits => ({
  besideIds: [...new Set(body.besideIds)].sort(),
  ownActionLevelUgPerM3: body.ownActionLevelUgPerM3,
  ownPelUgPerM3: body.ownPelUgPerM3,
});
const lowerOf = (a: number | null, b: number | null): number | null =>
  a === null ? b : b === null ? a : Math.min(a, b);
const stricter = (a: Limits, b: Limits): Limits => ({
  besideIds: [...new Set([...a.besideIds, ...b.besideIds])].sort(),
  ownActionLevelUgPerM3: lowerOf(a.ownActionLevelUgPerM3, b.ownActionLevelUgPerM3),
  ownPelUgPerM3: lowerOf(a.ownPelUgPerM3, b.ownPelUgPerM3),
});
const none = Number.MAX_VALUE;
const lowerAction: Careful = (a, b) =>
  ((b as Limits).ownActionLevelUgPerM3 ?? none) - ((a as Limits).ownActionLevelUgPerM3 ?? none);

/** Of two choices the stricter own limits stand, and every set that either shows beside the rule. */
export const limitsOf = (input: FoldInput): Stood<Limits> =>
  stood(
    standingStatement({
      facts: unknownToOthers(ofKind(input.facts, 'limitsChosen.v1')),
      path: '/limits',
      valueIn: limitsIn,
      careful: lowerAction,
      ...saidOf(input),
    }),
    limitsIn,
    stricter,
  );

type Changes = Omit<NonNullable<ShiftRecord['changes']>, 'factId'>;
type Answer = Changes['equipment'];
const answers: readonly Answer[] = ['no', 'notKnown', 'yes'];
const changesIn = ({ body }: Fact<'changesAsked.v1'>): Changes => ({
  equipment: body.equipment,
  process: body.process,
  control: body.control,
  personnel: body.personnel,
  newTask: body.newTask,
});
const worse = (a: Answer, b: Answer): Answer => (answers.indexOf(a) >= answers.indexOf(b) ? a : b);
const anyNew = (a: Changes, b: Changes): Changes => ({
  equipment: worse(a.equipment, b.equipment),
  process: worse(a.process, b.process),
  control: worse(a.control, b.control),
  personnel: worse(a.personnel, b.personnel),
  newTask: worse(a.newTask, b.newTask),
});
const weight = (changes: unknown): number =>
  Object.values(changes as Changes).reduce<number>((sum, answer) => sum + answers.indexOf(answer as Answer), 0);

/** What was new when the job started: of two answers to one question a yes stands, then not known. */
export const changesOf = (input: FoldInput): Stood<Changes> =>
  stood(
    standingStatement({
      facts: ofKind(input.facts, 'changesAsked.v1'),
      path: '/changes',
      valueIn: changesIn,
      careful: (a, b) => weight(a) - weight(b),
      ...saidOf(input),
    }),
    changesIn,
    anyNew,
  );
