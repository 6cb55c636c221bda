/** What the journeys about the app itself share: an open book, every address, and what went wrong on a page. */
import { test as base, expect, type Page } from '@playwright/test';
import { routeTable } from '#app/routeTable.ts';
import { en as shell } from '#words/shell.ts';
import { en as start } from '#words/start.ts';
import { type Preview, startPreview } from './preview.ts';

const idOf: Readonly<Record<string, string>> = {
  shiftId: '0123456789ab.2026-11-24',
  workdayId: '0123456789ab.2026-11-24',
  sampleId: '0123456789ab',
  boxId: '0123456789ab',
};

/** Every route with its parameters filled in: records that no book holds, so that each page also meets what is not there. */
export const everyPath: readonly string[] = routeTable.map(({ path }) =>
  path.replace(/:(\w+)/g, (_, name: string) => idOf[name] ?? 'none'),
);

/** A preview server that ends with its test, however the test ends. */
export const test = base.extend<{ readonly serve: (port: number, at?: string) => Promise<Preview> }>({
  // biome-ignore lint/correctness/noEmptyPattern: the fixture needs no other, and must say so in this form
  serve: async ({}, use) => {
    const started: Preview[] = [];
    await use(async (port, at) => {
      const preview = await startPreview(port, at);
      started.push(preview);
      return preview;
    });
    for (const preview of started) await preview.stop();
  },
});

/** Nobody answers any more. */
export const expectGone = (address: string): Promise<void> => expect(fetch(address)).rejects.toThrow();

/** Collects what must not happen on any page: violations of the policy, errors, requests to another address. */
export async function watchPage(page: Page, address: string): Promise<string[]> {
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') wrong.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    if (!request.url().startsWith(address) && !request.url().startsWith('blob:'))
      wrong.push(`request: ${request.url()}`);
  });
  await page.exposeFunction('tellViolation', (text: string) => void wrong.push(`policy: ${text}`));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const tell = (globalThis as unknown as { tellViolation: (text: string) => void }).tellViolation;
      tell(`${event.violatedDirective} ${event.blockedURI} ${event.sample}`);
    });
  });
  return wrong;
}

/** The app is on the device. */
export const waitUntilKept = (page: Page): Promise<void> =>
  expect(page.getByText(shell.ready)).toBeVisible({ timeout: 30_000 });

export async function openPracticeBook(page: Page): Promise<void> {
  await page.getByRole('radio', { name: start.choices.practice.label }).check();
  await page.getByRole('button', { name: start.openPractice }).click();
  await expect(page.getByText(shell.example, { exact: true })).toBeVisible({ timeout: 30_000 });
}

/** Loads an address anew, not only its last part. */
export async function load(page: Page, address: string, path: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(`${address}#${path}`);
}

/** A page of ours stands there: its heading, and neither the page for failures nor an endless wait. */
export async function standsThere(page: Page): Promise<void> {
  const heading = page.locator('main h1');
  await expect(heading).toBeVisible();
  await expect(heading).not.toHaveText(shell.failed.heading);
  await expect(page.getByText(shell.loading)).toHaveCount(0);
}
