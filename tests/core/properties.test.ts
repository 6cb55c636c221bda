/** Laws of the arithmetic, over generated days. The seed is printed; SEED=… runs the same days again. */
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compareWithConfidence, compareWithLimit, type Limit } from '#core/comparison.ts';
import { concentration } from '#core/concentration.ts';
import { atLeast, between, type Estimate, exactly, lessThan, lowerOf, upperOf } from '#core/estimate.ts';
import { averageFlow } from '#core/flow.ts';
import { recorded, type Term } from '#core/formula.ts';
import { errorOfConsecutive, lowerConfidence, shareOfLimit, upperConfidence } from '#core/saeLimits.ts';
import { sampledVolume } from '#core/sampledVolume.ts';
import { sampleShareOfTwa } from '#core/sampleShareOfTwa.ts';
import { allowableAverage, shiftAverage, twa8 } from '#core/twa.ts';
import type { Unit } from '#core/units.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));
const runs = { seed, numRuns: 2000 * Number(process.env.TIMES ?? 1) };
const occurred = new Map<string, number>();
const count = (name: string, happened: boolean): void => {
  occurred.set(name, (occurred.get(name) ?? 0) + Number(happened));
};
const sawAll = (...names: readonly string[]): void => {
  for (const name of names) expect(occurred.get(name) ?? 0, `${name} never occurred`).toBeGreaterThan(0);
};
beforeAll(() => occurred.clear());
afterAll(() => console.info(`laws of the arithmetic: seed ${seed}, ${JSON.stringify(Object.fromEntries(occurred))}`));

const pel: Limit = { id: 'pel', value: 50, unit: 'µg/m³', reachedWhen: 'above' };
const al: Limit = { id: 'actionLevel', value: 30, unit: 'µg/m³', reachedWhen: 'atOrAbove' };
const term = (unit: Unit, estimate: Estimate | number): Term =>
  recorded('given', unit, typeof estimate === 'number' ? exactly(estimate) : estimate, []);

const hundredths = (from: number, to: number) => fc.integer({ min: from * 100, max: to * 100 }).map((n) => n / 100);
const mass: fc.Arbitrary<Estimate> = fc.oneof(
  hundredths(0, 100).map(exactly),
  fc.constantFrom(0.5, 2, 10).map(lessThan),
  hundredths(0, 50).map(atLeast),
);
const sample = fc.record({ m: mass, Qb: hundredths(1, 4), Qa: hundredths(1, 4), t: fc.integer({ min: 1, max: 300 }) });
const day = fc.record({
  samples: fc.array(sample, { minLength: 1, maxLength: 4 }),
  restMin: fc.integer({ min: 0, max: 300 }),
});

/** Long days with little lead in them. */
const calmSample = fc.record({
  m: hundredths(0, 5).map(exactly),
  Qb: hundredths(1, 4),
  Qa: hundredths(1, 4),
  t: fc.integer({ min: 100, max: 300 }),
});
const calmDay = fc.record({
  samples: fc.array(calmSample, { minLength: 2, maxLength: 4 }),
  restMin: fc.integer({ min: 0, max: 300 }),
});

function worked({
  m,
  Qb,
  Qa,
  t,
}: {
  readonly m: Estimate;
  readonly Qb: number;
  readonly Qa: number;
  readonly t: number;
}) {
  const Q = averageFlow.of({ Qb: term('L/min', Qb), Qa: term('L/min', Qa) });
  const minutes = term('min', t);
  const massTerm = term('µg', m);
  const V = sampledVolume.of({ Q, t: minutes });
  return { C: concentration.of({ m: massTerm, V }), t: minutes, share: sampleShareOfTwa.of({ m: massTerm, Q }) };
}

const relativelyNear = (a: number, b: number): boolean =>
  a === b || Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));

