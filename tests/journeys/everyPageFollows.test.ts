/** The practice book, part two: see everyPage.test.ts. In files of their own, so that they go side by side. */
import { test } from '@playwright/test';
import { practiceOfficeTour } from './everyPagePractice.ts';
import { goRound } from './everyPageVisitor.ts';
import { type Preview, startPreview } from './preview.ts';

test.use({ colorScheme: 'light', timezoneId: 'America/New_York', locale: 'en-US' });
test.setTimeout(300_000);

let server: Preview;
test.beforeAll(async () => {
  server = await startPreview(4833);
});
test.afterAll(() => server?.stop());

test('every page of what follows, of what is kept and of what there is to read can be read, reached and used by everyone', async ({
  page,
}) => {
  await goRound(page, server, practiceOfficeTour);
});
