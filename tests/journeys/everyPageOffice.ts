/** The pages of what follows, on the practice book: the list, notices, determinations, one worker, one site, papers. */
import { expect } from '@playwright/test';
import { choose, fill, open, pick, type Stop, tap, to, type Visitor } from './everyPageSteps.ts';

/** Follows the first link of the page whose address is like this, as it stands there: a plus in a question would be read as a blank. */
async function follow(v: Visitor, part: string): Promise<void> {
  const link = v.page.locator(`main a[href^="#${part}"]`).first();
  await expect(link).toBeVisible({ timeout: 20_000 });
  await open(v, ((await link.getAttribute('href')) ?? '').slice(1));
}

/** A site at which there was work: the one that its shift page links to. */
async function noteSite(v: Visitor): Promise<void> {
  v.known.set('site', (v.known.get('yesterday') ?? '').split('.')[0] ?? '');
  await to('/determination/{site}')(v);
}

const looked = /^Note it done: /;

export const officeTour: readonly Stop[] = [
  pick('/todo', 'filled', { go: to('/todo'), shows: /^Made from this book/, tab: true }),
  pick('/todo', 'empty', {
    go: (v) => open(v, '/todo?person=0123456789ab'),
    shows: 'Nothing is to do for this choice.',
  }),
  pick('/todo/:dutyId', 'filled', {
    go: async (v) => {
      await open(v, '/todo');
      await v.page.getByRole('link', { name: looked }).first().click({ timeout: 20_000 });
    },
    shows: 'Whose decision',
    tab: true,
  }),
  pick('/todo/:dutyId', 'error', {
    go: async (v) => {
      await fill(v, 'Done on', '31 February 2026');
      await tap(v, 'Note it done');
    },
    shows: /^Done on: /,
  }),
  pick('/todo/:dutyId', 'empty', {
    go: (v) => open(v, '/todo/training.0123456789ab'),
    shows: /^This is not on the list now/,
  }),
  pick('/asked', 'empty', { go: to('/asked'), shows: /^From the day of asking/, tab: true }),
  pick('/asked', 'error', { go: (v) => tap(v, 'Write it down'), shows: /^Fill in: Who asked/ }),
  pick('/notice/:measurementId', 'filled', {
    go: to('/notice/{dayOfPia}'),
    shows: 'As the worker reads it',
    tab: true,
  }),
  pick('/notice/:measurementId', 'error', { go: (v) => tap(v, 'Make the notice'), shows: /^Choose: How is it given/ }),
  pick('/notice/:measurementId', 'filled', {
    as: 'made',
    go: async (v) => {
      await choose(v, 'To each one in writing');
      await choose(v, 'By name');
      const action = v.page.getByLabel(/^What was done, or will be done, to bring it below/);
      if ((await action.count()) > 0) await action.fill('Mist and shroud from tomorrow');
      await tap(v, 'Make the notice');
      await expect(v.page.getByRole('button', { name: 'Print or share notice 1' })).toBeVisible({ timeout: 20_000 });
    },
    shows: 'Note each worker when it happens. The moment of the tap stands, or another time.',
  }),
  pick('/notice/:measurementId', 'empty', {
    go: (v) => open(v, '/notice/0123456789ab.2026-10-05'),
    shows: 'No notice is owed here',
  }),
  pick('/determination/:siteId', 'filled', {
    go: noteSite,
    shows: /^One for each task group/,
    tab: true,
  }),
  pick('/determination/:siteId', 'filled', {
    as: 'group',
    go: (v) => follow(v, `/determination/${v.known.get('site')}?group=`),
    shows: 'Where within the worksite',
  }),
  pick('/determination/:siteId', 'error', {
    go: (v) => tap(v, /^Write the (?:positive|negative) determination$/),
    shows: /^Fill in: Where within the worksite/,
  }),
  pick('/determination/:siteId', 'empty', {
    go: (v) => open(v, '/determination/0123456789ab'),
    shows: 'This site or this task group is not in the book.',
  }),
  pick('/person', 'filled', { go: to('/person'), shows: 'Pia Putty', tab: true }),
  pick('/person/:personId', 'filled', {
    go: async (v) => {
      v.known.set('pia', (v.known.get('dayOfPia') ?? '').split('.')[0] ?? '');
      await to('/person/{pia}')(v);
    },
    shows: 'Days at or above the action level',
    tab: true,
  }),
  pick('/person/:personId', 'empty', {
    go: (v) => open(v, '/person/0123456789ab'),
    shows: 'This person is not in the book on this device.',
  }),
  pick('/exposure-record/:workdayId', 'filled', {
    go: to('/exposure-record/{dayOfPia}'),
    shows: 'For whom is it',
    tab: true,
  }),
  pick('/exposure-record/:workdayId', 'error', {
    go: async (v) => {
      await fill(v, 'For whom is it', '');
      await tap(v, 'Make the exposure record');
    },
    shows: /^Fill in: For whom is it/,
  }),
  pick('/exposure-record/:workdayId', 'empty', {
    go: (v) => open(v, '/exposure-record/0123456789ab.2026-10-05'),
    shows: 'This day is not in the book on this device.',
  }),
  pick('/inspector', 'filled', { go: to('/inspector'), shows: /^Choose the site/, tab: true }),
  pick('/inspector/:siteId', 'filled', { go: to('/inspector/{site}'), shows: 'Print this page', tab: true }),
  pick('/inspector/:siteId', 'empty', {
    go: (v) => open(v, '/inspector/0123456789ab'),
    shows: 'This site is not in the book on this device.',
  }),
  pick('/papers', 'filled', { go: to('/papers'), shows: 'Sign and container label', tab: true }),
  pick('/papers', 'error', {
    go: async (v) => {
      await fill(v, 'How many sheets', 'two');
      await tap(v, 'Blank form as PDF');
    },
    shows: /write a whole number from 1 to 20/,
  }),
];
