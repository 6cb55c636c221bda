/**
 * The law of the issue over whole lists of duties: what was owed is still owed, to the same people, no later and no softer. Stated here
 * from the law itself; nothing expected comes from the findings.
 */
import type { Course } from '#findings/duties/course/course.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Duty } from '#findings/duties/list/duty.ts';

/** What may stand in the place of a kind without anything being taken away: it asks for more, or for the same thing by a stricter line. */
const stricter: Readonly<Record<string, readonly string[]>> = {
  // measured at or above, in doubt or not, it is on a schedule, and each who does it is measured
  initialDetermination: ['sixMonthly', 'quarterly', 'measureEach'],
  measureEach: ['sixMonthly', 'quarterly', 'initialDetermination'],
  measureAgain: ['sixMonthly', 'quarterly'],
  sixMonthly: ['quarterly'],
  cleanClothingWeekly: ['cleanClothingDaily'],
  // a negative one that can no longer be written is no relaxation: measuring is owed instead
  writeDetermination: [
    'initialDetermination',
    'measureAgain',
    'measureEach',
    'sixMonthly',
    'quarterly',
    'additionalMonitoring',
    'determinationDiffers',
  ],
};

const softness = {
  by: 0,
  asSoonAsPossible: 0,
  beforeWorkStarts: 0,
  atTheNextShift: 0,
  whileItLasts: 0,
  beforeOrOnFirstDayAgain: 1,
} as const;

const covers = (was: Duty, now: Duty): boolean => {
  if (now.kind !== was.kind) return (stricter[was.kind] ?? []).includes(now.kind) && !now.done;
  if (now.done && !was.done) return false;
  if (was.done) return true;
  if (was.late && !now.late) return false;
  if (was.dueOn !== null && now.dueOn !== null && now.dueOn > was.dueOn) return false;
  if (was.dueOn !== null && now.dueOn === null && now.when !== 'asSoonAsPossible') return false;
  return softness[now.when] <= softness[was.when];
};

const whose = (duty: Duty): readonly (string | null)[] => (duty.workerIds.length === 0 ? [null] : duty.workerIds);
const told = (duty: Duty, workerId: string | null): string =>
  `${duty.kind} of ${workerId} at ${duty.siteId} ${duty.groupKey} ${duty.when} ${duty.dueOn}`;

/** Each duty of each person that is no longer owed, or softer. `except` names what an act may take away. */
export function takenAway(
  before: DutiesOfBook,
  after: DutiesOfBook,
  except: (duty: Duty, workerId: string | null) => boolean = () => false,
): readonly string[] {
  const found: string[] = [];
  for (const was of before.duties)
    for (const workerId of whose(was)) {
      if (except(was, workerId)) continue;
      const now = after.duties.filter(
        ({ workerIds, siteId }) =>
          (workerId === null || workerIds.includes(workerId)) && (was.siteId === null || siteId === was.siteId),
      );
      if (!now.some((one) => covers(was, one))) found.push(told(was, workerId));
    }
  return found;
}

const rank = { none: 0, sixMonthly: 1, quarterly: 2, undetermined: 3 } as const;

const ofDeterminations = (before: DutiesOfBook, after: DutiesOfBook): readonly string[] =>
  before.determinations.flatMap((one) => {
    const { siteId, groupKey, outcome } = one;
    const now = after.determinations.find((other) => other.siteId === siteId && other.groupKey === groupKey)?.outcome;
    if (outcome === 'positive' && now !== 'positive') return [`positive at ${siteId} ${groupKey} gone`];
    return outcome === 'open' && now === 'negativeMayBeWritten' ? [`negative at ${siteId} ${groupKey}`] : [];
  });

function isSofter(was: Course, now: Course | undefined): boolean {
  if (was.schedule === 'undetermined') return now?.schedule === 'none' && now.due !== 'now';
  if (was.schedule === 'none') return was.due === 'now' && now?.due === 'none';
  // nothing has stopped where it says that measuring is owed now
  return !now || (rank[now.schedule] < rank[was.schedule] && !(now.schedule === 'none' && now.due === 'now'));
}

const ofCourses = (before: DutiesOfBook, after: DutiesOfBook): readonly string[] =>
  before.courses.flatMap((was) => {
    const { workerId, groupKey, schedule } = was;
    const now = after.courses.find((one) => one.workerId === workerId && one.groupKey === groupKey);
    return isSofter(was, now) ? [`course of ${workerId} ${groupKey}: ${schedule} to ${now?.schedule}`] : [];
  });

const ofDays = (before: DutiesOfBook, after: DutiesOfBook): readonly string[] =>
  [...before.exposureDays].flatMap(([workerId, { days }]) => {
    const now = new Map(after.exposureDays.get(workerId)?.days.map(({ on, atOrAbove }) => [on, atOrAbove]));
    return days.flatMap(({ on, atOrAbove }) =>
      (atOrAbove === 'yes' && now.get(on) !== 'yes') || (atOrAbove === 'notKnown' && now.get(on) === 'no')
        ? [`day of ${workerId} ${on}: ${atOrAbove} to ${now.get(on)}`]
        : [],
    );
  });

const ofNotices = (before: DutiesOfBook, after: DutiesOfBook): readonly string[] =>
  before.notices.flatMap((was) => {
    const now = after.notices.find(({ measurementId }) => measurementId === was.measurementId);
    const left = was.openIds.filter((id) => !now?.openIds.includes(id));
    return [
      ...left.map((id) => `notice of ${was.measurementId}: ${id} no longer to be told`),
      ...(was.pelStatement && !now?.pelStatement ? [`notice of ${was.measurementId}: no statement`] : []),
      ...(now && now.dueOn > was.dueOn ? [`notice of ${was.measurementId}: ${was.dueOn} to ${now.dueOn}`] : []),
    ];
  });

/** Relaxations beside the list: of courses, days, notices, determinations. */
export const relaxed = (before: DutiesOfBook, after: DutiesOfBook): readonly string[] => [
  ...ofDeterminations(before, after),
  ...ofCourses(before, after),
  ...ofDays(before, after),
  ...ofNotices(before, after),
];
