/**
 * Whom a measurement stands for: the worker measured, everyone of the same shift and task group by the roster, and whoever is named in
 * writing. Workers of other employers are among them: they breathed the same air. 29 CFR 1926.62(d)(8)(i), (n)(1)(ii)(D).
 */
import type { Book } from '#records/book.ts';
import type { Measurement } from '../measuring/measurement.ts';
import { type GroupDay, mayBeSameGroup } from './taskGroup.ts';

type ByGroup = ReadonlyMap<string, readonly GroupDay[]>;

/** By shift, then group. Made once for a list of days, which is never changed. */
const held = new WeakMap<readonly GroupDay[], ReadonlyMap<string, ByGroup>>();

function byShiftOf(days: readonly GroupDay[]): ReadonlyMap<string, ByGroup> {
  const known = held.get(days);
  if (known) return known;
  const found = new Map<string, Map<string, GroupDay[]>>();
  for (const day of days) {
    const groups = found.get(day.shiftId) ?? new Map<string, GroupDay[]>();
    const own = groups.get(day.groupKey);
    if (own) own.push(day);
    else groups.set(day.groupKey, [day]);
    found.set(day.shiftId, groups);
  }
  held.set(days, found);
  return found;
}

const nobody: readonly string[] = [];

/** Named in writing on the measured day. */
export function namedInWriting({ id }: Pick<Measurement, 'id'>, book: Book): readonly string[] {
  const represents = book.workdays.get(id)?.represents;
  return represents && represents.length > 0 ? represents.flatMap(({ workerIds }) => workerIds) : nobody;
}

/** A reported one stands at its site on its day. */
export const shiftsOf = ({ shiftIds, siteId, workOn }: Measurement): readonly string[] =>
  shiftIds.length > 0 || siteId === null ? shiftIds : [`${siteId}.${workOn}`];

const noDays: readonly GroupDay[] = [];

/** Where the work may have been the same: by an entry that does not say what the others say, or by a classification nobody noted. */
function mayBeDaysOn({ groupKey, mayBeKeys = [] }: Measurement, there: ByGroup): readonly GroupDay[] {
  const keys = [groupKey, ...mayBeKeys];
  const isAny = (key: string): boolean => keys.some((own) => mayBeSameGroup(key, own));
  const found: GroupDay[] = [];
  for (const [key, days] of there)
    if (isAny(key)) found.push(...days);
    else for (const day of days) if (day.mayBeKeys?.some(isAny)) found.push(day);
  return found;
}

/** The groups that it stands for on a shift: its own, and what the worker is on the roster with (a day at two sites has one at each). */
function groupsOn({ from, workerId, groupKey, shiftIds }: Measurement, there: ByGroup): readonly string[] {
  if (from === 'sampled' && shiftIds.length === 1) return [groupKey];
  const keys = new Set([groupKey]);
  for (const [key, days] of there) if (days.some((day) => day.workerId === workerId)) keys.add(key);
  return [...keys];
}

export const coverKey = (shiftId: string, groupKey: string): string => `${shiftId} ${groupKey}`;

/** Every shift and group that it stands for. */
export function coverKeysOf(measurement: Measurement, days: readonly GroupDay[]): readonly string[] {
  const byShift = byShiftOf(days);
  return shiftsOf(measurement).flatMap((shiftId) => {
    const there = byShift.get(shiftId);
    return there ? groupsOn(measurement, there).map((groupKey) => coverKey(shiftId, groupKey)) : [];
  });
}

/** Days of everyone of the same shift and group by the roster, the measured worker's own too. */
export function rosterDaysOf(measurement: Measurement, days: readonly GroupDay[]): readonly GroupDay[] {
  const byShift = byShiftOf(days);
  const [only, ...others] = shiftsOf(measurement);
  const on = (shiftId: string): readonly GroupDay[] => {
    const there = byShift.get(shiftId);
    if (!there) return [];
    const [first, ...more] = groupsOn(measurement, there).map((key) => there.get(key) ?? []);
    return more.length === 0 ? (first ?? []) : [first ?? [], ...more].flat();
  };
  if (only === undefined) return [];
  return others.length === 0 ? on(only) : [only, ...others].flatMap(on);
}

/**
 * Beside those of `rosterDaysOf`: everyone who may have been there. Entries that differ, and classifications that nobody noted, let nobody
 * drop out of whom it is told to and of whom a high one raises. Nothing may be relaxed by it.
 */
export function mayBeDaysOf(measurement: Measurement, days: readonly GroupDay[]): readonly GroupDay[] {
  const byShift = byShiftOf(days);
  const found = shiftsOf(measurement).flatMap((shiftId) => {
    const there = byShift.get(shiftId);
    return there && there.size > 1 ? mayBeDaysOn(measurement, there) : noDays;
  });
  if (found.length === 0) return noDays;
  const sure = new Set(rosterDaysOf(measurement, days));
  return found.filter((day) => !sure.has(day));
}

const whoOf = (measurement: Measurement, found: readonly GroupDay[], book: Book): readonly string[] => {
  const own = measurement.workerId === null ? [] : [measurement.workerId];
  return [...new Set([...own, ...found.map(({ workerId }) => workerId), ...namedInWriting(measurement, book)])];
};

/** Worker ids, the measured one first; also whoever may have been there. */
export const standsFor = (measurement: Measurement, book: Book, days: readonly GroupDay[]): readonly string[] =>
  whoOf(measurement, [...rosterDaysOf(measurement, days), ...mayBeDaysOf(measurement, days)], book);

/** Only those of whom nothing leaves it open: for whatever relaxes. */
export function surelyStandsFor(measurement: Measurement, book: Book, days: readonly GroupDay[]): readonly string[] {
  const sure = rosterDaysOf(measurement, days).filter(({ mayBeKeys }) => mayBeKeys === undefined);
  return whoOf(measurement, sure, book);
}
