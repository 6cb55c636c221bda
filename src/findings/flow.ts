/** What one flow check says: the local volume flow, and what was wrong with it, told at once. */
import { exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { meanOfReadings, readingHalfWidth, readingMidpoint } from '#core/reading.ts';
import type { Book, FlowCheckRecord, MeterRecord } from '#records/book.ts';
import { flowTolerance } from '#reference/flowTolerance.ts';
import { localFlow } from './meter.ts';
import { readingsCount } from './practice.ts';
import { type Reason, reason } from './reason.ts';
import { recordDoubts } from './recordDoubts.ts';

export interface FlowCheckFinding {
  readonly flowCheckId: string;
  /** Local volume flow, L/min: midpoints, their mean, the certificate's pairs, the rotameter's correction. null: no figure. */
  readonly flow: Term | null;
  /** The same from the low ends, where the float bounced more than 5 % of its midpoint; else null. */
  readonly lowFlow: Term | null;
  /** Largest half-width of a reading, in per cent of its midpoint. */
  readonly halfWidthPct: number;
  readonly reasons: readonly Reason[];
}

/** The method's range of flow, as far as a flow check needs it. */
export interface FlowRange {
  readonly id: string;
  readonly flowFromLPerMin: number;
  readonly flowToLPerMin: number;
}

interface Readings {
  readonly mean: Term;
  /** Mean of the low ends; null while no float bounced more than the tolerance. */
  readonly meanOfLow: Term | null;
  readonly halfWidthPct: number;
}

/** A steady reading is its own midpoint; a bouncing float is the middle of its ends. All readings are kept. */
function readingsOf(check: FlowCheckRecord, because: readonly string[]): Readings {
  const term = (name: string, value: number): Term => recorded(name, 'L/min', exactly(value), because);
  let halfWidthPct = 0;
  const midpoints = check.readings.map(({ lowLPerMin: lo, highLPerMin: hi }): Term => {
    if (lo === hi) return term('reading', lo);
    const ends = { lo: Math.min(lo, hi), hi: Math.max(lo, hi) };
    halfWidthPct = Math.max(halfWidthPct, readingHalfWidth.compute(ends));
    return readingMidpoint.of({ lo: term('lowEnd', ends.lo), hi: term('highEnd', ends.hi) });
  });
  const bounces = halfWidthPct > flowTolerance().halfWidthUpTo.value;
  const lows = (): Term[] => check.readings.map((r) => term('lowEnd', Math.min(r.lowLPerMin, r.highLPerMin)));
  return {
    mean: meanOfReadings.of({ Qi: midpoints }),
    meanOfLow: bounces ? meanOfReadings.of({ Qi: lows() }) : null,
    halfWidthPct,
  };
}

/** Blank dates are doubts too: a meter that nobody can show to be in date supports nothing low. */
function meterReasons(meter: MeterRecord | undefined, checkedOn: string): Reason[] {
  if (!meter) return [reason('meterNotInBook')];
  const found: Reason[] = [];
  if (meter.dueOn === null) found.push(reason('meterDueNotKnown', meter.factIds));
  else if (checkedOn > meter.dueOn) found.push(reason('meterOutOfDate', meter.factIds, { dueOn: meter.dueOn }));
  if (meter.certificateOn === null) found.push(reason('meterCertificateNotKnown', meter.factIds));
  else if (meter.certificateOn > checkedOn)
    found.push(reason('meterCertifiedLater', meter.factIds, { certificateOn: meter.certificateOn }));
  return [...found, ...recordDoubts(meter)];
}

function rangeReasons(flow: Term | null, method: FlowRange | null, because: readonly string[]): Reason[] {
  if (!flow || !method || flow.estimate.kind !== 'exact') return [];
  const flowLPerMin = flow.estimate.value;
  const { flowFromLPerMin: fromLPerMin, flowToLPerMin: toLPerMin } = method;
  if (fromLPerMin <= flowLPerMin && flowLPerMin <= toLPerMin) return [];
  return [reason('flowOutsideMethod', because, { flowLPerMin, fromLPerMin, toLPerMin })];
}

/** `method` null: the range is not told (the sample's own finding then says that no method is known). */
export function findFlowCheck(check: FlowCheckRecord, book: Book, method: FlowRange | null): FlowCheckFinding {
  const because = check.factIds;
  const { mean, meanOfLow, halfWidthPct } = readingsOf(check, because);
  const base = { flowCheckId: check.id, halfWidthPct };
  if (check.inLine === 'nothing')
    return { ...base, flow: null, lowFlow: null, reasons: [reason('nothingInLine', because)] };

  const meter = book.meters.get(check.meterId);
  const site = book.sites.get(book.shifts.get(check.shiftId)?.siteId ?? '') ?? null;
  const local = localFlow(mean, check, meter, site);
  const low = meanOfLow ? localFlow(meanOfLow, check, meter, site) : null;
  const reasons: Reason[] = [
    ...rangeReasons(local.flow, method, because),
    ...meterReasons(meter, book.shifts.get(check.shiftId)?.workOn ?? check.happened.at.slice(0, 10)),
    ...local.reasons,
    ...recordDoubts(check),
  ];
  if (meanOfLow) {
    const upToPct = flowTolerance().halfWidthUpTo.value;
    reasons.push(reason('flowBounces', because, { halfWidthPct, upToPct }));
    // the low end lies outside the certificate: nothing protective can be said of it
    if (low && !low.flow) reasons.push(...low.reasons);
  }
  if (check.readings.length < readingsCount.value)
    reasons.push(
      reason('fewReadings', because, { readingsCount: check.readings.length, wantedCount: readingsCount.value }),
    );
  return { ...base, flow: local.flow, lowFlow: low?.flow ?? null, reasons };
}
