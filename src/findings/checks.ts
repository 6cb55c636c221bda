/** Which flow checks belong to a sample: found from pump and time, not typed (so a check may be made before it is known who wears the pump). */
import { compareInstants } from '#core/calendar.ts';
import type { Book, FlowCheckRecord, SampleRecord } from '#records/book.ts';

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
}

const none: ChecksOfSample = { before: null, after: null, emptyBefore: null, emptyAfter: null, shared: [] };

const byTime = (a: FlowCheckRecord, b: FlowCheckRecord): number =>
  compareInstants(a.happened.at, b.happened.at) || compareInstants(a.id, b.id);

const inLine = (check: FlowCheckRecord): boolean => check.inLine !== 'nothing';

/** When other cassettes went on a worker with this pump. */
function wornOnPump(sample: SampleRecord, book: Book): string[] {
  const found: string[] = [];
  for (const other of book.samples.values())
    if (other.id !== sample.id && other.pumpId === sample.pumpId && other.putOn) found.push(other.putOn.at);
  return found;
}

type Before = Pick<ChecksOfSample, 'before' | 'emptyBefore'>;
type After = Pick<ChecksOfSample, 'after' | 'emptyAfter'>;

function beforeOf(checks: readonly FlowCheckRecord[], putOnAt: string | null): Before {
  const ahead = checks.filter((c) => c.purpose !== 'after' && (putOnAt === null || c.happened.at <= putOnAt));
  const before = ahead.findLast(inLine) ?? null;
  const since = before?.happened.at ?? '';
  return { before, emptyBefore: ahead.findLast((c) => !inLine(c) && c.happened.at > since) ?? null };
}

function afterOf(checks: readonly FlowCheckRecord[], stoppedAt: string): After {
  const past = checks.filter((c) => c.happened.at >= stoppedAt);
  const nextBefore = past.find((c) => c.purpose === 'before')?.happened.at ?? null;
  const own = past.filter((c) => c.purpose !== 'before' && (nextBefore === null || c.happened.at <= nextBefore));
  const after = own.find(inLine) ?? null;
  return { after, emptyAfter: after ? null : (own.find((c) => !inLine(c)) ?? null) };
}

/** A check between two cassettes is the one's after and the other's before. Nothing in line is not a flow check. */
export function checksOfSample(sample: SampleRecord, book: Book): ChecksOfSample {
  if (sample.pumpId === null) return none;
  const checks = [...book.flowChecks.values()].filter(({ pumpId }) => pumpId === sample.pumpId).sort(byTime);
  const putOnAt = sample.putOn?.at ?? null;
  const stoppedAt = sample.stopped?.at ?? null;
  const { before, emptyBefore } = beforeOf(checks, putOnAt);
  const { after, emptyAfter } = stoppedAt === null ? none : afterOf(checks, stoppedAt);
  const others = wornOnPump(sample, book);
  const wornBetween = (fromAt: string, toAt: string): boolean => others.some((at) => fromAt <= at && at < toAt);
  const shared: FlowCheckRecord[] = [];
  if (before && putOnAt !== null && wornBetween(before.happened.at, putOnAt)) shared.push(before);
  if (after && stoppedAt !== null && wornBetween(stoppedAt, after.happened.at)) shared.push(after);
  return { before, after, emptyBefore, emptyAfter, shared };
}
