/** Passphrases. Outside this project: the list as its makers describe it, and a uniform distribution. */
import { afterEach, describe, expect, test } from 'vitest';
import { drawBelow, setPorts } from '#store/device.ts';
import { candidatesOf, isDrawn, isStrongEnough, newPassphrase, passphraseOf } from '#store/handOver/passphrase.ts';
import { passphraseWords } from '#store/handOver/passphraseWords.ts';
import { seededRandom } from './seeded.ts';

const words = passphraseWords.trim().split(/\s+/);
const randomBytes = (next: () => number): void =>
  setPorts({ random: (bytes) => void bytes.set(Array.from(bytes, next)) });
afterEach(() => setPorts());

describe('the list', () => {
  // https://www.eff.org/deeplinks/2016/07/new-wordlists-random-passphrases (READ): 7,776 words, none the beginning of another.
  test('has 7,776 different words, none of which begins another', () => {
    expect(new Set(words).size).toBe(7776);
    const sorted = [...words].sort();
    for (let at = 1; at < sorted.length; at += 1)
      expect(sorted[at]?.startsWith(sorted[at - 1] ?? ''), sorted[at]).toBe(false);
  });

  // https://www.eff.org/dice/ (READ): the dice 4 3 4 6 3 are the word "panoramic".
  test('stands in the order of five dice', () => {
    const at = [4, 3, 4, 6, 3].reduce((sum, die) => sum * 6 + (die - 1), 0);
    expect(words[at]).toBe('panoramic');
  });
});

describe('a new passphrase', () => {
  test('is seven words of the list, and each is another one', () => {
    const made = Array.from({ length: 500 }, newPassphrase);
    expect(new Set(made).size).toBe(500);
    for (const passphrase of made) {
      expect(passphrase).toMatch(/^[a-z]+( [a-z]+){6}$/);
      for (const word of passphrase.split(' ')) expect(words).toContain(word);
      expect(isStrongEnough(passphrase)).toBe(true);
    }
  });

  test('numbers are drawn without a lean: chi squared of 7,772 fields, 155,440 draws', () => {
    const count = 7772;
    const each = 20;
    const seeded = seededRandom(4711);
    randomBytes(() => seeded.between(0, 255));
    const seen = new Array<number>(count).fill(0);
    for (let draw = 0; draw < count * each; draw += 1) {
      const drawn = drawBelow(count);
      seen[drawn] = (seen[drawn] ?? Number.NaN) + 1;
    }
    const chi = seen.reduce((sum, had) => sum + (had - each) ** 2 / each, 0);
    // Mean n - 1, variance 2 (n - 1): five deviations either way (textbook figures of the distribution).
    expect(Math.abs(chi - (count - 1))).toBeLessThan(5 * Math.sqrt(2 * (count - 1)));
  });

  test('what would tip the scale is drawn again', () => {
    // 65,536 = 8 x 7,772 + 3,360: draws from 62,176 on are of no use.
    const draws = [0xff, 0xff, 0xf2, 0xe0, 0xf2, 0xdf];
    randomBytes(() => draws.shift() ?? 0);
    expect(drawBelow(7772)).toBe(7771);
    expect(draws).toEqual([]);
  });
});

describe('a typed passphrase', () => {
  const seven = 'walnut easel gravel canine unicorn lantern oboe';

  test('of listed words is the one that was shown', () => {
    for (const typed of [` ${seven.toUpperCase()}\n`, seven.replaceAll(' ', '-'), seven.replaceAll(' ', ' – ')])
      expect(passphraseOf(typed)).toBe(seven);
  });

  test('of one’s own keeps its capitals and signs', () => {
    expect(passphraseOf('  The Bridge-Keeper’s dog  ')).toBe('The Bridge-Keeper’s dog');
    expect(candidatesOf('a-b')).toEqual(['a-b']);
    expect(candidatesOf('walnut-easel')).toEqual(['walnut easel', 'walnut-easel']);
  });

  test('is strong enough from 20 characters on, or as seven different listed words', () => {
    expect(isStrongEnough('nineteen characters')).toBe(false);
    expect(isStrongEnough('nineteen characters!')).toBe(true);
    expect(isStrongEnough('ab'.repeat(30))).toBe(false);
    expect(isStrongEnough(`   ${'x'.repeat(3)}${' '.repeat(30)}`)).toBe(false);
    expect(isDrawn('oboe '.repeat(9))).toBe(false);
    expect(isDrawn(seven.replace('oboe', 'obo'))).toBe(false);
    // Seven short words have fewer than 20 letters now and then: what was drawn is strong all the same.
    expect(isStrongEnough(seven)).toBe(true);
  });
});
