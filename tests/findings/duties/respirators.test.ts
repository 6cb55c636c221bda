/**
 * 29 CFR 1926.62(c)(2), (d)(2), (f) and 1910.134 Table 1. Maximum use concentrations are the table's factor times the limit, worked out by
 * hand (regulation.md A8, F9); the table itself was read in 1910.134(d)(3)(i)(A).
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atLeast, between, type Estimate, exactly } from '#core/estimate.ts';
import { recorded } from '#core/formula.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { apfFor } from '#findings/duties/protecting/protectionFactor.ts';
import { type RespiratorQuestion, respiratorFor } from '#findings/duties/protecting/respirators.ts';
import { reason } from '#findings/reason.ts';
import { limitSetOn } from '#reference/limits.ts';
import { presumptionFor } from '#reference/presumption.ts';

const limits = limitSetOn('2026-11-25', 'TX');
const pel = 50;

/** A measurement of a regular day with nothing against it, unless said. */
const measured = (twa8: Estimate, rest: Partial<Measurement> = {}): Measurement => {
  const upper = twa8.kind === 'exact' ? twa8.value : twa8.kind === 'between' ? twa8.upper : Number.POSITIVE_INFINITY;
  return {
    id: 'm',
    from: 'sampled',
    workerId: 'w',
    workOn: '2026-11-24',
    siteId: 's',
    shiftIds: [],
    groupKey: 'g',
    taskIds: [],
    jobClassificationId: null,
    limits,
    twa8UgPerM3: twa8,
    band: upper > pel ? 'abovePel' : upper >= 30 ? 'actionLevelToPel' : 'belowActionLevel',
    provesBelowActionLevel: upper < 30,
    provesNotAbovePel: upper <= pel,
    atOrAbovePel: 'no',
    resultOwed: false,
    atLeastOnly: false,
    receipts: [],
    blocks: [],
    finding: null,
    because: ['fact'],
    ...rest,
  };
};

const ask = (tasks: readonly string[], rest: Partial<RespiratorQuestion> = {}) =>
  respiratorFor({ measurement: null, presumption: presumptionFor(tasks), limits, ...rest });
const hours = (h: number) => recorded('hoursWorked', 'h', exactly(h), []);
const air = (value: Estimate) => recorded('concentration', 'µg/m³', value, []);

describe('nothing measured: (d)(2) presumes a level', () => {
  test.each([
    ['handScraping', 8, 10],
    ['powerSandingOpen', 8, 50],
    ['abrasiveBlasting', 8, 1000],
    // (c)(2): a presumed 500 over 10 hours may be 12.5 times what such a shift may reach (40)
    ['handScraping', 10, 25],
    ['handScraping', 12, 25],
    ['powerSandingOpen', 10, 1000],
    ['abrasiveBlasting', 12, 1000],
  ])('%s for %i h: factor %i', (task, h, apf) => {
    expect(ask([task], { hoursWorked: hours(h) })).toMatchObject({ from: 'presumed', leastApf: apf, floorApf: apf });
  });

  test('(d)(2)(ii) says no upper bound: no factor is named, and ten is known to be the least of a listed task above the PEL', () => {
    const advice = ask(['dustCleanup']);
    expect(advice).toMatchObject({ from: 'presumed', leastApf: null, floorApf: 10, unbounded: true });
    expect(advice.choices.every(({ apf }) => apf.value >= 10)).toBe(true);
  });

  test('a task that the list does not name asks for none', () => {
    expect(ask(['brushPainting'])).toMatchObject({ from: 'presumed', leastApf: null, floorApf: null, choices: [] });
  });
});

