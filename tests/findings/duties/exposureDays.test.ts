/**
 * 29 CFR 1926.62(j)(1): days at or above the action level, any twelve consecutive months. Days were counted on a calendar; presumed tiers
 * are those of the regulation sheet A3 (hand scraping: tier 1; setting up: not on the list).
 */
import { describe, expect, it } from 'vitest';
import { addDays } from '#core/calendar.ts';
import { exposureDaysOf } from '#findings/duties/exposure/daysAtOrAbove.ts';
import type { ExposureDays } from '#findings/duties/exposure/exposureDays.ts';
import { mostWithin, windowFrom } from '#findings/duties/exposure/rollingYear.ts';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { Book, WorkdayRecord } from '#records/book.ts';
import { factId, siteId } from '../sliceRegisters.ts';
import { jobBook, rosterDay, shiftOn, tess, vic, worked } from './jobBook.ts';

const today = '2026-12-31';
const exposure = (book: Book, workerId = tess, on = today): ExposureDays => {
  const found = exposureDaysOf(measurementsOf(book), groupDaysOf(book), book, on).get(workerId);
  if (!found) throw new Error('no days');
  return found;
};
const days = (fromOn: string, count: number): readonly string[] =>
  Array.from({ length: count }, (_, i) => addDays(fromOn, i));
const presumed = (fromOn: string, count: number): WorkdayRecord[] =>
  days(fromOn, count).map((on) => rosterDay(tess, on));
const kinds = (found: ExposureDays) => found.days.map(({ on, by, atOrAbove }) => [on, by, atOrAbove]);
const doing = (workOn: string, taskId: string, workerId = tess): WorkdayRecord => ({
  ...rosterDay(workerId, workOn),
  worked: [worked(workOn, siteId, [taskId])],
});

describe('(j)(1)(ii): more than 30 days in any consecutive 12 months', () => {
  it('30 days are not more than 30; 31 are; presumed ones count and are counted as presumed', () => {
    expect(exposure(jobBook({ roster: presumed('2026-03-01', 30) }))).toMatchObject({
      moreThanThirty: false,
      most: { count: 30, presumedCount: 30, toOn: '2026-03-30', fromOn: '2025-03-31' },
      running: { count: 30, fromOn: '2026-01-01', toOn: '2026-12-31' },
    });
    expect(exposure(jobBook({ roster: presumed('2026-03-01', 31) })).moreThanThirty).toBe(true);
  });
  it('one more day exactly twelve months after the first falls outside', () => {
    // from 2 March 2026 to 1 March 2027 are twelve months; 2 March 2027 begins the next ones
    const first = presumed('2026-03-02', 30);
    const within = exposure(jobBook({ roster: [...first, rosterDay(tess, '2027-03-01')] }), tess, '2027-03-01');
    expect(within.moreThanThirty).toBe(true);
    const outside = exposure(jobBook({ roster: [...first, rosterDay(tess, '2027-03-02')] }), tess, '2027-03-02');
    expect(outside).toMatchObject({ moreThanThirty: false, most: { count: 30 } });
  });
  it('it stays so after the twelve months have passed: any twelve months', () => {
    expect(exposure(jobBook({ roster: presumed('2024-03-01', 31) }))).toMatchObject({
      moreThanThirty: true,
      running: { count: 0 },
    });
  });
  it('windows end on the last day of February and in leap years where a calendar says', () => {
    expect(windowFrom('2027-02-28', 12)).toBe('2026-03-01');
    expect(windowFrom('2028-02-29', 12)).toBe('2027-03-01');
    expect(windowFrom('2029-02-28', 12)).toBe('2028-02-29');
    expect(mostWithin([], 12)).toBeNull();
  });
});

describe('(j)(1)(i): at or above the action level on any day', () => {
  for (const [average, anyDay] of [
    [29.97, false],
    [30, true],
    [30.03, true],
  ] as const)
    it(`${average} measured: ${anyDay}`, () => {
      const found = exposure(jobBook({ days: [{ workOn: '2026-03-02', averageUgPerM3: average }] }));
      expect(found.anyDay).toBe(anyDay);
      expect(kinds(found)).toEqual([['2026-03-02', 'measured', anyDay ? 'yes' : 'no']]);
    });
});

