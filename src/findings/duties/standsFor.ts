/**
 * Whom a measurement stands for: the worker measured, everyone of the same shift and task group by the roster, and whoever is named in
 * writing. Workers of other employers are among them: they breathed the same air. 29 CFR 1926.62(d)(8)(i), (n)(1)(ii)(D).
 */
import type { Book } from '#records/book.ts';
import type { Measurement } from './measurement.ts';
import type { GroupDay } from './taskGroup.ts';

/** Made once for a list of days, which is never changed. */
const held = new WeakMap<readonly GroupDay[], ReadonlyMap<string, readonly GroupDay[]>>();

/** Everyone's days on each shift. */
export function daysByShift(days: readonly GroupDay[]): ReadonlyMap<string, readonly GroupDay[]> {
  const known = held.get(days);
  if (known) return known;
  const found = new Map<string, GroupDay[]>();
  for (const day of days) {
    const own = found.get(day.shiftId);
    if (own) own.push(day);
    else found.set(day.shiftId, [day]);
  }
  held.set(days, found);
  return found;
}

/** Named in writing on the measured day. */
export function namedInWriting({ id }: Pick<Measurement, 'id'>, book: Book): readonly string[] {
  return (book.workdays.get(id)?.represents ?? []).flatMap(({ workerIds }) => workerIds);
}

/** A reported one stands at its site on its day. */
export const shiftsOf = ({ shiftIds, siteId, workOn }: Measurement): readonly string[] =>
  shiftIds.length > 0 || siteId === null ? shiftIds : [`${siteId}.${workOn}`];

/** Days of everyone of the same shift and group by the roster, the measured worker's own too. A day at two sites has a group at each. */
export function rosterDaysOf(measurement: Measurement, days: readonly GroupDay[]): readonly GroupDay[] {
  const { workerId, groupKey } = measurement;
  const byShift = daysByShift(days);
  return shiftsOf(measurement).flatMap((shiftId) => {
    const there = byShift.get(shiftId) ?? [];
    const own = there.filter((day) => day.workerId === workerId);
    const keys = new Set([groupKey, ...own.map((day) => day.groupKey)]);
    return there.filter((day) => keys.has(day.groupKey));
  });
}

/** Worker ids, the measured one first. */
export function standsFor(measurement: Measurement, book: Book, days: readonly GroupDay[]): readonly string[] {
  const own = measurement.workerId === null ? [] : [measurement.workerId];
  return [
    ...new Set([
      ...own,
      ...rosterDaysOf(measurement, days).map(({ workerId }) => workerId),
      ...namedInWriting(measurement, book),
    ]),
  ];
}
