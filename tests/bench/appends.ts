/** A record's append beside a bare strict transaction of the same requests. */
import { dropProfile, newProfile, startBrowser } from '../journeys/realBrowser.ts';
import { type Figure, median } from './figure.ts';
import { type InPage, openStorePage } from './storePage.ts';

export async function appendFigures(address: string): Promise<readonly Figure[]> {
  const profile = newProfile();
  const browser = await startBrowser(profile);
  try {
    await openStorePage(browser.context, browser.page, address);
    await browser.page.evaluate(() => (globalThis as unknown as InPage).storePage.begin(1));
    const { appendMs, bareMs, requestsCount } = await browser.page.evaluate(() =>
      (globalThis as unknown as InPage).storePage.timeAppends(300, 60),
    );
    console.info(
      `an append of ${requestsCount} requests: median ${median(appendMs).toFixed(2)} ms; the bare transaction ${median(bareMs).toFixed(2)} ms`,
    );
    // Pair by pair: both halves of a pair ran under the same load.
    const ratios = appendMs.map((ms, index) => ms / (bareMs[index] ?? Number.NaN));
    return [
      {
        name: 'append, as a multiple of the bare transaction (medians)',
        unit: 'times',
        values: [median(appendMs) / median(bareMs)],
        goal: 2,
      },
      { name: 'append, as a multiple of the bare transaction, pair by pair', unit: 'times', values: ratios, goal: 2 },
    ];
  } finally {
    await browser.kill();
    dropProfile(profile);
  }
}
