// @vitest-environment happy-dom

import { within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { entry } from '#tests/store/scenario.ts';
import {
  address,
  alerts,
  button,
  drafts,
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
const [otto, subcontractor, painter] = [newId(), newId(), newId()];
const yesterday = () => `${stage.day.siteId}.2026-11-24`;
const page = () => `/shift/${stage.day.shiftId}/roster`;

beforeEach(async () => {
  stage = await setStage();
  const person = { identifier: null, language: 'es' as const, jobClassificationId: null };
  await put([
    newFact('jobClassificationAdded.v1', { jobClassificationId: painter, name: 'Painter' }, entry()),
    newFact('personAdded.v1', { personId: otto, name: 'Otto Oakum', ...person, employer: null }, entry()),
    newFact(
      'personAdded.v1',
      { personId: subcontractor, name: 'Sid Shore', ...person, employer: 'Shore Scaffolds' },
      entry(),
    ),
  ]);
});
afterEach(strike);

/** Ada and Otto were at the library yesterday. */
async function rosterYesterday(): Promise<void> {
  const { personId, siteId } = stage.day;
  const noted = (workerId: string, taskIds: string[], jobClassificationId: string | null, respirator: string | null) =>
    newFact(
      'workNoted.v1',
      { workdayId: `${workerId}.2026-11-24`, shiftId: yesterday(), taskIds, jobClassificationId, respirator },
      entry(),
    );
  await put([newFact('shiftOpened.v1', { shiftId: yesterday(), siteId, workOn: '2026-11-24' }, entry())]);
  await put([noted(personId, ['handScraping'], null, null), noted(otto, ['wetSanding'], painter, 'airPurifyingHalf')]);
}

const noted = async () => (await journal()).filter(({ kind }) => kind === 'workNoted.v1').map(({ body }) => body);

describe('who works here today', () => {
  test('the same as yesterday is two taps: one to take it over, one to save', async () => {
    await rosterYesterday();
    const user = visit(page());
    await heading('Who works here today');
    let taps = 0;
    for (const name of ['The same as on 24 November: 2 workers', 'Save: 2 workers']) {
      await user.click(await button(name));
      taps += 1;
    }
    await waitFor(() => expect(address()).toBe(`/shift/${stage.day.shiftId}`));
    expect(taps).toBe(2);
    const today = (await noted()).filter(({ shiftId }) => shiftId === stage.day.shiftId);
    expect(today).toEqual([
      {
        workdayId: `${stage.day.personId}.2026-11-25`,
        shiftId: stage.day.shiftId,
        taskIds: ['handScraping'],
        jobClassificationId: null,
        respirator: null,
      },
      {
        workdayId: `${otto}.2026-11-25`,
        shiftId: stage.day.shiftId,
        taskIds: ['wetSanding'],
        jobClassificationId: painter,
        respirator: 'airPurifyingHalf',
      },
    ]);
    expect(await screen.findByText('2 workers written down')).toBeVisible();
  });

  test('shows people of other employers with the name of theirs, and adds one with the employer', async () => {
    const user = visit(page());
    await heading('Who works here today');
    expect(screen.getByText('of Shore Scaffolds')).toBeVisible();
    await user.click(await button('Add a person'));
    await user.type(screen.getByLabelText('Name'), 'Nora Nail');
    await user.type(screen.getByLabelText(/^Works for another firm/), 'Nail & Daughter');
    await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
    await user.click(await button('Save: 1 worker'));
    await waitFor(() => expect(address()).toBe(`/shift/${stage.day.shiftId}`));
    const person = await lastFact('personAdded.v1');
    expect(person?.body).toMatchObject({ name: 'Nora Nail', employer: 'Nail & Daughter' });
    expect((await noted()).at(-1)).toMatchObject({
      workdayId: `${person?.body.personId}.2026-11-25`,
      taskIds: ['handScraping'],
    });
  });

  test('one worker does something else, with the respirator that was worn: no filter below HEPA class is offered', async () => {
    const user = visit(page());
    await heading('Who works here today');
    await user.click(screen.getByRole('checkbox', { name: 'Ada Quill' }));
    await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
    await user.click(screen.getByRole('checkbox', { name: 'Otto Oakum' }));
    await user.click(await screen.findByRole('button', { name: /^Otto Oakum: scraping paint by hand/ }));
    const own = within(screen.getByRole('group', { name: 'Otto Oakum' }));
    await user.click(own.getByRole('button', { name: /^Show all/ }));
    await user.click(own.getByRole('checkbox', { name: 'Sanding by hand, wet' }));
    const select = screen.getByLabelText('Respirator worn');
    expect(select.textContent).not.toMatch(/N95/);
    await user.selectOptions(select, 'airPurifyingHalf');
    await user.selectOptions(screen.getByLabelText('Job classification'), painter);
    await user.click(await button('Save: 2 workers'));
    await waitFor(async () => expect(await noted()).toHaveLength(2));
    const [ada, his] = await noted();
    expect(ada).toMatchObject({ taskIds: ['handScraping'], respirator: null, jobClassificationId: null });
    expect(his).toMatchObject({ respirator: 'airPurifyingHalf', jobClassificationId: painter });
    expect(his?.taskIds).toHaveLength(2);
  });

  test.each([
    ['nobody ticked', [], /Tick who works here/],
    ['no task', ['Ada Quill'], /Say what Ada Quill does/],
  ] as const)('%s is told, and nothing is lost', async (_, ticked, says) => {
    const user = visit(page());
    await heading('Who works here today');
    for (const name of ticked) await user.click(screen.getByRole('checkbox', { name }));
    const before = { journal: await journal(), drafts: await drafts() };
    await user.click(await button(/^Save/));
    await waitFor(() => expect(alerts()).toMatch(says));
    expect(await journal()).toEqual(before.journal);
    expect(await drafts()).toEqual(before.drafts);
  });

  test('a new person without a name, or with a social security number, is told at the field', async () => {
    const user = visit(page());
    await heading('Who works here today');
    await user.click(await button('Add a person'));
    await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
    await user.click(await button('Save: 1 worker'));
    await waitFor(() => expect(alerts()).toMatch(/Fill in: Name/));
    await user.type(screen.getByLabelText(/^Name/), 'Nora Nail');
    await user.type(screen.getByLabelText(/firm's own number/), '078-05-1120');
    await user.click(await button('Save: 1 worker'));
    await waitFor(() => expect(alerts()).toMatch(/social security number/));
    expect(screen.getByLabelText(/^Name/)).toHaveValue('Nora Nail');
    expect(await noted()).toEqual([]);
  });
});

describe('a line of the roster that was wrong', () => {
  async function openLine(name: RegExp) {
    await rosterYesterday();
    const user = visit(`/shift/${yesterday()}/roster`);
    await heading('Who worked here on 24 November');
    await user.click(await screen.findByRole('link', { name }));
    await heading(/put this day right/);
    return user;
  }

  test('is struck with a reason, and without one it stays', async () => {
    const user = await openLine(/^Otto Oakum/);
    await user.click(await button('Was not here: strike the entry'));
    await waitFor(() => expect(alerts()).toMatch(/Say in a few words why/));
    expect(await lastFact('workStruck.v1')).toBeUndefined();
    await user.type(screen.getByLabelText(/^Why/), 'He was at the footbridge');
    await user.click(await button('Was not here: strike the entry'));
    await waitFor(() => expect(address()).toBe(`/shift/${yesterday()}/roster`));
    expect(await lastFact('workStruck.v1')).toMatchObject({ why: 'He was at the footbridge' });
    await waitFor(() => expect(screen.queryByRole('link', { name: /^Otto Oakum/ })).toBeNull());
    expect(screen.getByRole('link', { name: /^Ada Quill/ })).toBeVisible();
  });

  test('gets its tasks and respirator right with a reason, and the new values stand', async () => {
    const user = await openLine(/^Otto Oakum/);
    await user.click(await button(/^Show all/));
    await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
    await user.selectOptions(screen.getByLabelText('Respirator worn'), 'none');
    await user.type(screen.getByLabelText(/^Why/), 'Asked him again');
    await user.click(await button('Save the correction'));
    await waitFor(() => expect(address()).toBe(`/shift/${yesterday()}/roster`));
    const corrections = (await journal()).filter(({ kind }) => kind === 'valueCorrected.v1').map(({ body }) => body);
    expect(corrections).toMatchObject([
      { path: '/taskIds', old: ['wetSanding'], new: ['handScraping', 'wetSanding'] },
      { path: '/respirator', old: 'airPurifyingHalf', new: 'none' },
    ]);
    expect(await screen.findByRole('link', { name: /^Otto Oakum: scraping paint by hand and/ })).toBeVisible();
  });
});

test('preparing a worker puts the worker on the roster in the same write, once', async () => {
  const prepareWith = async (pump: string) => {
    const user = visit(`/shift/${stage.day.shiftId}/fit`);
    await heading('Prepare a worker');
    await user.click(screen.getByRole('radio', { name: 'Ada Quill' }));
    await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
    await user.click(screen.getByRole('radio', { name: pump }));
    await user.click(await button('Prepare the cassette'));
    await heading(/is prepared/);
  };
  await prepareWith('P-1');
  expect(await noted()).toEqual([
    {
      workdayId: `${stage.day.personId}.2026-11-25`,
      shiftId: stage.day.shiftId,
      taskIds: ['handScraping'],
      jobClassificationId: null,
      respirator: null,
    },
  ]);
  await prepareWith('P-1');
  expect(await noted()).toHaveLength(1);
});
