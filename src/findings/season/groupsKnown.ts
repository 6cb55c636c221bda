/** Every task group that the book knows of: from days worked, from measurements, from plans, from days made ready, from jobs that rest on others. */
import type { Book, DayPlanRecord, PlanRecord } from '#records/book.ts';
import { bearsOn, boxedIdsOf } from '../duties/determining/determinationScope.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { groupKeyOf } from '../duties/groups/taskGroup.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { isSameWork } from './ofWorker.ts';
import { planKeyOf } from './planSlots.ts';

export interface GroupKnown {
  readonly key: string;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  /** Last day of work at each site, up to today; null: only planned or reported there. */
  readonly lastDoneBySite: Map<string, string | null>;
  /** The same of each worker. */
  readonly lastDoneByWorker: Map<string, string | null>;
  /** Those that bear on it, oldest first. */
  readonly measurements: Measurement[];
  /** Not given up. One that names no job classification is of each group of its work. */
  readonly plans: PlanRecord[];
  daysCount: number;
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
      ...{ daysCount: 0, isPrepared: false },
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

const note = (into: Map<string, string | null>, id: string | null, on: string | null): void => {
  if (id === null) return;
  const before = into.get(id);
  if (before === undefined || before === null) into.set(id, on);
  else if (on !== null && on > before) into.set(id, on);
};

function addDays({ groups, today }: DutiesOfBook, into: Gathering): void {
  for (const { key, days, ...named } of groups.values()) {
    const own = into.at(key, named);
    own.daysCount += days.length;
    for (const { workOn, siteId, workerId } of days) {
      const on = workOn > today ? null : workOn;
      note(own.lastDoneBySite, siteId, on);
      note(own.lastDoneByWorker, workerId, on);
    }
  }
}

const settingOf = (key: string): Named['setting'] => (key.startsWith('outdoors|') ? 'outdoors' : 'indoors');

const byDay = (a: Measurement, b: Measurement): number =>
  a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : a.id < b.id ? -1 : 1;

/** Written down in the order of days, as nearly always, they are left as they are. */
const isInOrder = (ones: readonly Measurement[]): boolean =>
  ones.every((one, at) => at === 0 || byDay(ones[at - 1] ?? one, one) <= 0);

function addMeasurements({ measurements }: DutiesOfBook, book: Book, into: Gathering): void {
  const boxedIds = boxedIdsOf(book);
  for (const one of measurements.values()) {
    if (!bearsOn(one, boxedIds)) continue;
    const { groupKey, siteId, workerId } = one;
    const own = into.found.get(groupKey) ?? into.at(groupKey, { ...one, setting: settingOf(groupKey) });
    own.measurements.push(one);
    note(own.lastDoneBySite, siteId, null);
    note(own.lastDoneByWorker, workerId, null);
  }
  for (const { measurements: own } of into.found.values()) if (!isInOrder(own)) own.sort(byDay);
}

function addReliances({ reliances, sites }: Book, into: Gathering): void {
  for (const { shiftId, taskIds, jobClassificationId } of reliances.values()) {
    const siteId = shiftId.slice(0, -11);
    const setting = sites.get(siteId)?.setting ?? 'indoors';
    const key = groupKeyOf(setting, jobClassificationId, taskIds);
    note(into.at(key, { taskIds, jobClassificationId, setting }).lastDoneBySite, siteId, null);
  }
}

function addPlans({ plans }: Book, into: Gathering): void {
  for (const plan of plans.values()) {
    if (plan.dropped !== null) continue;
    for (const own of into.of(planKeyOf(plan), plan)) {
      own.plans.push(plan);
      note(own.lastDoneBySite, plan.siteId, null);
      for (const { workerId } of plan.slots) note(own.lastDoneByWorker, workerId, null);
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
    note(own.lastDoneBySite, siteId, null);
    note(own.lastDoneByWorker, workerId, null);
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
