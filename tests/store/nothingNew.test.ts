/** A file that brings nothing: looked into, it still says up to where its device holds the book, and changes no entry of it. */
import { expect, test } from 'vitest';
import { lookInto } from '#store/handOver/looking.ts';
import { partners } from '#store/handOver/partners.ts';
import { noteNothingNew, takeIn } from '#store/handOver/taking.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { newDevice, pickUp, type TestDevice, testClock } from './device.ts';
import { makeBackup } from './handOvers.ts';

async function switchTo(device: TestDevice): Promise<void> {
  await closeBook();
  await pickUp(device);
  await openBooks();
}

async function look(file: Blob) {
  const looked = await lookInto(file);
  if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
  return looked;
}

test('nothing is left to send to a device whose file was looked into and brought nothing new', async () => {
  testClock();
  const [phone, office] = [newDevice(), newDevice()];
  await pickUp(phone);
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const first = (await makeBackup()).blob;

  await switchTo(office);
  await takeIn(await look(first));
  expect(await partners()).toMatchObject([{ lacksCount: 0 }]);
  const back = (await makeBackup()).blob;

  await switchTo(phone);
  const before = await theSession().db.journal.toArray();
  const nothing = await look(back);
  expect(nothing).toMatchObject({ newCount: 0, filesCount: 0 });
  expect(await partners()).toEqual([]);
  await noteNothingNew(nothing);
  expect(await partners()).toMatchObject([{ lacksCount: 0, aheadCount: 0 }]);
  expect(await theSession().db.journal.toArray()).toEqual(before);
});
