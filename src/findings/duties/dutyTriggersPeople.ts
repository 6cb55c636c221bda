/** Triggers of a worker's own days: at or above the action level, (j)(1) and (l)(1); and what people are told on hiring, 1910.1020(g). */
import { addDays, addMonths } from '#core/calendar.ts';
import { dutyIdOf } from './dutyIds.ts';
import type { Ground } from './dutyTriggersGround.ts';
import { ownActionLevel, reachesOnHighEnd } from './dutyTriggersLevels.ts';
import { figureOf } from './dutyTriggersMeasuring.ts';
import { earliest, fewOf, type Met, type Trigger, type Triggers } from './dutyTriggersMet.ts';
import type { ExposureDay } from './exposureDays.ts';

interface Counted extends ExposureDay {
  readonly byOwn: boolean;
}

/** On which days did each worker work at sites whose rule is held? */
function heldDays(ground: Ground): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const { workerId, workOn, siteId } of ground.parts.days) {
    if (!ground.isHeld(siteId)) continue;
    const days = found.get(workerId) ?? new Set();
    days.add(workOn);
    found.set(workerId, days);
  }
  return found;
}

/** Days at or above the action level, or the firm's own lower one, where the rule is held. Oldest first. */
function daysAt(
  ground: Ground,
  days: readonly ExposureDay[],
  held: ReadonlySet<string> | undefined,
): readonly Counted[] {
  const own = ownActionLevel(ground);
  return days.flatMap((day): Counted[] => {
    const measurement = day.measurementId === null ? undefined : ground.parts.measurements.get(day.measurementId);
    if (!held?.has(day.on) && !measurement?.limits.heldComplete) return [];
    if (day.atOrAbove === 'yes') return [{ ...day, byOwn: false }];
    const twa8 = measurement?.twa8UgPerM3;
    return own && twa8 && reachesOnHighEnd(twa8, own) ? [{ ...day, byOwn: true }] : [];
  });
}

const isMeasured = ({ by }: ExposureDay): boolean => by === 'measured' || by === 'represented';

type Decided = Pick<Met, 'params' | 'presumed' | 'startsOn'>;

function ofWorker(workerId: string, counted: readonly Counted[], met: Decided, ground: Ground): Met {
  const deciding = counted.find(isMeasured) ?? counted[0];
  const measurement = deciding?.measurementId ? ground.parts.measurements.get(deciding.measurementId) : undefined;
  const own = counted.every(({ byOwn }) => byOwn) ? ownActionLevel(ground) : null;
  return {
    ...met,
    subjects: [workerId],
    workerIds: [workerId],
    siteId: null,
    groupKey: null,
    measurementIds: measurement ? [measurement.id] : [],
    params: {
      ...figureOf(measurement?.twa8UgPerM3 ?? null),
      ...(deciding ? { workOn: deciding.on } : {}),
      ...met.params,
      ...(own ? { ownLimitUgPerM3: own.value } : {}),
    },
    because: fewOf(counted.flatMap(({ because }) => because.slice(0, 1))),
    lastOn: counted.at(-1)?.on ?? null,
  };
}

/** For each worker with such days: the first, the last, and what they stand on. A measured day speaks before a presumed one. */
const onDays =
  (decides: (days: readonly Counted[], ground: Ground) => Decided | null): Trigger =>
  ({ ground }) => {
    const held = heldDays(ground);
    return [...ground.parts.exposureDays].flatMap(([workerId, { days }]) => {
      const counted = daysAt(ground, days, held.get(workerId));
      const met = counted.length === 0 ? null : decides(counted, ground);
      return met ? [ofWorker(workerId, counted, met, ground)] : [];
    });
  };

/** A measured day counts from the day on which its result was there, a presumed one from the work itself. */
function knownOn(day: Counted, { parts }: Ground): string {
  const receipts = day.measurementId === null ? [] : (parts.measurements.get(day.measurementId)?.receipts ?? []);
  const on = isMeasured(day) ? earliest(receipts.map(({ receivedOn }) => receivedOn)) : null;
  return on !== null && on > day.on ? on : day.on;
}

