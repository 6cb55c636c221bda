import { describe, expect, test } from 'vitest';
import { nextRecorded, observe } from '#records/recordedClock.ts';

const wall = '2026-11-25T12:00:00.000Z';

describe('recorded clock', () => {
  test('first fact: the wall, counter at nought', () => {
    expect(nextRecorded(null, wall)).toBe('2026-11-25T12:00:00.000Z-0000');
  });

  test('running clock: the counter begins anew', () => {
    expect(nextRecorded('2026-11-25T12:00:00.000Z-0007', '2026-11-25T12:00:00.001Z')).toBe(
      '2026-11-25T12:00:00.001Z-0000',
    );
  });

  test('stuttering clock: one millisecond twice still sorts', () => {
    let last: string | null = null;
    const written = Array.from({ length: 20 }, () => {
      last = nextRecorded(last, wall);
      return last;
    });
    expect(written.at(-1)).toBe('2026-11-25T12:00:00.000Z-0013');
    expect([...written].sort()).toEqual(written);
    expect(new Set(written).size).toBe(20);
  });

  test('regressing clock: recorded time never goes back', () => {
    const last = nextRecorded(null, wall);
    expect(nextRecorded(last, '2026-11-25T10:00:00.000Z')).toBe('2026-11-25T12:00:00.000Z-0001');
    expect(nextRecorded(last, '1999-01-01T00:00:00.000Z')).toBe('2026-11-25T12:00:00.000Z-0001');
  });

  test('overflow of the counter: one millisecond on', () => {
    expect(nextRecorded('2026-12-31T23:59:59.999Z-fffe', wall)).toBe('2026-12-31T23:59:59.999Z-ffff');
    expect(nextRecorded('2026-12-31T23:59:59.999Z-ffff', wall)).toBe('2027-01-01T00:00:00.000Z-0000');
  });

  test('a remote clock a little ahead is followed', () => {
    const remote = '2026-11-25T12:59:00.000Z-0002';
    expect(observe('2026-11-25T11:00:00.000Z-0000', remote, wall)).toBe(remote);
    expect(observe(null, remote, wall)).toBe(remote);
    expect(nextRecorded(observe(null, remote, wall), wall)).toBe('2026-11-25T12:59:00.000Z-0003');
  });

  test('a remote clock behind changes nothing', () => {
    expect(observe('2026-11-25T11:00:00.000Z-0001', '2026-11-25T11:00:00.000Z-0000', wall)).toBe(
      '2026-11-25T11:00:00.000Z-0001',
    );
  });

  test('years ahead: a remote clock never drags ours', () => {
    const remote = '2031-01-01T00:00:00.000Z-0000';
    expect(observe('2026-11-25T11:00:00.000Z-0000', remote, wall)).toBe('2026-11-25T11:00:00.000Z-0000');
    expect(observe(null, remote, wall)).toBeNull();
  });

  test('exactly an hour ahead is followed, a millisecond more is not', () => {
    expect(observe(null, '2026-11-25T13:00:00.000Z-0000', wall)).toBe('2026-11-25T13:00:00.000Z-0000');
    expect(observe(null, '2026-11-25T13:00:00.001Z-0000', wall)).toBeNull();
  });
});
