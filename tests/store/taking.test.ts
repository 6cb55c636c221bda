/** Files large enough to go in by chunks: stopped, killed, full, twice, in any order. The expected book is the one the file was made of. */
import { beforeEach, describe, expect, test } from 'vitest';
import { writeBookText } from '#records/fileFormat.ts';
import type { JournalRow } from '#store/database.ts';
import type { Preview, Progress, TakeInMark } from '#store/handOver/handOver.ts';
import { takeInSteps } from '#store/handOver/limits.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { leaveTakeIn, takeIn } from '#store/handOver/taking.ts';
import { derivedRows } from '#store/lookup.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { bookState, theSession } from '#store/session.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { diskFull, lostConnection, withFault } from './faults.ts';
import { generateBook } from './generateBook.ts';

const { chunkRows } = takeInSteps;
const book = generateBook({ samples: 420, seed: 7 });
const fileOf = (rows: readonly JournalRow[]): Blob =>
  new Blob([writeBookText({ bookId: book.bookId, practice: false, writtenBy: '0.1.0' }, [...rows])]);
const whole = fileOf(book.rows);
const byKey = (a: { key: string }, b: { key: string }): number => (a.key < b.key ? -1 : 1);
const derived = [...book.derived()].sort(byKey);

beforeEach(async () => {
  testClock('2026-11-25T11:00:00.000Z');
  await pickUp(newDevice());
  await openBooks();
});

async function look(file: Blob): Promise<Preview> {
  const looked = await lookInto(file);
  if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
  return looked;
}
const mark = async () => (await theSession().db.meta.get('takeIn'))?.value as TakeInMark | undefined;
const journal = () => theSession().db.journal.orderBy('id').toArray();
async function expectWhole(): Promise<void> {
  await rebuildSettled();
  expect(await journal()).toEqual(book.rows);
  expect((await theSession().db.records.toArray()).sort(byKey)).toEqual(derived);
  expect(await mark()).toBeUndefined();
  expect(bookState()).toMatchObject({ kind: 'open', rebuilding: null });
}
/** As after a kill: nothing of the page is left, the database is. */
async function again(): Promise<void> {
  await closeBook();
  await openBooks();
  await rebuildSettled();
}
/** Stops when so many facts are in. */
const stopAfter = (count: number) => {
  const stop = new AbortController();
  const onProgress = ({ step, done }: Progress): void => {
    if (step === 'taking' && done >= count) stop.abort();
  };
  return { signal: stop.signal, onProgress };
};

describe('a file of several chunks', () => {
  test('is more than three chunks, and comes in whole on an empty device', async () => {
    expect(book.rows.length).toBeGreaterThan(3 * chunkRows);
    const shown = await look(whole);
    expect(shown).toMatchObject({ newCount: book.rows.length, sameCount: 0, gaps: [], forks: [] });
    const steps = new Set<string>();
    const taken = await takeIn(shown, { onProgress: ({ step }) => steps.add(step) });
    expect(taken).toMatchObject({ kind: 'takenIn', newCount: book.rows.length });
    expect([...steps]).toEqual(['taking', 'lists']);
    await expectWhole();
  });

  test('stopped after every chunk, the mark stands; the same file goes on and nothing is taken twice', async () => {
    for (let done = chunkRows; done < book.rows.length; done += chunkRows) {
      await pickUp(newDevice());
      await openBooks();
      const stopped = await takeIn(await look(whole), stopAfter(done));
      expect(stopped).toEqual({ kind: 'cancelled', doneCount: done, totalCount: book.rows.length });
      expect(await mark()).toMatchObject({ doneCount: done, totalCount: book.rows.length });
      expect((await journal()).length).toBe(done);
      await again();
      expect(await mark()).toMatchObject({ doneCount: done });
      const rest = await look(whole);
      expect(rest).toMatchObject({ newCount: book.rows.length - done, sameCount: done });
      expect(await takeIn(rest)).toMatchObject({ kind: 'takenIn', newCount: book.rows.length - done });
      await expectWhole();
    }
  });

  test('another file is not begun meanwhile; a person may leave it at what came, and then it is', async () => {
    await takeIn(await look(whole), stopAfter(chunkRows));
    const other = fileOf(book.rows.slice(0, -1));
    expect(await takeIn(await look(other))).toEqual({ kind: 'refused', why: 'begun' });
    await leaveTakeIn();
    expect(await mark()).toBeUndefined();
    expect(await takeIn(await look(other))).toMatchObject({ kind: 'takenIn' });
    // The file that was left had one entry more: it is known of, and not here.
    const missed = { fromCount: book.rows.length, toCount: book.rows.length };
    expect((await theSession().db.meta.get('missing'))?.value).toMatchObject([missed]);
  });

  test('stopped before anything was put, nothing is there', async () => {
    const stop = new AbortController();
    stop.abort();
    expect(await lookInto(whole, { signal: stop.signal })).toMatchObject({ kind: 'refused', why: 'stopped' });
    const taken = await takeIn(await look(whole), { signal: stop.signal });
    expect(taken).toMatchObject({ kind: 'cancelled', doneCount: 0 });
    expect(bookState()).toEqual({ kind: 'none', which: 'book' });
  });

  test('into a book that holds part of it: the twice told is not taken, lists are as if folded from nothing', async () => {
    await takeIn(await look(fileOf(book.rows.slice(0, 700))));
    expect(await takeIn(await look(whole))).toMatchObject({ newCount: book.rows.length - 700 });
    await expectWhole();
    expect(await takeIn(await look(whole))).toMatchObject({ kind: 'takenIn', newCount: 0 });
    await expectWhole();
  });

  test('the later half first leaves a gap that is named and noted, and closes with the other half', async () => {
    const half = 1700;
    const later = await look(fileOf([...book.rows.slice(0, 1), ...book.rows.slice(half)]));
    expect(later.gaps).toEqual([{ writer: book.writer, fromCount: 2, toCount: half }]);
    await takeIn(later);
    expect((await theSession().db.meta.get('missing'))?.value).toMatchObject([{ fromCount: 2, toCount: half }]);
    await takeIn(await look(fileOf(book.rows.slice(0, half))));
    expect((await theSession().db.meta.get('missing'))?.value).toEqual([]);
    await expectWhole();
  });
});

