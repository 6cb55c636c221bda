/** What to measure next, plans, and the day that is made ready: their pages in an empty book and in the practice book. */
import { expect } from '@playwright/test';
import { address, choose, fill, heading, open, pick, type Stop, tap, to, type Visitor } from './everyPageSteps.ts';

/** Before anything is written down of the work. */
export const seasonNewBookTour: readonly Stop[] = [
  pick('/season', 'empty', { go: to('/season'), shows: 'Begin here', tab: true }),
  pick('/plan', 'empty', { go: to('/plan'), shows: 'What will they do?', tab: true }),
  pick('/plan', 'error', { go: (v) => tap(v, 'Save the plan'), shows: 'Choose at least one task' }),
  pick('/plan/:planId', 'empty', { go: to('/plan/0123456789ab'), shows: /^This plan is not in the book/ }),
  pick('/tomorrow', 'empty', { go: to('/tomorrow'), shows: 'No day is made ready yet.', tab: true }),
  pick('/tomorrow/:shiftId', 'empty', {
    go: to('/tomorrow/0123456789ab.2026-10-07'),
    shows: /^This site is not in the book/,
  }),
];

/** A plan of the first group in need, as the link of the list leads there. */
async function planFirst(v: Visitor): Promise<void> {
  await open(v, '/season');
  const link = v.page.getByRole('link', { name: /^Plan (it|another one):/ }).first();
  await expect(link).toBeVisible({ timeout: 20_000 });
  await open(v, ((await link.getAttribute('href')) ?? '').slice(1));
  await expect(v.page.getByRole('button', { name: 'Save the plan' })).toBeVisible();
}

export const seasonPracticeTour: readonly Stop[] = [
  pick('/season', 'filled', { go: to('/season'), shows: /^Each task group of this firm/ }),
  pick('/season', 'filled', {
    as: 'unfolded',
    go: async ({ page }) => {
      for (const each of await page.getByText('What others measured').all()) await each.click();
    },
    shows: /^These figures prove nothing about your work/,
  }),
  pick('/plan', 'filled', {
    go: planFirst,
    shows: 'Change the work',
  }),
  pick('/plan/:planId', 'filled', {
    go: async (v) => {
      const crew = v.page.getByRole('group', { name: 'Who does this work' }).getByRole('checkbox');
      for (const each of await crew.all()) await each.check({ force: true });
      await fill(v, 'Day 1', 'tomorrow');
      await fill(v, /^Reporting limit/, '2.5');
      await fill(v, /^Flow/, '2');
      await tap(v, 'Save the plan');
      await expect(v.page.getByText(/still to do\.$/)).toBeVisible({ timeout: 20_000 });
      v.known.set('plan', address(v).slice('/plan/'.length));
    },
    shows: /^A planned measurement is done once/,
    tab: true,
  }),
  pick('/plan/:planId', 'filled', {
    as: 'giving-up',
    go: (v) => tap(v, 'Give up this plan'),
    shows: 'Why is it given up?',
  }),
  pick('/plan/:planId', 'error', {
    go: async (v) => {
      await v.page.locator('main a[href*="?place="]').first().click();
      await heading(v, /^Planned for/);
      await tap(v, 'Save');
    },
    shows: 'Say which of the two.',
  }),
  pick('/tomorrow', 'filled', { go: to('/tomorrow'), shows: /^The plans name/ }),
  pick('/tomorrow/:shiftId', 'filled', {
    go: async (v) => {
      await choose(v, 'Tomorrow');
      await tap(v, 'Say who wears what');
      await expect(v.page.getByRole('button', { name: 'Save it for the day' })).toBeVisible();
      await tap(v, 'Save it for the day');
    },
    shows: /^Saved\. The sheet and the labels/,
    tab: true,
  }),
  pick('/tomorrow/:shiftId', 'error', {
    go: async (v) => {
      const wearers = v.page.getByRole('group', { name: 'Who wears a pump' }).getByRole('checkbox');
      for (const each of await wearers.all()) await each.uncheck({ force: true });
      await tap(v, 'Save it for the day');
    },
    shows: /^Tick at least one worker/,
  }),
];
