/**
 * What one task group needs, read from its duties, courses and measurements. Nothing is derived anew: a duty says that it is owed, a
 * measurement says that its result is; here they only get their place in the list.
 */
import { addDays, daysBetween } from '#core/calendar.ts';
import type { Course } from '../duties/course/course.ts';
import type { DeterminationFinding } from '../duties/determining/determination.ts';
import type { Duty } from '../duties/list/duty.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { dueSoonDays } from '../practice.ts';
import { areBlocksAnswerable, areReasonsAnswerable } from './answerable.ts';
import type { GroupKnown } from './groupsKnown.ts';
import { isInVain } from './inVain.ts';
import { type AboutNeed, byPress, latest, mergedNeeds, type Need, type NeedKind, need } from './need.ts';

export interface GroupSight {
  readonly group: GroupKnown;
  readonly today: string;
  /** Not done, of this group. */
  readonly duties: readonly Duty[];
  readonly courses: readonly Course[];
  /** By site. */
  readonly determinations: ReadonlyMap<string, DeterminationFinding>;
  /** Where a measurement was made. */
  readonly siteOf: (measurementId: string) => string | null;
  readonly isHeld: (siteId: string | null) => boolean;
  /** Days without work after which a line speaks of the next time. */
  readonly quietDays: number;
  readonly openCount: number;
}

const ofDuty = (kind: NeedKind, duty: Duty, about: AboutNeed = {}): Need =>
  need(kind, {
    siteId: duty.siteId,
    workerIds: duty.workerIds,
    dueOn: duty.dueOn,
    overdue: duty.overdue,
    dutyIds: [duty.id],
    because: duty.because,
    ...about,
  });

/** The work goes on there, or it is planned. */
function goesOn({ group, today, quietDays, openCount }: GroupSight, siteId: string | null): boolean {
  if (openCount > 0 || group.isPrepared) return true;
  const last = siteId === null ? latest(group.lastDoneBySite.values()) : (group.lastDoneBySite.get(siteId) ?? null);
  return last !== null && daysBetween(last, today) <= quietDays;
}

/** A result of this worker is owed that is younger than what the duty rests on: measuring once more would be needless so far. */
const isAwaited = ({ group }: GroupSight, workerId: string | undefined, afterOn: string): boolean =>
  group.measurements.some((one) => one.resultOwed && one.workerId === workerId && one.workOn >= afterOn);

function ofDetermination(duty: Duty, sight: GroupSight): Need {
  if (duty.params.awaited === 'yes') return ofDuty('resultOwed', duty);
  const finding = sight.determinations.get(duty.siteId ?? '');
  const ids = finding?.measurementIds ?? [];
  if (finding && ids.length > 0 && areBlocksAnswerable(finding.blocks.map(({ key }) => key)))
    return ofDuty('answer', duty);
  // what a job rests on was measured elsewhere
  if (ids.some((id) => sight.siteOf(id) === duty.siteId)) return ofDuty('again', duty);
  return ofDuty(goesOn(sight, duty.siteId) ? 'neverMeasured' : 'notMeasuredNoWork', duty);
}

/** The group is known there, and these workers are not: their results are owed, or nothing of theirs stands. */
function ofEach(duty: Duty, sight: GroupSight): readonly Need[] {
  const owed = duty.workerIds.filter((id) => isAwaited(sight, id, ''));
  const left = duty.workerIds.filter((id) => !owed.includes(id));
  const kind = goesOn(sight, duty.siteId) ? 'neverMeasured' : 'notMeasuredNoWork';
  return [
    ...(owed.length > 0 ? [ofDuty('resultOwed', duty, { workerIds: owed })] : []),
    ...(left.length > 0 ? [ofDuty(kind, duty, { workerIds: left })] : []),
  ];
}

function ofSchedule(duty: Duty, sight: GroupSight): readonly Need[] {
  const [workerId] = duty.workerIds;
  const course = sight.courses.find((one) => one.workerId === workerId);
  // these have a duty of their own, or stand among the courses below
  if (course?.changeOwed || course?.measureAgain) return [];
  const lastOn = typeof duty.params.workOn === 'string' ? duty.params.workOn : '';
  if (isAwaited(sight, workerId, lastOn)) return [ofDuty('resultOwed', duty)];
  const { when, dueOn, overdue } = duty;
  if (overdue || when !== 'by' || dueOn === null || dueOn <= sight.today) return [ofDuty('dueAgain', duty)];
  return dueOn <= addDays(sight.today, dueSoonDays.value) ? [ofDuty('dueSoon', duty)] : [];
}

