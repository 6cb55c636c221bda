/**
 * Working days. 29 CFR 1926.62 does not define them; 1903.22(c) counts Monday to Friday without federal holidays, leaves the day of
 * receipt out and counts the last day. Which days are holidays is handed in.
 */
import { addDays, weekdayOf } from './calendar.ts';

const isWeekend = (on: string): boolean => {
  const weekday = weekdayOf(on);
  return weekday === 0 || weekday === 6;
};

/** Nobody's holidays: every Monday to Friday counts. */
export const noHolidays = (): boolean => false;

/** The last of so many working days after a day, which is not counted itself. Throws (a bug) unless the count is whole and not negative. */
export function workingDayAfter(receivedOn: string, daysCount: number, isHoliday: (on: string) => boolean): string {
  if (!Number.isInteger(daysCount) || daysCount < 0) throw new Error(`not a count of days: ${daysCount}`);
  let on = receivedOn;
  for (let left = daysCount; left > 0; ) {
    on = addDays(on, 1);
    if (!isWeekend(on) && !isHoliday(on)) left -= 1;
  }
  return on;
}
