/** Builds the page with the store, and lays it over the app's address, so that it shares the app's database. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import { build } from 'vite';
import type { StorePage } from './page/page.ts';

const out = join('tests', 'out', 'storePage');
const typeOf = (file: string): string => (file.endsWith('.js') ? 'text/javascript' : 'text/html');
let built: Promise<unknown> | null = null;

/** Once per run. */
const buildOnce = (): Promise<unknown> => {
  built ??= build({
    configFile: false,
    root: join('tests', 'bench', 'page'),
    base: './',
    logLevel: 'error',
    build: { outDir: join(process.cwd(), out), emptyOutDir: true, target: 'es2022', modulePreload: false },
  });
  return built;
};

/** Before the app itself has put its worker at this address: afterwards the worker would answer. */
export async function openStorePage(context: BrowserContext, page: Page, address: string): Promise<void> {
  await buildOnce();
  await context.route(`${address}store-page/**`, async (route) => {
    const path = new URL(route.request().url()).pathname.split('/store-page/')[1] || 'index.html';
    await route.fulfill({ body: readFileSync(join(out, path)), contentType: typeOf(path) });
  });
  await page.goto(`${address}store-page/`);
  await page.waitForFunction(() => 'storePage' in globalThis);
}

/** Runs in the page: `storePage()` there. */
export type InPage = { readonly storePage: StorePage };
