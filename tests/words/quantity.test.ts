/** How figures are printed. Expected texts are written by hand. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  formatClock,
  formatDay,
  formatDayFrom,
  formatEstimate,
  formatInWorking,
  formatList,
  formatMinutes,
  formatNumber,
  formatQuantity,
  nameInWords,
} from '#words/quantity.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));
const nb = '\u00a0';

describe('a number with its unit', () => {
  test('keeps the decimals that its instrument has, small ones three significant digits', () => {
    expect(formatQuantity(2.05, 'L/min')).toBe(`2.05${nb}L/min`);
    expect(formatQuantity(902.94, 'L')).toBe(`902.9${nb}L`);
    expect(formatQuantity(447, 'min')).toBe(`447${nb}min`);
    expect(formatQuantity(0.0123, 'µg')).toBe(`0.0123${nb}µg`);
    expect(formatQuantity(5, '%')).toBe('5.0 %');
  });

  test('is rounded as by hand: a half goes up, also where the binary number lies just under it', () => {
    expect(formatNumber(2.555, 'L/min')).toBe('2.56');
    expect(formatNumber(1.005, 'L/min')).toBe('1.01');
    expect(formatNumber(2.675, 'L/min')).toBe('2.68');
  });

  test('has no comma that could be a decimal mark, and a minus that is one', () => {
    expect(formatNumber(1234, 'L')).toBe('1234.0');
    expect(formatNumber(12345.6, 'L')).toBe('12\u202f345.6');
    expect(formatNumber(-4.25, '°C')).toBe('\u22124.3');
  });

  test('in a working is not padded', () => {
    expect(formatInWorking(2.05, 'L/min')).toBe(`2.05${nb}L/min`);
    expect(formatInWorking(902.94, 'L')).toBe(`902.94${nb}L`);
    expect(formatInWorking(25, 'min')).toBe(`25${nb}min`);
    expect(formatInWorking(1000, 'L')).toBe(`1000${nb}L`);
  });
});

describe('a printed figure never contradicts its verdict', () => {
  test('near the action level and the limit', () => {
    const against = [30, 50];
    expect(formatNumber(29.96, 'µg/m³', { against })).toBe('29.96');
    expect(formatNumber(29.9999, 'µg/m³', { against })).toBe('29.9999');
    expect(formatNumber(30, 'µg/m³', { against })).toBe('30.0');
    expect(formatNumber(50.04, 'µg/m³', { against })).toBe('50.04');
    expect(formatEstimate({ kind: 'atLeast', lower: 50.04 }, 'µg/m³', { against })).toBe(`at least 50.04${nb}µg/m³`);
  });

  test(`anywhere within a tenth of them (seed ${seed})`, () => {
    let closer = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(30, 50),
        fc.double({ min: 1e-6, max: 0.1, noNaN: true }),
        fc.boolean(),
        (limit, by, up) => {
          const value = up ? limit + by : limit - by;
          const shown = Number(formatNumber(value, 'µg/m³', { against: [30, 50] }));
          closer += Number(by < 0.05);
          expect(Math.sign(shown - limit)).toBe(up ? 1 : -1);
        },
      ),
      { seed, numRuns: 500 },
    );
    expect(closer).toBeGreaterThan(20);
  });
});

describe('what is only bounded', () => {
  test('is said as such, in both languages', () => {
    expect(formatEstimate({ kind: 'between', lower: 0, upper: 5 }, 'µg')).toBe(`less than 5.00${nb}µg`);
    expect(formatEstimate({ kind: 'between', lower: 0, upper: 5 }, 'µg', { language: 'es' })).toBe(
      `menos de 5.00${nb}µg`,
    );
    expect(formatEstimate({ kind: 'between', lower: 1, upper: 5 }, 'µg')).toBe(`between 1.00 and 5.00${nb}µg`);
    expect(formatEstimate({ kind: 'atLeast', lower: 31.26 }, 'µg/m³')).toBe(`at least 31.2${nb}µg/m³`);
  });

  test('is rounded outwards: print never claims more than is known', () => {
    expect(formatEstimate({ kind: 'between', lower: 0, upper: 5.5374 }, 'µg/m³')).toBe(`less than 5.54${nb}µg/m³`);
    expect(formatEstimate({ kind: 'between', lower: 10.19, upper: 10.21 }, 'µg/m³')).toBe(
      `between 10.1 and 10.3${nb}µg/m³`,
    );
  });
});

describe('minutes, days and times in words', () => {
  test('minutes', () => {
    expect(formatMinutes(42)).toBe(`42${nb}min`);
    expect(formatMinutes(402)).toBe(`6${nb}h 42${nb}min`);
    expect(formatMinutes(480)).toBe(`8${nb}h`);
    expect(formatMinutes(59.6)).toBe(`1${nb}h`);
  });

  test('days; 25 November 2026 is a Wednesday (printed calendar)', () => {
    expect(formatDay('2026-11-25')).toBe('25 November 2026');
    expect(formatDay('2026-11-25', 'en', 'weekday')).toBe('Wednesday 25 November 2026');
    expect(formatDay('2026-11-25', 'es', 'weekday')).toBe('miércoles 25 de noviembre de 2026');
    expect(formatDay('2026-03-01', 'en', 'short')).toBe('1 March');
  });

  test('days from today', () => {
    const from = (day: string) => formatDayFrom('2026-11-25', day);
    expect([from('2026-11-24'), from('2026-11-25'), from('2026-11-26')]).toEqual(['yesterday', 'today', 'tomorrow']);
    expect([from('2026-11-16'), from('2026-12-07')]).toEqual(['9 days ago', 'in 12 days']);
    expect(from('2026-09-01')).toBe('1 September 2026');
    expect(formatDayFrom('2026-11-25', '2026-11-20', 'es')).toBe('hace 5 días');
  });

  test('times and lists', () => {
    expect(formatClock('07:12')).toBe('07:12 in the morning');
    expect(formatClock('19:12', 'es')).toBe('19:12 de la noche');
    expect(formatList(['a', 'b', 'c'])).toBe('a, b and c');
    expect(formatList(['a'])).toBe('a');
    expect(nameInWords('averageFlow')).toBe('average flow');
    expect(nameInWords('twa8')).toBe('TWA8');
  });
});
