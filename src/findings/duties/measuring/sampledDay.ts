/** A worker's day that we sampled, as duties see it. */
import { upperOf } from '#core/estimate.ts';
import { twa8 } from '#core/twa.ts';
import type { Book, SampleRecord, WorkdayRecord } from '#records/book.ts';
import { wallDepositPct } from '../../practice.ts';
import { type Reason, reason } from '../../reason.ts';
import type { SampleFinding } from '../../sample.ts';
import { findWorkday, type WorkdayFinding } from '../../workday.ts';
import { groupKeyOf } from '../groups/taskGroup.ts';
import { type ShiftTasks, shiftTasksOf } from '../groups/taskGroups.ts';
import { bandOf, higherBand, ownLimitsOf } from './band.ts';
import type { Measurement, Receipt } from './measurement.ts';

/** The most that one minute is known to have held: the upper bound where there is one, else the lower end. Void or not. */
function mostKnown({ concentration, protectiveConcentration, judged }: SampleFinding): number {
  let most = 0;
  for (const term of [concentration, protectiveConcentration, judged]) {
    if (!term) continue;
    const upper = upperOf(term.estimate);
    const known = Number.isFinite(upper) || term.estimate.kind !== 'atLeast' ? upper : term.estimate.lower;
    most = Math.max(most, known);
  }
  return most;
}

/** Minutes that nothing is known of count nothing: what the rest shows is at least so much. */
function fromKnownParts({ segments, samples }: WorkdayFinding): number {
  const most = new Map(samples.map((sample) => [sample.sampleId, mostKnown(sample)]));
  const known = segments.filter(({ as, sampleId }) => as !== 'away' && as !== 'unknown' && sampleId !== null);
  return twa8.compute({
    C: known.map(({ sampleId }) => most.get(sampleId ?? '') ?? 0),
    t: known.map(({ durationMin }) => durationMin),
  });
}

/**
 * What duties run on: the larger of point value and upper bound; where nothing bounds the day from above, what its known parts show at
 * the most. So neither a void nor minutes that became unknown takes a duty away.
 */
function dutyValueOf(finding: WorkdayFinding): number {
  const uppers = [finding.twa8, finding.protectiveTwa8].map((term) => (term ? upperOf(term.estimate) : 0));
  const most = Math.max(...uppers);
  return Number.isFinite(most) && (finding.twa8 || finding.protectiveTwa8) ? most : fromKnownParts(finding);
}

const ownNoticed: ReadonlySet<string> = new Set(['regularNotSaid', 'notRegular', 'stateRuleNotHeld']);

/** What keeps the day from proving anything low. */
function blocksOf(finding: WorkdayFinding): readonly Reason[] {
  const atLimits = finding.standings.flatMap(({ why }) => why.filter(({ key }) => key === 'wallDepositCouldMatter'));
  return [...finding.blocksBelow, ...atLimits, ...finding.reasons.filter(({ key }) => ownNoticed.has(key))];
}

/** The largest share that was found on a cassette's wall, added where it is left open. The rule's own limits have it in their standing. */
const wallFactor = ({ samples }: WorkdayFinding): number =>
  samples.some(({ wallOpen }) => wallOpen) ? 1 / (1 - wallDepositPct.value / 100) : 1;

type Proof = Pick<Measurement, 'band' | 'provesBelowActionLevel' | 'provesNotAbovePel'>;

function byRuleOf(finding: WorkdayFinding, value: number): Proof {
  const at = (which: 'actionLevel' | 'pel') => finding.standings.find((one) => one.which === which);
  const shown = finding.regular === 'yes' && finding.ruleHeld;
  const below = at('actionLevel')?.verdict === 'below';
  const closed = bandOf(value, finding.limits.set);
  const band = closed === 'belowActionLevel' && !below ? 'open' : closed;
  return {
    band,
    provesBelowActionLevel: band === 'belowActionLevel' && shown,
    provesNotAbovePel: at('pel')?.crossed === 'no' && band !== 'open' && band !== 'abovePel' && shown,
  };
}

type Standing = Proof & Pick<Measurement, 'atOrAbovePel' | 'byRule'>;

