/** The practice book, part one: see everyPage.test.ts. */
import { test } from '@playwright/test';
import { practiceTour } from './everyPagePractice.ts';
import { goRound } from './everyPageVisitor.ts';
import { type Preview, startPreview } from './preview.ts';

test.use({ colorScheme: 'light', timezoneId: 'America/New_York', locale: 'en-US' });
test.setTimeout(300_000);

let server: Preview;
test.beforeAll(async () => {
  server = await startPreview(4832);
});
test.afterAll(() => server?.stop());

test('every page of a shift, and of its samples in the office, can be read, reached and used by everyone', async ({
  page,
}) => {
  await goRound(page, server, practiceTour);
});
