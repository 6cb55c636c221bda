/** What bears on the initial determination of one task group at one site: its days there, what was measured there, what a job rests on. */
import type { Book, RelianceRecord } from '#records/book.ts';
import { rosterDaysOf } from '../groups/standsFor.ts';
import { type GroupDay, groupKeyOf, mayBeSameGroup } from '../groups/taskGroup.ts';
import type { Measurement } from '../measuring/measurement.ts';

export interface Relied {
  readonly reliance: RelianceRecord;
  /** null where it is not in the book: nothing is proven by it. */
  readonly measurement: Measurement | null;
}

export interface Scope {
  readonly siteId: string;
  readonly groupKey: string;
  /** Measured or reported at this site, with a result, with one that is owed, or sent to the laboratory; in the order of days. */
  readonly own: readonly Measurement[];
  readonly relied: readonly Relied[];
  readonly days: readonly GroupDay[];
}

const nameOf = (siteId: string, groupKey: string): string => `${siteId} ${groupKey}`;
/** A reliance names no setting: it bears on both. */
const tasksOfKey = (groupKey: string): string => groupKey.slice(groupKey.indexOf('|'));

const byDay = (a: Measurement, b: Measurement): number =>
  a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : a.id < b.id ? -1 : 1;

interface Growing {
  readonly siteId: string;
  readonly groupKey: string;
  readonly own: Measurement[];
  readonly relied: Relied[];
  readonly days: GroupDay[];
}

function addReliances(scopes: Map<string, Growing>, measurements: ReadonlyMap<string, Measurement>, book: Book): void {
  const bySite = new Map<string, Growing[]>();
  for (const scope of scopes.values()) bySite.set(scope.siteId, [...(bySite.get(scope.siteId) ?? []), scope]);
  for (const reliance of book.reliances.values()) {
    const siteId = reliance.shiftId.slice(0, reliance.shiftId.indexOf('.'));
    const setting = book.sites.get(siteId)?.setting ?? 'indoors';
    const key = groupKeyOf(setting, reliance.jobClassificationId, reliance.taskIds);
    const known = (bySite.get(siteId) ?? []).filter(({ groupKey }) => tasksOfKey(groupKey) === tasksOfKey(key));
    const relied = { reliance, measurement: measurements.get(reliance.measurementId) ?? null };
    if (known.length === 0) {
      const scope: Growing = { siteId, groupKey: key, own: [], relied: [relied], days: [] };
      scopes.set(nameOf(siteId, key), scope);
      bySite.set(siteId, [...(bySite.get(siteId) ?? []), scope]);
    } else for (const scope of known) scope.relied.push(relied);
  }
}

/** A void cassette that was never sent and has no result is no measurement, and bears on nothing. */
export function bearsOn({ receipts, resultOwed, finding }: Measurement, boxedIds: ReadonlySet<string>): boolean {
  return receipts.length > 0 || resultOwed || (finding?.samples ?? []).some(({ sampleId }) => boxedIds.has(sampleId));
}

export const boxedIdsOf = ({ boxes }: Book): ReadonlySet<string> =>
  new Set([...boxes.values()].flatMap(({ packed }) => packed.sampleIds));

/** Other sites and groups that a day was, or may have been, of: a day at two sites, entries that differ. */
function elsewhere(measurement: Measurement, days: readonly GroupDay[]): readonly (readonly [string, string])[] {
  const { workerId, siteId, groupKey, shiftIds, mayBeKeys = [] } = measurement;
  if (siteId === null || (mayBeKeys.length === 0 && shiftIds.length < 2)) return [];
  const own = rosterDaysOf(measurement, days).filter((day) => day.workerId === workerId);
  const found = new Map<string, readonly [string, string]>();
  for (const key of mayBeKeys) found.set(nameOf(siteId, key), [siteId, key]);
  for (const day of own) found.set(nameOf(day.siteId, day.groupKey), [day.siteId, day.groupKey]);
  found.delete(nameOf(siteId, groupKey));
  return [...found.values()];
}

/** Groups of one site that may be the same, since nobody noted a classification: days and what proves nothing low bear on both. */
function bearBeside(scopes: readonly Growing[]): void {
  const bySite = new Map<string, Growing[]>();
  for (const scope of scopes) bySite.set(scope.siteId, [...(bySite.get(scope.siteId) ?? []), scope]);
  const more: (() => void)[] = [];
  for (const beside of bySite.values())
    for (const scope of beside)
      for (const other of beside) {
        if (other === scope || !mayBeSameGroup(other.groupKey, scope.groupKey)) continue;
        const open = other.own.filter((one) => !one.provesBelowActionLevel && !scope.own.includes(one));
        const days = other.days.filter((one) => !scope.days.includes(one));
        more.push(() => {
          scope.own.push(...open);
          scope.days.push(...days);
        });
      }
  // found of what was there before any of it is added
  for (const add of more) add();
}

/** By site and group. What proves nothing low bears wherever it may belong; what proves low only where it surely does. */
export function scopesOf(
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
  days: readonly GroupDay[],
): readonly Scope[] {
  const scopes = new Map<string, Growing>();
  const at = (siteId: string, groupKey: string): Growing => {
    const name = nameOf(siteId, groupKey);
    const held = scopes.get(name) ?? { siteId, groupKey, own: [], relied: [], days: [] };
    scopes.set(name, held);
    return held;
  };
  const boxedIds = boxedIdsOf(book);
  for (const day of days) at(day.siteId, day.groupKey).days.push(day);
  for (const measurement of measurements.values()) {
    if (measurement.siteId === null || !bearsOn(measurement, boxedIds)) continue;
    at(measurement.siteId, measurement.groupKey).own.push(measurement);
    if (measurement.provesBelowActionLevel) continue;
    for (const [siteId, groupKey] of elsewhere(measurement, days))
      if (scopes.has(nameOf(siteId, groupKey))) at(siteId, groupKey).own.push(measurement);
  }
  bearBeside([...scopes.values()]);
  addReliances(scopes, measurements, book);
  return [...scopes.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, scope]) => ({ ...scope, own: scope.own.sort(byDay) }));
}
