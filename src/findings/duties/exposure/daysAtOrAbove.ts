/**
 * Days at or above the action level, each worker's, over any twelve consecutive months: 29 CFR 1926.62(j)(1). Measured, represented,
 * presumed and not known are kept apart; a presumed day counts, and is counted as presumed. By the rule's own action level.
 */
import type { Book } from '#records/book.ts';
import { dutiesOfSet } from '#reference/duties.ts';
import { limitSetOn } from '#reference/limits.ts';
import { presumptionFor } from '#reference/presumption.ts';
import { GroupEvidence, sideOfActionLevel } from '../groups/groupEvidence.ts';
import { coverKey, coverKeysOf, mayBeDaysOf } from '../groups/standsFor.ts';
import type { GroupDay } from '../groups/taskGroup.ts';
import { type Bearing, type WorkerDay, workerDaysOf } from '../groups/workerDays.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { ExposureDay, ExposureDays } from './exposureDays.ts';
import { mostWithin, runningWithin } from './rollingYear.ts';

function add<K>(byKey: Map<K, Measurement[]>, key: K, one: Measurement): void {
  const own = byKey.get(key);
  if (own) own.push(one);
  else byKey.set(key, [one]);
}

/** By shift and group: what stands there by the roster. */
class OnShift {
  private readonly found = new Map<string, Measurement[]>();
  /** What may stand there, and is not low. */
  private readonly mayBe = new Map<GroupDay, Measurement[]>();

  constructor(measurements: ReadonlyMap<string, Measurement>, days: readonly GroupDay[]) {
    for (const measurement of measurements.values()) {
      for (const key of coverKeysOf(measurement, days)) add(this.found, key, measurement);
      if (sideOfActionLevel(measurement) === 'no') continue;
      for (const day of mayBeDaysOf(measurement, days)) add(this.mayBe, day, measurement);
    }
  }

  standingFor({ groupDays, inWriting, workerId }: WorkerDay): readonly Measurement[] {
    const byRoster = groupDays.flatMap((day) => [
      ...(this.found.get(coverKey(day.shiftId, day.groupKey)) ?? []),
      ...(this.mayBe.get(day) ?? []),
    ]);
    return [...new Set([...byRoster, ...inWriting])].filter((one) => one.workerId !== workerId);
  }
}

type Said = Omit<ExposureDay, 'on'>;

const saidBy = (measurement: Measurement, by: ExposureDay['by'], atOrAbove: ExposureDay['atOrAbove']): Said => ({
  by,
  atOrAbove,
  measurementId: measurement.id,
  because: measurement.because,
});

const presumedByTasks = new Map<string, boolean>();

/** Every presumed tier lies above the action level. */
function isPresumed(taskIds: readonly string[]): boolean {
  const key = taskIds.join();
  const known = presumedByTasks.get(key) ?? presumptionFor(taskIds).tier !== 'none';
  presumedByTasks.set(key, known);
  return known;
}

/** The measurement that was found to say nothing stays named. */
function byTask(day: GroupDay, open: Measurement | undefined): Said {
  const measurementId = open?.id ?? null;
  if (isPresumed(day.taskIds)) return { by: 'presumed', atOrAbove: 'yes', measurementId, because: day.because };
  return { by: 'notKnown', atOrAbove: 'notKnown', measurementId, because: day.because };
}

const find = (found: readonly Measurement[], side: 'yes' | 'no'): Measurement | undefined =>
  found.find((one) => sideOfActionLevel(one) === side);

/** The worst of several pieces of work. */
const order = { no: 0, notKnown: 1, yes: 2 } as const;
const worse = (a: Said, b: Said): Said => (order[b.atOrAbove] > order[a.atOrAbove] ? b : a);

const nothing: Said = { by: 'notKnown', atOrAbove: 'notKnown', measurementId: null, because: [] };

