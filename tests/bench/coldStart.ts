/**
 * From nothing to a usable run sheet: 5,000 samples in the book, the app kept on the device, the server gone, the browser just started,
 * the processor slowed down four times. Timed from the navigation to the frame that shows the first due sentence.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from '@playwright/test';
import { en as shell } from '#words/shell.ts';
import type { Preview } from '../journeys/preview.ts';
import { dropProfile, newProfile, startBrowser } from '../journeys/realBrowser.ts';
import type { Figure } from './figure.ts';
import { type InPage, openStorePage } from './storePage.ts';

const samples = 5000;
const starts = 7;
export const slowdown = 4;

interface Seen {
  firstDueMs: number | null;
  scripts: string[];
}

/** Runs before the app: notes when the first line of the run sheet was painted, and which scripts had been fetched by then. */
function watch(): void {
  const seen: Seen = { firstDueMs: null, scripts: [] };
  (globalThis as unknown as { seen: Seen }).seen = seen;
  const observer = new MutationObserver(() => {
    if (document.querySelector('main li')?.textContent?.includes(':') !== true) return;
    observer.disconnect();
    seen.scripts = performance.getEntriesByType('resource').map(({ name }) => name);
    requestAnimationFrame(() =>
      setTimeout(() => {
        seen.firstDueMs = performance.now();
      }),
    );
  });
  observer.observe(document, { subtree: true, childList: true, characterData: true });
}

export async function slowDown(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
}

async function fill(profile: string, address: string): Promise<void> {
  const browser = await startBrowser(profile);
  try {
    const { page, context } = browser;
    page.setDefaultTimeout(180_000);
    await openStorePage(context, page, address);
    const facts = await page.evaluate((count) => (globalThis as unknown as InPage).storePage.seed(count), samples);
    console.info(`a book of ${samples} samples, ${facts} facts`);
    await page.goto(address);
    await page.getByText(shell.ready).waitFor();
    // What the browser still holds in memory goes to its disk before it is killed.
    await page.waitForTimeout(6000);
  } finally {
    await browser.kill();
  }
}

async function start(
  profile: string,
  address: string,
): Promise<{ ms: number; scripts: readonly string[]; due: string }> {
  const browser = await startBrowser(profile);
  try {
    const { page } = browser;
    await page.addInitScript(watch);
    await slowDown(page);
    await page.goto(address);
    await page.waitForFunction(() => (globalThis as unknown as { seen: Seen }).seen.firstDueMs !== null);
    const { firstDueMs, scripts } = await page.evaluate(() => (globalThis as unknown as { seen: Seen }).seen);
    const due = (await page.locator('main li').first().textContent()) ?? '';
    return { ms: firstDueMs ?? Number.NaN, scripts, due };
  } finally {
    await browser.kill();
  }
}

/** gzip -9 of the scripts that the page had asked for when the run sheet stood there. */
function scriptBytes(urls: readonly string[]): number {
  const files = [...new Set(urls.map((url) => new URL(url).pathname))].filter((path) => path.endsWith('.js'));
  return files.reduce((sum, path) => sum + gzipSync(readFileSync(join('dist', path)), { level: 9 }).length, 0);
}

export async function coldStartFigures(preview: Preview): Promise<readonly Figure[]> {
  const profile = newProfile();
  try {
    await fill(profile, preview.address);
    await preview.stop();
    const ms: number[] = [];
    let scripts: readonly string[] = [];
    for (let count = 0; count < starts; count += 1) {
      const started = await start(profile, preview.address);
      ms.push(started.ms);
      scripts = started.scripts;
      if (count === 0) console.info(`the first due sentence: ${started.due}`);
    }
    return [
      {
        name: `cold start without a server, ${samples} samples, ${slowdown} times slower`,
        unit: 'ms',
        values: ms,
        goal: 1500,
      },
      {
        name: 'script fetched before the run sheet is usable, gzip -9',
        unit: 'bytes',
        values: [scriptBytes(scripts)],
        goal: 150_000,
      },
    ];
  } finally {
    dropProfile(profile);
  }
}
