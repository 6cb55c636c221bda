/**
 * What of an earlier finding still holds when only some measurements changed, so that one bad meter does not mean finding everything
 * anew. A part is taken over only where all that it is made from are the same objects; equality with finding from nothing is tested.
 */
import type { Book } from '#records/book.ts';
import type { Course } from './course.ts';
import { coursesOf } from './courses.ts';
import type { DeterminationFinding } from './determination.ts';
import { determinationsOf } from './determinations.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import type { Measurement } from './measurement.ts';
import type { NoticeOwed } from './notice.ts';
import { noticesOwed } from './notices.ts';
import { standsFor } from './standsFor.ts';
import type { GroupDay } from './taskGroup.ts';
import { siteOfShift } from './taskGroups.ts';

type Measurements = ReadonlyMap<string, Measurement>;

/** What was found, and from what. */
export interface Earlier {
  readonly found: DutiesOfBook;
  readonly book: Book;
  readonly days: readonly GroupDay[];
}

/** Lists of the book that days are made from, and those that everything but measurements and duties is made from. */
export const listsOfDays = ['workdays', 'samples', 'sites', 'people'] as const;
const listsBesides = ['shifts', 'notices', 'determinations', 'reliances', 'boxes', 'reported'] as const;

function isSameList(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  for (const [key, one] of a) if (b.get(key) !== one) return false;
  return true;
}

type ListName = (typeof listsOfDays)[number] | (typeof listsBesides)[number];

/** Are these lists made of the same records, as objects? */
export const sameIn = (a: Book, b: Book, lists: readonly ListName[]): boolean =>
  lists.every((list) => isSameList(a[list], b[list]));

export const sameBesides = (a: Book, b: Book): boolean =>
  a.book === b.book && a.takingIn === b.takingIn && a.missing === b.missing && sameIn(a, b, listsBesides);

/** Ids of measurements that are other objects than before; null where some came or went. */
export function changedIds(before: Measurements, now: Measurements): ReadonlySet<string> | null {
  if (before.size !== now.size) return null;
  const changed = new Set<string>();
  for (const [id, one] of now) {
    const earlier = before.get(id);
    if (!earlier) return null;
    if (earlier !== one) changed.add(id);
  }
  return changed;
}

function only(measurements: Measurements, wanted: (one: Measurement) => boolean): Measurements {
  const found = new Map<string, Measurement>();
  for (const [id, one] of measurements) if (wanted(one)) found.set(id, one);
  return found;
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export interface Changed {
  readonly ids: ReadonlySet<string>;
  readonly measurements: Measurements;
  readonly earlier: Earlier;
  readonly book: Book;
  readonly days: readonly GroupDay[];
  readonly today: string;
}

/** One notice rests on one measurement. */
export function noticesAgain({ ids, measurements, earlier, book, days, today }: Changed): readonly NoticeOwed[] {
  const kept = earlier.found.notices.filter(({ measurementId }) => !ids.has(measurementId));
  const made = noticesOwed(
    only(measurements, ({ id }) => ids.has(id)),
    book,
    days,
    today,
  );
  return [...kept, ...made].sort((a, b) => compare(a.dueOn, b.dueOn) || compare(a.measurementId, b.measurementId));
}

/** What changed, as it was and as it is. */
const beforeAndNow = ({ ids, measurements, earlier }: Changed): readonly Measurement[] =>
  [...ids].flatMap((id) => [earlier.found.measurements.get(id) ?? [], measurements.get(id) ?? []].flat());

/** Everyone for whom a changed measurement stands, or is named in a written determination on it. */
function workersOf(changed: Changed): ReadonlySet<string> {
  const { ids, book, days } = changed;
  const named = [...book.determinations.values()].flatMap(({ written }) =>
    written.measurementIds.some((id) => ids.has(id)) ? written.standsForIds : [],
  );
  return new Set([...beforeAndNow(changed).flatMap((one) => standsFor(one, book, days)), ...named]);
}

/** Of what stands for these workers: their own, those of their shifts, and those that name them in writing. */
function bearingOn(workers: ReadonlySet<string>, { measurements, book, days }: Changed) {
  const shiftIds = new Set(days.filter(({ workerId }) => workers.has(workerId)).map(({ shiftId }) => shiftId));
  const named = new Set<string>();
  for (const { written } of book.determinations.values())
    if (written.standsForIds.some((id) => workers.has(id))) for (const id of written.measurementIds) named.add(id);
  for (const { id, represents } of book.workdays.values())
    if (represents?.some(({ workerIds }) => workerIds.some((one) => workers.has(one)))) named.add(id);
  const bears = ({ id, workerId, shiftIds: on, siteId, workOn }: Measurement): boolean =>
    (workerId !== null && workers.has(workerId)) ||
    named.has(id) ||
    on.some((shiftId) => shiftIds.has(shiftId)) ||
    (on.length === 0 && shiftIds.has(`${siteId}.${workOn}`));
  // a change at a site concerns whoever comes later, so all days of their sites
  const sites = new Set([...shiftIds].map(siteOfShift));
  return { measurements: only(measurements, bears), days: days.filter(({ siteId }) => sites.has(siteId)) };
}

/** A worker's course rests on what stands for this worker. */
export function coursesAgain(changed: Changed): readonly Course[] {
  const workers = workersOf(changed);
  const bearing = bearingOn(workers, changed);
  const made = coursesOf(bearing.measurements, bearing.days, changed.book, changed.today);
  const kept = changed.earlier.found.courses.filter(({ workerId }) => !workers.has(workerId));
  return [...kept, ...made.filter(({ workerId }) => workers.has(workerId))].sort(
    (a, b) => compare(a.workerId, b.workerId) || compare(a.groupKey, b.groupKey),
  );
}

/** A day at two sites bears on both. */
const sitesOf = ({ siteId, shiftIds }: Measurement): readonly string[] =>
  siteId === null ? [] : [siteId, ...shiftIds.map(siteOfShift)];

/** A determination rests on what was measured at its site, and on what a job there relies on. */
export function determinationsAgain(changed: Changed): readonly DeterminationFinding[] {
  const { ids, measurements, earlier, book, days, today } = changed;
  const sites = new Set(beforeAndNow(changed).flatMap(sitesOf));
  const relied = new Set<string>();
  for (const { measurementId, shiftId } of book.reliances.values())
    if (ids.has(measurementId)) sites.add(siteOfShift(shiftId));
  for (const { measurementId, shiftId } of book.reliances.values())
    if (sites.has(siteOfShift(shiftId))) relied.add(measurementId);
  const own = only(measurements, (one) => sitesOf(one).some((id) => sites.has(id)) || relied.has(one.id));
  const shiftIds = new Set([...own.values()].flatMap((one) => one.shiftIds));
  const bearing = days.filter(({ siteId, shiftId }) => sites.has(siteId) || shiftIds.has(shiftId));
  const made = determinationsOf(own, book, bearing, today).filter(({ siteId }) => sites.has(siteId));
  const kept = earlier.found.determinations.filter(({ siteId }) => !sites.has(siteId));
  return [...kept, ...made].sort((a, b) => compare(`${a.siteId} ${a.groupKey}`, `${b.siteId} ${b.groupKey}`));
}
