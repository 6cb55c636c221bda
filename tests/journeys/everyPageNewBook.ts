/** The way through every page of a new, empty book, and to records that it does not hold. */
import { aheadNewBookTour } from './everyPageAhead.ts';
import { fieldNewBookTour } from './everyPageField.ts';
import { gearNewBookTour } from './everyPageGear.ts';
import { seasonNewBookTour } from './everyPageSeason.ts';
import { address, choose, fill, heading, open, pick, type Stop, tap, to } from './everyPageSteps.ts';
import { wearTour } from './everyPageWear.ts';

export const newBookTour: readonly Stop[] = [
  pick('/start', 'empty', {
    go: to('/start'),
    shows: 'How do you want to begin?',
    tab: true,
  }),
  pick('/start', 'error', { go: (v) => tap(v, 'Open the new book'), shows: 'Write the name of the firm' }),
  pick('/start', 'error', {
    as: 'backup',
    go: async (v) => {
      await choose(v, /^Take up a book/);
      await tap(v, 'Look into the file');
    },
    shows: 'Choose the file first',
  }),
  ...wearTour,
  pick('/keep', 'filled', { as: 'without-book', go: to('/keep'), shows: /^No book is open/ }),
  pick('/received', 'empty', { go: to('/received'), shows: /^No file waits here/, tab: true }),
  pick('/received', 'error', { go: to('/received?not=tooLarge'), shows: /^The file is larger than any book/ }),
  pick('/who', 'error', {
    go: async (v) => {
      await open(v, '/start');
      await choose(v, 'A new book');
      await fill(v, 'Name of the firm', 'Ironbow Painting');
      await tap(v, 'Open the new book');
      await heading(v, 'Who holds this device?');
      await tap(v, 'Go on');
    },
    shows: 'Write the name',
  }),
  pick('/', 'empty', {
    go: async (v) => {
      await fill(v, 'Name', 'Wanda Keel');
      await tap(v, 'Go on');
    },
    shows: "Open today's shift",
    tab: true,
  }),
  pick('/', 'empty', {
    as: 'site-missing',
    go: (v) => tap(v, "Open today's shift"),
    shows: /^Write: Name of the site|Name of the site/,
  }),
  pick('/samples', 'empty', { go: to('/samples'), shows: /^No sample yet/ }),
  pick('/results', 'empty', { go: to('/results'), shows: /^Nothing waits for a result/ }),
  pick('/boxes', 'empty', { go: to('/boxes'), shows: 'No box has been packed yet.' }),
  pick('/pack', 'empty', { go: to('/pack'), shows: /^No stopped cassette waits/ }),
  ...seasonNewBookTour,
  ...gearNewBookTour,
  pick('/lists', 'empty', { go: to('/lists'), shows: 'No pump yet' }),
  pick('/day/:workdayId', 'empty', { go: to('/day/0123456789ab.2026-10-06'), shows: 'There is no such day' }),
  pick('/shift/:shiftId', 'empty', {
    go: async (v) => {
      await open(v, '/');
      await fill(v, 'Name of the site', 'Footbridge over the mill race');
      await v.page.getByLabel('State or territory').selectOption('OH');
      await choose(v, 'Outdoors');
      await tap(v, "Open today's shift");
      await heading(v, 'The day at Footbridge over the mill race');
      v.known.set('shift', address(v).slice('/shift/'.length));
    },
    shows: 'Before entering',
    tab: true,
  }),
  pick('/shift/:shiftId/flow', 'empty', { go: to('/shift/{shift}/flow'), shows: 'Number on the pump' }),
  pick('/shift/:shiftId/flow', 'error', {
    as: 'nothing',
    go: (v) => tap(v, 'Save, next pump'),
    shows: 'Write at least one reading',
  }),
  pick('/shift/:shiftId/fit', 'empty', { go: to('/shift/{shift}/fit'), shows: 'What will this worker do today?' }),
  pick('/shift/:shiftId/fit', 'error', {
    as: 'nothing',
    go: (v) => tap(v, 'Prepare the cassette'),
    shows: 'Choose at least one task',
  }),
  pick('/shift/:shiftId/blank', 'empty', { go: to('/shift/{shift}/blank'), shows: /^Where it was opened/ }),
  pick('/shift/:shiftId/conditions', 'empty', {
    go: to('/shift/{shift}/conditions'),
    shows: 'Save the conditions',
    tab: true,
  }),
  pick('/shift/:shiftId/conditions', 'empty', {
    as: 'nothing-chosen',
    go: (v) => tap(v, 'Save the conditions'),
    shows: 'Choose: Tool',
  }),
  ...fieldNewBookTour,
  ...aheadNewBookTour,
  pick('/settle', 'empty', { go: to('/settle'), shows: 'Nothing is open. There is nothing to settle.' }),
  pick('/story/:recordKey', 'empty', { go: to('/story/sample%3A0123456789ab'), shows: /^No entry about this/ }),
];

/** Records that this book does not hold: an address from another device, or an old one. */
export const goneTour: readonly Stop[] = [
  ['/shift/:shiftId', 'This day is not here'],
  ['/shift/:shiftId/flow', /shift/i],
  ['/shift/:shiftId/fit', /shift/i],
  ['/shift/:shiftId/blank', /shift/i],
  ['/shift/:shiftId/conditions', /shift/i],
  ['/shift/:shiftId/roster', /shift/i],
  ['/shift/:shiftId/job-start', /shift/i],
  ['/shift/:shiftId/rely', /shift/i],
  ['/nowhere', 'There is no such page'],
  ['/worker/:sampleId', /sample/i],
  ['/sample/:sampleId', /sample/i],
  ['/sample/:sampleId/after', /sample/i],
  ['/settle/:matterKey', /nothing left to settle/],
  ['/box/:boxId', /box/i],
  ['/box/:boxId/change', /box/i],
].map(([path, shows]) => ({
  path: path as string,
  state: 'empty',
  as: 'gone',
  go: to((path as string).replace(/:\w+/, '0123456789ab.2026-10-06')),
  shows: shows as RegExp,
}));
