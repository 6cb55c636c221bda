/**
 * What a sample aims at before any box is packed: the method whose ranges are told at once, and the smallest mass that the
 * laboratory is asked to report. Once a box was packed, its own words stand.
 */
import type { Source } from '#core/formula.ts';
import type { Book, BoxRecord } from '#records/book.ts';
import { methodById } from '#reference/methods.ts';
import type { FlowRange } from './flow.ts';
import type { OnWorkerAim } from './onWorker.ts';

/** The method with its ranges read in full; every lead method read allows the same flow (shared/methods). */
const usualMethodId = 'niosh-7082';

export interface Aim extends OnWorkerAim {
  /** `asked`: of the last box packed. `usual`: no box yet, so the low end of the usual method's working range stands in. */
  readonly from: 'asked' | 'usual';
  readonly source: Source | null;
}

const newest = (book: Book): BoxRecord | undefined =>
  [...book.boxes.values()].sort((a, b) => (a.factIds[0] ?? '').localeCompare(b.factIds[0] ?? '')).at(-1);

/** What the sample is to prove: that a result at the reporting limit lies at the action level or below. */
export function aimOf(book: Book): Aim | null {
  const packed = newest(book)?.packed;
  const usual = methodById(usualMethodId);
  const methodId = packed?.methodId ?? usual?.id;
  if (methodId === undefined) return null;
  if (packed !== undefined && packed.reportingLimitUg !== null)
    return { methodId, reportingLimitUg: packed.reportingLimitUg, actionLevelFraction: 1, from: 'asked', source: null };
  const low = usual?.workingRange?.low;
  if (low === undefined || low === null) return null;
  const source = usual?.workingRange?.source ?? null;
  return { methodId, reportingLimitUg: low, actionLevelFraction: 1, from: 'usual', source };
}

/** The range of flow that is told at once at a flow check; null where the method states none. */
export function flowRangeOf(book: Book): FlowRange | null {
  const method = methodById(newest(book)?.packed.methodId ?? usualMethodId) ?? methodById(usualMethodId);
  const { low = null, high = null } = method?.flow ?? {};
  return method === undefined || low === null || high === null
    ? null
    : { id: method.id, flowFromLPerMin: low, flowToLPerMin: high };
}
