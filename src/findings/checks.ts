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
}

const none: ChecksOfSample = { before: null, after: null, emptyBefore: null, emptyAfter: null };

const byTime = (a: FlowCheckRecord, b: FlowCheckRecord): number =>
  compareInstants(a.happened.at, b.happened.at) || compareInstants(a.id, b.id);

const inLine = (check: FlowCheckRecord): boolean => check.inLine !== 'nothing';

/** A check between two cassettes is the one's after and the other's before. Nothing in line is not a flow check. */
export function checksOfSample(sample: SampleRecord, book: Book): ChecksOfSample {
  if (sample.pumpId === null) return none;
  const checks: FlowCheckRecord[] = [];
  for (const check of book.flowChecks.values()) if (check.pumpId === sample.pumpId) checks.push(check);
  checks.sort(byTime);
  const putOnAt = sample.putOn?.at ?? null;
  const ahead = checks.filter((c) => c.purpose !== 'after' && (putOnAt === null || c.happened.at <= putOnAt));
  const before = ahead.findLast(inLine) ?? null;
  const emptyBefore =
    ahead.findLast((c) => !inLine(c) && (before === null || c.happened.at > before.happened.at)) ?? null;
  const stoppedAt = sample.stopped?.at ?? null;
  if (stoppedAt === null) return { ...none, before, emptyBefore };
  const past = checks.filter((c) => c.happened.at >= stoppedAt);
  const nextBefore = past.find((c) => c.purpose === 'before')?.happened.at ?? null;
  const own = past.filter((c) => c.purpose !== 'before' && (nextBefore === null || c.happened.at <= nextBefore));
  const after = own.find(inLine) ?? null;
  const emptyAfter = after === null ? (own.find((c) => !inLine(c)) ?? null) : null;
  return { before, after, emptyBefore, emptyAfter };
}
