/** Own vectors, each with its hand working. Numbers that somebody published are in tests/published. */
import { describe, expect, test } from 'vitest';
import { blanksNeeded } from '#core/blanksNeeded.ts';
import { concentration, volumeNeeded } from '#core/concentration.ts';
import { atLeast, between, exactly, lessThan } from '#core/estimate.ts';
import { filterLoading } from '#core/filterLoading.ts';
import { averageFlow, flowChange, lowerFlow } from '#core/flow.ts';
import { recorded, type Term } from '#core/formula.ts';
import { kelvin, rotameterFlow } from '#core/meterCorrection.ts';
import { maximumUseConcentration } from '#core/protection.ts';
import { meanOfReadings, readingHalfWidth, readingMidpoint } from '#core/reading.ts';
import { errorOfConsecutive } from '#core/saeLimits.ts';
import { dayBound, sampleShareOfTwa } from '#core/sampleShareOfTwa.ts';
import { stationPressure } from '#core/stationPressure.ts';
import { allowableAverage, averageToReach, hoursWorked, shiftAverage, twa8 } from '#core/twa.ts';
import type { Unit } from '#core/units.ts';

const term = (unit: Unit, estimate: number | ReturnType<typeof exactly>): Term =>
  recorded('given', unit, typeof estimate === 'number' ? exactly(estimate) : estimate, []);

describe('readings', () => {
  test('a float between 1.9 and 2.1: midpoint 2.0, half-width 0.1 / 2.0 = 5 %', () => {
    expect(readingMidpoint.compute({ lo: 1.9, hi: 2.1 })).toBeCloseTo(2, 12);
    expect(readingHalfWidth.compute({ lo: 1.9, hi: 2.1 })).toBeCloseTo(5, 10);
  });

  test('a steady float has no width', () => {
    expect(readingHalfWidth.compute({ lo: 2, hi: 2 })).toBe(0);
  });

  test('2.00, 2.02, 2.04: sum 6.06, mean 2.02', () => {
    expect(meanOfReadings.compute({ Qi: [2, 2.02, 2.04] })).toBeCloseTo(2.02, 12);
  });
});

describe('rotameter, methods.md: 2.00 L/min read, set at 760 mm Hg and 298.15 K', () => {
  const mmHg = 0.133322387415;
  const at = (pressureMmHg: number, temperatureK: number): number =>
    rotameterFlow.compute({ Qr: 2, Pcal: 760 * mmHg, Tcal: 298.15, Pact: pressureMmHg * mmHg, Tact: temperatureK });

  test.each([
    // 760/632 = 1.202532, root 1.096600, times 2
    [632, 298.15, 2.1932],
    // 1.202532 * 278.15/298.15 = 1.121864, root 1.059181, times 2
    [632, 278.15, 2.1184],
    // 308.15/298.15 = 1.033540, root 1.016632, times 2
    [760, 308.15, 2.0333],
  ])('used at %f mm Hg and %f K: %f L/min', (pressure, temperature, expected) => {
    expect(at(pressure, temperature)).toBeCloseTo(expected, 4);
  });

  test.each([
    [1500, 2.1894],
    [3000, 2.4044],
  ])('at the standard pressure of %i m: %f L/min', (altitude, expected) => {
    const Pact = stationPressure.compute({ H: altitude });
    expect(rotameterFlow.compute({ Qr: 2, Pcal: 101.325, Tcal: 298.15, Pact, Tact: 298.15 })).toBeCloseTo(expected, 4);
  });

  test('thinner air flows faster than the float shows; where it was calibrated it reads true', () => {
    expect(at(632, 298.15)).toBeGreaterThan(2);
    expect(at(760, 298.15)).toBe(2);
  });

  test('25 °C is 298.15 K', () => {
    expect(kelvin.compute({ θ: 25 })).toBe(298.15);
  });
});