describe('laws', () => {
  test('the volume never shrinks when the time grows', () => {
    fc.assert(
      fc.property(hundredths(1, 4), hundredths(0, 600), hundredths(0, 600), (Q, t, more) => {
        expect(sampledVolume.compute({ Q, t: t + more })).toBeGreaterThanOrEqual(sampledVolume.compute({ Q, t }));
      }),
      runs,
    );
  });

  test('TWA8 equals the sum of m/(0.48 Q), at both ends, and bounds never cross', () => {
    fc.assert(
      fc.property(day, ({ samples, restMin }) => {
        const pieces = samples.map(worked);
        const TWA8 = twa8.of({
          C: [...pieces.map(({ C }) => C), term('µg/m³', 0)],
          t: [...pieces.map(({ t }) => t), term('min', restMin)],
        });
        const sum = (end: (e: Estimate) => number): number =>
          pieces.reduce((all, one) => all + end(one.share.estimate), 0);
        for (const kind of ['exact', 'between', 'atLeast']) count(`TWA8 ${kind}`, TWA8.estimate.kind === kind);
        expect(relativelyNear(lowerOf(TWA8.estimate), sum(lowerOf))).toBe(true);
        expect(relativelyNear(upperOf(TWA8.estimate), sum(upperOf))).toBe(true);
        for (const { estimate } of [TWA8, ...pieces.map(({ C }) => C)])
          expect(lowerOf(estimate)).toBeLessThanOrEqual(upperOf(estimate));
      }),
      runs,
    );
    sawAll('TWA8 exact', 'TWA8 between', 'TWA8 atLeast');
  });

  test('the average over the shift against 400/h says what TWA8 says against the PEL, at any length', () => {
    fc.assert(
      fc.property(fc.oneof(day, calmDay), fc.boolean(), ({ samples, restMin }, atPel) => {
        const pieces = samples.map(worked);
        const workedMin = samples.reduce((sum, { t }) => sum + t, restMin);
        const C = pieces.map((one) => one.C);
        const t = pieces.map((one) => one.t);
        // every other day is brought to the PEL itself by one more segment of a minute
        const known = twa8.of({ C, t }).estimate;
        if (atPel && known.kind === 'exact' && known.value < 50) {
          C.push(concentration.of({ m: term('µg', (50 - known.value) * 0.48), V: term('L', 1) }));
          t.push(term('min', 1));
        }
        const h = term('h', (workedMin + 1) / 60);
        const TWA8 = compareWithLimit(twa8.of({ C, t }).estimate, pel);
        const allowable = allowableAverage.of({ L: term('µg/m³', 50), D: term('µg·h/m³', 400), h });
        const long = (workedMin + 1) / 60 > 8;
        const inForce = long ? shiftAverage.of({ C, t, h }) : twa8.of({ C, t });
        const shift = compareWithLimit(inForce.estimate, { ...pel, value: lowerOf(allowable.estimate) });
        count('over 8 hours', long);
        count('up to 8 hours', !long);
        count('over 8 hours, exactly at', long && TWA8.standing === 'exactlyAt');
        count('over 8 hours, above', long && TWA8.crossed === 'yes');
        count('over 8 hours, not above', long && TWA8.crossed === 'no');
        expect({ standing: shift.standing, crossed: shift.crossed }).toEqual({
          standing: TWA8.standing,
          crossed: TWA8.crossed,
        });
      }),
      runs,
    );
    sawAll(
      'over 8 hours',
      'up to 8 hours',
      'over 8 hours, exactly at',
      'over 8 hours, above',
      'over 8 hours, not above',
    );
  });

  test('knowing less about one mass never turns a verdict from unresolved or yes to no', () => {
    const blur = fc.record({ of: fc.integer({ min: 0, max: 3 }), to: fc.constantFrom('wider', 'unbounded') });
    fc.assert(
      fc.property(day, blur, fc.constantFrom(al, pel), ({ samples }, { of, to }, limit) => {
        const verdict = (all: typeof samples) => {
          const pieces = all.map(worked);
          return compareWithLimit(twa8.of({ C: pieces.map(({ C }) => C), t: pieces.map(({ t }) => t) }).estimate, limit)
            .crossed;
        };
        const blurred = samples.map((one, index) => {
          if (index !== of % samples.length) return one;
          const low = lowerOf(one.m);
          const m = to === 'unbounded' || one.m.kind === 'atLeast' ? atLeast(low) : between(low, upperOf(one.m) + 40);
          return { ...one, m };
        });
        const [before, after] = [verdict(samples), verdict(blurred)];
        count('became unresolved', before === 'no' && after === 'unresolved');
        if (after === 'no') expect(before).toBe('no');
        if (before === 'yes') expect(after).toBe('yes');
      }),
      runs,
    );
    sawAll('became unresolved');
  });

  test("adding the laboratory's error removes nothing: yes stays yes, and no arises only from no", () => {
    const errors = fc.record({
      mass: hundredths(1, 60).map(exactly),
      S: hundredths(0.05, 0.4),
      limit: fc.constantFrom(al, pel),
    });
    fc.assert(
      fc.property(errors, ({ mass: m, S, limit }) => {
        const { C, t } = worked({ m, Qb: 2, Qa: 2, t: 480 });
        const L = term('µg/m³', limit.value);
        const Y = shareOfLimit.of({ X: C, L });
        const E = errorOfConsecutive.of({ S: [term('', S)], X: [C], t: [t], L, P: term('min', 480) });
        const shares = { lower: lowerConfidence.of({ Y, E }).estimate, upper: upperConfidence.of({ Y, E }).estimate };
        const { crossed, crossedWithCaution } = compareWithConfidence(C.estimate, limit, shares);
        count('caution added', crossed === 'no' && crossedWithCaution === 'unresolved');
        count('still below', crossedWithCaution === 'no');
        if (crossed === 'yes') expect(crossedWithCaution).toBe('yes');
        if (crossedWithCaution === 'no') expect(crossed).toBe('no');
      }),
      runs,
    );
    sawAll('caution added', 'still below');
  });
});
