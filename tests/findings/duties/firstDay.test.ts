/** What the crew wears tomorrow with no data: 29 CFR 1926.62(d)(2)(i) to (v), 1910.134 Table 1, 8 CCR 1532.1 as read. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findFirstDay } from '#findings/duties/protecting/firstDay.ts';
import { isCitable } from '#reference/source.ts';
import { states } from '#reference/states.ts';
import { everydayTasks } from '#reference/tasks.ts';

const ask = (taskIds: readonly string[], more: Partial<Parameters<typeof findFirstDay>[0]> = {}) =>
  findFirstDay({ stateCode: 'NY', taskIds, on: '2026-11-26', ...more });
const holdsTo = (taskIds: readonly string[], shiftHours: number): number => {
  const { estimate } = ask(taskIds, { shiftHours }).holdsTo?.working ?? { estimate: null };
  return estimate?.kind === 'exact' ? Math.round(estimate.value) : Number.NaN;
};

describe('29 CFR 1926.62(d)(2)', () => {
  test('(i) scraping: above 50 up to 500, factor 10, (v)(A) to (F), the sign, until documented not above 50', () => {
    const first = ask(['handScraping']);
    expect(first.presumption).toMatchObject({ tier: '1', leadTakenAsPresent: true });
    expect(first.levels).toEqual({ aboveUgPerM3: 50, upToUgPerM3: 500, ofState: false });
    expect(first.advice).toMatchObject({ leastApf: 10, from: 'presumed' });
    expect(first.presumption.interimProtections.map(({ paragraph }) => paragraph)).toEqual([
      '(d)(2)(v)(A)',
      '(d)(2)(v)(B)',
      '(d)(2)(v)(C)',
      '(d)(2)(v)(D)',
      '(d)(2)(v)(E)',
      '(d)(2)(v)(F)',
    ]);
    expect(first.sign).toMatchObject({ paragraph: '(m)(1)(i)', source: { mark: 'READ' } });
    expect(first.endsAt).toEqual({ levelUgPerM3: 50, paragraph: '(d)(2)(i)' });
  });

  test('(iii), (iv): more than 500, more than 2,500; a task not listed presumes nothing and needs no sign', () => {
    expect(ask(['powerSandingOpen']).endsAt).toEqual({ levelUgPerM3: 500, paragraph: '(d)(2)(iii)' });
    expect(ask(['welding']).endsAt).toEqual({ levelUgPerM3: 2500, paragraph: '(d)(2)(iv)' });
    expect(ask(['glazing'])).toMatchObject({ sign: null, endsAt: null, holdsTo: null });
  });

  test('no task, or one nobody knows, is read as the most', () => {
    expect(ask([]).advice.leastApf).toBe(1000);
    expect(ask(['somethingNew']).advice.leastApf).toBe(1000);
  });

  test('only what was read is cited: a condition of memory and a factor of ours are not', () => {
    const { conditions, presumption } = ask(['handScraping']);
    expect(conditions.filter(({ source }) => !isCitable(source)).map(({ key }) => key)).toEqual(['medicalEvaluation']);
    expect(presumption.leastApf && isCitable(presumption.leastApf.source)).toBe(false);
  });
});

test.each([
  // factor times 400 / h: 25 x 40, 25 x 400/12, 1000 x 40
  [['handScraping'], 8, 500],
  [['handScraping'], 10, 1000],
  [['handScraping'], 12, 833],
  [['powerSandingOpen'], 8, 2500],
  [['powerSandingOpen'], 10, 40_000],
])('(c)(2) %o over %i h: what is worn holds to %i', (tasks, h, expected) => {
  expect(holdsTo(tasks, h)).toBe(expected);
});

describe('8 CCR 1532.1', () => {
  test('blasting: 25 until the end of 2029, 5 h a day before an assessment; then 10 and 2 h', () => {
    const now = ask(['abrasiveBlasting'], { stateCode: 'CA', on: '2029-12-31' });
    expect(now.taskLimits).toMatchObject([
      { key: 'abrasiveBlasting', value: 25, unit: 'µg/m³', untilOn: '2029-12-31', thenValue: 10 },
      { key: 'dryBlastingBeforeAssessment', value: 5, unit: 'h', untilOn: '2029-12-31', thenValue: 2 },
    ]);
    const later = ask(['abrasiveBlasting'], { stateCode: 'CA', on: '2030-01-01' });
    expect(later.taskLimits).toMatchObject([
      { value: 10, untilOn: null, thenValue: null },
      { value: 2, untilOn: null, thenValue: null },
    ]);
    expect(ask(['handScraping'], { stateCode: 'CA' }).taskLimits).toEqual([]);
  });

  test('its levels are multiples of its own PEL, and it is not held with duties', () => {
    const first = ask(['handScraping'], { stateCode: 'CA' });
    expect(first.levels).toEqual({ aboveUgPerM3: 10, upToUgPerM3: 100, ofState: true });
    expect(first.limits).toMatchObject({ heldComplete: false, governs: 'statePlanPartlyHeld' });
  });
});

test('every task in every state gets an answer, and one more task or a longer shift never asks for less', () => {
  const ids = everydayTasks().map(({ id }) => id);
  const codes = states().map(({ code }) => code);
  fc.assert(
    fc.property(
      fc.constantFrom(...ids),
      fc.constantFrom(...ids),
      fc.constantFrom(...codes),
      fc.integer({ min: 8, max: 16 }),
      (one, other, stateCode, shiftHours) => {
        const floor = (tasks: readonly string[], h: number): number =>
          ask(tasks, { stateCode, shiftHours: h }).advice.floorApf ?? 0;
        expect(floor([one, other], shiftHours)).toBeGreaterThanOrEqual(floor([one], shiftHours));
        expect(floor([one], shiftHours)).toBeGreaterThanOrEqual(floor([one], 8));
      },
    ),
    { seed: 20261125 },
  );
});
