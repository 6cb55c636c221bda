/**
 * One filter cassette. Written by the supervisor before entering and after leaving the work area, by the office when results come in;
 * used to be the sampling form with the laboratory's report clipped to it.
 */
import type { Interval, SampleRecord } from './book.ts';
import { carefulOf, morePointsMissed } from './careful.ts';
import { setBack } from './clockDoubts.ts';
import type { Fact } from './fact.ts';
import { type FoldInput, firstOf, ofKind, withConflicts } from './foldCase.ts';
import { resultsOf } from './results.ts';
import { standingStatement } from './statements.ts';
import { timelineOf } from './timeline.ts';
import { voidStateOf } from './voids.ts';

interface Momentary {
  readonly id: string;
  readonly happened: Fact['happened'];
}
const momentOf = ({ id, happened }: Momentary) => ({ at: happened.at, entry: happened.entry, factId: id });
const momentsOf = <B>(facts: readonly (Momentary & { readonly body: B })[]) =>
  facts.map((fact) => ({ ...fact.body, ...momentOf(fact) })).sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));

type Sealed = Fact<'cassetteSealed.v1'>;

/** Sealed once; where it was locked in may be added afterwards. */
function sealedOf(seals: readonly Sealed[]): SampleRecord['sealed'] {
  const first = seals[0];
  if (!first) return null;
  const locked = seals.find(({ body }) => body.lockedIn !== null) ?? first;
  const labelled = seals.some(({ body }) => body.labelled);
  return { ...first.body, ...locked.body, labelled, ...momentOf(first), lockedFactId: locked.id };
}

/** Stretches away from the lead area, whatever the pump did meanwhile. */
function awayOf(intervals: readonly Interval[]): SampleRecord['leadAreaAway'] {
  const stretches: { fromAt: string; toAt: string | null; reason: string }[] = [];
  for (const { fromAt, toAt, awayFromLead, reason } of intervals) {
    if (!awayFromLead || reason === null) continue;
    const last = stretches.at(-1);
    if (last && last.toAt === fromAt && last.reason === reason) last.toAt = toAt;
    else stretches.push({ fromAt, toAt, reason });
  }
  return stretches;
}

const remarksOf = (facts: readonly Fact[]): readonly string[] =>
  facts.flatMap((fact) => (fact.kind === 'remarkMade.v1' || fact.kind === 'noteMade.v1' ? [fact.body.text] : []));

type Origin = Pick<
  SampleRecord,
  | 'sampleKind'
  | 'sampleNumber'
  | 'shiftId'
  | 'workOn'
  | 'siteId'
  | 'workerId'
  | 'workdayId'
  | 'pumpId'
  | 'lotId'
  | 'taskIds'
  | 'jobClassificationId'
  | 'follows'
  | 'openedWhere'
  | 'preparedAt'
  | 'preparedFactId'
>;

const placeOf = (shiftId: string) => ({ shiftId, siteId: shiftId.slice(0, 12), workOn: shiftId.slice(13) });

function originOf(facts: readonly Fact[]): Origin | null {
  const prepared = firstOf(facts, 'samplePrepared.v1');
  if (prepared) {
    const { sampleNumber, shiftId, workerId, pumpId, lotId, taskIds, jobClassificationId, follows } = prepared.body;
    const place = placeOf(shiftId);
    return {
      sampleKind: 'air',
      sampleNumber,
      ...place,
      workerId,
      workdayId: `${workerId}.${place.workOn}`,
      pumpId,
      lotId,
      taskIds,
      jobClassificationId,
      follows,
      openedWhere: null,
      preparedAt: prepared.happened.at,
      preparedFactId: prepared.id,
    };
  }
  const blank = firstOf(facts, 'blankOpened.v1');
  if (!blank) return null;
  const { sampleNumber, shiftId, lotId, openedWhere } = blank.body;
  const nobody = {
    workerId: null,
    workdayId: null,
    pumpId: null,
    taskIds: [],
    jobClassificationId: null,
    follows: null,
  };
  return {
    sampleKind: 'blank',
    sampleNumber,
    ...placeOf(shiftId),
    ...nobody,
    lotId,
    openedWhere,
    preparedAt: blank.happened.at,
    preparedFactId: blank.id,
  };
}

/** Null until the fact that prepared it has arrived. */
export function foldSample({ base, facts, settlements }: FoldInput): SampleRecord | null {
  const origin = originOf(facts);
  if (!origin) return null;
  const line = timelineOf(facts);
  const decided = standingStatement({
    facts: ofKind(facts, 'flowDecided.v1'),
    path: '/use',
    valueIn: ({ body }) => body.use,
    careful: carefulOf('flowDecided.v1', '/use'),
    settlements,
    strikes: base.strikes,
  });
  const { results, conflicts } = resultsOf(ofKind(facts, 'resultReceived.v1'), { settlements, strikes: base.strikes });
  const fittings = standingStatement({
    facts: ofKind(facts, 'fittingChecked.v1'),
    path: '/points',
    valueIn: ({ body }) => body.points,
    careful: morePointsMissed,
    settlements,
    strikes: base.strikes,
  });
  const fitting = fittings.fact;
  const decision = decided.fact;
  return {
    ...withConflicts(base, [decided.conflict, fittings.conflict, ...conflicts]),
    ...origin,
    fitting: fitting ? { ...fitting.body, at: fitting.happened.at, factId: fitting.id } : null,
    putOn: line.putOn && momentOf(line.putOn),
    stopped: line.stopped && { ...momentOf(line.stopped), pumpMin: line.stopped.body.pumpMin },
    intervals: line.intervals,
    looks: momentsOf(ofKind(facts, 'pumpLookedAt.v1')),
    leadAreaAway: awayOf(line.intervals),
    faults: momentsOf(ofKind(facts, 'pumpFaulted.v1')),
    mishaps: momentsOf(ofKind(facts, 'mishapNoted.v1')),
    sealed: sealedOf(ofKind(facts, 'cassetteSealed.v1')),
    flowDecision: decision && {
      use: decision.body.use,
      why: decision.why,
      factId: decision.id,
      ...(decision.body.knew ? { knew: decision.body.knew } : {}),
    },
    ...voidStateOf(facts),
    results,
    remarks: remarksOf(facts),
    clockDoubts: [
      ...[...setBack(facts), ...ofKind(facts, 'clockSetBackNoticed.v1').map(({ id }) => id)].map((factId) => ({
        factId,
        kind: 'setBack' as const,
      })),
      ...line.outOfOrder.map((factId) => ({ factId, kind: 'outOfOrder' as const })),
    ],
  };
}
