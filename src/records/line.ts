/**
 * The line of intervals while it is being drawn, fact by fact. What was taken for worn may be restated when something is found later.
 */
import { addMinutes, minutesBetween } from '#core/calendar.ts';
import type { Interval } from './book.ts';
import type { Fact, FactKind } from './fact.ts';

type State = Interval['state'];
type Moved = Pick<Fact<FactKind>, 'id' | 'happened'>;

export interface Away {
  readonly awayFromLead: boolean;
  readonly reason: string | null;
}

/** Decided here: a display that shows more than this beyond the record does not count this run, and tells nothing of it. */
const displaySlackMin = 5;

export interface Line {
  intervals: Interval[];
  /** Facts that do not fit where they stand. */
  readonly outOfOrder: string[];
  /** The last moment at which the pump was seen running on the worker. */
  lastSureAt: string;
  onWorker: boolean;
}

export const emptyLine = (): Line => ({ intervals: [], outOfOrder: [], lastSureAt: '', onWorker: false });

export const currentOf = (line: Line): Interval | undefined => line.intervals.at(-1);

export const awayOf = (line: Line): Away => ({
  awayFromLead: currentOf(line)?.awayFromLead ?? false,
  reason: currentOf(line)?.reason ?? null,
});

/** Ends the last interval; one without length is dropped. */
export function closeAt(line: Line, at: string): void {
  const last = line.intervals.pop();
  if (last && last.fromAt < at) line.intervals.push({ ...last, toAt: at });
}

export function openWith(line: Line, fact: Moved, state: State, away: Away): void {
  const { at } = fact.happened;
  closeAt(line, at);
  line.intervals.push({ fromAt: at, toAt: null, state, ...away, becauseFactId: fact.id });
}

/** Says afterwards of what was taken for worn from `fromAt` on that it was something else. */
export function restate(line: Line, fromAt: string, state: State, because: string): void {
  line.intervals = line.intervals.flatMap((interval) => {
    const over = interval.toAt !== null && interval.toAt <= fromAt;
    if (interval.state !== 'worn' || over) return [interval];
    const splitAt = interval.fromAt > fromAt ? interval.fromAt : fromAt;
    const before = splitAt > interval.fromAt ? [{ ...interval, toAt: splitAt }] : [];
    return [...before, { ...interval, fromAt: splitAt, state, becauseFactId: because }];
  });
}

/** When the pump's own minutes say that it stopped, counted along the line; null when they cannot tell. */
export function stoppedByDisplay(line: Line, pumpMin: number, foundAt: string): string | null {
  // A pump that stood still before may have begun to count anew.
  if (line.intervals.some(({ state }) => state === 'offStopped' || state === 'doubtful')) return null;
  let leftMin = pumpMin;
  for (const { fromAt, toAt } of line.intervals) {
    const lengthMin = minutesBetween(fromAt, toAt ?? foundAt);
    if (leftMin <= lengthMin) return addMinutes(fromAt, leftMin);
    leftMin -= lengthMin;
  }
  return leftMin <= displaySlackMin ? foundAt : null;
}
