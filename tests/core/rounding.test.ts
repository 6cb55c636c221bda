import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { displayRounded } from '#core/rounding.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));
let moreDigits = 0;
afterAll(() => console.info(`rounding: seed ${seed}, ${moreDigits} figures needed more digits`));

describe('a figure shown never contradicts its verdict', () => {
  test.each([
    [25.104166, [30, 50], 3, '25.1'],
    [49.96, [30, 50], 3, '49.96'],
    [49.99999, [30, 50], 3, '49.99999'],
    [50.04, [30, 50], 3, '50.04'],
    [30, [30, 50], 3, '30.0'],
    [30.000000001, [30, 50], 3, '30.0'],
    [29.999, [30, 50], 2, '29.999'],
    [1234.5, [50], 2, '1235'],
    [0.0123, [30], 2, '0.012'],
    [0, [30], 3, '0.00'],
    [-0.0001, [30], 2, '-0.00010'],
    // at an allowable average of 400/12: its own digits
    [33.33333333, [400 / 12], 3, '33.3'],
    [33.34, [400 / 12], 3, '33.34'],
  ])('%f with limits %j to %i digits: %s', (value, limits, digits, shown) => {
    expect(displayRounded(value, limits, digits)).toBe(shown);
  });

  test('bounds are rounded outwards, and still stay on their side of a limit', () => {
    expect(displayRounded(20.88, [], 3, 'down')).toBe('20.8');
    expect(displayRounded(20.81, [], 3, 'up')).toBe('20.9');
    expect(displayRounded(29.95, [30, 50], 3, 'up')).toBe('29.95');
    expect(displayRounded(30.04, [30, 50], 3, 'down')).toBe('30.04');
  });

  test('what is shown lies where the value lies, near 30 and 50', () => {
    const near = fc.record({
      limit: fc.constantFrom(30, 50),
      away: fc.double({ min: 1e-7, max: 0.1, noNaN: true }),
      sign: fc.constantFrom(-1, 1),
      digits: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(near, ({ limit, away, sign, digits }) => {
        const shown = displayRounded(limit + sign * away, [30, 50], digits);
        moreDigits += Number(shown.replace('.', '').length > digits);
        expect(Math.sign(Number(shown) - limit)).toBe(sign);
      }),
      { seed, numRuns: 500 },
    );
    expect(moreDigits).toBeGreaterThan(0);
  });

  test('what is no figure is not shown', () => {
    expect(() => displayRounded(Number.POSITIVE_INFINITY, [], 3)).toThrow('no figure to show');
  });
});
