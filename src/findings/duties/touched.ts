/** What may be other than it was when some measurements are other ones and nothing else of the book is. Whatever is not in it is as it was. */
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import { restsOnGroups } from './exposure/daysAtOrAbove.ts';
import { evidenceKeysOf } from './groups/groupEvidence.ts';
import { reliancesOf } from './groups/reliance.ts';
import { standsFor } from './groups/standsFor.ts';
import type { GroupDay } from './groups/taskGroup.ts';
import { siteOfShift } from './groups/taskGroups.ts';
import type { Measurement } from './measuring/measurement.ts';

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
export const listsOfDuties = ['duties', 'requests'] as const;

function isSameList(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  for (const [key, one] of a) if (b.get(key) !== one) return false;
  return true;
}

type ListName = (typeof listsOfDays)[number] | (typeof listsBesides)[number] | (typeof listsOfDuties)[number];

/** Are these lists made of the same records, as objects? */
export const sameIn = (a: Book, b: Book, lists: readonly ListName[]): boolean =>
  lists.every((list) => isSameList(a[list], b[list]));

const sameBesides = (a: Book, b: Book): boolean =>
  a.book === b.book && a.takingIn === b.takingIn && a.missing === b.missing && sameIn(a, b, listsBesides);

/** Ids of measurements that are other objects than before; null where some came or went. */
function changedIds(before: Measurements, now: Measurements): ReadonlySet<string> | null {
  if (before.size !== now.size) return null;
  const changed = new Set<string>();
  for (const [id, one] of now) {
    const earlier = before.get(id);
    if (!earlier) return null;
    if (earlier !== one) changed.add(id);
  }
  return changed;
}

export function only(measurements: Measurements, wanted: (one: Measurement) => boolean): Measurements {
  const found = new Map<string, Measurement>();
  for (const [id, one] of measurements) if (wanted(one)) found.set(id, one);
  return found;
}

interface Change {
  readonly ids: ReadonlySet<string>;
  readonly measurements: Measurements;
  readonly earlier: Earlier;
  readonly book: Book;
  readonly days: readonly GroupDay[];
  readonly today: string;
}

/** Measurements that are other ones, and all that may be other by them. Whatever is not in it is as it was. */
export interface Changed extends Change {
  readonly workers: ReadonlySet<string>;
  readonly sites: ReadonlySet<string>;
  /** What bears on these workers. */
  readonly bearing: { readonly measurements: Measurements; readonly days: readonly GroupDay[] };
}

/** What changed, as it was and as it is. */
const beforeAndNow = ({ ids, measurements, earlier }: Change): readonly Measurement[] =>
  [...ids].flatMap((id) => [earlier.found.measurements.get(id) ?? [], measurements.get(id) ?? []].flat());

/** Of these groups something else may be known now, here or at a job that rests on it. */
function groupsOf({ ids, measurements, book }: Change, both: readonly Measurement[]): ReadonlySet<string> {
  const groups = new Set(both.flatMap(evidenceKeysOf));
  for (const one of reliancesOf(measurements, book).values()) if (ids.has(one.measurementId)) groups.add(one.groupKey);
  return groups;
}

/** Everyone for whom a changed measurement stands, who is named in a written determination on it, or of whom a day rests on its group. */
function workersOf(change: Change, both: readonly Measurement[]): ReadonlySet<string> {
  const { ids, book, days, earlier } = change;
  const workers = new Set(both.flatMap((one) => standsFor(one, book, days)));
  for (const { written } of book.determinations.values())
    if (written.measurementIds.some((id) => ids.has(id))) for (const id of written.standsForIds) workers.add(id);
  const groups = groupsOf(change, both);
  for (const [id, one] of earlier.found.exposureDays) if (restsOnGroups(one, groups)) workers.add(id);
  return workers;
}

/** Of what stands for these workers: their own, those of their shifts, and those that name them in writing. */
function bearingOn(workers: ReadonlySet<string>, { measurements, book, days }: Change): Changed['bearing'] {
  const shiftIds = new Set<string>();
  for (const { workerId, shiftId } of days) if (workers.has(workerId)) shiftIds.add(shiftId);
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

/** A day at two sites bears on both. */
export const sitesOf = ({ siteId, shiftIds }: Measurement): readonly string[] =>
  siteId === null ? [] : [siteId, ...shiftIds.map(siteOfShift)];

/** Where it was measured, where a job rests on it, and wherever anybody for whom it counts worked or was measured. */
function sitesTouched({ ids, book }: Change, both: readonly Measurement[], bearing: Changed['bearing']) {
  const sites = new Set(both.flatMap(sitesOf));
  for (const { measurementId, shiftId } of book.reliances.values())
    if (ids.has(measurementId)) sites.add(siteOfShift(shiftId));
  for (const { siteId } of bearing.days) sites.add(siteId);
  for (const one of bearing.measurements.values()) for (const id of sitesOf(one)) sites.add(id);
  return sites;
}

/** Where some measurements are other ones and nothing else is: what may be other by them. null: all is found anew. */
export function changedSinceFound(
  measurements: Measurements,
  days: readonly GroupDay[],
  book: Book,
  today: string,
  earlier: Earlier | undefined,
): Changed | null {
  if (!earlier || earlier.found.today !== today || earlier.days !== days || !sameBesides(earlier.book, book))
    return null;
  const ids = changedIds(earlier.found.measurements, measurements);
  if (!ids) return null;
  const change = { ids, measurements, earlier, book, days, today };
  const both = beforeAndNow(change);
  const workers = workersOf(change, both);
  const bearing = bearingOn(workers, change);
  return { ...change, workers, bearing, sites: sitesTouched(change, both, bearing) };
}
