/**
 * Which of two values of one field is the more careful: the one that stands while two devices disagree. A field that is not in this
 * table has no known direction; there the old value stands and the doubt is shown. All entries are decisions of this project.
 */
import { minutesBetween } from '#core/calendar.ts';
import type { FactBody, FactKind } from './fact.ts';

/** Positive when `a` is the more careful, negative when `b` is, 0 when neither. */
export type Careful = (a: unknown, b: unknown) => number;

const isNumber = (value: unknown): value is number => typeof value === 'number';
const number = (value: unknown, absent: number): number => (isNumber(value) ? value : absent);

/** An absent number is the least careful: nothing follows from it. */
const higher: Careful = (a, b) => number(a, -1) - number(b, -1);
const higherOrAbsent: Careful = (a, b) => number(a, Number.MAX_VALUE) - number(b, Number.MAX_VALUE);
const lower: Careful = (a, b) => number(b, Number.MAX_VALUE) - number(a, Number.MAX_VALUE);
/** An absent day is the most careful: then nobody can say that the meter is in date. */
const earlierDay: Careful = (a, b) => order(String(b ?? ''), String(a ?? ''));
/** An absent day is the least careful: a lot of which nobody says when it expires has not expired. */
const earlierDayIfAny: Careful = (a, b) => order(String(b ?? '9'), String(a ?? '9'));
const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const earlier: Careful = (a, b) => order(String(b), String(a));
const later: Careful = (a, b) => order(String(a), String(b));

/** The list runs from the least to the most careful. */
const ranked =
  (...values: readonly unknown[]): Careful =>
  (a, b) =>
    values.indexOf(a) - values.indexOf(b);

interface MassLike {
  readonly kind?: unknown;
  readonly massUg?: unknown;
  readonly reportingLimitUg?: unknown;
}
const upperUg = (mass: MassLike): number =>
  number(mass.kind === 'measured' ? mass.massUg : mass.reportingLimitUg, Number.MAX_VALUE);
const lowerUg = (mass: MassLike): number => (mass.kind === 'measured' ? number(mass.massUg, 0) : 0);

/** The heavier mass: by what it is at least, so that a limit that one of them crosses stays crossed; then by what it may be at most. */
export const heavier: Careful = (a, b) =>
  lowerUg(a as MassLike) - lowerUg(b as MassLike) || upperUg(a as MassLike) - upperUg(b as MassLike);

interface ReadingLike {
  readonly lowLPerMin?: unknown;
  readonly highLPerMin?: unknown;
}
const middle = (reading: ReadingLike): number => (number(reading.lowLPerMin, 0) + number(reading.highLPerMin, 0)) / 2;
const meanOf = (readings: unknown): number => {
  const list = Array.isArray(readings) ? (readings as readonly ReadingLike[]) : [readings as ReadingLike];
  return list.reduce((sum, reading) => sum + middle(reading), 0) / Math.max(1, list.length);
};
/** Less air drawn makes more lead in each cubic metre of it. */
const slowerFlow: Careful = (a, b) => meanOf(b) - meanOf(a);

type Piece = FactBody<'workHoursStated.v1'>['pieces'][number];
const workedMin = (pieces: unknown): number =>
  (Array.isArray(pieces) ? (pieces as readonly Piece[]) : []).reduce(
    (sum, { startedAt, endedAt }) => sum + minutesBetween(startedAt, endedAt),
    0,
  );
/** More hours leave more minutes to account for. */
export const longerWork: Careful = (a, b) => workedMin(a) - workedMin(b);

/** Points of a fitting that were not met, or not looked at. */
const missedCount = (points: unknown): number =>
  Object.values(points as Readonly<Record<string, unknown>>).filter((met) => met !== true).length;
export const morePointsMissed: Careful = (a, b) => missedCount(a) - missedCount(b);

/** A day that nobody said makes the time that somebody works here the longest. */
const earlierOrOpen: Careful = (a, b) => order(String(b ?? ''), String(a ?? ''));
const laterOrOpen: Careful = (a, b) => order(String(a ?? '9'), String(b ?? '9'));

const lengthOf = (list: unknown): number => (Array.isArray(list) ? list.length : 0);
/** More tasks fall under more of what the rule presumes; more limits beside it show more. */
const longerList: Careful = (a, b) => lengthOf(a) - lengthOf(b);

interface AverageLike {
  readonly kind?: unknown;
  readonly twa8UgPerM3?: unknown;
}
const leastUgPerM3 = ({ kind, twa8UgPerM3 }: AverageLike): number => (kind === 'measured' ? number(twa8UgPerM3, 0) : 0);
const mostUgPerM3 = ({ twa8UgPerM3 }: AverageLike): number => number(twa8UgPerM3, Number.MAX_VALUE);
/** As with a mass: by what it is at least, then by what it may be at most. */
const higherAverage: Careful = (a, b) =>
  leastUgPerM3(a as AverageLike) - leastUgPerM3(b as AverageLike) ||
  mostUgPerM3(a as AverageLike) - mostUgPerM3(b as AverageLike);

type Row = readonly [path: RegExp, careful: Careful];

