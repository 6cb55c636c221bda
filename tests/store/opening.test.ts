import { beforeEach, describe, expect, test } from 'vitest';
import { closeBook, newBook, openBooks, switchBook } from '#store/opening.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestDevice, testClock } from './device.ts';
import { entry, library } from './scenario.ts';

let device: TestDevice;
beforeEach(async () => {
  testClock();
  device = newDevice();
  await pickUp(device);
});

const restart = async (): Promise<void> => {
  await closeBook();
  await openBooks();
};

describe('opening', () => {
  test('an untouched device holds no book', async () => {
    await openBooks();
    expect(bookState()).toEqual({ kind: 'none', which: 'book' });
  });

  test('a new book opens, and is open again after a restart with the same writer', async () => {
    const made = await newBook({ firmName: 'Old Sash & Steel', practice: false });
    expect(made).toMatchObject({ kind: 'written' });
    const { writer, bookId } = theSession();
    await restart();
    expect(bookState()).toMatchObject({ kind: 'open', which: 'book', bookId, rebuilding: null, unreadable: [] });
    expect(theSession().writer).toBe(writer);
    expect(theSession().lastSequence).toBe(1);
  });

  test('a second new book in the same database is refused and the first stays', async () => {
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const { bookId } = theSession();
    expect(await newBook({ firmName: 'Another', practice: false })).toEqual({ kind: 'failed', why: 'unknown' });
    expect(bookState()).toMatchObject({ kind: 'open', bookId });
  });

  test('practice and real are two databases, and the one open last is opened next time', async () => {
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const real = theSession().bookId;
    await newBook({ firmName: 'Practice', practice: true });
    const practice = theSession().bookId;
    expect(practice).not.toBe(real);
    await restart();
    expect(bookState()).toMatchObject({ kind: 'open', which: 'practice', bookId: practice });
    await switchBook('book');
    expect(bookState()).toMatchObject({ kind: 'open', which: 'book', bookId: real });
  });

  test('an emptied device is told from a first use, and a new book there gets a new writer', async () => {
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const { writer } = theSession();
    await pickUp({ ...newDevice(), storage: device.storage });
    await openBooks();
    expect(bookState()).toEqual({ kind: 'evicted', which: 'book' });
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    expect(theSession().writer).not.toBe(writer);
  });

  test('a database that went back in time behind our back goes on with a new writer', async () => {
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const { writer, db } = theSession();
    const { siteAdded } = library();
    const written = await write([siteAdded(entry())]);
    expect(written.kind).toBe('written');
    await db.journal.delete(`${writer}.00000002`);
    await restart();
    expect(theSession().writer).not.toBe(writer);
  });

  test('a profile whose localStorage was lost goes on with a new writer', async () => {
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const { writer } = theSession();
    await pickUp({ ...device, storage: new Map() });
    await openBooks();
    expect(bookState()).toMatchObject({ kind: 'open' });
    expect(theSession().writer).not.toBe(writer);
  });
});
