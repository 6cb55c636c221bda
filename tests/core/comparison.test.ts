import { describe, expect, test } from 'vitest';
import { compareWithConfidence, compareWithLimit, type Limit, sideOf, straddles } from '#core/comparison.ts';
import { atLeast, between, exactly, lessThan } from '#core/estimate.ts';

const al: Limit = { id: 'actionLevel', value: 30, unit: 'µg/m³', reachedWhen: 'atOrAbove' };
const pel: Limit = { id: 'pel', value: 50, unit: 'µg/m³', reachedWhen: 'above' };

describe('the limit own sign decides when exactly at', () => {
  test('29 CFR 1926.62(b): exactly 30 reaches the action level', () => {
    expect(compareWithLimit(exactly(30), al)).toMatchObject({
      standing: 'exactlyAt',
      crossed: 'yes',
      atOrAbove: 'yes',
    });
  });

  test('29 CFR 1926.62(c)(1), (d)(8)(ii): exactly 50 is not above the PEL, and owes the statement', () => {
    expect(compareWithLimit(exactly(50), pel)).toMatchObject({
      standing: 'exactlyAt',
      crossed: 'no',
      atOrAbove: 'yes',
    });
  });

  test('one part in 10^9 counts as exactly at, four parts do not', () => {
    expect(sideOf(50 * (1 + 0.9e-9), 50)).toBe(0);
    expect(sideOf(50 * (1 - 0.9e-9), 50)).toBe(0);
    expect(sideOf(50 * (1 + 4e-9), 50)).toBe(1);
    expect(sideOf(50 * (1 - 4e-9), 50)).toBe(-1);
  });
});

describe('what is not known on which side it lies is unresolved, never below', () => {
  test.each([
    ['between 19.0 and 21.1 (methods.md D3)', between(19, 21.1), 'no', 'no'],
    ['between 25 and 35', between(25, 35), 'unresolved', 'no'],
    ['between 25 and 60', between(25, 60), 'unresolved', 'unresolved'],
    ['between 30 and 50', between(30, 50), 'yes', 'no'],
    ['between 40 and 60', between(40, 60), 'yes', 'unresolved'],
    ['between 51 and 60', between(51, 60), 'yes', 'yes'],
    ['less than 30: its upper end is the limit itself', lessThan(30), 'unresolved', 'no'],
    ['at least 10', atLeast(10), 'unresolved', 'unresolved'],
    ['at least 30', atLeast(30), 'yes', 'unresolved'],
    ['at least 50', atLeast(50), 'yes', 'unresolved'],
    ['at least 50.1', atLeast(50.1), 'yes', 'yes'],
  ] as const)('%s', (_, estimate, reached, exceeded) => {
    expect(compareWithLimit(estimate, al).crossed).toBe(reached);
    expect(compareWithLimit(estimate, pel).crossed).toBe(exceeded);
  });

  test('at least 50 owes the statement of the notice, though whether it is above is open', () => {
    expect(compareWithLimit(atLeast(50), pel).atOrAbove).toBe('yes');
  });
});

describe("the laboratory's error adds caution and relieves nothing", () => {
  const shares = (lower: number, upper: number) => ({ lower: exactly(lower), upper: exactly(upper) });

  test('no error given: nothing is made up', () => {
    expect(compareWithConfidence(exactly(45), pel, null)).toMatchObject({
      confidence: 'notGiven',
      crossedWithCaution: 'no',
    });
  });

  test('45 with an error of 0.2 (LCL 0.7, UCL 1.1): not above by the figure, not shown below either', () => {
    expect(compareWithConfidence(exactly(45), pel, shares(0.7, 1.1))).toMatchObject({
      crossed: 'no',
      confidence: 'possiblyAbove',
      crossedWithCaution: 'unresolved',
    });
  });

  test('55 with an error of 0.2 (LCL 0.9, UCL 1.3): above stays above', () => {
    expect(compareWithConfidence(exactly(55), pel, shares(0.9, 1.3))).toMatchObject({
      crossed: 'yes',
      confidence: 'possiblyAbove',
      crossedWithCaution: 'yes',
    });
  });

  test('an upper limit of exactly 1 is no violation of a PEL (Boss & Day 4.6.1: UCL <= 1), but reaches an action level', () => {
    expect(compareWithConfidence(exactly(40), pel, shares(0.6, 1)).confidence).toBe('below');
    expect(compareWithConfidence(exactly(24), al, shares(0.6, 1))).toMatchObject({
      confidence: 'possiblyAbove',
      crossedWithCaution: 'unresolved',
    });
  });

  test('bounds: the lower limit from the lower end, the upper limit from the upper end', () => {
    const qualified = compareWithConfidence(between(0, 40), pel, {
      lower: between(-0.2, 0.6),
      upper: between(0.2, 1.1),
    });
    expect(qualified).toMatchObject({ crossed: 'no', confidence: 'possiblyAbove' });
  });
});

test('two figures straddle a limit when either answer differs', () => {
  expect(straddles(exactly(29), exactly(31), al)).toBe(true);
  expect(straddles(exactly(49), exactly(50), pel)).toBe(true);
  expect(straddles(exactly(31), exactly(49), pel)).toBe(false);
});

test('nothing is compared with what is no number', () => {
  expect(() => sideOf(Number.NaN, 30)).toThrow('cannot compare');
});
