/**
 * How many of a crew to draw. Checked by lib-r-math.js 2.0.3 (MIT), the nmath library of R in JavaScript: `dhyper` for whole tops, `lgamma`
 * for the logarithm of the gamma function. Nothing here is from NIOSH 77-173, whose table nobody has opened.
 */
import { dhyper, lgamma } from 'lib-r-math.js';
import { describe, expect, it, test } from 'vitest';
import { chanceOfOneMostExposed, fewestToDraw, mostExposedOfCrew } from '#core/crewSample.ts';
import { logGamma } from '#core/logGamma.ts';

/** R: dhyper(x, m, n, k), x of m white balls among k drawn from m + n. At least one of `top`: one less the chance of none. */
const chanceByR = (crew: number, top: number, drawn: number): number => 100 * (1 - dhyper(0, top, crew - top, drawn));

const fewestByR = (crew: number, top: number, confidencePct: number): number => {
  for (let drawn = 0; drawn < crew; drawn++)
    // R itself gives 90 % of 9 of 10 to the last digit or two
    if (chanceByR(crew, top, drawn) >= confidencePct - 1e-9) return drawn;
  return crew;
};

describe('the logarithm of the gamma function, by lgamma of R', () => {
  // to 4 in 10^14; near 1 and 2, where it is 0, to as many places
  const isNear = (z: number): void =>
    expect(Math.abs(logGamma(z) - lgamma(z))).toBeLessThanOrEqual(1e-14 * Math.max(1, Math.abs(lgamma(z))) * 4);

  test.each([1e-6, 0.1, 0.5, 0.9, 1, 1.1, 1.5, 2, 2.5, 3, 7.3, 9.99, 10, 10.01, 46.1, 101, 501, 4501, 5001])(
    'at %f',
    isNear,
  );

  it('at a thousand places from 0.05 to 50', () => {
    for (let step = 1; step <= 1000; step++) isNear(step / 20);
  });

  it('has none at 0 and below', () => {
    for (const z of [0, -1, -0.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => logGamma(z)).toThrow('no logarithm');
  });
});

describe('the chance of one of the most exposed, by dhyper of R where the top is whole', () => {
  it.each([10, 20, 30, 40, 50, 100, 200, 1000])('a tenth of %i, for every number drawn', (crew) => {
    const top = crew / 10;
    for (let drawn = 0; drawn <= crew; drawn += crew > 100 ? 17 : 1)
      expect(
        Math.abs(chanceOfOneMostExposed.compute({ N: crew, N0: top, n: drawn }) - chanceByR(crew, top, drawn)),
      ).toBeLessThan(1e-9);
  });

  it('is certain once fewer than that lie outside the top', () => {
    expect(chanceOfOneMostExposed.compute({ N: 20, N0: 2, n: 19 })).toBe(100);
    expect(chanceByR(20, 2, 19)).toBe(100);
  });

  it('grows with the number drawn also where the top is not whole', () => {
    for (let crew = 10; crew <= 60; crew++) {
      const N0 = mostExposedOfCrew.compute({ N: crew, p: 10 });
      let before = -1;
      for (let n = 0; n <= crew; n++) {
        const chance = chanceOfOneMostExposed.compute({ N: crew, N0, n });
        expect(chance >= before && chance <= 100).toBe(true);
        before = chance;
      }
    }
  });
});

describe('the fewest to draw for nine chances in ten at the most exposed tenth', () => {
  it.each([10, 20, 30, 40, 50, 60, 100, 200, 500])('of %i, as R finds it', (crew) => {
    expect(fewestToDraw(crew, 10, 90)).toBe(fewestByR(crew, crew / 10, 90));
  });

  it('the list of the reference (DERIVED there: exact where a tenth is whole), as R finds it too', () => {
    const listed: readonly (readonly [number, number])[] = [
      [10, 9],
      [20, 14],
      [30, 16],
      [40, 17],
      [50, 18],
    ];
    for (const [crew, drawn] of listed) {
      expect(fewestByR(crew, crew / 10, 90)).toBe(drawn);
      expect(fewestToDraw(crew, 10, 90)).toBe(drawn);
    }
  });

  it('its ranges between (DERIVED there, worked out apart from this code)', () => {
    const ranges: readonly (readonly [number, number, number])[] = [
      [10, 10, 9],
      [11, 11, 10],
      [12, 13, 11],
      [14, 16, 12],
      [17, 18, 13],
      [19, 22, 14],
      [23, 27, 15],
      [28, 33, 16],
      [34, 41, 17],
      [42, 50, 18],
    ];
    for (const [from, to, drawn] of ranges)
      for (let crew = from; crew <= to; crew++)
        expect(`${crew} ${fewestToDraw(crew, 10, 90)}`).toBe(`${crew} ${drawn}`);
  });

  it('between two whole tops it lies between what R finds for either', () => {
    for (let crew = 10; crew <= 300; crew++) {
      const [less, more] = [Math.floor(crew / 10), Math.ceil(crew / 10)];
      const drawn = fewestToDraw(crew, 10, 90);
      expect(drawn <= fewestByR(crew, less, 90) && drawn >= fewestByR(crew, more, 90), String(crew)).toBe(true);
    }
  });

  it('and never more than the 22 of a crew without end, 0.9^n below a tenth', () => {
    expect(Math.ceil(Math.log(0.1) / Math.log(0.9))).toBe(22);
    expect(fewestToDraw(5000, 10, 90)).toBe(22);
  });

  it('at 95 in a hundred as well, as R finds it', () => {
    for (const crew of [10, 20, 30, 50]) expect(fewestToDraw(crew, 10, 95)).toBe(fewestByR(crew, crew / 10, 95));
  });
});
