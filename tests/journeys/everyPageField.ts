/** The pages of the roster, of a job's start, of task groups, of what was reported, and of the paper form. */
import { expect } from '@playwright/test';
import { choose, fill, open, pick, type Stop, tap, to, type Visitor } from './everyPageSteps.ts';

/** On a book with one person, one site and nothing else. */
export const fieldNewBookTour: readonly Stop[] = [
  pick('/shift/:shiftId/roster', 'empty', { go: to('/shift/{shift}/roster'), shows: 'Wanda Keel', tab: true }),
  pick('/shift/:shiftId/roster', 'error', {
    as: 'nobody',
    go: (v) => tap(v, 'Save who works here'),
    shows: /^Tick who works here/,
  }),
  pick('/shift/:shiftId/roster', 'error', {
    as: 'no-task',
    go: async (v) => {
      await v.page.getByRole('checkbox', { name: 'Wanda Keel' }).check({ force: true });
      await tap(v, 'Add a person');
      await tap(v, 'Save: 2 workers');
    },
    shows: 'Say what Wanda Keel does',
  }),
  pick('/shift/:shiftId/job-start', 'empty', {
    go: to('/shift/{shift}/job-start'),
    shows: /^Answer the five questions/,
    tab: true,
  }),
  pick('/shift/:shiftId/job-start', 'error', {
    as: 'nothing',
    go: (v) => tap(v, 'Save the answers'),
    shows: 'Choose: New people at this work?',
  }),
  pick('/shift/:shiftId/rely', 'empty', {
    go: to('/shift/{shift}/rely'),
    shows: /^First say who works here today/,
    tab: true,
  }),
  pick('/groups', 'empty', { go: to('/groups'), shows: /^No work is written down yet/, tab: true }),
  pick('/reported', 'empty', { go: to('/reported'), shows: 'None has been written down yet.', tab: true }),
  pick('/key-in', 'empty', { go: to('/key-in'), shows: 'Save this form', tab: true }),
  pick('/key-in', 'error', { go: (v) => tap(v, 'Save this form'), shows: 'Fill in: Put on: time' }),
];

async function reported(v: Visitor): Promise<void> {
  await choose(v, 'A consultant’s');
  await fill(v, 'Name of who measured', 'Level Air Consulting');
  await fill(v, 'Day of the work', '9/15/2026');
  await fill(v, /^Day on which the firm had/, '9/22/2026');
  await v.page.getByLabel('Which worker was measured').selectOption({ label: 'Otto Oakum' });
  await v.page.getByLabel('At which site').selectOption({ index: 1 });
  await choose(v, 'Indoors');
  await fill(v, 'Find a task', 'Scraping paint by hand');
  await v.page.getByRole('checkbox', { name: 'Scraping paint by hand' }).check({ force: true });
  await fill(v, /^Lead in the air, average/, '41.5');
  for (const group of [/full shift/, /Our own workers/, /accuracy/]) await choose(v, 'Yes', group);
  await tap(v, 'Save the measurement');
  await expect(v.page.getByRole('link', { name: /^Otto Oakum/ }).first()).toBeVisible();
}

/** On the practice book, after Otto Oakum was prepared for scraping today. */
export const fieldPracticeTour: readonly Stop[] = [
  pick('/shift/:shiftId/roster', 'filled', { go: to('/shift/{today}/roster'), shows: /^Otto Oakum: scraping paint/ }),
  pick('/shift/:shiftId/roster', 'filled', {
    as: 'a-line',
    go: (v) => tap(v, /^Otto Oakum: scraping paint/),
    shows: 'Was not here: strike the entry',
  }),
  pick('/shift/:shiftId/roster', 'error', {
    as: 'no-reason',
    go: (v) => tap(v, 'Was not here: strike the entry'),
    shows: 'Say in a few words why',
  }),
  pick('/shift/:shiftId/job-start', 'filled', {
    go: async (v) => {
      await to('/shift/{today}/job-start')(v);
      for (const group of [/^New people/, /^A new tool/, /^Another way/, /^Other controls/])
        await choose(v, 'No', group);
      await choose(v, 'Not known', /^A task that was not/);
      await tap(v, 'Save the answers');
      await expect(v.page.getByRole('heading', { level: 1, name: /^The day at/ })).toBeVisible();
      await to('/shift/{today}/job-start')(v);
    },
    shows: /^What is not known counts as a change/,
  }),
  pick('/shift/:shiftId/rely', 'filled', { go: to('/shift/{today}/rely'), shows: 'What follows' }),
  pick('/shift/:shiftId/rely', 'error', { go: (v) => tap(v, /^Save/), shows: /^Choose: / }),
  pick('/groups', 'filled', { go: to('/groups'), shows: /^Scraping paint by hand/ }),
  pick('/groups', 'filled', {
    as: 'a-group',
    go: (v) => tap(v, /^Scraping paint by hand/),
    shows: 'How the work is done, by the conditions of its last day',
  }),
  pick('/groups', 'error', {
    go: async (v) => {
      await to('/groups?stands={dayOfPia}')(v);
      await tap(v, 'Save it in writing');
    },
    shows: 'Tick at least one worker.',
  }),
  pick('/reported', 'error', {
    go: async (v) => {
      await open(v, '/reported?add=1');
      await fill(v, /^Lead in the air, average/, '0.04 mg/m3');
      await tap(v, 'Save the measurement');
    },
    shows: /this was typed in mg\/m³/,
  }),
  pick('/reported', 'filled', {
    go: async (v) => {
      await fill(v, /^Lead in the air, average/, '');
      await reported(v);
    },
    shows: /without flow readings of our own$/,
  }),
];
