/**
 * May a job rest on an earlier measurement? 29 CFR 1926.62(d)(3)(iii): the employer's own, obtained within the past twelve months, under
 * conditions that closely resemble today's in five respects, by a method that is accurate enough. Every reason it fails is told.
 */
import { addMonths } from '#core/calendar.ts';
import { sideOf } from '#core/comparison.ts';
import type { Book, RelianceRecord } from '#records/book.ts';
import { methodById } from '#reference/methods.ts';
import { blocking } from '../../reason.ts';
import { recordDoubts } from '../../recordDoubts.ts';
import type { DeterminationBlock } from '../determining/determination.ts';
import { ageBlocks, block, historicalMonths } from '../determining/determinationEvidence.ts';
import type { Measurement } from '../measuring/measurement.ts';
import { compareTerms, termsOn } from './resemblance.ts';
import { groupKeyOf, resemblanceTerms } from './taskGroup.ts';
import { changeNotedOn, dayOfShift, siteOfShift } from './taskGroups.ts';

export interface RelianceFinding {
  readonly relianceId: string;
  readonly measurementId: string;
  readonly shiftId: string;
  readonly siteId: string;
  /** The day of the job: the measurement's age is held against it. */
  readonly reliedOn: string;
  readonly groupKey: string;
  /** Last day on which it may be relied on; null without a measurement. */
  readonly reliableUntilOn: string | null;
  readonly valid: boolean;
  /** Every reason it fails. `unlike` and `resemblanceNotAsked` carry `term`: one of the five, or `jobClassification`. */
  readonly blocks: readonly DeterminationBlock[];
  readonly because: readonly string[];
}

const sameTasks = (a: readonly string[], b: readonly string[]): boolean =>
  [...new Set(a)].sort().join() === [...new Set(b)].sort().join();

/** What a person answered, and what the conditions of both days say: an unlike of either is unlike. */
function termBlocks(reliance: RelianceRecord, measurement: Measurement, book: Book): DeterminationBlock[] {
  const { id } = measurement;
  const because = [reliance.reliedFactId];
  const job = termsOn(book.shifts.get(reliance.shiftId)?.conditions ?? null, reliance.taskIds);
  const byConditions = measurement.shiftIds.map((shiftId) =>
    compareTerms(termsOn(book.shifts.get(shiftId)?.conditions ?? null, measurement.taskIds), job),
  );
  const found = resemblanceTerms.flatMap((term): DeterminationBlock[] => {
    const answer = reliance[term];
    const unlike = answer === 'unlike' || byConditions.some((terms) => terms[term] === 'unlike');
    if (unlike) return [block('unlike', id, because, { term })];
    return answer === 'alike' ? [] : [block('resemblanceNotAsked', id, because, { term })];
  });
  const tasksDiffer = !sameTasks(reliance.taskIds, measurement.taskIds);
  if (tasksDiffer && !found.some(({ key, params }) => key === 'unlike' && params.term === 'processes'))
    found.push(block('unlike', id, because, { term: 'processes' }));
  if (reliance.jobClassificationId !== measurement.jobClassificationId)
    found.push(block('unlike', id, because, { term: 'jobClassification' }));
  return found;
}

/** Methods held whose accuracy nobody read count as stated by being named; one that is read to be worse than the rule allows does not. */
function isAccurate({ finding, limits }: Measurement): boolean {
  const upTo = limits.set.duties?.accuracy.pct.value ?? null;
  return (finding?.samples ?? []).every(({ mass, methodId }) => {
    const method = methodId === null ? undefined : methodById(methodId);
    if (mass === null) return true;
    if (!method) return false;
    return method.accuracy === null || upTo === null || sideOf(method.accuracy.value, upTo) <= 0;
  });
}

