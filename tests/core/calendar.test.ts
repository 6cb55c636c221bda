/**
 * Clock changes are those of the US rule in force since 2007: 2026-03-08 02:00 becomes 03:00, 2026-11-01 02:00 becomes 01:00.
 * Arizona and Japan have none. Dates are checked against the calendar of date-fns.
 */
import { addDays as addDaysTo, differenceInCalendarDays, formatISO, getDay, parseISO } from 'date-fns';
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import {
  addDays,
  addMinutes,
  addMonths,
  dayOf,
  daysBetween,
  epochMsToInstant,
  instantsOfWallTime,
  instantToEpochMin,
  instantToEpochMs,
  isDay,
  isInstant,
  isZone,
  minutesBetween,
  offsetMinAt,
  wallTimeOf,
  weekdayOf,
} from '#core/calendar.ts';
import { exactly } from '#core/estimate.ts';
import { recorded } from '#core/formula.ts';
import { intervalMin, wornTime } from '#core/wornTime.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));
const occurred = new Map<string, number>();
const count = (name: string, happened: boolean): void => {
  occurred.set(name, (occurred.get(name) ?? 0) + Number(happened));
};
afterAll(() => console.info(`calendar: seed ${seed}, ${JSON.stringify(Object.fromEntries(occurred))}`));

const newYork = 'America/New_York';
const phoenix = 'America/Phoenix';
const tokyo = 'Asia/Tokyo';

describe('a wall time on a form', () => {
  test('ordinary: 07:12 in New York on 25 November 2026 is 12:12 UTC', () => {
    expect(instantsOfWallTime('2026-11-25', '07:12', newYork)).toEqual({
      kind: 'once',
      at: '2026-11-25T12:12:00.000Z',
      offsetMin: -300,
    });
  });

  test('02:30 does not exist in New York on 8 March 2026; the clock jumps to 03:30', () => {
    expect(instantsOfWallTime('2026-03-08', '02:30', newYork)).toEqual({
      kind: 'doesNotExist',
      clockJumpsToTime: '03:30',
    });
    expect(instantsOfWallTime('2026-03-08', '01:59', newYork).kind).toBe('once');
    expect(instantsOfWallTime('2026-03-08', '03:00', newYork)).toMatchObject({
      kind: 'once',
      at: '2026-03-08T07:00:00.000Z',
    });
  });

  test('01:30 exists twice in New York on 1 November 2026, an hour apart', () => {
    expect(instantsOfWallTime('2026-11-01', '01:30', newYork)).toEqual({
      kind: 'twice',
      first: { at: '2026-11-01T05:30:00.000Z', offsetMin: -240 },
      second: { at: '2026-11-01T06:30:00.000Z', offsetMin: -300 },
    });
    expect(instantsOfWallTime('2026-11-01', '00:59', newYork).kind).toBe('once');
    expect(instantsOfWallTime('2026-11-01', '02:00', newYork).kind).toBe('once');
  });

  test('both nights are ordinary in Phoenix and Tokyo', () => {
    for (const day of ['2026-03-08', '2026-11-01']) {
      expect(instantsOfWallTime(day, '02:30', phoenix)).toMatchObject({ kind: 'once', at: `${day}T09:30:00.000Z` });
      expect(instantsOfWallTime(day, '01:30', phoenix)).toMatchObject({ kind: 'once', at: `${day}T08:30:00.000Z` });
    }
    expect(instantsOfWallTime('2026-03-08', '02:30', tokyo)).toMatchObject({
      kind: 'once',
      at: '2026-03-07T17:30:00.000Z',
    });
  });

  test('a half-hour change (Lord Howe Island, 5 April 2026, 02:00 back to 01:30) is asked about too', () => {
    expect(instantsOfWallTime('2026-04-05', '01:45', 'Australia/Lord_Howe').kind).toBe('twice');
  });

  test('what is no wall time, no day, no zone throws', () => {
    expect(() => instantsOfWallTime('2026-11-25', '25:00', newYork)).toThrow('not a wall time');
    expect(() => instantsOfWallTime('25.11.2026', '05:00', newYork)).toThrow('not a day');
    expect(() => offsetMinAt('2026-11-25T12:12:00.000Z', 'Atlantis/Middle')).toThrow('not a time zone');
    expect(isZone('Atlantis/Middle')).toBe(false);
    expect(isZone(phoenix)).toBe(true);
  });
});

