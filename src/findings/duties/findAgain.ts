/**
 * What of an earlier finding still holds when only some measurements changed, so that one bad meter does not mean finding everything
 * anew. A part is taken over only where all that it is made from are the same objects; equality with finding from nothing is tested.
 */
import type { Course } from './course/course.ts';
import { coursesOf } from './course/courses.ts';
import type { DeterminationFinding } from './determining/determination.ts';
import { determinationsOf } from './determining/determinations.ts';
import { exposureDaysOf } from './exposure/daysAtOrAbove.ts';
import type { ExposureDays } from './exposure/exposureDays.ts';
import { siteOfShift } from './groups/taskGroups.ts';
import { dutiesAgain as dutiesBeside, dutiesOf } from './list/duties.ts';
import type { Duty } from './list/duty.ts';
import type { DutyParts } from './list/dutyTriggersGround.ts';
import type { NoticeOwed } from './telling/notice.ts';
import { noticesOwed } from './telling/notices.ts';
import { type Changed, listsOfDuties, only, sameIn, sitesOf } from './touched.ts';

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** One notice rests on one measurement. */
export function noticesAgain({ ids, measurements, earlier, book, days, today }: Changed): readonly NoticeOwed[] {
  const kept = earlier.found.notices.filter(({ measurementId }) => !ids.has(measurementId));
  const own = only(measurements, ({ id }) => ids.has(id));
  return [...kept, ...noticesOwed(own, book, days, today)].sort(
    (a, b) => compare(a.dueOn, b.dueOn) || compare(a.measurementId, b.measurementId),
  );
}

/** A worker's days rest on what stands for this worker, and on what is known of the group. */
export function exposureDaysAgain(changed: Changed): ReadonlyMap<string, ExposureDays> {
  const { measurements, days, book, today, workers, bearing, earlier } = changed;
  const found = new Map([...earlier.found.exposureDays].filter(([id]) => !workers.has(id)));
  const made = exposureDaysOf(measurements, days, book, today, { ...bearing, workers });
  for (const [id, one] of made) found.set(id, one);
  return found;
}

/** A worker's course rests on what stands for this worker. */
export function coursesAgain({ workers, bearing, earlier, book, today }: Changed): readonly Course[] {
  const made = coursesOf(bearing.measurements, bearing.days, book, today);
  const kept = earlier.found.courses.filter(({ workerId }) => !workers.has(workerId));
  return [...kept, ...made.filter(({ workerId }) => workers.has(workerId))].sort(
    (a, b) => compare(a.workerId, b.workerId) || compare(a.groupKey, b.groupKey),
  );
}

/** A determination rests on what was measured at its site, and on what a job there relies on. */
export function determinationsAgain(changed: Changed): readonly DeterminationFinding[] {
  const { measurements, earlier, book, days, today, sites } = changed;
  const relied = new Set<string>();
  for (const { measurementId, shiftId } of book.reliances.values())
    if (sites.has(siteOfShift(shiftId))) relied.add(measurementId);
  const own = only(measurements, (one) => sitesOf(one).some((id) => sites.has(id)) || relied.has(one.id));
  const shiftIds = new Set([...own.values()].flatMap((one) => one.shiftIds));
  const bearing = days.filter(({ siteId, shiftId }) => sites.has(siteId) || shiftIds.has(shiftId));
  const made = determinationsOf(own, book, bearing, today).filter(({ siteId }) => sites.has(siteId));
  const kept = earlier.found.determinations.filter(({ siteId }) => !sites.has(siteId));
  return [...kept, ...made].sort((a, b) => compare(`${a.siteId} ${a.groupKey}`, `${b.siteId} ${b.groupKey}`));
}

/** Duties of these sites and workers, and of what was measured of them; others rest on nothing that changed. */
export function dutiesAgain(changed: Changed, parts: DutyParts): readonly Duty[] {
  const { ids, earlier, book, today, workers, sites, bearing } = changed;
  if (!sameIn(earlier.book, book, listsOfDuties)) return dutiesOf(parts, book, today);
  const measurementIds = new Set([...ids, ...bearing.measurements.keys()]);
  const about = { siteIds: sites, workerIds: workers, measurementIds };
  return dutiesBeside(earlier.found.duties, about, parts, book, today);
}
