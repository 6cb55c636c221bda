/** The pages for files out and in, for this device and for wiping it, on the practice book. */
import { expect } from '@playwright/test';
import { choose, fill, open, pick, type Stop, tap, to, type Visitor } from './everyPageSteps.ts';

/** A file with the whole book, as it lies among the downloads. */
async function downloaded(v: Visitor): Promise<string> {
  await open(v, '/send');
  await choose(v, /^Not sealed/);
  await expect(v.page.getByText(/^Ready: \d/)).toBeVisible({ timeout: 30_000 });
  const download = v.page.waitForEvent('download');
  await tap(v, 'Download the file');
  return (await download).path();
}

export const keptTour: readonly Stop[] = [
  pick('/keep', 'filled', { go: to('/keep'), shows: /^Send to office, or to another device/, tab: true }),
  pick('/send', 'filled', { go: to('/send'), shows: /^Ready: \d+ entries/, tab: true }),
  pick('/send', 'filled', {
    as: 'seven-words',
    go: (v) => choose(v, 'Sealed with seven words'),
    shows: /^Ready: .*, sealed$/,
  }),
  pick('/send', 'error', {
    go: async (v) => {
      await choose(v, 'Sealed with a passphrase of your own');
      await fill(v, /^Passphrase$/, 'short one');
      await tap(v, 'Use this passphrase');
    },
    shows: /^Write a passphrase of at least 20/,
  }),
  pick('/take-in', 'empty', { go: to('/take-in'), shows: 'Look into the file', tab: true }),
  pick('/take-in', 'error', { go: (v) => tap(v, 'Look into the file'), shows: 'Choose the file first' }),
  pick('/take-in', 'filled', {
    go: async (v) => {
      const file = await downloaded(v);
      await open(v, '/take-in');
      await v.page.getByLabel('File from the other device').setInputFiles(file);
      await tap(v, 'Look into the file');
    },
    shows: 'Everything in this file is here already.',
  }),
  pick('/storage', 'filled', { go: to('/storage'), shows: 'Will the book stay?', tab: true }),
  pick('/storage', 'error', { go: (v) => tap(v, 'Save the name'), shows: 'Write a name' }),
  pick('/wipe', 'empty', { go: to('/wipe'), shows: 'Read it through', tab: true }),
  pick('/wipe', 'error', { go: (v) => tap(v, 'Read it through'), shows: 'Choose the backup file first' }),
  pick('/wipe', 'filled', {
    go: async (v) => {
      const file = await downloaded(v);
      await open(v, '/wipe');
      await v.page.getByLabel('Backup file').setInputFiles(file);
      await tap(v, 'Read it through');
    },
    shows: /^It holds everything that is on this device/,
  }),
];
