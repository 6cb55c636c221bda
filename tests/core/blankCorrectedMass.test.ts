import { describe, expect, test } from 'vitest';
import { massLessBlanks } from '#core/blankCorrectedMass.ts';
import { concentration } from '#core/concentration.ts';
import { type Estimate, exactly, lessThan } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';

const ug = (estimate: Estimate | number): Term =>
  recorded('mass', 'µg', typeof estimate === 'number' ? exactly(estimate) : estimate, []);
const blank = (estimate: Estimate | number, reportingLimitUg: number | null = 0.3) => ({
  mass: ug(estimate),
  reportingLimitUg,
});
const limit = ug(0.3);

test('methods.md: 24.6 µg, blanks 0.4 and 0.6, mean 0.5: 24.1 µg, and 25.10 µg/m³ in 960 L', () => {
  const corrected = massLessBlanks(ug(24.6), limit, [blank(0.4), blank(0.6)], 'no');
  expect(corrected.kind).toBe('subtracted');
  expect(corrected.mass.estimate).toEqual(exactly(24.1));
  const { estimate } = concentration.of({ m: corrected.mass, V: recorded('volume', 'L', exactly(960), []) });
  expect(estimate.kind === 'exact' && estimate.value).toBeCloseTo(25.1, 2);
});

test('never below the reporting limit by subtraction: 0.5 less 0.6 stays at 0.3', () => {
  expect(massLessBlanks(ug(0.5), limit, [blank(0.6)], 'no').mass.estimate).toEqual(exactly(0.3));
});

test('never twice', () => {
  const once = massLessBlanks(ug(24.6), limit, [blank(0.5)], 'no');
  expect(massLessBlanks(once.mass, limit, [blank(0.5)], 'no')).toMatchObject({
    kind: 'asReported',
    why: 'alreadyCorrected',
  });
});

describe('without the evidence the mass stays as reported', () => {
  test.each([
    ['the laboratory corrected', ug(24.6), limit, [blank(0.5)], 'yes', 'alreadyCorrected'],
    ['the laboratory does not say', ug(24.6), limit, [blank(0.5)], 'notStated', 'notStatedWhetherCorrected'],
    ['no blanks', ug(24.6), limit, [], 'no', 'noBlanks'],
    ['no reporting limit', ug(24.6), null, [blank(0.5)], 'no', 'noReportingLimit'],
    ['a blank without a reporting limit', ug(24.6), limit, [blank(0.5, null)], 'no', 'noReportingLimit'],
    [
      'one blank of two below the reporting limit',
      ug(24.6),
      limit,
      [blank(0.5), blank(lessThan(0.3))],
      'no',
      'blankNotANumber',
    ],
    ['a blank given as a number under its limit', ug(24.6), limit, [blank(0.2)], 'no', 'blankBelowReportingLimit'],
    ['a mass below the reporting limit', ug(lessThan(0.3)), limit, [blank(0.5)], 'no', 'massNotANumber'],
    ['a mass given as a number under its limit', ug(0.2), limit, [blank(0.5)], 'no', 'massBelowReportingLimit'],
  ] as const)('%s', (_, mass, reportingLimit, blanks, laboratory, why) => {
    expect(massLessBlanks(mass, reportingLimit, blanks, laboratory)).toEqual({ kind: 'asReported', mass, why });
  });
});
