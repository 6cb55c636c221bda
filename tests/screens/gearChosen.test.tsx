// @vitest-environment happy-dom
/** Wherever gear is chosen, it says that it was found bad; the day made ready leads from one wearer to the next. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import { planOf, visit } from './seasonStage.tsx';
import { button, heading, minute, put, type Stage, screen, setStage, strike } from './stage.tsx';

let stage: Stage;
let otto: string;
let planId: string;
const today = '2026-11-25';
const bad = /found bad: a low result with it proves nothing/;

beforeEach(async () => {
  stage = await setStage();
  [otto, planId] = [newId(), newId()];
  const person = { identifier: 'W2', language: 'en', jobClassificationId: null, employer: null } as const;
  await put([newFact('personAdded.v1', { personId: otto, name: 'Otto Oakum', ...person }, entry())]);
});
afterEach(strike);

const shift = () => stage.day.shiftId;

async function foundBad(gear: 'pump' | 'meter' | 'lot', gearId: string): Promise<void> {
  const about = { gear, gearId, doubtId: newId(), found: 'Reads high', foundOn: today, fromOn: null, untilOn: null };
  await put([newFact('gearDoubted.v1', about, entry())]);
}

test('a lot, a pump and a flow meter found bad say so where a worker is prepared and where the flow is checked', async () => {
  await foundBad('lot', stage.day.lotId);
  await foundBad('pump', stage.day.pumpId);
  await foundBad('meter', stage.day.meterId);
  visit(`/shift/${shift()}/fit`);
  await heading('Prepare a worker');
  expect(screen.getByRole('radio', { name: /^P-1\b/ })).toHaveAccessibleDescription(bad);
  expect(screen.getByRole('radio', { name: /^L-77/ })).toHaveAccessibleDescription(bad);
  visit(`/shift/${shift()}/flow`);
  await heading('Check the flow before');
  for (const name of [/^P-1\b/, /^M-1/, /^L-77/])
    expect(screen.getByRole('radio', { name })).toHaveAccessibleDescription(bad);
});

test('what was found bad is not put in place for tomorrow, and says so in the list', async () => {
  const slots = [{ workerId: stage.day.personId, workOn: today }];
  await put([planOf({ planId, slots }), sampleOf(stage.day).prepared(entry())]);
  await foundBad('lot', stage.day.lotId);
  await foundBad('pump', stage.day.pumpId);
  visit(`/tomorrow/${shift()}`);
  await heading(/^Who wears what/);
  expect(await screen.findByLabelText('Lot for Ada Quill')).toHaveDisplayValue('Not chosen yet');
  expect(screen.getByLabelText('Pump for Ada Quill')).toHaveDisplayValue('Not chosen yet');
  expect(screen.getByRole('option', { name: /^L-77, found bad/ })).toBeInTheDocument();
});

/** Ada, of the plan, and Otto, whom no plan names, are to wear a pump today; the flow of one was checked. */
async function ready(): Promise<void> {
  await put([planOf({ planId, slots: [{ workerId: stage.day.personId, workOn: today }] })]);
  const work = { taskIds: ['handScraping'], jobClassificationId: null, lotId: stage.day.lotId, pumpId: null };
  const wearers = [
    { workerId: stage.day.personId, planId, ...work },
    { workerId: otto, planId: null, ...work },
  ];
  const beside = { sparePumpIds: [], spareCassettesCount: 0, chargedById: null, remark: null, knew: [] };
  await put([
    newFact('dayPrepared.v1', { shiftId: shift(), asked: 'morning', wearers, ...beside }, entry()),
    flowCheckOf(stage.day, 'before')(entry()),
  ]);
}

const fitOf = (workerId: string) => `#/shift/${shift()}/fit?wearer=${workerId}`;

test('after the first one is prepared the next planned wearer comes, and a late look comes before', async () => {
  await ready();
  visit(`/shift/${shift()}`);
  expect(await screen.findByRole('link', { name: 'Prepare Ada Quill' })).toHaveAttribute(
    'href',
    fitOf(stage.day.personId),
  );
  const one = sampleOf(stage.day);
  const points = {
    ...{ pumpSecured: true, tubingSecured: true, breathingZone: true, outsideRespirator: true, insideHelmet: null },
    ...{ inletDown: true, plugsOff: true, running: true },
  };
  const fitting = { sampleId: one.sampleId, points, mode: 'fitted', observationOffered: true } as const;
  await put([
    one.prepared(entry()),
    newFact('fittingChecked.v1', { ...fitting, initials: 'AQ', language: 'en' }, entry()),
  ]);
  visit(`/shift/${shift()}`);
  expect(await screen.findByRole('link', { name: 'Prepare Otto Oakum' })).toHaveAttribute('href', fitOf(otto));
  await put([one.putOn(entry())]);
  stage.clock.forward(130 * minute);
  visit(`/shift/${shift()}`);
  expect(await screen.findByRole('link', { name: 'Look at the pump on Ada Quill' })).toBeVisible();
  expect(screen.queryByRole('link', { name: /^Prepare Otto/ })).toBeNull();
});

test('whoever declines is not offered next; one whom no plan names is told how to be left out', async () => {
  await ready();
  const user = visit(`/shift/${shift()}`);
  await user.click(await button('Ada Quill'));
  await user.click(await button('The worker declined'));
  expect(await screen.findByRole('link', { name: 'Prepare Otto Oakum' })).toBeVisible();
  expect(screen.getByText(/^No plan names this worker, .* untick the name\.$/)).toBeVisible();
  expect(screen.getByRole('link', { name: /^Otto Oakum ?No plan/ })).toHaveAttribute('href', `#/tomorrow/${shift()}`);
});
