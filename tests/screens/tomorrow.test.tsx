// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from 'vitest';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { write } from '#store/write.ts';
import { entry } from '#tests/store/scenario.ts';
import { spacedDigits } from '#words/digits.ts';
import { planOf, visit } from './seasonStage.tsx';
import {
  address,
  alerts,
  button,
  heading,
  journal,
  lastFact,
  put,
  type Stage,
  screen,
  setStage,
  strike,
  waitFor,
} from './stage.tsx';

let stage: Stage;
let otto: string;
let second: string;
let planId: string;
const tomorrow = '2026-11-26';
const today = '2026-11-25';

beforeEach(async () => {
  stage = await setStage();
  [otto, second, planId] = [newId(), newId(), newId()];
  const person = { identifier: 'W2', language: 'en', jobClassificationId: null, employer: null } as const;
  const workers = [stage.day.personId, otto];
  await put([
    newFact('personAdded.v1', { personId: otto, name: 'Otto Oakum', ...person }, entry()),
    newFact('pumpAdded.v1', { pumpId: second, serial: 'P-2', model: null }, entry()),
  ]);
  await put([
    planOf({
      planId,
      slots: [tomorrow, today].flatMap((workOn) => workers.map((workerId) => ({ workerId, workOn }))),
    }),
  ]);
});
afterEach(strike);

const place = (day: string) => `${stage.day.siteId}.${day}`;

/** Both are planned; Ada has pump P-1, Otto none yet. */
async function prepared(day: string, asked: 'evening' | 'morning' = 'evening'): Promise<void> {
  const work = { planId, taskIds: ['handScraping'], jobClassificationId: null, lotId: stage.day.lotId };
  const wearers = [
    { workerId: stage.day.personId, pumpId: stage.day.pumpId, ...work },
    { workerId: otto, pumpId: null, ...work },
  ];
  const beside = { sparePumpIds: [], spareCassettesCount: 1, chargedById: otto, remark: null };
  await put([newFact('dayPrepared.v1', { shiftId: place(day), asked, wearers, ...beside, knew: [] }, entry())]);
}

test('the site is there, the day is tomorrow or today; a day that is over is refused', async () => {
  const user = visit('/tomorrow');
  await button('Say who wears what');
  await user.click(screen.getByRole('radio', { name: 'Another day' }));
  await user.type(screen.getByLabelText(/^Which day/), '11/3/2026');
  await user.click(await button('Say who wears what'));
  expect(alerts()).toContain('That day is over');
  await user.click(screen.getByRole('radio', { name: 'Tomorrow' }));
  await user.click(await button('Say who wears what'));
  expect(address()).toBe(`/tomorrow/${place(tomorrow)}`);
});

test('in the evening the planned ones stand there, one pump on two is refused, and saved it makes the day ready', async () => {
  const user = visit(`/tomorrow/${place(tomorrow)}`);
  await heading('Who wears what');
  await button('Save it for the day');
  expect(screen.getByRole('checkbox', { name: 'Ada Quill' })).toBeChecked();
  expect(screen.getByRole('checkbox', { name: 'Otto Oakum' })).toBeChecked();
  // n RL / (AL Q): 2.5 µg over 30 µg/m³ times 2 L/min are 41.7 minutes
  expect(screen.getAllByText(/At least 42.min on the worker/)).toHaveLength(2);
  expect(screen.getByText('No pump is chosen for Otto Oakum.')).toBeVisible();
  await user.selectOptions(screen.getByLabelText('Pump for Ada Quill'), stage.day.pumpId);
  await user.selectOptions(screen.getByLabelText('Pump for Otto Oakum'), stage.day.pumpId);
  expect(screen.getByText(/^Pump P-1 stands for two workers/)).toBeVisible();
  await user.click(await button('Save it for the day'));
  await waitFor(() => expect(alerts()).toContain('One pump is put down twice'));
  expect(await lastFact('dayPrepared.v1')).toBeUndefined();
  await user.selectOptions(screen.getByLabelText('Pump for Otto Oakum'), second);
  await user.type(screen.getByLabelText('Spare cassettes'), '2');
  await user.click(await button('Save it for the day'));
  expect(await screen.findByText(/^Saved\./)).toBeVisible();
  expect((await lastFact('dayPrepared.v1'))?.body).toMatchObject({
    shiftId: place(tomorrow),
    asked: 'evening',
    spareCassettesCount: 2,
    wearers: [
      { workerId: stage.day.personId, planId, pumpId: stage.day.pumpId, lotId: stage.day.lotId },
      { workerId: otto, planId, pumpId: second },
    ],
  });
  expect(await screen.findByRole('button', { name: 'Make the sheet' })).toBeVisible();
});

test('nobody ticked is told, and nothing is written', async () => {
  const user = visit(`/tomorrow/${place(tomorrow)}`);
  await button('Save it for the day');
  await user.click(screen.getByRole('checkbox', { name: 'Ada Quill' }));
  await user.click(screen.getByRole('checkbox', { name: 'Otto Oakum' }));
  await user.click(await button('Save it for the day'));
  expect(alerts()).toContain('Tick at least one worker');
  expect(await lastFact('dayPrepared.v1')).toBeUndefined();
});