const actionLevelAnyDay = onDays((days, ground) => ({
  params: {},
  presumed: !days.some(isMeasured),
  startsOn: earliest(days.map((day) => knownOn(day, ground))),
}));

interface Window {
  readonly fromOn: string;
  readonly toOn: string;
  readonly count: number;
  readonly presumedCount: number;
}

/** The twelve consecutive months with the most such days; each window ends on such a day. */
function fullest(days: readonly Counted[], months: number): Window | null {
  let top: Window | null = null;
  let from = 0;
  let presumedCount = 0;
  for (const [at, day] of days.entries()) {
    if (!isMeasured(day)) presumedCount += 1;
    const fromOn = addDays(addMonths(day.on, -months), 1);
    for (let first = days[from]; first && first.on < fromOn; first = days[from]) {
      if (!isMeasured(first)) presumedCount -= 1;
      from += 1;
    }
    const count = at - from + 1;
    if (!top || count > top.count) top = { fromOn, toOn: day.on, count, presumedCount };
  }
  return top;
}

/** One entry a day: two tasks on one day are one day. */
const oncePerDay = (days: readonly Counted[]): readonly Counted[] => {
  const byDay = new Map<string, Counted>();
  for (const day of days) {
    const held = byDay.get(day.on);
    if (!held || (!isMeasured(held) && isMeasured(day))) byDay.set(day.on, day);
  }
  return [...byDay.values()].sort((a, b) => (a.on < b.on ? -1 : 1));
};

const moreThanThirtyDays = onDays((days, { table }) => {
  const { moreThan, within } = table.surveillanceAfter;
  const most = fullest(oncePerDay(days), within.value);
  if (!most || most.count <= moreThan.value) return null;
  const { bloodTestsEvery: every } = table;
  return {
    params: {
      daysCount: most.count,
      presumedCount: most.presumedCount,
      fromOn: most.fromOn,
      toOn: most.toOn,
      moreThanDays: moreThan.value,
      firstEveryMonths: every.first.value,
      forFirstMonths: every.forFirst.value,
      afterwardsMonths: every.afterwards.value,
    },
    presumed: most.count - most.presumedCount <= moreThan.value,
    startsOn: most.toOn,
  };
});

/** The blood was tested: its result is told in writing. No value of it is kept here. */
const afterBloodTests: Trigger = (sight, row) => {
  const { book, table } = sight.ground;
  return actionLevelAnyDay(sight, row).flatMap((met) => {
    const tested = book.duties.get(dutyIdOf('bloodTests', met.subjects))?.done.at(-1);
    if (!tested) return [];
    const params = { testedOn: tested.doneOn, workingDaysCount: table.bloodResultsWithin.days.value };
    return [{ ...met, params, startsOn: tested.doneOn, presumed: false, because: [tested.factId] }];
  });
};

/** Our own workers who work with lead: told on hiring, then yearly, while they are here. Where nobody said when, the first day counts. */
const ownWorker: Trigger = ({ ground }) => {
  const { book, parts, isHeld, today } = ground;
  const first = new Map<string, { on: string; because: readonly string[] }>();
  for (const { workerId, workOn, siteId, because } of parts.days)
    if (isHeld(siteId) && workOn < (first.get(workerId)?.on ?? '9999')) first.set(workerId, { on: workOn, because });
  return [...first].flatMap(([workerId, { on, because }]) => {
    const person = book.people.get(workerId);
    if (person && person.employer !== null) return [];
    const { fromOn = null, toOn = null } = person?.employed ?? {};
    const startsOn = fromOn ?? on;
    return [
      {
        subjects: [workerId],
        workerIds: [workerId],
        siteId: null,
        groupKey: null,
        measurementIds: [],
        params: { hired: fromOn === null ? 'notSaid' : 'said', startsOn, ...(toOn === null ? {} : { leftOn: toOn }) },
        presumed: false,
        because: fewOf(because),
        startsOn,
        lastOn: toOn !== null && toOn < today ? toOn : null,
      },
    ];
  });
};

export const people: Triggers = { actionLevelAnyDay, moreThanThirtyDays, afterBloodTests, ownWorker };
