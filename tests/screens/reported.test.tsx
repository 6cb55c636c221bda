// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  address,
  alerts,
  button,
  drafts,
  heading,
  journal,
  lastFact,
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

type User = ReturnType<typeof visit>;
const group = (name: string | RegExp) => screen.getByRole('group', { name });
const choose = (user: User, of: string | RegExp, name: string) => {
  const label = [...group(of).querySelectorAll('label')].find((each) => each.textContent === name);
  if (label === undefined) throw new Error(`no ${name}`);
  return user.click(label);
};

const own = { average: /^Lead in the air, average over 8 hours/, received: /^Day on which the firm had/ };

/** A consultant's report of last week, without the parts that a test is about. */
async function fillIn(user: User, { average = '31,5', received = '11/20/2026' } = {}): Promise<void> {
  await choose(user, 'Whose measurement is it?', 'A consultant’s');
  await user.type(screen.getByLabelText('Name of who measured'), 'Level Air Consulting');
  await user.type(screen.getByLabelText('Day of the work'), '11/12/2026');
  if (received !== '') await user.type(screen.getByLabelText(own.received), received);
  await user.selectOptions(screen.getByLabelText('Which worker was measured'), stage.day.personId);
  await user.selectOptions(screen.getByLabelText('At which site'), stage.day.siteId);
  await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
  if (average !== '') await user.type(screen.getByLabelText(own.average), average);
  await choose(user, /stand for a full shift/, 'Yes');
  await choose(user, /Our own workers/, 'Yes');
  await choose(user, /state an accuracy/, 'Not stated');
}

describe('a measurement that was reported to us', () => {
  test('is written down from the report, and listed as without flow readings of our own', async () => {
    const user = visit('/reported');
    expect(await screen.findByText('None has been written down yet.')).toBeVisible();
    await user.click(screen.getByRole('link', { name: 'Write one down' }));
    await heading('Write down a reported measurement');
    await fillIn(user);
    await user.click(await button('Save the measurement'));
    await waitFor(() => expect(address()).toBe('/reported'));
    expect((await lastFact('measurementReported.v1'))?.body).toMatchObject({
      from: 'consultant',
      fromName: 'Level Air Consulting',
      workerId: stage.day.personId,
      siteId: stage.day.siteId,
      setting: 'indoors',
      workOn: '2026-11-12',
      receivedOn: '2026-11-20',
      taskIds: ['handScraping'],
      average: { kind: 'measured', twa8UgPerM3: 31.5 },
      workedHours: null,
      fullShift: 'yes',
      ownFirm: 'yes',
      accuracy: 'notStated',
    });
    const line = await screen.findByRole('link', { name: /^Ada Quill: scraping paint by hand, 12 November 2026/ });
    expect(line).toHaveTextContent(/31\.5.µg\/m³ over 8 hours, a consultant’s \(Level Air Consulting\)/);
    expect(line).toHaveTextContent('without flow readings of our own');
  });

  test.each([
    ['letters in the average', { average: 'about thirty' }, /write a number in µg\/m³, without words/],
    ['another unit', { average: '0.03 mg/m3' }, /this was typed in mg\/m³/],
    ['a less-than sign in the number', { average: '<5' }, /"less than" has a choice of its own/],
    ['zero', { average: '0' }, /No report can say zero/],
    ['below zero', { average: '-3' }, /must not be below zero/],
    ['no average', { average: '' }, /Fill in: Lead in the air/],
    ['received before the work', { received: '11/02/2026' }, /cannot have come before the day of the work/],
    ['received in the future', { received: '12/24/2026' }, /this day has not come yet/],
    ['a day that does not exist', { received: '11/31/2026' }, /no such day/],
  ] as const)('%s is told at the field, and nothing is lost', async (_, wrong, says) => {
    const user = visit('/reported?add=1');
    await heading('Write down a reported measurement');
    await fillIn(user, wrong);
    const before = { journal: await journal(), drafts: await drafts() };
    await user.click(await button('Save the measurement'));
    await waitFor(() => expect(alerts()).toMatch(says));
    expect(await journal()).toEqual(before.journal);
    expect(await drafts()).toEqual(before.drafts);
  });

  test('left empty names every line that is missing', async () => {
    const user = visit('/reported?add=1');
    await heading('Write down a reported measurement');
    await user.click(await button('Save the measurement'));
    await waitFor(() => expect(alerts()).toMatch(/Whose measurement/));
    for (const says of [/Name of who measured/, /Which worker/, /At which site/, /at least one task/, /full shift/])
      expect(alerts()).toMatch(says);
  });

  test('is put right with a reason: what stood there is struck', async () => {
    const user = visit('/reported?add=1');
    await heading('Write down a reported measurement');
    await fillIn(user);
    await user.click(await button('Save the measurement'));
    await user.click(await screen.findByRole('link', { name: /^Ada Quill/ }));
    await heading('Put a reported measurement right');
    const average = screen.getByLabelText(own.average);
    expect(average).toHaveValue('31.5');
    await user.clear(average);
    await user.type(average, '13.5');
    await user.click(await button('Save the correction'));
    await waitFor(() => expect(alerts()).toMatch(/Say in a few words why/));
    await user.type(screen.getByLabelText('Why is it changed?'), 'Two digits had changed places');
    await user.click(await button('Save the correction'));
    await waitFor(() => expect(address()).toBe('/reported'));
    expect(await lastFact('valueCorrected.v1')).toMatchObject({
      why: 'Two digits had changed places',
      body: {
        path: '/average',
        old: { kind: 'measured', twa8UgPerM3: 31.5 },
        new: { kind: 'measured', twa8UgPerM3: 13.5 },
      },
    });
    expect(await screen.findByRole('link', { name: /13\.5.µg\/m³/ })).toBeVisible();
  });
});
