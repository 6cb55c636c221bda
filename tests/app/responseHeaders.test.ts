/** One list of response headers: every recipe in the README carries every one of them, as it is served. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hostingRecipe, recipeEnd, recipeStart } from '#app/hostingRecipe.ts';
import { headersFor, headersOfAll, headersOfHttps, isHashed, policy, policyInPage } from '#app/responseHeaders.ts';

describe('response headers', () => {
  test('the README holds the recipes exactly as printed from the one list', () => {
    const readme = readFileSync('README.md', 'utf8');
    const start = readme.indexOf(recipeStart);
    expect(start).toBeGreaterThan(0);
    expect(readme.slice(start + recipeStart.length, readme.indexOf(recipeEnd)).trim()).toBe(hostingRecipe());
  });

  test('each of the three recipes names each header with its value', () => {
    const recipes = hostingRecipe().split(/\n\n(?=Caddy:|Apache:)/);
    expect(recipes).toHaveLength(3);
    for (const recipe of recipes)
      for (const [name, value] of Object.entries({ ...headersOfAll, ...headersOfHttps }))
        expect(recipe).toContain(`${name} "${value}"`);
  });

  test('nothing is allowed that is not named, and nothing from elsewhere', () => {
    expect(policy['default-src']).toBe("'none'");
    expect(Object.values(policy).join(' ')).not.toMatch(/unsafe|https?:|\*|data:/);
    expect(policy['require-trusted-types-for']).toBe("'script'");
  });

  test('the page carries all of the policy but what a page cannot carry', () => {
    expect(policyInPage).not.toContain('frame-ancestors');
    expect(policyInPage.split('; ')).toHaveLength(Object.keys(policy).length - 1);
  });

  test('only files with a hash in their name are kept without asking', () => {
    expect(isHashed('/assets/index-DlP74cAM.js')).toBe(true);
    expect(isHashed('/notebook/assets/index-DlP74cAM.js')).toBe(true);
    for (const path of ['/', '/index.html', '/sw.js', '/manifest.webmanifest', '/icons/notebook.svg'])
      expect(headersFor(path)['Cache-Control']).toBe('no-cache');
  });
});
