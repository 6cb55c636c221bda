/**
 * The course of re-monitoring of every worker in every task group. A worker's own measurements count, and those that stand for the worker
 * in writing; one that stands for the worker by the roster alone can only raise a schedule.
 */
import type { Book } from '#records/book.ts';
import { type LimitsHere, limitSetOn } from '#reference/limits.ts';
import { mayBeDaysOf, namedInWriting, rosterDaysOf } from '../groups/standsFor.ts';
import { type GroupDay, mayBeSameGroup } from '../groups/taskGroup.ts';
import { higherBand } from '../measuring/band.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { Course } from './course.ts';
import { gatherChanges } from './courseChanges.ts';
import { type Gathered, Gathering, noteDone } from './courseGathering.ts';
import type { Occasion } from './courseInput.ts';
import { type CourseRule, courseRuleOf } from './courseRule.ts';
import { courseOf } from './courseSteps.ts';

/** What a measurement says, and nothing stands against. */
const isSound = ({ band, blocks, provesBelowActionLevel, provesNotAbovePel }: Measurement): boolean =>
  provesBelowActionLevel ||
  (band === 'actionLevelToPel' && provesNotAbovePel) ||
  (band !== 'open' && blocks.length === 0);

function occasionOf(measurement: Measurement, relation: Occasion['relation'], bears: boolean): Occasion {
  const { workOn, id, band, provesBelowActionLevel, provesNotAbovePel, resultOwed, because } = measurement;
  const sound = isSound(measurement);
  return {
    on: workOn,
    measurementIds: [id],
    relation,
    band,
    provesBelowActionLevel,
    provesNotAbovePel,
    sound,
    resultOwed,
    doubted: !sound && !resultOwed,
    leftOpen: bears && !sound && !raises(measurement),
    because,
  };
}

const closer = { own: 2, written: 1, roster: 0 } as const;

/** Two measurements of one day are one occasion; the higher judges, and what one leaves open is open. */
function merged(a: Occasion, b: Occasion): Occasion {
  const band = higherBand(a.band, b.band);
  const first = band === a.band ? a : b;
  const ids = [...new Set([...first.measurementIds, ...a.measurementIds, ...b.measurementIds])];
  return {
    on: a.on,
    measurementIds: ids,
    relation: closer[a.relation] >= closer[b.relation] ? a.relation : b.relation,
    band,
    provesBelowActionLevel: a.provesBelowActionLevel && b.provesBelowActionLevel,
    provesNotAbovePel: a.provesNotAbovePel && b.provesNotAbovePel,
    sound: a.sound && b.sound,
    resultOwed: a.resultOwed || b.resultOwed,
    doubted: a.doubted === true || b.doubted === true,
    leftOpen: a.leftOpen === true || b.leftOpen === true,
    because: [...new Set([...a.because, ...b.because])],
  };
}

function addOccasion(into: Gathered, measurement: Measurement, relation: Occasion['relation']): void {
  const occasion = occasionOf(measurement, relation, into.bears(measurement));
  const before = into.occasionByDay.get(occasion.on);
  into.occasionByDay.set(occasion.on, before ? merged(before, occasion) : occasion);
  into.rule ??= ruleOf(measurement.limits);
}

/**
 * By the roster alone a high one begins a course; where the worker's own measurements decide, they go on deciding, until a change starts
 * it again. Of several of one day the highest is enough.
 */
function addOfRoster(into: Gathered, measurement: Measurement): void {
  const { workOn, band } = measurement;
  if (into.decidedOn !== null && into.decidedOn <= workOn && into.changes.length === 0) return;
  const before = into.occasionByDay.get(workOn);
  if (before && before.relation !== 'roster' && before.sound) return;
  if (before?.sound && higherBand(before.band, band) === before.band) return;
  addOccasion(into, measurement, 'roster');
}

const ruleOf = ({ heldComplete, set }: LimitsHere): CourseRule | null => (heldComplete ? courseRuleOf(set) : null);

/** By measurement: whom a written determination names, which is in writing too. */
function namedByDeterminations(book: Book): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { written } of book.determinations.values())
    for (const id of written.measurementIds) {
      const names = found.get(id) ?? [];
      names.push(...written.standsForIds);
      found.set(id, names);
    }
  return found;
}

/** Low or not known, by the roster alone: no occasion of theirs. */
const raises = ({ band }: Measurement): boolean => band === 'actionLevelToPel' || band === 'abovePel';

