/** Whole acts on the pages: a job by keyboard alone, a foreign book taken in, and the same page on other media. */
import { expect, type Page } from '@playwright/test';
import { en as start } from '#words/start.ts';
import { heading, picture, tap, type Visitor } from './everyPageSteps.ts';
import { coloursWrong } from './pageChecks.ts';

/** Presses Tab until the control of that name has the focus. */
async function tabTo({ page }: Visitor, name: RegExp): Promise<void> {
  for (let press = 0; press < 80; press += 1) {
    const at = await page.evaluate(() => {
      const element = document.activeElement;
      const labels =
        element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement ? element.labels : null;
      return (labels?.[0] ?? element)?.textContent?.trim() ?? '';
    });
    if (press > 0 && name.test(at)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`80 steps of the Tab key did not reach ${name}`);
}

/** Opens the practice book, finds the sample of Otto Oakum by its number, and corrects when it was stopped. Nothing is clicked. */
export async function correctByKeyboard(visitor: Visitor): Promise<void> {
  const { page } = visitor;
  const { keyboard } = page;
  await tabTo(visitor, /^A new book$/);
  await keyboard.press('ArrowDown');
  await keyboard.press('ArrowDown');
  await tabTo(visitor, /^Open the practice book$/);
  await keyboard.press('Enter');
  await heading(visitor, /Tallow Street Library/);
  await tabTo(visitor, /^Samples$/);
  await keyboard.press('Enter');
  await heading(visitor, 'Samples');
  const line = await page
    .getByRole('link', { name: /^Otto Oakum/ })
    .first()
    .textContent();
  const number = /(\d{6}) ·/.exec(line ?? '')?.[1] ?? '';
  expect(number).not.toBe('');
  await tabTo(visitor, /^Find by number$/);
  await keyboard.type(number);
  await keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Found' })).toBeVisible();
  await tabTo(visitor, /^Otto Oakum/);
  await keyboard.press('Enter');
  await heading(visitor, /^Otto Oakum is done/);
  await tabTo(visitor, /^Correct a value$/);
  await keyboard.press('Enter');
  await tabTo(visitor, /^Correct: Time of “Stopped/);
  await keyboard.press('Enter');
  await heading(visitor, 'Correct a value');
  await tabTo(visitor, /^Right value$/);
  await keyboard.type('15:25');
  await tabTo(visitor, /^Save the correction$/);
  await keyboard.press('Enter');
  // Without a reason it is refused, and the focus is on what is said: from there its link leads to the field.
  await expect(page.getByRole('alert')).toContainText('Say why in a few words');
  await tabTo(visitor, /^Say why in a few words/);
  await keyboard.press('Enter');
  await expect(page.getByLabel(/^Why/)).toBeFocused();
  await keyboard.type('The watch was five minutes fast');
  await tabTo(visitor, /^Save the correction$/);
  await keyboard.press('Enter');
  await heading(visitor, /^Otto Oakum is done/);
  await expect(page.getByText(/because The watch was five minutes fast/)).toBeVisible();
}

/** A file is taken in as the first book of a device, and the first of its people holds the device. */
export async function takeIn(visitor: Visitor, name: string, text: string): Promise<void> {
  const { page } = visitor;
  await page.getByRole('radio', { name: start.choices.backup.label }).check({ force: true });
  await page.getByLabel(start.file).setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
  await tap(visitor, 'Look into the file');
  await tap(visitor, 'Take this book in');
  await heading(visitor, 'Who holds this device?');
  await page.getByRole('combobox').selectOption({ index: 1 });
  await tap(visitor, /^Go on as/);
  await expect(page.getByRole('heading', { level: 2, name: 'What is due' })).toBeVisible();
}

/** Which of these names do not stand on the page letter by letter. */
export const notShown = (page: Page, names: readonly string[]): Promise<string[]> =>
  page.evaluate((wanted) => {
    const shown = document.querySelector('main')?.textContent ?? '';
    return wanted.filter((name) => !shown.includes(name));
  }, names);

/** The page where less motion is asked for, in forced colours, and on paper. */
export async function otherMedia(page: Page, name: string): Promise<string[]> {
  const wrong: string[] = [];
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const moving = await page.evaluate(() =>
    document.getAnimations().map((animation) => String(animation.effect?.getComputedTiming().duration)),
  );
  if (moving.some((duration) => Number(duration) > 1)) wrong.push(`moves: ${moving.join(', ')}`);
  await page.emulateMedia({ reducedMotion: null, forcedColors: 'active' });
  wrong.push(...(await coloursWrong(page)).map((each) => `forced colours, ${each}`));
  await picture(page, `${name}-forced-colours`);
  await page.emulateMedia({ forcedColors: null, colorScheme: 'dark' });
  await picture(page, `${name}-dark`);
  await page.emulateMedia({ colorScheme: 'light', media: 'print' });
  const printed = await page.evaluate(() => ({
    kept: [...document.querySelectorAll('header a, header button, footer, [data-part=foot], [data-action]')]
      .filter((each) => each.checkVisibility())
      .map((each) => (each.textContent ?? '').slice(0, 40)),
    heading: document.querySelector('main h1')?.checkVisibility() ?? false,
    ground: getComputedStyle(document.documentElement).backgroundColor,
  }));
  if (printed.kept.length > 0) wrong.push(`printed: ${printed.kept.join(', ')}`);
  if (!printed.heading) wrong.push('printed without its heading');
  if (printed.ground !== 'rgb(255, 255, 255)') wrong.push(`printed on ${printed.ground}`);
  await page.setViewportSize({ width: 680, height: 960 });
  await picture(page, `${name}-print`);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.emulateMedia({ media: null });
  return wrong;
}
