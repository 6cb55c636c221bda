/** The custody sheet of 20 samples, from the tap to the revision that can be handed out; warm: another one was made just before. */
import { en } from '#words/box.ts';
import { dropProfile, newProfile, startBrowser } from '../journeys/realBrowser.ts';
import { slowDown, slowdown } from './coldStart.ts';
import type { Figure } from './figure.ts';
import { type InPage, openStorePage } from './storePage.ts';

const samplesOfBox = 20;
const boxes = 6;

export async function sheetFigures(address: string): Promise<readonly Figure[]> {
  const profile = newProfile();
  const browser = await startBrowser(profile);
  try {
    const { page, context } = browser;
    page.setDefaultTimeout(60_000);
    await openStorePage(context, page, address);
    const boxIds = await page.evaluate(
      async ([count, each]) => {
        const { storePage } = globalThis as unknown as InPage;
        await storePage.seed(count * each + 8);
        return storePage.pack(count, each);
      },
      [boxes, samplesOfBox] as const,
    );
    await slowDown(page);
    const ms: number[] = [];
    for (const [index, boxId] of boxIds.entries()) {
      await page.goto(`${address}#/box/${boxId}`);
      await page.getByRole('button', { name: en.box.make }).waitFor();
      const tookMs = await page.evaluate(
        ([make, ready]) =>
          new Promise<number>((resolve) => {
            // No function with a name in here: it is sent to the page as text, without what names it.
            const main = document.querySelector<HTMLElement>('main [data-action=main]');
            if (main?.textContent !== make) throw new Error(`the main action is ${main?.textContent}`);
            const startedMs = performance.now();
            const observer = new MutationObserver(() => {
              const now = document.querySelector('main [data-action=main]');
              if (now?.textContent !== ready || now.getAttribute('aria-busy') === 'true') return;
              observer.disconnect();
              requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - startedMs)));
            });
            observer.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
            main.click();
          }),
        [en.box.make, en.box.handOut('1')] as const,
      );
      if (index === 0) console.info(`the first sheet, with the writer of papers fetched: ${Math.round(tookMs)} ms`);
      else ms.push(tookMs);
    }
    return [
      {
        name: `custody sheet of ${samplesOfBox} samples, warm, ${slowdown} times slower`,
        unit: 'ms',
        values: ms,
        goal: 2000,
      },
    ];
  } finally {
    await browser.kill();
    dropProfile(profile);
  }
}