describe('standard atmosphere, methods.md B9 (geopotential)', () => {
  test.each([
    [0, 101.325],
    [500, 95.461],
    [1000, 89.875],
    [1500, 84.556],
    [2000, 79.495],
    [3000, 70.109],
  ])('%i m: %f kPa', (altitude, expected) => {
    expect(Math.abs(stationPressure.compute({ H: altitude }) - expected)).toBeLessThanOrEqual(0.0005 + 1e-9);
  });
});

describe('flow before and after', () => {
  const flows = { Qb: term('L/min', 2), Qa: term('L/min', 1.9) };
  test('2.00 before, 1.90 after: average 1.95, lower 1.90, change 0.10/2.00 = 5 % of the flow before', () => {
    expect(averageFlow.of(flows).estimate).toEqual(exactly(1.95));
    expect(lowerFlow.of(flows).estimate).toEqual(exactly(1.9));
    expect(flowChange.compute({ Qb: 2, Qa: 1.9 })).toBeCloseTo(5, 10);
  });

  test('the denominator is the flow before: 1.90 before, 2.00 after is 5.263 %', () => {
    expect(flowChange.compute({ Qb: 1.9, Qa: 2 })).toBeCloseTo(5.263, 3);
  });
});

describe('concentration', () => {
  test('24.6 µg in 960 L is 25.625 µg/m³', () => {
    expect(concentration.compute({ m: 24.6, V: 960 })).toBe(25.625);
  });

  test('less than 10 µg in 960 L is from 0 to 10.4167 µg/m³ (methods.md A9: 10.4)', () => {
    const { estimate } = concentration.of({ m: term('µg', lessThan(10)), V: term('L', 960) });
    expect(estimate).toMatchObject({ kind: 'between', lower: 0 });
    expect(estimate.kind === 'between' && estimate.upper).toBeCloseTo(10.4167, 4);
  });

  test('no flow after: at most the highest flow of the method, so at least mass over that volume', () => {
    // 24 µg, 480 min at no more than 4 L/min = 1920 L at most: at least 12.5 µg/m³
    const { estimate } = concentration.of({ m: term('µg', atLeast(24)), V: term('L', 1920) });
    expect(estimate).toEqual({ kind: 'atLeast', lower: 12.5 });
  });

  test('a reporting limit of 10 µg needs 10/(0.5 × 30) m³ = 666.7 L to reach half the action level', () => {
    expect(volumeNeeded.compute({ m: 10, L: 30, s: 0.5 })).toBeCloseTo(666.667, 3);
  });
});

describe('the work day, regulation.md F (own arithmetic)', () => {
  test.each([
    [[45], [600], 10, 45, 56.25],
    [[39], [600], 10, 39, 48.75],
    [[41], [600], 10, 41, 51.25],
    [[120, 0], [120, 360], 8, 30, 30],
    [[50], [480], 8, 50, 50],
    [[200, 20], [60, 420], 8, 42.5, 42.5],
    // 28 for 600 min: 16,800 / 480
    [[28], [600], 10, 28, 35],
  ])('%j for %j min over %i h: average %f, TWA8 %f', (C, t, h, average, expected) => {
    expect(twa8.compute({ C, t })).toBe(expected);
    expect(shiftAverage.compute({ C, t, h })).toBeCloseTo(average, 12);
  });

  test.each([
    [7, 50],
    [8, 50],
    [9, 44.44],
    [10, 40],
    [11, 36.36],
    [12, 33.33],
  ])('%i h: the average over the shift may be %f', (h, expected) => {
    expect(allowableAverage.compute({ L: 50, D: 400, h })).toBeCloseTo(expected, 2);
  });

  test('methods.md D3: 240 min < 4.2 and 240 min at 38 is 19.0 to 21.1', () => {
    const segments = {
      C: [term('µg/m³', lessThan(4.2)), term('µg/m³', 38)],
      t: [term('min', 240), term('min', 240)],
    };
    const { estimate } = twa8.of(segments);
    expect(estimate).toMatchObject({ kind: 'between', lower: 19 });
    expect(estimate.kind === 'between' && estimate.upper).toBeCloseTo(21.1, 10);
  });

  test('minutes nobody knows about: at least. 60 µg/m³ for 240 of 480 min is at least 30', () => {
    const segments = { C: [term('µg/m³', 60), term('µg/m³', atLeast(0))], t: [term('min', 240), term('min', 240)] };
    expect(twa8.of(segments).estimate).toEqual({ kind: 'atLeast', lower: 30 });
  });

  test('20 known, 120 min unknown: (50 − 20) × 480/120 = 120 would reach the PEL', () => {
    expect(averageToReach.compute({ L: 50, T: 20, u: 120 })).toBe(120);
  });

  test('600 min are 10 h; 240 and 250 min are 8 h 10', () => {
    expect(hoursWorked.compute({ t: [600] })).toBe(10);
    expect(hoursWorked.compute({ t: [240, 250] })).toBeCloseTo(8.166667, 6);
  });

  test('as many segments as concentrations, or it is a bug', () => {
    expect(() => twa8.compute({ C: [1], t: [1, 2] })).toThrow('1 concentrations for 2 segments');
  });
});

