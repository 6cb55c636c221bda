// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import {
  address,
  button,
  heading,
  lastFact,
  minute,
  put,
  putOnSample,
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

const page = () => `/shift/${stage.day.shiftId}`;

describe("the day's page", () => {
  test('of an empty day begins with the flow of a pump', async () => {
    visit(page());
    await heading('The day at Public library, reading room');
    expect(screen.getByRole('link', { name: 'Check the flow of a pump' })).toHaveAttribute('href', `#${page()}/flow`);
    const order = screen.getAllByRole('heading', { level: 2 }).map((each) => each.textContent);
    expect(order).toEqual([
      'Who works here today',
      'Flow before',
      'Before entering',
      'On the worker',
      'After leaving',
      'Field blanks',
      'Conditions of the day',
      'Written on paper',
      'Box for the laboratory',
      'File for the office',
      'What follows',
    ]);
  });

  test('says who is prepared, who wears a pump, and when a look is due', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(130 * minute);
    visit(page());
    expect(await screen.findByRole('link', { name: /Ada Quill: put on 06:30/ })).toBeVisible();
    expect(screen.getByText(/a look was due at 08:30/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Look at the pump on Ada Quill' })).toHaveAttribute(
      'href',
      `#/sample/${one.sampleId}`,
    );
  });

  test('keeps a void sample in sight, with its reason', async () => {
    const one = sampleOf(stage.day);
    await put([one.prepared(entry())]);
    const { newFact } = await import('#store/newFact.ts');
    await put([newFact('sampleVoided.v1', { sampleId: one.sampleId }, { ...entry(), why: 'Cassette cracked' })]);
    visit(page());
    expect(await screen.findByText('Because: Cassette cracked')).toBeVisible();
  });

  test('a shift that this device does not hold says so', async () => {
    visit('/shift/0123456789ab.2026-11-25');
    expect(await screen.findByText(/This shift is not in the book on this device/)).toBeVisible();
  });
});

describe('field blanks', () => {
  test('get a number, and two of two are enough for one sample', async () => {
    await putOnSample(stage);
    const user = visit(`${page()}/blank`);
    expect(await screen.findByText('0 of 2 field blanks so far.')).toBeVisible();
    await user.type(screen.getByLabelText('Where it was opened'), 'At the change area');
    await user.click(await button('Opened and closed now'));
    await heading('Write this number on the blank');
    expect((await lastFact('blankOpened.v1'))?.body).toMatchObject({ openedWhere: 'At the change area' });
    await user.click(screen.getByRole('link', { name: 'Open another blank' }));
    await user.click(await button('Opened and closed now'));
    expect(await screen.findByText(/2 field blanks; 2 go with the samples so far/)).toBeVisible();
  });
});

describe('the conditions of the day', () => {
  const taps = ['Hand tools', 'Dry', 'Shroud', 'Partly closed', 'Open to wind', 'Indoors', 'Tested', 'About a room'];

  test('are eight taps', async () => {
    const user = visit(`${page()}/conditions`);
    await heading('Conditions of the day');
    for (const name of taps) await user.click(screen.getByRole('radio', { name }));
    await user.click(await button('Save the conditions'));
    await waitFor(() => expect(address()).toBe(page()));
    expect((await lastFact('conditionsNoted.v1'))?.body).toMatchObject({
      tool: 'hand',
      method: 'dry',
      dustCollection: 'shroud',
      containment: 'partial',
      ventilation: 'natural',
      weather: 'indoors',
      paintLead: 'tested',
      area: 'room',
    });
  });

  test('that are not all chosen say which, and stay as they were tapped', async () => {
    const user = visit(`${page()}/conditions`);
    await heading('Conditions of the day');
    await user.click(screen.getByRole('radio', { name: 'Hand tools' }));
    await user.click(await button('Save the conditions'));
    expect(await screen.findByRole('link', { name: 'Choose: Wet or dry' })).toBeVisible();
    expect(screen.getByRole('radio', { name: 'Hand tools' })).toBeChecked();
    expect(await lastFact('conditionsNoted.v1')).toBeUndefined();
  });
});

test('a flow before of one pump is listed with the pump', async () => {
  await put([flowCheckOf(stage.day, 'before')(entry())]);
  visit(page());
  expect(await screen.findByText('Checked: pump P-1')).toBeVisible();
  expect(screen.getByRole('link', { name: 'Prepare a worker' })).toBeVisible();
});