type Named = ReadonlyMap<string, readonly string[]>;

/** The worker measured, and whoever is named in writing. */
function addCounted(measurement: Measurement, named: Named, book: Book, into: Gathering): ReadonlySet<string> {
  const { id, workerId, groupKey } = measurement;
  if (workerId !== null) addOccasion(into.of(workerId, groupKey), measurement, 'own');
  const written = new Set([...namedInWriting(measurement, book), ...(named.get(id) ?? [])]);
  if (workerId !== null) written.delete(workerId);
  for (const other of written) addOccasion(into.of(other, groupKey), measurement, 'written');
  return workerId === null ? written : written.add(workerId);
}

/** Where its group is not sure it raises every one that it may have been of, and breaks a row there; it lowers none. */
function addMayBe(measurement: Measurement, counted: ReadonlySet<string>, into: Gathering): void {
  const { workerId, mayBeKeys = [] } = measurement;
  if (measurement.provesBelowActionLevel) return;
  const unsure = { ...measurement, provesNotAbovePel: false };
  for (const key of mayBeKeys)
    for (const id of counted)
      if (raises(measurement) || into.found.has(`${id} ${key}`))
        addOccasion(into.of(id, key), unsure, id === workerId ? 'own' : 'written');
}

const nobody: ReadonlySet<string> = new Set();

function setDecided(gathered: Gathered): void {
  for (const { on, sound } of gathered.occasionByDay.values())
    if (sound && (gathered.decidedOn === null || on < gathered.decidedOn)) gathered.decidedOn = on;
}

/** Groups of a day on the roster that it raises: its own, and those it may have been of. Not where the measurement counts already. */
function groupsOf(day: GroupDay, measurement: Measurement, counted: ReadonlySet<string>): readonly string[] {
  const measured = [measurement.groupKey, ...(measurement.mayBeKeys ?? [])];
  const may = (day.mayBeKeys ?? []).filter((key) => measured.some((one) => mayBeSameGroup(one, key)));
  const keys = [day.groupKey, ...may];
  return counted.has(day.workerId) ? keys.filter((key) => !measured.includes(key)) : keys;
}

function gatherMeasurements(
  measurements: ReadonlyMap<string, Measurement>,
  days: readonly GroupDay[],
  book: Book,
  today: string,
  into: Gathering,
): void {
  const named = namedByDeterminations(book);
  const countedById = new Map<string, ReadonlySet<string>>();
  for (const measurement of measurements.values())
    countedById.set(measurement.id, addCounted(measurement, named, book, into));
  for (const measurement of measurements.values())
    addMayBe(measurement, countedById.get(measurement.id) ?? nobody, into);
  gatherChanges(days, book, today, into);
  for (const gathered of into.found.values()) setDecided(gathered);
  for (const measurement of measurements.values()) {
    const counted = countedById.get(measurement.id) ?? nobody;
    const others = raises(measurement) ? [...rosterDaysOf(measurement, days), ...mayBeDaysOf(measurement, days)] : [];
    for (const day of others)
      for (const key of groupsOf(day, measurement, counted)) addOfRoster(into.of(day.workerId, key), measurement);
  }
}

function gatherDays(days: readonly GroupDay[], book: Book, today: string, into: Gathering): void {
  for (const { workerId, groupKey, workOn, siteId } of days) {
    if (workOn > today) continue;
    const own = into.of(workerId, groupKey);
    noteDone(own, workOn);
    own.rule ??= ruleOf(limitSetOn(workOn, book.sites.get(siteId)?.stateCode ?? ''));
  }
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** By worker, then group. */
export function coursesOf(
  measurements: ReadonlyMap<string, Measurement>,
  days: readonly GroupDay[],
  book: Book,
  today: string,
): readonly Course[] {
  const gathering = new Gathering(book);
  gatherDays(days, book, today, gathering);
  gatherMeasurements(measurements, days, book, today, gathering);
  const found = [...gathering.found.values()].sort(
    (a, b) => compare(a.workerId, b.workerId) || compare(a.groupKey, b.groupKey),
  );
  return found.map(({ workerId, groupKey, occasionByDay, changes, rule, lastDoneOn }) => {
    const occasions = [...occasionByDay.values()].sort((a, b) => compare(a.on, b.on));
    return courseOf({ workerId, groupKey, occasions, changes, rule, lastDoneOn, today });
  });
}
