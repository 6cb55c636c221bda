/** Every number of shared/ has its unit, its dates and its source; every file goes through its schema. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { besideSetFile } from '#reference/besideSet.ts';
import { blankRuleFile } from '#reference/blankRuleFile.ts';
import { crewSampleRuleFile } from '#reference/crewSample.ts';
import { dutiesFile } from '#reference/duties.ts';
import { commonPracticeFile, examplesFile } from '#reference/examples.ts';
import { flowToleranceFile } from '#reference/flowTolerance.ts';
import { holidaysFile } from '#reference/holidays.ts';
import { labelSheetsFile } from '#reference/labelSheets.ts';
import { limitSetFile } from '#reference/limitSet.ts';
import { methodFile } from '#reference/methods.ts';
import { withSources } from '#reference/namedSources.ts';
import { presumedTiersFile } from '#reference/presumption.ts';
import { publishedExposuresFile } from '#reference/publishedExposures.ts';
import { respiratorsFile } from '#reference/respirators.ts';
import { source } from '#reference/source.ts';
import { statesFile } from '#reference/states.ts';
import { everydayTasksFile } from '#reference/tasks.ts';

/** Which schema a file of shared/ goes through, by its path. A file without one fails. */
const schemaOf: readonly (readonly [RegExp, z.ZodType])[] = [
  [/^limits\/beside\//, besideSetFile],
  [/^limits\//, limitSetFile],
  [/^duties\//, dutiesFile],
  [/^methods\//, methodFile],
  [/^states\//, statesFile],
  [/^respirators\//, respiratorsFile],
  [/^flow\//, flowToleranceFile],
  [/^holidays\//, holidaysFile],
  [/^labels\//, labelSheetsFile],
  [/^blanks\//, blankRuleFile],
  [/^tasks\/presumedTiers/, presumedTiersFile],
  [/^tasks\/everyday/, everydayTasksFile],
  [/^tasks\/publishedExposures/, publishedExposuresFile],
  [/^strategy\/crewSample/, crewSampleRuleFile],
  [/^examples\/published/, examplesFile],
  [/^examples\/commonPractice/, commonPracticeFile],
];

const paths = readdirSync('shared', { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => path.endsWith('.json'))
  // day files are input of the command line, not reference data: tests/cli reads them
  .filter((path) => !/^(schemas|examples\/days)\//.test(path));

type Json = Record<string, unknown>;
const read = (path: string): Json => JSON.parse(readFileSync(join('shared', path), 'utf8')) as Json;

interface Around {
  readonly unit: boolean;
  readonly source: boolean;
  readonly dates: boolean;
}

/** Paths of the numbers that lack a unit, a source or dates, in themselves or in what stands around them. */
function bareNumbers(value: unknown, path: string, around: Around): string[] {
  if (typeof value === 'number')
    return around.unit && around.source && around.dates ? [] : [`${path} ${JSON.stringify(around)}`];
  if (Array.isArray(value)) return value.flatMap((one, index) => bareNumbers(one, `${path}/${index}`, around));
  if (typeof value !== 'object' || value === null) return [];
  const here = value as Json;
  const inside: Around = {
    unit: around.unit || typeof here.unit === 'string',
    source: around.source || 'source' in here,
    dates: around.dates || 'effective' in here || ('from' in here && 'to' in here),
  };
  return Object.entries(here).flatMap(([key, inner]) => bareNumbers(inner, `${path}/${key}`, inside));
}
const countNumbers = (value: unknown): number =>
  typeof value === 'number'
    ? 1
    : typeof value === 'object' && value !== null
      ? Object.values(value).reduce((sum: number, one) => sum + countNumbers(one), 0)
      : 0;

test('there are files, and each kind is among them', () => {
  for (const [pattern] of schemaOf)
    expect(
      paths.some((path) => pattern.test(path)),
      String(pattern),
    ).toBe(true);
});

describe.each(paths)('shared/%s', (path) => {
  const file = read(path);

  test('goes through its schema', () => {
    const schema = schemaOf.find(([pattern]) => pattern.test(path))?.[1];
    expect(schema, 'no schema for this file').toBeDefined();
    expect(schema?.safeParse(withSources(file)).error).toBeUndefined();
  });

  test('every number has a unit, dates and a source', () => {
    expect(bareNumbers(file, '', { unit: false, source: false, dates: false })).toEqual([]);
  });

  test('names no source that nothing uses', () => {
    const used = new Set([...JSON.stringify(file).matchAll(/"source":"([^"]+)"/g)].map((match) => match[1]));
    expect(Object.keys((file.sources as object | undefined) ?? {}).filter((key) => !used.has(key))).toEqual([]);
  });
});

describe('what the schemas refuse', () => {
  const federal = () => withSources(read('limits/us-fed-constr-lead.json')) as Json & { pel: Json; actionLevel: Json };
  const problem = (file: unknown): string => JSON.stringify(limitSetFile.safeParse(file).error?.issues ?? 'accepted');
  const cited = { title: 'A source', readOn: '2026-11-25', mark: 'READ' };
  const values = (...periods: readonly (readonly [string, string | null])[]) =>
    periods.map(([from, to]) => ({ from, to, value: 50, source: cited }));

  test('the file as it is passes', () => {
    expect(problem(federal())).toBe('"accepted"');
  });

  test('a value without a source', () => {
    const file = federal();
    file.pel.values = [{ from: '1993-06-03', to: null, value: 50 }];
    expect(problem(file)).toContain('source');
  });

  test('a value without a unit', () => {
    const file = federal();
    delete file.pel.unit;
    expect(problem(file)).toContain('unit');
  });

  test.each([
    ['a gap', values(['1993-06-03', '2026-12-31'], ['2027-01-02', null]), 'a gap between 2026-12-31 and 2027-01-02'],
    ['an overlap of one day', values(['1993-06-03', '2027-01-01'], ['2027-01-01', null]), 'an overlap at 2027-01-01'],
    ['an open end before another', values(['1993-06-03', null], ['2027-01-01', null]), 'an overlap at 2027-01-01'],
    ['an end before its beginning', values(['2027-01-01', '2026-01-01']), 'before it begins'],
    ['no value', [], 'no period at all'],
    ['a day that is not in the calendar', values(['2026-02-30', null]), 'not a day of the calendar'],
  ])('%s', (_, periods, message) => {
    const file = federal();
    file.pel.values = periods;
    expect(problem(file)).toContain(message);
  });

  test('read without a day, or a day without having been read', () => {
    expect(source.safeParse({ ...cited, readOn: null }).success).toBe(false);
    expect(source.safeParse({ ...cited, mark: 'MEMORY' }).success).toBe(false);
    expect(source.safeParse({ ...cited, readOn: null, mark: 'MEMORY' }).success).toBe(true);
  });

  test('a source that is named but not there', () => {
    expect(() => withSources({ sources: {}, value: { source: 'nowhere' } })).toThrow('no source named nowhere');
  });
});

test('the walk that looks for bare numbers finds one', () => {
  expect(
    bareNumbers({ effective: {}, a: { value: 1, unit: 'min' } }, '', { unit: false, source: false, dates: false }),
  ).toHaveLength(1);
  expect(paths.reduce((sum, path) => sum + countNumbers(read(path)), 0)).toBeGreaterThan(150);
});
