/**
 * Notices a wall clock that was set back: against the last wall time seen (kept over a restart) and, within one run, against a clock
 * that cannot be set. Set forward cannot be told from a sleeping phone, so it is left to the pump's own minutes to contradict.
 */
import { epochMsToInstant } from '#core/calendar.ts';
import { monotonicMs, nowMs } from './device.ts';
import { readMark, writeMark } from './marks.ts';

let last: { readonly wallMs: number; readonly monotonicMs: number } | null = null;

function latestMs(): number {
  const kept = Number(readMark('lastSeenMs') ?? 0);
  const expected = last === null ? 0 : last.wallMs + Math.max(0, monotonicMs() - last.monotonicMs);
  return Math.max(kept, Math.floor(expected));
}

/** The latest wall time that this device must have passed; null before the first look. */
export function lastSeenAt(): string | null {
  const latest = latestMs();
  return latest === 0 ? null : epochMsToInstant(latest);
}

/** Takes the wall time as seen. Called after each write, at opening, and now and then by what shows the time. */
export function lookAtClock(): void {
  last = { wallMs: nowMs(), monotonicMs: monotonicMs() };
  writeMark('lastSeenMs', String(last.wallMs));
}

/** A restart of the page: the clock that cannot be set starts again. For tests, which restart nothing. */
export const forgetRun = (): void => {
  last = null;
};
