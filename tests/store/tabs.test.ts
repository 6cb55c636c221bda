import { beforeEach, describe, expect, test, vi } from 'vitest';
import { sequenceOf, verifyChain } from '#records/chain.ts';
import type * as Opening from '#store/opening.ts';
import { newBook } from '#store/opening.ts';
import type * as SessionFile from '#store/session.ts';
import { theSession } from '#store/session.ts';
import type * as Write from '#store/write.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let clock: TestClock;
let day: Library;

beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await write(openingFacts(day));
});

/** A second tab: the modules loaded anew, with a connection of their own to the same database. */
async function secondTab() {
  vi.resetModules();
  const device = await import('#store/device.ts');
  device.setPorts({ wallMs: () => clock.atMs, monotonicMs: () => clock.monotonicMs });
  const opening: typeof Opening = await import('#store/opening.ts');
  const session: typeof SessionFile = await import('#store/session.ts');
  const writing: typeof Write = await import('#store/write.ts');
  await opening.openBooks();
  return { write: writing.write, session: session.theSession(), bookState: session.bookState };
}

describe('two tabs', () => {
  test('one pump put on twice, at the same moment on two workers: one is written, one refused', async () => {
    const one = sampleOf(day);
    const other = sampleOf(day, undefined, library().personId);
    await write([one.prepared(entry()), other.prepared(entry())]);
    const tab = await secondTab();
    expect(tab.session.db).not.toBe(theSession().db);
    clock.forward(60_000);
    const outcomes = await Promise.all([write([one.putOn(entry())]), tab.write([other.putOn(entry())])]);
    expect(outcomes.map(({ kind }) => kind).sort()).toEqual(['refused', 'written']);
    const refused = outcomes.find(({ kind }) => kind === 'refused');
    expect(refused).toMatchObject({ refusals: [{ key: 'pumpRunningElsewhere' }] });
  });

  test('200 appends from two connections: one chain, no fork, no hole', async () => {
    const one = sampleOf(day);
    await write([one.prepared(entry())]);
    const tab = await secondTab();
    expect(tab.session.writer).toBe(theSession().writer);
    const before = await theSession().db.journal.count();
    const appendMany = async (name: string, by: typeof write): Promise<number> => {
      let count = 0;
      for (let index = 0; index < 100; index += 1) {
        const outcome = await by([one.remark(`${name} ${index}`)(entry())]);
        count += outcome.kind === 'written' ? 1 : 0;
      }
      return count;
    };
    const counts = await Promise.all([appendMany('here', write), appendMany('there', tab.write)]);
    expect(counts).toEqual([100, 100]);
    const rows = await theSession().db.journal.orderBy('id').toArray();
    expect(rows).toHaveLength(before + 200);
    expect(rows.map(({ id }) => sequenceOf(id))).toEqual(rows.map((_, index) => index + 1));
    expect(verifyChain(rows)).toBeNull();
    const texts = rows.map(({ text }) => text).join('\n');
    expect(texts.indexOf('there 0')).toBeLessThan(texts.indexOf('here 99'));
    expect(texts.indexOf('here 0')).toBeLessThan(texts.indexOf('there 99'));
  }, 60_000);

  test('a deleted database closes the book in every tab and says so', async () => {
    const tab = await secondTab();
    const { default: Dexie } = await import('dexie');
    await Dexie.delete('fullshift-book');
    expect(tab.bookState()).toMatchObject({ kind: 'failed', why: 'closedElsewhere' });
  });
});
