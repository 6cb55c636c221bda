import { describe, expect, test } from 'vitest';
import { besideLimitsOn } from '#reference/besideSet.ts';
import { allLimitSets, besideSets, limitSetOn } from '#reference/limits.ts';
import { ownLimitProblems, tightened } from '#reference/ownLimits.ts';
import { isCitable } from '#reference/source.ts';
import { sets } from '#words/limitsBeside.ts';

const { set } = limitSetOn('2026-11-25', 'TX');
const own = (level: number | null, pel: number | null) => ({ ownActionLevelUgPerM3: level, ownPelUgPerM3: pel });

describe("a firm's own limits", () => {
  test.each([
    [29.97, null, []],
    [30, null, ['ownActionLevelUgPerM3 notStricter']],
    [30.03, null, ['ownActionLevelUgPerM3 notStricter']],
    [null, 49.95, []],
    [null, 50, ['ownPelUgPerM3 notStricter']],
    [null, 20, ['ownActionLevelUgPerM3 aboveOwnPel']],
    [15, 20, []],
    [25, 20, ['ownActionLevelUgPerM3 aboveOwnPel']],
  ])('action level %s, limit %s: %o', (level, pel, expected) => {
    expect(ownLimitProblems(own(level, pel), set).map(({ field, key }) => `${field} ${key}`)).toEqual(expected);
  });

  test('they tighten and never relax; the dose of a long day follows', () => {
    const tight = tightened(set, own(15, 25));
    expect([tight.actionLevel.value, tight.pel.value]).toEqual([15, 25]);
    expect(tight.extendedShift).toMatchObject({ dose: { value: 200 } });
    expect(tightened(set, own(40, 60))).toBe(set);
    expect(tightened(set, own(null, 20)).actionLevel.value).toBe(20);
    const california = limitSetOn('2026-11-25', 'CA').set;
    expect(tightened(california, own(15, 25))).toBe(california);
  });
});

describe('sets beside the rule', () => {
  test('no figure is shown that rests on memory', () => {
    for (const file of besideSets())
      for (const { source } of besideLimitsOn('2026-11-25', file)) expect(isCitable(source), file.id).toBe(true);
  });

  test('figures as they were read', () => {
    const figures = Object.fromEntries(
      besideSets().map((file) => [file.id, besideLimitsOn('2026-11-25', file).map(({ value }) => value)]),
    );
    expect(figures).toEqual({
      'us-fed-gi-lead': [30, 50],
      'us-ca-gi-lead': [2, 10],
      'us-wa-constr-lead': [30],
      'us-mi-constr-lead': [30, 50],
      'niosh-rel': [50],
      'acgih-tlv': [50],
      'eu-2024-869': [30],
      'uk-claw': [150],
      'au-wes': [50],
    });
  });

  test('each set says what was read of it and what was not, and no sentence is left over', () => {
    const ids = [...allLimitSets(), ...besideSets()].map(({ id }) => id);
    expect(Object.keys(sets).sort()).toEqual([...ids].sort());
  });
});
