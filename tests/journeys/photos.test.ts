/**
 * Pictures in the built app and a real browser: a photo of 24 million dots with the place in it (5712 by 4284, the size that breaks
 * canvases on iOS, READ: blitz-hermite-resize#6), one held upright, one with clear parts, grain that no encoder makes small, and files
 * that are no pictures. What is kept is read by ImageMagick, which is none of ours.
 */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page } from '@playwright/test';
import { databaseNames } from '#store/database.ts';
import { metadataIn } from '#store/photos/jpeg.ts';
import { bareHeic, barePng, device, includesText, takenAt } from '#tests/store/pictures.ts';
import { en as flow } from '#words/flow.ts';
import { en as lists } from '#words/lists.ts';
import { en as words } from '#words/photos.ts';
import { load, openPracticeBook as openExample, test, watchPage } from './appPages.ts';
import {
  asTaken,
  chosen,
  drawnPicture,
  type KeptPicture,
  keptPictures,
  type Motif,
  readOutside,
} from './takenPictures.ts';

const shots = join('tests', 'out', 'photos');
mkdirSync(shots, { recursive: true });

const input = (page: Page, of: keyof typeof words.take) => page.getByLabel(words.take[of]);
const kept = (page: Page): Promise<readonly KeptPicture[]> => keptPictures(page, databaseNames.practice);

/** Open, and written to its end: the day with its pumps stands there. */
async function openPracticeBook(page: Page): Promise<void> {
  await openExample(page);
  await expect(page.locator('main a[href*="/shift/"]').first()).toBeVisible({ timeout: 30_000 });
}

async function shot(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: join(shots, `${name}.png`), animations: 'disabled', fullPage: true });
}

async function openMeter(page: Page, address: string): Promise<void> {
  await load(page, address, '/lists');
  await page.getByRole('button', { name: /DP-3/ }).click();
  await expect(input(page, 'certificate')).toBeAttached();
}

/** Chooses the file, keeps it, and answers the one picture that is more than before. */
async function keepOne(page: Page, file: ReturnType<typeof chosen>): Promise<KeptPicture> {
  const before = (await kept(page)).map(({ bytes }) => Buffer.from(bytes).toString('base64'));
  await input(page, 'certificate').setInputFiles(file);
  await expect(page.getByAltText(words.preview)).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: words.keep }).click();
  await expect(page.getByText(/the picture is kept\./)).toBeVisible();
  const added = (await kept(page)).filter(({ bytes }) => !before.includes(Buffer.from(bytes).toString('base64')));
  expect(added).toHaveLength(1);
  return added[0] as KeptPicture;
}

function expectClean({ bytes, widthPx, heightPx }: KeptPicture): void {
  expect(bytes.length).toBeLessThanOrEqual(300_000);
  expect(Math.max(widthPx, heightPx)).toBeLessThanOrEqual(2048);
  expect(metadataIn(bytes)).toEqual([]);
  for (const text of ['Exif', 'GPS', device, takenAt]) expect(includesText(bytes, text), text).toBe(false);
  const outside = readOutside(bytes);
  if (outside !== null) {
    expect(outside).toMatch(/JPEG/);
    expect(outside).not.toMatch(/exif|gps|Invented Camera/i);
  }
}

test('a reading is saved, and its photo of 24 million dots is kept beside it without the place', async ({
  page,
  serve,
}) => {
  test.setTimeout(240_000);
  const { address } = await serve(4691);
  await page.goto(address);
  const wrong = await watchPage(page, address);
  await openPracticeBook(page);
  const photo = asTaken(await drawnPicture(page, [5712, 4284], 'scene'));
  const outside = readOutside(photo);
  // The test's own picture says what has to be gone, also to an outside reader.
  if (outside !== null) expect(outside).toMatch(/exif:GPSLatitude: 40\/1, 26\/1, 46\/1/);

  await page.locator('a[href*="/shift/"]').first().click();
  await page.waitForURL(/shift/);
  const shiftId = /\/shift\/([^/?]+)/.exec(decodeURIComponent(page.url()))?.[1] ?? '';
  await load(page, address, `/shift/${shiftId}/flow`);
  await page.getByRole('radio', { name: /P-|\d/ }).first().check({ force: true });
  await page.locator('#reading-0-low').fill('2.5');
  await page.locator('#reading-0-high').fill('2.6');
  await shot(page, 'flow-empty');
  await input(page, 'meterReading').setInputFiles(chosen(photo));
  await expect(page.getByAltText(words.preview)).toBeVisible({ timeout: 60_000 });
  await shot(page, 'flow-ready');
  await page.getByRole('button', { name: flow.saveNext }).click();
  await expect(page.getByText(/is saved\./)).toBeVisible();
  await expect(page.getByText(/the picture is kept\./)).toBeVisible();
  await shot(page, 'flow-kept');
  const [picture] = await kept(page);
  if (picture === undefined) throw new Error('no picture is kept');
  expectClean(picture);
  expect([picture.widthPx, picture.heightPx].map((size) => size / Math.max(picture.widthPx, picture.heightPx))).toEqual(
    [1, expect.closeTo(0.75, 2)],
  );

  // A file that is no picture is told beside it, and the next reading is saved all the same.
  await page.getByRole('radio').first().check({ force: true });
  await page.locator('#reading-0-low').fill('2.4');
  await input(page, 'meterReading').setInputFiles(chosen(Buffer.from('2.4 L/min'), 'reading.jpg'));
  await expect(page.getByText(words.refused.notAPicture)).toBeVisible();
  await shot(page, 'flow-refused');
  await page.getByRole('button', { name: flow.saveNext }).click();
  await expect(page.getByText(/2\.40.*is saved\./)).toBeVisible();
  await expect(page.getByText(words.refused.notAPicture)).toHaveCount(0);
  expect(wrong).toEqual([]);
});

