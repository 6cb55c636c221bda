import { beforeEach, describe, expect, test } from 'vitest';
import { readFact } from '#records/canonical.ts';
import { sequenceOf, verifyChain, writerOf } from '#records/chain.ts';
import { isSampleNumber } from '#records/sampleNumber.ts';
import { newId } from '#store/device.ts';
import { flushDraft, loadDraft, setDraft } from '#store/drafts.ts';
import { getFile, hashOf } from '#store/files.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { awaitingResults, shiftBook } from '#store/reading.ts';
import { bookState, theSession } from '#store/session.ts';
import { type Written, write } from '#store/write.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from './device.ts';
import { entry, flowCheckOf, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let device: TestDevice;
let clock: TestClock;
let day: Library;

beforeEach(async () => {
  clock = testClock();
  device = newDevice();
  await pickUp(device);
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  expect(await write(openingFacts(day))).toMatchObject({ kind: 'written' });
});

const written = (outcome: Written) => {
  expect(outcome).toMatchObject({ kind: 'written' });
  return outcome as Extract<Written, { kind: 'written' }>;
};

async function sampleOn(one = sampleOf(day)): Promise<typeof one> {
  written(await write([one.prepared(entry())]));
  clock.forward(60_000);
  written(await write([one.putOn(entry())]));
  clock.forward(60_000);
  return one;
}

describe('one append', () => {
  test('makes at most 6 requests and one strict transaction, for every act of a running day', async () => {
    const one = await sampleOn();
    const other = sampleOf({ ...day, pumpId: newId() }, newId(), newId());
    const acts = [
      ['look', one.lookedAt],
      ['remark', one.remark('Ladder moved')],
      ['flow check', flowCheckOf(day, 'between')],
      ['stop', one.stopped],
      ['seal', one.sealed],
    ] as const;
    void other;
    for (const [name, act] of acts) {
      clock.forward(60_000);
      setDraft('typing', name);
      await flushDraft('typing');
      const counted = await counting(() => write([act(entry())], { draftKey: 'typing' }));
      written(counted.result);
      expect([name, counted.requests.length <= 6 ? 'at most 6' : counted.requests]).toEqual([name, 'at most 6']);
      expect(counted.durabilities).toEqual(['strict']);
    }
  });

  test('putting on reads what runs, still within 6 requests', async () => {
    const one = sampleOf(day);
    written(await write([one.prepared(entry())]));
    clock.forward(60_000);
    setDraft('typing', 1);
    await flushDraft('typing');
    const counted = await counting(() => write([one.putOn(entry())], { draftKey: 'typing' }));
    written(counted.result);
    expect(counted.requests).toContain('index.getAll');
    expect(counted.requests.length).toBeLessThanOrEqual(6);
    expect(counted.durabilities).toEqual(['strict']);
  });

  test('facts are readable, chained, and numbered without a hole', async () => {
    await sampleOn();
    const { db, writer } = theSession();
    const rows = await db.journal.orderBy('id').toArray();
    expect(rows.every((row) => writerOf(row.id) === writer)).toBe(true);
    expect(rows.map((row) => sequenceOf(row.id))).toEqual(rows.map((_, index) => index + 1));
    expect(verifyChain(rows)).toBeNull();
    expect(rows.every((row) => readFact(row.text).kind === 'known')).toBe(true);
  });

  test('the next free sample number is put inside the transaction, with its check digit', async () => {
    const first = written(await write([sampleOf(day).prepared(entry())])).sampleNumbers;
    const second = written(await write([sampleOf(day).prepared(entry())])).sampleNumbers;
    const numbers = [...first, ...second];
    expect(numbers).toHaveLength(2);
    expect(new Set(numbers).size).toBe(2);
    expect(numbers.every(isSampleNumber)).toBe(true);
    expect(Number(second[0]?.slice(2, -1))).toBe(Number(first[0]?.slice(2, -1)) + 1);
  });

  test('the derived rows answer by index at once', async () => {
    const one = await sampleOn();
    const { db } = theSession();
    const book = await shiftBook(db, day.shiftId);
    expect(book?.samples.get(one.sampleId)?.putOn).not.toBeNull();
    expect((await awaitingResults(db)).map(({ id }) => id)).toEqual([one.sampleId]);
    expect(await shiftBook(db, `${newId()}.2026-11-25`)).toBeNull();
  });

  test('a file and the fact that names it stand in one transaction', async () => {
    const bytes = new TextEncoder().encode('%PDF-1.7 not a real one');
    const hash = hashOf(bytes);
    // The first sample also makes the browser be asked to keep the data, in a transaction of its own.
    written(await write([sampleOf(day).prepared(entry())]));
    const one = sampleOf(day);
    const counted = await counting(() =>
      write([one.prepared(entry())], { files: [{ hash, type: 'application/pdf', bytes }] }),
    );
    written(counted.result);
    expect(counted.durabilities).toEqual(['strict']);
    expect((await getFile(hash))?.bytes).toEqual(bytes);
    expect(await getFile('0'.repeat(64))).toBeNull();
  });
});

describe('what may not be', () => {
  test('a pump that runs on one worker is not put on another: nothing is written, the draft stays', async () => {
    await sampleOn();
    const other = sampleOf(day, newId(), newId());
    written(await write([day.personAdded(entry()), other.prepared(entry())].slice(1)));
    clock.forward(60_000);
    const before = await theSession().db.journal.count();
    setDraft('typing', 'half a word');
    const outcome = await write([other.putOn(entry())], { draftKey: 'typing' });
    expect(outcome).toMatchObject({ kind: 'refused', refusals: [{ key: 'pumpRunningElsewhere' }] });
    expect(await theSession().db.journal.count()).toBe(before);
    expect(await loadDraft(theSession().db, 'typing')).toEqual({ value: 'half a word' });
  });

  test('without an open book nothing is written and the answer says so', async () => {
    await closeBook();
    expect(await write([day.siteAdded(entry())])).toEqual({ kind: 'failed', why: 'lost' });
  });
});

describe('an emptied database under an open book', () => {
  test('is noticed by the next write; nothing goes into the fresh database', async () => {
    const { db } = theSession();
    for (const table of db.tables) await table.clear();
    expect(await write([day.pumpAdded(entry())])).toEqual({ kind: 'failed', why: 'evicted' });
    expect(bookState()).toEqual({ kind: 'evicted', which: 'book' });
    await db.open();
    expect(await Promise.all(db.tables.map((table) => table.count()))).toEqual(db.tables.map(() => 0));
    db.close();
  });

  test('is noticed too when only the newest facts are gone', async () => {
    const { db, writer, lastSequence } = theSession();
    await db.journal.delete(`${writer}.${String(lastSequence).padStart(8, '0')}`);
    expect(await write([day.pumpAdded(entry())])).toEqual({ kind: 'failed', why: 'evicted' });
  });

  test('is noticed by a writer that has not written here yet', async () => {
    await pickUp({ ...device, storage: new Map() });
    await openBooks();
    const { db, lastSequence } = theSession();
    expect(lastSequence).toBe(0);
    for (const table of db.tables) await table.clear();
    expect(await write([library().siteAdded(entry())])).toEqual({ kind: 'failed', why: 'evicted' });
  });
});
