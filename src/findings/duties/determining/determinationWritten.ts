/** The determination that was written of a task group at a site, and whether it still stands on the facts as they are. */
import { sideOf } from '#core/comparison.ts';
import { type Estimate, lowerOf, upperOf } from '#core/estimate.ts';
import type { Book, DeterminationRecord } from '#records/book.ts';
import { groupKeyOf } from '../groups/taskGroup.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { DeterminationFinding } from './determination.ts';
import type { Scope } from './determinationScope.ts';

const latestFirst = (a: DeterminationRecord, b: DeterminationRecord): number =>
  a.written.at < b.written.at ? 1 : a.written.at > b.written.at ? -1 : a.id < b.id ? -1 : 1;

/**
 * The last one written of these tasks at this site. It names no setting: one that names measurements of another setting is not of this
 * group. One that a newer version changed does not count until it is understood.
 */
export function writtenOf(scope: Scope, book: Book): DeterminationRecord | null {
  const setting = scope.groupKey.startsWith('outdoors|') ? 'outdoors' : 'indoors';
  const known = new Set([
    ...scope.own.map(({ id }) => id),
    ...scope.relied.map(({ reliance }) => reliance.measurementId),
  ]);
  const found = [...book.determinations.values()].filter(
    ({ written, notUnderstood }) =>
      notUnderstood.length === 0 &&
      written.siteId === scope.siteId &&
      groupKeyOf(setting, written.jobClassificationId, written.taskIds) === scope.groupKey &&
      (written.measurementIds.length === 0 || written.measurementIds.some((id) => known.has(id))),
  );
  return found.sort(latestFirst)[0] ?? null;
}

const isSame = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((one) => b.includes(one));

const end = (told: number, now: number): boolean => (Number.isFinite(now) ? sideOf(told, now) === 0 : told === now);

/** The figures that it was made with, where its values hold them. */
function figuresDiffer({ written }: DeterminationRecord, measurements: ReadonlyMap<string, Measurement>): boolean {
  const values: { readonly measurements?: unknown } = written.determination;
  if (!Array.isArray(values.measurements)) return false;
  return values.measurements.some((one: { measurementId?: string; twa8UgPerM3?: Estimate | null }) => {
    const now = measurements.get(one.measurementId ?? '')?.twa8UgPerM3 ?? null;
    const told = one.twa8UgPerM3 ?? null;
    if (told === null || now === null) return told !== now;
    return !end(lowerOf(told), lowerOf(now)) || !end(upperOf(told), upperOf(now));
  });
}

/** Other measurements or reliances, other figures, or another outcome than what is so now. */
export function isOnOtherFacts(
  record: DeterminationRecord,
  finding: DeterminationFinding,
  measurements: ReadonlyMap<string, Measurement>,
): boolean {
  const { outcome, measurementIds, relianceIds } = record.written;
  const asWritten = outcome === 'negative' ? 'negativeMayBeWritten' : 'positive';
  return (
    asWritten !== finding.outcome ||
    !isSame(measurementIds, finding.measurementIds) ||
    !isSame(relianceIds, finding.relianceIds) ||
    figuresDiffer(record, measurements)
  );
}