describe('measured, represented, presumed and not known are kept apart', () => {
  it('a task that nothing is presumed of, and nobody measured, is not known and says so', () => {
    const found = exposure(jobBook({ roster: [doing('2026-03-02', 'setUp')] }));
    expect(kinds(found)).toEqual([['2026-03-02', 'notKnown', 'notKnown']]);
    expect(found).toMatchObject({ anyDay: false, running: { count: 0, notKnownCount: 1 } });
  });
  it('a result that is owed leaves the day presumed', () => {
    const found = exposure(jobBook({ days: [{ workOn: '2026-03-02', averageUgPerM3: null }] }));
    expect(kinds(found)).toEqual([['2026-03-02', 'presumed', 'yes']]);
  });
  it("another worker's measurement of the same shift and tasks represents, high and low", () => {
    for (const [average, atOrAbove] of [
      [20, 'no'],
      [60, 'yes'],
    ] as const) {
      const job = { days: [{ workOn: '2026-03-02', averageUgPerM3: average }], roster: [rosterDay(vic, '2026-03-02')] };
      expect(kinds(exposure(jobBook(job), vic))).toEqual([['2026-03-02', 'represented', atOrAbove]]);
    }
  });
  it('other tasks on that shift are not represented', () => {
    const job = {
      days: [{ workOn: '2026-03-02', averageUgPerM3: 20 }],
      roster: [doing('2026-03-02', 'handSanding', vic)],
    };
    expect(kinds(exposure(jobBook(job), vic))).toEqual([['2026-03-02', 'presumed', 'yes']]);
  });
});

describe('later days of the group', () => {
  const later = '2026-03-05';
  const answers = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;
  const onLater = (average: number, shift = shiftOn(later)) =>
    kinds(
      exposure(
        jobBook({
          days: [{ workOn: '2026-03-02', averageUgPerM3: average }],
          roster: [rosterDay(tess, later)],
          shifts: [shift],
        }),
      ),
    ).at(-1);
  it('a high one stands for them', () => {
    expect(onLater(60, shiftOn(later, {}, null))).toEqual([later, 'represented', 'yes']);
  });
  it('a low one only where all five terms are noted and alike', () => {
    expect(onLater(20)).toEqual([later, 'represented', 'no']);
    expect(onLater(20, shiftOn(later, {}, { method: 'dry' }))).toEqual([later, 'presumed', 'yes']);
    expect(onLater(20, shiftOn(later, {}, { paintLead: 'notKnown' }))).toEqual([later, 'presumed', 'yes']);
    expect(onLater(20, shiftOn(later, {}, null))).toEqual([later, 'presumed', 'yes']);
  });
  it('and not after a change was noted', () => {
    const changes = { ...answers, control: 'yes' as const, factId: factId() };
    expect(onLater(20, shiftOn(later, { changes }))).toEqual([later, 'presumed', 'yes']);
  });
  it('after a high one, one low one does not free them; two in a row at least seven days apart do', () => {
    const job = (secondOn: string) =>
      kinds(
        exposure(
          jobBook({
            days: [
              { workOn: '2026-03-02', averageUgPerM3: 60 },
              { workOn: '2026-03-09', averageUgPerM3: 20 },
              { workOn: secondOn, averageUgPerM3: 20 },
            ],
            roster: [rosterDay(tess, '2026-03-10'), rosterDay(tess, '2026-03-20')],
          }),
        ),
      );
    expect(job('2026-03-16')).toContainEqual(['2026-03-10', 'represented', 'yes']);
    expect(job('2026-03-16')).toContainEqual(['2026-03-20', 'represented', 'no']);
    expect(job('2026-03-15')).toContainEqual(['2026-03-20', 'represented', 'yes']);
  });
  it("of another who was high, a low one of one's own frees only oneself", () => {
    const book = jobBook({
      days: [
        { workOn: '2026-03-02', averageUgPerM3: 20 },
        { workOn: '2026-03-02', averageUgPerM3: 60, workerId: vic },
      ],
      roster: [rosterDay(tess, later), rosterDay('p00000000003', later)],
    });
    expect(kinds(exposure(book)).at(-1)).toEqual([later, 'represented', 'no']);
    expect(kinds(exposure(book, 'p00000000003'))).toEqual([[later, 'represented', 'yes']]);
  });
});
