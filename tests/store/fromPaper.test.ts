/** What comes back out of a custody sheet's PDF, also when qpdf saved it anew. What a hostile PDF gets done is in hostilePaper.test.ts. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import { custodyPdf } from '#documents/custodyPdf.ts';
import type { BoxRecord } from '#records/book.ts';
import { readBookText } from '#records/bookReading.ts';
import { hashOf } from '#store/files.ts';
import { derivedRow } from '#store/folding.ts';
import { readPaper } from '#store/handOver/fromPaper.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { fromPaperText, issueFromPaper } from '#store/handOver/paperIssue.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { newFact } from '#store/newFact.ts';
import { newBook, openBooks } from '#store/opening.ts';
import { boxBook } from '#store/reading.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { theSession } from '#store/session.ts';
import { unnamedPeople } from '#store/unnamed.ts';
import { write } from '#store/write.ts';
import { fonts, sheetWith } from '../documents/sheets.ts';
import { oracle } from '../house/oracles.ts';
import { type Boxed, boxedDay, type Issued, issueSheet } from './boxedDay.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from './device.ts';
import { entry } from './scenario.ts';

const out = 'tests/out/custody';
mkdirSync(out, { recursive: true });
const blobOf = (bytes: Uint8Array): Blob => new Blob([bytes as Uint8Array<ArrayBuffer>]);

let clock: TestClock;
let phone: TestDevice;
let boxed: Boxed;
let issued: Issued;

async function setUp(count: number, shownAs: 'name' | 'identifier'): Promise<void> {
  boxed = await boxedDay(clock, count, shownAs);
  issued = await issueSheet(boxed);
}

beforeEach(async () => {
  clock = testClock();
  phone = newDevice();
  await pickUp(phone);
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
});

interface Line {
  readonly kind: string;
  readonly about: readonly string[];
  readonly body: Readonly<Record<string, unknown>>;
}

function linesOf(text: string): { readonly header: Readonly<Record<string, unknown>>; readonly facts: Line[] } {
  const read = readBookText(text);
  if (read.kind !== 'read') throw new Error(JSON.stringify(read.fault));
  return { header: read.header, facts: read.entries.map((each) => JSON.parse(each.text) as Line) };
}

const momentOf = (issue: BoxRecord['issues'][number] | undefined): unknown => issue?.sheet.issuedInstant;
const kindsOf = (facts: readonly Line[]) => new Set(facts.map(({ kind }) => kind));

describe('the record behind a sheet', () => {
  test('holds what the shift rests on, the other samples of it too, and says what it is', async () => {
    await setUp(2, 'name');
    const { header, facts } = linesOf(issued.record);
    expect(header).toMatchObject({ part: 'paper', sheet: { boxId: boxed.boxId, revision: '1', paper: 'letter' } });
    expect((header as { from: { writer: string } }).from.writer).toBe(theSession().writer);
    for (const kind of [
      'bookOpened.v1',
      'siteAdded.v1',
      'personAdded.v1',
      'pumpAdded.v1',
      'meterAdded.v1',
      'lotAdded.v1',
      'laboratoryAdded.v1',
      'shiftOpened.v1',
      'flowChecked.v1',
      'samplePrepared.v1',
      'blankOpened.v1',
      'pumpPutOn.v1',
      'pumpStopped.v1',
      'cassetteSealed.v1',
      'boxPacked.v1',
    ])
      expect([kind, kindsOf(facts).has(kind)]).toEqual([kind, true]);
    const prepared = facts.filter(({ kind }) => kind === 'samplePrepared.v1').map(({ body }) => body.sampleId);
    expect(prepared).toContain(boxed.otherSampleId);
    // Before and after on each of three pumps.
    expect(facts.filter(({ kind }) => kind === 'flowChecked.v1')).toHaveLength(6);
  });

  test('where the sheet shows identifiers, no fact about a person and no name goes along', async () => {
    await setUp(2, 'identifier');
    const { facts } = linesOf(issued.record);
    expect(facts.filter(({ about }) => about.some((key) => key.startsWith('person:')))).toEqual([]);
    expect(issued.record).not.toContain('Oakum');
    expect(issued.record).not.toContain('Keel');
    // The same day with names does hold them: the search above could have found something.
    await setUp(1, 'name');
    expect(issued.record).toContain('Oakum');
  });

  test('is partial: of facts about people there are gaps, and the sequence before its first fact is named', async () => {
    await setUp(1, 'identifier');
    const read = readBookText(issued.record);
    if (read.kind !== 'read') throw new Error('unread');
    const held = new Set(read.entries.map(({ id }) => id));
    const journal = await theSession().db.journal.toArray();
    const lacking = journal.filter(({ id }) => !held.has(id)).map(({ text }) => (JSON.parse(text) as Line).kind);
    // The pump that nobody used that day stays out too.
    expect(new Set(lacking)).toEqual(new Set(['personAdded.v1', 'pumpAdded.v1', 'custodySheetIssued.v1']));
    expect(read.header.since).toEqual([]);
    // A second day of the same book begins somewhere in the middle, but for the opening of the book.
    await setUp(1, 'identifier');
    expect(linesOf(issued.record).facts[0]?.kind).toBe('bookOpened.v1');
  });

  // Own goal, no source: a sheet goes through mail and share sheets, and a reader of it opens it on a phone.
  test('twenty cassettes stay small: the record adds under 40 kB', async () => {
    await setUp(20, 'name');
    const { pdf, record } = issued;
    const read = await readPaper(blobOf(pdf));
    if (read.kind !== 'paper') throw new Error(read.why);
    const bare = await custodyPdf(read.sheet as never, { paper: 'letter', fonts });
    console.info(`20 cassettes: record ${record.length} bytes, PDF ${pdf.length}, without record ${bare.length}`);
    expect(pdf.length - bare.length).toBeLessThan(40_000);
    expect(pdf.length).toBeLessThan(250_000);
  });
});

describe('reading it back', () => {
  test('gives the text, the sheet and the bytes as they went in', async () => {
    await setUp(2, 'name');
    expect(await readPaper(blobOf(issued.pdf))).toMatchObject({
      kind: 'paper',
      text: issued.record,
      hash: issued.hash,
      sheet: { boxId: boxed.boxId, revision: '1' },
    });
  });

  const savedAnew: readonly (readonly [string, readonly string[]])[] = [
    ['packed', ['--object-streams=generate', '--linearize']],
    ['qdf', ['--qdf']],
    ['recompressed', ['--recompress-flate', '--compression-level=9']],
    ['plain', ['--stream-data=uncompress', '--object-streams=disable']],
  ];
  const qpdf = oracle('qpdf');
  test.skipIf(qpdf === null).each(savedAnew)('saved anew by qpdf, %s, it reads the same', async (name, options) => {
    await setUp(2, 'name');
    writeFileSync(`${out}/record.pdf`, issued.pdf);
    qpdf?.([...options, `${out}/record.pdf`, `${out}/record-${name}.pdf`]);
    const read = await readPaper(blobOf(new Uint8Array(readFileSync(`${out}/record-${name}.pdf`))));
    expect(read).toMatchObject({ kind: 'paper', text: issued.record, sheet: { boxId: boxed.boxId } });
  });

  test.skipIf(qpdf === null)('encrypted by qpdf, it is refused', async () => {
    await setUp(1, 'name');
    writeFileSync(`${out}/record.pdf`, issued.pdf);
    qpdf?.(['--encrypt', 'open', 'own', '256', '--', `${out}/record.pdf`, `${out}/record-locked.pdf`]);
    const read = await readPaper(blobOf(new Uint8Array(readFileSync(`${out}/record-locked.pdf`))));
    expect(read).toEqual({ kind: 'refused', why: 'notAsIssued' });
  });

  const pdfdetach = oracle('pdfdetach');
  test.skipIf(pdfdetach === null)('poppler finds both attachments under their names, byte for byte', async () => {
    await setUp(2, 'identifier');
    writeFileSync(`${out}/record.pdf`, issued.pdf);
    const list = pdfdetach?.(['-list', `${out}/record.pdf`]) ?? '';
    expect(list).toContain('2 embedded files');
    pdfdetach?.(['-savefile', 'record.txt', '-o', `${out}/record.txt`, `${out}/record.pdf`]);
    expect(readFileSync(`${out}/record.txt`, 'utf8')).toBe(issued.record);
  });

  test('a sheet of the first version holds the sheet alone, and that is said', async () => {
    const old = await custodyPdf(sheetWith(4), { paper: 'letter', fonts });
    expect(await readPaper(blobOf(old))).toEqual({ kind: 'refused', why: 'sheetOnly' });
  });
});

describe('a book rebuilt from a sheet', () => {
  const boxNow = async (): Promise<BoxRecord> => {
    const book = await boxBook(theSession().db, boxed.boxId);
    const box = book?.boxes.get(boxed.boxId);
    if (!box) throw new Error('no box');
    return box;
  };

  async function rebuilt(): Promise<void> {
    await pickUp(newDevice());
    await openBooks();
    const looked = await lookInto(new Blob([issued.record]));
    if (looked.kind !== 'preview') throw new Error('unread');
    expect(await takeIn(looked)).toMatchObject({ kind: 'takenIn' });
    await theSession().db.files.put({ hash: issued.hash, type: 'application/pdf', bytes: issued.pdf });
    await rebuildSettled();
  }

  test('knows of the issue from the PDF, and shows one issue when the act itself arrives', async () => {
    await setUp(2, 'name');
    const act = (await theSession().db.journal.toArray()).find(({ text }) => text.includes('custodySheetIssued.v1'));
    await rebuilt();
    expect((await boxNow()).issues).toEqual([]);
    expect(await issueFromPaper(issued.hash)).toBe('written');
    expect(await issueFromPaper(issued.hash)).toBe('known');
    const [issue] = (await boxNow()).issues;
    expect(issue).toMatchObject({ revision: '1', pdfHash: issued.hash, paper: 'letter' });
    const row = await theSession().db.journal.get(issue?.factId ?? '');
    expect(JSON.parse(row?.text ?? '{}')).toMatchObject({
      happened: { entry: 'typed', from: fromPaperText, at: momentOf(issue) },
    });
    if (act === undefined) throw new Error('no act');
    await theSession().db.journal.add(act);
    const facts = await theSession().db.journal.where('about').equals(`box:${boxed.boxId}`).toArray();
    const both = (derivedRow(`box:${boxed.boxId}`, facts)?.record as BoxRecord | undefined)?.issues ?? [];
    expect(facts.filter(({ text }) => text.includes('"custodySheetIssued.v1"'))).toHaveLength(2);
    expect(both.map(({ factId }) => factId)).toEqual([act.id]);
  });

  test('a second revision is rebuilt as the second one', async () => {
    await setUp(1, 'name');
    clock.forward(60_000);
    issued = await issueSheet(boxed, 'A remark came late');
    await rebuilt();
    expect(await issueFromPaper(issued.hash)).toBe('written');
    expect((await boxNow()).issues.map(({ revision, why }) => [revision, why])).toEqual([
      ['1', null],
      ['2', 'A remark came late'],
    ]);
  });

  test('a sheet that was changed inside its PDF is not written down', async () => {
    await setUp(1, 'name');
    await rebuilt();
    const read = await readPaper(blobOf(issued.pdf));
    if (read.kind !== 'paper') throw new Error(read.why);
    for (const change of [
      { boxId: '0123456789ab' },
      { revision: '7' },
      { rows: [] },
      { '__proto__ ': 1, constructor: { prototype: 1 } },
    ]) {
      const pdf = await custodyPdf({ ...(read.sheet as object), ...change } as never, {
        paper: 'letter',
        fonts,
        record: issued.record,
      }).catch(() => null);
      if (pdf === null) continue;
      await theSession().db.files.put({ hash: hashOf(pdf), type: 'application/pdf', bytes: pdf });
      expect(await issueFromPaper(hashOf(pdf))).toBe('none');
    }
    expect((await boxNow()).issues).toEqual([]);
  });

  test('people who are not in it are named by what the sheet printed, until somebody adds them', async () => {
    await setUp(1, 'identifier');
    await rebuilt();
    expect(await issueFromPaper(issued.hash)).toBe('written');
    const { db } = theSession();
    // Inside one transaction, as a live query asks.
    const asked = () => db.transaction('r', db.records, async () => unnamedPeople(db));
    const unnamed = await asked();
    expect(unnamed.map(({ identifier, printedName }) => printedName ?? identifier).sort()).toEqual([
      // The worker of the sample that stayed out of the box stands on no sheet.
      'W-10',
      'Wanda Keel',
      null,
    ]);
    for (const { personId, identifier } of unnamed) {
      const body = {
        personId,
        name: 'Known again',
        identifier,
        language: 'en',
        jobClassificationId: null,
        employer: null,
      };
      expect(await write([newFact('personAdded.v1', body as never, entry())])).toMatchObject({ kind: 'written' });
    }
    expect(await asked()).toEqual([]);
  });
});
