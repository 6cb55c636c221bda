// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from 'vitest';
import {
  alerts,
  button,
  facts,
  heading,
  journalTexts,
  leaveOffice,
  practiceOffice,
  screen,
  visit,
  waitFor,
} from './office.tsx';

beforeEach(async () => {
  await practiceOffice();
});
afterEach(leaveOffice);

test('every register stands on the page with how each entry stands', async () => {
  visit('/lists');
  await heading('People, places and gear');
  for (const name of [
    'People',
    'Pumps',
    'Flow meters',
    'Cassette lots',
    'Sites',
    'Laboratories',
    'Job classifications',
  ])
    expect(await screen.findByRole('heading', { level: 2, name })).toBeVisible();
  expect(screen.getByRole('button', { name: /Otto Oakum.*reads Spanish/ })).toBeVisible();
  expect(screen.getByRole('button', { name: /DP-3.*Dry piston, calibration due/ })).toBeVisible();
});

test('a pump is added ahead of time', async () => {
  const user = visit('/lists');
  await user.click(await button('Add a pump'));
  await user.type(await screen.findByLabelText('Number on the pump'), 'P-77');
  await user.click(await button('Write it down'));
  expect(await screen.findByRole('button', { name: 'P-77' })).toBeVisible();
  expect((await facts('pumpAdded.v1')).at(-1)?.body).toMatchObject({ serial: 'P-77', model: null });
});

test('a new name takes the place of the old one without a reason', async () => {
  const user = visit('/lists');
  await user.click(await button(/Plumb Line Laboratory/));
  const name = await screen.findByLabelText('Name of the laboratory');
  await user.clear(name);
  await user.type(name, 'Plumb and Level Laboratory');
  await user.click(await button('Write it down'));
  expect(await button(/Plumb and Level Laboratory/)).toBeVisible();
  expect((await facts('nameChanged.v1')).at(-1)?.body).toMatchObject({ name: 'Plumb and Level Laboratory' });
  expect(await facts('valueCorrected.v1')).toEqual([]);
});

test('anything else that is put right needs a reason, and what stood there stays to be seen', async () => {
  const user = visit('/lists');
  await user.click(await button(/^P-12/));
  const serial = await screen.findByLabelText('Number on the pump');
  await user.clear(serial);
  await user.type(serial, 'P-21');
  const before = await journalTexts();
  await user.click(await button('Write it down'));
  await waitFor(() => expect(alerts()).toContain('why it is changed'));
  expect(await journalTexts()).toEqual(before);
  await user.type(screen.getByLabelText('Why is it changed?'), 'Two digits had changed places');
  await user.click(await button('Write it down'));
  await user.click(await button(/^P-21/));
  const struck = await screen.findByText(/was P-12 \(Two digits had changed places\)/);
  expect(struck.closest('s')).not.toBeNull();
  expect((await facts('valueCorrected.v1')).at(-1)).toMatchObject({
    why: 'Two digits had changed places',
    body: { path: '/serial', old: 'P-12', new: 'P-21' },
  });
});

test('from when to when a person works here is said beside the entry, and a last day before the first is told', async () => {
  const user = visit('/lists');
  await user.click(await button(/Otto Oakum/));
  await user.type(await screen.findByLabelText('From'), '3/2/2026');
  await user.type(screen.getByLabelText('To'), '2/1/2026');
  await user.click(await button('Save from and to'));
  expect(await screen.findByText(/The last day lies before the first/)).toBeVisible();
  expect(await facts('employmentStated.v1')).toEqual([]);
  await user.clear(screen.getByLabelText('To'));
  await user.click(await button('Save from and to'));
  expect(await screen.findByText('from 2 March 2026, still here')).toBeVisible();
  expect((await facts('employmentStated.v1')).at(-1)?.body).toMatchObject({ fromOn: '2026-03-02', toOn: null });
});

test('an entry that is left as it is writes nothing', async () => {
  const before = await journalTexts();
  const user = visit('/lists');
  await user.click(await button(/EX-0921/));
  await user.type(await screen.findByLabelText('Filter and cassette'), ' open face');
  await user.click(await button('Leave it as it is'));
  await heading('People, places and gear');
  expect(await journalTexts()).toEqual(before);
});
