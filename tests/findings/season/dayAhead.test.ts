import { expect, test } from 'vitest';
import { lowerOf, upperOf } from '#core/estimate.ts';
import { geometricSd } from '#core/geometricSd.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { type DayAheadInput, dayAhead } from '#findings/season/dayAhead.ts';
import { seasonPicture } from '#findings/season/picture.ts';
import { type Day, jobBook, sampleIdOf, tess, vic } from '../duties/jobBook.ts';
import { factId, site } from '../sliceRegisters.ts';

const today = '2026-12-20';
const bookOf = (days: readonly Day[], more: Parameters<typeof jobBook>[0] = {}) => {
  const book = jobBook({ days, ...more });
  return { book, duties: findDuties(book, today) };
};
const predict = (days: readonly Day[], pieces: DayAheadInput['pieces'], more: Partial<DayAheadInput> = {}) => {
  const { book, duties } = bookOf(days);
  return dayAhead({ pieces, stateCode: 'TX', on: today, ...more }, book, duties);
};

/** Each a full shift of 480 minutes, so that the average is what was found while it was worn. */
const scraping = (workOn: string, averageUgPerM3: number, more: Partial<Day> = {}): Day => ({
  workOn,
  averageUgPerM3,
  ...more,
});
const setUp = (workOn: string, averageUgPerM3: number): Day => ({ workOn, averageUgPerM3, taskIds: ['setUp'] });
const doubtful = { voided: { why: 'fell into a bucket', factId: factId() } };

test('the geometric standard deviation as others publish it', () => {
  // {0.043, 0.236, 0.057, 0.016}: 3.04 (READ, statistics.md 5); 10, 20, 40 lie ln 2 apart, so 2 by hand
  expect(geometricSd.compute({ C: [0.043, 0.236, 0.057, 0.016] })).toBeCloseTo(3.04, 2);
  expect(geometricSd.compute({ C: [10, 20, 40] })).toBeCloseTo(2, 12);
  // NIOSH HETA 89-052, 15 air-lead results: 5.6942 (COMPUTED in statistics.md from the published values)
  const lead = [200, 120, 15, 7, 8, 6, 48, 61, 380, 80, 29, 1000, 350, 1400, 110];
  expect(geometricSd.compute({ C: lead })).toBeCloseTo(5.6942, 4);
});

test('two pieces of known work, by hand', () => {
  const days = [scraping('2026-11-10', 40), scraping('2026-11-11', 60), setUp('2026-11-12', 4)];
  const found = predict(days, [
    { taskIds: ['handScraping'], durationMin: 360 },
    { taskIds: ['setUp'], durationMin: 120 },
  ]);
  // (40 × 360 + 4 × 120) / 480 = 31 and (60 × 360 + 4 × 120) / 480 = 46
  expect(found.lowerUgPerM3).toBeCloseTo(31, 9);
  expect(found.upperUgPerM3).toBeCloseTo(46, 9);
  expect(found).toMatchObject({
    kind: 'prediction',
    knownCount: 2,
    presumedCount: 0,
    durationMin: 480,
    longDay: false,
  });
  expect(found.mayReach).toEqual({ actionLevel: true, pel: false });
  expect(found.pieces[0]?.spread).toMatchObject({ soundCount: 2, geometricSd: null });
  expect(found.pieces[0]?.samples.map(({ sampleId }) => sampleId)).toEqual([
    sampleIdOf(tess, '2026-11-10'),
    sampleIdOf(tess, '2026-11-11'),
  ]);
  // what is presumed of scraping, (d)(2)(i), stands: a prediction ends no presumption
  expect(found.advice.leastApf).toBe(10);
});

test('the highest counts for protection, not the middle', () => {
  const days = [scraping('2026-11-10', 40), scraping('2026-11-11', 80), scraping('2026-11-12', 600)];
  const found = predict(days, [{ taskIds: ['handScraping'], durationMin: 480 }]);
  // 600 is 12 times the PEL of 50: the next factor of 29 CFR 1910.134 Table 1 after 10 is 25. Their middle, 240, would need but 10
  expect(found.advice.leastApf).toBe(25);
  expect(found.pieces[0]?.spread?.geometricSd).not.toBeNull();
  // exp of the sample deviation (n - 1) of ln 40, ln 80, ln 600: 4.083, reckoned apart with Python's math
  const gsd = found.pieces[0]?.spread?.geometricSd;
  expect(gsd ? upperOf(gsd.estimate) : 0).toBeCloseTo(4.0827, 4);
});

test('what is presumed alone asks for what the rule says of it, as where a worker is prepared', () => {
  // 29 CFR 1926.62(d)(2)(i): up to ten times the PEL; 1910.134(d)(3)(i)(A), Table 1: a half mask is 10. No figure was found at its edge.
  expect(predict([], [{ taskIds: ['handScraping'], durationMin: 240 }]).advice.leastApf).toBe(10);
  // Over ten hours 400 / 10 = 40 may be reached, and 500 / 40 = 12.5: the next of the table is 25.
  expect(predict([], [{ taskIds: ['handScraping'], durationMin: 600 }]).advice.leastApf).toBe(25);
});

