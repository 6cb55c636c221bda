/** Who did which tasks where, each day, by the roster and by the samples, and the task groups that follow. */
import type { Book, SampleRecord, ShiftRecord, WorkdayRecord } from '#records/book.ts';
import { isSameList } from '../changedSince.ts';
import { type GroupDay, groupKeyOf, type TaskGroup } from './taskGroup.ts';

/** What is known of one worker at one site on one day. Roster entries and samples that say different tasks: all of them were done. */
export interface ShiftTasks {
  readonly shiftId: string;
  readonly siteId: string;
  readonly mayBeKeys?: readonly string[];
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  readonly respirator: string | null;
  readonly from: 'roster' | 'sample';
  readonly because: readonly string[];
}

/** A cassette that never went on a worker tells of nobody's work, unless the laboratory found something on it. */
export const wasWorn = ({ sampleKind, putOn, results }: SampleRecord): boolean =>
  sampleKind === 'air' && (putOn !== null || results.length > 0);

/** Site and day make the id of a shift (records/common.ts). */
export const siteOfShift = (shiftId: string): string => shiftId.slice(0, -11);
export const dayOfShift = (shiftId: string): string => shiftId.slice(-10);

const asked = ['equipment', 'process', 'control', 'personnel', 'newTask'] as const;

/** Something new when the job started, or nobody knew: either asks for additional monitoring, 29 CFR 1926.62(d)(7). */
export function changeNotedOn(shift: ShiftRecord | undefined): { on: string; because: readonly string[] } | null {
  const changes = shift?.changes;
  if (!shift || !changes || asked.every((what) => changes[what] === 'no')) return null;
  return { on: shift.workOn, because: [changes.factId] };
}

const last = <T>(values: readonly (T | null)[]): T | null => values.filter((one) => one !== null).at(-1) ?? null;

interface Said {
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
}

/** The groups that single entries and samples name, where they do not all say what they say together. */
function mayBe(all: readonly Said[], together: Said & Pick<ShiftTasks, 'setting'>, person: string | null) {
  if (all.length < 2) return {};
  const { setting, taskIds } = together;
  const own = groupKeyOf(setting, together.jobClassificationId, taskIds);
  const keys = new Set<string>();
  for (const one of all) {
    const job = one.jobClassificationId ?? person;
    keys.add(groupKeyOf(setting, job, one.taskIds)).add(groupKeyOf(setting, job, taskIds));
    keys.add(groupKeyOf(setting, together.jobClassificationId, one.taskIds));
  }
  keys.delete(own);
  return keys.size === 0 ? {} : { mayBeKeys: [...keys].sort() };
}

type Sources = Pick<Book, 'sites' | 'people'>;

/** In the order of shift ids. `samples`: of this worker on this day. */
export function shiftTasksOf(
  workerId: string,
  day: WorkdayRecord | undefined,
  samples: readonly SampleRecord[],
  { sites, people }: Sources,
): readonly ShiftTasks[] {
  const worked = day?.worked ?? [];
  const worn = samples.filter(wasWorn);
  const shiftIds = [...new Set([...worked, ...worn].map(({ shiftId }) => shiftId))].sort();
  return shiftIds.map((shiftId) => {
    const entries = worked.filter((one) => one.shiftId === shiftId);
    const own = worn.filter((one) => one.shiftId === shiftId);
    const siteId = siteOfShift(shiftId);
    const person = people.get(workerId)?.jobClassificationId ?? null;
    const all = [...own, ...entries];
    const together = {
      taskIds: [...new Set(all.flatMap(({ taskIds }) => taskIds))].sort(),
      jobClassificationId: last([person, ...all.map((one) => one.jobClassificationId)]),
      setting: sites.get(siteId)?.setting ?? ('indoors' as const),
    };
    return {
      shiftId,
      siteId,
      ...together,
      ...mayBe(all, together, person),
      respirator: last(entries.map(({ respirator }) => respirator)),
      from: entries.length > 0 ? 'roster' : 'sample',
      because: [...entries.map(({ factId }) => factId), ...own.flatMap(({ factIds }) => factIds.slice(0, 1))],
    };
  });
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const inOrder = (a: GroupDay, b: GroupDay): number =>
  compare(a.workOn, b.workOn) || compare(a.workerId, b.workerId) || compare(a.shiftId, b.shiftId);

interface Whose {
  readonly workerId: string;
  readonly workOn: string;
  readonly day: WorkdayRecord | undefined;
  readonly samples: SampleRecord[];
}

/** Made from these records and found before: by the first of them, so that nothing is kept that nobody holds. */
const found = new WeakMap<object, { readonly of: readonly unknown[]; readonly days: readonly GroupDay[] }>();

function daysOf({ workerId, workOn, day, samples }: Whose, book: Book): readonly GroupDay[] {
  const first = day ?? samples[0];
  if (!first) return [];
  const before = found.get(first);
  const of: unknown[] = [day, book.people.get(workerId), ...samples];
  for (const one of before?.days ?? []) of.push(book.sites.get(one.siteId));
  if (before && isSameList(before.of, of)) return before.days;
  const days = shiftTasksOf(workerId, day, samples, book).map((shift): GroupDay => {
    const groupKey = groupKeyOf(shift.setting, shift.jobClassificationId, shift.taskIds);
    return { ...shift, workerId, workOn, groupKey };
  });
  const sites = days.map(({ siteId }) => book.sites.get(siteId));
  found.set(first, { of: [day, book.people.get(workerId), ...samples, ...sites], days });
  return days;
}

function isInOrder(days: readonly GroupDay[]): boolean {
  for (let i = 1; i < days.length; i++) if (inOrder(days[i - 1] as GroupDay, days[i] as GroupDay) > 0) return false;
  return true;
}

/** In the order of days, then workers. */
export function groupDaysOf(book: Book): readonly GroupDay[] {
  const byWorkday = new Map<string, Whose>();
  for (const day of book.workdays.values()) {
    const { id, workerId, workOn, worked } = day;
    if (worked && worked.length > 0) byWorkday.set(id, { workerId, workOn, day, samples: [] });
  }
  for (const sample of book.samples.values()) {
    const { workdayId, workerId, workOn } = sample;
    if (workdayId === null || workerId === null || !wasWorn(sample)) continue;
    const known = byWorkday.get(workdayId);
    if (known) known.samples.push(sample);
    else byWorkday.set(workdayId, { workerId, workOn, day: book.workdays.get(workdayId), samples: [sample] });
  }
  const days: GroupDay[] = [];
  for (const whose of byWorkday.values()) for (const day of daysOf(whose, book)) days.push(day);
  return isInOrder(days) ? days : days.sort(inOrder);
}

/** By key. `days` in the order of groupDaysOf. */
export function taskGroupsOf(days: readonly GroupDay[]): ReadonlyMap<string, TaskGroup> {
  const byKey = new Map<string, GroupDay[]>();
  for (const day of days) {
    const found = byKey.get(day.groupKey);
    if (found) found.push(day);
    else byKey.set(day.groupKey, [day]);
  }
  const groups = new Map<string, TaskGroup>();
  for (const [key, own] of byKey) {
    const [first] = own;
    if (!first) continue;
    groups.set(key, {
      key,
      taskIds: first.taskIds,
      jobClassificationId: first.jobClassificationId,
      setting: first.setting,
      days: own,
      workerIds: [...new Set(own.map(({ workerId }) => workerId))],
      lastOn: own.at(-1)?.workOn ?? null,
    });
  }
  return groups;
}
