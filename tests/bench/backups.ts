/** A backup of 5,000 samples and 500 pictures of 300 kB: how long it takes, and what it takes of the device's memory meanwhile. */
import { readFileSync } from 'node:fs';
import type { CDPSession } from '@playwright/test';
import { dropProfile, newProfile, type RealBrowser, startBrowser } from '../journeys/realBrowser.ts';
import type { Figure } from './figure.ts';
import type { BackupTime } from './page/timeBackup.ts';
import { type InPage, openStorePage } from './storePage.ts';

const rounds = 3;
const samples = 5000;
const pictures = 500;
const pictureBytes = 300_000;
const mb = 1_000_000;
/** Our own figure: about 150 MB of it is what the engine takes for reading 46,000 entries, and three times the pictures add 30 MB. */
const processMB = 250;

/** Memory of a process without its program files, what it shares with others counted in shares; 0 once it is gone, or without /proc. */
function memoryBytes(pid: number): number {
  try {
    const shares = readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8');
    const kB = [...shares.matchAll(/^Pss_(?:Anon|Shmem):\s+(\d+) kB$/gm)].map(([, found]) => Number(found));
    return kB.reduce((sum, found) => sum + found * 1024, 0);
  } catch {
    return 0;
  }
}

interface Memory {
  readonly heapBytes: number;
  /** The process that the page runs in: heap, pieces of files, what is on its way to others. */
  readonly pageBytes: number;
  /** All processes of the browser together: blobs lie in another one than the page, until it puts them on disk. */
  readonly browserBytes: number;
}

async function memoryOf(page: CDPSession, browser: CDPSession): Promise<Memory> {
  const [{ metrics }, { processInfo }] = await Promise.all([
    page.send('Performance.getMetrics'),
    browser.send('SystemInfo.getProcessInfo'),
  ]);
  const bytes = (of: (type: string) => boolean): number =>
    processInfo.filter(({ type }) => of(type)).reduce((sum, { id }) => sum + memoryBytes(id), 0);
  return {
    heapBytes: metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0,
    pageBytes: bytes((type) => type === 'renderer'),
    browserBytes: bytes(() => true),
  };
}

const most = (one: Memory, other: Memory): Memory => ({
  heapBytes: Math.max(one.heapBytes, other.heapBytes),
  pageBytes: Math.max(one.pageBytes, other.pageBytes),
  browserBytes: Math.max(one.browserBytes, other.browserBytes),
});

interface Round extends BackupTime {
  readonly before: Memory;
  readonly peak: Memory;
}

/** One backup on a page that was just loaded, its memory looked at all the while. */
async function roundOf({ page, context }: RealBrowser): Promise<Round> {
  await page.reload();
  await page.waitForFunction(() => 'storePage' in globalThis);
  await page.evaluate(() => (globalThis as unknown as InPage).storePage.open());
  const inPage = await context.newCDPSession(page);
  const inBrowser = await context.browser()?.newBrowserCDPSession();
  if (inBrowser === undefined) throw new Error('the browser answers no questions about its processes');
  await inPage.send('Performance.enable');
  await inPage.send('HeapProfiler.collectGarbage');
  const before = await memoryOf(inPage, inBrowser);
  let peak = before;
  let done = false;
  const watching = (async () => {
    while (!done) {
      peak = most(peak, await memoryOf(inPage, inBrowser));
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  })();
  const time = await page.evaluate(() => (globalThis as unknown as InPage).storePage.timeBackup());
  done = true;
  await watching;
  await Promise.all([inPage.detach(), inBrowser.detach()]);
  return { ...time, before, peak };
}

export async function backupFigures(address: string): Promise<readonly Figure[]> {
  const profile = newProfile();
  const browser = await startBrowser(profile);
  try {
    await openStorePage(browser.context, browser.page, address);
    await browser.page.evaluate((count) => (globalThis as unknown as InPage).storePage.seed(count), samples);
    await browser.page.evaluate(
      ([count, bytes]) => (globalThis as unknown as InPage).storePage.addPictures(count, bytes),
      [pictures, pictureBytes] as const,
    );
    const found: Round[] = [];
    for (let round = 0; round < rounds; round += 1) found.push(await roundOf(browser));
    const [{ factsCount = 0, filesCount = 0, bytesCount = 0 } = {}] = found;
    console.info(`a backup of ${factsCount} entries and ${filesCount} pictures: ${(bytesCount / mb).toFixed(0)} MB`);
    const of = (name: string, unit: string, goal: number, value: (round: Round) => number): Figure => ({
      name,
      unit,
      values: found.map(value),
      goal,
    });
    const growth =
      (of: keyof Memory) =>
      ({ before, peak }: Round): number =>
        (peak[of] - before[of]) / mb;
    return [
      of('backup of 5,000 samples and 500 pictures', 's', 60, ({ tookMs }) => tookMs / 1000),
      of('growth of the page’s heap meanwhile', 'MB', 200, growth('heapBytes')),
      of('growth of the page’s process meanwhile', 'MB', processMB, growth('pageBytes')),
      // A machine with memory to spare keeps blobs there: the file itself may come on top.
      of(
        'growth of the whole browser meanwhile',
        'MB',
        processMB + Math.round(bytesCount / mb),
        growth('browserBytes'),
      ),
      of('longest task while it is made', 'ms', 50, ({ longestTaskMs }) => longestTaskMs),
    ];
  } finally {
    await browser.kill();
    dropProfile(profile);
  }
}
