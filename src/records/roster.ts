/**
 * The roster of one worker's day. A writer's later entry about a shift follows its own earlier one; entries of two writers that differ
 * both count until a person settles it, so that nobody drops out of whom a measurement stands for. A strike removes the one entry that
 * it names, and only where it knew of every correction of it: an entry that was struck here and corrected there stays, and is shown.
 */
import type { Conflict, WorkdayRecord } from './book.ts';
import { canonicalJson } from './canonical.ts';
import type { Fact } from './fact.ts';
import { type FoldInput, ofKind } from './foldCase.ts';
import { besides, latestOfEachWriter, settledBy } from './statements.ts';

type Noted = Fact<'workNoted.v1'>;
type Struck = Fact<'workStruck.v1'>;
type Said = Pick<FoldInput, 'settlements'> & Pick<FoldInput['base'], 'strikes'>;
type Worked = NonNullable<WorkdayRecord['worked']>;

export interface Roster {
  readonly worked: Worked;
  readonly conflicts: readonly (Conflict | null)[];
}

const hasReason = ({ why }: Struck): boolean => why !== null && why.trim() !== '';

/** Whether the entry stays, and the dispute while strike and correction did not know of each other. */
function judged(noted: Noted, strikes: readonly Struck[], said: Said): { stays: boolean; conflict: Conflict | null } {
  if (strikes.length === 0) return { stays: true, conflict: null };
  const corrections = said.strikes.filter(({ factId }) => factId === noted.id).map(({ correctionId }) => correctionId);
  const knowing = strikes.find(({ body }) => corrections.every((id) => body.knew?.includes(id)));
  if (knowing) return { stays: false, conflict: null };
  const sides = [noted, ...strikes] as readonly Fact[];
  const settled = settledBy(sides, said);
  if (settled) return { stays: settled.id === noted.id, conflict: null };
  const candidates = sides.map((fact) => ({ correctionId: fact.id, value: fact.id !== noted.id, by: fact.by }));
  const dispute = { factId: noted.id, path: '/struck', candidates, standing: noted.id, standingValue: false } as const;
  return { stays: true, conflict: { ...dispute, judges: 'careful', besides: besides(sides, said) } };
}

interface Entry {
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly respirator: string | null;
}

const entryOf = ({ body }: Noted): Entry => ({
  taskIds: [...new Set(body.taskIds)].sort(),
  jobClassificationId: body.jobClassificationId,
  respirator: body.respirator,
});

const differentCount = (values: readonly unknown[]): number => new Set(values.map(canonicalJson)).size;

/** They differ where tasks or classification do, or where each noted a respirator and not the same. */
function differ(entries: readonly Entry[]): boolean {
  const work = entries.map(({ taskIds, jobClassificationId }) => ({ taskIds, jobClassificationId }));
  const worn = entries.flatMap(({ respirator }) => respirator ?? []);
  return differentCount(work) > 1 || differentCount(worn) > 1;
}

/** All that was said together; where two classifications or respirators were named, none is. */
function together(entries: readonly Entry[]): Entry {
  const only = (names: readonly (string | null)[]): string | null => {
    const [name = null, ...others] = new Set(names.filter((one) => one !== null));
    return others.length === 0 ? name : null;
  };
  return {
    taskIds: [...new Set(entries.flatMap(({ taskIds }) => taskIds))].sort(),
    jobClassificationId: only(entries.map((one) => one.jobClassificationId)),
    respirator: only(entries.map((one) => one.respirator)),
  };
}

/** What stands of one shift. */
function ofShift(noted: readonly Noted[], said: Said): { stand: readonly Noted[]; conflict: Conflict | null } {
  const heads = latestOfEachWriter(noted);
  const values = heads.map(entryOf);
  if (!differ(values)) {
    const fullest = heads.findLast(({ body }) => body.respirator !== null) ?? heads.at(-1);
    return { stand: fullest ? [fullest] : [], conflict: null };
  }
  const settled = settledBy(heads, said);
  if (settled) return { stand: [settled], conflict: null };
  const first = heads[0] as Noted;
  const candidates = heads.map((head) => ({ correctionId: head.id, value: entryOf(head), by: head.by }));
  const most = heads.reduce((best, next) =>
    entryOf(next).taskIds.length > entryOf(best).taskIds.length ? next : best,
  );
  const dispute = { factId: first.id, path: '/worked', candidates, standing: most.id } as const;
  const conflict = {
    ...dispute,
    judges: 'careful',
    standingValue: together(values),
    besides: besides(heads, said),
  } as const;
  return { stand: heads, conflict };
}

/** The entries that stand, by shift; within a shift in the order written. */
export function rosterOf({ base, facts, settlements }: FoldInput): Roster {
  const said = { settlements, strikes: base.strikes };
  const strikes = ofKind(facts, 'workStruck.v1').filter(hasReason);
  const conflicts: (Conflict | null)[] = [];
  const byShift = new Map<string, Noted[]>();
  for (const noted of ofKind(facts, 'workNoted.v1')) {
    const { stays, conflict } = judged(
      noted,
      strikes.filter(({ body }) => body.noted === noted.id),
      said,
    );
    conflicts.push(conflict);
    const { shiftId } = noted.body;
    if (stays) byShift.set(shiftId, [...(byShift.get(shiftId) ?? []), noted]);
  }
  const worked = [...byShift.keys()].sort().flatMap((shiftId) => {
    const { stand, conflict } = ofShift(byShift.get(shiftId) ?? [], said);
    conflicts.push(conflict);
    return stand;
  });
  return {
    worked: worked.map(({ id, body: { workdayId: _, ...body } }) => ({ ...body, factId: id })),
    conflicts,
  };
}