describe('(d)(2): what ends the presumption is a documented level not above it', () => {
  test.each([
    ['handScraping', exactly(50), 'notNeededByResult', null],
    ['handScraping', exactly(50.05), 'presumed', 10],
    ['handScraping', exactly(49.95), 'notNeededByResult', null],
    ['powerSandingOpen', exactly(499), 'result', 10],
    // exactly at what factor 10 holds to: the presumption of more than 500 has ended, and the next factor is recommended
    ['powerSandingOpen', exactly(500), 'result', 25],
    ['powerSandingOpen', exactly(501), 'presumed', 50],
    ['abrasiveBlasting', exactly(2400), 'result', 50],
    ['abrasiveBlasting', exactly(3000), 'presumed', 1000],
    ['abrasiveBlasting', exactly(60_000), 'result', 10_000],
  ])('%s, %o: %s, factor %s', (task, twa8, from, apf) => {
    expect(ask([task], { measurement: measured(twa8) })).toMatchObject({ from, leastApf: apf });
  });

  test('a doubtful low result ends nothing', () => {
    const doubtful = measured(exactly(20), { blocks: [reason('notRegular')], provesNotAbovePel: false });
    expect(ask(['handScraping'], { measurement: doubtful })).toMatchObject({ from: 'presumed', leastApf: 10 });
  });

  test('bounds count with their upper end', () => {
    expect(ask(['brushPainting'], { measurement: measured(between(10, 260)) })).toMatchObject({ leastApf: 10 });
    expect(ask(['brushPainting'], { measurement: measured(between(0, 45)) })).toMatchObject({
      from: 'notNeededByResult',
    });
  });

  test('an at-least figure stands on the presumed tier, on the higher known one, or on the highest', () => {
    const open = { provesNotAbovePel: false, atLeastOnly: true, blocks: [reason('noFlowAfter')] };
    const scraped = ask(['handScraping'], { measurement: measured(atLeast(20), { ...open, band: 'open' }) });
    expect(scraped).toMatchObject({ leastApf: 10, unbounded: true });
    const high = ask(['handScraping'], { measurement: measured(atLeast(700), { ...open, band: 'abovePel' }) });
    expect(high).toMatchObject({ leastApf: 25, unbounded: true, from: 'result' });
    const unlisted = ask(['brushPainting'], { measurement: measured(atLeast(60), { ...open, band: 'abovePel' }) });
    expect(unlisted).toMatchObject({ leastApf: 1000, unbounded: true });
    expect(ask(['dustCleanup'], { measurement: measured(atLeast(60), { ...open, band: 'abovePel' }) })).toMatchObject({
      leastApf: null,
      floorApf: 10,
      unbounded: true,
    });
  });
});

describe('1910.134 Table 1 and (d)(3)(i)(B): exposure outside the mask at most factor times limit', () => {
  test.each([
    [50.05, 5],
    [249.7, 5],
    [250.3, 10],
    [499.5, 10],
    [500.5, 25],
    [1249, 25],
    [1251, 50],
    [2499, 50],
    [2501, 1000],
    [49_900, 1000],
    [50_100, 10_000],
  ])('%d µg/m³: factor %i', (twa8, apf) => {
    expect(ask(['brushPainting'], { measurement: measured(exactly(twa8)) })).toMatchObject({ leastApf: apf });
  });

  test.each([
    [250, 5, 10],
    [500, 10, 25],
    [1250, 25, 50],
    [2500, 50, 1000],
  ])('exactly %d: %i is enough by the words, %i is recommended', (twa8, apfByRule, leastApf) => {
    expect(ask(['brushPainting'], { measurement: measured(exactly(twa8)) })).toMatchObject({
      leastApf,
      apfByRule,
      exactlyAt: 'maximumUse',
    });
  });

  test('exactly at the PEL none is asked for, and that is said beside', () => {
    expect(ask(['brushPainting'], { measurement: measured(exactly(50)) })).toMatchObject({
      from: 'notNeededByResult',
      leastApf: null,
      exactlyAt: 'pel',
    });
  });

  test.each([
    [exactly(100_000), true],
    [exactly(99_900), false],
    [between(10, 100_000), true],
    [atLeast(120_000), true],
  ])('Pocket Guide, 100 mg/m³ immediately dangerous: %o beyond every factor is %s', (twa8, beyond) => {
    const advice = ask(['brushPainting'], { measurement: measured(twa8) });
    expect(advice.beyond).toBe(beyond);
    if (beyond) expect(advice).toMatchObject({ leastApf: null, choices: [] });
  });
});

describe('(c)(2): no double penalty for a long shift', () => {
  // regulation.md F: 45 over 10 h is 56.25; 39 is 48.75; 41 is 51.25
  test.each([
    [45, 600, 5],
    [39, 600, null],
    [41, 600, 5],
    // 499 over 10 h is a TWA8 of 624: 500 would do for 8 hours, 400 for 10
    [399, 600, 10],
    [401, 600, 25],
    [1999, 600, 50],
    [2001, 600, 1000],
    [333, 720, 10],
    [334, 720, 25],
  ])('%d µg/m³ for %i min: factor %s', (average, min, apf) => {
    const twa8 = (average * min) / 480;
    expect(ask(['brushPainting'], { measurement: measured(exactly(twa8)) }).leastApf).toBe(apf);
  });

  test('the average over the shift against 400 / h needs the same factor as the 8-hour average against 50', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 90_000, noNaN: true }),
        fc.double({ min: 8.01, max: 24, noNaN: true }),
        (average, h) => {
          const byShift = average / (400 / h);
          const byEight = (average * h) / 8 / 50;
          expect(apfFor(byShift).apf).toBe(apfFor(byEight).apf);
        },
      ),
      { seed: 20261125 },
    );
  });
});

