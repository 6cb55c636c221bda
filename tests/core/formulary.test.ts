import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { computeByName, formulary } from '#core/formulary.ts';

test('every formula that a file of core makes is in the list, once, under its own name', () => {
  const made = readdirSync('src/core').flatMap((file) =>
    [...readFileSync(`src/core/${file}`, 'utf8').matchAll(/^export const (\w+) = formula\(/gm)].map(
      (match) => match[1],
    ),
  );
  expect(made.length).toBeGreaterThan(25);
  expect([...formulary.keys()].sort()).toEqual(made.sort());
});

test('every symbol of a formula stands in its expression, and its source has a mark', () => {
  for (const { name, symbol, expression, inputs, source } of formulary.values()) {
    expect(expression.startsWith(`${symbol} = `), name).toBe(true);
    for (const input of Object.keys(inputs))
      if (input !== 'n') expect(expression, `${name}: ${input}`).toContain(input);
    expect(['READ', 'READ-2', 'DERIVED', 'MEMORY'], name).toContain(source.mark);
  }
});

test('inputs that do not fit are a bug', () => {
  expect(() => computeByName('nothing', {})).toThrow('no formula named nothing');
  expect(() => computeByName('sampledVolume', { Q: 2 })).toThrow('takes Q, t');
  expect(() => computeByName('twa8', { C: 30, t: [480] })).toThrow('twa8: C');
});