describe('worn minutes over midnight and the clock changes, 22:00 to 06:00 by the wall', () => {
  // by hand: eight hours on the wall, less the hour that was skipped, plus the hour that came twice
  test.each([
    [newYork, '2026-03-07', '2026-03-08', 420],
    [newYork, '2026-10-31', '2026-11-01', 540],
    [newYork, '2026-11-24', '2026-11-25', 480],
    [phoenix, '2026-03-07', '2026-03-08', 480],
    [phoenix, '2026-10-31', '2026-11-01', 480],
    [tokyo, '2026-03-07', '2026-03-08', 480],
    [tokyo, '2026-10-31', '2026-11-01', 480],
  ])('%s, %s to %s: %i min', (zone, from, to, expected) => {
    const on = instantsOfWallTime(from, '22:00', zone);
    const off = instantsOfWallTime(to, '06:00', zone);
    if (on.kind !== 'once' || off.kind !== 'once') throw new Error('these times exist once');
    expect(intervalMin(on.at, off.at)).toEqual({ kind: 'min', min: expected });
    expect(dayOf(on.at, zone)).toBe(from);
    expect(dayOf(off.at, zone)).toBe(to);
  });

  test('whatever the intervals, read off a wall clock and typed in again, they add up to what ran', () => {
    const changes = ['2026-03-08T07:00:00.000Z', '2026-11-01T06:00:00.000Z'];
    const day = fc.record({
      zone: fc.constantFrom(newYork, phoenix, tokyo),
      change: fc.constantFrom(...changes),
      startMin: fc.integer({ min: -1000, max: 300 }),
      lengths: fc.array(fc.record({ run: fc.integer({ min: 0, max: 240 }), pause: fc.integer({ min: 0, max: 90 }) }), {
        minLength: 1,
        maxLength: 5,
      }),
    });
    fc.assert(
      fc.property(day, ({ zone, change, startMin, lengths }) => {
        let at = addMinutes(change, startMin);
        const first = at;
        const intervals = lengths.map(({ run, pause }) => {
          const [from, to] = [throughTheWall(at, zone), throughTheWall(addMinutes(at, run), zone)];
          at = addMinutes(at, run + pause);
          const length = intervalMin(from, to);
          if (length.kind === 'stopBeforeStart') throw new Error('a stop before its start');
          return recorded('interval', 'min', exactly(length.min), []);
        });
        count('over midnight', dayOf(first, zone) !== dayOf(at, zone));
        count('over the change in spring', zone === newYork && change === changes[0] && first < change && change < at);
        count('over the change in autumn', zone === newYork && change === changes[1] && first < change && change < at);
        const ran = lengths.reduce((sum, { run }) => sum + run, 0);
        expect(wornTime.of({ d: intervals }).estimate).toEqual({ kind: 'exact', value: ran });
      }),
      { seed, numRuns: 1500 },
    );
    for (const name of [
      'over midnight',
      'over the change in spring',
      'over the change in autumn',
      'a wall time that came twice',
    ])
      expect(occurred.get(name), name).toBeGreaterThan(0);
  });

  test('a stop before its start is refused', () => {
    expect(intervalMin('2026-11-25T12:00:00.000Z', '2026-11-25T11:59:00.000Z')).toEqual({ kind: 'stopBeforeStart' });
  });
});

/** Reads the wall clock, and types it in again; where the form asks which of two is meant, the one that it was. */
function throughTheWall(at: string, zone: string): string {
  const { day, time } = wallTimeOf(at, zone);
  const meaning = instantsOfWallTime(day, time, zone);
  count('a wall time that came twice', meaning.kind === 'twice');
  if (meaning.kind === 'doesNotExist') throw new Error(`the wall showed a time that does not exist: ${day} ${time}`);
  if (meaning.kind === 'once') return meaning.at;
  return [meaning.first.at, meaning.second.at].includes(at) ? at : 'neither';
}

describe('instants and days against other calendars', () => {
  test('instants there and back, as the engine of the language says', () => {
    fc.assert(
      fc.property(fc.integer({ min: -2_208_988_800_000, max: 4_102_444_800_000 }), (ms) => {
        const text = new Date(ms).toISOString();
        expect(epochMsToInstant(ms)).toBe(text);
        expect(instantToEpochMs(text)).toBe(ms);
        expect(instantToEpochMin(text)).toBe(ms / 60_000);
      }),
      { seed, numRuns: 500 },
    );
  });

  test('days later, days between and weekdays, as date-fns says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40_000 }), fc.integer({ min: -20_000, max: 20_000 }), (start, days) => {
        const from = addDays('1970-01-01', start);
        const to = formatISO(addDaysTo(parseISO(from), days), { representation: 'date' });
        expect(addDays(from, days)).toBe(to);
        expect(daysBetween(from, to)).toBe(differenceInCalendarDays(parseISO(to), parseISO(from)));
        expect(weekdayOf(to)).toBe(getDay(parseISO(to)));
      }),
      { seed, numRuns: 500 },
    );
  });

  test('months later: 31 August and six months is 28 February; 31 January and one month in a leap year is the 29th', () => {
    expect(addMonths('2026-08-31', 6)).toBe('2027-02-28');
    expect(addMonths('2028-01-31', 1)).toBe('2028-02-29');
    expect(addMonths('2026-11-25', 12)).toBe('2027-11-25');
  });

  test('a day that is not in the calendar is no day', () => {
    expect(['2026-02-29', '2026-13-01', '2026-1-1', 'today'].map(isDay)).toEqual([false, false, false, false]);
    expect(isDay('2028-02-29')).toBe(true);
    expect(isInstant('2026-02-29T00:00:00.000Z')).toBe(false);
    expect(isInstant('2026-11-25T10:12:00.000Z')).toBe(true);
    expect(isInstant('2026-11-25T10:12:00Z')).toBe(false);
  });

  test('minutes keep their seconds', () => {
    expect(minutesBetween('2026-11-25T10:12:00.000Z', '2026-11-25T10:12:30.000Z')).toBe(0.5);
  });
});