describe("the air of the task's minutes", () => {
  test('the higher factor is recommended, also where the day asks for none', () => {
    const advice = ask(['brushPainting'], { measurement: measured(exactly(40)), taskUgPerM3: air(exactly(600)) });
    expect(advice).toMatchObject({ from: 'notNeededByResult', leastApf: 25 });
    const day = ask(['brushPainting'], { measurement: measured(exactly(700)), taskUgPerM3: air(exactly(300)) });
    expect(day).toMatchObject({ from: 'result', leastApf: 25 });
  });
});

describe('which respirators', () => {
  test('(f)(3): HEPA class; powered ones on wish; no half mask where dust irritates the eyes', () => {
    const advice = ask(['handScraping']);
    expect(advice.hepaClass).toBe(true);
    expect(advice.powered.map(({ id }) => id)).toContain('poweredLooseFitting');
    const eyes = ask(['handScraping'], { eyeIrritation: true });
    expect(eyes.choices.length).toBeGreaterThan(3);
    expect(eyes.choices.filter(({ facepiece }) => facepiece === 'half' || facepiece === 'quarter')).toEqual([]);
  });

  test('a helmet or hood reaches 1,000 only with evidence of its maker', () => {
    const advice = ask(['abrasiveBlasting']);
    expect(advice.choices.map(({ id }) => id)).not.toContain('suppliedContinuousHelmetHood');
    expect(advice.withEvidence.map(({ id }) => id)).toEqual(['poweredHelmetHood', 'suppliedContinuousHelmetHood']);
  });

  test('no filtering facepiece and no N95 is among them', () => {
    const text = JSON.stringify(ask(['handScraping']).choices);
    expect(text).not.toMatch(/n95|filteringFacepiece/i);
  });
});

describe("the firm's own stricter limit, and a state's lower one", () => {
  test('own 20: 120 needs 6 times, so 10; the rule alone 5', () => {
    const measurement = measured(exactly(120));
    expect(ask(['brushPainting'], { measurement, ownPelUgPerM3: 20 })).toMatchObject({ leastApf: 10 });
    expect(ask(['brushPainting'], { measurement, ownPelUgPerM3: 70 })).toMatchObject({ leastApf: 5 });
    const between50and20 = ask(['brushPainting'], { measurement: measured(exactly(30)), ownPelUgPerM3: 20 });
    expect(between50and20).toMatchObject({ leastApf: 5, byOwnLimit: true });
  });

  test('own 20 and nothing measured: a presumed 500 is 25 times 20; what the rule presumes and what ends it stay its own', () => {
    expect(ask(['handScraping'], { ownPelUgPerM3: 20 })).toMatchObject({ leastApf: 25, byOwnLimit: false });
    const measurement = measured(exactly(30));
    expect(ask(['handScraping'], { measurement, ownPelUgPerM3: 20 })).toMatchObject({
      from: 'result',
      leastApf: 5,
      byOwnLimit: true,
    });
  });

  test('California, PEL 10: the news release has factor 1,000 times 10 hold to 10,000', () => {
    const ca = limitSetOn('2030-01-01', 'CA');
    const at = (twa8: number) =>
      ask(['brushPainting'], { limits: ca, measurement: measured(exactly(twa8), { limits: ca }) }).leastApf;
    expect([at(9990), at(10_010)]).toEqual([1000, 10_000]);
  });
});

test('doubt never lowers a factor: blocking, or opening the upper end, gives the same or more', () => {
  const tasks = ['handScraping', 'powerSandingOpen', 'abrasiveBlasting', 'brushPainting', 'dustCleanup'];
  fc.assert(
    fc.property(fc.constantFrom(...tasks), fc.double({ min: 0.1, max: 20_000, noNaN: true }), (task, twa8) => {
      const sure = ask([task], { measurement: measured(exactly(twa8)) });
      const doubtful = ask([task], {
        measurement: measured(exactly(twa8), { blocks: [reason('notRegular')], provesNotAbovePel: false }),
      });
      expect(doubtful.floorApf ?? 0).toBeGreaterThanOrEqual(sure.floorApf ?? 0);
      const open = ask([task], {
        measurement: measured(atLeast(twa8), {
          blocks: [reason('noFlowAfter')],
          provesNotAbovePel: false,
          band: twa8 >= 30 ? 'abovePel' : 'open',
        }),
      });
      expect(open.floorApf ?? 0).toBeGreaterThanOrEqual(sure.floorApf ?? 0);
    }),
    { seed: 20261125 },
  );
});
