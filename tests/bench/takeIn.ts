/** 100,000 facts looked into and taken in, beside a bare bulk write of the same rows; and how long the page was deaf to a tap meanwhile. */
import { dropProfile, newProfile, startBrowser } from '../journeys/realBrowser.ts';
import { type Figure, median } from './figure.ts';
import { type InPage, openStorePage } from './storePage.ts';

const samples = 12_500;
const rounds = 3;

export async function takeInFigures(address: string): Promise<readonly Figure[]> {
  const profile = newProfile();
  const browser = await startBrowser(profile);
  try {
    browser.page.setDefaultTimeout(600_000);
    await openStorePage(browser.context, browser.page, address);
    const times = await browser.page.evaluate(
      ([many, often]) => (globalThis as unknown as InPage).storePage.timeTakeIn(many, often),
      [samples, rounds] as const,
    );
    const { factsCount, fileBytes, rawMs, lookMs, factsMs, takeMs, longestTaskMs, tasksOver50Count } = times;
    const seconds = (values: readonly number[]): string => `${(median(values) / 1000).toFixed(1)} s`;
    console.info(
      `${factsCount} facts, ${(fileBytes / 1e6).toFixed(1)} MB packed: bare ${seconds(rawMs)}; looked into ${seconds(lookMs)}, facts in ${seconds(factsMs)}, with the lists ${seconds(takeMs)}; ${tasksOver50Count} tasks over 50 ms`,
    );
    const ratio = (index: number, tookMs: readonly number[]): number =>
      (tookMs[index] ?? Number.NaN) / (rawMs[index] ?? Number.NaN);
    return [
      {
        name: 'a file taken in, lists and all, as a multiple of the bare write, round by round',
        unit: 'times',
        values: rawMs.map((_, index) => ratio(index, takeMs)),
        goal: 2,
      },
      {
        name: 'the same with looking into it',
        unit: 'times',
        values: rawMs.map((_, index) => ratio(index, takeMs) + ratio(index, lookMs)),
        goal: 2,
      },
      { name: 'longest task while looking and taking in', unit: 'ms', values: [longestTaskMs], goal: 200 },
    ];
  } finally {
    await browser.kill();
    dropProfile(profile);
  }
}
