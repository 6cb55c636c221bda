/** The change of a pump's flow from before to after over the months, as data for a picture and its table. */
import { addMonths, daysBetween } from '#core/calendar.ts';
import { sideOf } from '#core/comparison.ts';
import type { Term } from '#core/formula.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { flowTolerance } from '#reference/flowTolerance.ts';
import { sampleFlowOf } from '../sampleFlow.ts';
import { besideSample, indexOf } from './restsOn.ts';

export interface FlowPoint {
  readonly sampleId: string;
  readonly sampleNumber: string;
  readonly workOn: string;
  /** As the flow meters read. */
  readonly flowBeforeLPerMin: number;
  readonly flowAfterLPerMin: number;
  /** After over before, with its sign: a pump that weakens lies below zero. */
  readonly changePct: number;
  /** Held to the tolerance without its sign. */
  readonly within: 'average' | 'flagged' | 'over';
}

export interface AxisTick {
  readonly at: number;
  readonly label: string;
}

export interface FlowHistory {
  readonly pumpId: string;
  /** By day, then by number. */
  readonly points: readonly FlowPoint[];
  /** Samples that have no flow before or after. */
  readonly withoutChangeCount: number;
  readonly averageUpToPct: number;
  readonly flaggedUpToPct: number;
  /** `at` in days since `fromOn`; labels are calendar months, `2026-11`. null without points. */
  readonly x: { readonly fromOn: string; readonly toOn: string; readonly ticks: readonly AxisTick[] } | null;
  readonly y: { readonly fromPct: number; readonly toPct: number; readonly ticks: readonly AxisTick[] };
}

const numberOf = (term: Term | undefined): number | null =>
  term?.estimate.kind === 'exact' ? term.estimate.value : null;

function withinOf(changePct: number): FlowPoint['within'] {
  const { averageUpTo, flaggedUpTo } = flowTolerance();
  if (sideOf(Math.abs(changePct), averageUpTo.value) <= 0) return 'average';
  return sideOf(Math.abs(changePct), flaggedUpTo.value) <= 0 ? 'flagged' : 'over';
}

/** null where a flow is missing, or where the pump was not worn. */
export function flowPointOf(sample: SampleRecord, book: Book): FlowPoint | null {
  const { checkBefore, checkAfter } = sampleFlowOf(sample, besideSample(sample, book), null, 0);
  const [before, after] = [numberOf(checkBefore?.ends[0]), numberOf(checkAfter?.ends[0])];
  if (before === null || after === null || before <= 0) return null;
  const changePct = ((after - before) / before) * 100;
  const { id: sampleId, sampleNumber, workOn } = sample;
  const flows = { flowBeforeLPerMin: before, flowAfterLPerMin: after };
  return { sampleId, sampleNumber, workOn, ...flows, changePct, within: withinOf(changePct) };
}

/** Those that were worn and stopped, oldest first. */
export const wornWith = (pumpId: string, book: Book): readonly SampleRecord[] =>
  (indexOf(book).runsByPump.get(pumpId)?.runs ?? []).filter(({ stopped, voided }) => stopped !== null && !voided);

/** Wide enough for every point and for the tolerance, in whole steps of a size that leaves at most nine of them. */
function yOf(points: readonly FlowPoint[], flaggedUpToPct: number): FlowHistory['y'] {
  const all = points.map(({ changePct }) => changePct);
  const [low, high] = [Math.min(-flaggedUpToPct, ...all), Math.max(flaggedUpToPct, ...all)];
  const step = [5, 10, 20, 50, 100, 200, 500].find((one) => (high - low) / one <= 8) ?? 1000;
  // a hair's breadth of rounding asks for no step of its own
  const [from, to] = [Math.floor(low / step + 1e-9), Math.ceil(high / step - 1e-9)];
  const ticks = Array.from({ length: to - from + 1 }, (_, i) => (from + i) * step);
  return { fromPct: from * step, toPct: to * step, ticks: ticks.map((at) => ({ at, label: String(at) })) };
}

/** Months whole, at most about eight labels. */
function xOf(points: readonly FlowPoint[]): FlowHistory['x'] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return null;
  const fromOn = `${first.workOn.slice(0, 7)}-01`;
  const months: string[] = [];
  for (let on = fromOn; ; on = addMonths(on, 1)) {
    months.push(on);
    if (on > last.workOn) break;
  }
  const every = [1, 2, 3, 6, 12, 24, 60].find((one) => (months.length - 1) / one <= 8) ?? 120;
  const ticks = months.filter((_, i) => i % every === 0);
  return {
    fromOn,
    toOn: months.at(-1) ?? fromOn,
    ticks: ticks.map((on) => ({ at: daysBetween(fromOn, on), label: on.slice(0, 7) })),
  };
}

export function flowHistory(pumpId: string, book: Book): FlowHistory {
  const worn = wornWith(pumpId, book);
  const order = ({ workOn, sampleNumber }: FlowPoint): string => `${workOn} ${sampleNumber}`;
  const points = worn
    .flatMap((sample) => flowPointOf(sample, book) ?? [])
    .sort((a, b) => (order(a) < order(b) ? -1 : 1));
  const { averageUpTo, flaggedUpTo } = flowTolerance();
  return {
    pumpId,
    points,
    withoutChangeCount: worn.length - points.length,
    averageUpToPct: averageUpTo.value,
    flaggedUpToPct: flaggedUpTo.value,
    x: xOf(points),
    y: yOf(points, flaggedUpTo.value),
  };
}
