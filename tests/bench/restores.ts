/** Many round trips of a backup, with pictures, in a real browser. Arguments: how many, and from which seed. */
import { randomInt } from 'node:crypto';
import { startPreview } from '../journeys/preview.ts';
import { dropProfile, newProfile, startBrowser } from '../journeys/realBrowser.ts';
import { type InPage, openStorePage } from './storePage.ts';

const count = Number(process.argv[2] ?? 500);
const seed = Number(process.env.SEED ?? randomInt(2 ** 31));
const atOnce = 25;

console.info(`seed ${seed} (SEED=${seed} writes the same books again)`);
const preview = await startPreview(4642);
const profile = newProfile();
const browser = await startBrowser(profile);
const startedMs = Date.now();
let done = 0;
try {
  const { page, context } = browser;
  await openStorePage(context, page, preview.address);
  for (let part = 0; done < count; part += 1) {
    // Each part begins with an empty profile's book.
    await page.evaluate(
      () =>
        new Promise((resolve) =>
          Object.assign(indexedDB.deleteDatabase('fullshift-book'), { onsuccess: resolve, onblocked: resolve }),
        ),
    );
    await page.evaluate(() => localStorage.clear());
    await page.reload();
    await page.waitForFunction(() => 'storePage' in globalThis);
    await page.evaluate(() => (globalThis as unknown as InPage).storePage.begin(1));
    done += await page.evaluate(
      ([rounds, from]) => (globalThis as unknown as InPage).storePage.roundTrips(rounds, from),
      [Math.min(atOnce, count - done), seed + part] as const,
    );
  }
  console.info(
    `${done} backups made, wiped and restored, each the same book: ${Math.round((Date.now() - startedMs) / 1000)} s`,
  );
} finally {
  await browser.kill();
  await preview.stop();
  dropProfile(profile);
}
