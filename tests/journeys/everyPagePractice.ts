/** The way through every page of the practice book, where a pump is running and yesterday is finished. */

import { expect } from '@playwright/test';
import { aheadPracticeTour } from './everyPageAhead.ts';
import { fieldPracticeTour } from './everyPageField.ts';
import { gearPracticeTour } from './everyPageGear.ts';
import { keptTour } from './everyPageKept.ts';
import { officeTour } from './everyPageOffice.ts';
import { seasonPracticeTour } from './everyPageSeason.ts';
import { address, choose, fill, heading, open, pick, type Stop, tap, to, type Visitor } from './everyPageSteps.ts';
import { rulesTour } from './everyPageWear.ts';
import { shareNumber } from './sharedNumber.ts';

/** Notes the id that an address ends in, or has in its middle. */
async function note({ page, known }: Visitor, name: string, link: string | RegExp, from: RegExp): Promise<void> {
  const href = await page.getByRole('link', { name: link }).first().getAttribute('href');
  const id = from.exec(decodeURIComponent(href ?? ''))?.[1];
  if (id === undefined) throw new Error(`no link like ${from} at ${link}`);
  known.set(name, id);
}

async function practice(v: Visitor): Promise<void> {
  await choose(v, 'A practice book');
  await tap(v, 'Open the practice book');
  await heading(v, /Tallow Street Library/);
  await expect(v.page.getByText('EXAMPLE', { exact: true })).toBeVisible();
}

/** Two files wait, as the worker puts them by (src/store/received.ts); how they come there is looked at in received.test.ts. */
async function receiveTwo(v: Visitor): Promise<void> {
  await v.page.evaluate(async () => {
    const cache = await caches.open('fullshift-received-v1');
    const headers = { 'x-received-at': new Date().toISOString() };
    await cache.put(
      'received/000000000001',
      new Response('a,b', { headers: { ...headers, 'x-file-name': 'results.csv' } }),
    );
    await cache.put(
      'received/000000000002',
      new Response('%PDF', { headers: { ...headers, 'x-file-name': 'sheet.pdf' } }),
    );
  });
  await to('/received')(v);
}

/** The samples of the practice book, and from their pages the shifts, the days and the box. */
async function noteRecords(v: Visitor): Promise<void> {
  await open(v, '/boxes');
  await note(v, 'box', /cassettes for/, /\/box\/([^/]+)/);
  await open(v, '/samples');
  await note(v, 'running', /^Pia Putty.*on the worker/, /\/sample\/([^/]+)/);
  await note(v, 'finished', /^Otto Oakum.*result in/, /\/sample\/([^/]+)/);
  await note(v, 'finishedOfPia', /^Pia Putty.*result in/, /\/sample\/([^/]+)/);
  await note(v, 'blank', /^Field blank/, /\/sample\/([^/]+)/);
  for (const [sample, shift] of [
    ['running', 'today'],
    ['finished', 'yesterday'],
  ] as const) {
    await to(`/sample/{${sample}}`)(v);
    await heading(v, sample === 'running' ? /^The pump is on/ : /is done for this cassette$/);
    await note(v, shift, 'Back', /\/shift\/([^/]+)/);
  }
  await note(v, 'dayOfOtto', 'See the day and its result', /\/day\/([^/]+)/);
  await to('/sample/{finishedOfPia}')(v);
  await heading(v, /^Pia Putty is done/);
  await note(v, 'dayOfPia', 'See the day and its result', /\/day\/([^/]+)/);
  await open(v, '/samples');
}

/** One of today's numbers is corrected in the store to another's, as two devices that count alike would leave it. */
async function sharedNumber(v: Visitor): Promise<void> {
  await shareNumber(v.page);
  await open(v, '/settle');
}

/** Each way begins like this, on a device of its own. */
const beginning: readonly Stop[] = [
  pick('/', 'running', { go: practice, shows: /^Pia Putty/ }),
  pick('/samples', 'filled', { go: noteRecords, shows: 'All of them, newest first', tab: true }),
];

