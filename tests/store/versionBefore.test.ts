/**
 * A device that the version before left in the middle of a shift (tests/journals/second.json says how it was made) is opened, and its
 * sample finished, by the version of today. Expected figures are worked by hand in the comments.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import Dexie from 'dexie';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Term } from '#core/formula.ts';
import { findSample } from '#findings/sample.ts';
import { findWorkday } from '#findings/workday.ts';
import type { SampleRecord } from '#records/book.ts';
import { forgetRun } from '#store/clock.ts';
import { databaseNames, type JournalRow } from '#store/database.ts';
import { loadDraft } from '#store/drafts.ts';
import { derivedEdition } from '#store/edition.ts';
import { getFile, hashOf } from '#store/files.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { holder } from '#store/holder.ts';
import { derivedRows } from '#store/lookup.ts';
import { newFact } from '#store/newFact.ts';
import { openBooks } from '#store/opening.ts';
import { boxBook, sampleBook, workdayBook } from '#store/reading.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { makeBackup } from './handOvers.ts';
import { entry, flowCheckOf, type Library, sampleOf } from './scenario.ts';

interface Left {
  readonly runningSampleId: string;
  readonly finishedSampleId: string;
  readonly boxId: string;
  readonly workerId: string;
  readonly shiftId: string;
  readonly bookId: string;
  readonly writer: string;
  readonly databaseVersion: number;
  readonly localStorage: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, readonly Record<string, unknown>[]>>;
}
const folder = new URL('../journals/', import.meta.url);
const left = JSON.parse(readFileSync(new URL('second.json', folder), 'utf8')) as Left;
const zip = new File([readFileSync(new URL('second.zip', folder))], 'second.zip');
const journalLeft = (left.tables.journal ?? []) as unknown as readonly JournalRow[];
const numberOf = (sampleId: string): string | undefined =>
  journalLeft
    .filter(({ about }) => about.includes(`sample:${sampleId}`))
    .flatMap(({ text }) => /"sampleNumber":"(\d+)"/.exec(text)?.[1] ?? [])[0];

/** The tables as that version shaped them, written down here and not taken from today's code. */
const shape = { journal: 'id, *about', records: 'key, [kind+sort], *links', drafts: 'key', files: 'hash', meta: 'key' };
const bytesOf = (row: Record<string, unknown>) =>
  'bytes' in row ? { ...row, bytes: new Uint8Array(Buffer.from(String(row.bytes), 'base64')) } : row;

async function leftDevice(): Promise<void> {
  const device = newDevice();
  for (const [name, value] of Object.entries(left.localStorage)) device.storage.set(name, value);
  await pickUp(device);
  const db = new Dexie(databaseNames.book);
  db.version(1).stores(shape);
  await db.open();
  expect(db.backendDB().version).toBe(left.databaseVersion);
  for (const [name, rows] of Object.entries(left.tables)) await db.table(name).bulkAdd(rows.map(bytesOf));
  db.close();
}

let clock: TestClock;
beforeEach(() => {
  forgetRun();
  clock = testClock('2026-11-25T14:05:00.000Z');
});
const at = (time: string): void => {
  const ms = Date.parse(`2026-11-25T${time}:00.000Z`);
  clock.forward(ms - clock.atMs);
};
const exact = (term: Term | null): number => {
  if (term?.estimate.kind !== 'exact') throw new Error(`not one number: ${JSON.stringify(term?.estimate)}`);
  return term.estimate.value;
};
const must = async (facts: Parameters<typeof write>[0], options: Parameters<typeof write>[1] = {}): Promise<void> => {
  expect(await write(facts, options)).toMatchObject({ kind: 'written' });
};
const journal = () => theSession().db.journal.orderBy('id').toArray();
const sampleRecord = async (id: string) => (await theSession().db.records.get(`sample:${id}`))?.record as SampleRecord;
const resultOf = (sampleId: string, massUg: number) =>
  newFact(
    'resultReceived.v1',
    {
      ...{ sampleId, reportNumber: 'R-1', laboratoryId: null, accreditation: null, methodId: null },
      ...{ receivedOn: '2026-11-25', reportedOn: null, analysedOn: null, mass: { kind: 'measured', massUg } },
      ...{ reportingLimitUg: 2.5, blankCorrected: 'no', wallDeposit: 'yes', laboratoryVolumeL: null },
      ...{ laboratoryConcentrationUgPerM3: null, saeFraction: null, remark: null },
    },
    entry(),
  );