test('work of which nothing is known is never nothing', () => {
  // manual scraping is presumed above 50 and up to 500: 500 × 240 / 480 = 250
  const presumed = predict([setUp('2026-11-12', 4)], [{ taskIds: ['handScraping'], durationMin: 240 }]);
  expect(presumed.pieces[0]?.from).toBe('presumed');
  expect(presumed.upperUgPerM3).toBeCloseTo(250, 9);
  expect(presumed.mayReach.pel).toBe(true);
  // abrasive blasting: above 2500, and nobody says up to where
  const open = predict([], [{ taskIds: ['abrasiveBlasting'], durationMin: 480 }]);
  expect(open.upperUgPerM3).toBeNull();
  expect(open.lowerUgPerM3).toBeCloseTo(2500, 9);
  expect(open.advice.floorApf).toBeGreaterThanOrEqual(1000);
  // not on the list and never measured
  const unknown = predict([], [{ taskIds: ['setUp'], durationMin: 30 }]);
  expect(unknown).toMatchObject({ notKnownCount: 1, upperUgPerM3: null, mayReach: { actionLevel: true, pel: true } });
  // a known piece beside it does not bound the day
  const both = predict(
    [scraping('2026-11-10', 4)],
    [
      { taskIds: ['handScraping'], durationMin: 450 },
      { taskIds: ['setUp'], durationMin: 30 },
    ],
  );
  expect(both.upperUgPerM3).toBeNull();
  expect(predict([], [])).toMatchObject({ twa8: null, pieces: [] });
});

test('only samples of these tasks alone, in such a setting, are like work', () => {
  const mixed = { workOn: '2026-11-10', averageUgPerM3: 3, taskIds: ['handScraping', 'setUp'] };
  const piece = [{ taskIds: ['handScraping'], durationMin: 480 }];
  expect(predict([mixed], piece).pieces[0]).toMatchObject({ from: 'presumed', samples: [] });
  const days = [scraping('2026-11-10', 3)];
  expect(predict(days, piece, { setting: 'indoors' }).knownCount).toBe(1);
  expect(predict(days, piece, { setting: 'outdoors' }).knownCount).toBe(0);
});

test('doubt raises a prediction and never lowers it', () => {
  const piece = [{ taskIds: ['handScraping'], durationMin: 480 }];
  const upper = (days: readonly Day[]): number => predict(days, piece).upperUgPerM3 ?? Number.POSITIVE_INFINITY;
  const days = [scraping('2026-11-10', 20), scraping('2026-11-11', 45), scraping('2026-11-12', 700)];
  const sound = upper(days);
  for (const place of days.keys()) {
    const changed = days.map((day, i) => (i === place ? { ...day, sample: doubtful } : day));
    expect(upper(changed)).toBeGreaterThanOrEqual(sound);
  }
  // the only one in doubt bounds nothing: the presumed level stands, and what it shows above that
  expect(upper([scraping('2026-11-10', 20, { sample: doubtful })])).toBeGreaterThanOrEqual(500);
  expect(upper([scraping('2026-11-10', 700, { sample: doubtful })])).toBeGreaterThanOrEqual(700);
  expect(predict([scraping('2026-11-10', 20, { flowAfter: false })], piece).pieces[0]?.from).toBe('presumed');
});

const key = 'indoors|-|handScraping';

test('results by date, with their bounds, against the limits of their day', () => {
  const days = [
    scraping('2026-11-11', 35, { workerId: vic }),
    scraping('2026-11-10', 12),
    scraping('2026-12-01', 70, { flowAfter: false }),
    { workOn: '2026-12-02', averageUgPerM3: null },
    setUp('2026-11-14', 900),
  ];
  const { book, duties } = bookOf(days);
  const picture = seasonPicture(book, duties, key);
  expect(
    picture.points.map(({ workOn, workerId, valueKind, doubtful: open }) => [workOn, workerId, valueKind, open]),
  ).toEqual([
    ['2026-11-10', tess, 'exact', false],
    ['2026-11-11', vic, 'exact', false],
    ['2026-12-01', tess, 'atLeast', true],
  ]);
  expect(picture.points[0]?.upperUgPerM3).toBeCloseTo(12, 9);
  expect(picture.points[2]).toMatchObject({ upperUgPerM3: null, atLeast: true });
  // mass over the method's highest flow, 4 L/min instead of 2: at least 35
  expect(picture.points[2]?.lowerUgPerM3).toBeCloseTo(35, 9);
  expect(picture.awaited.map(({ workOn }) => workOn)).toEqual(['2026-12-02']);
  expect(picture.limits.map(({ which, limitUgPerM3 }) => [which, limitUgPerM3])).toEqual([
    ['pel', 50],
    ['actionLevel', 30],
  ]);
  // the PEL is to be seen though no result reaches it; the other group's 900 is not there
  expect(picture.axisUgPerM3).toEqual({ maximum: 50, ticks: [0, 10, 20, 30, 40, 50] });
  expect(picture.days).toMatchObject({ fromOn: '2026-11-10', toOn: '2026-12-01' });
  for (const measurement of duties.measurements.values()) {
    const point = picture.points.find(({ measurementId }) => measurementId === measurement.id);
    if (point && measurement.twa8UgPerM3) expect(point.lowerUgPerM3).toBe(lowerOf(measurement.twa8UgPerM3));
  }
});

test('a group that nothing is known of gives an empty picture; limits change with the state', () => {
  const { book, duties } = bookOf([scraping('2026-11-10', 12)], { sites: [site({ stateCode: 'CA' })] });
  expect(seasonPicture(book, duties, 'outdoors|-|setUp')).toMatchObject({
    points: [],
    limits: [],
    days: null,
    setting: 'outdoors',
    taskIds: ['setUp'],
  });
  // 8 CCR 1532.1: 2 and 10 µg/m³ (READ)
  expect(seasonPicture(book, duties, key).limits.map(({ limitUgPerM3 }) => limitUgPerM3)).toEqual([10, 2]);
});
