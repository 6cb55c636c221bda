/**
 * On which side of the PEL, and of the level of daily cleaning, a worker stands at a job: measured, presumed, or proven not above.
 * Doubt never lowers: what is presumed stands until a measurement that stands for this worker proves less, and what was measured
 * above stands until two proven ones in a row, as far apart as the rule asks for its own step-down.
 */
import { daysBetween } from '#core/calendar.ts';
import { compareWithLimit, type Limit } from '#core/comparison.ts';
import { atLeast, between, type Estimate, upperOf } from '#core/estimate.ts';
import { dailyCleaningLimit } from '#reference/duties.ts';
import type { Presumption } from '#reference/presumption.ts';
import { namedInWriting } from '../groups/standsFor.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { Ground, Job, Turn } from './dutyTriggersGround.ts';
import { earliest } from './dutyTriggersMet.ts';

export type By = 'measured' | 'presumed' | 'no';

export interface Level {
  readonly job: Job;
  readonly turn: Turn;
  readonly pel: By;
  readonly daily: By;
  /** Above by the firm's own limit alone. */
  readonly byOwn: boolean;
  /** The measurement that puts the worker there. */
  readonly measurement: Measurement | null;
  /** Measured above: the first day on which the firm could know of it, and has been since; null: it is not measured above. */
  readonly since: string | null;
}

/** Does it reach the limit on the careful side? The larger end where it is known, else what is known at least. */
export function reachesOnHighEnd(estimate: Estimate, limit: Limit): boolean {
  const { crossed } = compareWithLimit(estimate, limit);
  return crossed === 'yes' || (crossed === 'unresolved' && Number.isFinite(upperOf(estimate)));
}

/** What a tier presumes of the air, as an estimate; null: nothing. */
export function presumedEstimate({ presumedAbove, presumedUpTo }: Presumption): Estimate | null {
  if (!presumedAbove) return null;
  return presumedUpTo ? between(presumedAbove.value, presumedUpTo.value) : atLeast(presumedAbove.value);
}

const ownLimit = (id: string, value: number | null, reachedWhen: Limit['reachedWhen']): Limit | null =>
  value === null ? null : { id, value, unit: 'µg/m³', reachedWhen };

/** The firm's own limits, where it chose any. */
export const ownPel = ({ book }: Ground): Limit | null =>
  ownLimit('ownPel', book.book?.limits?.ownPelUgPerM3 ?? null, 'above');
export const ownActionLevel = ({ book }: Ground): Limit | null =>
  ownLimit('ownActionLevel', book.book?.limits?.ownActionLevelUgPerM3 ?? null, 'atOrAbove');

interface Walk {
  state: By;
  measurement: Measurement | null;
  since: string | null;
  /** The last proven one in a row since the last one above. */
  low: Measurement | null;
}

/** The first day on which its result was there. */
const knownOn = ({ receipts, workOn }: Measurement): string =>
  earliest(receipts.map(({ receivedOn }) => receivedOn)) ?? workOn;

/** How far apart two low ones lie and how many there are, from the rule's own step-down. */
function isFarEnough(a: Measurement, b: Measurement, job: Job): boolean {
  const apart = job.limits.set.duties?.stepDown.daysApart.value;
  if (apart === undefined) throw new Error('a rule that is held says how far apart');
  return daysBetween(a.workOn, b.workOn) >= apart;
}

function step(walk: Walk, one: Measurement, job: Job, counts: 'no' | 'yes' | 'own'): void {
  if (one.band === 'abovePel') {
    walk.since = earliest([knownOn(one), ...(walk.since === null ? [] : [walk.since])]);
    walk.state = 'measured';
    walk.measurement = one;
    walk.low = null;
  } else if (!one.provesNotAbovePel) walk.low = null;
  else if (counts === 'no') return;
  else if (walk.state === 'presumed') walk.state = 'no';
  else if (walk.state === 'measured' && counts === 'own') {
    if (walk.low && isFarEnough(walk.low, one, job)) {
      walk.state = 'no';
      walk.since = null;
    } else walk.low ??= one;
  }
}

/** Where nothing stands for a worker: presumed by the task, or because somebody else was above at the same work, (d)(2)(ii). */
function unmeasured(job: Job, presumedAbove: boolean): By {
  if (job.determination?.outcome === 'negativeMayBeWritten') return 'no';
  return presumedAbove || job.measurements.some(({ band }) => band === 'abovePel') ? 'presumed' : 'no';
}

