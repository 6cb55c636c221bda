/** The first two minutes without a book, and the page of limits without one and with one. */
import { expect } from '@playwright/test';
import { choose, fill, open, pick, type Stop, tap, to } from './everyPageSteps.ts';

export const wearTour: readonly Stop[] = [
  pick('/wear', 'empty', { go: to('/wear'), shows: 'In which state is the job?', tab: true }),
  pick('/wear', 'error', { go: (v) => tap(v, 'Show what they must wear'), shows: /^Choose the state/ }),
  pick('/wear', 'filled', {
    go: async (v) => {
      await v.page.getByRole('combobox', { name: 'In which state is the job?' }).selectOption('CA');
      await v.page.getByRole('checkbox', { name: 'Scraping paint by hand' }).check({ force: true });
      await choose(v, 'A test found lead');
      await tap(v, 'Show what they must wear');
    },
    shows: 'Any of these reaches it',
    tab: true,
  }),
  pick('/wear', 'filled', { as: 'spanish', go: (v) => tap(v, 'Español'), shows: 'Para la cuadrilla' }),
  pick('/wear', 'filled', {
    as: 'blasting',
    go: async (v) => {
      await open(v, '/wear?state=CA&tasks=abrasiveBlasting&shift=12&show=1');
      await v.page.getByText('How the factor was worked out').first().click();
    },
    shows: /^Abrasive blasting has a limit of its own/,
  }),
  pick('/wear', 'filled', {
    as: 'no-bound',
    go: to('/wear?state=TX&tasks=dustCleanup&show=1'),
    shows: /no factor follows from it/,
  }),
  pick('/rules', 'filled', { as: 'without-book', go: to('/rules'), shows: 'Rules held here' }),
];

export const rulesTour: readonly Stop[] = [
  pick('/rules', 'filled', { go: to('/rules'), shows: 'Our own stricter limits', tab: true }),
  pick('/rules', 'error', {
    go: async (v) => {
      await fill(v, /^Our limit/, '50');
      await tap(v, 'Keep this choice');
    },
    shows: /^Write less than 50/,
  }),
  pick('/rules', 'filled', {
    as: 'kept',
    go: async (v) => {
      await fill(v, /^Our limit/, '35');
      await v.page.getByRole('checkbox', { name: 'NIOSH: Recommended exposure limit' }).check({ force: true });
      await tap(v, 'Keep this choice');
      await expect(v.page.getByRole('link', { name: 'Go to Today' })).toBeVisible();
    },
    shows: /^Kept: days show it/,
  }),
  pick('/day/:workdayId', 'filled', { as: 'beside', go: to('/day/{dayOfPia}'), shows: 'Beside the rule' }),
];
