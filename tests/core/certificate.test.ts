import { describe, expect, test } from 'vitest';
import { flowByCertificate } from '#core/certificate.ts';
import { exactly } from '#core/estimate.ts';
import { recorded } from '#core/formula.ts';

const flow = (value: number) => recorded('flow', 'L/min', exactly(value), []);
const pairs = (...all: readonly (readonly [number, number])[]) =>
  all.map(([read, real]) => ({ read: flow(read), true: flow(real) }));
const certificate = pairs([3, 3.3], [1, 1.1], [2, 2.3]);

describe("a certificate's pairs", () => {
  test.each([
    [1, 1.1],
    [2, 2.3],
    [3, 3.3],
    // half way from 1.1 to 2.3
    [1.5, 1.7],
    // a quarter of the way from 2.3 to 3.3
    [2.25, 2.55],
  ])('%f read is %f', (read, expected) => {
    const answer = flowByCertificate(flow(read), certificate);
    if (answer.kind !== 'applied') throw new Error(answer.kind);
    expect(answer.flow.estimate.kind === 'exact' && answer.flow.estimate.value).toBeCloseTo(expected, 12);
  });

  test('refused outside, with what it covers', () => {
    const outside = { kind: 'outside', lowestLPerMin: 1, highestLPerMin: 3 };
    expect(flowByCertificate(flow(0.99), certificate)).toEqual(outside);
    expect(flowByCertificate(flow(3.01), certificate)).toEqual(outside);
  });

  test.each([
    ['none', pairs()],
    ['one', pairs([2, 2.1])],
    ['two of one reading', pairs([2, 2.1], [2, 2.2], [3, 3])],
    ['true flow that falls as the reading rises', pairs([1, 2], [2, 1])],
  ])('unusable: %s', (_, unusable) => {
    expect(flowByCertificate(flow(2), unusable)).toEqual({ kind: 'pairsUnusable' });
  });
});
