/** 5,000 samples in the book: how many rows are read before the home screen is usable. The figure is issue 2, point 8 of what must be seen. */
import { beforeAll, describe, expect, test } from 'vitest';
import { bookCounts, bookMeta } from '#store/bookMeta.ts';
import { openBooks } from '#store/opening.ts';
import {
  awaitingResults,
  boxes,
  newestShifts,
  sampleBook,
  samplePage,
  shiftBook,
  workdayBook,
} from '#store/reading.ts';
import { runSheet } from '#store/runSheet.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { type GeneratedBook, generateBook } from './generateBook.ts';
import { entry, sampleOf } from './scenario.ts';
import { seedDatabase } from './seedDatabase.ts';

let book: GeneratedBook;
const samples = 5000;

beforeAll(async () => {
  book = generateBook({ samples, seed: 20261125 });
  testClock(`${book.lastDay}T14:00:00.000Z`);
  await pickUp(newDevice());
  await seedDatabase(book, { journalOfLastCount: 400 });
}, 120_000);

describe('a book of 5,000 samples', () => {
  test('opens and shows the run sheet with at most 300 rows read', async () => {
    const counted = await counting(async () => {
      await openBooks();
      const { db } = theSession();
      return { sheet: await runSheet(db, book.lastDay), meta: await bookMeta(db) };
    });
    expect(bookState()).toMatchObject({ kind: 'open', rebuilding: null });
    const { sheet, meta } = counted.result;
    expect(meta.runningCount).toBe(4);
    expect((await bookCounts(theSession().db)).sampleCount).toBe(samples);
    expect(sheet.unfinished).toHaveLength(4);
    expect(sheet.shift?.workOn).toBe(book.lastDay);
    expect(sheet.book.people.size).toBe(8);
    expect(sheet.book.samples.size).toBeGreaterThanOrEqual(4);
    console.info(`rows read before the run sheet is usable: ${counted.rows}`);
    expect(counted.rows).toBeGreaterThan(0);
    expect(counted.rows).toBeLessThanOrEqual(300);
  });

  test('pages through every sample there is, newest first, each once', async () => {
    const { db } = theSession();
    const seen = new Set<string>();
    let before: string | null = null;
    let last = '\uffff';
    do {
      const page = await counting(() => samplePage(db, 500, before));
      expect(page.rows).toBeLessThanOrEqual(500);
      for (const sample of page.result.samples) {
        expect(sample.preparedAt <= last).toBe(true);
        last = sample.preparedAt;
        seen.add(sample.id);
      }
      before = page.result.older;
    } while (before !== null);
    expect(seen.size).toBe(samples);
  });

  test('one shift, one sample, one day: few rows, by index', async () => {
    const { db } = theSession();
    const [shift] = await newestShifts(db, 1);
    const [sample] = (await samplePage(db, 1, null)).samples;
    const asked = [
      () => shiftBook(db, shift?.id ?? ''),
      () => sampleBook(db, sample?.id ?? ''),
      () => workdayBook(db, sample?.workdayId ?? ''),
    ];
    for (const ask of asked) {
      const counted = await counting<unknown>(ask);
      expect(counted.result).not.toBeNull();
      expect(counted.rows).toBeLessThanOrEqual(100);
    }
    expect(await boxes(db)).toEqual([]);
    expect((await awaitingResults(db)).length).toBeLessThan(40);
  });

  test('an append still makes at most 6 requests and reads few rows', async () => {
    const { db } = theSession();
    const [sample] = (await runSheet(db, book.lastDay)).unfinished;
    const one = sampleOf({} as never, sample?.id);
    const counted = await counting(() => write([one.lookedAt(entry())], { draftKey: 'typing' }));
    expect(counted.result).toMatchObject({ kind: 'written' });
    expect(counted.requests.length).toBeLessThanOrEqual(6);
    expect(counted.rows).toBeLessThanOrEqual(30);
  });
});
