import { describe, expect, test } from 'vitest';
import {
  checkDigitOf,
  checkSampleNumber,
  isSampleNumber,
  nextSampleNumber,
  prefixOf,
  prefixOfNumber,
  sameNumber,
  sampleNumberOf,
} from '#records/sampleNumber.ts';

describe('ISO 7064 MOD 11,10', () => {
  test.each([
    ['0794', '5', "the standard's own example (MEMORY)"],
    ['79462', '3', 'python-stdnum, stdnum/iso7064/mod_11_10.py, documentation examples (READ)'],
    ['00200667308', '5', 'python-stdnum, stdnum/iso7064/mod_11_10.py, documentation examples (READ)'],
  ])('%s has the check digit %s: %s', (digits, check) => {
    expect(checkDigitOf(digits)).toBe(check);
  });
});

describe('sample numbers', () => {
  test('have prefix, running number of three digits at least, check digit', () => {
    expect(sampleNumberOf('12', 1)).toMatch(/^12001\d$/);
    expect(sampleNumberOf('12', 999)).toMatch(/^12999\d$/);
    expect(sampleNumberOf('12', 1000)).toMatch(/^121000\d$/);
    expect(sampleNumberOf('99', 9_999_999)).toHaveLength(10);
    expect(() => sampleNumberOf('99', 10_000_000)).toThrow();
  });

  test('every single wrong digit is found, in all numbers of one writer', () => {
    let tried = 0;
    for (let running = 1; running <= 300; running += 1) {
      const right = sampleNumberOf('47', running);
      for (let place = 0; place < right.length; place += 1)
        for (let digit = 0; digit < 10; digit += 1) {
          const wrong = right.slice(0, place) + digit + right.slice(place + 1);
          expect(isSampleNumber(wrong)).toBe(wrong === right);
          tried += 1;
        }
    }
    expect(tried).toBe(300 * 60);
  });

  test('a wrong entry is told by its mistake', () => {
    const right = sampleNumberOf('12', 16);
    expect(checkSampleNumber(` ${right.slice(0, 2)} ${right.slice(2, 5)}-${right.slice(5)} `)).toEqual({
      kind: 'right',
      sampleNumber: right,
    });
    expect(checkSampleNumber('')).toEqual({ kind: 'wrong', mistake: 'empty' });
    expect(checkSampleNumber('12O016')).toEqual({ kind: 'wrong', mistake: 'notDigits' });
    expect(checkSampleNumber('١٢٠٠١٦')).toEqual({ kind: 'wrong', mistake: 'notDigits' });
    expect(checkSampleNumber('12001')).toEqual({ kind: 'wrong', mistake: 'tooShort' });
    expect(checkSampleNumber('12345678901')).toEqual({ kind: 'wrong', mistake: 'tooLong' });
    const wrong = right.slice(0, 5) + ((Number(right.slice(5)) + 1) % 10);
    expect(checkSampleNumber(wrong)).toEqual({ kind: 'wrong', mistake: 'checkDigit' });
  });

  test('the next number follows the highest under its own prefix', () => {
    expect(nextSampleNumber('12', [])).toBe(sampleNumberOf('12', 1));
    const used = [sampleNumberOf('12', 9), sampleNumberOf('12', 41), sampleNumberOf('13', 500), 'junk'];
    expect(nextSampleNumber('12', used)).toBe(sampleNumberOf('12', 42));
  });
});

describe('prefixes', () => {
  test('follow from the writer, run from 10 to 99, and differ between most writers', () => {
    const seen = new Set<string>();
    for (let n = 0; n < 2000; n += 1) {
      const prefix = prefixOf(
        n
          .toString(32)
          .padStart(12, '0')
          .replaceAll('i', 'x')
          .replaceAll('l', 'y')
          .replaceAll('o', 'z')
          .replaceAll('u', 'w'),
      );
      expect(prefix).toMatch(/^[1-9]\d$/);
      seen.add(prefix);
    }
    expect(seen.size).toBe(90);
    expect(prefixOf('wwwwwwwwwwww')).toBe(prefixOf('wwwwwwwwwwww'));
  });

  test('step past those that another writer holds', () => {
    const own = prefixOf('wwwwwwwwwwww');
    const other = prefixOf('wwwwwwwwwwww', new Set([own]));
    expect(other).not.toBe(own);
    expect(prefixOfNumber(sampleNumberOf(other, 1))).toBe(other);
  });

  test('when all ninety are held, numbers may coincide and are named', () => {
    const all = new Set(Array.from({ length: 90 }, (_, n) => String(n + 10)));
    expect(prefixOf('wwwwwwwwwwww', all)).toBe(prefixOf('wwwwwwwwwwww'));
    const number = sampleNumberOf('12', 1);
    expect(
      sameNumber([
        { id: 'b', sampleNumber: number },
        { id: 'c', sampleNumber: sampleNumberOf('12', 2) },
        { id: 'a', sampleNumber: number },
      ]),
    ).toEqual([{ sampleNumber: number, sampleIds: ['a', 'b'] }]);
  });
});
