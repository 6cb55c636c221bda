import { describe, expect, test } from 'vitest';
import { blankRule } from '#reference/blankRule.ts';
import { editions } from '#reference/editions.ts';
import { chargeLasts } from '#reference/examples.ts';
import { flowTolerance } from '#reference/flowTolerance.ts';
import { methodById, methods } from '#reference/methods.ts';
import { presumedTiers, presumptionFor, ruleTasks, tierNames } from '#reference/presumption.ts';
import { respirators } from '#reference/respirators.ts';
import { isCitable } from '#reference/source.ts';
import { everydayTasks, taskById } from '#reference/tasks.ts';

const rank = (tier: (typeof tierNames)[number]): number => tierNames.indexOf(tier);

describe('what 29 CFR 1926.62(d)(2) presumes of a task', () => {
  test.each([
    ['handScraping', '1', 10],
    ['heatGunStripping', '1', 10],
    ['powerSandingCollected', '1', 10],
    ['powerSandingOpen', '2', 50],
    ['gritCleanup', '2', 50],
    ['abrasiveBlasting', '3', 1000],
    ['torchCutting', '3', 1000],
  ])('%s: tier %s, least factor %i', (task, tier, leastApf) => {
    const presumed = presumptionFor([task]);
    expect(presumed).toMatchObject({ tier, mapping: 'listed', leastApf: { value: leastApf }, becauseTaskIds: [task] });
    expect(presumed.interimProtections.map(({ key }) => key)).toEqual([
      'respirator',
      'protectiveClothing',
      'changeArea',
      'handWashing',
      'bloodTests',
      'training',
    ]);
  });

  test('the highest tier of the day stands', () => {
    const presumed = presumptionFor(['brushPainting', 'handScraping', 'powerSandingOpen']);
    expect(presumed).toMatchObject({ tier: '2', becauseTaskIds: ['powerSandingOpen'] });
  });

  test('where the mapping is open, the higher tier stands and the question is named', () => {
    const presumed = presumptionFor(['powerSanding']);
    expect(presumed).toMatchObject({ tier: '2', mapping: 'open' });
    expect(presumed.questions).toEqual([
      {
        taskId: 'powerSanding',
        question: 'isDustCollected',
        answerTaskIds: ['powerSandingCollected', 'powerSandingOpen'],
      },
    ]);
  });

  test('no answer to an open question is above the tier that stands meanwhile', () => {
    const open = everydayTasks().filter(({ mapping }) => mapping === 'open');
    expect(open.length).toBeGreaterThan(5);
    for (const { id, answerTaskIds } of open)
      for (const answer of answerTaskIds)
        expect(rank(presumptionFor([answer]).tier), `${id}: ${answer}`).toBeLessThanOrEqual(
          rank(presumptionFor([id]).tier),
        );
  });

  test('a task that nobody knows, and no task at all, are read most carefully', () => {
    expect(presumptionFor(['somethingNew'])).toMatchObject({ tier: '3', mapping: 'open' });
    expect(presumptionFor([])).toMatchObject({ tier: '3', mapping: 'open' });
  });

  test('adding a task never lowers what is presumed', () => {
    const ids = everydayTasks().map(({ id }) => id);
    for (const one of ids)
      for (const other of ids)
        expect(rank(presumptionFor([one, other]).tier)).toBe(
          Math.max(rank(presumptionFor([one]).tier), rank(presumptionFor([other]).tier)),
        );
  });

  test('the least factor of a tier is never shown as a citation', () => {
    for (const { leastApf } of presumedTiers()) if (leastApf) expect(isCitable(leastApf.source)).toBe(false);
  });

  test('the least factor is one of 29 CFR 1910.134 Table 1, and covers what is presumed', () => {
    const factors = new Set(respirators().map(({ apf }) => apf.value));
    expect([...factors].sort((a, b) => a - b)).toEqual([5, 10, 25, 50, 1000, 10000]);
    for (const { leastApf, presumedUpTo } of presumedTiers()) {
      if (leastApf) expect(factors.has(leastApf.value)).toBe(true);
      if (leastApf && presumedUpTo) expect(leastApf.value * 50).toBeGreaterThanOrEqual(presumedUpTo.value);
    }
  });
});

