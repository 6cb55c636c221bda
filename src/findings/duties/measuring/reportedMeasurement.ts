/**
 * A measurement that was reported to us, without flow readings of our own. High stays high. It proves something low only for a full shift
 * of the firm's own workers by a method stated to be accurate, 29 CFR 1926.62(d)(1)(iii), (3)(iii), (9); what is not stated is doubt.
 */
import { compareWithLimit } from '#core/comparison.ts';
import { between, type Estimate, exactly, upperOf } from '#core/estimate.ts';
import type { Book, ReportedRecord } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import { bookDoubts } from '../../bookDoubts.ts';
import { type Reason, reason } from '../../reason.ts';
import { recordDoubts } from '../../recordDoubts.ts';
import { groupKeyOf } from '../groups/taskGroup.ts';
import { bandOf, ownLimitsOf, type TwoLimits } from './band.ts';
import type { Measurement } from './measurement.ts';
import { isSameProof } from './sampledDay.ts';

const estimateOf = ({ average }: ReportedRecord): Estimate =>
  average.kind === 'measured' ? exactly(average.twa8UgPerM3) : between(0, average.twa8UgPerM3);

/** What makes the figure itself doubtful. */
function doubtsOf(one: ReportedRecord, book: Book): Reason[] {
  const because = [one.reportedFactId];
  const found = [...bookDoubts(one.workOn, book), ...recordDoubts(one)];
  if (one.fullShift !== 'yes') found.push(reason('reportedNotFullShift', because));
  if (one.accuracy !== 'yes') found.push(reason('reportedAccuracyNotStated', because));
  return found;
}

/** What keeps it from proving anything of our own workers. */
function notOursOf(one: ReportedRecord, stateCode: string | null, held: boolean, book: Book): Reason[] {
  const because = [one.reportedFactId];
  const found: Reason[] = [];
  if (one.ownFirm !== 'yes') found.push(reason('reportedNotOwnFirm', because));
  if (one.workerId === null || !book.people.has(one.workerId)) found.push(reason('reportedWorkerNotInBook', because));
  if (stateCode === null) found.push(reason('stateNotKnown', because));
  else if (!held) found.push(reason('stateRuleNotHeld', because, { stateCode }));
  return found;
}

type Proof = Pick<Measurement, 'band' | 'provesBelowActionLevel' | 'provesNotAbovePel'>;

function proofOf(value: number, limits: TwoLimits, doubts: readonly Reason[], blocks: readonly Reason[]): Proof {
  const closed = bandOf(value, limits);
  const proves = blocks.length === 0;
  return {
    band: closed === 'belowActionLevel' && doubts.length > 0 ? 'open' : closed,
    provesBelowActionLevel: closed === 'belowActionLevel' && proves,
    provesNotAbovePel: closed !== 'abovePel' && proves,
  };
}

export function reportedMeasurement(one: ReportedRecord, book: Book): Measurement {
  const stateCode = (one.siteId === null ? undefined : book.sites.get(one.siteId))?.stateCode ?? null;
  const limitsHere = limitSetOn(one.workOn, stateCode ?? '');
  const own = ownLimitsOf(limitsHere.set, book.book);
  const twa8UgPerM3 = estimateOf(one);
  const doubts = doubtsOf(one, book);
  const blocks = [...doubts, ...notOursOf(one, stateCode, limitsHere.heldComplete, book)];
  const value = upperOf(twa8UgPerM3);
  const proof = proofOf(value, own, doubts, blocks);
  const byRule = proofOf(value, limitsHere.set, doubts, blocks);
  const atOrAbovePel = compareWithLimit(twa8UgPerM3, limitsHere.set.pel).atOrAbove;
  const person = one.workerId === null ? undefined : book.people.get(one.workerId);
  const jobClassificationId = one.jobClassificationId ?? person?.jobClassificationId ?? null;
  const taskIds = [...new Set(one.taskIds)].sort();
  return {
    id: one.id,
    from: one.from,
    workerId: one.workerId,
    workOn: one.workOn,
    siteId: one.siteId,
    shiftIds: one.siteId === null ? [] : [`${one.siteId}.${one.workOn}`],
    groupKey: groupKeyOf(one.setting, jobClassificationId, taskIds),
    taskIds,
    jobClassificationId,
    limits: limitsHere,
    twa8UgPerM3,
    ...proof,
    ...(isSameProof(proof, byRule) ? {} : { byRule }),
    atOrAbovePel: atOrAbovePel === 'no' && doubts.length > 0 ? 'unresolved' : atOrAbovePel,
    resultOwed: false,
    atLeastOnly: false,
    receipts: [{ factId: one.reportedFactId, reportNumber: one.reportNumber, receivedOn: one.receivedOn }],
    blocks,
    finding: null,
    because: one.factIds,
  };
}