describe('what a device does meanwhile', () => {
  const outcome = async (fault: Parameters<typeof withFault>[0]) => {
    await pickUp(newDevice());
    await openBooks();
    const shown = await look(whole);
    return withFault(fault, async () => takeIn(shown));
  };
  /** Requests are many: by prime steps through all of them. */
  const places = Array.from({ length: 8 }, (_, index) => 1 + index * 991);

  test.each([false, true])(
    'a connection lost, for ever: %j, at many requests: the same file goes on',
    async (forEver) => {
      const kinds: Record<string, number> = {};
      for (const at of places) {
        const { result } = await outcome({ at, forEver, error: lostConnection });
        kinds[result.kind] = (kinds[result.kind] ?? 0) + 1;
        await again();
        if (result.kind === 'takenIn') expect((await journal()).length).toBe(book.rows.length);
        const shown = await look(whole);
        expect(await takeIn(shown)).toMatchObject({ kind: 'takenIn', newCount: shown.newCount });
        await expectWhole();
      }
      console.info(`lost, for ever ${forEver}:`, kinds);
      expect(Object.values(kinds).reduce((sum, count) => sum + count)).toBe(places.length);
    },
    120_000,
  );

  test('a full disk: what came stays under the mark, and goes on when there is space', async () => {
    const at = 2 * chunkRows + 200;
    const { result, struck } = await outcome({ at, forEver: true, error: diskFull, changesOnly: true });
    expect({ result, struck }).toEqual({ result: { kind: 'failed', why: 'quota' }, struck: true });
    expect(await mark()).toMatchObject({ doneCount: 2 * chunkRows, totalCount: book.rows.length });
    expect((await journal()).length).toBe(2 * chunkRows);
    await again();
    expect(await takeIn(await look(whole))).toMatchObject({ kind: 'takenIn' });
    await expectWhole();
  });

  test('a new writer is drawn for a restored book, also when it was killed in the middle', async () => {
    await takeIn(await look(whole), stopAfter(chunkRows));
    const { writer } = theSession();
    await again();
    expect(theSession().writer).toBe(writer);
    expect(writer).not.toBe(book.writer);
  });

  test('a book of another firm refuses it, and nothing changes', async () => {
    await newBook({ firmName: 'Another', practice: false });
    const before = await journal();
    expect(await lookInto(whole)).toMatchObject({ kind: 'refused', why: 'otherBook' });
    expect(await journal()).toEqual(before);
  });
});

test('the rows of the file are the rows of the book it was made of', () => {
  expect([...derivedRows(book.rows).values()].sort(byKey)).toEqual(derived);
});
