/** What waits to be settled in a book of 2,000 samples is found by index: few rows are read, however large the book is. */
import { beforeAll, expect, test } from 'vitest';
import type { SampleRecord } from '#records/book.ts';
import { openBooks } from '#store/opening.ts';
import { doubled, openCount, openRecords, sharedNumberCount } from '#store/openRecords.ts';
import { rowOf } from '#store/rows.ts';
import { theSession } from '#store/session.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { generateBook } from './generateBook.ts';
import { seedDatabase } from './seedDatabase.ts';

const samples = 2000;

beforeAll(async () => {
  const book = generateBook({ samples, seed: 20261125 });
  testClock(`${book.lastDay}T14:00:00.000Z`);
  await pickUp(newDevice());
  await seedDatabase(book, { journalOfLastCount: 400 });
  await openBooks();
}, 120_000);

test('keys that stand twice are told once, whatever stands between others', () => {
  expect(doubled(['a', 'b', 'b', 'b', 'c', 'd', 'd'])).toEqual(['b', 'd']);
  expect(doubled([])).toEqual([]);
});

test('a count reads the book row alone; the list reads number keys, the registers and what is in dispute', async () => {
  const { db } = theSession();
  const count = await counting(() => openCount(db));
  expect(count.result).toBe(0);
  expect(count.rows).toBeLessThanOrEqual(5);
  const rows = await db.records.where('[kind+sort]').between(['sample', ''], ['sample', '\uffff']).limit(2).toArray();
  const [one, two] = rows.map((row) => row.record as SampleRecord) as [SampleRecord, SampleRecord];
  const conflict = { factId: one.factIds[0] ?? '', path: '/pumpMin', candidates: [], standing: '' };
  const put = async (record: SampleRecord): Promise<void> => void (await db.records.put(rowOf(record) as never));
  await put({ ...one, conflicts: [conflict] });
  await put({ ...two, sampleNumber: one.sampleNumber });
  const missing = [{ writer: '77777777aaaa', fromCount: 2, toCount: 3, untilOn: '2026-11-20' }];
  await db.meta.put({ key: 'missing', value: missing });
  expect(await openCount(db)).toBe(2);
  expect(await sharedNumberCount(db)).toBe(1);
  const counted = await counting(() => openRecords(db));
  const book = counted.result;
  expect([...book.samples.keys()].sort()).toEqual([one.id, two.id].sort());
  expect(book.missing).toHaveLength(1);
  expect(book.takingIn).toBe(false);
  // One key for each number, without its row; the rest are rows.
  const rowsCount = counted.rows - samples;
  console.info(`rows read for what is open among ${samples} samples: ${rowsCount}, beside ${samples} keys`);
  expect(rowsCount).toBeLessThanOrEqual(60);
});
