/**
 * What to measure next: every task group that the book knows of, in order of need. It reads what duties, courses, determinations and
 * measurements already say and decides nothing of its own.
 */
import type { Book, PlanRecord } from '#records/book.ts';
import { presumptionFor, tierNames } from '#reference/presumption.ts';
import type { Course } from '../duties/course/course.ts';
import type { DeterminationFinding } from '../duties/determining/determination.ts';
import { evidenceBlocks } from '../duties/determining/determinationEvidence.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { reliableUntil } from '../duties/groups/reliance.ts';
import type { Duty } from '../duties/list/duty.ts';
import { tableHeld } from '../duties/list/dutyTriggersGround.ts';
import type { NotHeld } from '../duties/list/notHeld.ts';
import { type GroupKnown, groupsKnown } from './groupsKnown.ts';
import { byPress, latest } from './need.ts';
import { needsOf } from './needsOf.ts';
import type { NextToMeasure, PlanOfGroup, WorkerOfGroup } from './nextFinding.ts';
import { planStanding } from './plan.ts';
import { publishedExposuresFor } from './publishedExposures.ts';

export type { NextToMeasure, PlanOfGroup, WorkerOfGroup } from './nextFinding.ts';

type Reliable = NextToMeasure['reliable'];

/** Only what was proven low is worth resting on: a high one is at or above wherever it is relied on. */
function reliableOf({ measurements }: GroupKnown, book: Book, today: string): Reliable {
  const best = measurements.findLast((one) => one.provesBelowActionLevel && evidenceBlocks(one, book).length === 0);
  if (!best) return null;
  const untilOn = reliableUntil(best);
  return { measurementId: best.id, untilOn, past: untilOn < today };
}

function workersOf(
  { lastDoneByWorker, measurements }: GroupKnown,
  courses: readonly Course[],
): readonly WorkerOfGroup[] {
  const ids = new Set([...lastDoneByWorker.keys(), ...courses.map(({ workerId }) => workerId)]);
  const lastOf = new Map(measurements.map((one) => [one.workerId, one]));
  const courseOf = new Map(courses.map((one) => [one.workerId, one]));
  return [...ids].map((workerId) => {
    const last = lastOf.get(workerId);
    return {
      workerId,
      course: courseOf.get(workerId) ?? null,
      lastMeasurementId: last?.id ?? null,
      lastMeasuredOn: last?.workOn ?? null,
      lastDoneOn: lastDoneByWorker.get(workerId) ?? null,
    };
  });
}

function byKey<T>(ones: Iterable<T>, keyOf: (one: T) => string | null): ReadonlyMap<string, readonly T[]> {
  const found = new Map<string, T[]>();
  for (const one of ones) {
    const key = keyOf(one);
    if (key === null) continue;
    const own = found.get(key);
    if (own) own.push(one);
    else found.set(key, [one]);
  }
  return found;
}

/** What is looked up for every group. */
interface Sight {
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly dutiesBy: ReadonlyMap<string, readonly Duty[]>;
  readonly coursesBy: ReadonlyMap<string, readonly Course[]>;
  readonly determinationsBy: ReadonlyMap<string, readonly DeterminationFinding[]>;
  readonly notHeldBy: ReadonlyMap<string, NotHeld>;
  readonly planOf: (plan: PlanRecord) => PlanOfGroup;
  readonly quietDays: number;
}

function sightOf(book: Book, duties: DutiesOfBook): Sight {
  const plans = new Map<PlanRecord, PlanOfGroup>();
  return {
    book,
    duties,
    dutiesBy: byKey(duties.duties, ({ done, groupKey }) => (done ? null : groupKey)),
    coursesBy: byKey(duties.courses, ({ groupKey }) => groupKey),
    determinationsBy: byKey(duties.determinations, ({ groupKey }) => groupKey),
    notHeldBy: new Map((duties.notHeld ?? []).map((one) => [one.siteId, one])),
    planOf: (plan) => {
      const known = plans.get(plan) ?? standingOf(plan, book, duties);
      plans.set(plan, known);
      return known;
    },
    quietDays: tableHeld().quietAfter.value,
  };
}

function standingOf(plan: PlanRecord, book: Book, duties: DutiesOfBook): PlanOfGroup {
  const { toDoCount, slotsCount } = planStanding(plan, book, duties);
  return { planId: plan.id, openCount: toDoCount, slotsCount };
}

function ofGroup(group: GroupKnown, sight: Sight): NextToMeasure {
  const { book, duties, notHeldBy, quietDays } = sight;
  const { key, taskIds, jobClassificationId, setting } = group;
  const courses = sight.coursesBy.get(key) ?? [];
  const determinations = sight.determinationsBy.get(key) ?? [];
  const plans = group.plans.map(sight.planOf);
  const openCount = plans.reduce((sum, plan) => sum + plan.openCount, 0);
  const siteIds = [...group.lastDoneBySite.keys()];
  const notHeld = siteIds.flatMap((id) => notHeldBy.get(id) ?? []);
  const needs = needsOf({
    group,
    today: duties.today,
    duties: sight.dutiesBy.get(key) ?? [],
    courses,
    determinations: new Map(determinations.map((one) => [one.siteId, one])),
    siteOf: (id) => duties.measurements.get(id)?.siteId ?? null,
    isHeld: (id) => id !== null && !notHeldBy.has(id),
    quietDays,
    openCount,
  });
  const last = group.measurements.at(-1) ?? null;
  return {
    groupKey: key,
    ...{ taskIds, jobClassificationId, setting },
    need: needs[0],
    needs,
    presumption: presumptionFor(taskIds),
    notHeld,
    ruleHeld: siteIds.length === 0 || notHeld.length < siteIds.length,
    last,
    reliable: reliableOf(group, book, duties.today),
    dueOn: courses.flatMap(({ dueOn }) => dueOn ?? []).sort()[0] ?? null,
    overdue: courses.some(({ overdue }) => overdue),
    reasons: last?.blocks ?? [],
    blocks: determinations.flatMap(({ outcome, blocks, siteId }) =>
      outcome === 'open' ? blocks.map((one) => ({ ...one, siteId })) : [],
    ),
    siteIds,
    workers: workersOf(group, courses),
    plans,
    openCount,
    lastDoneOn: latest(group.lastDoneBySite.values()),
    published: publishedExposuresFor(taskIds, setting),
  };
}

const tierOf = ({ presumption }: NextToMeasure): number => tierNames.indexOf(presumption.tier);

/** Of what was never measured the higher presumed tier first; then whatever was done last. */
function inOrder(a: NextToMeasure, b: NextToMeasure): number {
  const pressed = byPress(a.need, b.need);
  if (pressed !== 0) return pressed;
  if (tierOf(a) !== tierOf(b)) return tierOf(b) - tierOf(a);
  const [onA, onB] = [a.lastDoneOn ?? '', b.lastDoneOn ?? ''];
  if (onA !== onB) return onA > onB ? -1 : 1;
  return a.groupKey < b.groupKey ? -1 : 1;
}

/** In order of need. */
export function nextToMeasure(book: Book, duties: DutiesOfBook): readonly NextToMeasure[] {
  const sight = sightOf(book, duties);
  return groupsKnown(book, duties)
    .map((group) => ofGroup(group, sight))
    .sort(inOrder);
}
