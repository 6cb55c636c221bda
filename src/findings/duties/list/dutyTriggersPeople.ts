/** Triggers of a worker's own days: at or above the action level, (j)(1) and (l)(1); and what people are told on hiring, 1910.1020(g). */

import type { ExposureDay } from '../exposure/exposureDays.ts';
import { mostWithin } from '../exposure/rollingYear.ts';
import { dutyIdOf } from './dutyIds.ts';
import type { Ground } from './dutyTriggersGround.ts';
import { ownActionLevel, reachesOnHighEnd } from './dutyTriggersLevels.ts';
import { figureOf } from './dutyTriggersMeasuring.ts';
import { type DaysAt, earliest, fewOf, type Met, type Trigger, type Triggers } from './dutyTriggersMet.ts';

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

const isMeasured = ({ by }: ExposureDay): boolean => by === 'measured' || by === 'represented';

/** Days at or above the action level, or the firm's own lower one, where the rule is held. Oldest first. */
function daysAt(ground: Ground, days: readonly ExposureDay[], held: ReadonlySet<string> | undefined): DaysAt['days'] {
  const own = ownActionLevel(ground);
  return days.filter((day) => {
    if (day.atOrAbove !== 'yes' && !own) return false;
    const measurement = day.measurementId === null ? undefined : ground.parts.measurements.get(day.measurementId);
    if (!held?.has(day.on) && !measurement?.limits.heldComplete) return false;
    const twa8 = measurement?.twa8UgPerM3;
    return day.atOrAbove === 'yes' || (own !== null && !!twa8 && reachesOnHighEnd(twa8, own));
  });
}

/** By worker; who has no such day is not in it. `about`: these workers alone. */
export function daysAtOf(ground: Ground, about?: ReadonlySet<string>): ReadonlyMap<string, DaysAt> {
  const held = heldDays(ground);
  const months = ground.table.surveillanceAfter.within.value;
  const found = new Map<string, DaysAt>();
  for (const [workerId, exposure] of ground.parts.exposureDays) {
    if (about?.has(workerId) === false) continue;
    const days = daysAt(ground, exposure.days, held.get(workerId));
    if (days.length === 0) continue;
    const all = exposure.days.filter(({ atOrAbove }) => atOrAbove === 'yes').length;
    const byRule = days.filter(({ atOrAbove }) => atOrAbove === 'yes').length;
    const asFound = days.length === all && byRule === all;
    const counted = () => days.map(({ on, by }) => ({ on, presumed: by === 'presumed' }));
    const most = asFound ? exposure.most : mostWithin(counted(), months);
    found.set(workerId, { days, most, byOwn: byRule === 0 });
  }
  return found;
}

type Decided = Pick<Met, 'params' | 'presumed' | 'startsOn'>;

function ofWorker(workerId: string, { days: counted, byOwn }: DaysAt, met: Decided, ground: Ground): Met {
  const deciding = counted.find(isMeasured) ?? counted[0];
  const measurement = deciding?.measurementId ? ground.parts.measurements.get(deciding.measurementId) : undefined;
  const own = byOwn ? ownActionLevel(ground) : null;
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
    because: fewOf(counted.slice(0, 24).flatMap(({ because }) => because.slice(0, 1))),
    lastOn: counted.at(-1)?.on ?? null,
  };
}

/** For each worker with such days: the first, the last, and what they stand on. A measured day speaks before a presumed one. */
const onDays =
  (decides: (days: DaysAt, ground: Ground) => Decided | null): Trigger =>
  ({ ground, daysAt: found }) =>
    [...found].flatMap(([workerId, counted]) => {
      const met = decides(counted, ground);
      return met ? [ofWorker(workerId, counted, met, ground)] : [];
    });

/** A measured day counts from the day on which its result was there, a presumed one from the work itself. */
function knownOn(day: ExposureDay, { parts }: Ground): string {
  const measurement = parts.measurements.get(day.measurementId ?? '');
  // another of the same day that is higher may have been known sooner
  const judging = parts.measurements.get(measurement?.judgedById ?? '');
  const receipts = [...(measurement?.receipts ?? []), ...(judging?.receipts ?? [])];
  const on = isMeasured(day) ? earliest(receipts.map(({ receivedOn }) => receivedOn)) : null;
  return on !== null && on > day.on ? on : day.on;
}

/** The days are in order, and no day is known of before it was. */
function firstKnown(days: readonly ExposureDay[], ground: Ground): string | null {
  let first: string | null = null;
  for (const day of days) {
    if (first !== null && first <= day.on) break;
    first = earliest([knownOn(day, ground), ...(first === null ? [] : [first])]);
  }
  return first;
}

const actionLevelAnyDay = onDays(({ days }, ground) => ({
  params: {},
  presumed: !days.some(isMeasured),
  startsOn: firstKnown(days, ground),
}));

const moreThanThirtyDays = onDays(({ most }, { table }) => {
  const { moreThan } = table.surveillanceAfter;
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
