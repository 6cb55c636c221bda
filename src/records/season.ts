/**
 * What is planned and what is made ready for a day. Said anew it follows what it knew of; what two devices said without knowing of each
 * other stands together, and is listed. A plan proves nothing, so the larger one stands: nothing that somebody meant to measure is lost.
 */
import type { DayPlanRecord, Label, PlanRecord } from './book.ts';
import { canonicalJson } from './canonical.ts';
import type { Fact } from './fact.ts';
import { type FoldInput, ofKind, withConflicts } from './foldCase.ts';
import { saidOf, stood, unknownToOthers } from './revised.ts';
import { latestOfEachWriter, standingStatement } from './statements.ts';
import { inTime } from './telling.ts';

type Planned = Fact<'measurementPlanned.v1'>;

const plannedIn = ({ body: { planId: _id, knew: _knew, ...body } }: Planned): object => body;
const slotsCount = (planned: unknown): number => (planned as Planned['body']).slots.length;

/** A plan is given up by whoever knew of all that stands of it: what was planned meanwhile elsewhere stands. */
function droppedIn({ facts }: FoldInput, heads: readonly Planned[]): PlanRecord['dropped'] {
  const lifted = new Set(ofKind(facts, 'measurementPlanned.v1').flatMap(({ body }) => body.knew ?? []));
  const drop = ofKind(facts, 'planDropped.v1').find(
    ({ id, body: { knew } }) =>
      !lifted.has(id) && (knew === undefined || heads.every((head) => knew.includes(head.id))),
  );
  return drop === undefined ? null : { why: drop.why, factId: drop.id };
}

/** Null until the plan itself has arrived. */
export function foldPlan(input: FoldInput): PlanRecord | null {
  const { base, facts } = input;
  const all = ofKind(facts, 'measurementPlanned.v1');
  const heads = unknownToOthers(all);
  const { fact, conflict } = standingStatement({
    facts: heads,
    path: '/planned',
    valueIn: plannedIn,
    careful: (a, b) => slotsCount(a) - slotsCount(b),
    ...saidOf(input),
  });
  if (fact === null) return null;
  const [plannedAt = fact.happened.at] = all.map(({ happened }) => happened.at).sort();
  return {
    ...plannedIn(fact),
    ...withConflicts(base, [conflict]),
    plannedFactId: fact.id,
    plannedAt,
    missed: inTime(facts, 'plannedDayMissed.v1').map(({ id, body: { planId: _, ...body } }) => ({
      ...body,
      factId: id,
    })),
    dropped: droppedIn(input, latestOfEachWriter(heads)),
  } as unknown as PlanRecord;
}

type Prepared = Omit<NonNullable<DayPlanRecord['prepared']>, 'factId'>;
const preparedIn = ({ body: { shiftId: _id, knew: _knew, ...body } }: Fact<'dayPrepared.v1'>): Prepared => body;

/** Each once, in the order said. */
const union = <T>(a: readonly T[], b: readonly T[]): T[] => [
  ...new Map([...a, ...b].map((one) => [canonicalJson(one), one])).values(),
];
const both = (a: string | null, b: string | null): string | null =>
  a === null || a === b ? b : b === null ? a : `${a}; ${b}`;

/** Wearers of both, and what is more to be brought; asked in the morning only where both were. */
const together = (a: Prepared, b: Prepared): Prepared => ({
  ...a,
  asked: a.asked === 'evening' ? a.asked : b.asked,
  wearers: union(a.wearers, b.wearers),
  sparePumpIds: union(a.sparePumpIds, b.sparePumpIds),
  spareCassettesCount: Math.max(a.spareCassettesCount, b.spareCassettesCount),
  chargedById: a.chargedById === b.chargedById ? a.chargedById : null,
  remark: both(a.remark, b.remark),
});

const labelsIn = (facts: readonly Fact[]): readonly Label[] =>
  inTime(facts, 'labelsMade.v1').flatMap(({ id, body }) =>
    body.labels.map(({ sampleNumber, workerId, blank }) => ({ sampleNumber, workerId, blank, factId: id })),
  );

/** The id tells site and day, so there is always a record. */
export function foldDayPlan(input: FoldInput): DayPlanRecord {
  const { base, facts } = input;
  const { value, conflict } = stood(
    standingStatement({
      facts: unknownToOthers(ofKind(facts, 'dayPrepared.v1')),
      path: '/prepared',
      valueIn: preparedIn,
      careful: (a, b) => (a as Prepared).wearers.length - (b as Prepared).wearers.length,
      ...saidOf(input),
    }),
    preparedIn,
    together,
  );
  return {
    ...withConflicts(base, [conflict]),
    siteId: base.id.slice(0, 12),
    workOn: base.id.slice(13),
    prepared: value,
    labels: labelsIn(facts),
  };
}