test('in the morning it is asked again, what changed is told, and the day opens with all of it', async () => {
  await prepared(today);
  const user = visit(`/tomorrow/${place(today)}`);
  await heading('Who wears what today');
  expect(await screen.findByText('Nothing changed since it was said.')).toBeVisible();
  await user.selectOptions(screen.getByLabelText('Pump for Otto Oakum'), second);
  expect(screen.getByText('Otto Oakum: pump P-2')).toBeVisible();
  await user.click(await button('Save it and go to the day'));
  await heading(/^The day at/);
  expect((await lastFact('dayPrepared.v1'))?.body).toMatchObject({ asked: 'morning', knew: [expect.any(String)] });
  expect(await screen.findByRole('link', { name: /^Ada Quill: pump P-1/ })).toHaveAttribute(
    'href',
    `#/shift/${place(today)}/fit?wearer=${stage.day.personId}`,
  );
});

async function label(workerId: string | null, blank: boolean): Promise<string> {
  const labels = [{ sampleNumber: '', workerId, blank }];
  const written = await write([newFact('labelsMade.v1', { shiftId: place(today), labels }, entry())]);
  return written.kind === 'written' ? (written.sampleNumbers[0] ?? '') : written.kind;
}

test('the cassette of a planned wearer takes the number of its label, and nothing is typed again', async () => {
  await prepared(today, 'morning');
  const number = await label(stage.day.personId, false);
  const user = visit(`/shift/${place(today)}/fit?wearer=${stage.day.personId}`);
  await heading('Prepare a worker');
  expect(screen.getByRole('radio', { name: 'Ada Quill' })).toBeChecked();
  expect(screen.getByRole('checkbox', { name: 'Scraping paint by hand' })).toBeChecked();
  expect(screen.getByRole('radio', { name: 'P-1' })).toBeChecked();
  expect(screen.getByLabelText('Number for the cassette')).toHaveValue(number);
  await user.click(await button('Prepare the cassette'));
  await heading('The cassette for Ada Quill is prepared.');
  expect((await lastFact('samplePrepared.v1'))?.body).toMatchObject({ sampleNumber: number, lotId: stage.day.lotId });
  visit(`/shift/${place(today)}`);
  expect(await screen.findByRole('link', { name: /^Otto Oakum: no pump chosen/ })).toBeVisible();
  expect(screen.queryByRole('link', { name: /^Ada Quill: pump/ })).toBeNull();
});

test('a field blank takes the number of a label made for one', async () => {
  await prepared(today, 'morning');
  const number = await label(null, true);
  const user = visit(`/shift/${place(today)}/blank`);
  await user.type(await screen.findByLabelText(/^Where/), 'At the door');
  await user.click(screen.getByRole('radio', { name: 'L-77' }));
  await user.click(await button(/^Open|^Save|blank/i));
  await waitFor(async () => expect((await lastFact('blankOpened.v1'))?.body).toMatchObject({ sampleNumber: number }));
  expect(await screen.findByText(spacedDigits(number), { normalizer: (text) => text })).toBeVisible();
});

test('pumps that are to be worn stand first at the flow check', async () => {
  await put([newFact('pumpAdded.v1', { pumpId: newId(), serial: 'A-0', model: null }, entry())]);
  await prepared(today, 'morning');
  visit(`/shift/${place(today)}/flow`);
  await heading('Check the flow before');
  const names = screen.getAllByRole('radio').map((radio) => (radio as HTMLInputElement).labels?.[0]?.textContent);
  expect(names.indexOf('P-1')).toBeLessThan(names.indexOf('A-0'));
});

test('the flow check of a day made ready has the one flow meter and the lot of the wearers in place, open to be looked at', async () => {
  await put([newFact('lotAdded.v1', { lotId: newId(), lotNumber: 'A-00', media: 'MCE', expiresOn: null }, entry())]);
  await prepared(today, 'morning');
  visit(`/shift/${place(today)}/flow`);
  await heading('Check the flow before');
  expect(screen.getByRole('radio', { name: /^M-1/ })).toBeChecked();
  expect(screen.getByRole('radio', { name: /^L-77/ })).toBeChecked();
  // What is in line is never taken for granted: the lines stay open at the first check.
  expect(screen.getByRole('radio', { name: 'Nothing: the meter straight on the pump' })).toBeVisible();
});

test('a worker who declines is noted in two taps and stays to do', async () => {
  await prepared(today, 'morning');
  const user = visit(`/shift/${place(today)}`);
  await user.click(await button('Otto Oakum'));
  await user.click(await button('The worker declined'));
  expect(await screen.findByText('Otto Oakum: the worker declined; still to do')).toBeVisible();
  const missed = (await journal()).filter(({ kind }) => kind === 'plannedDayMissed.v1');
  expect(missed.map(({ body }) => body)).toEqual([
    { planId, workerId: otto, workOn: today, because: 'declined', remark: null },
  ]);
  visit(`/plan/${planId}`);
  expect(await screen.findByText('Still to do: declined')).toBeVisible();
});
