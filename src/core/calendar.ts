/**
 * Instants, days and wall times. An instant is an ISO string in UTC to the millisecond (2026-11-25T10:12:00.000Z), a day is
 * 2026-11-25, a wall time is 07:12. Worn minutes come from instants, so a shift over midnight or a clock change is right. Nothing
 * here reads the clock. Malformed strings throw: the record schemas refuse them earlier.
 */
import { tzOffset } from '@date-fns/tz';
import { addMonths as addMonthsTo, formatISO, parseISO, toDate } from 'date-fns';

const msPerMin = 60_000;
const msPerDay = 86_400_000;
const instantForm = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;
const dayForm = /^\d{4}-\d\d-\d\d$/;
const wallForm = /^([01]\d|2[0-3]):[0-5]\d$/;

const pad = (value: number, width: number): string => String(value).padStart(width, '0');

/** Days since 1970-01-01 of a Gregorian date; month 1 to 12. Years are counted from March, so that the leap day comes last. */
function dayNumber(year: number, month: number, dayOfMonth: number): number {
  const shifted = month <= 2 ? year - 1 : year;
  const fromMarch = (month + 9) % 12;
  const leapDays = Math.floor(shifted / 4) - Math.floor(shifted / 100) + Math.floor(shifted / 400);
  return 365 * shifted + leapDays + Math.floor((153 * fromMarch + 2) / 5) + dayOfMonth - 1 - 719_468;
}

function numberOfDay(day: string): number {
  if (!dayForm.test(day)) throw new Error(`not a day: ${day}`);
  return dayNumber(+day.slice(0, 4), +day.slice(5, 7), +day.slice(8, 10));
}

function dayOfNumber(number: number): string {
  const z = number + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(dayOfYear - Math.floor((153 * fromMarch + 2) / 5) + 1, 2)}`;
}

/** Milliseconds since 1970 of an instant. */
export function instantToEpochMs(at: string): number {
  if (!instantForm.test(at)) throw new Error(`not an instant: ${at}`);
  const clock =
    +at.slice(11, 13) * 3_600_000 + +at.slice(14, 16) * msPerMin + +at.slice(17, 19) * 1000 + +at.slice(20, 23);
  return dayNumber(+at.slice(0, 4), +at.slice(5, 7), +at.slice(8, 10)) * msPerDay + clock;
}

/** The instant of a number of milliseconds since 1970. */
export function epochMsToInstant(epochMs: number): string {
  const days = Math.floor(epochMs / msPerDay);
  const ms = epochMs - days * msPerDay;
  const seconds = Math.floor(ms / 1000) % 60;
  return `${dayOfNumber(days)}T${clockOf(Math.floor(ms / msPerMin))}:${pad(seconds, 2)}.${pad(ms % 1000, 3)}Z`;
}

const clockOf = (minutes: number): string => `${pad(Math.floor(minutes / 60), 2)}:${pad(minutes % 60, 2)}`;

/** Minutes since 1970, with the seconds as a fraction. */
export const instantToEpochMin = (at: string): number => instantToEpochMs(at) / msPerMin;

/** Minutes from one instant to another; negative when the second comes first. Real minutes: clock changes do not show. */
export const minutesBetween = (fromAt: string, toAt: string): number =>
  (instantToEpochMs(toAt) - instantToEpochMs(fromAt)) / msPerMin;

export const addMinutes = (at: string, min: number): string =>
  epochMsToInstant(Math.round(instantToEpochMs(at) + min * msPerMin));

/** Orders instants: negative when the first is earlier. */
export const compareInstants = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Minutes that the zone is ahead of UTC at an instant. Throws on a zone that the device does not know. */
export function offsetMinAt(at: string, zone: string): number {
  const offset = tzOffset(zone, toDate(instantToEpochMs(at)));
  if (Number.isNaN(offset)) throw new Error(`not a time zone: ${zone}`);
  return offset;
}

/** Does the device know this IANA zone? */
export const isZone = (zone: string): boolean => !Number.isNaN(tzOffset(zone, toDate(0)));

/** The calendar day and wall time of an instant in a zone. */
export function wallTimeOf(at: string, zone: string): { readonly day: string; readonly time: string } {
  const local = epochMsToInstant(instantToEpochMs(at) + offsetMinAt(at, zone) * msPerMin);
  return { day: local.slice(0, 10), time: local.slice(11, 16) };
}

export const dayOf = (at: string, zone: string): string => wallTimeOf(at, zone).day;

/** A wall time typed on a form: on the night of a clock change it may not exist, or exist twice; then the form asks. */
export type WallTimeMeaning =
  | { readonly kind: 'once'; readonly at: string; readonly offsetMin: number }
  | { readonly kind: 'doesNotExist'; readonly clockJumpsToTime: string }
  | {
      readonly kind: 'twice';
      readonly first: { readonly at: string; readonly offsetMin: number };
      readonly second: { readonly at: string; readonly offsetMin: number };
    };

/** The instant or instants that a wall time on a day stands for in a zone. */
export function instantsOfWallTime(day: string, time: string, zone: string): WallTimeMeaning {
  if (!wallForm.test(time)) throw new Error(`not a wall time: ${time}`);
  const asUtcMs = numberOfDay(day) * msPerDay + (+time.slice(0, 2) * 60 + +time.slice(3)) * msPerMin;
  const dayEarlier = offsetMinAt(epochMsToInstant(asUtcMs - msPerDay), zone);
  const dayLater = offsetMinAt(epochMsToInstant(asUtcMs + msPerDay), zone);
  const meanings = [...new Set([dayEarlier, dayLater])]
    .map((offsetMin) => ({
      at: epochMsToInstant(asUtcMs - offsetMin * msPerMin),
      offsetMin,
    }))
    .filter(({ at, offsetMin }) => offsetMinAt(at, zone) === offsetMin)
    .sort((a, b) => compareInstants(a.at, b.at));
  const [first, second] = meanings;
  if (first && second) return { kind: 'twice', first, second };
  if (first) return { kind: 'once', ...first };
  const jump = Math.abs(dayLater - dayEarlier);
  const after = epochMsToInstant(asUtcMs + jump * msPerMin - dayLater * msPerMin);
  return {
    kind: 'doesNotExist',
    clockJumpsToTime: wallTimeOf(after, zone).time,
  };
}

/** The day a number of days later (or earlier). */
export const addDays = (day: string, days: number): string => dayOfNumber(numberOfDay(day) + days);

/** The same day of the month some months later, or that month's last day where it has no such day (31 August + 6 = 28 February). */
export const addMonths = (day: string, months: number): string =>
  formatISO(addMonthsTo(parseISO(day), months), { representation: 'date' });

/** Calendar days from one day to another; negative when the second comes first. */
export const daysBetween = (fromOn: string, toOn: string): number => numberOfDay(toOn) - numberOfDay(fromOn);

/** 0 Sunday to 6 Saturday. */
export const weekdayOf = (day: string): number => (((numberOfDay(day) + 4) % 7) + 7) % 7;

/** Is this a day of the calendar, written as 2026-11-25? */
export const isDay = (text: string): boolean => dayForm.test(text) && dayOfNumber(numberOfDay(text)) === text;

/** Is this an instant written in UTC to the millisecond? */
export const isInstant = (text: string): boolean =>
  instantForm.test(text) && epochMsToInstant(instantToEpochMs(text)) === text;