describe('by mass and flow alone', () => {
  test('14.4 µg at 1 L/min: 14.4/0.48 = 30, whatever the minutes', () => {
    expect(sampleShareOfTwa.compute({ m: 14.4, Q: 1 })).toBeCloseTo(30, 12);
  });

  test.each([
    [1, 10.4],
    [2, 20.8],
    [4, 41.7],
  ])('methods.md A9: %i cassettes below 10 µg at 2 L/min leave %f open', (n, expected) => {
    expect(dayBound.compute({ n, R: 10, Q: 2 })).toBeCloseTo(expected, 1);
  });
});

describe('planning', () => {
  test('methods.md A8: 2 mg at 2 L/min in dust of 2.0833 mg/m³ is reached in 480 min', () => {
    expect(filterLoading.compute({ M: 2, Q: 2, D: 2 / 0.96 })).toBeCloseTo(480, 10);
  });

  test.each([
    [1, 2],
    [20, 2],
    [21, 3],
    [30, 3],
    [50, 5],
    [80, 8],
  ])('methods.md B18: %i samples, %i blanks', (n, expected) => {
    expect(blanksNeeded.compute({ n, least: 2, p: 10 })).toBe(expected);
  });

  test.each([
    [10, 50, 500],
    [25, 50, 1250],
    [50, 40, 2000],
    [10, 400 / 11, 364],
    [1000, 400 / 12, 33333],
  ])('regulation.md A8: factor %i at an allowable %f holds to %i', (F, A, expected) => {
    expect(Math.round(maximumUseConcentration.compute({ F, A }))).toBe(expected);
  });
});

describe('the error of consecutive samples, methods.md C5b (own arithmetic)', () => {
  // TWA of 3.005 mg/480 L over 240 min and 2.457 mg/420 L over 210 min: half-width 0.1984 of a limit of 5 mg/m³
  const S = [0.23, 0.23];
  const X = [6260.416667, 5850];
  const t = [240, 210];
  test('half-width 0.1984', () => {
    expect(errorOfConsecutive.compute({ S, X, t, L: 5000, P: 450 })).toBeCloseTo(0.1984, 4);
  });

  test('one full-period sample at the limit has the error itself', () => {
    expect(errorOfConsecutive.compute({ S: [0.23], X: [5000], t: [480], L: 5000, P: 480 })).toBeCloseTo(0.23, 12);
  });

  test('bounds of a concentration carry through', () => {
    const working = errorOfConsecutive.of({
      S: [term('', 0.1)],
      X: [term('µg/m³', between(0, 30))],
      t: [term('min', 480)],
      L: term('µg/m³', 30),
      P: term('min', 480),
    });
    expect(working.estimate).toEqual({ kind: 'between', lower: 0, upper: 0.1 });
  });
});
