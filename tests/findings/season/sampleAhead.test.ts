import fc from 'fast-check';
import { expect, test } from 'vitest';
import { axisTo } from '#core/axis.ts';
import { upperOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import { type SampleAheadInput, sampleAhead } from '#findings/season/sampleAhead.ts';
import { methodById } from '#reference/methods.ts';

const usual: SampleAheadInput = {
  methodId: 'niosh-7082',
  reportingLimitUg: 10,
  flowLPerMin: 2,
  shiftMin: 480,
  cassettesCount: 1,
  shareOfActionLevel: 1,
  dustMgPerM3: null,
  actionLevelUgPerM3: 30,
  pelUgPerM3: 50,
  on: '2026-11-25',
};
const ahead = (more: Partial<SampleAheadInput> = {}) => sampleAhead({ ...usual, ...more });
const value = ({ estimate }: Term): number => upperOf(estimate);
const keys = (more: Partial<SampleAheadInput> = {}) => ahead(more).reasons.map(({ key }) => key);

test('the day is bounded by n × RL / (0.48 × Q): 10.4, 20.8 and 41.7 for 1, 2 and 4 cassettes', () => {
  // DERIVED in the reference (methods.md A9), by hand: 10 / 0.96 = 10.41666…, twice and four times that
  for (const [cassettesCount, bound] of [
    [1, 10.416_666_666_666_7],
    [2, 20.833_333_333_333_3],
    [4, 41.666_666_666_666_7],
  ] as const) {
    const found = ahead({ cassettesCount });
    expect(value(found.dayBound)).toBeCloseTo(bound, 9);
    expect(value(found.bound)).toBeCloseTo(bound, 9);
    expect(value(found.boundOfOne)).toBeCloseTo(bound / cassettesCount, 9);
  }
  expect(ahead({ cassettesCount: 4 }).reasons).toContainEqual(
    expect.objectContaining({ key: 'splittingCostsProof', params: expect.objectContaining({ cassettesCount: 4 }) }),
  );
  expect(keys()).not.toContain('splittingCostsProof');
});

test('what the reference tells of reporting levels in 200, 960 and 120 litres', () => {
  // methods.md A9, DERIVED, by hand: 2.6 µg / 0.2 m³ = 13; 2.6 / 0.96 = 2.708; 10 / 0.96 = 10.42; 10 / 0.12 = 83.3
  const seen = (reportingLimitUg: number, sampledMin: number): number =>
    value(ahead({ reportingLimitUg, sampledMin }).leastSeen);
  expect(seen(2.6, 100)).toBeCloseTo(13, 9);
  expect(seen(2.6, 480)).toBeCloseTo(2.708_333, 5);
  expect(seen(10, 480)).toBeCloseTo(10.416_667, 5);
  expect(seen(10, 60)).toBeCloseTo(83.333_333, 5);
  // a task sample of 60 minutes lies under the method's least volume and tells nothing under the action level
  expect(keys({ sampledMin: 60 })).toEqual(expect.arrayContaining(['moreSensitiveMethod', 'volumeBelowMethod']));
  expect(keys()).not.toContain('moreSensitiveMethod');
  // limit over volume exactly 30 does not warn: 10 µg in 333.3 L; a little less air does
  expect(keys({ reportingLimitUg: 12, sampledMin: 200 })).not.toContain('moreSensitiveMethod');
  expect(keys({ reportingLimitUg: 12, sampledMin: 199 })).toContain('moreSensitiveMethod');
});

test('volumes of the methods as published: 7082 from 200 L to 1500 L, 7702 from 570 L to 1900 L', () => {
  // READ: NIOSH 7082 issue 2 p. 1, NIOSH 7702 issue 1 p. 1 (methods.md part A)
  const stands = (methodId: string, flowLPerMin: number, sampledMin: number) =>
    ahead({ methodId, flowLPerMin, sampledMin, shiftMin: 1000 }).volumeRange;
  expect(stands('niosh-7082', 2, 100)).toMatchObject({
    low: 200,
    high: 1500,
    stands: 'inside',
    source: { mark: 'READ' },
  });
  expect(stands('niosh-7082', 2, 99)?.stands).toBe('below');
  expect(stands('niosh-7082', 2, 750)?.stands).toBe('inside');
  expect(stands('niosh-7082', 2, 751)?.stands).toBe('above');
  expect(stands('niosh-7702', 1, 570)).toMatchObject({
    low: 570,
    high: 1900,
    stands: 'inside',
    source: { mark: 'READ' },
  });
  expect(stands('niosh-7702', 1, 569)?.stands).toBe('below');
  expect(stands('niosh-7702', 2, 950)?.stands).toBe('inside');
  expect(stands('niosh-7702', 2, 951)?.stands).toBe('above');
});

test('7702 prints what its volumes are for: 17 µg is 30 µg/m³ in 570 L and 9 µg/m³ in 1900 L', () => {
  // READ, same page: range from 17 µg a sample; 17 / 0.570 = 29.8, 17 / 1.900 = 8.9. At these volumes our bound must agree.
  const low = methodById('niosh-7702')?.workingRange?.low ?? 0;
  const at = (flowLPerMin: number, sampledMin: number): number =>
    value(ahead({ methodId: 'niosh-7702', reportingLimitUg: low, flowLPerMin, sampledMin, shiftMin: 480 }).leastSeen);
  expect(Math.round(at(1.1875, 480))).toBe(30);
  expect(Math.round(at(1900 / 480, 480))).toBe(9);
});

test('the minutes that it takes, and the honest answer where none suffice', () => {
  // by hand: n R T / (0.48 Q L) = 10 × 480 / (0.96 × 15) = 333.33, so 334; at 333 the bound is 15.015
  const half = ahead({ shareOfActionLevel: 0.5 }).share;
  expect(half).toMatchObject({ couldShow: 'yes', levelUgPerM3: 15, minutesNeededMin: 334 });
  expect(ahead({ shareOfActionLevel: 0.5, sampledMin: 333 }).share.couldShow).toBe('withOtherMinutes');
  // two cassettes: 20.8 is over 15 even with the whole shift. It takes RL < 0.48 × 2 × 15 / 2 = 7.2 µg or Q > 20 / 7.2 = 2.78 L/min
  const none = ahead({ shareOfActionLevel: 0.5, cassettesCount: 2 });
  expect(none.share).toMatchObject({ couldShow: 'no', minutesNeededMin: null, oneMinutesNeededMin: 334 });
  expect(value(none.share.reportingLimitNeeded)).toBeCloseTo(7.2, 9);
  expect(value(none.share.flowNeeded)).toBeCloseTo(2.777_778, 5);
  expect(none.share.flowNeededAllowed).toBe(true);
  expect(none.reasons[0]?.key).toBe('noTimeSuffices');
  // exactly at the action level is not under it: RL 28.8 µg at 2 L/min is 30
  expect(ahead({ reportingLimitUg: 28.8 }).share.couldShow).toBe('no');
  expect(ahead({ reportingLimitUg: 28.7 }).share).toMatchObject({ couldShow: 'yes', minutesNeededMin: 479 });
  // fewer litres than the method allows prove nothing, however low the sum: 200 L at 2 L/min are 100 minutes
  expect(ahead({ reportingLimitUg: 2.6, sampledMin: 60 }).share).toMatchObject({
    couldShow: 'withOtherMinutes',
    minutesNeededMin: 100,
  });
});

test('at California’s action level', () => {
  // 2 µg/m³ (8 CCR 1532.1(b), READ): by hand RL < 0.48 × 2 × 2 = 1.92 µg for one cassette; with 1 µg 1 × 480 / (0.96 × 2) = 250, so 251
  const flame = ahead();
  expect(flame.california).toMatchObject({ levelUgPerM3: 2, couldShow: 'no', source: { mark: 'READ' } });
  expect(value(flame.california.reportingLimitNeeded)).toBeCloseTo(1.92, 9);
  expect(keys()).toContain('californiaAsksMore');
  const furnace = ahead({ methodId: 'niosh-7105', reportingLimitUg: 1 });
  expect(furnace.california).toMatchObject({ couldShow: 'yes', minutesNeededMin: 251 });
  expect(furnace.reasons.map(({ key }) => key)).not.toContain('californiaAsksMore');
});

test('how long one filter lasts: 2 mg, of 7082 alone', () => {
  // methods.md A8, DERIVED: 2 mg over 0.96 m³ is 2.083 mg/m³; at that level the whole shift of 480 minutes
  expect(ahead({ dustMgPerM3: 2 / 0.96 }).loading?.changeAfterMin).toBeNull();
  // by hand: 2000 / (2 × 5) = 200 minutes, so 480 minutes are 3 cassettes, and the day is open up to 31.25 instead of 10.4
  const dusty = ahead({ dustMgPerM3: 5 });
  expect(value(dusty.loading?.minutesToLimit ?? dusty.bound)).toBeCloseTo(200, 9);
  expect(dusty.loading).toMatchObject({ changeAfterMin: 200, cassettesCount: 3, source: { mark: 'READ' } });
  expect(value(dusty.loading?.bound ?? dusty.bound)).toBeCloseTo(31.25, 9);
  expect(dusty.blocks).toEqual(['changeCassette']);
  // no load was read of 7702
  expect(ahead({ methodId: 'niosh-7702', dustMgPerM3: 5 }).loading).toBeNull();
  expect(keys({ methodId: 'niosh-7702', dustMgPerM3: 5 })).toContain('loadNotStatedByMethod');
});

test('a reporting limit under what the method finds is not to be had with it', () => {
  // NIOSH 7082 issue 2 p. 1, READ: 2.6 µg a sample
  expect(ahead({ reportingLimitUg: 2.5 }).blocks).toEqual(['limitBelowDetection']);
  expect(ahead({ reportingLimitUg: 2.6 }).blocks).toEqual([]);
});

test('the charge is what its owner says', () => {
  expect(ahead().charge).toEqual({ neededHours: 8, saidHours: null, enough: 'notSaid' });
  expect(ahead({ chargeHours: 8 }).charge.enough).toBe('yes');
  expect(keys({ chargeHours: 7.5 })).toContain('chargeTooShort');
});

test('the curves go through the same figures', () => {
  const { curves, bound } = ahead({ cassettesCount: 2, dustMgPerM3: 5 });
  expect(curves.bound.map(({ cassettesCount }) => cassettesCount)).toEqual([1, 2, 3, 4]);
  expect(curves.bound[1]?.points.at(-1)).toEqual({ durationMin: 480, value: value(bound) });
  for (const { points } of curves.bound)
    for (const [i, point] of points.entries()) {
      expect(point.value).toBeLessThanOrEqual(curves.boundAxisUgPerM3.maximum * (1 + 1e-9));
      if (i > 0) expect(point.value).toBeLessThan(points[i - 1]?.value ?? 0);
    }
  // 240 minutes each at 2 L/min and 5 mg/m³ are 2.4 mg
  expect(curves.load?.points.at(-1)).toEqual({ durationMin: 240, value: 2.4 });
});

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('a higher reporting limit, a lower flow, fewer minutes or more cassettes never lower the bound', () => {
  fc.assert(
    fc.property(
      positive(0.1, 50),
      positive(0.5, 4),
      fc.integer({ min: 30, max: 720 }),
      fc.integer({ min: 1, max: 6 }),
      positive(0.01, 1),
      (reportingLimitUg, flowLPerMin, sampledMin, cassettesCount, less) => {
        const plan = { reportingLimitUg, flowLPerMin, sampledMin, cassettesCount, shiftMin: 720 };
        const bound = value(ahead(plan).bound);
        const worse = [
          { ...plan, reportingLimitUg: reportingLimitUg / less },
          { ...plan, flowLPerMin: flowLPerMin * less },
          { ...plan, sampledMin: sampledMin * less },
          { ...plan, cassettesCount: cassettesCount + 1 },
        ];
        for (const one of worse) expect(value(ahead(one).bound)).toBeGreaterThanOrEqual(bound * (1 - 1e-12));
        expect(bound).toBeGreaterThanOrEqual(value(ahead(plan).dayBound) * (1 - 1e-12));
      },
    ),
    { numRuns: 60 },
  );
});

test('an axis holds what it is to hold, in steps of 1, 2 or 5', () => {
  expect(axisTo(55)).toEqual({ maximum: 60, ticks: [0, 10, 20, 30, 40, 50, 60] });
  expect(axisTo(60).maximum).toBe(60);
  expect(axisTo(0.7)).toEqual({ maximum: 0.8, ticks: [0, 0.2, 0.4, 0.6, 0.8] });
  expect(axisTo(480).ticks).toEqual([0, 100, 200, 300, 400, 500]);
  fc.assert(
    fc.property(positive(1e-6, 1e9), (highest) => {
      const { maximum, ticks } = axisTo(highest);
      expect(maximum).toBeGreaterThanOrEqual(highest * (1 - 1e-9));
      expect(maximum).toBeLessThanOrEqual(highest * 2.5);
      expect(ticks.length).toBeLessThanOrEqual(7);
    }),
    { numRuns: 100 },
  );
});
