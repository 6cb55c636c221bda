import { describe, expect, test } from 'vitest';
import { parseMass } from '#parts/parseMass.ts';

describe('the mass of a laboratory report', () => {
  test.each([
    ['12.4', { kind: 'measured', massUg: 12.4 }],
    ['12,4', { kind: 'measured', massUg: 12.4 }],
    [' 0.85 µg ', { kind: 'measured', massUg: 0.85 }],
    ['12.4ug', { kind: 'measured', massUg: 12.4 }],
    ['12.4 µg/sample', { kind: 'measured', massUg: 12.4 }],
    ['<2.5', { kind: 'lessThan', reportingLimitUg: 2.5 }],
    ['< 2,5 µg', { kind: 'lessThan', reportingLimitUg: 2.5 }],
    ['＜2.5', { kind: 'lessThan', reportingLimitUg: 2.5 }],
    ['≤2.5', { kind: 'lessThan', reportingLimitUg: 2.5 }],
    ['less than 2.5', { kind: 'lessThan', reportingLimitUg: 2.5 }],
    ['menos de 2,5', { kind: 'lessThan', reportingLimitUg: 2.5 }],
    ['', { kind: 'empty' }],
    ['   ', { kind: 'empty' }],
    ['ND', { kind: 'noNumber', found: 'ND' }],
    ['n.d.', { kind: 'noNumber', found: 'n.d.' }],
    ['<RL', { kind: 'noNumber', found: '<RL' }],
    ['<', { kind: 'noNumber', found: '<' }],
    ['0', { kind: 'zero' }],
    ['<0', { kind: 'zero' }],
    ['0.0124 mg', { kind: 'error', key: 'wrongUnit', found: 'mg' }],
    ['<0.0025 mg', { kind: 'error', key: 'wrongUnit', found: 'mg' }],
    ['12.4 ng', { kind: 'error', key: 'wrongUnit', found: 'ng' }],
    ['15 µg/m³', { kind: 'error', key: 'wrongUnit', found: 'µg/m³' }],
    ['twelve', { kind: 'error', key: 'letters' }],
    ['12.4.1', { kind: 'error', key: 'twoMarks' }],
    ['1,240', { kind: 'error', key: 'thousands' }],
    ['12 14', { kind: 'error', key: 'twoNumbers' }],
    ['-3', { kind: 'error', key: 'negative' }],
    ['2500000', { kind: 'error', key: 'tooHigh', most: 100_000 }],
  ])('%j', (typed, expected) => {
    expect(parseMass(typed)).toEqual(expected);
  });
});
