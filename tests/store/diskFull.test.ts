/** A full disk at the other ways into the book: a new book, a restore, a take-in, a file with its fact. */
import { beforeEach, describe, expect, test } from 'vitest';
import { getFile, hashOf } from '#store/files.ts';
import type { Preview } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { newBook, openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestDevice, testClock } from './device.ts';
import { diskFull, lostConnection, withFault } from './faults.ts';
import { makeBackup } from './handOvers.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let phone: TestDevice;
let day: Library;
let backup: Blob;

beforeEach(async () => {
  testClock();
  phone = newDevice();
  await pickUp(phone);
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await write(openingFacts(day));
  backup = (await makeBackup()).blob;
});

const full = (at: number) => ({ at, forEver: true, error: diskFull, changesOnly: true });
const preview = async (): Promise<Preview> => (await lookInto(backup)) as Preview;

describe('a full disk', () => {
  test('a new book is not half made, and can be made when there is space', async () => {
    for (const at of [1, 2, 3, 4, 5, 6]) {
      await pickUp(newDevice());
      const { result } = await withFault(full(at), () => newBook({ firmName: 'Another', practice: false }));
      expect(result).toEqual({ kind: 'failed', why: 'quota' });
      expect(bookState()).toEqual({ kind: 'none', which: 'book' });
      expect(await newBook({ firmName: 'Another', practice: false })).toMatchObject({ kind: 'written' });
    }
  });

  test('a restore is whole or not at all', async () => {
    for (const at of [1, 3, 5, 8, 11]) {
      await pickUp(newDevice());
      await openBooks();
      const shown = await preview();
      const { result } = await withFault(full(at), () => takeIn(shown));
      expect(result).toEqual({ kind: 'failed', why: 'quota' });
      expect(bookState()).toEqual({ kind: 'none', which: 'book' });
      expect(await takeIn(await preview())).toMatchObject({ kind: 'takenIn', newCount: shown.newCount });
    }
  });

  test('a take-in is whole or not at all, and the book stays usable', async () => {
    await write([sampleOf(day).prepared(entry())]);
    const more = (await makeBackup()).blob;
    const office = newDevice();
    await pickUp(office);
    await openBooks();
    await takeIn(await preview());
    const before = await theSession().db.journal.toArray();
    const shown = (await lookInto(more)) as Preview;
    expect(shown.newCount).toBe(1);
    const { result } = await withFault(full(1), async () => {
      const outcome = await takeIn(shown);
      await rebuildSettled();
      return outcome;
    });
    expect(result).toEqual({ kind: 'failed', why: 'quota' });
    expect(await theSession().db.journal.toArray()).toEqual(before);
    expect(await takeIn(shown)).toMatchObject({ kind: 'takenIn', newCount: 1 });
  });

  test('a paper and the fact that names it come together or not at all', async () => {
    const bytes = new TextEncoder().encode('%PDF-1.7');
    const file = { hash: hashOf(bytes), type: 'application/pdf', bytes };
    for (const at of [1, 2, 3]) {
      const facts = await theSession().db.journal.count();
      const { result } = await withFault(full(at), async () => {
        const outcome = await write([sampleOf(day).prepared(entry())], { files: [file] });
        await rebuildSettled();
        return outcome;
      });
      expect(result).toEqual({ kind: 'failed', why: 'quota' });
      expect(await theSession().db.journal.count()).toBe(facts);
      expect(await getFile(file.hash)).toBeNull();
    }
  });
});

describe('a connection lost', () => {
  test('during a take-in: reopened, taken in once', async () => {
    await write([sampleOf(day).prepared(entry())]);
    const more = (await makeBackup()).blob;
    await pickUp(newDevice());
    await openBooks();
    await takeIn(await preview());
    const shown = (await lookInto(more)) as Preview;
    for (const at of [1, 2, 3, 4]) {
      const { result } = await withFault({ at, forEver: false, error: lostConnection }, () => takeIn(shown));
      expect(result).toMatchObject({ kind: 'takenIn', newCount: at === 1 ? 1 : 0 });
    }
  });
});
