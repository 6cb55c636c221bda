// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { FactBody } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { entry, sampleOf } from '#tests/store/scenario.ts';
import { result, Writer } from '../records/facts.ts';
import { arrive } from './foreign.ts';
import {
  address,
  alerts,
  button,
  drafts,
  heading,
  journal,
  lastFact,
  minute,
  put,
  type Stage,
  screen,
  setStage,
  strike,
  visit,
} from './stage.tsx';

let stage: Stage;
let other: Writer;
beforeEach(async () => {
  stage = await setStage();
  other = new Writer('77777777aaaa', '2026-11-25');
  await theSession().db.meta.put({
    key: 'partners',
    value: [
      {
        writer: '77777777aaaa',
        deviceName: 'Office laptop',
        holds: [],
        lacksFiles: [],
        lastFileAt: '2026-11-25T10:00:00.000Z',
      },
    ],
  });
});
afterEach(strike);

const correction = (id: string, path: string, old: unknown, now: unknown, about: string, why: string) =>
  newFact(
    'valueCorrected.v1',
    { replaces: id, path, old, new: now, supersedes: null } as FactBody<'valueCorrected.v1'>,
    { ...entry(stage.day.personId), why, about: [about] },
  );

/** Two devices that correct the time of one put on, each without the other's knowledge. */
async function correctedTwice(): Promise<string> {
  const { day, clock } = stage;
  const one = sampleOf(day);
  await put([one.prepared(entry(day.personId))]);
  clock.forward(30 * minute);
  await put([one.putOn(entry(day.personId))]);
  const putOn = await lastFact('pumpPutOn.v1');
  clock.forward(60 * minute);
  const [id, old, about] = [String(putOn?.id), putOn?.happened.at, `sample:${one.sampleId}`];
  await put([correction(id, '/happened/at', old, '2026-11-25T11:21:00.000Z', about, 'Another watch')]);
  await arrive(other, [correction(id, '/happened/at', old, '2026-11-25T11:34:00.000Z', about, 'The wall clock')]);
  return one.sampleId;
}

async function voidWithResult(): Promise<string> {
  const { day, clock } = stage;
  const one = sampleOf(day);
  await put([one.prepared(entry(day.personId))]);
  clock.forward(30 * minute);
  await put([one.putOn(entry(day.personId))]);
  clock.forward(240 * minute);
  await put([one.stopped(entry(day.personId))]);
  await put([newFact('sampleVoided.v1', { sampleId: one.sampleId }, { ...entry(day.personId), why: 'It fell' })]);
  await arrive(other, [result(12.4, 'R-7', one.sampleId)]);
  return one.sampleId;
}

/** A cassette of the other device with the number of one of ours. */
async function oneNumberTwice(): Promise<{ readonly ours: string; readonly theirs: string; readonly number: string }> {
  const { day } = stage;
  const one = sampleOf(day);
  await put([one.prepared(entry(day.personId))]);
  const fact = await lastFact('samplePrepared.v1');
  const theirs = newId();
  const body = { ...(fact?.body as FactBody<'samplePrepared.v1'>), sampleId: theirs };
  await arrive(other, [newFact('samplePrepared.v1', body, entry(day.personId))]);
  return { ours: one.sampleId, theirs, number: body.sampleNumber };
}

test('nothing open is said, with the way back', async () => {
  visit('/settle');
  expect(await screen.findByText('Nothing is open. There is nothing to settle.')).toBeVisible();
});

test('two corrections made apart are both shown with who wrote them where, and a person settles which is right', async () => {
  const sampleId = await correctedTwice();
  const user = visit(`/sample/${sampleId}`);
  await heading('The pump is on Ada Quill');
  await user.click(await screen.findByRole('link', { name: 'Settle it: Time' }));
  await heading('Settle: Time');
  const ours = await screen.findByRole('radio', { name: '06:21, 25 November 2026' });
  expect(ours).toHaveAccessibleDescription(/Ada Quill, 07:30, 25 November 2026, on this device; because Another watch/);
  expect(screen.getByRole('radio', { name: '06:34, 25 November 2026' })).toHaveAccessibleDescription(
    /on Office laptop; because The wall clock; judges until it is settled/,
  );
  expect(screen.getByRole('radio', { name: '06:30, 25 November 2026' })).toHaveAccessibleDescription(
    /as it was written first/,
  );
  expect(
    screen.getByText(/^Until then 06:34, 25 November 2026 judges, because it is the more careful one/),
  ).toBeVisible();
  await user.click(ours);
  await user.click(await button('Save what is right'));
  expect(alerts()).toContain('Say why in a few words');
  expect((await journal()).filter(({ kind }) => kind === 'correctionSettled.v1')).toEqual([]);
  await user.type(screen.getByLabelText('Why'), 'The foreman looked at the wall clock');
  await user.click(await button('Save what is right'));
  expect(await screen.findByText('Nothing is open. There is nothing to settle.')).toBeVisible();
  const settled = await lastFact('correctionSettled.v1');
  expect(settled?.body.over).toHaveLength(2);
  expect(await drafts()).toEqual([]);
});

