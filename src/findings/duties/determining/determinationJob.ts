/** What keeps a job from a negative initial determination beside its measurements: the rule, changes, other conditions, who was measured. */
import type { Book, ShiftRecord } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import { compareTerms, termsOn } from '../groups/resemblance.ts';
import { type ResemblanceTerm, resemblanceTerms } from '../groups/taskGroup.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { DeterminationBlock } from './determination.ts';
import { block } from './determinationEvidence.ts';
import type { Scope } from './determinationScope.ts';

const asked = ['equipment', 'process', 'control', 'personnel', 'newTask'] as const;

/** Whose rule the site stands under, and whether every figure was held against the same one. */
export function ruleBlocks(
  scope: Scope,
  used: readonly Measurement[],
  book: Book,
  today: string,
): DeterminationBlock[] {
  const site = book.sites.get(scope.siteId);
  const here = limitSetOn(today, site?.stateCode ?? '');
  const found = here.heldComplete
    ? []
    : [block('ruleNotHeld', null, site?.factIds, { stateCode: site?.stateCode ?? '' })];
  for (const { id, limits, because } of used)
    if (limits.set.id !== here.set.id) found.push(block('statesDiffer', id, because));
  return found;
}

/** Entries that are not here may say anything of the days since the first measurement that counts. */
export function bookBlocks(
  used: readonly Measurement[],
  { missing = [], takingIn = false }: Book,
): DeterminationBlock[] {
  const found = takingIn ? [block('takingIn', null)] : [];
  const firstOn = used[0]?.workOn;
  const bearing = missing.filter(({ untilOn }) => firstOn !== undefined && firstOn <= untilOn);
  const entriesCount = bearing.reduce((sum, { fromCount, toCount }) => sum + toCount - fromCount + 1, 0);
  return entriesCount > 0 ? [...found, block('entriesMissing', null, [], { entriesCount })] : found;
}

function changesOn(shift: ShiftRecord): DeterminationBlock[] {
  const { changes } = shift;
  if (!changes) return [];
  return asked.flatMap((which) => {
    if (changes[which] === 'no') return [];
    const key = changes[which] === 'yes' ? 'changeNoted' : 'changesNotAsked';
    return [block(key, null, [changes.factId], { which, on: shift.workOn })];
  });
}

const heldShifts = new WeakMap<Book['shifts'], ReadonlyMap<string, readonly ShiftRecord[]>>();

/** By site: the shifts of which somebody was asked what is new. */
function changedShifts({ shifts }: Book): ReadonlyMap<string, readonly ShiftRecord[]> {
  const held = heldShifts.get(shifts);
  if (held) return held;
  const found = new Map<string, ShiftRecord[]>();
  for (const shift of shifts.values())
    if (shift.changes) found.set(shift.siteId, [...(found.get(shift.siteId) ?? []), shift]);
  heldShifts.set(shifts, found);
  return found;
}

/**
 * A change that may bring somebody to the action level asks for additional monitoring, (d)(7): it blocks until a measurement of that day
 * or later proves what is so now. A job that rests on an earlier measurement was asked what is new, or it blocks too.
 */
export function changeBlocks(scope: Scope, proven: readonly Measurement[], book: Book): DeterminationBlock[] {
  const lastProvenOn = proven.at(-1)?.workOn ?? '';
  const found: DeterminationBlock[] = [];
  for (const shift of changedShifts(book).get(scope.siteId) ?? [])
    if (shift.workOn > lastProvenOn) found.push(...changesOn(shift));
  for (const { reliance } of scope.relied) {
    const on = reliance.shiftId.slice(reliance.shiftId.indexOf('.') + 1);
    if (on > lastProvenOn && !book.shifts.get(reliance.shiftId)?.changes)
      found.push(block('changesNotAsked', reliance.measurementId, [reliance.reliedFactId], { on }));
  }
  return found;
}

/** Inside one site the weather of each day may differ; what is done, with which material, controls and practices, may not. */
const termsHere = resemblanceTerms.filter((term) => term !== 'environment');

type Unalike = { readonly term: ResemblanceTerm; readonly key: 'unlike' | 'resemblanceNotAsked' };
type Conditions = ShiftRecord['conditions'];

function unalikeTo(day: Conditions, measured: Conditions, taskIds: readonly string[]): Unalike[] {
  const answers = compareTerms(termsOn(measured, taskIds), termsOn(day, taskIds));
  return termsHere.flatMap((term): Unalike[] =>
    answers[term] === 'alike' ? [] : [{ term, key: answers[term] === 'unlike' ? 'unlike' : 'resemblanceNotAsked' }],
  );
}

/** Days with the same conditions have the same name. */
const nameOf = (conditions: Conditions): string =>
  conditions === null ? '' : JSON.stringify({ ...conditions, shiftId: null, remark: null });

/** Against the measured day that it is most like. */
function leastUnalike(day: Conditions, measured: readonly Conditions[], taskIds: readonly string[]): Unalike[] {
  const against = measured.map((one) => unalikeTo(day, one, taskIds));
  return against.sort((a, b) => a.length - b.length)[0] ?? [];
}

/** Days of this group since the first measurement that proves: each is like a measured one, or it says in which term it is not. */
export function unlikeDayBlocks(scope: Scope, proven: readonly Measurement[], book: Book): DeterminationBlock[] {
  const firstOn = proven[0]?.workOn;
  const found: DeterminationBlock[] = [];
  if (firstOn === undefined) return found;
  const taskIds = scope.days[0]?.taskIds ?? [];
  const conditionsOf = (shiftId: string): Conditions => book.shifts.get(shiftId)?.conditions ?? null;
  const measuredIds = new Set(proven.flatMap(({ shiftIds }) => shiftIds));
  const measured = new Map([...measuredIds].map((id) => [nameOf(conditionsOf(id)), conditionsOf(id)]));
  const known = new Map<string, Unalike[]>();
  const since = scope.days.filter(({ workOn, shiftId }) => workOn >= firstOn && !measuredIds.has(shiftId));
  for (const [shiftId, on] of new Map(since.map((day) => [day.shiftId, day.workOn]))) {
    const name = nameOf(conditionsOf(shiftId));
    const least = known.get(name) ?? leastUnalike(conditionsOf(shiftId), [...measured.values()], taskIds);
    known.set(name, least);
    for (const { key, term } of least) found.push(block(key, null, book.shifts.get(shiftId)?.factIds, { term, on }));
  }
  return found;
}

/**
 * Monitoring may be limited to those reasonably believed most exposed, (d)(3)(ii): whoever does these tasks here was measured, or is named
 * in writing as one whom a measurement stands for.
 */
export function notMeasuredBlocks(scope: Scope, proven: readonly Measurement[], book: Book): DeterminationBlock[] {
  if (proven.length === 0) return [];
  const covered = new Set<string>();
  for (const { id, workerId } of proven) {
    if (workerId !== null) covered.add(workerId);
    for (const { workerIds } of book.workdays.get(id)?.represents ?? []) for (const one of workerIds) covered.add(one);
  }
  const left = new Map(scope.days.filter(({ workerId }) => !covered.has(workerId)).map((day) => [day.workerId, day]));
  if (left.size === 0) return [];
  return [
    block(
      'highestNotMeasured',
      null,
      [...left.values()].flatMap(({ because }) => because),
      { workersCount: left.size },
    ),
  ];
}
