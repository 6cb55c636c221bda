/** Numbers as people type them on a phone, with clean hands and without. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Unit } from '#core/units.ts';
import { parseQuantity } from '#parts/parseQuantity.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));

describe('is read as the number that is meant', () => {
  test.each<[string, Unit, number]>([
    ['2.05', 'L/min', 2.05],
    ['2,05', 'L/min', 2.05],
    [' 2.05 ', 'L/min', 2.05],
    ['.5', 'L/min', 0.5],
    ['2.', 'L/min', 2],
    ['2.05 L/min', 'L/min', 2.05],
    ['2.05L/min', 'L/min', 2.05],
    ['2.05 lpm', 'L/min', 2.05],
    ['2 liters per minute', 'L/min', 2],
    ['12.4 µg', 'µg', 12.4],
    ['12.4 μg', 'µg', 12.4],
    ['12.4ug', 'µg', 12.4],
    ['12.4 mcg', 'µg', 12.4],
    ['31 ug/m3', 'µg/m³', 31],
    ['31 µg/m³', 'µg/m³', 31],
    ['480 min', 'min', 480],
    ['480 minutes', 'min', 480],
    ['1234', 'L', 1234],
    ['0,123', 'µg', 0.123],
    ['1.234', 'L', 1.234],
    ['12,5', 'µg', 12.5],
    ['２.５', 'L/min', 2.5],
    ['+3', 'L', 3],
    ['5 %', '%', 5],
  ])('%j in %s', (text, unit, value) => expect(parseQuantity(text, unit)).toEqual({ kind: 'value', value }));
});

describe('is asked about, never guessed', () => {
  test.each<[string, Unit, object]>([
    ['abc', 'L/min', { key: 'letters' }],
    ['2.0x', 'L/min', { key: 'letters' }],
    ['1e3', 'L', { key: 'twoNumbers' }],
    ['1,2,3', 'L', { key: 'twoMarks' }],
    ['1.234.567', 'L', { key: 'twoMarks' }],
    ['1,234.5', 'L', { key: 'twoMarks' }],
    ['1,234', 'L', { key: 'thousands' }],
    ['1 234', 'L', { key: 'twoNumbers' }],
    ['2.5-2.6', 'L/min', { key: 'twoNumbers' }],
    ['0.012 mg', 'µg', { key: 'wrongUnit', found: 'mg' }],
    ['2000 mL/min', 'L/min', { key: 'wrongUnit', found: 'mL/min' }],
    ['8 h', 'min', { key: 'wrongUnit', found: 'h' }],
    ['72 F', '°C', { key: 'wrongUnit', found: '°F' }],
    ['29.9 inHg', 'kPa', { key: 'wrongUnit', found: 'inHg' }],
    ['0.03 mg/m3', 'µg/m³', { key: 'wrongUnit', found: 'mg/m³' }],
    ['<5', 'µg', { key: 'lessThan' }],
    ['less than 5', 'µg', { key: 'lessThan' }],
    ['-2', 'L/min', { key: 'negative' }],
    ['−2', 'L/min', { key: 'negative' }],
    ['.', 'L', { key: 'letters' }],
  ])('%j in %s', (text, unit, error) => expect(parseQuantity(text, unit)).toEqual({ kind: 'error', ...error }));

  test('outside the range, with the end of the range', () => {
    expect(parseQuantity('0', 'L/min', { least: 0.1 })).toEqual({ kind: 'error', key: 'tooLow', least: 0.1 });
    expect(parseQuantity('51', 'L/min', { most: 50 })).toEqual({ kind: 'error', key: 'tooHigh', most: 50 });
    expect(parseQuantity('50', 'L/min', { most: 50 })).toEqual({ kind: 'value', value: 50 });
  });

  test('below zero only where that has a meaning', () =>
    expect(parseQuantity('-12,5', '°C', { negative: true })).toEqual({ kind: 'value', value: -12.5 }));
});

test('nothing typed is nothing, never zero', () => {
  for (const text of ['', ' ', '\t', '\u00a0']) expect(parseQuantity(text, 'µg')).toEqual({ kind: 'empty' });
});

test(`no text makes it throw, and a value is always finite (seed ${seed})`, () => {
  let values = 0;
  const typed = fc.oneof(fc.string(), fc.stringMatching(/^[\d.,\- ]{0,9}(µg|mg|L)?$/));
  fc.assert(
    fc.property(typed, (text) => {
      const parsed = parseQuantity(text, 'µg');
      values += Number(parsed.kind === 'value');
      expect(parsed.kind !== 'value' || (Number.isFinite(parsed.value) && parsed.value >= 0)).toBe(true);
    }),
    { seed, numRuns: 2000 },
  );
  expect(values).toBeGreaterThan(50);
});

test(`a number printed with comma or point comes back the same (seed ${seed})`, () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999 }), fc.constantFrom('.', ','), (hundredths, mark) => {
      const text = (hundredths / 100).toFixed(2).replace('.', mark);
      expect(parseQuantity(`${text} L`, 'L')).toEqual({ kind: 'value', value: hundredths / 100 });
    }),
    { seed },
  );
});
