/** Who did which tasks where, each day, by the roster and by the samples, and the task groups that follow. */
import type { Book, SampleRecord, ShiftRecord, WorkdayRecord } from '#records/book.ts';
import { type GroupDay, groupKeyOf, type TaskGroup } from './taskGroup.ts';

/** What is known of one worker at one site on one day. Roster entries and samples that say different tasks: all of them were done. */
export interface ShiftTasks {
  readonly shiftId: string;
  readonly siteId: string;
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
    return {
      shiftId,
      siteId,
      taskIds: [...new Set([...entries, ...own].flatMap(({ taskIds }) => taskIds))].sort(),
      jobClassificationId: last([person, ...[...own, ...entries].map((one) => one.jobClassificationId)]),
      setting: sites.get(siteId)?.setting ?? 'indoors',
      respirator: last(entries.map(({ respirator }) => respirator)),
      from: entries.length > 0 ? 'roster' : 'sample',
      because: [...entries.map(({ factId }) => factId), ...own.flatMap(({ factIds }) => factIds.slice(0, 1))],
    };
  });
}

const order = ({ workOn, workerId, shiftId }: GroupDay): string => `${workOn} ${workerId} ${shiftId}`;

/** In the order of days, then workers. */
export function groupDaysOf(book: Book): readonly GroupDay[] {
  const byWorkday = new Map<string, { workerId: string; workOn: string; samples: SampleRecord[] }>();
  for (const { id, workerId, workOn, worked } of book.workdays.values())
    if (worked && worked.length > 0) byWorkday.set(id, { workerId, workOn, samples: [] });
  for (const sample of book.samples.values()) {
    const { workdayId, workerId, workOn } = sample;
    if (workdayId === null || workerId === null || !wasWorn(sample)) continue;
    const found = byWorkday.get(workdayId);
    if (found) found.samples.push(sample);
    else byWorkday.set(workdayId, { workerId, workOn, samples: [sample] });
  }
  const found: { readonly at: string; readonly day: GroupDay }[] = [];
  for (const [id, { workerId, workOn, samples }] of byWorkday)
    for (const shift of shiftTasksOf(workerId, book.workdays.get(id), samples, book)) {
      const groupKey = groupKeyOf(shift.setting, shift.jobClassificationId, shift.taskIds);
      const day = { ...shift, workerId, workOn, groupKey };
      found.push({ at: order(day), day });
    }
  return found.sort((a, b) => (a.at < b.at ? -1 : 1)).map(({ day }) => day);
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
