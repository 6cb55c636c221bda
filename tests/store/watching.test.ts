// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { SampleRecord } from '#records/book.ts';
import { forgetRun } from '#store/clock.ts';
import { setDraft } from '#store/drafts.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { oneRecord } from '#store/reading.ts';
import { readTwice } from '#store/reopening.ts';
import { bookState, theSession } from '#store/session.ts';
import { unwatchPage } from '#store/watching.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { lostConnection, withFault } from './faults.ts';
import { entry, library, openingFacts, sampleOf } from './scenario.ts';

let clock: TestClock;
beforeEach(async () => {
  forgetRun();
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  await closeBook();
  await openBooks();
});
afterEach(unwatchPage);

const comeBack = (): void => void window.dispatchEvent(new Event('focus'));

describe('a page that is shown again', () => {
  test('notices within two seconds that its database was emptied', async () => {
    const { db } = theSession();
    for (const table of db.tables) await table.clear();
    comeBack();
    await vi.waitFor(() => expect(bookState()).toEqual({ kind: 'evicted', which: 'book' }), { timeout: 2000 });
  });

  test('writes a clock set back on the sample that runs', async () => {
    const day = library();
    const one = sampleOf(day);
    await write(openingFacts(day));
    await write([one.prepared(entry())]);
    clock.forward(60_000);
    await write([one.putOn(entry())]);
    clock.atMs -= 3_600_000;
    comeBack();
    const { db } = theSession();
    await vi.waitFor(async () => {
      const sample = (await oneRecord(db, `sample:${one.sampleId}`)) as SampleRecord;
      expect(sample.clockDoubts.map(({ kind }) => kind)).toEqual(['setBack']);
    });
  });

  test('goes on with a connection that was lost meanwhile', async () => {
    const { db } = theSession();
    const { result, struck } = await withFault({ at: 1, forEver: false, error: lostConnection }, () =>
      readTwice(db, async () => db.journal.count()),
    );
    expect(struck).toBe(true);
    expect(result).toBe(1);
    expect(bookState()).toMatchObject({ kind: 'open' });
  });

  test('a page that is left writes down what is being typed', async () => {
    const { db } = theSession();
    setDraft('shift/open', 'half');
    window.dispatchEvent(new Event('pagehide'));
    await vi.waitFor(async () => expect((await db.drafts.toArray()).map(({ value }) => value)).toEqual(['half']), {
      timeout: 200,
      interval: 5,
    });
  });
});
