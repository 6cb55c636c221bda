/** Two tabs of one browser write into one book at the same time: one chain, no number twice, and both show the same afterwards. */
import { expect, type Page, test } from '@playwright/test';
import { type InPage, openStorePage } from '#tests/bench/storePage.ts';
import { readDisk, tornIn, writersOf } from './bookOnDisk.ts';
import { startPreview } from './preview.ts';
import { dropProfile, newProfile, type RealBrowser, startBrowser } from './realBrowser.ts';

/** 600 in all: issue 2, "What must be seen to work" 7. */
const appendsOfTab = 300;
const samplesCount = 30;
/** So many of a tab's remarks stand with one sample. */
const remarksOfSample = appendsOfTab / samplesCount;

const remark = (page: Page, name: string, sampleIds: readonly string[]): Promise<number> =>
  page.evaluate(([text, count, ids]) => (globalThis as unknown as InPage).storePage.remark(text, count, ids), [
    name,
    appendsOfTab,
    sampleIds,
  ] as const);

/** What the page of a sample tells of it. */
async function storyShown(page: Page, address: string, sampleId: string): Promise<string> {
  await page.goto(`${address}#/sample/${sampleId}`);
  await expect(page.getByText(/^Remark: here \d+$/)).toHaveCount(remarksOfSample);
  await expect(page.getByText(/^Remark: there \d+$/)).toHaveCount(remarksOfSample);
  return (await page.locator('main').textContent()) ?? '';
}

test('two tabs write 600 times into one book: no fork, no hole, and both show the same', async () => {
  test.setTimeout(180_000);
  const preview = await startPreview(4632);
  const profile = newProfile();
  let browser: RealBrowser | null = null;
  try {
    browser = await startBrowser(profile);
    const { context, page: here } = browser;
    const { address } = preview;
    const there = await context.newPage();
    await openStorePage(context, here, address);
    const sampleIds = await here.evaluate(
      (count) => (globalThis as unknown as InPage).storePage.begin(count),
      samplesCount,
    );
    await openStorePage(context, there, address);
    await there.evaluate(() => (globalThis as unknown as InPage).storePage.open());
    const before = (await readDisk(here, 'fullshift-book'))?.journal.length ?? 0;

    const counts = await Promise.all([remark(here, 'here', sampleIds), remark(there, 'there', sampleIds)]);
    expect(counts).toEqual([appendsOfTab, appendsOfTab]);

    const disk = await readDisk(here, 'fullshift-book');
    if (disk === null) throw new Error('the book is gone');
    expect(tornIn(disk)).toEqual([]);
    expect(writersOf(disk)).toHaveLength(1);
    expect(disk.journal).toHaveLength(before + 2 * appendsOfTab);
    expect(disk.journal.map(({ id }) => Number(id.split('.')[1]))).toEqual(disk.journal.map((_, index) => index + 1));
    // They did write at the same time: neither had finished before the other began.
    const order = disk.journal.slice(before).map(({ text }) => /"text":"(here|there) /.exec(text)?.[1]);
    const changes = order.filter((name, index) => index > 0 && name !== order[index - 1]).length;
    console.info(`the writer changed ${changes} times over ${order.length} appends`);
    expect(changes).toBeGreaterThan(20);

    for (const sampleId of [sampleIds[0] ?? '', sampleIds[samplesCount - 1] ?? '']) {
      const shown = [await storyShown(here, address, sampleId), await storyShown(there, address, sampleId)];
      expect(shown[0]).toBe(shown[1]);
    }
  } finally {
    await browser?.kill();
    await preview.stop();
    dropProfile(profile);
  }
});