describe('a device left by the version before', () => {
  beforeEach(async () => {
    await leftDevice();
    await openBooks();
  });

  test('opens under the same writer, its lists made anew, and nothing of the journal touched', async () => {
    expect(bookState()).toMatchObject({ kind: 'open', bookId: left.bookId, unreadable: [] });
    expect(theSession().writer).toBe(left.writer);
    await rebuildSettled();
    const { db } = theSession();
    expect((await db.meta.get('derived'))?.value).toBe(derivedEdition);
    expect(derivedEdition).not.toBe(left.tables.meta?.find(({ key }) => key === 'derived')?.value);
    expect(await journal()).toEqual(journalLeft);
    expect(await db.records.count()).toBe(derivedRows(journalLeft).size);
    // Counted on the story: the book, a site, two people, two pumps, a meter, a lot, a laboratory, a shift, three checks, two samples, a box.
    expect(await db.records.count()).toBe(16);
    expect(await holder()).toMatchObject({ personId: left.workerId });
  });

  test('shows the sample that runs, the stop half typed, and the paper that was issued', async () => {
    await rebuildSettled();
    const { db } = theSession();
    const running = await db.records.where('links').equals('running').toArray();
    expect(running.map(({ key }) => key)).toEqual([`sample:${left.runningSampleId}`]);
    const sample = await sampleRecord(left.runningSampleId);
    expect(sample.sampleNumber).toBe(numberOf(left.runningSampleId));
    expect(sample).toMatchObject({ putOn: { at: '2026-11-25T12:00:00.000Z' }, stopped: null, conflicts: [] });
    expect(sample.looks.map((look) => look.at)).toEqual(['2026-11-25T14:00:00.000Z']);
    expect(await loadDraft(db, `sample:${left.runningSampleId}/stop`)).toEqual({ value: { pumpMin: '48' } });
    const box = (await boxBook(db, left.boxId))?.boxes.get(left.boxId);
    const hash = box?.issues[0]?.pdfHash ?? '';
    const file = await getFile(hash);
    expect(hashOf(file?.bytes ?? new Uint8Array())).toBe(hash);
    expect(new TextDecoder().decode(file?.bytes)).toContain('%PDF-1.7');
  });

  test('stops, seals and finds: 480 min at 2.0 L/min and 24 µg are 960 L and 25 µg/m³; 60 min and 6 µg are 50', async () => {
    const { workerId, shiftId, runningSampleId, finishedSampleId } = left;
    const { pumpId, lotId } = await sampleRecord(runningSampleId);
    const meter = (
      await theSession().db.records.where('[kind+sort]').between(['meter', ''], ['meter', '\uffff']).first()
    )?.record;
    const day = { shiftId, pumpId: pumpId ?? '', lotId, meterId: meter?.id ?? '' } as unknown as Library;
    const sample = sampleOf(day, runningSampleId);
    const draftKey = `sample:${runningSampleId}/stop`;
    await loadDraft(theSession().db, draftKey);
    at('20:00');
    await must([sample.stopped(entry(workerId))], { draftKey });
    expect(await loadDraft(theSession().db, draftKey)).toBeNull();
    at('20:10');
    await must([flowCheckOf(day, 'after', 2)(entry(workerId)), sample.sealed(entry(workerId))]);
    await must([resultOf(runningSampleId, 24)]);
    await must([resultOf(finishedSampleId, 6)]);
    const workdayId = `${workerId}.2026-11-25`;
    const [startedAt, endedAt] = ['2026-11-25T12:00:00.000Z', '2026-11-25T20:00:00.000Z'];
    await must([
      newFact(
        'workHoursStated.v1',
        { workdayId, pieces: [{ startedAt, endedAt, place: null, employer: null }] },
        entry(),
      ),
    ]);

    const { db } = theSession();
    const found = async (sampleId: string) => {
      const book = await sampleBook(db, sampleId);
      if (book === null) throw new Error('no sample');
      return findSample(sampleId, book);
    };
    const long = await found(runningSampleId);
    expect(exact(long.volume)).toBeCloseTo(960, 9);
    expect(exact(long.concentration)).toBeCloseTo(25, 9);
    const short = await found(finishedSampleId);
    // 60 min at 2.0 L/min: 120 L; 6 µg in 0.12 m³.
    expect(exact(short.volume)).toBeCloseTo(120, 9);
    expect(exact(short.concentration)).toBeCloseTo(50, 9);
    const book = await workdayBook(db, workdayId);
    if (book === null) throw new Error('no day');
    // All 480 minutes at 25 µg/m³: 25 × 480 / 480.
    expect(exact(findWorkday(workdayId, book).twa8)).toBeCloseTo(25, 9);
    // The chain goes on where the version before left it.
    expect((await journal()).slice(0, journalLeft.length)).toEqual(journalLeft);
  });
});

