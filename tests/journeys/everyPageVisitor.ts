/** Whoever goes through the pages: a device of its own, and one stop after the other. */
import { expect, type Page, test } from '@playwright/test';
import { waitUntilKept, watchPage } from './appPages.ts';
import { type Stop, type Visitor, visit } from './everyPageSteps.ts';
import { bringEyes } from './pageChecks.ts';
import type { Preview } from './preview.ts';

export const named = ({ path, state }: Pick<Stop, 'path' | 'state'>): string => `${path}, ${state}`;

/** A device of its own, with the app on it and its clock standing still. */
export async function visitorOf(page: Page, server: Preview, now = '2026-10-06T10:30:00-04:00'): Promise<Visitor> {
  page.setDefaultTimeout(10_000);
  await page.clock.setFixedTime(now);
  await bringEyes(page);
  const wrong = await watchPage(page, server.address);
  await page.goto(server.address);
  await waitUntilKept(page);
  return { page, address: server.address, wrong, known: new Map() };
}

/** Visits each stop in turn; what console, policy or net said meanwhile fails at the end. */
export async function goRound(page: Page, server: Preview, stops: readonly Stop[]): Promise<void> {
  const visitor = await visitorOf(page, server);
  for (const stop of stops) await test.step(named(stop), () => visit(visitor, stop));
  expect(visitor.wrong).toEqual([]);
}
