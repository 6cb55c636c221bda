/**
 * A page is shown again when anything that its question asked for has changed. The database notices what is asked in the zone of the
 * question; an await too deep inside leaves that zone, and what is asked afterwards is never noticed. Asked within one transaction, a
 * question that leaves its zone leaves the transaction too, which is then over too early: that is refused here.
 */
import { beforeEach, expect, test } from 'vitest';
import { bookCounts, bookMeta } from '#store/bookMeta.ts';
import type { BookDatabase, JournalRow } from '#store/database.ts';
import { devicesIn, factsAboutKeys, recordBook } from '#store/hooks/useFactsAbout.ts';
import { derivedRows } from '#store/lookup.ts';
import { newBook } from '#store/opening.ts';
import { issuedBoxes, openCount, openRecords } from '#store/openRecords.ts';
import {
  awaitingResults,
  boxBook,
  boxes,
  newestShifts,
  personBook,
  rosterBook,
  sampleBook,
  samplePage,
  shiftBook,
  workdayBook,
} from '#store/reading.ts';
import { runSheet } from '#store/runSheet.ts';
import { theSession } from '#store/session.ts';
import { unnamedPeople } from '#store/unnamed.ts';
import { blankOpened, soundDay, workdayId } from '../findings/carefulStory.ts';
import { notice, personAdded, reported, worked } from '../records/dutyFacts.ts';
import { boxPacked, ids, journal } from '../records/facts.ts';
import { newDevice, pickUp, testClock } from './device.ts';

const blank = 'c00000000090';
const shiftId = `${ids.site}.2026-11-25`;
const boxed = boxPacked([ids.one, blank]);

const questions: Readonly<Record<string, (db: BookDatabase) => Promise<unknown>>> = {
  'the book and who holds the device': bookMeta,
  'counts over the book': bookCounts,
  today: (db) => runSheet(db, '2026-11-25'),
  'a shift': (db) => shiftBook(db, shiftId),
  'a sample': (db) => sampleBook(db, ids.one),
  'a day of a worker': (db) => workdayBook(db, workdayId),
  'who works at a shift, and worked there last': (db) => rosterBook(db, shiftId),
  'everything of one person': (db) => personBook(db, ids.ana),
  'a box': (db) => boxBook(db, ids.box),
  'all samples': (db) => samplePage(db, 20, null),
  shifts: (db) => newestShifts(db, 3),
  boxes: boxes,
  'what waits for a result': awaitingResults,
  'what waits to be settled': openRecords,
  'how many things wait to be settled': openCount,
  'boxes with a sheet': (db) => issuedBoxes(db, 5, null),
  'facts about a record': (db) => factsAboutKeys(db, [`sample:${ids.one}`]),
  'the slice around a record': (db) => recordBook(db, `sample:${ids.one}`),
  'the slice of an entry of a list': (db) => recordBook(db, `pump:${ids.pumpA}`),
  'who wrote what': (db) => devicesIn(db, ''),
  'whose name is not here': unnamedPeople,
};

beforeEach(async () => {
  testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const facts = journal([
    ...soundDay(24),
    blankOpened(blank, { shiftId }),
    boxed,
    worked(['handScraping']),
    personAdded(),
    reported(),
    notice(),
  ]);
  const rows = facts.map(({ id, text, link }) => ({ ...JSON.parse(text), id, text, link }) as JournalRow);
  await theSession().db.records.bulkPut([...derivedRows(rows).values()]);
});

test.each(Object.entries(questions))('%s is asked in one zone to its end', async (_, question) => {
  const { db } = theSession();
  const asked = Promise.resolve(db.transaction('r', db.tables, () => question(db)));
  await expect(asked).resolves.toEqual(await question(db));
});