function ofChange(duty: Duty, sight: GroupSight): Need {
  const changedOn = typeof duty.params.changedOn === 'string' ? duty.params.changedOn : '';
  return ofDuty(isAwaited(sight, duty.workerIds[0], changedOn) ? 'resultOwed' : 'changed', duty);
}

function ofVain(duty: Duty, sight: GroupSight): Need {
  const workOn = typeof duty.params.workOn === 'string' ? duty.params.workOn : '';
  if (isAwaited(sight, duty.workerIds[0], workOn)) return ofDuty('resultOwed', duty);
  return ofDuty(areReasonsAnswerable(String(duty.params.reasons ?? '')) ? 'answer' : 'again', duty);
}

/** By kind of duty (shared/duties). */
export const needsByDuty: Readonly<Record<string, (duty: Duty, sight: GroupSight) => readonly Need[]>> = {
  initialDetermination: (duty, sight) => [ofDetermination(duty, sight)],
  measureEach: ofEach,
  measureAgain: (duty, sight) => [ofVain(duty, sight)],
  sixMonthly: ofSchedule,
  quarterly: ofSchedule,
  additionalMonitoring: (duty, sight) => [ofChange(duty, sight)],
};

/** The last occasion of a course is in doubt: measuring again is owed, whether a duty names it or not. */
function ofCourses(sight: GroupSight, known: readonly Need[]): readonly Need[] {
  const named = new Set(
    known.filter(({ kind }) => kind === 'again' || kind === 'answer').flatMap(({ workerIds }) => workerIds),
  );
  return sight.courses.flatMap((course) => {
    const { workerId, measureAgain, changeOwed, dueOn, overdue } = course;
    if (!measureAgain || changeOwed || named.has(workerId)) return [];
    const lastOn = latest(
      sight.group.measurements.map((one) => (one.workerId === workerId && !one.resultOwed ? one.workOn : null)),
    );
    const kind = isAwaited(sight, workerId, lastOn ?? '') ? 'resultOwed' : 'again';
    return [need(kind, { workerIds: [workerId], dueOn, overdue })];
  });
}

const workersOf = (ones: readonly Measurement[]): readonly string[] => [
  ...new Set(ones.flatMap(({ workerId }) => workerId ?? [])),
];

/** Sites whose rule is not held have no duties: what nobody measured there, or measured last in vain, is told from the record. */
function ofSitesNotHeld(sight: GroupSight): readonly Need[] {
  const { group, isHeld } = sight;
  return [...group.lastDoneBySite].flatMap(([siteId, lastOn]) => {
    if (isHeld(siteId)) return [];
    const last = group.measurements.findLast((one) => one.siteId === siteId);
    if (last) return isInVain(last) ? [againThere(last)] : [];
    if (lastOn === null || group.measurements.length === 0) return [];
    return [need(goesOn(sight, siteId) ? 'neverMeasured' : 'notMeasuredNoWork', { siteId })];
  });
}
const againThere = (last: Measurement): Need =>
  need('again', { siteId: last.siteId, workerIds: workersOf([last]), because: last.because });

/** What no duty says: results that are owed, what proves nothing where the rule is not held, plans, and what nobody measured. */
function ofRecord(sight: GroupSight, known: readonly Need[]): readonly Need[] {
  const { group, openCount } = sight;
  const has = (kind: NeedKind): boolean => known.some((one) => one.kind === kind);
  const found: Need[] = [];
  const owed = group.measurements.filter(({ resultOwed }) => resultOwed);
  if (owed.length > 0 && !has('resultOwed')) found.push(need('resultOwed', { workerIds: workersOf(owed) }));
  const [last] = group.measurements.slice(-1);
  if (!last) {
    const kind = goesOn(sight, null) ? 'neverMeasured' : 'notMeasuredNoWork';
    if (!has('neverMeasured') && !has('notMeasuredNoWork')) found.push(need(kind));
  } else if (last.siteId === null && isInVain(last)) found.push(againThere(last));
  found.push(...ofSitesNotHeld(sight));
  if (openCount > 0) found.push(need('planned'));
  return found;
}

/** In order; never empty: a group that needs nothing is `known`, with the first day on which a course asks for more. */
export function needsOf(sight: GroupSight): readonly [Need, ...Need[]] {
  const owed = sight.duties.flatMap((duty) => needsByDuty[duty.kind]?.(duty, sight) ?? []);
  const inDoubt = [...owed, ...ofCourses(sight, owed)];
  const [first, ...more] = mergedNeeds([...inDoubt, ...ofRecord(sight, inDoubt)].sort(byPress));
  if (first) return [first, ...more];
  const dueOn = sight.courses.flatMap((one) => one.dueOn ?? []).sort()[0] ?? null;
  return [need('known', { dueOn })];
}
