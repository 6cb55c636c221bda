import { beforeEach, describe, expect, test } from 'vitest';
import { flushDraft, loadDraft, setDraft } from '#store/drafts.ts';
import { storageFailure } from '#store/failures.ts';
import { derivedRows } from '#store/lookup.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { diskFull, invalidState, lostConnection, withFault } from './faults.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let clock: TestClock;
let day: Library;
let one: ReturnType<typeof sampleOf>;

beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  one = sampleOf(day);
  await write(openingFacts(day));
  await write([one.prepared(entry())]);
  clock.forward(60_000);
  await write([one.putOn(entry())]);
  clock.forward(60_000);
});

const journal = () => theSession().db.journal.orderBy('id').toArray();

const sortedKeys = (rows: Iterable<{ key: string }>) => [...rows].sort((a, b) => (a.key < b.key ? -1 : 1));

/** The derived tables say the same as the journal does. */
async function expectDerivedEqual() {
  const held = await theSession().db.records.toArray();
  expect(sortedKeys(held)).toEqual(sortedKeys(derivedRows(await journal()).values()));
}

const typing = async () => {
  setDraft('typing', 'a few words');
  await flushDraft('typing');
};

describe('a connection that is lost', () => {
  for (const [name, error] of [
    ['UnknownError', lostConnection],
    ['InvalidStateError', invalidState],
  ] as const) {
    test(`${name} once, at every request in turn: reopened, tried once more, written once`, async () => {
      let struckCount = 0;
      for (let at = 1; at <= 7; at += 1) {
        clock.forward(60_000);
        await typing();
        const before = await journal();
        const { result, struck } = await withFault({ at, forEver: false, error }, () =>
          write([one.lookedAt(entry())], { draftKey: 'typing' }),
        );
        struckCount += struck ? 1 : 0;
        expect(result).toMatchObject({ kind: 'written' });
        expect(await journal()).toHaveLength(before.length + 1);
        expect(await loadDraft(theSession().db, 'typing')).toBeNull();
        await expectDerivedEqual();
      }
      expect(struckCount).toBeGreaterThanOrEqual(5);
    });

    test(`${name} for ever, from every request on: not written, and the draft is kept`, async () => {
      for (let at = 1; at <= 4; at += 1) {
        await typing();
        const before = await journal();
        const { result, struck } = await withFault({ at, forEver: true, error }, () =>
          write([one.lookedAt(entry())], { draftKey: 'typing' }),
        );
        expect(struck).toBe(true);
        expect(result).toEqual({ kind: 'failed', why: 'lost' });
        expect(await journal()).toEqual(before);
        expect(await loadDraft(theSession().db, 'typing')).toEqual({ value: 'a few words' });
      }
      expect(await write([one.lookedAt(entry())])).toMatchObject({ kind: 'written' });
    });
  }

  test('lost after the transaction was complete: the second try finds the facts and does not write them again', async () => {
    const { db } = theSession();
    const before = await journal();
    const transaction = db.transaction.bind(db) as (...args: unknown[]) => PromiseLike<unknown>;
    let times = 0;
    db.transaction = (async (...args: unknown[]) => {
      const result = await transaction(...args);
      times += 1;
      if (times === 1) throw lostConnection();
      return result;
    }) as unknown as typeof db.transaction;
    const outcome = await write([one.remark('Scaffold moved')(entry())]);
    expect(outcome).toMatchObject({ kind: 'written' });
    expect(await journal()).toHaveLength(before.length + 1);
  });
});

describe('a full disk', () => {
  test('gives up the derived rows first, writes the fact, and rebuilds them', async () => {
    await typing();
    const before = await journal();
    const { result, struck } = await withFault({ at: 1, forEver: false, error: diskFull, changesOnly: true }, () =>
      write([one.lookedAt(entry())], { draftKey: 'typing' }),
    );
    expect(struck).toBe(true);
    expect(result).toMatchObject({ kind: 'written' });
    expect(await journal()).toHaveLength(before.length + 1);
    await rebuildSettled();
    expect(bookState()).toMatchObject({ kind: 'open', rebuilding: null });
    await expectDerivedEqual();
  });

  test('that stays full: the answer is quota, journal and draft are as they were, and the lists come back with space', async () => {
    await typing();
    const before = await journal();
    const { result } = await withFault({ at: 1, forEver: true, error: diskFull, changesOnly: true }, async () => {
      const outcome = await write([one.lookedAt(entry())], { draftKey: 'typing' });
      await rebuildSettled();
      return outcome;
    });
    expect(result).toEqual({ kind: 'failed', why: 'quota' });
    expect(await journal()).toEqual(before);
    expect(await loadDraft(theSession().db, 'typing')).toEqual({ value: 'a few words' });
    await closeBook();
    await openBooks();
    await rebuildSettled();
    expect(bookState()).toMatchObject({ kind: 'open', rebuilding: null });
    await expectDerivedEqual();
    expect(await write([one.lookedAt(entry())])).toMatchObject({ kind: 'written' });
  });

  test('with the derived rows given up, a running pump is still not put on twice', async () => {
    const { db, which } = theSession();
    const other = sampleOf(day, undefined, library().personId);
    await write([other.prepared(entry())]);
    const { setDerivedComplete } = await import('#store/marks.ts');
    await db.records.clear();
    setDerivedComplete(which, false);
    expect(await write([other.putOn(entry())])).toMatchObject({ kind: 'refused' });
    const numbered = await write([sampleOf(day).prepared(entry())]);
    expect(numbered).toMatchObject({ kind: 'written' });
    const numbers = [...derivedRows(await journal()).values()].flatMap((row) =>
      'sampleNumber' in row.record ? [row.record.sampleNumber] : [],
    );
    expect(new Set(numbers).size).toBe(3);
  });
});

describe('errors as devices throw them', () => {
  const inside = (outer: string, inner: string): Error =>
    Object.assign(new Error('aborted'), { name: outer, inner: Object.assign(new Error('why'), { name: inner }) });

  test.each([
    [
      'quota inside an abort (measured in Chromium 156 with Dexie 4.4.7)',
      inside('AbortError', 'QuotaExceededError'),
      'quota',
    ],
    ['quota itself', diskFull(), 'quota'],
    ['a closed database', inside('DatabaseClosedError', 'UnknownError'), 'lost'],
    ['an abort without a reason', Object.assign(new Error('x'), { name: 'AbortError' }), 'unknown'],
    ['a bug of ours', new TypeError('undefined is not a function'), null],
  ])('%s', (_, error, expected) => {
    expect(storageFailure(error)).toBe(expected);
  });
});
