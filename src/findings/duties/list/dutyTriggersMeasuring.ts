/** Triggers of measuring and of writing down what was determined: 29 CFR 1926.62(d)(1) to (7). */
import type { Estimate } from '#core/estimate.ts';
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { Course } from '../course/course.ts';
import type { DeterminationFinding } from '../determining/determination.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { DueWhen } from './duty.ts';
import type { Ground, Job } from './dutyTriggersGround.ts';
import { ownActionLevel, ownPel } from './dutyTriggersLevels.ts';
import { earliest, fewOf, latest, type Met, type Trigger, type Triggers } from './dutyTriggersMet.ts';

/** The figure for a sentence: the larger end where it is known. */
export function figureOf(twa8: Estimate | null): Met['params'] {
  if (!twa8) return {};
  if (twa8.kind === 'exact') return { twa8UgPerM3: twa8.value };
  if (Number.isFinite(upperOf(twa8))) return { upToUgPerM3: upperOf(twa8) };
  return { atLeastUgPerM3: lowerOf(twa8) };
}

const tasksOf = (taskIds: readonly string[]): Met['params'] => ({ tasks: taskIds.join('+') });

function ofJob(job: Job, workerIds: readonly string[], measurements: readonly Measurement[]): Met {
  const turns = [...job.turns.values()].filter(({ workerId }) => workerIds.includes(workerId));
  return {
    subjects: [job.siteId, job.groupKey],
    workerIds,
    siteId: job.siteId,
    groupKey: job.groupKey,
    measurementIds: measurements.map(({ id }) => id),
    params: { ...tasksOf(job.taskIds), tier: job.presumption.tier },
    presumed: job.presumption.presumedAbove !== null && measurements.length === 0,
    because: fewOf([...turns.flatMap(({ because }) => because), ...measurements.flatMap(({ because }) => because)]),
    startsOn: earliest(turns.map(({ firstOn }) => firstOn)),
    lastOn: latest(turns.map(({ lastOn }) => lastOn)),
  };
}

/** At or above, or proven low. A low figure that proves nothing ends no duty to measure: an irregular day, an inspector's. */
const decides = ({ band, provesBelowActionLevel }: Measurement): boolean =>
  band === 'actionLevelToPel' || band === 'abovePel' || provesBelowActionLevel;

/** Neither positive nor negative: nobody has determined yet whether somebody may be at or above the action level. */
const notAssessed: Trigger = ({ ground: { jobs } }) =>
  jobs.flatMap((job) => {
    const { determination, measurements } = job;
    if (determination && determination.outcome !== 'open') return [];
    const met = ofJob(job, [...job.turns.keys()], measurements);
    return [{ ...met, params: { ...met.params, awaited: measurements.some((m) => m.resultOwed) ? 'yes' : 'no' } }];
  });

/** At or above the action level is possible, and for these workers nothing that was measured stands. */
const positiveNotMeasured: Trigger = ({ ground }) =>
  ground.jobs.flatMap((job) => {
    if (job.determination?.outcome !== 'positive') return [];
    const left = [...job.turns.keys()].filter(
      (workerId) =>
        !job.measurements.some(
          (one) => decides(one) && (one.workerId === workerId || ground.isSurelyFor(one, workerId)),
        ),
    );
    return left.length === 0 ? [] : [ofJob(job, left, job.measurements)];
  });

/** Neither proven low nor, for its known part, high: the day does not count as measured. */
export const provesNothingLow = (one: Measurement): boolean =>
  one.band === 'open' ||
  (one.band === 'belowActionLevel' && !one.provesBelowActionLevel) ||
  (one.band === 'actionLevelToPel' && !one.provesNotAbovePel);

/** The last measurement of each worker at each kind of task whose result is there: one that is owed takes nothing back yet. */
function lastOnes(ground: Ground): readonly Measurement[] {
  const last = new Map<string, Measurement>();
  for (const one of ground.parts.measurements.values()) {
    if (one.workerId === null || !one.limits.heldComplete || one.resultOwed) continue;
    const key = `${one.workerId} ${one.groupKey}`;
    const before = last.get(key);
    if (!before || one.workOn > before.workOn || (one.workOn === before.workOn && one.id > before.id))
      last.set(key, one);
  }
  return [...last.values()];
}

