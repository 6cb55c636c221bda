/**
 * A file that another app shares: posted as a form through the installed worker in a real browser, shown once, looked into with the same
 * result as a chosen one, and gone afterwards.
 */
import { createServer, type Server } from 'node:http';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import { en as received } from '#words/received.ts';
import { en as start } from '#words/start.ts';
import { expectGone, load, test, waitUntilKept, watchPage } from './appPages.ts';

/** Stands in for the share sheet: the browser posts a form from outside of the app, as the system does. */
async function shareSheet(): Promise<{ readonly address: string; readonly close: () => Promise<void> }> {
  const server: Server = createServer((request, response) => {
    const to = new URL(request.url ?? '/', 'http://localhost').searchParams.get('to') ?? '';
    response.setHeader('content-type', 'text/html; charset=utf-8');
    response.end(
      `<form method="post" enctype="multipart/form-data" action="${to}receive"><input type="file" name="file" multiple><button>Share</button></form>`,
    );
  });
  await new Promise<void>((resolve) => server.listen(0, resolve));
  const bound = server.address();
  if (bound === null || typeof bound === 'string') throw new Error('no port');
  return {
    address: `http://localhost:${bound.port}/`,
    close: () => new Promise((resolve) => void server.close(() => resolve())),
  };
}

const chosen = {
  name: 'ledger ../<b>of</b>\u202Epiz.txt',
  mimeType: 'text/plain',
  buffer: Buffer.from('not a book'),
};
/** As the page shows it: no folder, nothing that turns the direction of writing. */
const shown = 'b>piz.txt';

async function share(page: Page, from: string, to: string, files: Parameters<Page['setInputFiles']>[1]): Promise<void> {
  await page.goto(`${from}?to=${encodeURIComponent(to)}`);
  await page.locator('input').setInputFiles(files);
  await page.getByRole('button', { name: 'Share' }).click();
  await expect(page.getByRole('heading', { level: 1, name: received.heading })).toBeVisible();
}

/** What the first page says of a file once it was looked into. */
async function saidOf(page: Page): Promise<string> {
  await page.getByRole('button', { name: start.lookInto }).click();
  const alert = page.getByRole('alert').first();
  await expect(alert).toBeVisible();
  return (await alert.textContent())?.trim() ?? '';
}

const waitingCount = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const names = (await caches.keys()).filter((name) => /received/.test(name));
    const counts = await Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).length));
    return counts.reduce((sum, count) => sum + count, 0);
  });

for (const base of ['/', '/notebook/']) {
  test(`a shared file is put by, looked into like a chosen one, and gone, at ${base}`, async ({ page, serve }) => {
    const preview = await serve(base === '/' ? 4641 : 4642, base);
    const sheet = await shareSheet();
    try {
      await page.goto(preview.address);
      await waitUntilKept(page);
      // Nothing of this needs the server.
      await preview.stop();
      await expectGone(preview.address);
      await page.getByRole('radio', { name: start.choices.backup.label }).check({ force: true });
      await page.getByLabel(start.file).setInputFiles(chosen);
      const chosenSays = await saidOf(page);

      await share(page, sheet.address, preview.address, chosen);
      const wrong = await watchPage(page, preview.address);
      expect(new URL(page.url()).hash).toBe('#/received');
      await expect(page.getByText(shown, { exact: true })).toBeVisible();
      await page.screenshot({
        path: join('tests', 'out', 'pages', `received-shared${base === '/' ? '' : '-below'}.png`),
      });
      expect(await waitingCount(page)).toBe(1);
      await page.getByRole('link', { name: received.look }).click();
      expect(await saidOf(page)).toBe(chosenSays);
      // Refused: it waits no longer. Loading the page again sends nothing anew.
      expect(await waitingCount(page)).toBe(0);
      await load(page, preview.address, '/received');
      await expect(page.getByText(received.nothing)).toBeVisible();
      expect(wrong).toEqual([]);
    } finally {
      await sheet.close();
    }
  });
}

test('five files at once, none at all, and one put aside', async ({ page, serve }) => {
  const preview = await serve(4643);
  const sheet = await shareSheet();
  try {
    await page.goto(preview.address);
    await waitUntilKept(page);
    const five = Array.from({ length: 5 }, (_, at) => ({ ...chosen, name: `sheet-${at}.pdf` }));
    await share(page, sheet.address, preview.address, five);
    await expect(page.getByText(received.not.tooMany)).toBeVisible();
    expect(await waitingCount(page)).toBe(4);
    await page.getByRole('button', { name: received.putAsideOf('sheet-2.pdf') }).click();
    await expect(page.getByText('sheet-2.pdf', { exact: true })).toHaveCount(0);
    expect(await waitingCount(page)).toBe(3);
    await share(page, sheet.address, preview.address, []);
    await expect(page.getByText(received.not.noFile)).toBeVisible();
  } finally {
    await sheet.close();
  }
});
