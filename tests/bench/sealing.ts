/** 20 MB sealed and opened in the built app: the time of the worker as it is, and with the processor slowed down four times. */
import { dropProfile, newProfile, startBrowser } from '../journeys/realBrowser.ts';
import { type SealedInPage, sealInPage } from '../journeys/sealInPage.ts';
import { slowdown } from './coldStart.ts';
import type { Figure } from './figure.ts';
import { slowProcess } from './slowProcess.ts';

const rounds = 3;
const bytesCount = 20_000_000;

export async function sealingFigures(address: string): Promise<readonly Figure[]> {
  const profile = newProfile();
  const browser = await startBrowser(profile);
  try {
    const { page, context } = browser;
    page.setDefaultTimeout(300_000);
    await page.goto(address);
    await page.getByRole('heading').first().waitFor();
    const measured = async (): Promise<readonly SealedInPage[]> => {
      const found: SealedInPage[] = [];
      for (let round = 0; round < rounds; round += 1) found.push(await sealInPage(page, bytesCount));
      return found;
    };
    const usual = await measured();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
    const slowPage = await measured();
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const slow = await slowProcess(context, slowdown, measured);
    const of = (
      name: string,
      goal: number,
      found: readonly SealedInPage[],
      value: (one: SealedInPage) => number,
    ): Figure => ({
      ...{ name, unit: name.includes('task') ? 'ms' : 's', goal },
      values: found.map(value),
    });
    return [
      of('20 MB sealed', 3, usual, ({ sealMs }) => sealMs / 1000),
      of('20 MB opened', 3, usual, ({ openMs }) => openMs / 1000),
      of(`20 MB sealed, ${slowdown} times slower`, 10, slow, ({ sealMs }) => sealMs / 1000),
      of(`20 MB opened, ${slowdown} times slower`, 10, slow, ({ openMs }) => openMs / 1000),
      of(
        `longest task of the page meanwhile, also when it is ${slowdown} times slower`,
        200,
        [...usual, ...slowPage],
        ({ longestTaskMs }) => longestTaskMs,
      ),
    ];
  } finally {
    await browser.kill();
    dropProfile(profile);
  }
}