test('a certificate is kept upright and on paper, and what cannot be kept says why', async ({ page, serve }) => {
  test.setTimeout(240_000);
  const { address } = await serve(4692);
  await page.goto(address);
  const wrong = await watchPage(page, address);
  await openPracticeBook(page);
  await openMeter(page, address);
  await shot(page, 'meter-none');
  const draw = (size: readonly [number, number], motif: Motif, type?: string) => drawnPicture(page, size, motif, type);

  // Orientation 6: what was the left side stands at the top (CIPA DC-008, tag 274).
  const upright = await keepOne(page, chosen(asTaken(await draw([4032, 3024], 'half'), 6)));
  expectClean(upright);
  expect(upright.heightPx / upright.widthPx).toBeCloseTo(4 / 3, 2);
  const [top = [], bottom = []] = upright.corners;
  expect([(top[0] ?? 0) > 200, (top[2] ?? 255) < 60, (bottom[0] ?? 255) < 60, (bottom[2] ?? 0) > 200]).toEqual([
    true,
    true,
    true,
    true,
  ]);

  const clear = await keepOne(page, chosen(await draw([900, 700], 'clear', 'image/png'), 'label.png', 'image/png'));
  expectClean(clear);
  expect(Math.min(...clear.corners.flat())).toBeGreaterThan(250);

  const grain = await keepOne(page, chosen(await draw([4096, 3072], 'grain')));
  expectClean(grain);
  await shot(page, 'meter-three');

  const refusals: readonly (readonly [ReturnType<typeof chosen>, string])[] = [
    [chosen(bareHeic(4032, 3024), 'IMG_0002.HEIC', 'image/heic'), words.refused.cannotRead],
    [chosen(barePng(90_000, 90_000), 'bomb.png', 'image/png'), words.refused.tooLarge],
    [chosen((await draw([800, 600], 'scene')).slice(0, 9000)), words.refused.cannotRead],
    [chosen(Buffer.from('not a picture'), 'certificate.jpg'), words.refused.notAPicture],
  ];
  for (const [file, sentence] of refusals) {
    await input(page, 'certificate').setInputFiles(file);
    await expect(page.getByText(sentence)).toBeVisible();
    await expect(page.getByRole('button', { name: words.keep })).toHaveCount(0);
  }
  await shot(page, 'meter-refused');
  expect(await kept(page)).toHaveLength(3);

  // Large where it stands, and small again.
  const one = page.getByRole('button', { name: /^Picture of the certificate/ }).first();
  const small = await one.boundingBox();
  await one.click();
  await expect(one).toHaveAttribute('aria-expanded', 'true');
  expect((await one.boundingBox())?.width ?? 0).toBeGreaterThan((small?.width ?? 0) * 1.5);
  await shot(page, 'meter-large');

  // Left out again: nothing is kept, and the same file can be chosen once more.
  await input(page, 'certificate').setInputFiles(chosen(asTaken(await draw([640, 480], 'scene'))));
  await page.getByRole('button', { name: words.remove }).click();
  await expect(input(page, 'certificate')).toBeAttached();
  expect(await kept(page)).toHaveLength(3);
  await expect(page.getByRole('button', { name: lists.leave })).toBeVisible();
  expect(wrong).toEqual([]);
});
