/**
 * Working days are held against date-fns. The holidays of 2026 and 2027 are written down by hand, as US wall calendars show them; they
 * are recalled like the list itself, which is why they make a note and never a last day.
 */
import { addBusinessDays, formatISO, parseISO } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '#core/calendar.ts';
import { noHolidays, workingDayAfter } from '#core/workingDays.ts';
import { holidaysSource, isFederalHoliday } from '#reference/holidays.ts';
import { isCitable } from '#reference/source.ts';

describe('29 CFR 1903.22(c): Monday to Friday, the day of receipt not counted, the last day counted', () => {
  test.each([
    ['a Monday', '2026-11-09', '2026-11-16'],
    ['a Wednesday', '2026-11-11', '2026-11-18'],
    ['a Friday', '2026-11-13', '2026-11-20'],
    ['a Saturday', '2026-11-14', '2026-11-20'],
    ['a Sunday', '2026-11-15', '2026-11-20'],
    ['the last Friday of a year', '2026-12-25', '2027-01-01'],
    ['the day before a leap day', '2028-02-28', '2028-03-06'],
  ])('received on %s', (_, receivedOn, dueOn) => {
    expect(workingDayAfter(receivedOn, 5, noHolidays)).toBe(dueOn);
  });

  test('as the business days of date-fns count, from any day', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 1, max: 40 }), (offset, count) => {
        const on = addDays('2000-01-01', offset);
        const theirs = formatISO(addBusinessDays(parseISO(on), count), { representation: 'date' });
        expect(workingDayAfter(on, count, noHolidays)).toBe(theirs);
      }),
    );
  });

  test('no day at all is the day itself; half a day is a bug', () => {
    expect(workingDayAfter('2026-11-14', 0, noHolidays)).toBe('2026-11-14');
    expect(() => workingDayAfter('2026-11-14', 2.5, noHolidays)).toThrow('not a count of days');
  });
});

describe('29 CFR 1903.22(c): the later reading leaves federal holidays out', () => {
  const of2026 = [
    ...['2026-01-01', '2026-01-19', '2026-02-16', '2026-05-25', '2026-06-19', '2026-07-03'],
    ...['2026-09-07', '2026-10-12', '2026-11-11', '2026-11-26', '2026-12-25'],
  ];
  // 19 June and 4 July 2027 fall on a weekend; so do 25 December 2027 and 1 January 2028, observed on Fridays of 2027
  const of2027 = [
    ...['2027-01-01', '2027-01-18', '2027-02-15', '2027-05-31', '2027-06-18', '2027-07-05'],
    ...['2027-09-06', '2027-10-11', '2027-11-11', '2027-11-25', '2027-12-24', '2027-12-31'],
  ];
  test.each([
    ['2026', of2026],
    ['2027', of2027],
  ])('the holidays of %s', (year, expected) => {
    const days = Array.from({ length: 365 }, (_, index) => addDays(`${year}-01-01`, index));
    expect(days.filter(isFederalHoliday)).toEqual(expected);
  });

  test('Juneteenth is a holiday from 2021 on', () => {
    expect(isFederalHoliday('2020-06-19')).toBe(false);
    expect(isFederalHoliday('2021-06-18')).toBe(true);
  });

  test('received on the Monday before Thanksgiving: one day later', () => {
    expect(workingDayAfter('2026-11-23', 5, noHolidays)).toBe('2026-11-30');
    expect(workingDayAfter('2026-11-23', 5, isFederalHoliday)).toBe('2026-12-01');
  });

  test('the list is recalled, so it is no citation', () => {
    expect(isCitable(holidaysSource())).toBe(false);
  });
});