/** A worker's own measurement that says nothing yet lets nobody else's lower the day. */
function saidOf(workerDay: WorkerDay, onShift: OnShift, evidence: GroupEvidence): Said {
  const { own, groupDays } = workerDay;
  const ownHigh = find(own, 'yes');
  if (ownHigh) return saidBy(ownHigh, 'measured', 'yes');
  if (own.length > 0 && own.every((one) => sideOfActionLevel(one) === 'no'))
    return saidBy(own[0] as Measurement, 'measured', 'no');
  const standing = onShift.standingFor(workerDay);
  const high = find(standing, 'yes');
  if (high) return saidBy(high, 'represented', 'yes');
  const open = own[0] ?? standing.find((one) => sideOfActionLevel(one) === null);
  const isSure = groupDays.every(({ mayBeKeys }) => mayBeKeys === undefined);
  const low = open || !isSure ? undefined : find(standing, 'no');
  if (low && groupDays.length < 2) return saidBy(low, 'represented', 'no');
  const pieces = groupDays.map((day): Said => {
    if (low?.shiftIds.includes(day.shiftId)) return saidBy(low, 'represented', 'no');
    const known = evidence.of(day, open !== undefined);
    return known ? saidBy(known.measurement, 'represented', known.atOrAbove) : byTask(day, open);
  });
  if (pieces.length === 0) return open ? { ...nothing, measurementId: open.id, because: open.because } : nothing;
  return pieces.reduce(worse);
}

/** More than so many days within so many months, (j)(1)(ii); where the state's own rule is not held, those of the federal one. */
function surveillance(today: string) {
  const table = dutiesOfSet(limitSetOn(today, '').set.id);
  if (!table) throw new Error('no duties are held');
  return { moreThan: table.surveillanceAfter.moreThan.value, months: table.surveillanceAfter.within.value };
}

function exposureOf(workerId: string, days: readonly ExposureDay[], today: string): ExposureDays {
  const { moreThan, months } = surveillance(today);
  const counted = days
    .filter(({ atOrAbove }) => atOrAbove === 'yes')
    .map(({ on, by }) => ({ on, presumed: by === 'presumed' }));
  const most = mostWithin(counted, months);
  const running = runningWithin(counted, months, today);
  const isNotKnown = ({ on, atOrAbove }: ExposureDay): boolean => atOrAbove === 'notKnown' && on >= running.fromOn;
  return {
    workerId,
    days,
    most,
    running: { ...running, notKnownCount: days.filter(isNotKnown).length },
    anyDay: counted.length > 0,
    moreThanThirty: (most?.count ?? 0) > moreThan,
  };
}

const none: ReadonlySet<string> = new Set();

/** Groups that days rested on beside what stood for the worker on the day itself. */
const groupsOf = new WeakMap<ExposureDays, ReadonlySet<string>>();

/** Was any of these groups looked at, for what it says of another day? */
export const restsOnGroups = (exposure: ExposureDays, groupKeys: Iterable<string>): boolean => {
  const looked = groupsOf.get(exposure);
  return looked !== undefined && [...groupKeys].some((key) => looked.has(key));
};

/** By worker id. Days up to today. `only`: of some workers. */
export function exposureDaysOf(
  measurements: ReadonlyMap<string, Measurement>,
  days: readonly GroupDay[],
  book: Book,
  today: string,
  only: Bearing = { measurements, days },
): ReadonlyMap<string, ExposureDays> {
  const evidence = new GroupEvidence(measurements, book);
  const onShift = new OnShift(only.measurements, only.days);
  const byWorker = new Map<string, ExposureDay[]>();
  for (const day of workerDaysOf(only, book, today)) {
    const said: ExposureDay = { on: day.on, ...saidOf(day, onShift, evidence) };
    const own = byWorker.get(day.workerId);
    if (own) own.push(said);
    else byWorker.set(day.workerId, [said]);
  }
  const found = new Map<string, ExposureDays>();
  for (const [workerId, own] of byWorker) {
    const exposure = exposureOf(workerId, own, today);
    groupsOf.set(exposure, evidence.lookedAt.get(workerId) ?? none);
    found.set(workerId, exposure);
  }
  return found;
}