test('the address of an earlier version leads to the same page', async () => {
  const sampleId = await correctedTwice();
  const putOn = await lastFact('pumpPutOn.v1');
  visit(`/sample/${sampleId}?do=settle&fact=${putOn?.id}&path=%2Fhappened%2Fat`);
  await heading('Settle: Time');
  expect(address()).toMatch(/^\/settle\/conflict /);
});

test('settled meanwhile on another page is said, and nothing is written twice', async () => {
  const sampleId = await correctedTwice();
  const putOn = await lastFact('pumpPutOn.v1');
  visit(`/settle/${encodeURIComponent(`conflict ${putOn?.id} /happened/at`)}`);
  await heading('Settle: Time');
  const body = { replaces: String(putOn?.id), path: '/happened/at', chosen: String(putOn?.id) };
  await put([
    newFact('correctionSettled.v1', body, {
      ...entry(stage.day.personId),
      why: 'Known',
      about: [`sample:${sampleId}`],
    }),
  ]);
  expect(await screen.findByText('There is nothing left to settle here.')).toBeVisible();
});

test('two statements of hours are said in words', async () => {
  const { day } = stage;
  const workdayId = `${day.personId}.2026-11-25`;
  const hours = (endedAt: string) =>
    newFact(
      'workHoursStated.v1',
      { workdayId, pieces: [{ startedAt: '2026-11-25T10:00:00.000Z', endedAt, place: null, employer: null }] },
      entry(day.personId),
    );
  await put([hours('2026-11-25T10:30:00.000Z')]);
  await arrive(other, [hours('2026-11-25T10:45:00.000Z')]);
  const user = visit('/settle');
  await user.click(
    await screen.findByRole('link', {
      name: /^The day of Ada Quill, 25 November 2026\. Hours of work: 05:00 to 05:30, or 05:00 to 05:45/,
    }),
  );
  await heading('Settle: Hours of work');
  expect(document.body.textContent).not.toMatch(/[{}]|startedAt/);
});

test('a third correction that arrives meanwhile is shown, and what was chosen before it stays', async () => {
  const sampleId = await correctedTwice();
  const putOn = await lastFact('pumpPutOn.v1');
  const user = visit(`/settle/${encodeURIComponent(`conflict ${putOn?.id} /happened/at`)}`);
  await user.click(await screen.findByRole('radio', { name: '06:21, 25 November 2026' }));
  expect(screen.getAllByRole('radio')).toHaveLength(3);
  const third = new Writer('66666666bbbb', '2026-11-25');
  const about = `sample:${sampleId}`;
  const later = '2026-11-25T11:40:00.000Z';
  await arrive(third, [correction(String(putOn?.id), '/happened/at', putOn?.happened.at, later, about, 'A photo')]);
  expect(await screen.findByRole('radio', { name: '06:40, 25 November 2026' })).toHaveAccessibleDescription(
    /on another device \(6666\); because A photo; judges until it is settled/,
  );
  expect(screen.getByRole('radio', { name: '06:21, 25 November 2026' })).toBeChecked();
});

test('a new number that somebody took meanwhile is refused at the field, and nothing typed is lost', async () => {
  const { theirs, number } = await oneNumberTwice();
  const user = visit(`/settle/${encodeURIComponent(`number ${number}`)}`);
  await heading(`Two cassettes with the number ${number}`);
  await user.click(screen.getAllByRole('radio')[indexOf(theirs)] as HTMLElement);
  const field = screen.getByLabelText('Its new number') as HTMLInputElement;
  const taken = field.value;
  await user.clear(field);
  await user.type(field, taken);
  await user.type(screen.getByLabelText('Why'), 'Counted alike');
  await put([sampleOf(stage.day, newId()).prepared(entry(stage.day.personId))]);
  await user.click(await button('Save the new number'));
  const told = new RegExp(`The number ${taken} stands on another cassette already`);
  expect(await screen.findAllByText(told)).not.toHaveLength(0);
  expect(screen.getByLabelText('Why')).toHaveValue('Counted alike');
});

