// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { newBook } from '#store/opening.ts';
import { newDevice, pickUp } from '#tests/store/device.ts';
import { entry } from '#tests/store/scenario.ts';
import { recordsOfShift, tapShift, typeForm } from './keyInHands.ts';
import {
  alerts,
  button,
  drafts,
  heading,
  journal,
  put,
  type Stage,
  screen,
  setStage,
  strike,
  waitFor,
} from './stage.tsx';

let stage: Stage;
let number: string;

/** Another device in the evening, which holds people, place and gear, and nothing of the shift. */
async function evening(): Promise<void> {
  stage.clock.atMs = Date.parse('2026-11-25T22:00:00.000Z');
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const { siteAdded, personAdded, pumpAdded, meterAdded, lotAdded } = stage.day;
  await put([siteAdded, personAdded, pumpAdded, meterAdded, lotAdded].map((of) => of(entry())));
}

beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

describe('a paper form', () => {
  test('keyed in becomes the same records as the shift tapped on the phone', async () => {
    number = await tapShift(stage);
    const tapped = await recordsOfShift();
    expect(tapped.length).toBe(5);
    await evening();
    const user = await typeForm(stage.day, number);
    const before = (await journal()).length;
    await user.click(await button('Save this form'));
    await heading('The form is keyed in');
    expect(await recordsOfShift()).toEqual(tapped);
    const written = (await journal()).slice(before);
    expect(written.map(({ kind }) => kind)).toEqual([
      'shiftOpened.v1',
      'flowChecked.v1',
      'samplePrepared.v1',
      'workNoted.v1',
      'fittingChecked.v1',
      'pumpPutOn.v1',
      'pumpLookedAt.v1',
      'pumpStopped.v1',
      'flowChecked.v1',
      'cassetteSealed.v1',
      'conditionsNoted.v1',
      'dayDescribed.v1',
    ]);
    for (const { happened } of written) expect(happened).toMatchObject({ entry: 'typed', from: 'Paper form' });
  });

  test('without a number gets the next one of the book, and the next form keeps what all of them share', async () => {
    await evening();
    const user = await typeForm(stage.day, '');
    await user.click(await button('Save this form'));
    await heading('The form is keyed in');
    expect(screen.getByText('Write this number on the cassette')).toBeVisible();
    await user.click(await button('Key in the next form'));
    await heading('Key in a paper form');
    expect(screen.getByRole('radio', { name: 'Public library, reading room' })).toBeChecked();
    expect(screen.getByRole('radio', { name: 'M-1' })).toBeChecked();
    expect(screen.getByRole('radio', { name: 'Ada Quill' })).not.toBeChecked();
    expect(await screen.findByText('The conditions of this day are written down already.')).toBeVisible();
  });

  test('of a night shift goes past midnight', async () => {
    await evening();
    stage.clock.atMs = Date.parse('2026-11-26T12:00:00.000Z');
    const user = await typeForm(stage.day, '', {
      'before-time': '21:30',
      'putOn-time': '22:00',
      'look-0-time': '00:10',
      'stopped-time': '05:20',
      pumpMin: '440',
      'after-time': '05:40',
      'sealed-time': '05:50',
    });
    await user.click(await button('Save this form'));
    await waitFor(() => expect(alerts()).toMatch(/Stopped: time: this is before 21:30, the first time on the paper/));
    await user.click(document.getElementById('pastMidnight-yes') as HTMLElement);
    await user.click(await button('Save this form'));
    await heading('The form is keyed in');
    const stopped = (await journal()).find(({ kind }) => kind === 'pumpStopped.v1');
    expect(stopped?.happened.at).toBe('2026-11-26T10:20:00.000Z');
  });
});

/** Wrong by one field: what is typed there, and the sentence and field that tell what to do. */
const wrong: readonly (readonly [string, Record<string, string>, RegExp, string | null])[] = [
  [
    'no reading of the flow before',
    { 'before-reading-0-low': '', 'before-reading-0-high': '', 'before-reading-1-low': '' },
    /Write the readings of the flow before/,
    'before-reading-0',
  ],
  [
    'letters in a reading',
    { 'after-reading-0-low': 'two', 'after-reading-0-high': '' },
    /without words/,
    'after-reading-0',
  ],
  ['a number that does not fit its last digit', { number: '123456' }, /does not fit its last digit/, 'number'],
  ['letters in the number', { number: '12a' }, /digits only/, 'number'],
  ['a time that no clock shows', { 'putOn-time': '25:10' }, /no such time on a clock/, 'putOn-time'],
  ['no stop', { 'stopped-time': '' }, /Fill in: Stopped: time/, 'stopped-time'],
  [
    'stop before put on',
    { 'stopped-time': '06:10', 'look-0-time': '' },
    /cannot stop before it was put on/,
    'stopped-time',
  ],
  ['a time that has not come yet', { 'sealed-time': '23:30' }, /has not come yet/, 'sealed-time'],
  ['a day that has not come yet', { day: '12/24/2026' }, /this day has not come yet/, 'day'],
  [
    'a time that the clock change leaves out',
    { day: '3/8/2026', 'before-time': '01:40', 'putOn-time': '02:30' },
    /There is no 02:30 on that day/,
    'putOn-time',
  ],
  [
    'a time that comes twice that night',
    { day: '11/1/2026', 'before-time': '00:40', 'putOn-time': '01:30' },
    /01:30 comes twice/,
    'putOn-which',
  ],
  ['hours in the minutes', { pumpMin: '7.5 h' }, /this was typed in h/, 'pumpMin'],
];

describe('a form with something wrong', () => {
  test.each(wrong)('%s: told at its field, nothing is written, nothing is lost', async (_, otherwise, says, at) => {
    await evening();
    const user = await typeForm(stage.day, '', otherwise);
    const before = { journal: await journal(), drafts: await drafts() };
    await user.click(await button('Save this form'));
    await waitFor(() => expect(alerts()).toMatch(says));
    if (at !== null) expect(document.getElementById(at)).not.toBeNull();
    const link = screen.getAllByRole('link').find((each) => says.test(each.textContent ?? ''));
    expect(link?.getAttribute('href')).toBe(`#${at}`);
    expect(await journal()).toEqual(before.journal);
    expect(await drafts()).toEqual(before.drafts);
  });
});
