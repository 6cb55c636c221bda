/** Every worked example of shared/examples/published.json, recomputed. The reading mark stands in the title. */
import { describe, expect, test } from 'vitest';
import { compareWithConfidence, compareWithLimit, type Limit } from '#core/comparison.ts';
import { exactly } from '#core/estimate.ts';
import { computeByName, formulary } from '#core/formulary.ts';
import { commonPractice, publishedExamples } from '#reference/examples.ts';

const examples = publishedExamples();

/** The examples that methods.md and the regulation sheet name as test values: none may be dropped unseen. */
const mustOccur =
  'C1 C4-Y C4-LCL C4-UCL C5-VA C5-VB C5-CA C5-CB C6 C6-gi C7 C8 C9-30 C9-9 C10-a C10-b C10-c C10-d C13 C15 C21 M1 M2'
    .split(' ')
    .concat([-1524, -1219.2, -914.4, -609.6, -304.8, -152.4, -60.96].map((m) => `C19 ${m} m`))
    .concat([500, 1000, 2000, 3000, 5000, 10000].flatMap((ft) => [`C20 ${ft} ft`, `C20 ${ft} ft, mm Hg`]));

test('no published case was dropped', () => {
  expect(examples.length).toBeGreaterThan(0);
  expect(examples.map(({ id }) => id).sort()).toEqual([...mustOccur].sort());
});

describe.each([...new Set(examples.map(({ source }) => source.title))])('%s', (title) => {
  for (const { id, source, ...example } of examples.filter((one) => one.source.title === title)) {
    test(`[${source.mark}] ${id}: ${example.title}, printed ${example.printed}`, () => {
      expect(['READ', 'READ-2']).toContain(source.mark);
      const value = computeByName(example.formula, example.inputs);
      expect(Math.abs(value - example.expected), `${value}, printed ${example.printed}`).toBeLessThanOrEqual(
        example.tolerance,
      );
    });
  }
});

test('units of the examples are those of the formulas, but for ppm, which an average carries through', () => {
  for (const { id, formula, unit } of examples) {
    if (unit !== 'ppm') expect(unit, id).toBe(formulary.get(formula)?.unit);
  }
});

const limit = (value: number): Limit => ({ id: 'published', value, unit: 'µg/m³', reachedWhen: 'above' });

test('[READ] C1, 29 CFR 1910.1000(d)(1)(ii): 81.25 against 100 is acceptable', () => {
  expect(compareWithLimit(exactly(81.25), limit(100)).crossed).toBe('no');
});

test('[READ] C4, Boss & Day 4.6.2: 6.07 against 5.0 with an error of 0.23 is a possible overexposure', () => {
  const shares = { lower: exactly(0.98), upper: exactly(1.44) };
  expect(compareWithConfidence(exactly(6.07), limit(5), shares).confidence).toBe('possiblyAbove');
});

describe('common practice without a published source', () => {
  test.each(commonPractice().map((one) => [one.source.mark, one.title, one] as const))('[%s] %s', (mark, _, one) => {
    expect(mark).toBe('MEMORY');
    expect(Math.abs(computeByName(one.formula, one.inputs) - one.expected)).toBeLessThanOrEqual(one.tolerance);
  });
});
