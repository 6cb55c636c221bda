/** When a newer version may be offered. */
import { describe, expect, test } from 'vitest';
import { updateOffer } from '#app/updatePolicy.ts';

const quiet = { waiting: false, changedElsewhere: false, runningCount: 0, postponed: false };

describe('a newer version', () => {
  test('is not spoken of before there is one', () => expect(updateOffer(quiet)).toBe('nothing'));
  test('is offered when no pump runs', () => expect(updateOffer({ ...quiet, waiting: true })).toBe('offer'));
  test('is only told of while a pump runs', () =>
    expect(updateOffer({ ...quiet, waiting: true, runningCount: 1 })).toBe('tell'));
  test('is only told of while it is not known whether a pump runs', () =>
    expect(updateOffer({ ...quiet, waiting: true, runningCount: null })).toBe('tell'));
  test('is left alone after "not now"', () =>
    expect(updateOffer({ ...quiet, waiting: true, postponed: true })).toBe('nothing'));
  test('that another window changed to is told of, pump or no pump', () =>
    expect(updateOffer({ ...quiet, changedElsewhere: true, runningCount: 2 })).toBe('elsewhere'));
});
