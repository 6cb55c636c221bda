import { existsSync } from 'node:fs';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config';
import { beforeAll, describe, expect, test } from 'vitest';
import { entries, forbidden } from './layerRules.ts';

async function violations(paths: string[], baseDir?: string): Promise<ICruiseResult> {
  const options = {
    ruleSet: { forbidden },
    validate: true,
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { conditionNames: ['import', 'default', 'types'], exportsFields: ['exports'] },
    ...(baseDir ? { baseDir } : {}),
  };
  const result = await cruise(paths, options, undefined, { tsConfig: extractTSConfig('tsconfig.json') });
  return result.output as ICruiseResult;
}

describe('layers', () => {
  let result: ICruiseResult;
  beforeAll(async () => {
    result = await violations(['src', 'shared', 'vite.config.ts']);
  }, 60_000);

  test('the checker really read the source', () => {
    expect(result.summary.totalCruised).toBeGreaterThan(80);
  });

  test('no arrow points the wrong way', () => {
    const found = result.summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}\n  ${v.comment ?? ''}`);
    expect(found).toEqual([]);
  });

  test('every file in src is reachable from an entry', () => {
    const modules = new Map(result.modules.map((m) => [m.source, m]));
    const present = entries.filter((path) => existsSync(path));
    const seen = new Set<string>();
    const queue = [...present];
    while (queue.length > 0) {
      const source = queue.pop() as string;
      if (seen.has(source)) continue;
      seen.add(source);
      for (const dependency of modules.get(source)?.dependencies ?? []) queue.push(dependency.resolved);
    }
    const dead = result.modules
      .map((m) => m.source)
      .filter((path) => /^src\/.*\.tsx?$/.test(path) && !path.endsWith('.d.ts'));
    expect(dead.filter((path) => !seen.has(path))).toEqual([]);
  });

  test('planted wrong arrows are caught, each by its rule', async () => {
    const planted = await violations(['src'], 'tests/house/planted');
    expect(planted.summary.totalCruised).toBe(5);
    const names = new Set(planted.summary.violations.map((v) => v.rule.name));
    expect([...names].sort()).toEqual(['core-arrow', 'no-cycle', 'screens-are-siblings']);
  }, 30_000);
});
