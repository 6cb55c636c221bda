/**
 * Every page of the route table in each state that it lists: axe, targets, contrast, reflow at 320 CSS px, large and spaced text, the
 * keyboard, and nothing said by console, policy or net. A page without a state fails, and so does a state that nobody can reach.
 */
import { expect, test } from '@playwright/test';
import { routeTable } from '#app/routeTable.ts';
import { openPracticeBook } from './appPages.ts';
import { correctByKeyboard, notShown, otherMedia, takeIn } from './everyPageActs.ts';
import { goneTour, newBookTour } from './everyPageNewBook.ts';
import { practiceOfficeTour, practiceTour } from './everyPagePractice.ts';
import { open, type Stop } from './everyPageSteps.ts';
import { goRound, named, visitorOf } from './everyPageVisitor.ts';
import { faults, faultyPage } from './faultyPage.ts';
import { hostileBackup, hostileIds, hostileNames } from './hostileBook.ts';
import { bringEyes, doesNotFit, focused, footWrong, looksWrong } from './pageChecks.ts';
import { type Preview, startPreview } from './preview.ts';

test.use({ colorScheme: 'light', timezoneId: 'America/New_York', locale: 'en-US' });
test.setTimeout(300_000);

const tour: readonly Stop[] = [...newBookTour, ...goneTour, ...practiceTour, ...practiceOfficeTour];

let server: Preview;
test.beforeAll(async () => {
  server = await startPreview(4831);
});
test.afterAll(() => server?.stop());

test('each page has states, and somebody goes to each of them', () => {
  expect(routeTable.length).toBeGreaterThan(20);
  expect(routeTable.filter(({ states }) => states.length === 0).map(({ path }) => path)).toEqual([]);
  const listed = routeTable.flatMap(({ path, states }) => states.map((state) => named({ path, state })));
  const gone = new Set(tour.map(named));
  expect(listed.filter((each) => !gone.has(each))).toEqual([]);
  const lookedAt = new Set(tour.filter(({ as }) => as !== 'gone' && as !== 'without-book').map(named));
  expect([...lookedAt].filter((each) => !listed.includes(each))).toEqual([]);
  const tabbed = new Set(tour.filter(({ tab }) => tab).map(({ path }) => path));
  expect(routeTable.map(({ path }) => path).filter((path) => !tabbed.has(path))).toEqual([]);
});

test('every page of a new book can be read, reached and used by everyone', async ({ page }) => {
  await goRound(page, server, [...newBookTour, ...goneTour]);
});

test('the eyes see what is wrong', async ({ page }) => {
  await bringEyes(page);
  await page.goto(`data:text/html,${encodeURIComponent(faultyPage)}`);
  const seen = [await looksWrong(page), await doesNotFit(page), await footWrong(page)].flat();
  await page.keyboard.press('Tab');
  seen.push(...((await focused(page))?.wrong ?? []));
  expect(faults.filter((fault) => !seen.some((each) => each.includes(fault)))).toEqual([]);
});

test('a sample is found and a value put right by keyboard alone', async ({ page }) => {
  const visitor = await visitorOf(page, server);
  await correctByKeyboard(visitor);
  expect(visitor.wrong).toEqual([]);
});

test('names that try to be code stay text, on every page that shows them', async ({ page }) => {
  const visitor = await visitorOf(page, server, '2026-11-25T10:30:00-05:00');
  await takeIn(visitor, 'hostile.txt', hostileBackup());
  const look = async (path: string, names: readonly string[]): Promise<void> => {
    await open(visitor, path);
    await expect(page.locator('main h1')).toBeVisible();
    await expect(page.locator('main h1')).not.toHaveText('This page could not be shown');
    await test.step(path, () => expect.poll(() => notShown(page, names), { message: path }).toEqual([]));
    for (const each of await doesNotFit(page)) visitor.wrong.push(`${path}: ${each}`);
  };
  expect(new Set(hostileNames).size).toBe(40);
  await look('/', hostileNames.slice(0, 1));
  await look('/samples', hostileNames);
  await look('/lists', hostileNames);
  await look(`/box/${hostileIds.box}`, hostileNames);
  for (const [at, name] of hostileNames.entries()) {
    await look(`/shift/${hostileIds.shift(at + 1)}`, [name]);
    await look(`/sample/${hostileIds.sample(at + 1)}`, [name]);
    await look(`/sample/${encodeURIComponent(name)}`, []);
    await look(`/sample/${name}`, []);
  }
  await look('/sample/%zz%', []);
  expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
  expect(visitor.wrong).toEqual([]);
});

test('moves nothing where less motion is asked for, keeps its edges in forced colours, and prints without its buttons', async ({
  page,
}) => {
  const visitor = await visitorOf(page, server);
  await openPracticeBook(page);
  const link = page.getByRole('link', { name: /^Pia Putty.*look at the pump|^Pia Putty: look at the pump/ });
  const running = (await link.first().getAttribute('href'))?.slice(1) ?? '';
  for (const [name, path] of [
    ['today', '/'],
    ['sample', running],
    ['samples', '/samples'],
    ['keep', '/keep'],
  ] as const) {
    await open(visitor, path);
    await expect(page.locator('main h1')).toBeVisible();
    for (const each of await otherMedia(page, name)) visitor.wrong.push(`${path}: ${each}`);
  }
  expect(visitor.wrong).toEqual([]);
});
