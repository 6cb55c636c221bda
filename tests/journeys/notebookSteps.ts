/** Hands and eyes on a page of the notebook: fields by their labels, taps by their words, the day's clock, and a picture of every page. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Locator, type Page } from '@playwright/test';
import { standsThere, watchPage } from './appPages.ts';
import { newProfile, type RealBrowser, startBrowser } from './realBrowser.ts';

/** The day's wall clock runs by what the journey says, so that minutes are hours; everything else in the browser runs by itself. */
const zoneOffset = '-04:00';

export const phone = { width: 390, height: 844 };
export const desk = { width: 1280, height: 800 };

export interface Notebook {
  readonly page: Page;
  readonly address: string;
  /** Sets the wall clock of the device. Local time in the zone of the site, such as '06:50'. */
  readonly at: (time: string, day?: string) => Promise<void>;
  /** Pictures at both sizes, and that nothing of the page lies outside of them. */
  readonly picture: (name: string) => Promise<void>;
  /** Kills the browser as an empty battery would, and opens it again on the same profile. */
  readonly restart: () => Promise<Notebook>;
  readonly kill: () => Promise<void>;
}

export interface Shelf {
  readonly profile: string;
  readonly address: string;
  readonly workOn: string;
  readonly pictures: string;
  /** Of the window, whenever no picture is taken. */
  readonly size: typeof phone;
  /** What must not happen on any page, a list for each start of the browser. */
  readonly watched: string[][];
  shown: number;
}

export const newShelf = (address: string, workOn: string, pictures: string, size = phone): Shelf => {
  mkdirSync(pictures, { recursive: true });
  return { profile: newProfile(), address, workOn, pictures, size, watched: [], shown: 0 };
};

export async function openNotebook(shelf: Shelf, time: string, day = shelf.workOn): Promise<Notebook> {
  // The device stands where the bridge is: its zone is preset on the page of a new site.
  process.env.TZ = 'America/New_York';
  const browser: RealBrowser = await startBrowser(shelf.profile, shelf.size);
  const { page } = browser;
  page.setDefaultTimeout(8_000);
  shelf.watched.push(await watchPage(page, shelf.address));
  let current = { time, day };
  const at = async (next: string, on = current.day): Promise<void> => {
    current = { time: next, day: on };
    await page.clock.setFixedTime(`${on}T${next}:00${zoneOffset}`);
  };
  await at(time, day);
  // No dialog of the system can be answered from here: files go out as downloads, as in browsers without such a dialog.
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  return {
    page,
    address: shelf.address,
    at,
    picture: async (name) => {
      shelf.shown += 1;
      await takePictures(page, join(shelf.pictures, `${String(shelf.shown).padStart(2, '0')}-${name}`), shelf.size);
    },
    kill: browser.kill,
    restart: async () => {
      await browser.kill();
      const again = await openNotebook(shelf, current.time, current.day);
      await again.page.goto(shelf.address);
      return again;
    },
  };
}

async function takePictures(page: Page, file: string, back: typeof phone): Promise<void> {
  await standsThere(page);
  for (const [name, size] of [
    ['1280', desk],
    ['390', phone],
  ] as const) {
    await page.setViewportSize(size);
    const [wider, height] = await page.evaluate(() => {
      const { scrollWidth, scrollHeight } = document.documentElement;
      return [scrollWidth - window.innerWidth, scrollHeight] as const;
    });
    // The whole page in one window: the main action then stands at its foot, as it does at the end of scrolling.
    await page.setViewportSize({ ...size, height: Math.max(size.height, height) });
    await page.screenshot({ path: `${file}-${name}.png`, animations: 'disabled' });
    expect(wider, `${file} at ${name} is wider than its window`).toBeLessThanOrEqual(0);
  }
  await page.setViewportSize(back);
}

/** A page of the book by its address, loaded anew. */
export async function load({ page, address }: Notebook, path: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(`${address}#${path}`);
}

export const heading = ({ page }: Notebook, name: string | RegExp): Promise<void> =>
  expect(page.getByRole('heading', { level: 1, name })).toBeVisible();

export const says = ({ page }: Notebook, text: string | RegExp): Promise<void> =>
  expect(page.getByText(text).first()).toBeVisible();

/** Figures as they stand on the page, each alone on its line with its unit. */
export async function saysFigures({ page }: Notebook, figures: readonly string[]): Promise<void> {
  for (const figure of figures) await expect(page.getByText(figure, { exact: true }).first()).toBeVisible();
}

/** A button or a link: whoever holds the phone sees no difference. */
export const tap = async ({ page }: Notebook, name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name }).or(page.getByRole('link', { name })).first().click();

/** A thumb hits the row, not the small mark in it. */
async function tapRow(page: Page, mark: Locator): Promise<void> {
  if (await mark.isChecked()) return;
  await page.locator(`label[for="${await mark.getAttribute('id')}"]`).click();
  await expect(mark).toBeChecked();
}

export const choose = async ({ page }: Notebook, name: string | RegExp, group?: string | RegExp): Promise<void> =>
  tapRow(page, within(page, group).getByRole('radio', { name }));

export const tick = async ({ page }: Notebook, name: string | RegExp): Promise<void> =>
  tapRow(page, page.getByRole('checkbox', { name }));

export const tickAll = async ({ page }: Notebook): Promise<void> => {
  for (const box of await page.getByRole('checkbox').all()) await tapRow(page, box);
};

export const fill = async (
  { page }: Notebook,
  label: string | RegExp,
  text: string,
  group?: string | RegExp,
): Promise<void> => within(page, group).getByLabel(label).first().fill(text);

/** A float that bounces, or a line of a certificate: two numbers in one group. */
export const fillPair = async (
  notebook: Notebook,
  group: string | RegExp,
  [first, second]: readonly [readonly [string, string], readonly [string, string]],
): Promise<void> => {
  await fill(notebook, first[0], first[1], group);
  await fill(notebook, second[0], second[1], group);
};

const within = (page: Page, group: string | RegExp | undefined): Page | Locator =>
  group === undefined ? page : page.getByRole('group', { name: group }).first();
