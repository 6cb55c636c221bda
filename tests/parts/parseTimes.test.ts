/** Days and times of day as people type them. Weekdays of the read-back are checked against a printed calendar of 2026. */
import { describe, expect, test } from 'vitest';
import { parseClock } from '#parts/parseClock.ts';
import { parseDay } from '#parts/parseDay.ts';

const today = '2026-11-25';

describe('a day', () => {
  test.each([
    ['2026-11-25', '2026-11-25'],
    ['11/25/2026', '2026-11-25'],
    ['11/25/26', '2026-11-25'],
    ['11-25-2026', '2026-11-25'],
    ['1/2/2026', '2026-01-02'],
    ['25 Nov 2026', '2026-11-25'],
    ['Nov 25, 2026', '2026-11-25'],
    ['November 25 2026', '2026-11-25'],
    ['25 de noviembre de 2026', '2026-11-25'],
    ['today', '2026-11-25'],
    ['Yesterday', '2026-11-24'],
    ['hoy', '2026-11-25'],
    ['ayer', '2026-11-24'],
    ['2/29/2028', '2028-02-29'],
  ])('%j is %s', (text, value) => expect(parseDay(text, today)).toEqual({ kind: 'value', value }));

  test.each([
    ['25/11/2026', 'dayFirst'],
    ['2026-02-30', 'noSuchDay'],
    ['2/29/2026', 'noSuchDay'],
    ['13/13/2026', 'noSuchDay'],
    ['11/25', 'noYear'],
    ['25 Nov', 'noYear'],
    ['soon', 'notADate'],
    ['11252026', 'notADate'],
  ])('%j is asked about: %s', (text, key) => expect(parseDay(text, today)).toEqual({ kind: 'error', key }));

  test('that has not come yet, where only the past can be', () => {
    expect(parseDay('11/26/2026', today, { past: true })).toEqual({ kind: 'error', key: 'future' });
    expect(parseDay('today', today, { past: true })).toEqual({ kind: 'value', value: today });
  });

  test('yesterday on the first of January is in the year before', () =>
    expect(parseDay('yesterday', '2027-01-01')).toEqual({ kind: 'value', value: '2026-12-31' }));

  test('nothing typed is nothing', () => expect(parseDay('  ', today)).toEqual({ kind: 'empty' }));
});

describe('a time of day', () => {
  test.each([
    ['07:12', '07:12'],
    ['7:12', '07:12'],
    ['712', '07:12'],
    ['0712', '07:12'],
    ['7.12', '07:12'],
    ['7:12 am', '07:12'],
    ['7:12 PM', '19:12'],
    ['7 p.m.', '19:00'],
    ['12:05 am', '00:05'],
    ['12 pm', '12:00'],
    ['23:59', '23:59'],
    ['1912', '19:12'],
  ])('%j is %s', (text, value) => expect(parseClock(text)).toEqual({ kind: 'value', value }));

  test.each([
    ['7', 'incomplete'],
    ['24:00', 'noSuchTime'],
    ['7:60', 'noSuchTime'],
    ['13 pm', 'noSuchTime'],
    ['0 am', 'noSuchTime'],
    ['noonish', 'notATime'],
    ['7:1', 'notATime'],
  ])('%j is asked about: %s', (text, key) => expect(parseClock(text)).toEqual({ kind: 'error', key }));

  test('nothing typed is nothing', () => expect(parseClock('')).toEqual({ kind: 'empty' }));
});
