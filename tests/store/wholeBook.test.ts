/** The whole book kept in memory: after a write what did not change is the same object, and it equals the book read from nothing. */
import { beforeEach, describe, expect, test } from 'vitest';
import { newBook } from '#store/opening.ts';
import { rebuild } from '#store/rebuild.ts';
import { theSession } from '#store/session.ts';
import { forgetWholeBook, wholeBook } from '#store/wholeBook.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let day: Library;
beforeEach(async () => {
  testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  expect(await write(openingFacts(day))).toMatchObject({ kind: 'written' });
});

describe('the whole book', () => {
  test('is read once, and the same until something is written', async () => {
    const { db } = theSession();
    const first = await wholeBook(db);
    expect(first.sites.get(day.siteId)?.name).toBe('Public library, reading room');
    expect(await wholeBook(db)).toBe(first);
  });

  test('after a write only what the facts name is another object; the rest equals a fresh reading', async () => {
    const { db } = theSession();
    const before = await wholeBook(db);
    const one = sampleOf(day);
    expect(await write([one.prepared(entry(day.personId))])).toMatchObject({ kind: 'written' });
    const after = await wholeBook(db);
    expect(after.samples.has(one.sampleId)).toBe(true);
    expect(before.samples.has(one.sampleId)).toBe(false);
    expect(after.pumps.get(day.pumpId)).toBe(before.pumps.get(day.pumpId));
    expect(after.people.get(day.personId)).toBe(before.people.get(day.personId));
    forgetWholeBook(db);
    expect(await wholeBook(db)).toEqual(after);
  });

  test('a rebuild of the lists leaves it equal', async () => {
    const { db } = theSession();
    const before = await wholeBook(db);
    await rebuild(theSession());
    forgetWholeBook(db);
    expect(await wholeBook(db)).toEqual(before);
  });

  test('two readers at once share one book', async () => {
    const { db } = theSession();
    const [a, b] = await Promise.all([wholeBook(db), wholeBook(db)]);
    expect(a).toBe(b);
  });
});
