import { describe, expect, test } from 'vitest';
import { compareWithLimit } from '#core/comparison.ts';
import { exactly } from '#core/estimate.ts';
import { valueOn } from '#reference/dated.ts';
import { setOn } from '#reference/limitSet.ts';
import { allLimitSets, limitSetOn, limitsOf } from '#reference/limits.ts';
import type { ReadSource } from '#reference/source.ts';
import { states } from '#reference/states.ts';

describe('US federal construction lead, 29 CFR 1926.62 (2015 annual edition)', () => {
  const { set, heldComplete, governs } = limitSetOn('2026-11-25', 'TX');

  test('action level 30, reached at or above; PEL 50, exceeded above; both over 480 min', () => {
    expect(set.id).toBe('us-fed-constr-lead');
    expect({ heldComplete, governs }).toEqual({ heldComplete: true, governs: 'federal' });
    const { actionLevel, pel } = limitsOf(set);
    expect(actionLevel).toMatchObject({ value: 30, unit: 'µg/m³', reachedWhen: 'atOrAbove', twaMin: { value: 480 } });
    expect(pel).toMatchObject({ value: 50, unit: 'µg/m³', reachedWhen: 'above', twaMin: { value: 480 } });
    expect(compareWithLimit(exactly(30), actionLevel).crossed).toBe('yes');
    expect(compareWithLimit(exactly(50), pel).crossed).toBe('no');
  });

  test('(c)(2): 400 µg·h/m³ over the hours worked above 8, and the action level is not adjusted', () => {
    expect(set.extendedShift).toMatchObject({
      kind: 'doseOverHours',
      dose: { value: 400 },
      aboveHours: { value: 8 },
      adjustsActionLevel: false,
    });
  });

  test('(d)(6), (d)(8), (d)(3)(iii), (d)(9), (n): months, days and years as read', () => {
    expect(set.duties?.bands.map(({ everyMonths }) => everyMonths.value)).toEqual([6, 3]);
    expect(set.duties?.stop).toMatchObject({
      consecutive: { value: 2 },
      daysApart: { value: 7 },
      each: 'belowActionLevel',
    });
    expect(set.duties?.notice).toMatchObject({ days: { value: 5 }, dayType: 'working', statementWhen: 'atOrAbovePel' });
    expect(set.duties?.notice.dayTypeSource.mark).toBe('DERIVED');
    expect(set.duties?.historical.months.value).toBe(12);
    expect(set.duties?.accuracy).toMatchObject({ pct: { value: 25 }, confidencePct: { value: 95 } });
    expect(set.duties?.retention.years.value).toBe(30);
  });

  test('in force from 3 June 1993: the day before, nothing is promised', () => {
    expect(limitSetOn('1993-06-03', 'TX')).toMatchObject({ heldComplete: true, governs: 'federal' });
    expect(limitSetOn('1993-06-02', 'TX')).toMatchObject({ heldComplete: false, governs: 'beforeHeldText' });
  });
});

describe('a state with its own plan: figures, no list of duties, and whose rule governs', () => {
  test('California from 1 January 2025: 2 and 10; the day before, the same figures and no promise', () => {
    const on = limitSetOn('2025-01-01', 'CA');
    expect(limitsOf(on.set)).toMatchObject({ actionLevel: { value: 2 }, pel: { value: 10 } });
    expect(on).toMatchObject({ heldComplete: false, governs: 'statePlanPartlyHeld', set: { duties: null } });
    expect(limitSetOn('2024-12-31', 'CA')).toMatchObject({ heldComplete: false, governs: 'beforeHeldText' });
  });

  test.each(['WA', 'MI', 'OR', 'AZ', 'PR'])('%s: federal figures, not held complete', (code) => {
    const here = limitSetOn('2026-11-25', code);
    expect(here).toMatchObject({ heldComplete: false, governs: 'statePlan', set: { id: 'us-fed-constr-lead' } });
    expect(['READ', 'READ-2']).toContain(here.source.mark);
  });

  test('New York: the plan is for public employees only', () => {
    expect(limitSetOn('2026-11-25', 'NY')).toMatchObject({ heldComplete: true, governs: 'federalForPrivateFirms' });
  });

  test('a code that is no state: figures only', () => {
    expect(limitSetOn('2026-11-25', 'ZZ')).toMatchObject({ heldComplete: false, governs: 'unknownState' });
  });

  test('osha.gov/stateplans counts 22 plans that cover private firms and 7 that do not', () => {
    const plans = (plan: string) => states().filter((one) => one.plan === plan).length;
    expect(plans('privateAndPublic')).toBe(22);
    expect(plans('publicOnly')).toBe(7);
    expect(states()).toHaveLength(56);
    expect(new Set(states().map(({ code }) => code)).size).toBe(56);
  });
});

describe('a value picked by its date', () => {
  const cited: ReadSource = { title: 'A change made up for this test', readOn: null, mark: 'DERIVED' };
  const values = [
    { from: '2020-01-01', to: '2026-12-31', value: 50, source: cited },
    { from: '2027-01-01', to: null, value: 10, source: cited },
  ];

  test.each([
    ['2019-12-31', 50],
    ['2020-01-01', 50],
    ['2026-12-31', 50],
    ['2027-01-01', 10],
    ['2060-01-01', 10],
  ])('%s: %i', (on, expected) => {
    expect(valueOn(on, values).value).toBe(expected);
  });

  test('a whole set on the day before and on the day of a change', () => {
    const [federal] = allLimitSets();
    if (!federal) throw new Error('no limit set');
    const changing = { ...federal, pel: { ...federal.pel, values } };
    expect(setOn('2026-12-31', changing).pel).toMatchObject({ value: 50, from: '2020-01-01', to: '2026-12-31' });
    expect(setOn('2027-01-01', changing).pel).toMatchObject({ value: 10, from: '2027-01-01', to: null });
  });
});
