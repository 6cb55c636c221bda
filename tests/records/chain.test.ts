import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { factHash, link, noLink, verifyChain } from '#records/chain.ts';
import { ids, journal, prepared, putOn, stopped } from './facts.ts';

/** The oracle: the hash of Node's own library, not the one that computes the chain. */
const sha256 = (text: string): string => createHash('sha256').update(text, 'utf8').digest('hex');
const entries = journal([prepared(), putOn('12:00'), stopped('20:00', 480)]);

describe('hash chain', () => {
  test('SHA-256 of "abc", FIPS 180-2 appendix B.1 (MEMORY, agrees with node:crypto)', () => {
    expect(factHash('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    expect(factHash('abc')).toBe(sha256('abc'));
  });

  test('each link is H(previous link + H(text)), by node:crypto, beyond ASCII too', () => {
    let previous = '';
    for (const text of ['{"a":1}', '{"name":"Ñandú µg/m³ 日本"}', '{"a":1}']) {
      const expected = sha256(previous + sha256(text));
      expect(link(previous, text)).toBe(expected);
      previous = expected;
    }
    expect(link(noLink, 'x')).toBe(sha256(sha256('x')));
  });

  test('an untouched chain verifies', () => {
    expect(verifyChain(entries)).toBeNull();
    expect(verifyChain(entries.slice(1), entries[0]?.link)).toBeNull();
    expect(verifyChain([])).toBeNull();
  });

  test('a changed text is found at its own place', () => {
    const touched = entries.map((e, i) => (i === 1 ? { ...e, text: e.text.replace('12:00', '12:30') } : e));
    expect(touched[1]?.text).not.toBe(entries[1]?.text);
    expect(verifyChain(touched)).toBe(entries[1]?.id);
  });

  test('a fact left out, put in another order or given another link is found', () => {
    expect(verifyChain([entries[0], entries[2]].flatMap((e) => e ?? []))).toBe(entries[2]?.id);
    expect(verifyChain([entries[1], entries[0]].flatMap((e) => e ?? []))).toBe(entries[1]?.id);
    expect(verifyChain(entries.map((e, i) => (i === 2 ? { ...e, link: 'f'.repeat(64) } : e)))).toBe(entries[2]?.id);
  });

  test('the same fact later in a chain has another link', () => {
    const twice = journal([prepared(ids.one), prepared(ids.one)]);
    expect(twice[0]?.link).not.toBe(twice[1]?.link);
  });
});
