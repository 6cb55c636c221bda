/**
 * Slows a whole process down, its workers too: the browser's own throttling reaches the page's thread alone. The process runs for 5 ms
 * of each 5 ms times the rate and is held still for the rest.
 */
import type { BrowserContext } from '@playwright/test';

const runMs = 5;
const sleep = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** The processes that pages run in. */
async function pageProcesses(context: BrowserContext): Promise<readonly number[]> {
  const devtools = await context.browser()?.newBrowserCDPSession();
  if (devtools === undefined) throw new Error('the browser answers no questions about its processes');
  const { processInfo } = await devtools.send('SystemInfo.getProcessInfo');
  await devtools.detach();
  return processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => id);
}

/** Runs `work` with the pages' processes `rate` times slower. */
export async function slowProcess<T>(context: BrowserContext, rate: number, work: () => Promise<T>): Promise<T> {
  const pids = await pageProcesses(context);
  const all = (signal: NodeJS.Signals): void => {
    for (const pid of pids) process.kill(pid, signal);
  };
  let over = false;
  const holding = (async () => {
    while (!over) {
      all('SIGSTOP');
      await sleep(runMs * (rate - 1));
      all('SIGCONT');
      await sleep(runMs);
    }
  })();
  try {
    return await work();
  } finally {
    over = true;
    await holding;
  }
}
