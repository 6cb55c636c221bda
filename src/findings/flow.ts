/** What one flow check says: the local volume flow, and what was wrong with it, told at once. */
import { flowAt, flowWithin } from '#core/asFound.ts';
import { sideOf } from '#core/comparison.ts';
import { exactly, lowerOf, upperOf } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { meanOfReadings, readingHalfWidth, readingMidpoint } from '#core/reading.ts';
import type { Book, FlowCheckRecord, MeterRecord } from '#records/book.ts';
import { flowTolerance } from '#reference/flowTolerance.ts';
import { besideCertificates, certificateInForce, judgingDueOn } from './gear/certificateInForce.ts';
import { type DaysOfUse, dayOfCheck, daysOfCheck, doubtsOn, factorsOn, hasDoubts } from './gear/doubtsOf.ts';
import { localFlow } from './meter.ts';
import { readingsCount } from './practice.ts';
import { type Reason, reason } from './reason.ts';
import { recordDoubts } from './recordDoubts.ts';

export interface FlowCheckFinding {
  readonly flowCheckId: string;
  /** Local volume flow, L/min: midpoints, their mean, the certificate's pairs, the rotameter's correction. null: no figure. */
  readonly flow: Term | null;
  /**
   * The same as the meter read it, and then as it would be by each factor that the meter was found to be off by: `flow` lies between the
   * least and the most of them. One only while nothing was found.
   */
  readonly ends: readonly Term[];
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

const readTerm = (name: string, flowLPerMin: number, because: readonly string[]): Term =>
  recorded(name, 'L/min', exactly(flowLPerMin), because);

type Reading = FlowCheckRecord['readings'][number];

/** A steady reading is its own midpoint; a bouncing float is the middle of its ends. */
function midpointOf({ lowLPerMin, highLPerMin }: Reading, because: readonly string[]): Term {
  if (lowLPerMin === highLPerMin) return readTerm('reading', lowLPerMin, because);
  const lo = readTerm('lowEnd', Math.min(lowLPerMin, highLPerMin), because);
  return readingMidpoint.of({ lo, hi: readTerm('highEnd', Math.max(lowLPerMin, highLPerMin), because) });
}

function widthOf({ lowLPerMin, highLPerMin }: Reading): number {
  if (lowLPerMin === highLPerMin) return 0;
  return readingHalfWidth.compute({ lo: Math.min(lowLPerMin, highLPerMin), hi: Math.max(lowLPerMin, highLPerMin) });
}

/** All readings are kept; several count as their mean. */
function readingsOf(check: FlowCheckRecord, because: readonly string[]): Readings {
  let halfWidthPct = 0;
  const midpoints: Term[] = [];
  for (const reading of check.readings) {
    halfWidthPct = Math.max(halfWidthPct, widthOf(reading));
    midpoints.push(midpointOf(reading, because));
  }
  return {
    mean: meanOfReadings.of({ Qi: midpoints }),
    meanOfLow: sideOf(halfWidthPct, flowTolerance().halfWidthUpTo.value) > 0 ? lowMeanOf(check, because) : null,
    halfWidthPct,
  };
}

function lowMeanOf(check: FlowCheckRecord, because: readonly string[]): Term {
  const Qi = check.readings.map((r) => readTerm('lowEnd', Math.min(r.lowLPerMin, r.highLPerMin), because));
  return meanOfReadings.of({ Qi });
}

/** Blank dates are doubts too: a meter that nobody can show to be in date supports nothing low. */
function addMeterReasons(meter: MeterRecord | undefined, checkedOn: string, days: DaysOfUse, found: Reason[]): void {
  if (!meter) {
    found.push(reason('meterNotInBook'));
    return;
  }
  const inForce = certificateInForce(meter, checkedOn);
  const { certificateOn, because } = inForce;
  const dueOn = judgingDueOn(inForce);
  if (dueOn === null) found.push(reason('meterDueNotKnown', because));
  else if (checkedOn > dueOn) found.push(reason('meterOutOfDate', because, { dueOn }));
  if (certificateOn === null) found.push(reason('meterCertificateNotKnown', because));
  else if (certificateOn > checkedOn) found.push(reason('meterCertifiedLater', because, { certificateOn }));
  addAll(found, recordDoubts(besideCertificates(meter)));
  addAll(found, doubtsOn(meter, days.fromOn, days.toOn));
}

function addAll(found: Reason[], more: readonly Reason[]): void {
  for (const one of more) found.push(one);
}

function addRangeReason(
  ends: readonly Term[],
  method: FlowRange | null,
  because: readonly string[],
  found: Reason[],
): void {
  if (!method) return;
  const { flowFromLPerMin: fromLPerMin, flowToLPerMin: toLPerMin } = method;
  for (const { estimate } of ends) {
    const [least, most] = [lowerOf(estimate), upperOf(estimate)];
    if (sideOf(least, fromLPerMin) >= 0 && sideOf(most, toLPerMin) <= 0) continue;
    found.push(reason('flowOutsideMethod', because, { flowLPerMin: least, fromLPerMin, toLPerMin }));
    return;
  }
}

/** `method` null: the range is not told (the sample's own finding then says that no method is known). */
export function findFlowCheck(check: FlowCheckRecord, book: Book, method: FlowRange | null): FlowCheckFinding {
  const because = check.factIds;
  const { mean, meanOfLow, halfWidthPct } = readingsOf(check, because);
  const head = { flowCheckId: check.id, halfWidthPct };
  if (check.inLine === 'nothing')
    return { ...head, flow: null, ends: [], lowFlow: null, reasons: [reason('nothingInLine', because)] };

  const meter = book.meters.get(check.meterId);
  const checkedOn = dayOfCheck(check, book);
  const days = hasDoubts(meter) ? daysOfCheck(check, book) : { fromOn: checkedOn, toOn: checkedOn };
  const site = book.sites.get(book.shifts.get(check.shiftId)?.siteId ?? '') ?? null;
  const factors = meter ? factorsOn(meter, days.fromOn, days.toOn) : [];
  const within = (read: Term | null): Term | null => (read && factors.length > 0 ? flowWithin(read, factors) : read);
  const local = localFlow(mean, check, meter, site, checkedOn);
  const low = meanOfLow ? localFlow(meanOfLow, check, meter, site, checkedOn) : null;
  const { flow: read } = local;
  const ends = read ? [read, ...factors.map((one) => flowAt(read, one))] : [];
  const reasons: Reason[] = [];
  addRangeReason(ends, method, because, reasons);
  addMeterReasons(meter, checkedOn, days, reasons);
  addAll(reasons, local.reasons);
  addAll(reasons, recordDoubts(check));
  if (site) addAll(reasons, recordDoubts(site));
  if (meanOfLow) {
    const upToPct = flowTolerance().halfWidthUpTo.value;
    reasons.push(reason('flowBounces', because, { halfWidthPct, upToPct }));
    // the low end lies outside the certificate: nothing protective can be said of it
    if (low && !low.flow) addAll(reasons, low.reasons);
  }
  if (check.readings.length < readingsCount.value)
    reasons.push(
      reason('fewReadings', because, { readingsCount: check.readings.length, wantedCount: readingsCount.value }),
    );
  return { ...head, flow: within(read), ends, lowFlow: within(low?.flow ?? null), reasons };
}
