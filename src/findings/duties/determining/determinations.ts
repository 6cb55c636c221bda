/**
 * The written initial determination of a task group at a site: 29 CFR 1926.62(d)(3) to (5). Negative only when nothing at all blocks it,
 * and each reason is said; positive as soon as one measurement reaches the action level or may, and no doubt blocks that.
 */
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { Book, DeterminationRecord } from '#records/book.ts';
import { presumptionFor } from '#reference/presumption.ts';
import { relianceOf } from '../groups/reliance.ts';
import { surelyStandsFor } from '../groups/standsFor.ts';
import type { GroupDay } from '../groups/taskGroup.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { DeterminationBlock, DeterminationFinding } from './determination.ts';
import {
  ageBlocks,
  block,
  evidenceBlocks,
  isHigh,
  isLowOfOthers,
  isLowOnIrregularDay,
  once,
} from './determinationEvidence.ts';
import { bookBlocks, changeBlocks, notMeasuredBlocks, ruleBlocks, unlikeDayBlocks } from './determinationJob.ts';
import { type Relied, type Scope, scopesOf } from './determinationScope.ts';
import { isOnOtherFacts, writtenOf } from './determinationWritten.ts';

interface Weighed {
  readonly measurement: Measurement;
  readonly blocks: readonly DeterminationBlock[];
}

/**
 * Low figures that prove nothing and stand beside better ones: of others' workers or an inspector's, and of a day that was not the
 * regular one where the same worker has a later one that proves. Any other doubt stays and blocks: it might hide a high one.
 */
function isSetAside(one: Weighed, proven: readonly Measurement[]): boolean {
  if (proven.length === 0) return false;
  const { measurement, blocks } = one;
  if (isLowOfOthers(measurement, blocks)) return true;
  return (
    isLowOnIrregularDay(measurement, blocks) &&
    proven.some(({ workerId, workOn }) => workerId === measurement.workerId && workOn > measurement.workOn)
  );
}

interface Evidence {
  /** Measured here, nothing against it. */
  readonly proven: readonly Measurement[];
  /** All that counts, here and relied on, in the order of days. */
  readonly used: readonly Measurement[];
  readonly blocks: readonly DeterminationBlock[];
}

/** A job that was measured itself since then rests on its own figures: why it could not rest on others bears on nothing any more. */
function weighRelied(
  { reliance, measurement }: Relied,
  proven: readonly Measurement[],
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
): { readonly measurement: Measurement | null; readonly blocks: readonly DeterminationBlock[] } {
  const { reliedOn, blocks } = relianceOf(reliance, measurements, book);
  const measuredSince = proven.some(({ workOn }) => workOn >= reliedOn);
  const ofReliance = measuredSince ? [] : blocks;
  if (measurement) return { measurement, blocks: once([...ofReliance, ...evidenceBlocks(measurement, book)]) };
  const missing = measuredSince ? [] : [block('noMeasurement', reliance.measurementId)];
  return { measurement, blocks: once([...ofReliance, ...missing]) };
}

/** Old ones that prove are no longer needed where there are younger ones. */
function tooOld(proven: readonly Measurement[], on: string): readonly DeterminationBlock[] {
  const youngest = proven.at(-1);
  if (!youngest || ageBlocks(youngest, on).length === 0) return [];
  return proven.flatMap((measurement) => ageBlocks(measurement, on));
}

function evidenceOf(scope: Scope, measurements: ReadonlyMap<string, Measurement>, book: Book, on: string): Evidence {
  const weighed = scope.own.map((measurement): Weighed => ({ measurement, blocks: evidenceBlocks(measurement, book) }));
  const proven = weighed.filter(({ blocks }) => blocks.length === 0).map(({ measurement }) => measurement);
  const counting = weighed.filter((one) => !isSetAside(one, proven));
  const relied = scope.relied
    .map((one) => weighRelied(one, proven, measurements, book))
    .filter((one) => !one.measurement || !isSetAside({ ...one, measurement: one.measurement }, proven));
  const used = [...counting, ...relied].flatMap(({ measurement }) => measurement ?? []);
  return {
    proven,
    used: [...new Set(used)].sort((a, b) => (a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : 0)),
    blocks: [
      ...counting.flatMap(({ blocks }) => blocks),
      ...relied.flatMap(({ blocks }) => blocks),
      ...tooOld(proven, on),
    ],
  };
}

