/** Limits beside the rule: told, dated, never relaxing. Values as read: 1910.1025, NIOSH, Directive 2024/869, CLAW 2002, 8 CCR 1532.1. */
import { describe, expect, test } from 'vitest';
import { actEditionOf, editionDifference } from '#findings/duties/limits/editionDifference.ts';
import { standingsBeside } from '#findings/duties/limits/limitsBeside.ts';
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import { editions } from '#reference/editions.ts';
import { noOwnLimits } from '#reference/ownLimits.ts';
import { editionText } from '#words/limitsBeside.ts';
import { site, siteId, workdayId } from '../sliceRegisters.ts';
import { result, sample, slice, workday } from '../slices.ts';

/** A sound day of 480 min at so many µg/m³: c × 0.002 m³/min × 480. */
const dayAt = (c: number, stateCode = 'TX', more: Parameters<typeof workday>[1] = {}): WorkdayFinding => {
  const book = slice({
    samples: [sample('07:00', '15:00', [result((c * 2 * 480) / 1000)])],
    day: workday([['07:00', '15:00']], more),
  });
  return findWorkday(workdayId, { ...book, sites: new Map([[siteId, site({ stateCode })]]) });
};
const said = (finding: WorkdayFinding, ids: readonly string[], own = noOwnLimits) =>
  standingsBeside(finding, ids, own).map(({ id, standings }) => [
    id,
    ...standings.map(({ which, limit, verdict }) => `${which} ${limit.value} ${verdict}`),
  ]);

describe('one day, several sets', () => {
  test('40: over the advice of 30 in Europe, under NIOSH 50, between the two of general industry', () => {
    expect(said(dayAt(40), ['eu-2024-869', 'niosh-rel', 'us-fed-gi-lead', 'uk-claw'])).toEqual([
      ['us-fed-gi-lead', 'actionLevel 30 above', 'pel 50 below'],
      ['niosh-rel', 'pel 50 below'],
      ['eu-2024-869', 'pel 30 above'],
      ['uk-claw', 'pel 150 below'],
    ]);
  });

  test('the set that judges, and ids that nobody knows, stand nowhere beside', () => {
    expect(said(dayAt(40), ['us-fed-constr-lead', 'nonsense'])).toEqual([]);
  });

  test('what keeps the rule from saying below keeps the others too', () => {
    const notAsked = dayAt(10, 'TX', { otherWork: null });
    expect(said(notAsked, ['niosh-rel'])).toEqual([['niosh-rel', 'pel 50 unresolved']]);
  });

  test('the Australian figure ended on 30 November 2026: afterwards none is shown', () => {
    const finding = dayAt(40);
    expect(said(finding, ['au-wes'])[0]).toEqual(['au-wes', 'pel 50 below']);
    expect(said({ ...finding, workOn: '2026-12-01' }, ['au-wes'])[0]).toEqual(['au-wes']);
  });

  test('California: the limit of blasting stands beside until the end of 2029, and the lower one judges', () => {
    const finding = dayAt(20, 'CA');
    expect(finding.standings.map(({ which, verdict }) => [which, verdict])).toEqual([
      ['actionLevel', 'above'],
      ['pel', 'above'],
    ]);
    expect(said(finding, [])).toEqual([['us-ca-constr-lead.abrasiveBlasting', 'pel 25 below']]);
    expect(said({ ...finding, workOn: '2030-01-01' }, [])).toEqual([]);
  });
});

describe("the firm's own limits", () => {
  test('stricter ones are told; ones that are not stricter than the rule of that day are not', () => {
    const own = { ownActionLevelUgPerM3: 15, ownPelUgPerM3: 25 };
    expect(said(dayAt(20), [], own)).toEqual([['own', 'actionLevel 15 above', 'pel 25 below']]);
    expect(said(dayAt(20, 'CA'), [], own).map(([id]) => id)).not.toContain('own');
    expect(said(dayAt(20), [], { ownActionLevelUgPerM3: 30, ownPelUgPerM3: 60 })).toEqual([]);
  });
});

describe('an act keeps its edition', () => {
  const { rules } = editions();
  const determination = {
    document: '29 CFR 1926.62',
    determinedOn: '2026-11-25',
    actionLevelUgPerM3: 30,
    pelUgPerM3: 50,
  };

  test('the same edition: nothing to say', () => {
    expect(editionDifference(actEditionOf({ rules }, determination))).toBeNull();
    expect(editionText(null)).toBeNull();
  });

  test('a later edition with the same limits says so; with others it says both', () => {
    const same = editionDifference(actEditionOf({ rules: '2020-01-01.00000000' }, determination));
    expect(same).toMatchObject({ rulesThen: '2020-01-01.00000000', rulesNow: rules, limits: [] });
    const made = {
      document: '29 CFR 1926.62',
      workOn: '2026-11-25',
      actionLevel: { limitUgPerM3: 30 },
      pel: { limitUgPerM3: 100 },
    };
    const other = editionDifference(actEditionOf({ rules: '2020-01-01.00000000' }, made));
    expect(other?.limits).toEqual([{ which: 'pel', thenUgPerM3: 100, nowUgPerM3: 50 }]);
    expect(editionText(other)).toContain('then 100\u00a0µg/m³, now 50\u00a0µg/m³');
  });

  test('a custody sheet rests on no limit', () => {
    expect(editionDifference(actEditionOf({ rules: 'x' }))?.limits).toBeNull();
  });
});