function standingOf(finding: WorkdayFinding, book: Book): Standing {
  const value = dutyValueOf(finding);
  const byRule = byRuleOf(finding, value);
  const atOrAbovePel = finding.standings.find(({ which }) => which === 'pel')?.atOrAbove ?? 'unresolved';
  const own = ownLimitsOf(finding.limits.set, book.book);
  if (own === finding.limits.set) return { ...byRule, atOrAbovePel };
  const withWall = bandOf(value * wallFactor(finding), own);
  const tightened: Proof = {
    band: higherBand(byRule.band, bandOf(value, own)),
    provesBelowActionLevel: byRule.provesBelowActionLevel && withWall === 'belowActionLevel',
    provesNotAbovePel: byRule.provesNotAbovePel && withWall !== 'abovePel',
  };
  return isSameProof(tightened, byRule) ? { ...byRule, atOrAbovePel } : { ...tightened, byRule, atOrAbovePel };
}

export const isSameProof = (a: Proof, b: Proof): boolean =>
  a.band === b.band &&
  a.provesBelowActionLevel === b.provesBelowActionLevel &&
  a.provesNotAbovePel === b.provesNotAbovePel;

const receiptOrder = ({ receivedOn, factId }: Receipt): string => `${receivedOn} ${factId}`;

function receiptsOf(samples: readonly SampleRecord[]): readonly Receipt[] {
  const found = samples.flatMap(({ results }) =>
    results.map(({ factId, reportNumber, receivedOn }) => ({ factId, reportNumber, receivedOn })),
  );
  return found.sort((a, b) => (receiptOrder(a) < receiptOrder(b) ? -1 : 1));
}

const onlyLeast = ({ mass, quality, judged }: SampleFinding): boolean =>
  mass !== null && (quality === 'void' || judged?.estimate.kind === 'atLeast');

/** A day at two sites makes one group of its own: all tasks of the day, in the setting of the first. In part it was that of each. */
function groupOf(tasks: readonly ShiftTasks[]) {
  const taskIds = [...new Set(tasks.flatMap((one) => one.taskIds))].sort();
  const [first] = tasks;
  const jobClassificationId = first?.jobClassificationId ?? null;
  const groupKey = groupKeyOf(first?.setting ?? 'indoors', jobClassificationId, taskIds);
  const others = new Set(
    tasks.flatMap((one) => [groupKeyOf(one.setting, one.jobClassificationId, one.taskIds), ...(one.mayBeKeys ?? [])]),
  );
  others.delete(groupKey);
  return { taskIds, jobClassificationId, groupKey, ...(others.size > 0 ? { mayBeKeys: [...others].sort() } : {}) };
}

/** `slice`: enough for the day. `samples`: the day's own, of which one at least was worn. */
export function sampledDay(
  workdayId: string,
  samples: readonly SampleRecord[],
  day: WorkdayRecord | undefined,
  slice: Book,
): Measurement {
  const finding = findWorkday(workdayId, slice);
  const sampledShifts = new Set(samples.map(({ shiftId }) => shiftId));
  const tasks = shiftTasksOf(finding.workerId, day, samples, slice).filter((one) => sampledShifts.has(one.shiftId));
  const running = finding.samples.some(({ run }) => run.running);
  const owed = finding.awaitedMin > 0 || running;
  return {
    id: workdayId,
    from: 'sampled',
    workerId: finding.workerId,
    workOn: finding.workOn,
    siteId: tasks[0]?.siteId ?? null,
    shiftIds: tasks.map(({ shiftId }) => shiftId),
    ...groupOf(tasks),
    limits: finding.limits,
    twa8UgPerM3: finding.protectiveTwa8?.estimate ?? finding.twa8?.estimate ?? null,
    ...standingOf(finding, slice),
    resultOwed: owed,
    atLeastOnly: finding.samples.some(onlyLeast),
    receipts: receiptsOf(samples),
    blocks: blocksOf(finding),
    finding,
    because: finding.because,
  };
}

/** Said of a day beside which another measurement lies that is higher. */
export const judgedBeside = (otherId: string, because: readonly string[]): Reason =>
  reason('judgedBeside', because, { otherId });
