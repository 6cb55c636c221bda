/** House rules that a reader would otherwise have to remember: file sizes, the clock, units in names, markup that may not stand. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { unitBySuffix } from '#core/units.ts';
import { envelope, factBodies } from '#records/fact.ts';

const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));

const source = filesUnder('src').map((path) => ({ path, text: readFileSync(path, 'utf8') }));
const tests = filesUnder('tests').map((path) => ({ path, text: readFileSync(path, 'utf8') }));
const tooLong = (files: typeof source, cap: number) =>
  files.map(({ path, text }) => ({ path, lines: text.split('\n').length - 1 })).filter(({ lines }) => lines > cap);

interface Definition {
  readonly type?: string;
  readonly shape?: Readonly<Record<string, unknown>>;
  readonly innerType?: unknown;
  readonly element?: unknown;
  readonly in?: unknown;
  readonly out?: unknown;
  readonly options?: readonly unknown[];
}

/** Collects the path of every number in a zod schema. */
function walkNumbers(schema: unknown, path: string, found: string[]): void {
  const def = (schema as { def?: Definition } | undefined)?.def;
  if (!def) return;
  if (def.type === 'number') found.push(path);
  for (const [key, child] of Object.entries(def.shape ?? {})) walkNumbers(child, `${path}.${key}`, found);
  for (const inner of [def.innerType, def.element, def.in, def.out, ...(def.options ?? [])])
    walkNumbers(inner, path, found);
}

describe('house rules', () => {
  test('there is something to check', () => {
    expect(source.length).toBeGreaterThan(80);
    expect(tests.length).toBeGreaterThan(40);
  });

  test('no file in src is over 200 lines, no test over 300', () => {
    expect(tooLong(source, 200)).toEqual([]);
    expect(tooLong(tests, 300)).toEqual([]);
  });

  test('nothing below the store reads a clock or a random number', () => {
    const pure = /^src[\\/](core|reference|records|findings|documents|words)[\\/]/;
    const clock =
      /\bnew Date\(\s*\)|\bDate\.now\b|\bisToday\b|\bisPast\b|\bisFuture\b|\bstartOfToday\b|performance\.now|Math\.random|randomUUID|getRandomValues/;
    expect(source.filter(({ path, text }) => pure.test(path) && clock.test(text)).map(({ path }) => path)).toEqual([]);
  });

  test('only the device file of the store reads the clock and random numbers', () => {
    const clock = /\bnew Date\(\s*\)|\bDate\.now\b|Math\.random|randomUUID|getRandomValues/;
    const allowed = /^src[\\/](store[\\/]device\.ts|cli[\\/])/;
    expect(source.filter(({ path, text }) => !allowed.test(path) && clock.test(text)).map(({ path }) => path)).toEqual(
      [],
    );
  });

  test('no drawer names, no barrel files', () => {
    const drawer = /[\\/](utils?|helpers?|types|manager|index)\.tsx?$/;
    expect(source.filter(({ path }) => drawer.test(path)).map(({ path }) => path)).toEqual([]);
  });

  test('no raw markup, no number inputs, no inline event text', () => {
    const banned = /dangerouslySetInnerHTML|\.innerHTML|javascript:|type=["']number["']/;
    expect(source.filter(({ text }) => banned.test(text)).map(({ path }) => path)).toEqual([]);
  });

  test('no machine path and no registry host stands anywhere', () => {
    const banned = new RegExp(['/(work|tmp|root)/', 'registry\\.npm'].join('|'));
    expect(source.filter(({ text }) => banned.test(text)).map(({ path }) => path)).toEqual([]);
  });

  test('every number in a record schema ends in its unit', () => {
    const suffixes = Object.keys(unitBySuffix);
    // A flow over a flow has no unit, and a bare count counts what its kind names.
    const bare = ['gearDoubtSettled.v1.trueOverRead', 'moneySpent.v1.count'];
    const paths: string[] = [];
    walkNumbers(envelope, 'envelope', paths);
    for (const [kind, body] of Object.entries(factBodies)) walkNumbers(body, kind, paths);
    expect(paths.filter((path) => !suffixes.some((suffix) => path.endsWith(suffix)))).toEqual(bare);
    expect(paths.length).toBeGreaterThan(15);
  });
});
