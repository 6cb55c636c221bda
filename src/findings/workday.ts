/** One worker's day: every minute accounted for, the 8-hour average, and where it stands to each limit. */
import type { Comparison } from '#core/comparison.ts';
import { exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { hoursWorked } from '#core/twa.ts';
import type { Book, SampleRecord, WorkdayRecord } from '#records/book.ts';
import type { LimitsHere } from '#reference/limits.ts';
import { dayAveragesOf, partsOf } from './dayAverages.ts';
import { dayReasons } from './dayReasons.ts';
import { blocking, type Reason, reason } from './reason.ts';
import { findSample, type SampleFinding } from './sample.ts';
import { minutesAs, segmentsOf } from './segments.ts';
import { shiftOf } from './shiftAverages.ts';
import { type DayStanding, standingAt } from './standing.ts';
import { whoseRule } from './whoseRule.ts';

export type { DayStanding, Verdict } from './standing.ts';

export interface Segment {
  readonly fromAt: string;
  readonly toAt: string;
  readonly durationMin: number;
  readonly as: 'sampled' | 'away' | 'sameAs' | 'unknown';
  readonly sampleId: string | null;
  /** In the words of whoever explained the minutes; null for sampled and unexplained ones. */
  readonly reason: string | null;
  /** null: not known (yet). */
  readonly concentration: Term | null;
  readonly because: readonly string[];
}

export interface WorkdayFinding {
  readonly workdayId: string;
  readonly workerId: string;
  readonly workOn: string;
  readonly segments: readonly Segment[];
  readonly samples: readonly SampleFinding[];
  readonly hoursWorked: Term | null;
  readonly unknownMin: number;
  /** Sampled minutes whose result is not in. */
  readonly awaitedMin: number;
  /** null when no minute of the day is known of. */
  readonly twa8: Term | null;
  readonly protectiveTwa8: Term | null;
  readonly shiftAverage: Term | null;
  /** 400 / h, only for more than 8 hours worked. Held against the shift average, never against the 8-hour average. */
  readonly allowableAverage: Term | null;
  /** The protective average over the shift, held against the allowable average: the same test as TWA8 against the PEL. */
  readonly shiftComparison: Comparison | null;
  readonly standings: readonly DayStanding[];
  readonly regular: 'yes' | 'no' | null;
  /** Whose rule governs; where it is not held complete, figures are shown and no list of duties. */
  readonly stateCode: string | null;
  readonly limits: LimitsHere;
  readonly ruleHeld: boolean;
  readonly reasons: readonly Reason[];
  readonly blocksBelow: readonly Reason[];
  readonly because: readonly string[];
}

const byPutOn = (a: SampleRecord, b: SampleRecord): number => {
  const [x, y] = [a.putOn?.at ?? a.preparedAt, b.putOn?.at ?? b.preparedAt];
  return x < y ? -1 : x > y ? 1 : a.id < b.id ? -1 : 1;
};

function samplesOf(workdayId: string, book: Book): SampleRecord[] {
  const found: SampleRecord[] = [];
  for (const sample of book.samples.values())
    if (sample.workdayId === workdayId && sample.sampleKind === 'air') found.push(sample);
  return found.sort(byPutOn);
}

function hoursOf(day: WorkdayRecord, segments: readonly Segment[]): Term | null {
  if (!day.pieces || segments.length === 0) return null;
  const min = segments.reduce((sum, { durationMin }) => sum + durationMin, 0);
  return hoursWorked.of({ t: [recorded('minutesWorked', 'min', exactly(min), day.factIds)] });
}

const lost = (sample: SampleFinding): boolean => sample.quality === 'void' && !sample.judged;

/** Throws when the work day is not in the slice. Limits are those of the site's state on that day. */
export function findWorkday(workdayId: string, book: Book): WorkdayFinding {
  const day = book.workdays.get(workdayId) ?? emptyDay(workdayId, book);
  const records = samplesOf(workdayId, book);
  const samples = records.map(({ id }) => findSample(id, book));
  const rule = whoseRule(records, day.workOn, book);
  const { stateCode, limits } = rule;
  const { segments, reasons: segmentReasons } = segmentsOf(
    day,
    samples.map((sample) => ({
      sampleId: sample.sampleId,
      sampleNumber: sample.sampleNumber,
      run: sample.run,
      judged: sample.judged,
      protective: sample.protectiveConcentration,
      lost: lost(sample),
    })),
  );
  const parts = partsOf(segments, samples);
  const hours = hoursOf(day, segments);
  const shift = shiftOf(hours, parts, limits);
  const awaitedMin = segments.reduce(
    (sum, { as, concentration, durationMin }) =>
      as !== 'unknown' && as !== 'away' && !concentration ? sum + durationMin : sum,
    0,
  );
  const unknownMin = minutesAs(segments, 'unknown');
  const allowable = shift.allowableAverage?.estimate;
  const reasons = [
    ...segmentReasons,
    ...dayReasons(day, samples, { unknownMin, awaitedMin }, book),
    ...rule.reasons,
    ...(allowable?.kind === 'exact'
      ? [reason('extendedShift', day.factIds, { allowableUgPerM3: allowable.value })]
      : []),
  ];
  const blocksBelow = blocking(reasons);
  const averages = parts.length > 0 ? dayAveragesOf(parts, blocksBelow) : null;
  const { set } = limits;
  const standings = averages
    ? [standingAt(set.actionLevel, 'actionLevel', set.id, averages), standingAt(set.pel, 'pel', set.id, averages)]
    : [];
  return {
    workdayId,
    workerId: day.workerId,
    workOn: day.workOn,
    segments,
    samples,
    hoursWorked: hours,
    unknownMin,
    awaitedMin,
    twa8: averages?.twa8 ?? null,
    protectiveTwa8: averages?.protective ?? null,
    ...shift,
    shiftComparison: heldBack(
      shift.shiftComparison,
      standings.find(({ which }) => which === 'pel'),
    ),
    standings,
    regular: day.regular?.regular ?? null,
    stateCode,
    limits,
    ruleHeld: limits.heldComplete,
    reasons,
    blocksBelow,
    because: [...day.factIds, ...samples.flatMap(({ because }) => because)],
  };
}

/** What keeps *below* from being said at the PEL keeps it from being said of the average over the shift. */
function heldBack(comparison: Comparison | null, pel: DayStanding | undefined): Comparison | null {
  if (!comparison || !pel || pel.why.length === 0) return comparison;
  const { standing, crossed, atOrAbove } = comparison;
  return {
    ...comparison,
    standing: standing === 'below' ? 'unresolved' : standing,
    crossed: crossed === 'no' ? 'unresolved' : crossed,
    atOrAbove: atOrAbove === 'no' ? 'unresolved' : atOrAbove,
  };
}

/** A day on which a sample was taken and nothing was said yet of the day itself. */
function emptyDay(workdayId: string, book: Book): WorkdayRecord {
  const known = [...book.samples.values()].some((sample) => sample.workdayId === workdayId);
  if (!known) throw new Error(`no work day ${workdayId} in this slice of the book`);
  const [workerId = '', workOn = ''] = workdayId.split('.');
  const none = { factIds: [], strikes: [], conflicts: [], notUnderstood: [] };
  const base = { key: `workday:${workdayId}`, id: workdayId, ...none };
  return { ...base, workerId, workOn, pieces: null, otherWork: null, explained: [], regular: null };
}
