import { strToU8, unzipSync, zipSync } from 'fflate';
import { beforeEach, describe, expect, test } from 'vitest';
import { writerOf } from '#records/chain.ts';
import { bookCounts, bookMeta } from '#store/bookMeta.ts';
import { getFile, hashOf } from '#store/files.ts';
import type { Looked, Preview } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { samplePage } from '#store/reading.ts';
import { noteHandedOut } from '#store/sending.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestDevice, testClock } from './device.ts';
import { makeBackup } from './handOvers.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let phone: TestDevice;
let day: Library;
const pdf = strToU8('%PDF-1.7 bytes that stand for a sheet');

beforeEach(async () => {
  testClock();
  phone = newDevice();
  await pickUp(phone);
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await write(openingFacts(day));
  await write([sampleOf(day).prepared(entry())], {
    files: [{ hash: hashOf(pdf), type: 'application/pdf', bytes: pdf }],
  });
});

const switchTo = async (device: TestDevice): Promise<void> => {
  await pickUp(device);
  await openBooks();
};
const journal = () => theSession().db.journal.orderBy('id').toArray();
const derived = () => theSession().db.records.orderBy('key').toArray();
const blobOf = (bytes: Uint8Array): Blob => new Blob([bytes as Uint8Array<ArrayBuffer>]);
const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());

const preview = (read: Looked): Preview => {
  expect(read).toMatchObject({ kind: 'preview' });
  return read as Preview;
};

describe('a backup', () => {
  test('is a plain zip that says how to read it, and names nobody', async () => {
    const backup = await makeBackup({ papers: [{ name: 'json', text: '{}' }] });
    const entries = unzipSync(await bytesOf(backup.blob));
    expect(Object.keys(entries).sort()).toEqual(
      ['README.txt', 'book.txt', 'dictionary.json', `files/${hashOf(pdf)}.pdf`].sort(),
    );
    expect(backup.name).toMatch(/^fullshift-book-everything-\d{4}-\d\d-\d\d-\d{4}\.zip$/);
    expect(backup.factsCount).toBe((await journal()).length);
    const text = new TextDecoder().decode(entries['book.txt']);
    for (const row of await journal()) expect(text).toContain(`${row.link} ${row.text}\n`);
  });

  test('brought back to a wiped device gives the same journal, rows and files, and a new writer', async () => {
    const { writer, bookId } = theSession();
    const before = { journal: await journal(), derived: await derived() };
    const { blob } = await makeBackup();
    await switchTo(newDevice());
    expect(bookState().kind).toBe('none');
    const shown = preview(await lookInto(blob));
    expect(shown).toMatchObject({ bookId, firmName: 'Old Sash & Steel', practice: false, forks: [], sameCount: 0 });
    expect(shown.newCount).toBe(before.journal.length);
    expect(await takeIn(shown)).toMatchObject({ kind: 'takenIn', newCount: before.journal.length, sharedNumbers: [] });
    expect({ journal: await journal(), derived: await derived() }).toEqual(before);
    expect((await getFile(hashOf(pdf)))?.bytes).toEqual(pdf);
    expect(theSession().writer).not.toBe(writer);
    expect(bookState()).toMatchObject({ kind: 'open', bookId, rebuilding: null });
  });

  test('taken in twice changes nothing', async () => {
    const { blob } = await makeBackup();
    const before = await journal();
    const shown = preview(await lookInto(blob));
    expect(shown).toMatchObject({ newCount: 0, sameCount: before.length });
    expect(await takeIn(shown)).toMatchObject({ kind: 'takenIn', newCount: 0, sharedNumbers: [] });
    expect(await journal()).toEqual(before);
  });

  test('restored on a second profile, one new sample on each, exchanged: all samples on both, two writers', async () => {
    const { blob } = await makeBackup();
    const office = newDevice();
    await switchTo(office);
    await takeIn(preview(await lookInto(blob)));
    await write([sampleOf(day).prepared(entry())]);
    const fromOffice = (await makeBackup()).blob;
    await switchTo(phone);
    await write([sampleOf(day).prepared(entry())]);
    const fromPhone = (await makeBackup()).blob;
    expect(await takeIn(preview(await lookInto(fromOffice)))).toMatchObject({ kind: 'takenIn', newCount: 1 });
    const onPhone = { journal: await journal(), derived: await derived() };
    await switchTo(office);
    expect(await takeIn(preview(await lookInto(fromPhone)))).toMatchObject({ kind: 'takenIn', newCount: 1 });
    expect({ journal: await journal(), derived: await derived() }).toEqual(onPhone);
    const { samples, total } = await samplePage(theSession().db, 10, null);
    expect(total).toBe(3);
    expect(new Set(samples.map(({ sampleNumber }) => sampleNumber)).size).toBe(3);
    expect(new Set(onPhone.journal.map(({ id }) => writerOf(id))).size).toBe(2);
  });

  test('handed out is remembered, and what was written since is counted', async () => {
    const backup = await makeBackup();
    await noteHandedOut(backup);
    await write([library().siteAdded(entry())]);
    expect(await bookMeta(theSession().db)).toMatchObject({
      lastBackupAt: '2026-11-25T11:00:00.000Z',
      practice: false,
    });
    expect(await bookCounts(theSession().db)).toEqual({ factsSinceBackup: 1, sampleCount: 1 });
  });
});

