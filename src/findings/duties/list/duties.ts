/** The duties that follow from a book: each row of shared/duties whose trigger is met, with what was done of it. */
import type { Book } from '#records/book.ts';
import { type DutyRow, rowsOn } from '#reference/duties.ts';
import { isCitable } from '#reference/source.ts';
import type { Duty } from './duty.ts';
import { dutyIdOf } from './dutyIds.ts';
import { timingOf } from './dutyTiming.ts';
import { triggerNamed } from './dutyTriggers.ts';
import { type DutyParts, type Ground, groundOf, tableHeld } from './dutyTriggersGround.ts';
import { levelsOf } from './dutyTriggersLevels.ts';
import type { Met, Sight } from './dutyTriggersMet.ts';
import { daysAtOf } from './dutyTriggersPeople.ts';

export type { DutyParts } from './dutyTriggersGround.ts';

/** The paragraph that asks for it: of the interim protections while it is presumed, where that was read; else its own. */
function citedBy(row: DutyRow, isPresumed: boolean): Pick<Duty, 'paragraph' | 'source'> {
  const { presumed } = row;
  if (isPresumed && presumed?.paragraph && isCitable(presumed.source))
    return { paragraph: presumed.paragraph, source: presumed.source };
  return { paragraph: row.paragraph, source: row.source };
}

function dutyOf(row: DutyRow, met: Met, ground: Ground): Duty | null {
  const id = dutyIdOf(row.kind, met.subjects);
  const { book, today, table } = ground;
  const timing = timingOf(row, met, id, { book, today, quietDays: table.quietAfter.value });
  if (!timing) return null;
  const { params, ...when } = timing;
  return {
    id,
    kind: row.kind,
    limitSetId: table.limitSetId,
    ...citedBy(row, met.presumed),
    workerIds: met.workerIds,
    siteId: met.siteId,
    groupKey: met.groupKey,
    measurementIds: met.measurementIds,
    params: { ...met.params, ...params },
    ...when,
    decidedBy: row.decidedBy,
    fulfilledBy: row.fulfilledBy,
    presumed: met.presumed,
    because: met.because,
  };
}

/** What goes with its trigger is made of row and trigger alone: the same trigger makes the same duty. */
const madeOf = new WeakMap<Met, Map<DutyRow, Duty | null>>();

function dutyOnce(row: DutyRow, met: Met, ground: Ground): Duty | null {
  if (row.lasts !== 'untilItFalls') return dutyOf(row, met, ground);
  const byRow = madeOf.get(met) ?? new Map<DutyRow, Duty | null>();
  const before = byRow.get(row);
  if (before !== undefined) return before;
  const duty = dutyOf(row, met, ground);
  byRow.set(row, duty);
  madeOf.set(met, byRow);
  return duty;
}

const rank = ({ done, overdue, dueOn }: Duty): number => (done ? 3 : overdue ? 0 : dueOn === null ? 2 : 1);
const text = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** By date and person: overdue first, then by day, then those without a day; done ones last, newest first. */
export function inOrder(a: Duty, b: Duty): number {
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  if (a.done && b.done) return text(b.done.on, a.done.on) || text(a.id, b.id);
  return (
    text(a.dueOn ?? '9999', b.dueOn ?? '9999') || text(a.workerIds[0] ?? '', b.workerIds[0] ?? '') || text(a.id, b.id)
  );
}

/** What duties are found again for. All of a site, a worker or a measurement is in it, or nothing. */
export interface About {
  readonly siteIds: ReadonlySet<string>;
  readonly workerIds: ReadonlySet<string>;
  readonly measurementIds: ReadonlySet<string>;
}

type Subject = Pick<Met, 'siteId' | 'workerIds' | 'measurementIds'>;

function isAbout(per: DutyRow['per'], { siteId, workerIds, measurementIds }: Subject, about: About): boolean {
  if (per === 'request') return false;
  if (per === 'measurement') return measurementIds.some((id) => about.measurementIds.has(id));
  if (per === 'worker' || per === 'course') return workerIds.some((id) => about.workerIds.has(id));
  return siteId !== null && about.siteIds.has(siteId);
}

/** None where the rule of the site is not held complete. `about`: those of some sites, workers and measurements alone. */
export function dutiesOf(parts: DutyParts, book: Book, today: string, about?: About): readonly Duty[] {
  const ground = groundOf(parts, book, today, about?.siteIds);
  const sight: Sight = { ground, levels: levelsOf(ground), daysAt: daysAtOf(ground, about?.workerIds) };
  const duties = rowsOn(today, ground.table).flatMap((row) =>
    triggerNamed(row.trigger)(sight, row).flatMap((met) =>
      about && !isAbout(row.per, met, about) ? [] : (dutyOnce(row, met, ground) ?? []),
    ),
  );
  return duties.sort(inOrder);
}

/** Those found before that are about nothing else, and the rest anew. Rows, requests and what was done are the same as before. */
export function dutiesAgain(
  before: readonly Duty[],
  about: About,
  parts: DutyParts,
  book: Book,
  today: string,
): readonly Duty[] {
  const perOf = new Map(rowsOn(today, tableHeld()).map(({ kind, per }) => [kind, per]));
  const kept = before.filter((duty) => {
    const per = perOf.get(duty.kind);
    return per !== undefined && !isAbout(per, duty, about);
  });
  return [...kept, ...dutiesOf(parts, book, today, about)].sort(inOrder);
}
