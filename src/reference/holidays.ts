/**
 * Federal public holidays, for one purpose: a note that the last day for a notice might be read later (29 CFR 1903.22(c) leaves them
 * out of its working days). Their list is recalled, not read: never a citation, never the last day itself.
 */
import { z } from 'zod';
import { addDays, weekdayOf } from '#core/calendar.ts';
import federalFile from '#shared/holidays/us-federal.json';
import { holdsOn, period } from './dated.ts';
import { day, type ReadSource, readOnce, source } from './source.ts';

const monthOfYear = z.number().int().min(1).max(12);
const weekday = z.number().int().min(0).max(6).describe('0 Sunday to 6 Saturday');
const rule = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('fixed'), monthOfYear, dayOfMonth: z.number().int().min(1).max(31) }),
  z.strictObject({ kind: z.literal('weekday'), monthOfYear, weekday, nth: z.number().int().min(1).max(4) }),
  z.strictObject({ kind: z.literal('lastWeekday'), monthOfYear, weekday }),
]);

export const holidaysFile = z.strictObject({
  id: z.literal('us-federal'),
  effective: period,
  source,
  unit: z.literal(''),
  observed: z.strictObject({ saturday: z.literal('fridayBefore'), sunday: z.literal('mondayAfter') }),
  holidays: z.array(z.strictObject({ key: z.string(), from: day, to: day.nullable(), rule })).min(1),
});
type Rule = z.infer<typeof rule>;

const read = readOnce(holidaysFile, federalFile);

export const holidaysSource = (): ReadSource => read().source;

const two = (value: number): string => String(value).padStart(2, '0');

function dayIn(year: string, given: Rule): string {
  const first = `${year}-${two(given.monthOfYear)}-01`;
  if (given.kind === 'fixed') return `${year}-${two(given.monthOfYear)}-${two(given.dayOfMonth)}`;
  if (given.kind === 'weekday')
    return addDays(first, ((given.weekday - weekdayOf(first) + 7) % 7) + 7 * (given.nth - 1));
  const next = given.monthOfYear === 12 ? `${+year + 1}-01-01` : `${year}-${two(given.monthOfYear + 1)}-01`;
  const last = addDays(next, -1);
  return addDays(last, -((weekdayOf(last) - given.weekday + 7) % 7));
}

/** On the Friday before where it falls on a Saturday, on the Monday after where it falls on a Sunday. */
function observedOn(on: string): string {
  const falls = weekdayOf(on);
  return falls === 6 ? addDays(on, -1) : falls === 0 ? addDays(on, 1) : on;
}

const heldByYear = new Map<string, ReadonlySet<string>>();

function holidaysOf(year: string): ReadonlySet<string> {
  const held = heldByYear.get(year);
  if (held) return held;
  // New Year's Day of the year after may be observed on the last day of this one
  const found = [year, `${+year + 1}`].flatMap((one) =>
    read()
      .holidays.map((holiday) => ({ holiday, on: dayIn(one, holiday.rule) }))
      .filter(({ holiday, on }) => holdsOn(on, holiday))
      .map(({ on }) => observedOn(on)),
  );
  const days = new Set(found.filter((on) => on.startsWith(year)));
  heldByYear.set(year, days);
  return days;
}

/** Is this day a federal holiday, as far as we recall? Years before 1971 are not held and have none. */
export const isFederalHoliday = (on: string): boolean => holidaysOf(on.slice(0, 4)).has(on);
