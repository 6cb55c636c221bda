/** A newer version comes while someone is at work: it is offered, never forced, and nothing that was typed is lost. */
import { expect, type Page, test } from '@playwright/test';
import { en as shell } from '#words/shell.ts';
import { en as start } from '#words/start.ts';
import { everyPath, load, openPracticeBook, standsThere, waitUntilKept, watchPage } from './appPages.ts';
import { serveTwoVersions } from './twoVersions.ts';

/** A mark on the running page: gone as soon as it was loaded again. */
const mark = (page: Page): Promise<void> =>
  page.evaluate(() => void Object.assign(globalThis, { neverReloaded: true }));
const isMarked = (page: Page): Promise<boolean> => page.evaluate(() => 'neverReloaded' in globalThis);
const edition = (page: Page): Promise<string | null> => page.locator('html').getAttribute('data-edition');
const lookForUpdate = (page: Page): Promise<void> =>
  page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));

test('offers the newer version, keeps what is typed, and changes once it is told to', async ({ page, context }) => {
  const served = await serveTwoVersions(4651);
  try {
    await page.goto(served.address);
    await waitUntilKept(page);
    const other = await context.newPage();
    await other.goto(served.address);
    await mark(page);
    await mark(other);
    await page.getByLabel(start.firmName).fill('Ironbridge Repainting');
    served.change();
    await lookForUpdate(page);
    await expect(page.getByText(shell.update.offer)).toBeVisible();
    await expect(page.getByLabel(start.firmName)).toHaveValue('Ironbridge Repainting');
    await page.waitForTimeout(1500);
    expect(await isMarked(page)).toBe(true);
    expect(await edition(page)).toBeNull();

    // Not now: left alone, and every page of the older version is still whole.
    await page.getByRole('button', { name: shell.update.later }).click();
    await expect(page.getByText(shell.update.offer)).toHaveCount(0);
    expect(await isMarked(page)).toBe(true);

    await page.reload();
    expect(await edition(page)).toBeNull();
    await page.getByRole('button', { name: shell.update.now }).click();
    await expect(page.locator('html')).toHaveAttribute('data-edition', 'second');
    expect(await isMarked(page)).toBe(false);

    // The other window is told and left as it is.
    await expect(other.getByText(shell.update.elsewhere)).toBeVisible();
    expect(await isMarked(other)).toBe(true);
    await other.getByRole('button', { name: shell.update.again }).click();
    await expect(other.locator('html')).toHaveAttribute('data-edition', 'second');
  } finally {
    await served.stop();
  }
});

test('only tells of the newer version while a pump runs, and shows the pages of the older one meanwhile', async ({
  page,
  context,
}) => {
  const served = await serveTwoVersions(4652);
  try {
    await page.goto(served.address);
    await waitUntilKept(page);
    await openPracticeBook(page);
    // A window that stays open keeps the older version in use; when the last one is closed the newer one begins.
    await (await context.newPage()).goto(served.address);
    served.change();
    await lookForUpdate(page);
    // In the practice book a pump is on a worker: told, and nothing to press.
    await expect(page.getByText(shell.update.waiting)).toBeVisible();
    await expect(page.getByRole('button', { name: shell.update.now })).toHaveCount(0);
    const wrong = await watchPage(page, served.address);
    // All files of the older version are on the device together, so every third page stands for the rest.
    for (const path of everyPath.filter((_, at) => at % 3 === 0)) {
      await load(page, served.address, path);
      await standsThere(page);
      expect(await edition(page)).toBeNull();
    }
    expect(wrong).toEqual([]);
  } finally {
    await served.stop();
  }
});
