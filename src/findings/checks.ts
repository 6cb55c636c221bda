/** Which flow checks belong to a sample: found from pump and time, not typed (so a check may be made before it is known who wears the pump). */
import type { Book, FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { writerOf } from '#records/chain.ts';

export interface ChecksOfSample {
  /** The latest check marked before (or between) at or ahead of put-on. */
  readonly before: FlowCheckRecord | null;
  /** The earliest check marked after (or between) at or past the stop, ahead of the next check marked before. */
  readonly after: FlowCheckRecord | null;
  /** A check that would have counted, had a cassette been in line. */
  readonly emptyBefore: FlowCheckRecord | null;
  readonly emptyAfter: FlowCheckRecord | null;
  /** Checks with another cassette worn between them and this one: they speak for both, and for neither alone. */
  readonly shared: readonly FlowCheckRecord[];
  /** Checks for the same run, before or after, that another device wrote down: two hands looked at one pump. */
  readonly beforeByOthers: readonly FlowCheckRecord[];
  readonly afterByOthers: readonly FlowCheckRecord[];
}

const none: ChecksOfSample = {
  before: null,
  after: null,
  emptyBefore: null,
  emptyAfter: null,
  shared: [],
  beforeByOthers: [],
  afterByOthers: [],
};

/** Is the first check later? Of two at one instant the id decides, so that the order of entry does not. */
const isLater = (a: FlowCheckRecord, b: FlowCheckRecord): boolean =>
  a.happened.at > b.happened.at || (a.happened.at === b.happened.at && a.id > b.id);

/** Whoever checks twice on one device puts the own reading right; of two devices neither knew of the other. */
const handOf = ({ checkedFactId = '' }: FlowCheckRecord): string => writerOf(checkedFactId);

const inLine = (check: FlowCheckRecord): boolean => check.inLine !== 'nothing';

/** When other cassettes went on a worker with this pump. */
function wornOnPump(sample: SampleRecord, book: Book): string[] {
  const found: string[] = [];
  for (const other of book.samples.values())
    if (other.id !== sample.id && other.pumpId === sample.pumpId && other.putOn) found.push(other.putOn.at);
  return found;
}

const anyWithin = (instants: readonly string[], fromAt: string, toAt: string): boolean =>
  instants.some((at) => fromAt <= at && at < toAt);

type Before = Pick<ChecksOfSample, 'before' | 'emptyBefore' | 'beforeByOthers'>;
type After = Pick<ChecksOfSample, 'after' | 'emptyAfter' | 'afterByOthers'>;

/** The latest, or the earliest, of those wanted. */
function extreme(
  checks: readonly FlowCheckRecord[],
  which: 'latest' | 'earliest',
  isWanted: (check: FlowCheckRecord) => boolean,
): FlowCheckRecord | null {
  let found: FlowCheckRecord | null = null;
  for (const check of checks) {
    if (!isWanted(check)) continue;
    if (found === null || isLater(check, found) === (which === 'latest')) found = check;
  }
  return found;
}

/** `others`: when other cassettes went on with this pump. What was read ahead of them was read for them. */
function beforeOf(checks: readonly FlowCheckRecord[], putOnAt: string | null, others: readonly string[]): Before {
  const ahead = checks.filter(
    ({ purpose, happened }) => purpose !== 'after' && (putOnAt === null || happened.at <= putOnAt),
  );
  const before = extreme(ahead, 'latest', inLine);
  const since = before?.happened.at ?? '';
  const ofThisRun = (check: FlowCheckRecord): boolean =>
    check.shiftId === before?.shiftId && !anyWithin(others, check.happened.at, putOnAt ?? '\uffff');
  return {
    before,
    emptyBefore: extreme(ahead, 'latest', (c) => !inLine(c) && c.happened.at > since),
    beforeByOthers: before
      ? ahead.filter((check) => inLine(check) && handOf(check) !== handOf(before) && ofThisRun(check))
      : [],
  };
}

function afterOf(checks: readonly FlowCheckRecord[], stoppedAt: string): After {
  const past = checks.filter(({ happened }) => happened.at >= stoppedAt);
  const nextBefore = extreme(past, 'earliest', ({ purpose }) => purpose === 'before')?.happened.at ?? null;
  const own = past.filter(
    ({ purpose, happened }) => purpose !== 'before' && (nextBefore === null || happened.at <= nextBefore),
  );
  const after = extreme(own, 'earliest', inLine);
  return {
    after,
    emptyAfter: after ? null : extreme(own, 'earliest', (c) => !inLine(c)),
    afterByOthers: after ? own.filter((check) => inLine(check) && handOf(check) !== handOf(after)) : [],
  };
}

/** A check between two cassettes is the one's after and the other's before. Nothing in line is not a flow check. */
export function checksOfSample(sample: SampleRecord, book: Book): ChecksOfSample {
  if (sample.pumpId === null) return none;
  const checks: FlowCheckRecord[] = [];
  for (const check of book.flowChecks.values()) if (check.pumpId === sample.pumpId) checks.push(check);
  const putOnAt = sample.putOn?.at ?? null;
  const stoppedAt = sample.stopped?.at ?? null;
  const others = wornOnPump(sample, book);
  const { before, emptyBefore, beforeByOthers } = beforeOf(checks, putOnAt, others);
  const { after, emptyAfter, afterByOthers } = stoppedAt === null ? none : afterOf(checks, stoppedAt);
  const shared: FlowCheckRecord[] = [];
  if (before && putOnAt !== null && anyWithin(others, before.happened.at, putOnAt)) shared.push(before);
  if (after && stoppedAt !== null && anyWithin(others, stoppedAt, after.happened.at)) shared.push(after);
  return { before, after, emptyBefore, emptyAfter, shared, beforeByOthers, afterByOthers };
}
