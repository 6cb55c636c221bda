/**
 * From the flow before and after to the flow of the sample (design.md section 4, item 3): to 5 % average; over 5 to 10 % average,
 * flagged, and the lower flow judges; over 10 % or a reading missing no average, until someone decides with a reason. A missing
 * reading is never filled in.
 */
import { sideOf } from '#core/comparison.ts';
import { between, upperOf } from '#core/estimate.ts';
import { averageFlow, lowerFlow } from '#core/flow.ts';
import { recorded, type Term } from '#core/formula.ts';
import type { Book, FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { flowTolerance } from '#reference/flowTolerance.ts';
import { checksOfSample } from './checks.ts';
import { type FlowCheckFinding, type FlowRange, findFlowCheck } from './flow.ts';
import { largestChange } from './flowEnds.ts';
import { type Reason, reason } from './reason.ts';

/**
 * How the flow before and after became one flow. `average`; `averageFlagged`: over 5 to 10 %, the lower flow judges where the two
 * straddle a limit; `atLeastOnly`: over 10 %, or a reading missing; `decided`: someone decided, with a reason.
 */
export type FlowRule = 'average' | 'averageFlagged' | 'atLeastOnly' | 'decided';

export interface SampleFlow {
  readonly checkBefore: FlowCheckFinding | null;
  readonly checkAfter: FlowCheckFinding | null;
  readonly change: Term | null;
  readonly rule: FlowRule | null;
  /** The flow of the figure. */
  readonly flow: Term | null;
  /** The same as the flow meters read it, where one of them was found to be off; else `flow`. What was sent to the laboratory. */
  readonly flowAsRead: Term | null;
  /** The flow that judges: at or under `flow`. */
  readonly protective: Term | null;
  /** Where there is no flow: more than nothing and no more than the method, or what was read, allows. */
  readonly atMost: Term;
  readonly reasons: readonly Reason[];
}

const asDoubt = (why: Reason): Reason => (why.weight === 'voids' ? { ...why, weight: 'doubts' } : why);

function checked(
  check: FlowCheckRecord | null,
  sample: SampleRecord,
  book: Book,
  range: FlowRange | null,
  reasons: Reason[],
) {
  if (!check) return null;
  const finding = findFlowCheck(check, book, range);
  for (const one of finding.reasons) reasons.push(asDoubt(one));
  if (check.lotId !== sample.lotId) reasons.push(reason('lotDiffers', check.factIds));
  return finding;
}

const value = (term: Term | null): number => (term?.estimate.kind === 'exact' ? term.estimate.value : 0);

/** The method's highest flow bounds the air drawn from above; a reading above it bounds it higher. */
function atMostOf(highestLPerMin: number, readings: readonly (Term | null)[], because: readonly string[]): Term {
  const most = Math.max(highestLPerMin, ...readings.map((term) => (term ? upperOf(term.estimate) : 0)));
  return recorded('flowAtMost', 'L/min', between(0, most), because);
}

interface Both {
  readonly before: FlowCheckFinding;
  readonly after: FlowCheckFinding;
  readonly Qb: Term;
  readonly Qa: Term;
}

const lowEnds = ({ before, after, Qb, Qa }: Both): { Qb: Term; Qa: Term } => ({
  Qb: before.lowFlow ?? Qb,
  Qa: after.lowFlow ?? Qa,
});

type Ruled = Pick<SampleFlow, 'rule' | 'flow' | 'flowAsRead' | 'protective'>;
const nothing: Ruled = { rule: 'atLeastOnly', flow: null, flowAsRead: null, protective: null };

/** A decision counts only with its reason. It never takes the protective figure away. */
function decisionOf(sample: SampleRecord, reasons: Reason[]): SampleRecord['flowDecision'] {
  const decision = sample.flowDecision;
  if (!decision) return null;
  if (decision.why === null || decision.why.trim() === '') {
    reasons.push(reason('decisionWithoutReason', [decision.factId]));
    return null;
  }
  reasons.push(reason('flowDecided', [decision.factId], { use: decision.use, why: decision.why }));
  return decision;
}

/** The flow of the figure, and the same of what was read. */
function asReadToo({ before, after, Qb, Qa }: Both, of: (pair: { Qb: Term; Qa: Term }) => Term) {
  const flow = of({ Qb, Qa });
  const [readBefore = Qb, readAfter = Qa] = [before.ends[0], after.ends[0]];
  return { flow, flowAsRead: readBefore === Qb && readAfter === Qa ? flow : of({ Qb: readBefore, Qa: readAfter }) };
}

function ofBoth(both: Both, changePct: number, sample: SampleRecord, reasons: Reason[]): Ruled {
  const { averageUpTo, flaggedUpTo } = flowTolerance();
  const lower = (): Term => lowerFlow.of(lowEnds(both));
  const decision = decisionOf(sample, reasons);
  const because = sample.factIds.slice(0, 1);
  const overFlag = sideOf(changePct, flaggedUpTo.value) > 0;
  const overAverage = sideOf(changePct, averageUpTo.value) > 0;
  if (overFlag && !decision) {
    reasons.push(reason('flowChangedMuch', because, { changePct, upToPct: flaggedUpTo.value }));
    return nothing;
  }
  if (overAverage) reasons.push(reason('flowChangedSome', because, { changePct, upToPct: averageUpTo.value }));
  if (decision?.use === 'lower')
    return { rule: 'decided', ...asReadToo(both, (pair) => lowerFlow.of(pair)), protective: lower() };
  const average = asReadToo(both, (pair) => averageFlow.of(pair));
  if (overAverage) return { rule: overFlag ? 'decided' : 'averageFlagged', ...average, protective: lower() };
  const bounced = both.before.lowFlow !== null || both.after.lowFlow !== null;
  return { rule: 'average', ...average, protective: bounced ? averageFlow.of(lowEnds(both)) : average.flow };
}

/** One reading only: no average. A written decision may use it; *below* stays out of reach all the same. */
function ofOne(only: FlowCheckFinding | null, sample: SampleRecord, reasons: Reason[]): Ruled {
  const decision = decisionOf(sample, reasons);
  if (!only?.flow || decision?.use !== 'lower') return nothing;
  reasons.push(reason('flowDecidedOnOneReading', [decision.factId]));
  const [flowAsRead = only.flow] = only.ends;
  return { rule: 'decided', flow: only.flow, flowAsRead, protective: only.lowFlow ?? only.flow };
}

function missingReasons(sample: SampleRecord, before: Term | null, after: Term | null): Reason[] {
  const found: Reason[] = [];
  if (!before) found.push(reason('noFlowBefore', sample.factIds.slice(0, 1)));
  if (!after && sample.stopped) found.push(reason('noFlowAfter', [sample.stopped.factId]));
  return found;
}

function addOtherDay(
  check: FlowCheckRecord | null,
  key: 'flowBeforeOfOtherDay' | 'flowAfterOfOtherDay',
  { workOn }: SampleRecord,
  reasons: Reason[],
): void {
  const checkedOn = check?.shiftId.slice(-10);
  if (check && checkedOn !== undefined && checkedOn !== workOn) reasons.push(reason(key, check.factIds, { checkedOn }));
}

/**
 * Two devices checked one pump for one run, before it or after, and read flows further apart than an average bears: until someone who
 * knew of both decides with a reason, a doubt.
 */
function differing(
  others: readonly FlowCheckRecord[],
  own: FlowCheckFinding | null,
  { flowDecision }: SampleRecord,
  book: Book,
  range: FlowRange | null,
): Reason[] {
  const upToPct = flowTolerance().averageUpTo.value;
  const settled = (flowDecision?.why ?? '').trim() === '' ? [] : (flowDecision?.knew ?? []);
  return others.flatMap((other) => {
    if (!own?.flow || settled.includes(other.checkedFactId ?? '')) return [];
    const oneMeter = book.flowChecks.get(own.flowCheckId)?.meterId === other.meterId;
    const changePct = value(largestChange(own, findFlowCheck(other, book, range), oneMeter));
    return sideOf(changePct, upToPct) > 0 ? [reason('flowChecksDiffer', other.factIds, { changePct, upToPct })] : [];
  });
}

export function sampleFlowOf(
  sample: SampleRecord,
  book: Book,
  range: FlowRange | null,
  highestLPerMin: number,
): SampleFlow {
  const reasons: Reason[] = [];
  const checks = checksOfSample(sample, book);
  const before = checked(checks.before, sample, book, range, reasons);
  const after = checked(checks.after, sample, book, range, reasons);
  const [Qb, Qa] = [before?.flow ?? null, after?.flow ?? null];
  for (const empty of [checks.emptyBefore, checks.emptyAfter])
    if (empty) reasons.push(asDoubt(reason('nothingInLine', empty.factIds)));
  addOtherDay(checks.before, 'flowBeforeOfOtherDay', sample, reasons);
  addOtherDay(checks.after, 'flowAfterOfOtherDay', sample, reasons);
  for (const check of checks.shared) reasons.push(reason('flowCheckShared', check.factIds));
  reasons.push(...differing(checks.beforeByOthers, before, sample, book, range));
  reasons.push(...differing(checks.afterByOthers, after, sample, book, range));
  reasons.push(...missingReasons(sample, Qb, Qa));

  const change = largestChange(before, after, checks.before?.meterId === checks.after?.meterId);
  const ruled =
    before && after && Qb && Qa && change
      ? ofBoth({ before, after, Qb, Qa }, value(change), sample, reasons)
      : ofOne(before?.flow ? before : after, sample, reasons);
  return {
    checkBefore: before,
    checkAfter: after,
    change,
    ...ruled,
    rule: sample.stopped ? ruled.rule : null,
    atMost: atMostOf(highestLPerMin, [Qb, Qa], sample.factIds.slice(0, 1)),
    reasons,
  };
}
