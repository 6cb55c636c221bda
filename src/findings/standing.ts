/**
 * Where a day stands to a limit. The protective 8-hour average judges: it lies at or above the one shown, and decides wherever the two
 * straddle the limit. *Below* is said only when nothing blocks it; *at or above* is never blocked.
 */
import {
  type Comparison,
  type Confidence,
  compareWithConfidence,
  compareWithLimit,
  type Limit,
} from '#core/comparison.ts';
import { exactly } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { errorOfConsecutive, lowerConfidence, shareOfLimit, upperConfidence } from '#core/saeLimits.ts';
import { averageToReach } from '#core/twa.ts';
import { wallDepositPct } from './practice.ts';
import { type Reason, reason } from './reason.ts';

/**
 * `below` only when nothing blocks it. `atOrAbove`: at least the limit, and how far above is not known. `atLeastBelow`: the part
 * that is known lies below the limit, which proves nothing. `unresolved`: bounds straddle the limit, or a reason blocks *below*.
 */
export type Verdict = 'below' | 'exactlyAt' | 'above' | 'atOrAbove' | 'unresolved' | 'atLeastBelow';

export interface DayStanding {
  readonly limitSetId: string;
  readonly which: 'actionLevel' | 'pel';
  readonly limit: Limit;
  /** The 8-hour average shown, held against the limit. */
  readonly comparison: Comparison;
  /** The protective 8-hour average (lower flows), held against the limit: this one judges. */
  readonly protective: Comparison;
  readonly verdict: Verdict;
  /** By the limit's own sign. `no` only where the verdict is known and nothing blocks it. */
  readonly crossed: 'yes' | 'no' | 'unresolved';
  readonly atOrAbove: 'yes' | 'no' | 'unresolved';
  /** The judging figure is the protective one, because the two lie on different sides. */
  readonly protectiveJudges: boolean;
  /** What keeps *below* from being said at this limit. */
  readonly why: readonly Reason[];
  /** Told at this limit, and blocking nothing. */
  readonly notes: readonly Reason[];
  /** By the laboratory's error of sampling and analysis, where it gave one for every sample. It relieves nothing. */
  readonly confidence: Confidence;
  /** The average of the minutes without a figure that would bring the day to this limit; null where there are none. */
  readonly unknownWouldReach: Term | null;
}

/** The day as far as a limit needs it. */
export interface DayAverages {
  readonly twa8: Term;
  readonly protective: Term;
  /** The protective average, had the largest share found been on the inner wall of each cassette that leaves it open. */
  readonly withWall: Term | null;
  /** Minutes without a figure. */
  readonly openMin: number;
  /** What the known minutes add to the 8-hour average, from the protective figures. */
  readonly known: Term;
  /** By sample: error, concentration, minutes. Empty unless the laboratory gave an error for every sample. */
  readonly errors: readonly { readonly S: Term; readonly X: Term; readonly t: Term }[];
  readonly blocks: readonly Reason[];
}

const limitTerm = (limit: Limit, setId: string): Term =>
  recorded(limit.id, 'µg/m³', exactly(limit.value), [`limit:${setId}`]);

function verdictOf(judging: Comparison, estimateKind: Term['estimate']['kind'], blocked: boolean): Verdict {
  // exactly at the PEL is not above it only when nothing is open about the figure
  if (judging.standing === 'exactlyAt' && judging.crossed === 'no' && blocked) return 'atOrAbove';
  if (judging.standing === 'above' || judging.standing === 'exactlyAt') return judging.standing;
  if (judging.standing === 'below') return blocked ? 'unresolved' : 'below';
  if (judging.atOrAbove === 'yes') return 'atOrAbove';
  return estimateKind === 'atLeast' ? 'atLeastBelow' : 'unresolved';
}

function confidenceOf(day: DayAverages, limit: Limit, setId: string): Confidence {
  if (day.errors.length === 0 || day.twa8.estimate.kind === 'atLeast') return 'notGiven';
  const L = limitTerm(limit, setId);
  const E = errorOfConsecutive.of({
    S: day.errors.map(({ S }) => S),
    X: day.errors.map(({ X }) => X),
    t: day.errors.map(({ t }) => t),
    L,
    P: recorded('averagingPeriod', 'min', exactly(480), [`limit:${setId}`]),
  });
  const Y = shareOfLimit.of({ X: day.protective, L });
  const shares = { lower: lowerConfidence.of({ Y, E }).estimate, upper: upperConfidence.of({ Y, E }).estimate };
  return compareWithConfidence(day.twa8.estimate, limit, shares).confidence;
}

function wallReasons(day: DayAverages, judging: Comparison, limit: Limit): Reason[] {
  if (!day.withWall) return [];
  const withWall = compareWithLimit(day.withWall.estimate, limit);
  const opens = (['crossed', 'atOrAbove'] as const).some((one) => judging[one] === 'no' && withWall[one] !== 'no');
  if (!opens) return [];
  return [reason('wallDepositCouldMatter', [], { sharePct: wallDepositPct.value, limitUgPerM3: limit.value })];
}

/** The day's standing at one limit. TWA8 is held against the limit itself at any length of the shift, never against 400 / h. */
export function standingAt(
  limit: Limit,
  which: DayStanding['which'],
  limitSetId: string,
  day: DayAverages,
): DayStanding {
  const comparison = compareWithLimit(day.twa8.estimate, limit);
  const protective = compareWithLimit(day.protective.estimate, limit);
  const why = [...day.blocks, ...wallReasons(day, protective, limit)];
  const blocked = why.length > 0;
  const confidence = confidenceOf(day, limit, limitSetId);
  const reaches = confidence === 'possiblyAbove' && protective.crossed === 'no';
  const open = <A extends 'yes' | 'no' | 'unresolved'>(answer: A): A | 'unresolved' =>
    answer === 'no' && blocked ? 'unresolved' : answer;
  return {
    limitSetId,
    which,
    limit,
    comparison,
    protective,
    verdict: verdictOf(protective, day.protective.estimate.kind, blocked),
    crossed: open(protective.crossed),
    atOrAbove: open(protective.atOrAbove),
    protectiveJudges: comparison.standing !== protective.standing,
    why,
    notes: reaches ? [reason('saeReachesLimit', [], { limitUgPerM3: limit.value })] : [],
    confidence,
    unknownWouldReach: day.openMin > 0 ? wouldReach(limit, limitSetId, day) : null,
  };
}

function wouldReach(limit: Limit, setId: string, day: DayAverages): Term {
  const u = recorded('minutesWithoutFigure', 'min', exactly(day.openMin), []);
  // of a part known only from below, its lower end counts: the average named is then the most that it would take
  const { known } = day;
  const T =
    known.estimate.kind === 'atLeast'
      ? recorded('twaOfKnownMinutes', 'µg/m³', exactly(known.estimate.lower), [])
      : known;
  return averageToReach.of({ L: limitTerm(limit, setId), T, u });
}
