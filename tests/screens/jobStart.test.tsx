// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
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
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

const page = () => `/shift/${stage.day.shiftId}/job-start`;
const questions = [
  'New people at this work?',
  'A new tool or other equipment?',
  'Another way of doing the work?',
  'Other controls: water, shroud, containment, ventilation?',
  'A task that was not done then?',
] as const;

type User = ReturnType<typeof visit>;
async function answer(user: User, question: string, name: string): Promise<void> {
  const group = screen.getByRole('group', { name: question });
  const radio = [...group.querySelectorAll('label')].find((label) => label.textContent === name);
  if (radio === undefined) throw new Error(`no ${name} under ${question}`);
  await user.click(radio);
}

describe('is anything new at this job', () => {
  test('five times no: nothing is new, and the day says so', async () => {
    const user = visit(page());
    await heading('Is anything new at this job?');
    for (const question of questions) await answer(user, question, 'No');
    expect(screen.getByText(/^Nothing is new\./)).toBeVisible();
    await user.click(await button('Save the answers'));
    await waitFor(() => expect(address()).toBe(`/shift/${stage.day.shiftId}`));
    expect((await lastFact('changesAsked.v1'))?.body).toEqual({
      shiftId: stage.day.shiftId,
      personnel: 'no',
      equipment: 'no',
      process: 'no',
      control: 'no',
      newTask: 'no',
    });
    expect(await screen.findByText('Nothing is new')).toBeVisible();
  });

  test.each([
    ['Yes', null],
    ['Not known', /counts as a change/],
  ] as const)('a control that is new (%s) says at once to measure again, 29 CFR 1926.62(d)(7)', async (said, also) => {
    const user = visit(page());
    await heading('Is anything new at this job?');
    await answer(user, questions[3], said);
    expect(screen.getByText(/^Measure again at this job/)).toBeVisible();
    expect(screen.getByText(/equipment, process, control or people, or a new task/)).toBeVisible();
    if (also !== null) expect(screen.getByText(also)).toBeVisible();
  });

  test('a question that is not answered is named, and the others stay as tapped', async () => {
    const user = visit(page());
    await heading('Is anything new at this job?');
    await answer(user, questions[0], 'Yes');
    const before = { journal: await journal(), drafts: await drafts() };
    await user.click(await button('Save the answers'));
    await waitFor(() => expect(alerts()).toMatch(/Choose: A new tool or other equipment\?/));
    expect(alerts()).not.toMatch(/New people/);
    expect(await journal()).toEqual(before.journal);
    expect(await drafts()).toEqual(before.drafts);
  });

  test('an answer is changed with a reason only', async () => {
    const no = { personnel: 'no', equipment: 'no', process: 'no', control: 'no', newTask: 'no' } as const;
    await put([newFact('changesAsked.v1', { shiftId: stage.day.shiftId, ...no }, entry())]);
    const user = visit(page());
    await screen.findByText(/Changing one needs a reason/);
    await user.click(await button('Save the correction'));
    await waitFor(() => expect(alerts()).toMatch(/No answer is different/));
    await answer(user, questions[1], 'Yes');
    await user.click(await button('Save the correction'));
    await waitFor(() => expect(alerts()).toMatch(/why the answer is changed/));
    await user.type(screen.getByLabelText(/^Why/), 'The new sander came at noon');
    await user.click(await button('Save the correction'));
    await waitFor(() => expect(address()).toBe(`/shift/${stage.day.shiftId}`));
    expect(await lastFact('valueCorrected.v1')).toMatchObject({
      why: 'The new sander came at noon',
      body: { path: '/equipment', old: 'no', new: 'yes' },
    });
    expect(await screen.findByText('Something is new: measuring again is asked for')).toBeVisible();
  });
});
