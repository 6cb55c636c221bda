/**
 * Exactly at: 301 flows by six durations, masses that make exactly 30 and exactly 50 µg/m³, and the masses one hundred-thousandth
 * of a microgram to either side. What is right comes from whole numbers: flow q/100 L/min, mass u/100000 µg, so that
 *   C    = u / (q t)    µg/m³   (m/(Q t) × 1000)
 *   TWA8 = u / (480 q)  µg/m³   (one sample that carries its own minutes)
 */
import { describe, expect, test } from 'vitest';
import { type Comparison, compareWithLimit, type Limit } from '#core/comparison.ts';
import { concentration } from '#core/concentration.ts';
import { exactly, lowerOf } from '#core/estimate.ts';
import { averageFlow } from '#core/flow.ts';
import { recorded, type Working } from '#core/formula.ts';
import { sampledVolume } from '#core/sampledVolume.ts';
import { sampleShareOfTwa } from '#core/sampleShareOfTwa.ts';
import { allowableAverage, shiftAverage, twa8 } from '#core/twa.ts';
import { wornTime } from '#core/wornTime.ts';

const flows = Array.from({ length: 301 }, (_, index) => BigInt(100 + index));
const durations = [60n, 120n, 240n, 420n, 480n, 600n] as const;
const limits: readonly Limit[] = [
  { id: 'actionLevel', value: 30, unit: 'µg/m³', reachedWhen: 'atOrAbove' },
  { id: 'pel', value: 50, unit: 'µg/m³', reachedWhen: 'above' },
];

/** A decimal as a laboratory's report or a form would carry it. */
function parsed(numerator: bigint, decimals: number): number {
  const digits = numerator.toString().padStart(decimals + 1, '0');
  return JSON.parse(`${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`) as number;
}

type Side = -1 | 0 | 1;
const sideOfFraction = (numerator: bigint, denominator: bigint, whole: bigint): Side => {
  const left = numerator - whole * denominator;
  return left < 0n ? -1 : left > 0n ? 1 : 0;
};
const standings = { '-1': 'below', '0': 'exactlyAt', '1': 'above' } as const;

function isRight(comparison: Comparison, side: Side, limit: Limit): boolean {
  const yes = (when: boolean): string => (when ? 'yes' : 'no');
  return (
    comparison.standing === standings[side] &&
    comparison.atOrAbove === yes(side >= 0) &&
    comparison.crossed === yes(limit.reachedWhen === 'atOrAbove' ? side >= 0 : side > 0)
  );
}

const term = (name: string, unit: 'L/min' | 'µg' | 'min' | 'µg/m³' | 'µg·h/m³' | 'h', value: number) =>
  recorded(name, unit, exactly(value), [name]);

interface Day {
  readonly C: Working;
  readonly TWA8: Working;
  readonly byMass: Working;
  readonly shift: Working;
  readonly allowable: Working;
}

function workedDay(massUg: number, flowLPerMin: number, durationMin: number, pel: number): Day {
  const Q = averageFlow.of({ Qb: term('before', 'L/min', flowLPerMin), Qa: term('after', 'L/min', flowLPerMin) });
  const t = wornTime.of({ d: [term('interval', 'min', durationMin)] });
  const m = term('mass', 'µg', massUg);
  const C = concentration.of({ m, V: sampledVolume.of({ Q, t }) });
  const h = term('hours', 'h', Math.max(durationMin / 60, 8));
  return {
    C,
    TWA8: twa8.of({ C: [C], t: [t] }),
    byMass: sampleShareOfTwa.of({ m, Q }),
    shift: shiftAverage.of({ C: [C], t: [t], h }),
    allowable: allowableAverage.of({ L: term('pel', 'µg/m³', pel), D: term('dose', 'µg·h/m³', pel * 8), h }),
  };
}

/** Every flow, every duration, and the mass one step below, at, and one step above. */
const combinations = flows.flatMap((q) =>
  durations.flatMap((t) => ([-1n, 0n, 1n] as const).map((step) => ({ q, t, step, name: `${q} ${t} ${step}` }))),
);

test('there are 301 flows by six durations by three masses', () => {
  expect(combinations.length).toBe(301 * 6 * 3);
});

describe.each(limits.map((limit) => [limit.value, limit] as const))('exactly at %i µg/m³', (value, limit) => {
  const whole = BigInt(value);

  test('the concentration, for every flow and duration, and the nearest masses to both sides', () => {
    const wrong = combinations.filter(({ q, t, step }) => {
      const u = whole * q * t + step;
      const side = sideOfFraction(u, q * t, whole);
      const { C } = workedDay(parsed(u, 5), parsed(q, 2), Number(t), 50);
      return side !== Number(step) || !isRight(compareWithLimit(C.estimate, limit), side, limit);
    });
    expect(wrong).toEqual([]);
  });

  test('the 8-hour average, by segments and by mass alone, for every flow and duration', () => {
    const wrong = combinations.filter(({ q, t, step }) => {
      const u = whole * q * 480n + step;
      const side = sideOfFraction(u, q * 480n, whole);
      const { TWA8, byMass } = workedDay(parsed(u, 5), parsed(q, 2), Number(t), 50);
      return (
        side !== Number(step) ||
        ![TWA8, byMass].every((one) => isRight(compareWithLimit(one.estimate, limit), side, limit))
      );
    });
    expect(wrong).toEqual([]);
  });

  test('the average over the shift against what it may be says the same as the 8-hour average', () => {
    const wrong = combinations.filter(({ q, t, step }) => {
      const u = whole * q * 480n + step;
      const { shift, allowable } = workedDay(parsed(u, 5), parsed(q, 2), Number(t), value);
      const allowed: Limit = { ...limit, value: lowerOf(allowable.estimate) };
      return !isRight(compareWithLimit(shift.estimate, allowed), sideOfFraction(u, q * 480n, whole), allowed);
    });
    expect(wrong).toEqual([]);
  });
});
