/** Attempts to lower a figure by what comes from the laboratory: reports, field blanks, "less than". Facts in, values by hand. */
import { describe, expect, it } from 'vitest';
import type { FactBody, NewFact } from '#records/fact.ts';
import { at, boxPacked, corrects, ids, journal, office, phone, wanted } from '../records/facts.ts';
import {
  blankOpened,
  dayFrom,
  dayOf,
  flow,
  keysOf,
  result,
  sampleKey,
  site,
  soundDay,
  standing,
} from './carefulStory.ts';

const withoutResult = (massUg = 24): NewFact[] => soundDay(massUg).filter(({ kind }) => kind !== 'resultReceived.v1');
const voids = (sampleId: string = ids.one) =>
  wanted('sampleVoided.v1', { sampleId }, { why: 'found open', at: at('21:00') });

describe('two reports for one cassette', () => {
  const later = { reportNumber: 'R-2', reportedOn: '2026-12-05', receivedOn: '2026-12-06' };

  it('a report that is shown to be later judges; that they differ is told', () => {
    const day = dayOf([...withoutResult(), result(60), result(24, later)]);
    expect(day.twa8?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(25, 9) });
    expect(keysOf(day.reasons)).toContain('resultsDiffer');
    expect(standing(day, 'actionLevel').verdict).toBe('below');
  });

  it.each([
    ['of one day', { ...later, reportedOn: '2026-12-01' }],
    ['of which one bears no date', { ...later, reportedOn: null }],
  ])('two reports %s: nobody can say which replaces which, so the heavier judges, whoever typed last', (_, more) => {
    for (const [first, last] of [
      [result(60), result(24, more)],
      [result(24, more), result(60)],
    ] as const) {
      const day = dayOf([...withoutResult(), first, last]);
      expect(standing(day, 'pel').crossed).toBe('yes');
      expect(keysOf(day.blocksBelow)).toEqual(['reportOrderNotKnown']);
    }
  });

  it('two reports that bear no date at all and say the same: no doubt', () => {
    const day = dayOf([
      ...withoutResult(),
      result(24, { reportedOn: null }),
      result(24, { ...later, reportedOn: null }),
    ]);
    expect(keysOf(day.blocksBelow)).toEqual([]);
  });
});

describe('one report keyed in on two devices', () => {
  const twice = (onPhone: NewFact, inOffice: NewFact) =>
    dayFrom([...journal([...withoutResult(), onPhone], phone), ...journal([inOffice], office)]);

  it.each<[string, Partial<FactBody<'resultReceived.v1'>>]>([
    ['wall deposit included, and not', { wallDeposit: 'no' }],
    ['corrected for blanks, and not', { blankCorrected: 'no' }],
    ['a reporting limit, and none', { reportingLimitUg: null }],
    ['a method, and another', { methodId: 'niosh-7300' }],
  ])('with %s: a conflict, and below is not said', (_, more) => {
    for (const day of [twice(result(24), result(24, more)), twice(result(24, more), result(24))]) {
      expect(keysOf(day.blocksBelow)).toContain('correctionsConflict');
      expect(standing(day, 'actionLevel').crossed).toBe('unresolved');
    }
  });

  it('a measured mass that crosses stays crossed beside a "less than" that might not', () => {
    for (const day of [twice(result(60), result({ lessThanUg: 65 })), twice(result({ lessThanUg: 65 }), result(60))])
      expect(standing(day, 'pel').crossed).toBe('yes');
  });
});

describe('field blanks', () => {
  const blank = 'c00000000090';
  const uncorrected = (massUg: number) => [
    ...withoutResult(),
    result(massUg, { blankCorrected: 'no', reportingLimitUg: 0.5 }),
  ];
  const blankResult = (massUg: number, more: Partial<FactBody<'resultReceived.v1'>> = {}) =>
    result(massUg, { sampleId: blank, reportingLimitUg: 0.3, ...more });
  const mass = (facts: readonly NewFact[]) => {
    const estimate = dayOf(facts).samples[0]?.mass?.estimate;
    return estimate?.kind === 'exact' ? estimate.value : Number.NaN;
  };

  it('is subtracted when every condition is met: 29 − 0.6 = 28.4', () => {
    expect(mass([...uncorrected(29), blankOpened(blank), blankResult(0.6)])).toBeCloseTo(28.4, 9);
  });

  it.each<[string, readonly NewFact[]]>([
    ['is void', [blankResult(0.6), voids(blank)]],
    [
      'has two reports that differ',
      [blankResult(0.2), blankResult(9, { reportNumber: 'R-2', reportedOn: '2026-12-05' })],
    ],
    ['has no result yet', []],
    ['is below its own limit', [blankResult(0.2)]],
    [
      'bears the number of another cassette',
      [blankResult(0.6), blankOpened('c10000000090'), blankResult(0.6, { sampleId: 'c10000000090' })],
    ],
  ])('nothing is subtracted when the blank %s', (_, more) => {
    expect(mass([...uncorrected(29), blankOpened(blank), ...more])).toBe(29);
  });

  it('two devices correct the blank to two masses: the heavier one is not taken off', () => {
    const onPhone = journal([...uncorrected(29), blankOpened(blank), blankResult(0.6)], phone);
    const id = onPhone.find(({ text }) => text.includes(blank) && text.includes('resultReceived'))?.id ?? '';
    const heavier = (massUg: number) =>
      corrects(id, '/mass', { kind: 'measured', massUg: 0.6 }, { kind: 'measured', massUg }, null, [`sample:${blank}`]);
    const day = dayFrom([...onPhone, ...journal([heavier(5)], office), ...journal([heavier(8)], 'xxxxxxxxxxx1')]);
    expect(day.samples[0]?.mass?.estimate).toEqual({ kind: 'exact', value: 29 });
  });

  it('a cassette of the box that is not in the book may be a blank: nothing is subtracted', () => {
    const packed = boxPacked([ids.one, blank, 'c00000000077']);
    expect(mass([...uncorrected(29), blankOpened(blank), blankResult(0.6), packed])).toBe(29);
  });

  it('subtraction never goes below the reporting limit, and exactly at it nothing is taken off', () => {
    expect(mass([...uncorrected(0.5), blankOpened(blank), blankResult(0.6)])).toBe(0.5);
    expect(mass([...uncorrected(0.9), blankOpened(blank), blankResult(0.6)])).toBe(0.5);
  });
});

