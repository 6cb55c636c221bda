import { describe, expect, test } from 'vitest';
import { canonicalJson, factLimits, readFact } from '#records/canonical.ts';
import { folded, ids, journal, prepared, putOn } from './facts.ts';

const [entry] = journal([prepared()]);
const text = entry?.text ?? '';
const plain = JSON.parse(text) as Record<string, unknown>;

describe('the text of a fact', () => {
  test('has sorted keys, no white space, and stands on one line', () => {
    expect(canonicalJson({ b: 1, a: { d: [1, { y: 2, x: 'line\nbreak' }], c: null } })).toBe(
      '{"a":{"c":null,"d":[1,{"x":"line\\nbreak","y":2}]},"b":1}',
    );
    expect(text).not.toMatch(/\n/);
  });

  test('is the same for keys written in another order', () => {
    const reversed = Object.fromEntries(Object.entries(plain).reverse());
    expect(canonicalJson(reversed)).toBe(text);
  });

  test('never holds what JSON cannot say', () => {
    expect(() => canonicalJson({ massUg: Number.NaN })).toThrow();
    expect(() => canonicalJson({ massUg: Number.POSITIVE_INFINITY })).toThrow();
  });
});

describe('reading a fact', () => {
  test('knows a fact of this version', () => {
    expect(readFact(text)).toMatchObject({ kind: 'known', fact: { kind: 'samplePrepared.v1' } });
  });

  test('carries unknown keys in envelope and body', () => {
    const newer = { ...plain, moodOfTheDay: 'fine', body: { ...(plain.body as object), shade: 7 } };
    const read = readFact(JSON.stringify(newer));
    expect(read).toMatchObject({ kind: 'known', fact: { body: { shade: 7 } } });
  });

  test('carries an unknown kind, and says whether it must be understood', () => {
    const kind = 'moonSeen.v3';
    expect(readFact(JSON.stringify({ ...plain, kind }))).toMatchObject({ kind: 'unknown', mustUnderstand: false });
    expect(readFact(JSON.stringify({ ...plain, kind, mustUnderstand: true }))).toMatchObject({
      kind: 'unknown',
      mustUnderstand: true,
    });
  });

  test('a known kind whose body does not fit must be understood before anything relaxes', () => {
    const read = readFact(JSON.stringify({ ...plain, body: { sampleId: ids.one } }));
    expect(read).toMatchObject({ kind: 'unknown', mustUnderstand: true });
  });

  test.each([
    ['no JSON', '{"id":', 'notJson'],
    ['no envelope', '{"id":"x"}', 'notAFact'],
    ['a bare number', '7', 'notAFact'],
    ['null', 'null', 'notAFact'],
    ['two lines', text.replace(',', ',\n'), 'notOneLine'],
    ['a lone surrogate', text.replace('windowRemoval', '\ud800'), 'badCharacters'],
    ['more than 256 KB', text.replace('windowRemoval', 'é'.repeat(factLimits.bytesCount / 2)), 'tooLong'],
    ['__proto__ in the envelope', text.replace('{', '{"__proto__":{"polluted":true},'), 'forbiddenKey'],
    ['__proto__ deep in the body', text.replace('"body":{', '"body":{"a":[{"__proto__":1}],'), 'forbiddenKey'],
    ['constructor', text.replace('"body":{', '"body":{"constructor":{"prototype":1},'), 'forbiddenKey'],
    ['prototype', text.replace('"body":{', '"body":{"prototype":1,'), 'forbiddenKey'],
    ['too deep', text.replace('"body":{', `"body":{"a":${'['.repeat(25)}${']'.repeat(25)},`), 'tooDeep'],
    ['a hundred thousand brackets', '['.repeat(100_000), 'notJson'],
    ['a hundred thousand closed brackets', '['.repeat(100_000) + ']'.repeat(100_000), 'tooDeep'],
  ])('refuses %s', (_, bad, reason) => {
    expect(readFact(bad)).toEqual({ kind: 'refused', reason });
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test('a hostile key can be a value', () => {
    expect(readFact(text.replace('windowRemoval', '__proto__')).kind).toBe('known');
  });
});

describe('unknown facts on a record', () => {
  const entries = journal([prepared(), putOn('12:00')]);
  const strange = (mustUnderstand: boolean) => {
    const body = { sampleId: ids.one, what: 'a later version' };
    const fact = { ...plain, id: 'yyyyyyyyyyyy.00000001', kind: 'cassetteWeighed.v1', body, mustUnderstand };
    return { id: fact.id, text: ` ${JSON.stringify(fact)} ` };
  };

  test('that need not be understood leave it as it was, and are listed', () => {
    const record = folded(`sample:${ids.one}`, [...entries, strange(false)]);
    expect(record.notUnderstood).toEqual([]);
    expect(record.factIds).toContain('yyyyyyyyyyyy.00000001');
    expect(record.putOn?.at).toBe('2026-11-25T12:00:00.000Z');
  });

  test('that must be understood make it doubtful', () => {
    expect(folded(`sample:${ids.one}`, [...entries, strange(true)]).notUnderstood).toEqual(['yyyyyyyyyyyy.00000001']);
  });
});