/** The larger of figure and upper bound; where nothing bounds it, what is known of it. */
const upperKnown = (measurement: Measurement): number => {
  const estimate = measurement.twa8UgPerM3;
  if (estimate === null) return 0;
  const upper = upperOf(estimate);
  return Number.isFinite(upper) ? upper : lowerOf(estimate);
};

function highestOf(used: readonly Measurement[]): DeterminationFinding['highest'] {
  let highest: DeterminationFinding['highest'] = null;
  for (const measurement of used) {
    if (measurement.twa8UgPerM3 === null) continue;
    const upperUgPerM3 = upperKnown(measurement);
    if (!highest || upperUgPerM3 > highest.upperUgPerM3) highest = { measurementId: measurement.id, upperUgPerM3 };
  }
  return highest;
}

/** Objective data never end what is presumed of a task of the rule's list, (d)(3)(iv)(B): without a measurement nothing is negative. */
function noMeasurement(scope: Scope, book: Book): DeterminationBlock {
  const taskIds = scope.days[0]?.taskIds ?? scope.own[0]?.taskIds ?? scope.relied[0]?.reliance.taskIds ?? [];
  const because = book.sites.get(scope.siteId)?.factIds ?? [];
  return block('noMeasurement', null, because, { tier: presumptionFor(taskIds).tier });
}

function determine(
  scope: Scope,
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
  days: readonly GroupDay[],
  written: DeterminationRecord | null,
  today: string,
): DeterminationFinding {
  // unchanged work needs no fresher data than those that the determination was written on
  const on = written?.written.outcome === 'negative' ? written.written.determinedOn : today;
  const { proven, used, blocks: ofEvidence } = evidenceOf(scope, measurements, book, on);
  const blocks = once([
    ...(used.length === 0 ? [noMeasurement(scope, book)] : []),
    ...ofEvidence,
    ...ruleBlocks(scope, used, book, today),
    ...bookBlocks(used, book),
    ...changeBlocks(scope, proven, book),
    ...unlikeDayBlocks(scope, proven, book),
    ...notMeasuredBlocks(scope, proven, book),
  ]);
  const monitored = new Set(used.flatMap(({ workerId }) => workerId ?? []));
  const represented = new Set(used.flatMap((measurement) => surelyStandsFor(measurement, book, days)));
  const outcome = used.some(isHigh) ? 'positive' : blocks.length === 0 ? 'negativeMayBeWritten' : 'open';
  const finding: DeterminationFinding = {
    siteId: scope.siteId,
    groupKey: scope.groupKey,
    outcome,
    blocks,
    measurementIds: used.map(({ id }) => id),
    relianceIds: scope.relied.map(({ reliance }) => reliance.id),
    monitoredIds: [...monitored],
    standsForIds: [...represented].filter((id) => !monitored.has(id)),
    highest: highestOf(used),
    writtenId: written?.id ?? null,
    differsFromRecord: false,
    because: [
      ...used.flatMap(({ because }) => because),
      ...scope.relied.flatMap(({ reliance }) => reliance.factIds),
      ...(written?.factIds ?? []),
    ],
  };
  return written ? { ...finding, differsFromRecord: isOnOtherFacts(written, finding, measurements) } : finding;
}

const emptyScope = (siteId: string, groupKey: string): Scope => ({ siteId, groupKey, own: [], relied: [], days: [] });

/** What may be determined of one task group at one site. A group that nobody knows there has no measurement. */
export function determinationFor(
  siteId: string,
  groupKey: string,
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
  days: readonly GroupDay[],
  today: string,
): DeterminationFinding {
  const found = scopesOf(measurements, book, days).find((one) => one.siteId === siteId && one.groupKey === groupKey);
  const scope = found ?? emptyScope(siteId, groupKey);
  return determine(scope, measurements, book, days, writtenOf(scope, book), today);
}

/** Every task group at every site, by site and group. */
export function determinationsOf(
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
  days: readonly GroupDay[],
  today: string,
): readonly DeterminationFinding[] {
  return scopesOf(measurements, book, days).map((scope) =>
    determine(scope, measurements, book, days, writtenOf(scope, book), today),
  );
}
