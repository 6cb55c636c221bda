/**
 * Notices a wall clock that was set back: against the latest wall time seen (kept over a restart) and, within one run, against a clock
 * that cannot be set. Set forward cannot be told from a sleeping phone, so it is left to the pump's own minutes to contradict.
 */
import { epochMsToInstant } from '#core/calendar.ts';
import { monotonicMs, nowMs } from './device.ts';
import { readMark, writeMark } from './marks.ts';

/** Clocks are trimmed by small steps all the time; a minute here or there moves no verdict. Same as the fold's own patience. */
const toleranceMs = 60_000;

let last: { readonly wallMs: number; readonly monotonicMs: number } | null = null;

/** The latest wall time that was ever taken as seen, milliseconds since 1970; 0 before the first look. */
export const keptSeenMs = (): number => Number(readMark('lastSeenMs') ?? 0) || 0;

function latestMs(): number {
  const kept = keptSeenMs();
  const expected = last === null ? 0 : last.wallMs + Math.max(0, monotonicMs() - last.monotonicMs);
  return Math.max(kept, Math.floor(expected));
}

/** The latest wall time that this device must have passed; null before the first look. */
export function lastSeenAt(): string | null {
  const latest = latestMs();
  return latest === 0 ? null : epochMsToInstant(latest);
}

/** The clock stands before what this device has passed. */
export const clockWentBack = (): boolean => nowMs() < latestMs() - toleranceMs;

/** Takes the wall time as seen, unless the clock went back: that is first written down. */
export function lookAtClock(): void {
  if (!clockWentBack()) trustClock();
}

/** From here on the clock as it stands is the one that counts: nothing hung on the time it went back over. */
export function trustClock(): void {
  last = { wallMs: nowMs(), monotonicMs: monotonicMs() };
  writeMark('lastSeenMs', String(last.wallMs));
}

/** A restart of the page: the clock that cannot be set starts again. For tests, which restart nothing. */
export const forgetRun = (): void => {
  last = null;
};