describe('everyday names', () => {
  test('each has an English and a Spanish name, alone in its language', () => {
    for (const language of ['en', 'es'] as const) {
      const names = everydayTasks().map((task) => task[language]);
      expect(new Set(names).size).toBe(names.length);
    }
    for (const { en, es } of everydayTasks()) expect(en).not.toBe(es);
  });

  test('each stands for tasks of the rule that exist, and its answers exist', () => {
    const listed = new Set(ruleTasks().map(({ id }) => id));
    for (const { id, ruleTaskIds, answerTaskIds } of everydayTasks()) {
      expect(
        ruleTaskIds.filter((one) => !listed.has(one)),
        id,
      ).toEqual([]);
      expect(
        answerTaskIds.filter((one) => !taskById(one)),
        id,
      ).toEqual([]);
    }
  });

  test('every task of the rule has an everyday name', () => {
    const named = new Set(everydayTasks().flatMap(({ ruleTaskIds }) => ruleTaskIds));
    expect(
      ruleTasks()
        .map(({ id }) => id)
        .filter((id) => !named.has(id)),
    ).toEqual([]);
  });

  test('flames and welding are hot work', () => {
    const hot = everydayTasks()
      .filter(({ hotWork }) => hotWork)
      .map(({ id }) => id);
    expect(hot).toEqual(['torchCutting', 'welding', 'torchBurning', 'leadBurning']);
  });
});

describe('methods, tolerance, blanks', () => {
  test('NIOSH 7082 (READ): 1-4 L/min, 200-1500 L, 2.6 µg, 2 mg, 2-10 blanks', () => {
    expect(methodById('niosh-7082')).toMatchObject({
      flow: { low: 1, high: 4, source: { mark: 'READ' } },
      volume: { low: 200, high: 1500 },
      detectionLimit: { value: 2.6 },
      maxLoad: { value: 2 },
      fieldBlanks: { low: 2, high: 10 },
      accuracy: { value: 17.6 },
    });
  });

  test('what was not read of a method is marked so, or absent', () => {
    expect(methodById('niosh-7105')?.detectionLimit?.source.mark).toBe('MEMORY');
    expect(methodById('niosh-7300')?.volume?.source.mark).toBe('MEMORY');
    expect(methodById('niosh-7301')?.volume).toBeNull();
    expect(methodById('osha-id121')?.flow).toBeNull();
    expect(methods()).toHaveLength(8);
    expect(methodById('none')).toBeUndefined();
  });

  test('the tolerance is our choice, says so, and shows the practices that disagree', () => {
    const tolerance = flowTolerance();
    expect([tolerance.averageUpTo.value, tolerance.flaggedUpTo.value, tolerance.halfWidthUpTo.value]).toEqual([
      5, 10, 5,
    ]);
    expect(isCitable(tolerance.averageUpTo.source)).toBe(false);
    expect(tolerance.positions.filter(({ source }) => isCitable(source)).length).toBeGreaterThanOrEqual(6);
  });

  test('two blanks, or a tenth of the samples', () => {
    expect([blankRule().least.value, blankRule().share.value]).toEqual([2, 10]);
  });

  test('[MEMORY] common practice: a charge lasts 12 to 14 hours, so it covers a shift of 8 with both flow checks', () => {
    expect(chargeLasts()).toMatchObject({ low: 12, high: 14, unit: 'h', source: { mark: 'MEMORY' } });
  });
});

test('editions name the day of the last reading, and differ for rules and formulas', () => {
  const { rules, formulas } = editions();
  expect(rules).toMatch(/^\d{4}-\d\d-\d\d\.[0-9a-f]{8}$/);
  expect(formulas).toMatch(/^\d+\.[0-9a-f]{8}$/);
});