describe('less than', () => {
  const lessThan = (lessThanUg: number, reportingLimitUg: number | null) =>
    dayOf([...withoutResult(), result({ lessThanUg }, { reportingLimitUg })]);

  it('less than the limit that the report states: bounds from mass to verdict', () => {
    // 5 / 0.96
    expect(lessThan(5, 5).twa8?.estimate).toEqual({ kind: 'between', lower: 0, upper: expect.closeTo(5.2083, 3) });
    expect(standing(lessThan(5, 5), 'actionLevel').verdict).toBe('below');
    expect(standing(lessThan(5, null), 'actionLevel').verdict).toBe('below');
  });

  it('less than 5, and a reporting limit of 40 on the same report: the larger one bounds it, and it is a doubt', () => {
    const day = lessThan(5, 40);
    expect(day.twa8?.estimate).toEqual({ kind: 'between', lower: 0, upper: expect.closeTo(41.667, 3) });
    expect(keysOf(day.blocksBelow)).toEqual(['massBelowItsLimit']);
  });

  it('a measured mass below its own stated limit proves nothing low', () => {
    const day = dayOf([...withoutResult(), result(1, { reportingLimitUg: 2 })]);
    expect(keysOf(day.blocksBelow)).toEqual(['massBelowItsLimit']);
  });
});

describe('void', () => {
  it('a void and then a result: there is still at least so much', () => {
    const day = dayOf([...withoutResult(), voids(), result(60)]);
    expect(day.twa8?.estimate).toEqual({ kind: 'atLeast', lower: expect.closeTo(62.5, 9) });
    expect(standing(day, 'pel').crossed).toBe('yes');
    expect(standing(dayOf([...withoutResult(), voids(), result(10)]), 'actionLevel').crossed).toBe('unresolved');
  });

  it('a void sample whose flow changed too much: at least over the highest flow of the method', () => {
    const facts = [...soundDay(120), voids()].map((fact) =>
      fact.kind === 'flowChecked.v1' && fact.body.purpose === 'after'
        ? flow('f00000000002', 'after', '20:10', 1)
        : fact,
    );
    // 120 / (0.48 × 4): NIOSH 7082 (READ) allows 4 L/min at most
    expect(dayOf(facts).twa8?.estimate).toEqual({ kind: 'atLeast', lower: expect.closeTo(62.5, 9) });
    expect(standing(dayOf(facts), 'pel').crossed).toBe('yes');
  });
});

describe('what the figure rests on', () => {
  it('two corrections of the mass contradict: the heavier judges, below is not said, above is', () => {
    const entries = journal(soundDay(24), phone);
    const id = entries.find(({ text }) => text.includes('resultReceived'))?.id ?? '';
    const to = (massUg: number) =>
      corrects(id, '/mass', { kind: 'measured', massUg: 24 }, { kind: 'measured', massUg }, null, [sampleKey]);
    for (const [a, b] of [
      [12, 60],
      [60, 12],
    ] as const) {
      const day = dayFrom([...entries, ...journal([to(a)], office), ...journal([to(b)], 'xxxxxxxxxxx1')]);
      expect(standing(day, 'pel').crossed).toBe('yes');
      expect(keysOf(day.blocksBelow)).toEqual(['correctionsConflict']);
    }
  });

  it('the state of the site is not a detail: California holds 24 µg/m³ to be far above its limits', () => {
    const facts = soundDay(24).map((fact) => (fact.kind === 'siteAdded.v1' ? site({ stateCode: 'CA' }) : fact));
    expect(standing(dayOf(facts), 'pel').crossed).toBe('yes');
    expect(dayOf(facts).ruleHeld).toBe(false);
  });
});
