/** Wiping a device: nothing goes before a backup was read through and holds all of it, and then nothing is left. */
import { beforeEach, describe, expect, test } from 'vitest';
import { booksHere, discardDrafts } from '#store/beforeWiping.ts';
import { newId } from '#store/device.ts';
import { flushDrafts, setDraft } from '#store/drafts.ts';
import { hashOf, putFile } from '#store/files.ts';

import { noteError } from '#store/lastErrors.ts';
import { newBook, openBooks, switchBook } from '#store/opening.ts';
import { bookState, theSession } from '#store/session.ts';
import { checkBackup, type VerifiedBackup, wipe } from '#store/wiping.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from './device.ts';
import { makeBackup } from './handOvers.ts';
import { entry, flowCheckOf, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let device: TestDevice;
let clock: TestClock;
let day: Library;

async function begin(practice: boolean): Promise<void> {
  await newBook({ firmName: 'Old Sash & Steel', practice });
  day = library();
  expect(await write(openingFacts(day))).toMatchObject({ kind: 'written' });
  expect(await write([flowCheckOf(day, 'before')(entry())])).toMatchObject({ kind: 'written' });
  await putFile(new Uint8Array([0xff, 0xd8, 1, 2, 3]), 'image/jpeg');
}

beforeEach(async () => {
  clock = testClock();
  device = newDevice();
  await pickUp(device);
  await begin(false);
});

const file = async (): Promise<Blob> => (await makeBackup()).blob;
const oneMore = async () => {
  expect(await write([flowCheckOf(day, 'before')(entry())])).toMatchObject({ kind: 'written' });
};
async function verifiedBackup(): Promise<VerifiedBackup> {
  const checked = await checkBackup(await file());
  if (checked.kind !== 'holdsAll') throw new Error(checked.kind);
  return checked;
}
const databasesLeft = async (): Promise<readonly (string | undefined)[]> =>
  (await device.indexedDB.databases()).map(({ name }) => name);

describe('a backup is only good when it holds everything that is here', () => {
  test('every entry by id and link, and every paper and picture', async () => {
    expect(await checkBackup(await file())).toMatchObject({ kind: 'holdsAll', which: 'book', filesCount: 1 });
  });

  test('one entry too few is refused', async () => {
    const before = await file();
    await oneMore();
    expect(await checkBackup(before)).toEqual({ kind: 'lacks', entriesCount: 1, filesCount: 0 });
    expect(await checkBackup(await file())).toMatchObject({ kind: 'holdsAll' });
  });

  test('one picture too few is refused', async () => {
    const before = await file();
    const bytes = new Uint8Array([0xff, 0xd8, 9]);
    expect(await putFile(bytes, 'image/jpeg')).toBe(hashOf(bytes));
    expect(await checkBackup(before)).toEqual({ kind: 'lacks', entriesCount: 0, filesCount: 1 });
  });

  test('the same id with another link is not the same entry', async () => {
    const before = await file();
    const { db } = theSession();
    const last = await db.journal.orderBy('id').last();
    await db.journal.update(last?.id ?? '', { link: 'f'.repeat(64) });
    expect(await checkBackup(before)).toEqual({ kind: 'lacks', entriesCount: 1, filesCount: 0 });
  });

  test('a foreign, a cut and another book are refused with the reason', async () => {
    const whole = await file();
    expect(await checkBackup(new Blob(['hello']))).toMatchObject({ kind: 'refused', why: 'notABackup' });
    expect(await checkBackup(whole.slice(0, whole.size - 40))).toMatchObject({ kind: 'refused', why: 'damaged' });
    await pickUp(newDevice());
    await begin(false);
    const other = await file();
    await pickUp(device);
    await openBooks();
    expect(await checkBackup(other)).toEqual({ kind: 'refused', why: 'otherBook' });
  });
});

describe('wiping', () => {
  test('leaves no database and no mark behind, the practice book goes too', async () => {
    await switchBook('practice');
    await begin(true);
    await switchBook('book');
    noteError(new TypeError('something'));
    const backup = await verifiedBackup();
    expect(await booksHere()).toMatchObject({ which: 'book', both: true });
    expect(await wipe(backup)).toEqual({ kind: 'wiped' });
    expect(bookState()).toEqual({ kind: 'none', which: 'book' });
    expect([...device.storage.keys()]).toEqual([]);
    expect(await databasesLeft()).toEqual([]);
  });

  test('works on a practice book alone, by the same rules', async () => {
    device = newDevice();
    await pickUp(device);
    await begin(true);
    const before = await file();
    await oneMore();
    expect(await checkBackup(before)).toMatchObject({ kind: 'lacks', entriesCount: 1 });
    expect(await wipe(await verifiedBackup())).toEqual({ kind: 'wiped' });
    expect([...device.storage.keys()]).toEqual([]);
    expect(await databasesLeft()).toEqual([]);
  });

  test('an entry written after the backup was read through stops it', async () => {
    const backup = await verifiedBackup();
    await oneMore();
    expect(await wipe(backup)).toEqual({ kind: 'changed' });
    expect(bookState().kind).toBe('open');
    expect(await theSession().db.journal.count()).toBeGreaterThan(0);
  });

  test('is refused while a pump runs', async () => {
    const one = sampleOf(day);
    await write([one.prepared(entry())]);
    clock.forward(60_000);
    expect(await write([one.putOn(entry())])).toMatchObject({ kind: 'written' });
    const backup = await verifiedBackup();
    expect(await wipe(backup)).toMatchObject({ kind: 'inTheWay', inTheWay: { runningCount: 1 } });
    expect(bookState().kind).toBe('open');
  });

  test('is refused while something is being typed, and says what; thrown away, it is no more in the way', async () => {
    const name = `sample:${newId()}/stop`;
    setDraft(name, 'half a sentence');
    const backup = await verifiedBackup();
    const refused = await wipe(backup);
    expect(refused).toMatchObject({ kind: 'inTheWay', inTheWay: { drafts: [{ which: 'book', name }] } });
    await discardDrafts('book');
    await flushDrafts();
    expect(await wipe(backup)).toEqual({ kind: 'wiped' });
  });

  test('from the practice book, it is still the real one that the backup must hold', async () => {
    const real = await file();
    await switchBook('practice');
    await begin(true);
    expect(await checkBackup(await file())).toEqual({ kind: 'refused', why: 'otherBook' });
    const checked = await checkBackup(real);
    expect(checked).toMatchObject({ kind: 'holdsAll', which: 'book' });
    if (checked.kind === 'holdsAll') expect(await wipe(checked)).toEqual({ kind: 'wiped' });
    expect([...device.storage.keys()]).toEqual([]);
  });
});