describe('what does not fit', () => {
  const refusedBy = async (blob: Blob) => {
    const before = await journal();
    const read = await lookInto(blob);
    expect(await journal()).toEqual(before);
    return read.kind === 'refused' ? read.why : read.kind;
  };

  test('another book, a practice book, a foreign file, an empty one', async () => {
    const { blob } = await makeBackup();
    await closeBook();
    await newBook({ firmName: 'Practice', practice: true });
    expect(await refusedBy(blob)).toBe('realIntoPractice');
    const practice = (await makeBackup()).blob;
    await switchTo(newDevice());
    await newBook({ firmName: 'Another firm', practice: false });
    expect(await refusedBy(blob)).toBe('otherBook');
    expect(await refusedBy(practice)).toBe('practiceIntoReal');
    expect(await refusedBy(new Blob(['hello']))).toBe('notABackup');
    expect(await refusedBy(new Blob([]))).toBe('notABackup');
    expect(await refusedBy(blobOf(zipSync({ 'letter.txt': strToU8('dear') })))).toBe('notABackup');
  });

  test('a file cut at any of 60 places is refused, never taken in by half', async () => {
    const bytes = await bytesOf((await makeBackup()).blob);
    const step = Math.floor(bytes.length / 60);
    const answers = new Set<string>();
    for (let end = step; end < bytes.length; end += step) {
      answers.add(await refusedBy(blobOf(bytes.slice(0, end))));
    }
    expect([...answers]).toEqual(['damaged']);
  });

  test('a changed fact is found by its link; what is whole before it can be salvaged', async () => {
    const entries = unzipSync(await bytesOf((await makeBackup()).blob));
    const text = new TextDecoder().decode(entries['book.txt']);
    const changed = text.replace('Ada Quill', 'Ada Quilt');
    expect(changed).not.toBe(text);
    const file = blobOf(zipSync({ 'book.txt': strToU8(changed) }));
    expect(await refusedBy(file)).toBe('damaged');
    await switchTo(newDevice());
    const shown = preview(await lookInto(file, { salvage: true }));
    expect(shown.salvaged).toBe(true);
    expect(shown.newCount).toBeGreaterThan(0);
    expect(shown.newCount).toBeLessThan(8);
  });

  test('two lines of one writer that part ways are a fork: told, and nothing is taken in', async () => {
    const { blob } = await makeBackup();
    await write([library().pumpAdded(entry())]);
    const mine = (await makeBackup()).blob;
    // The same profile copied behind our back: same writer, other continuation.
    const copy = newDevice();
    await switchTo(copy);
    await takeIn(preview(await lookInto(blob)));
    const { writer } = phoneSession;
    const session = theSession();
    Object.assign(session, { writer, lastSequence: phoneSession.lastSequence });
    await session.db.meta.put({ key: 'writer', value: writer });
    expect(await write([library().pumpAdded(entry())])).toMatchObject({ kind: 'written' });
    const before = await journal();
    const shown = preview(await lookInto(mine));
    expect(shown.forks).toHaveLength(1);
    expect(await takeIn(shown)).toEqual({ kind: 'refused', why: 'forks' });
    expect(await journal()).toEqual(before);
  });
  let phoneSession: { writer: string; lastSequence: number };
  beforeEach(() => {
    const { writer, lastSequence } = theSession();
    phoneSession = { writer, lastSequence };
  });

  test('a preview that is no longer true is not taken in', async () => {
    const { blob } = await makeBackup();
    const shown = preview(await lookInto(blob));
    await switchTo(newDevice());
    expect(await takeIn(shown)).toEqual({ kind: 'refused', why: 'stale' });
  });
});