/** What a supervisor does in a shift, and what the office does with its samples. */
export const practiceTour: readonly Stop[] = [
  ...beginning,
  pick('/sample/:sampleId', 'running', { go: to('/sample/{running}'), shows: 'On the worker, running', tab: true }),
  ...(
    [
      ['away', 'Away now'],
      ['off', 'Off the worker now'],
      ['change', 'Old one off, prepare the new one'],
      ['fault', 'Save the fault'],
      ['mishap', 'Save what happened'],
      ['look', 'Save the look'],
      ['stop', 'Save: stopped'],
      ['remark', 'Save the remark'],
      ['void', 'Void it'],
    ] as const
  ).map(([deed, action]) =>
    pick('/sample/:sampleId', 'running', { as: deed, go: to(`/sample/{running}?do=${deed}`), shows: action }),
  ),
  pick('/sample/:sampleId', 'filled', { go: to('/sample/{finished}'), shows: 'Air drawn', tab: true }),
  pick('/sample/:sampleId', 'filled', { as: 'blank', go: to('/sample/{blank}'), shows: /^Field blank/ }),
  pick('/sample/:sampleId/after', 'filled', {
    go: to('/sample/{finished}/after'),
    shows: 'All of it is written down.',
    tab: true,
  }),
  pick('/shift/:shiftId', 'running', { go: to('/shift/{today}'), shows: /^Pia Putty: put on/ }),
  pick('/shift/:shiftId', 'filled', { go: to('/shift/{yesterday}'), shows: /^Otto Oakum/ }),
  pick('/shift/:shiftId/conditions', 'filled', { go: to('/shift/{yesterday}/conditions'), shows: 'Hand tools' }),
  pick('/day/:workdayId', 'filled', { go: to('/day/{dayOfPia}'), shows: 'Average over the shift', tab: true }),
  pick('/day/:workdayId', 'filled', { as: 'unknown', go: to('/day/{dayOfOtto}'), shows: 'not known' }),
  pick('/day/:workdayId', 'error', {
    go: async (v) => {
      await tap(v, 'Say what the unknown minutes were');
      await tap(v, 'Write it down');
    },
    shows: /^Choose|^Say/,
  }),
  pick('/day/:workdayId', 'error', {
    as: 'hours',
    go: async (v) => {
      await tap(v, 'Leave it as it is');
      await tap(v, /^Worked /);
      await fill(v, 'From', '25:00');
      await tap(v, 'Write the hours down');
    },
    shows: /there is no such time on a clock/,
  }),
  pick('/boxes', 'filled', { go: to('/boxes'), shows: 'Newest first', tab: true }),
  pick('/box/:boxId', 'filled', { go: to('/box/{box}'), shows: 'In the box', tab: true }),
  pick('/box/:boxId', 'filled', {
    as: 'sheet',
    go: async (v) => {
      await tap(v, 'Make the custody sheet');
      await expect(v.page.getByRole('button', { name: 'Hand out revision 1' })).toBeEnabled({ timeout: 20_000 });
    },
    shows: /^Revision 1 on Letter/,
  }),
  pick('/box/:boxId/change', 'filled', { go: to('/box/{box}/change'), shows: 'Why is it changed?', tab: true }),
  pick('/box/:boxId/change', 'error', { go: (v) => tap(v, 'Write the change down'), shows: /Why is it changed/ }),
  pick('/box/:boxId', 'error', {
    go: async (v) => {
      await fill(v, /^Remark for the laboratory/, 'Keep the filters');
      await fill(v, 'Why is it changed?', 'Asked by telephone');
      await tap(v, 'Write the change down');
      await tap(v, 'Make revision 2');
    },
    shows: 'Say what changed and why: the laboratory holds the sheet made before',
  }),
  pick('/shift/:shiftId/flow', 'error', {
    go: async (v) => {
      await to('/shift/{today}/flow')(v);
      await choose(v, /^P-12/);
      await fill(v, 'lowest', 'two');
      await tap(v, 'Save, next pump');
    },
    shows: /without words/,
    tab: true,
  }),
  pick('/shift/:shiftId/flow', 'empty', {
    as: 'meter-and-lot',
    go: async (v) => {
      await to('/shift/{today}/flow?pump=&purpose=before')(v);
      await tap(v, 'Change flow meter or cassette');
    },
    shows: 'What is in line with the pump',
  }),
  pick('/shift/:shiftId/blank', 'error', {
    go: async (v) => {
      await to('/shift/{today}/blank')(v);
      await fill(v, /^Where it was opened/, '');
      await tap(v, 'Opened and closed now');
    },
    shows: /Where it was opened/,
    tab: true,
  }),
  pick('/shift/:shiftId/fit', 'error', {
    go: async (v) => {
      await to('/shift/{today}/fit')(v);
      await choose(v, /^Otto Oakum/);
      await fill(v, 'Find a task', 'scraping');
      await v.page.getByRole('checkbox', { name: 'Scraping paint by hand' }).check({ force: true });
      await tap(v, 'Prepare the cassette');
    },
    shows: /^Presumed until measured/,
    tab: true,
  }),
  pick('/shift/:shiftId/fit', 'empty', {
    as: 'prepared',
    go: async (v) => {
      await choose(v, /^P-12/);
      await tap(v, 'Prepare the cassette');
      await heading(v, 'The cassette for Otto Oakum is prepared.');
      v.known.set('prepared', new URLSearchParams(address(v).split('?')[1]).get('prepared') ?? '');
    },
    shows: 'Write this number on the cassette',
  }),
  ...fieldPracticeTour,
  pick('/worker/:sampleId', 'empty', {
    go: to('/worker/{prepared}'),
    shows: 'Otto Oakum, esta es su bomba',
    tab: true,
    lang: 'es',
  }),
  pick('/worker/:sampleId', 'error', {
    go: (v) => tap(v, 'Listo: devuelva el teléfono'),
    shows: 'Elija quién la colocó',
    lang: 'es',
  }),
  pick('/worker/:sampleId', 'empty', { as: 'english', go: (v) => tap(v, 'English'), shows: 'You may watch' }),
  pick('/sample/:sampleId', 'filled', { as: 'prepared', go: to('/sample/{prepared}'), shows: 'Put on now' }),
  pick('/sample/:sampleId/after', 'error', {
    go: async (v) => {
      await to('/sample/{running}')(v);
      await tap(v, /^Stop: the pump is off for good/);
      await heading(v, 'After leaving: Pia Putty');
      await fill(v, /^The pump's own minutes/, 'two hours');
      await tap(v, "Save the pump's minutes");
    },
    shows: /without words/,
  }),
  pick('/', 'filled', { go: to('/'), shows: 'What is due', tab: true }),
  pick('/pack', 'error', {
    go: async (v) => {
      await open(v, '/pack');
      await v.page.getByRole('checkbox').first().uncheck({ force: true });
      await tap(v, 'The box is packed');
    },
    shows: 'Choose at least one cassette',
    tab: true,
  }),
  pick('/results', 'filled', {
    go: async (v) => {
      await open(v, '/results');
      await fill(v, 'Report number', 'EX-1072');
      await fill(v, /^Number$/, '120019');
      await fill(v, /^Lead, µg/, '<2.5');
    },
    shows: 'Still without a result',
    tab: true,
  }),
  pick('/results', 'error', {
    go: async (v) => {
      await fill(v, /^Number$/, '120018');
      await fill(v, /^Lead, µg/, '12 mg');
      await tap(v, /^Write the result down/);
    },
    shows: /These digits do not fit together/,
  }),
  pick('/settle', 'filled', { go: sharedNumber, shows: /^Two cassettes have the number/, tab: true }),
  pick('/settle/:matterKey', 'filled', {
    go: (v) => tap(v, /^Two cassettes have the number/),
    shows: 'Write the new number on the cassette.',
    tab: true,
  }),
  pick('/settle/:matterKey', 'error', { go: (v) => tap(v, 'Save the new number'), shows: 'Say why in a few words' }),
  pick('/story/:recordKey', 'filled', {
    go: (v) => open(v, `/story/sample%3A${v.known.get('finished') ?? ''}`),
    shows: /entries about it on this device/,
    tab: true,
  }),
  pick('/lists', 'filled', { go: to('/lists'), shows: 'Tallow Street Library', tab: true }),
  pick('/lists', 'filled', { as: 'person', go: (v) => tap(v, /^Pia Putty/), shows: 'Why is it changed?' }),
  pick('/who', 'filled', { go: to('/who'), shows: 'In whose hands is it?', tab: true }),
];

/** What follows from results, what is kept, and what there is to read. */
export const practiceOfficeTour: readonly Stop[] = [
  ...beginning,
  ...officeTour,
  ...aheadPracticeTour,
  ...gearPracticeTour,
  ...seasonPracticeTour,
  ...keptTour,
  pick('/received', 'filled', { go: receiveTwo, shows: 'sheet.pdf', tab: true }),
  pick('/start', 'empty', { as: 'open-already', go: to('/start'), shows: 'Go to Today' }),
  ...rulesTour,
  pick('/checked', 'filled', { go: to('/checked'), shows: /Published/, tab: true }),
  pick('/about', 'filled', { go: to('/about'), shows: /version/i, tab: true }),
  pick('/gallery', 'filled', { go: to('/gallery'), shows: /Every part/, tab: true }),
];