test('void against a result: what each means for the day is said, and the void is lifted with a reason', async () => {
  const sampleId = await voidWithResult();
  const user = visit('/settle');
  await user.click(await screen.findByRole('link', { name: /Marked void, and a result has come in/ }));
  await heading('Void, and a result has come in');
  expect(await screen.findByText('Marked void, because It fell')).toBeVisible();
  expect(screen.getByText('Report R-7: 12.4 µg')).toBeVisible();
  await user.click(await button('Save it'));
  expect(alerts()).toMatch(/Does it stay void/);
  await user.click(screen.getByRole('radio', { name: 'It counts again' }));
  await user.type(screen.getByLabelText('Why'), 'Another cassette fell');
  await user.click(await button('Save it'));
  expect(await screen.findByText('Nothing is open. There is nothing to settle.')).toBeVisible();
  const review = await lastFact('voidReviewed.v1');
  expect(review?.body).toMatchObject({ sampleId, stands: false });
});

test('one number on two cassettes: another number is put in, and a wrong one is told at the field', async () => {
  const { theirs, number } = await oneNumberTwice();
  const user = visit('/settle');
  await user.click(await screen.findByRole('link', { name: new RegExp(`^Two cassettes have the number ${number}`) }));
  await heading(`Two cassettes with the number ${number}`);
  expect(screen.getByText('Write the new number on the cassette.')).toBeVisible();
  const theirRadio = screen.getAllByRole('radio')[indexOf(theirs)];
  await user.click(theirRadio as HTMLElement);
  const field = screen.getByLabelText('Its new number');
  const suggested = (field as HTMLInputElement).value;
  expect(suggested).toMatch(/^\d{6}$/);
  await user.clear(field);
  await user.type(field, number);
  await user.type(screen.getByLabelText('Why'), 'Two devices counted alike');
  await user.click(await button('Save the new number'));
  expect(alerts()).toContain('That is the number they share. Write another one');
  await user.clear(field);
  await user.type(field, suggested);
  await user.click(await button('Save the new number'));
  expect(await screen.findByText('Nothing is open. There is nothing to settle.')).toBeVisible();
  expect(await lastFact('valueCorrected.v1')).toMatchObject({ body: { path: '/sampleNumber', new: suggested } });
});

const indexOf = (sampleId: string): number =>
  screen.getAllByRole('radio').findIndex((radio) => (radio as HTMLInputElement).value === sampleId);

test('missing entries: which device, how many, and accepted as lost only with a reason', async () => {
  const missing = { writer: '77777777aaaa', fromCount: 3, toCount: 5, untilOn: '2026-11-24' };
  await theSession().db.meta.put({ key: 'missing', value: [missing] });
  const user = visit('/settle');
  await user.click(await screen.findByRole('link', { name: /^3 entries on Office laptop are not here/ }));
  await heading('Entries that are not here');
  await user.click(await button('Accept them as lost'));
  expect(alerts()).toContain('Say why in a few words');
  await user.type(screen.getByLabelText('Why'), 'The laptop fell into the river');
  await user.click(await button('Accept them as lost'));
  expect(await screen.findByText('Nothing is open. There is nothing to settle.')).toBeVisible();
  expect(await lastFact('missingEntriesAccepted.v1')).toMatchObject({ body: { fromCount: 3, toCount: 5 } });
});

test('while a file is half taken in nothing is offered to decide, and what is wanted all the same is refused', async () => {
  const sampleId = await voidWithResult();
  await theSession().db.meta.put({ key: 'takeIn', value: { fileName: 'x.zip', doneCount: 1, totalCount: 2 } });
  const user = visit('/settle');
  expect(await screen.findByText(/^A file is half taken in/)).toBeVisible();
  await user.click(await screen.findByRole('link', { name: /Marked void, and a result has come in/ }));
  await heading('Void, and a result has come in');
  expect(screen.queryByRole('button', { name: 'Save it' })).toBeNull();
  const voided = await lastFact('sampleVoided.v1');
  const result = await lastFact('resultReceived.v1');
  const lifted = newFact(
    'voidReviewed.v1',
    { sampleId, voidFactId: String(voided?.id), stands: false, knew: [String(result?.id)] },
    { ...entry(stage.day.personId), why: 'All the same' },
  );
  expect(await write([lifted])).toMatchObject({ kind: 'refused', refusals: [{ key: 'takingIn' }] });
});
