/** A slice holds what may keep *below* from being said: field blanks of the box, and cassettes with the same number, of any shift. */
import { beforeEach, expect, test } from 'vitest';
import { findWorkday } from '#findings/workday.ts';
import type { Book } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import type { JournalRow } from '#store/database.ts';
import { derivedRows } from '#store/lookup.ts';
import { newBook } from '#store/opening.ts';
import { boxBook, sampleBook, workdayBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { blankOpened, prepared, result, soundDay, workdayId } from '../findings/carefulStory.ts';
import { at, boxPacked, ids, journal } from '../records/facts.ts';
import { newDevice, pickUp, testClock } from './device.ts';

const dayAfter = `${ids.site}.2026-11-26`;
const blank = 'c00000000090';
const boxed = boxPacked([ids.one, blank]);

beforeEach(async () => {
  testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
});

async function written(facts: readonly NewFact[]): Promise<void> {
  const rows = journal(facts).map(({ id, text, link }) => ({ ...JSON.parse(text), id, text, link }) as JournalRow);
  await theSession().db.records.bulkPut([...derivedRows(rows).values()]);
}

const keysIn = (book: Book | null): string[] => [...(book?.samples.keys() ?? [])].sort();
const everySlice = () => {
  const { db } = theSession();
  return Promise.all([workdayBook(db, workdayId), sampleBook(db, ids.one), boxBook(db, ids.box)]);
};

test('a field blank of the box, opened in another shift, is in the slice of the day, the sample and the box', async () => {
  await written([...soundDay(24), blankOpened(blank, { shiftId: dayAfter }), boxed]);
  for (const book of await everySlice()) {
    expect(keysIn(book)).toEqual([ids.one, blank]);
    expect(book?.boxes.has(ids.box)).toBe(true);
  }
});

test('a blank of another shift that is below its limit keeps the others from being taken off', async () => {
  const near = 'c00000000091';
  await written([
    ...soundDay(24).filter(({ kind }) => kind !== 'resultReceived.v1'),
    result(29, { blankCorrected: 'no' }),
    blankOpened(near),
    result(0.6, { sampleId: near, reportingLimitUg: 0.3 }),
    blankOpened(blank, { shiftId: dayAfter }),
    result({ lessThanUg: 0.3 }, { sampleId: blank }),
    { ...boxed, body: { ...boxed.body, sampleIds: [ids.one, near, blank] } },
  ]);
  const book = await workdayBook(theSession().db, workdayId);
  expect(book && findWorkday(workdayId, book).samples[0]?.mass?.estimate).toEqual({ kind: 'exact', value: 29 });
});

test('another cassette with the same number, of another day and worker, is a named problem on the day', async () => {
  const other = prepared(ids.two, { sampleNumber: '120019', workerId: ids.ben, shiftId: dayAfter });
  await written([...soundDay(24), { ...other, happened: { ...other.happened, at: at('11:50', '2026-11-26') } }]);
  const book = await workdayBook(theSession().db, workdayId);
  expect(book && findWorkday(workdayId, book).blocksBelow.map(({ key }) => key)).toEqual(['numberTwice']);
});
