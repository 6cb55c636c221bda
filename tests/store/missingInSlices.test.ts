/** A slice of a sample, a day or a box says what is missing beside the book, and nothing may be relaxed while a file is half in. */
import { beforeEach, expect, test } from 'vitest';
import { findWorkday } from '#findings/workday.ts';
import type { MissingEntries } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import type { JournalRow } from '#store/database.ts';
import { derivedRows } from '#store/lookup.ts';
import { newBook } from '#store/opening.ts';
import { sampleBook, workdayBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { soundDay, workdayId } from '../findings/carefulStory.ts';
import { ids, journal, office, wanted } from '../records/facts.ts';
import { newDevice, pickUp, testClock } from './device.ts';

const missing: readonly MissingEntries[] = [{ writer: office, fromCount: 2, toCount: 4, untilOn: '2026-11-25' }];

beforeEach(async () => {
  testClock().forward(30 * 3_600_000);
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const facts = soundDay(24).filter(({ kind }) => kind !== 'bookOpened.v1');
  const rows = journal(facts).map(({ id, text, link }) => ({ ...JSON.parse(text), id, text, link }) as JournalRow);
  const { db } = theSession();
  await db.journal.bulkPut(rows);
  await db.records.bulkPut([...derivedRows(rows).values()]);
});

const blocks = async (): Promise<readonly string[]> => {
  const book = await workdayBook(theSession().db, workdayId);
  return book === null ? [] : findWorkday(workdayId, book).blocksBelow.map(({ key }) => key);
};
const accepts = (fromCount: number, toCount: number, why: string | null): NewFact => {
  const { bookId } = theSession();
  return wanted('missingEntriesAccepted.v1', { bookId, writer: office, fromCount, toCount }, { why, by: null });
};

test('missing entries block below on the day, until each was given up with a reason', async () => {
  expect(await blocks()).toEqual([]);
  await theSession().db.meta.put({ key: 'missing', value: missing });
  expect(await blocks()).toEqual(['entriesMissing']);
  expect((await sampleBook(theSession().db, ids.one))?.missing).toEqual(missing);
  expect(await write([accepts(2, 4, null)])).toMatchObject({ refusals: [{ key: 'whyNeeded' }] });
  expect(await write([accepts(2, 9, 'lost')])).toMatchObject({ refusals: [{ key: 'notMissing' }] });
  expect(await write([accepts(2, 3, 'the phone fell into the river')])).toMatchObject({ kind: 'written' });
  expect(await blocks()).toEqual(['entriesMissing']);
  expect(await write([accepts(4, 4, 'the phone fell into the river')])).toMatchObject({ kind: 'written' });
  expect(await blocks()).toEqual([]);
});

test('while a file is half taken in, below is blocked and nothing is relaxed', async () => {
  const { db } = theSession();
  await db.meta.bulkPut([
    { key: 'missing', value: missing },
    { key: 'takeIn', value: { fileName: 'a.zip', startedAt: '', doneCount: 1, totalCount: 2, of: 'x' } },
  ]);
  expect(await blocks()).toEqual(['takingIn', 'entriesMissing']);
  expect(await write([accepts(2, 4, 'lost')])).toMatchObject({ refusals: [{ key: 'takingIn' }] });
  const decided = wanted('flowDecided.v1', { sampleId: ids.one, use: 'average' }, { why: 'kinked', by: null });
  expect(await write([decided])).toMatchObject({ refusals: [{ key: 'takingIn' }] });
  await db.meta.delete('takeIn');
  expect(await write([decided])).toMatchObject({ kind: 'written' });
});
