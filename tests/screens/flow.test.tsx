// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
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
  visit,
  waitFor,
} from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

const low = (n: number) => document.getElementById(`reading-${n}-low`) as HTMLInputElement;
const high = (n: number) => document.getElementById(`reading-${n}-high`) as HTMLInputElement;
const flowPage = () => `/shift/${stage.day.shiftId}/flow`;

/** Everything but the readings is chosen. */
async function ready() {
  const user = visit(flowPage());
  await heading('Check the flow before');
  await user.click(screen.getByRole('radio', { name: 'P-1' }));
  await user.click(screen.getByRole('radio', { name: 'M-1' }));
  await user.click(screen.getByRole('radio', { name: 'L-77' }));
  return user;
}

describe('a flow check', () => {
  test('takes a float that bounces between 2.5 and 2.6 L/min as 2.55 (common practice), and keeps both ends', async () => {
    const user = await ready();
    await user.type(low(0), '2.5');
    await user.type(high(0), '2,6');
    expect(await screen.findByText('2.55')).toBeVisible();
    await user.click(await button('Save, next pump'));
    expect(await screen.findByText(/Pump P-1: 2\.55.L\/min is saved\./)).toBeVisible();
    const fact = await lastFact('flowChecked.v1');
    expect(fact?.body).toMatchObject({
      purpose: 'before',
      inLine: 'representativeCassette',
      readings: [{ lowLPerMin: 2.5, highLPerMin: 2.6 }],
    });
  });

  test('tells at once that a float bounces more than 5 %, and that a flow lies outside the method', async () => {
    const user = await ready();
    await user.type(low(0), '1.5');
    await user.type(high(0), '2.5');
    await waitFor(() => expect(alerts()).toMatch(/more than 5/));
    await user.clear(low(0));
    await user.clear(high(0));
    await user.type(low(0), '4.5');
    await waitFor(() => expect(alerts()).toMatch(/method/));
  });

  test('says at once that nothing in line is not a flow check', async () => {
    const user = await ready();
    await user.click(screen.getByRole('button', { name: 'Change flow meter or cassette' }));
    await user.click(screen.getByRole('radio', { name: /Nothing: the meter straight on the pump/ }));
    await user.type(low(0), '2');
    await waitFor(() => expect(alerts()).toMatch(/in line/));
  });

  test('is ready for the next pump with flow meter and cassette kept', async () => {
    const user = await ready();
    await user.type(low(0), '2.00');
    await user.click(await button('Save, next pump'));
    await screen.findByText(/is saved/);
    expect(low(0)).toHaveValue('');
    expect(screen.getByText(/Soap film \(bubble\) M-1; a cassette of lot L-77 in line\./)).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'Add a pump' }));
    await user.type(screen.getByLabelText('Number on the pump'), 'P-2');
    await user.type(low(0), '2.10');
    await user.click(await button('Save, next pump'));
    expect(await screen.findByText(/Pump P-2: 2\.10.L\/min is saved\./)).toBeVisible();
    expect((await journal()).filter(({ kind }) => kind === 'flowChecked.v1')).toHaveLength(2);
  });

  test('asked for from a sample leads back to it', async () => {
    const one = sampleOf(stage.day);
    await put([flowCheckOf(stage.day, 'before')(entry())]);
    await put([one.prepared(entry())]);
    stage.clock.forward(60_000);
    await put([one.putOn(entry())]);
    stage.clock.forward(3_600_000);
    await put([one.stopped(entry())]);
    const user = visit(`${flowPage()}?pump=${stage.day.pumpId}&purpose=after&sample=${one.sampleId}`);
    await heading('Check the flow after');
    await user.type(low(0), '2.02');
    await user.click(await button('Save this flow check'));
    await waitFor(() => expect(address()).toBe(`/sample/${one.sampleId}/after`));
    expect((await lastFact('flowChecked.v1'))?.body).toMatchObject({ purpose: 'after' });
  });

  test('asks temperature and pressure only of a float in a tube', async () => {
    const user = await ready();
    expect(screen.queryByLabelText(/Air temperature/)).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Change flow meter or cassette' }));
    await user.click(screen.getByRole('radio', { name: 'Add a flow meter' }));
    await user.click(screen.getByRole('radio', { name: /Rotameter/ }));
    expect(screen.getByLabelText(/Air temperature at the check/)).toBeVisible();
    expect(screen.getByLabelText(/Station pressure/)).toBeVisible();
  });
});
