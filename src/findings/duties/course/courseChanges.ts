/** Changes that ask for additional monitoring, 29 CFR 1926.62(d)(7): noted once when a job starts, they concern everybody who works there then or later. */
import type { Book } from '#records/book.ts';
import type { GroupDay } from '../groups/taskGroup.ts';
import { changeNotedOn } from '../groups/taskGroups.ts';
import { type Gathered, type Gathering, noteDone } from './courseGathering.ts';
import type { ChangeNoted } from './courseInput.ts';

function changesBySite(book: Book): ReadonlyMap<string, readonly ChangeNoted[]> {
  const found = new Map<string, ChangeNoted[]>();
  for (const shift of book.shifts.values()) {
    const change = changeNotedOn(shift);
    if (change) found.set(shift.siteId, [...(found.get(shift.siteId) ?? []), change]);
  }
  return found;
}

const none: readonly never[] = [];

/** Each change of a site once, on the first day from then on that this worker does this work there. */
function addTo(own: Gathered, on: string, changes: readonly ChangeNoted[], taken: Set<ChangeNoted>): void {
  for (const change of changes) {
    if (change.on > on || taken.has(change)) continue;
    taken.add(change);
    own.changes.push({ on, because: change.because });
  }
}

/** Days that may have been of a group count as days of it too, where there is a course of it. `days` in their order. */
export function gatherChanges(days: readonly GroupDay[], book: Book, today: string, into: Gathering): void {
  const bySite = changesBySite(book);
  const taken = new Map<Gathered, Set<ChangeNoted>>();
  const take = (own: Gathered, on: string, changes: readonly ChangeNoted[]): void => {
    const known = taken.get(own) ?? new Set();
    taken.set(own, known);
    addTo(own, on, changes, known);
  };
  for (const { workerId, groupKey, mayBeKeys = none, workOn, siteId } of days) {
    if (workOn > today) continue;
    const changes = bySite.get(siteId) ?? none;
    if (changes.length === 0 && mayBeKeys.length === 0) continue;
    for (const key of [groupKey, ...mayBeKeys]) {
      const own = into.found.get(`${workerId} ${key}`);
      if (!own) continue;
      noteDone(own, workOn);
      take(own, workOn, changes);
    }
  }
}