/**
 * What was measured before a change speaks for other work, (d)(7): it lowers nothing after it. By the roster alone one ends what is
 * presumed, and takes nothing back that was measured.
 */
function walked(ground: Ground, job: Job, turn: Turn, ones: readonly Measurement[]): Walk {
  const walk: Walk = { state: isPresumedAbove(job) ? 'presumed' : 'no', measurement: null, since: null, low: null };
  const changedOn = ground.changedOn(job.siteId) ?? '';
  for (const one of ones)
    step(walk, one, job, one.workOn < changedOn ? 'no' : isOwn(one, turn, ground) ? 'own' : 'yes');
  return walk;
}

const isPresumedAbove = ({ presumption }: Job): boolean => presumption.presumedAbove !== null;

type PelLevel = Pick<Level, 'pel' | 'measurement' | 'since'>;

function pelOf(ground: Ground, job: Job, turn: Turn, ones: readonly Measurement[]): PelLevel {
  const course = ground.courseOf(turn.workerId, job.groupKey);
  const last = course?.lastMeasurementId ? (ground.parts.measurements.get(course.lastMeasurementId) ?? null) : null;
  const walk = walked(ground, job, turn, ones);
  if (course?.schedule === 'quarterly') {
    const above = ones.filter(({ band }) => band === 'abovePel').at(-1) ?? last;
    return { pel: 'measured', measurement: above, since: walk.since ?? (above && knownOn(above)) };
  }
  const none = { measurement: null, since: null };
  if (ones.length === 0) return { pel: unmeasured(job, isPresumedAbove(job)), ...none };
  const steppedDown = walk.state === 'measured' && (course?.schedule === 'none' || course?.schedule === 'sixMonthly');
  return steppedDown ? { pel: 'no', ...none } : { pel: walk.state, measurement: walk.measurement, since: walk.since };
}

/** Above the level of daily cleaning: by the last measurement where it decides, else as presumed. By the roster alone none lowers it. */
function dailyOf(ground: Ground, job: Job, turn: Turn, pel: By, ones: readonly Measurement[]): By {
  if (pel === 'no') return 'no';
  const limit = dailyCleaningLimit(ground.table);
  const presumed = presumedEstimate(job.presumption);
  let state: By = presumed && reachesOnHighEnd(presumed, limit) ? 'presumed' : 'no';
  for (const one of ones) {
    if (!one.twa8UgPerM3) continue;
    if (reachesOnHighEnd(one.twa8UgPerM3, limit)) state = 'measured';
    else if (compareWithLimit(one.twa8UgPerM3, limit).crossed !== 'no' || one.blocks.length > 0) continue;
    else if (state === 'presumed' || isOwn(one, turn, ground)) state = 'no';
  }
  return state;
}

const isOwn = (one: Measurement, { workerId }: Turn, { book }: Ground): boolean =>
  one.workerId === workerId || namedInWriting(one, book).includes(workerId);

/** What bears on a worker at a job: one's own, and those that stand for one; what lowers only where it surely does. */
const bearing = (ground: Ground, job: Job, { workerId }: Turn): readonly Measurement[] =>
  job.measurements.filter((one) => {
    if (one.workerId === workerId) return true;
    if (ground.affectedBy.get(one.id)?.includes(workerId) !== true) return false;
    return !one.provesNotAbovePel || ground.isSurelyFor(one, workerId);
  });

function levelOf(ground: Ground, job: Job, turn: Turn): Level {
  const ones = bearing(ground, job, turn);
  const { pel, measurement, since } = pelOf(ground, job, turn, ones);
  const own = ownPel(ground);
  const last = ones.at(-1);
  const reachesOwn = pel === 'no' && own !== null && !!last?.twa8UgPerM3 && reachesOnHighEnd(last.twa8UgPerM3, own);
  const here = reachesOwn ? 'measured' : pel;
  const deciding = reachesOwn ? (last ?? null) : measurement;
  return {
    job,
    turn,
    pel: here,
    daily: dailyOf(ground, job, turn, here, ones),
    byOwn: reachesOwn || (deciding?.byRule !== undefined && deciding.byRule.band !== 'abovePel'),
    measurement: deciding,
    since: reachesOwn && last ? knownOn(last) : since,
  };
}

/** One for each worker at each job whose rule is held. */
export const levelsOf = (ground: Ground): readonly Level[] =>
  ground.jobs.flatMap((job) => [...job.turns.values()].map((turn) => levelOf(ground, job, turn)));