function ownBlocks(reliance: RelianceRecord, measurement: Measurement, book: Book): DeterminationBlock[] {
  const { id, finding, because } = measurement;
  const record = book.reported.get(id);
  const found: DeterminationBlock[] = [];
  if (reliance.ownFirm !== 'yes') found.push(block('notOwnData', id, [reliance.reliedFactId]));
  else if (!finding && record?.ownFirm !== 'yes') found.push(block('notOwnData', id, because));
  if (finding ? !isAccurate(measurement) : record?.accuracy !== 'yes')
    found.push(block('accuracyNotStated', id, because));
  if (!finding && record?.fullShift !== 'yes') found.push(block('notFullShift', id, because));
  if (finding && finding.unknownMin > 0)
    found.push(block('minutesUnknown', id, because, { unknownMin: finding.unknownMin }));
  if (measurement.resultOwed) found.push(block('resultOwed', id, because));
  if (!measurement.limits.heldComplete) found.push(block('ruleNotHeld', id, because));
  return found;
}

const covered = new Set(['minutesUnknown', 'resultAwaited', 'reportedNotFullShift', 'reportedAccuracyNotStated']);

function doubtBlocks(reliance: RelianceRecord, { id, blocks }: Measurement): DeterminationBlock[] {
  const doubts = [...blocking(blocks), ...recordDoubts(reliance)].filter(({ key }) => !covered.has(key));
  return doubts.map(({ key, because, params }) => {
    if (key === 'takingIn' || key === 'entriesMissing') return block(key, id, because, params);
    return block('sampleDoubtful', id, because, { ...params, reason: key });
  });
}

/** New people, a new tool, a new control, a new task: asked at the start of the job that rests on it, (d)(7). */
function changeBlocks({ measurementId, shiftId, reliedFactId }: RelianceRecord, book: Book): DeterminationBlock[] {
  const shift = book.shifts.get(shiftId);
  const params = { on: dayOfShift(shiftId) };
  if (!shift?.changes) return [block('changesNotAsked', measurementId, [reliedFactId], params)];
  const change = changeNotedOn(shift);
  return change ? [block('changeNoted', measurementId, change.because, params)] : [];
}

function blocksOf(
  reliance: RelianceRecord,
  measurement: Measurement | undefined,
  book: Book,
): readonly DeterminationBlock[] {
  const reliedOn = dayOfShift(reliance.shiftId);
  const none = { reliedOn, ...(measurement ? { workOn: measurement.workOn } : {}) };
  if (!measurement || measurement.workOn > reliedOn)
    return [block('noMeasurement', reliance.measurementId, [reliance.reliedFactId], none)];
  return [
    ...termBlocks(reliance, measurement, book),
    ...ownBlocks(reliance, measurement, book),
    ...ageBlocks(measurement, reliedOn),
    ...doubtBlocks(reliance, measurement),
    ...changeBlocks(reliance, book),
  ];
}

/** The last day on which a job may rest on it, (d)(3)(iii); whether it may at all is another matter. */
export const reliableUntil = (measurement: Measurement): string =>
  addMonths(measurement.workOn, historicalMonths(measurement));

export function relianceOf(
  reliance: RelianceRecord,
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
): RelianceFinding {
  const { id, measurementId, shiftId, taskIds, jobClassificationId, reliedFactId } = reliance;
  const measurement = measurements.get(measurementId);
  const siteId = siteOfShift(shiftId);
  const blocks = blocksOf(reliance, measurement, book);
  return {
    relianceId: id,
    measurementId,
    shiftId,
    siteId,
    reliedOn: dayOfShift(shiftId),
    groupKey: groupKeyOf(book.sites.get(siteId)?.setting ?? 'indoors', jobClassificationId, taskIds),
    reliableUntilOn: measurement ? reliableUntil(measurement) : null,
    valid: blocks.length === 0,
    blocks,
    because: [reliedFactId],
  };
}

/** By reliance id. */
export function reliancesOf(
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
): ReadonlyMap<string, RelianceFinding> {
  const found = new Map<string, RelianceFinding>();
  for (const one of book.reliances.values()) found.set(one.id, relianceOf(one, measurements, book));
  return found;
}
