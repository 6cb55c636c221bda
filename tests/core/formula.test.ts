import { describe, expect, test } from 'vitest';
import { atLeast, between, exactly, lessThan } from '#core/estimate.ts';
import { formula, recorded } from '#core/formula.ts';

const speed = formula({
  symbol: 'v',
  name: 'ratio',
  unit: 'L/min',
  inputs: { s: { name: 'volume', unit: 'L' }, t: { name: 'time', unit: 'min' } },
  expression: 'v = s / t',
  source: { title: 'A relation for this test', mark: 'DERIVED' },
  increasesWith: ['s'],
  decreasesWith: ['t'],
  compute: ({ s, t }) => s / t,
});
const L = (estimate: Parameters<typeof recorded>[2]) => recorded('volume', 'L', estimate, ['fact']);
const min = (estimate: Parameters<typeof recorded>[2]) => recorded('time', 'min', estimate, ['fact']);

describe('a formula applied to terms', () => {
  test('keeps its text and its inputs, so that a working explains itself', () => {
    const inputs = { s: L(exactly(6)), t: min(exactly(4)) };
    const working = speed.of(inputs);
    expect(working.estimate).toEqual({ kind: 'exact', value: 1.5 });
    expect(working.inputs).toBe(inputs);
    expect(working.formula.expression).toBe('v = s / t');
    expect(working.unit).toBe('L/min');
    expect(working.formula).not.toHaveProperty('compute');
  });

  test('evaluates bounds at the ends, by the direction of each input: 6..8 over 2..4 is 1.5..4', () => {
    expect(speed.of({ s: L(between(6, 8)), t: min(between(2, 4)) }).estimate).toEqual({
      kind: 'between',
      lower: 1.5,
      upper: 4,
    });
  });

  test('carries less-than as bounds from nothing', () => {
    expect(speed.of({ s: L(lessThan(8)), t: min(exactly(2)) }).estimate).toEqual({
      kind: 'between',
      lower: 0,
      upper: 4,
    });
  });

  test('carries at least upwards where the result rises, and down to nothing where it falls', () => {
    expect(speed.of({ s: L(atLeast(6)), t: min(exactly(2)) }).estimate).toEqual({ kind: 'atLeast', lower: 3 });
    expect(speed.of({ s: L(exactly(6)), t: min(atLeast(2)) }).estimate).toEqual({
      kind: 'between',
      lower: 0,
      upper: 3,
    });
  });

  test('a result that is bounded by one number is exact', () => {
    expect(speed.of({ s: L(between(0, 0)), t: min(exactly(2)) }).estimate).toEqual({ kind: 'exact', value: 0 });
  });
});

describe('a bug is thrown, not carried', () => {
  test('a term of another unit', () => {
    expect(() => speed.of({ s: min(exactly(6)), t: min(exactly(4)) })).toThrow('s is min, not L');
  });

  test('a result that is no number', () => {
    expect(() => speed.of({ s: L(exactly(6)), t: min(exactly(0)) })).toThrow('not a number');
  });

  test('bounds in an input without a declared direction', () => {
    const undeclared = formula({
      symbol: 'd',
      name: 'distance',
      unit: 'L',
      inputs: { a: { name: 'one', unit: 'L' } },
      expression: 'd = |a|',
      source: { title: 'A relation for this test', mark: 'DERIVED' },
      compute: ({ a }) => Math.abs(a),
    });
    expect(() => undeclared.of({ a: L(between(-1, 1)) })).toThrow('a must be exact');
  });

  test('a direction declared wrongly, where the bounds cross', () => {
    const wrong = formula({
      symbol: 'n',
      name: 'wrong',
      unit: 'L',
      inputs: { a: { name: 'one', unit: 'L' } },
      expression: 'n = −a',
      source: { title: 'A relation for this test', mark: 'DERIVED' },
      increasesWith: ['a'],
      compute: ({ a }) => -a,
    });
    expect(() => wrong.of({ a: L(between(1, 2)) })).toThrow('bounds cross');
  });
});
