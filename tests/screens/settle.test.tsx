// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from 'vitest';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { newFact } from '#store/newFact.ts';
import { newDevice, pickUp } from '#tests/store/device.ts';
import { entry, sampleOf } from '#tests/store/scenario.ts';
import { makeBackup } from '../store/handOvers.ts';
import { button, heading, lastFact, minute, put, type Stage, screen, setStage, strike, visit } from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

async function taken(blob: Blob): Promise<void> {
  const read = await lookInto(blob);
  if (read.kind !== 'preview') throw new Error(JSON.stringify(read));
  expect(await takeIn(read)).toMatchObject({ kind: 'takenIn' });
}

/** Two devices that correct the time of one put on, each without the other's knowledge. Ends on the second device. */
async function correctedTwice(): Promise<string> {
  const { day, clock } = stage;
  const one = sampleOf(day);
  await put([one.prepared(entry(day.personId))]);
  clock.forward(30 * minute);
  await put([one.putOn(entry(day.personId))]);
  const putOn = await lastFact('pumpPutOn.v1');
  clock.forward(60 * minute);
  const corrected = (at: string) =>
    newFact(
      'valueCorrected.v1',
      { replaces: String(putOn?.id), path: '/happened/at', old: String(putOn?.happened.at), new: at, supersedes: null },
      { ...entry(day.personId), why: 'Another watch', about: [`sample:${one.sampleId}`] },
    );
  const common = (await makeBackup()).blob;
  await put([corrected('2026-11-25T11:21:00.000Z')]);
  const first = (await makeBackup()).blob;
  await pickUp(newDevice());
  await taken(common);
  await put([corrected('2026-11-25T11:34:00.000Z')]);
  await taken(first);
  return one.sampleId;
}

test('two corrections made apart are both shown, and a person settles which is right', async () => {
  const sampleId = await correctedTwice();
  const user = visit(`/sample/${sampleId}`);
  await heading('The pump is on Ada Quill');
  await user.click(await screen.findByRole('link', { name: 'Settle it: Time' }));
  await user.click(await screen.findByRole('radio', { name: '06:21, written by Ada Quill' }));
  expect(screen.getByRole('radio', { name: '06:34, written by Ada Quill' })).toBeVisible();
  await user.click(await button('Save what is right'));
  expect(await screen.findAllByText('Say why in a few words')).not.toHaveLength(0);
  await user.type(screen.getByLabelText('Why'), 'The foreman looked at the wall clock');
  await user.click(await button('Save what is right'));
  await heading('The pump is on Ada Quill');
  expect(await screen.findByText('Put on 06:21')).toBeVisible();
  expect(screen.queryByRole('link', { name: 'Settle it: Time' })).toBeNull();
});
