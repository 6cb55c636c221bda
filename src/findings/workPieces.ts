/** The pieces of work of a day as they count, and what speaks against the hours written down. */
import { instantToEpochMs } from '#core/calendar.ts';
import type { WorkdayRecord } from '#records/book.ts';
import type { SampleOfDay } from './explainedMinutes.ts';
import { outsideHoursMin } from './practice.ts';
import { type Reason, reason } from './reason.ts';

/** In milliseconds since 1970. */
export interface Piece {
  readonly fromMs: number;
  readonly toMs: number;
}

/** A piece that ends before it starts, or two at one time, came in by a correction: hours that were worked may be hidden in it. */
export function piecesOf(day: WorkdayRecord, reasons: Reason[]): Piece[] {
  const found: Piece[] = [];
  let contradict = false;
  for (const { startedAt, endedAt } of day.pieces ?? []) {
    const piece = { fromMs: instantToEpochMs(startedAt), toMs: instantToEpochMs(endedAt) };
    const overlaps = found.some((other) => other.fromMs < piece.toMs && piece.fromMs < other.toMs);
    contradict ||= overlaps || piece.toMs <= piece.fromMs;
    if (piece.toMs > piece.fromMs) found.push(piece);
  }
  if (contradict) reasons.push(reason('hoursContradict', day.factIds));
  return found;
}

/** Sampled outside the hours written down: a few minutes are told, more of them put the hours in doubt. */
export function addOutsideHours(
  pieces: readonly Piece[],
  samples: readonly SampleOfDay[],
  day: WorkdayRecord,
  reasons: Reason[],
): void {
  if (pieces.length === 0) return;
  const outsideMin = outsideOf(pieces, samples);
  if (outsideMin > 0) reasons.push(reason('sampledOutsideHours', [], { outsideMin }));
  if (outsideMin > outsideHoursMin.value) reasons.push(reason('hoursContradict', day.factIds));
}

function outsideOf(pieces: readonly Piece[], samples: readonly SampleOfDay[]): number {
  let ms = 0;
  for (const { run } of samples)
    for (const { fromMs, toMs } of run.sampled) {
      const inside = pieces.reduce(
        (sum, p) => sum + Math.max(0, Math.min(p.toMs, toMs) - Math.max(p.fromMs, fromMs)),
        0,
      );
      ms += Math.max(0, toMs - fromMs - inside);
    }
  return ms / 60_000;
}
