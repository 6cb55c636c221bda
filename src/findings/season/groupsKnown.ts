/** Every task group that the book knows of: from days worked, from measurements, from plans, from days made ready, from jobs that rest on others. */
import type { Book, DayPlanRecord, PlanRecord } from '#records/book.ts';
import { bearsOn, boxedIdsOf } from '../duties/determining/determinationScope.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { type GroupDay, groupKeyOf } from '../duties/groups/taskGroup.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { isSameWork } from './ofWorker.ts';
import { planKeyOf } from './planSlots.ts';

type Days = Map<string, string | null>;

export interface GroupKnown {
  readonly key: string;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  /** Last day of work at each site, up to today; null: only planned or reported there. */
  readonly lastDoneBySite: Days;
  /** The same of each worker. */
  readonly lastDoneByWorker: Days;
  /** Those that bear on it, oldest first. */
  readonly measurements: Measurement[];
  /** Not given up. One that names no job classification is of each group of its work. */
  readonly plans: PlanRecord[];
  /** Somebody is made ready for it, today or later. */
  isPrepared: boolean;
}

type Named = Pick<GroupKnown, 'taskIds' | 'jobClassificationId' | 'setting'>;
type Wearer = NonNullable<DayPlanRecord['prepared']>['wearers'][number];

class Gathering {
  readonly found = new Map<string, GroupKnown>();

  at(key: string, { taskIds, jobClassificationId, setting }: Named): GroupKnown {
    const known = this.found.get(key);
    if (known) return known;
    const made: GroupKnown = {
      ...{ key, taskIds, jobClassificationId, setting },
      ...{ lastDoneBySite: new Map(), lastDoneByWorker: new Map(), measurements: [], plans: [] },
      isPrepared: false,
    };
    this.found.set(key, made);
    return made;
  }

  /** Groups of the same work; with no job classification any of them, and one of its own where there is none yet. */
  of(key: string, named: Named): readonly GroupKnown[] {
    const same = [...this.found.values()].filter((one) => isSameWork(key, one.key));
    return same.length > 0 ? same : [this.at(key, named)];
  }
}

/** A site or a worker of it that had no day of work up to today, as far as this goes. */
const note = (into: Days, id: string | null): void => {
  if (id !== null && !into.has(id)) into.set(id, null);
};

/** From the last day back, so that the first one met of a site or a worker is its last. */
function addDays({ groups, today }: DutiesOfBook, into: Gathering): void {
  for (const { key, days, ...named } of groups.values()) {
    const { lastDoneBySite, lastDoneByWorker } = into.at(key, named);
    let isAhead = true;
    for (let at = days.length - 1; at >= 0; at--) {
      const { workOn, siteId, workerId } = days[at] as GroupDay;
      isAhead &&= workOn > today;
      const on = isAhead ? null : workOn;
      if (!lastDoneBySite.get(siteId)) lastDoneBySite.set(siteId, on);
      if (!lastDoneByWorker.get(workerId)) lastDoneByWorker.set(workerId, on);
    }
  }
}

const settingOf = (key: string): Named['setting'] => (key.startsWith('outdoors|') ? 'outdoors' : 'indoors');

/** Written down in the order of days, as nearly always, they are left as they are. */
const isInOrder = (ones: readonly Measurement[]): boolean =>
  ones.every(({ workOn }, at) => at === 0 || (ones[at - 1]?.workOn ?? '') <= workOn);

const byDay = (a: Measurement, b: Measurement): number => (a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : 0);

function addMeasurements({ measurements }: DutiesOfBook, book: Book, into: Gathering): void {
  const boxedIds = boxedIdsOf(book);
  for (const one of measurements.values()) {
    if (!bearsOn(one, boxedIds)) continue;
    const { groupKey, siteId, workerId } = one;
    const own = into.found.get(groupKey) ?? into.at(groupKey, { ...one, setting: settingOf(groupKey) });
    own.measurements.push(one);
    note(own.lastDoneBySite, siteId);
    note(own.lastDoneByWorker, workerId);
  }
  for (const { measurements: own } of into.found.values()) if (!isInOrder(own)) own.sort(byDay);
}

function addReliances({ reliances, sites }: Book, into: Gathering): void {
  for (const { shiftId, taskIds, jobClassificationId } of reliances.values()) {
    const siteId = shiftId.slice(0, -11);
    const setting = sites.get(siteId)?.setting ?? 'indoors';
    const key = groupKeyOf(setting, jobClassificationId, taskIds);
    note(into.at(key, { taskIds, jobClassificationId, setting }).lastDoneBySite, siteId);
  }
}

function addPlans({ plans }: Book, into: Gathering): void {
  for (const plan of plans.values()) {
    if (plan.dropped !== null) continue;
    for (const own of into.of(planKeyOf(plan), plan)) {
      own.plans.push(plan);
      note(own.lastDoneBySite, plan.siteId);
      for (const { workerId } of plan.slots) note(own.lastDoneByWorker, workerId);
    }
  }
}

function addWearer(siteId: string, wearer: Wearer, { sites, people }: Book, into: Gathering): void {
  const { workerId, taskIds } = wearer;
  const setting = sites.get(siteId)?.setting ?? 'indoors';
  const jobClassificationId = wearer.jobClassificationId ?? people.get(workerId)?.jobClassificationId ?? null;
  const named = { taskIds, jobClassificationId, setting };
  for (const own of into.of(groupKeyOf(setting, jobClassificationId, taskIds), named)) {
    own.isPrepared = true;
    note(own.lastDoneBySite, siteId);
    note(own.lastDoneByWorker, workerId);
  }
}

function addPrepared(book: Book, today: string, into: Gathering): void {
  for (const { workOn, siteId, prepared } of book.dayPlans.values())
    if (workOn >= today) for (const wearer of prepared?.wearers ?? []) addWearer(siteId, wearer, book, into);
}

/** A group without a measurement, a day or a plan is none: what is noted as new when a job starts names no tasks. */
export function groupsKnown(book: Book, duties: DutiesOfBook): readonly GroupKnown[] {
  const gathering = new Gathering();
  addDays(duties, gathering);
  addMeasurements(duties, book, gathering);
  addReliances(book, gathering);
  addPlans(book, gathering);
  addPrepared(book, duties.today, gathering);
  return [...gathering.found.values()];
}