/** Worn minutes: the shorter stretch is careful, because what was not sampled stays unknown and blocks *below*. */
const shorterFrom: readonly Row[] = [[/^\/happened\/at$/, later]];
const shorterTo: readonly Row[] = [[/^\/happened\/at$/, earlier]];
const fewerPumpMinutes: Row = [/^\/pumpMin$/, lower];

const table: Partial<Record<FactKind, readonly Row[]>> = {
  'resultReceived.v1': [
    [/^\/mass$/, heavier],
    [/^\/mass\/(massUg|reportingLimitUg)$/, higher],
    // without it nothing may be subtracted for blanks
    [/^\/reportingLimitUg$/, higherOrAbsent],
    [/^\/saeFraction$/, higher],
    // Only "no" lets a blank be subtracted.
    [/^\/blankCorrected$/, ranked('no', 'notStated', 'yes')],
    [/^\/wallDeposit$/, ranked('yes', 'notStated', 'no')],
    // the days of the notice are counted from it
    [/^\/receivedOn$/, earlier],
  ],
  'flowChecked.v1': [
    [/^\/readings(\/\d+)?$/, slowerFlow],
    [/^\/readings\/\d+\/(low|high)LPerMin$/, lower],
    [/^\/inLine$/, ranked('sampleCassette', 'representativeCassette', 'nothing')],
  ],
  'pumpPutOn.v1': shorterFrom,
  'pumpPutBackOn.v1': shorterFrom,
  'pumpTakenOff.v1': [...shorterTo, [/^\/awayFromLead$/, ranked(true, false)]],
  'pumpStopped.v1': [...shorterTo, fewerPumpMinutes],
  'pumpFaulted.v1': [fewerPumpMinutes],
  'pumpLookedAt.v1': [[/^\/(running|inPlace)$/, ranked(true, false)]],
  'fittingChecked.v1': [[/^\/points\/[a-zA-Z]+$/, ranked(null, true, false)]],
  'flowDecided.v1': [[/^\/use$/, ranked('average', 'lower')]],
  'meterAdded.v1': [[/^\/(certificateOn|dueOn)$/, earlierDay]],
  'lotAdded.v1': [[/^\/expiresOn$/, earlierDayIfAny]],
  'workHoursStated.v1': [
    [/^\/pieces$/, longerWork],
    [/^\/pieces\/\d+\/startedAt$/, earlier],
    [/^\/pieces\/\d+\/endedAt$/, later],
  ],
  'otherWorkAsked.v1': [[/^\/(callOut|secondSite|secondEmployer)$/, ranked('no', 'yes')]],
  // the conflict itself blocks *below*; the figure of a sample keeps a limit crossed that unknown minutes would not cross
  'minutesExplained.v1': [[/^\/as$/, ranked('away', 'unknown', 'sameAs')]],
  'dayDescribed.v1': [[/^\/regular$/, ranked('yes', 'no')]],
  'voidReviewed.v1': [[/^\/stands$/, ranked(false, true)]],
  'workNoted.v1': [[/^\/taskIds$/, longerList]],
  'employmentStated.v1': [
    [/^\/fromOn$/, earlierOrOpen],
    [/^\/toOn$/, laterOrOpen],
  ],
  'changesAsked.v1': [[/^\/(equipment|process|control|personnel|newTask)$/, ranked('no', 'notKnown', 'yes')]],
  'limitsChosen.v1': [
    [/^\/besideIds$/, longerList],
    [/^\/own(ActionLevel|Pel)UgPerM3$/, lower],
  ],
  'measurementReported.v1': [
    [/^\/average$/, higherAverage],
    [/^\/average\/twa8UgPerM3$/, higher],
    // the days of the notice are counted from it
    [/^\/receivedOn$/, earlier],
    [/^\/(fullShift|ownFirm|accuracy)$/, ranked('yes', 'notStated', 'no')],
  ],
  'measurementReliedOn.v1': [
    [/^\/(processes|material|controls|practices|environment)$/, ranked('alike', 'notKnown', 'unlike')],
    [/^\/ownFirm$/, ranked('yes', 'notStated', 'no')],
  ],
  'certificateEntered.v1': [[/^\/(certificateOn|dueOn)$/, earlierDay]],
  'pumpCharged.v1': [[/^\/full$/, ranked(true, false)]],
  // the longer the time, the more rests on doubtful gear
  'gearDoubted.v1': [
    [/^\/fromOn$/, earlierOrOpen],
    [/^\/untilOn$/, laterOrOpen],
  ],
  'noticeGiven.v1': [[/^\/happened\/at$/, later]],
  'recordsRequested.v1': [[/^\/askedOn$/, earlier]],
};

/** The direction of a field, null when none is known. */
export const carefulOf = (kind: FactKind, path: string): Careful | null =>
  table[kind]?.find(([places]) => places.test(path))?.[1] ?? null;

/** The most careful of some values; null when the direction is unknown or two of them are equally careful. */
export function mostCareful<T>(
  careful: Careful | null,
  candidates: readonly T[],
  valueIn: (c: T) => unknown,
): T | null {
  if (careful === null) return null;
  return candidates.reduce(
    (best, next) => (careful(valueIn(next), valueIn(best)) > 0 ? next : best),
    candidates[0] as T,
  );
}
