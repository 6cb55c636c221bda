/** A report is made when something is wrong: with the other book open, with none, with one that was emptied. It still names nobody. */
import { beforeEach, expect, test } from 'vitest';
import { databaseNames } from '#store/database.ts';
import { newId } from '#store/device.ts';
import { flushDrafts, setDraft } from '#store/drafts.ts';
import { setDeviceName } from '#store/handOver/partners.ts';
import { forgetErrors, noteError } from '#store/lastErrors.ts';
import { newFact } from '#store/newFact.ts';
import { closeBook, newBook, switchBook } from '#store/opening.ts';
import { problemReport } from '#store/problemReport.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestDevice, testClock } from './device.ts';
import { entry } from './scenario.ts';

let device: TestDevice;
const report = () => problemReport({ editions: {}, update: 'none waits' });

beforeEach(async () => {
  testClock();
  device = newDevice();
  await pickUp(device);
  forgetErrors();
  await newBook({ firmName: 'Sill & Sash Quorum', practice: false });
  const others = { identifier: null, language: 'en', jobClassificationId: null, employer: null } as const;
  const person = newFact('personAdded.v1', { personId: newId(), name: 'Pia Putty', ...others }, entry());
  expect(await write([person])).toMatchObject({ kind: 'written' });
  await setDeviceName('Phone of Wanda Keel');
  noteError(new TypeError('cannot read Pia Putty, Wanda Keel, Hester of undefined'));
});

async function namesNobody(): Promise<string> {
  const text = await report();
  expect(text).toMatch(/^last errors: 1$/m);
  for (const name of ['Pia', 'Putty', 'Wanda', 'Keel', 'Quorum']) expect(text).not.toContain(name);
  return text;
}

test('an error with a word that stands in no book is shown with it', async () => {
  expect(await namesNobody()).toMatch(/TypeError: cannot read … …, … …, Hester of undefined/);
});

test('what is being typed is searched as well', async () => {
  setDraft(`sample:${newId()}/stop`, { note: 'Hester saw it' });
  await flushDrafts();
  expect(await namesNobody()).not.toContain('Hester');
});

test('with the practice book open, the real one is searched too', async () => {
  await switchBook('practice');
  await newBook({ firmName: 'EXAMPLE Joinery', practice: true });
  expect(await namesNobody()).toContain('Hester');
});

test('with no book open, the one on the device is searched', async () => {
  await closeBook();
  expect(await namesNobody()).toContain('Hester');
});

test('where a book was and can no longer be searched, what errors said stays out', async () => {
  await closeBook();
  await new Promise((resolve, reject) => {
    const request = device.indexedDB.deleteDatabase(databaseNames.book);
    request.onsuccess = resolve;
    request.onerror = reject;
  });
  expect(await namesNobody()).not.toContain('Hester');
});
