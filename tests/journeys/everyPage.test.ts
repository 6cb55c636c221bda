/**
 * Every page of the route table in each state that it lists: axe, targets, contrast, reflow at 320 CSS px, large and spaced text, the
 * keyboard, and nothing said by console, policy or net. A page without a state fails, and so does a state that nobody can reach.
 */
import { expect, type Page, test } from '@playwright/test';
import { routeTable } from '#app/routeTable.ts';
import { waitUntilKept, watchPage } from './appPages.ts';
import { type Stop, type Visitor, visit } from './everyPageSteps.ts';
import { goneTour, newBookTour, practiceTour } from './everyPageTour.ts';
import { bringEyes } from './pageChecks.ts';
import { type Preview, startPreview } from './preview.ts';

test.use({ colorScheme: 'light', timezoneId: 'America/New_York', locale: 'en-US' });
test.setTimeout(300_000);

const tour: readonly Stop[] = [...newBookTour, ...goneTour, ...practiceTour];
const named = ({ path, state }: Pick<Stop, 'path' | 'state'>): string => `${path}, ${state}`;

let server: Preview;
test.beforeAll(async () => {
  server = process.env.PAGES_AT
    ? { address: process.env.PAGES_AT, stop: async () => undefined }
    : await startPreview(4831);
});
test.afterAll(() => server?.stop());

/** A device of its own, with the app on it and its clock standing still. */
async function visitorOf(page: Page): Promise<Visitor> {
  page.setDefaultTimeout(5000);
  await page.clock.setFixedTime('2026-10-06T10:30:00-04:00');
  await bringEyes(page);
  const wrong = await watchPage(page, server.address);
  await page.goto(server.address);
  await waitUntilKept(page);
  return { page, address: server.address, wrong, known: new Map() };
}

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

for (const [name, stops] of [
  ['a new book', [...newBookTour, ...goneTour]],
  ['the practice book', practiceTour],
] as const) {
  test(`every page of ${name} can be read, reached and used by everyone`, async ({ page }) => {
    const visitor = await visitorOf(page);
    for (const stop of stops) await test.step(named(stop), () => visit(visitor, stop));
    expect(visitor.wrong).toEqual([]);
  });
}