const provesNothing: Trigger = ({ ground }) =>
  lastOnes(ground)
    .filter(provesNothingLow)
    .map((one) => ({
      subjects: [one.id],
      workerIds: one.workerId === null ? [] : [one.workerId],
      siteId: one.siteId,
      groupKey: one.groupKey,
      measurementIds: [one.id],
      params: {
        ...tasksOf(one.taskIds),
        ...figureOf(one.twa8UgPerM3),
        workOn: one.workOn,
        reasons: [...new Set(one.blocks.map(({ key }) => key))].join('+'),
      },
      presumed: false,
      because: fewOf(one.because),
      startsOn: one.receipts[0]?.receivedOn ?? one.workOn,
      lastOn: null,
    }));

const whenOfCourse: Readonly<Record<Course['due'], DueWhen>> = {
  none: 'asSoonAsPossible',
  byDate: 'by',
  beforeNextTime: 'beforeOrOnFirstDayAgain',
  now: 'asSoonAsPossible',
};

/** On a schedule that the rule alone would not ask for: by the firm's own limit. */
function ownOf({ schedule }: Course, last: Measurement | undefined, ground: Ground): Met['params'] {
  if (!last?.byRule) return {};
  const { band } = last.byRule;
  const own = schedule === 'quarterly' ? ownPel(ground) : ownActionLevel(ground);
  const byRule = schedule === 'quarterly' ? band === 'abovePel' : band !== 'belowActionLevel';
  return own && !byRule ? { ownLimitUgPerM3: own.value } : {};
}

function ofCourse(course: Course, ground: Ground, subject: string): Met | null {
  const last = course.lastMeasurementId ? ground.parts.measurements.get(course.lastMeasurementId) : undefined;
  const group = ground.parts.groups.get(course.groupKey);
  const onSite = last?.siteId ?? group?.days.find(({ workerId }) => workerId === course.workerId)?.siteId ?? null;
  const isHeld =
    last?.limits.heldComplete ||
    group?.days.some((day) => day.workerId === course.workerId && ground.isHeld(day.siteId));
  if (!isHeld) return null;
  return {
    subjects: [course.workerId, course.groupKey, subject],
    workerIds: [course.workerId],
    siteId: onSite,
    groupKey: course.groupKey,
    measurementIds: last ? [last.id] : [],
    params: {
      ...tasksOf(last?.taskIds ?? group?.taskIds ?? []),
      ...figureOf(last?.twa8UgPerM3 ?? null),
      ...(last ? { workOn: last.workOn, band: last.band } : {}),
      ...ownOf(course, last, ground),
    },
    presumed: false,
    because: fewOf([...(last?.because ?? []), ...course.steps.flatMap(({ because }) => because)]),
    startsOn: null,
    lastOn: null,
    due: { when: whenOfCourse[course.due], dueOn: course.dueOn, overdue: course.overdue },
  };
}

const onSchedule =
  (schedule: Course['schedule']): Trigger =>
  ({ ground }) =>
    ground.parts.courses.flatMap((course) => {
      if (course.schedule !== schedule) return [];
      return ofCourse(course, ground, course.lastMeasurementId ?? '-') ?? [];
    });

const change: Trigger = ({ ground }) =>
  ground.parts.courses.flatMap((course) => {
    const { changeOwed } = course;
    if (!changeOwed) return [];
    const met = ofCourse(course, ground, changeOwed.on);
    if (!met) return [];
    const due = { when: 'asSoonAsPossible' as const, dueOn: null, overdue: false };
    const because = fewOf([...changeOwed.because, ...met.because]);
    return [{ ...met, params: { ...met.params, changedOn: changeOwed.on }, because, startsOn: changeOwed.on, due }];
  });

const everyoneOf = ({ monitoredIds, standsForIds }: DeterminationFinding): readonly string[] => [
  ...new Set([...monitoredIds, ...standsForIds]),
];

const negativeNotWritten: Trigger = ({ ground: { jobs } }) =>
  jobs.flatMap((job) =>
    job.determination?.outcome === 'negativeMayBeWritten' && job.determination.writtenId === null
      ? [ofJob(job, everyoneOf(job.determination), job.measurements)]
      : [],
  );

const determinationDiffers: Trigger = ({ ground: { jobs } }) =>
  jobs.flatMap((job) =>
    job.determination?.differsFromRecord && job.determination.writtenId !== null
      ? [ofJob(job, everyoneOf(job.determination), job.measurements)]
      : [],
  );

export const measuring: Triggers = {
  notAssessed,
  positiveNotMeasured,
  provesNothing,
  sixMonthly: onSchedule('sixMonthly'),
  quarterly: onSchedule('quarterly'),
  change,
  negativeNotWritten,
  determinationDiffers,
};