describe('a backup of the version before', () => {
  test('is looked into and restored: the same entries, the paper, the running sample', async () => {
    await pickUp(newDevice());
    await openBooks();
    const looked = await lookInto(zip);
    expect(looked).toMatchObject({
      ...{ kind: 'preview', bookId: left.bookId, firmName: 'Old Sash & Steel', from: null, part: 'everything' },
      ...{
        factsCount: journalLeft.length,
        newCount: journalLeft.length,
        filesCount: 1,
        filesMissingCount: 0,
        gaps: [],
      },
      ...{ forks: [], brokenCount: 0, unreadableCount: 0, newerCount: 0 },
    });
    if (looked.kind !== 'preview') return;
    expect(await takeIn(looked)).toMatchObject({ kind: 'takenIn', newCount: journalLeft.length, filesCount: 1 });
    await rebuildSettled();
    expect(await journal()).toEqual(journalLeft);
    expect(theSession().writer).not.toBe(left.writer);
    expect(await theSession().db.records.where('links').equals('running').count()).toBe(1);
  });

  test('brings nothing new to the device that made it', async () => {
    await leftDevice();
    await openBooks();
    const looked = await lookInto(zip);
    expect(looked).toMatchObject({ kind: 'preview', newCount: 0, sameCount: journalLeft.length, newFilesCount: 0 });
    expect((await makeBackup()).factsCount).toBe(journalLeft.length);
  });
});

describe('a file of today that went through the version before', () => {
  const carried = JSON.parse(readFileSync(new URL('carried.json', folder), 'utf8')) as {
    readonly factsCount: number;
    readonly journalSha256: string;
    readonly pictureSha256: string;
  };
  const carriedZip = new File([readFileSync(new URL('carried.zip', folder))], 'carried.zip');
  const hashed = (rows: readonly JournalRow[]): string =>
    createHash('sha256')
      .update(rows.map(({ link, text }) => `${link} ${text}\n`).join(''))
      .digest('hex');

  test('has every entry byte for byte, the unknown kinds too; the picture it did not keep is said to be missing', async () => {
    clock = testClock('2026-11-25T21:30:00.000Z');
    await pickUp(newDevice());
    await openBooks();
    const looked = await lookInto(carriedZip);
    expect(looked).toMatchObject({ kind: 'preview', factsCount: carried.factsCount + 1, filesCount: 1, forks: [] });
    // The three of an invented kind, less the one that is missing between them.
    expect(looked).toMatchObject({ newerCount: 2, gaps: [{ fromCount: 2, toCount: 2 }], filesMissingCount: 1 });
    if (looked.kind !== 'preview') return;
    expect(await takeIn(looked)).toMatchObject({ kind: 'takenIn', newCount: carried.factsCount + 1 });
    const rows = await journal();
    const ofOffice = rows.filter(({ text }) => text.includes('seen in the office'));
    expect(ofOffice).toHaveLength(1);
    expect(hashed(rows.filter((row) => !ofOffice.includes(row)))).toBe(carried.journalSha256);
    const sample = await sampleRecord(left.runningSampleId);
    expect(sample.photos?.map(({ hash }) => hash)).toEqual([carried.pictureSha256]);
    expect(await getFile(carried.pictureSha256)).toBeNull();
    // The review said that it does not stay void.
    expect(sample).toMatchObject({ voided: null, voidReview: { stands: false }, remarks: ['seen in the office'] });
  });
});
