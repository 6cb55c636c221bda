import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { verifyChain } from '#records/chain.ts';
import type { NewFact } from '#records/fact.ts';
import type { JournalRow } from '#store/database.ts';
import { newId } from '#store/device.ts';
import { derivedRows } from '#store/lookup.ts';
import { newFact } from '#store/newFact.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { rebuild, rebuildSettled } from '#store/rebuild.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { generateBook } from './generateBook.ts';
import { entry, flowCheckOf, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let clock: TestClock;
beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
});

const byKey = (a: { key: string }, b: { key: string }): number => (a.key < b.key ? -1 : 1);
const derived = async () => (await theSession().db.records.toArray()).sort(byKey);
const journal = () => theSession().db.journal.orderBy('id').toArray();
const fromJournal = async () => [...derivedRows(await journal()).values()].sort(byKey);

type Sample = ReturnType<typeof sampleOf>;

const inOrder = (one: Sample) => [one.prepared, one.putOn, one.lookedAt, one.stopped, one.sealed];

/** Acts that may come at any time; some will be refused. */
const atAnyTime = (day: Library, one: Sample) => [
  one.putOn,
  one.stopped,
  one.remark('Wind from the west'),
  flowCheckOf(day, 'between', 2.1),
  () => newFact('mishapNoted.v1', { sampleId: one.sampleId, mishap: 'wet', remark: null }, entry()),
  () => newFact('sampleVoided.v1', { sampleId: one.sampleId }, { ...entry(), why: 'Dropped' }),
];

/** A walk: three samples, each act either the next in order of its sample or one that may come at any time. */
function walker(day: Library) {
  const samples = [0, 1, 2].map(() => ({ one: sampleOf({ ...day, pumpId: newId() }, newId(), newId()), done: 0 }));
  return ({ which, next, other }: { which: number; next: boolean; other: number }): NewFact => {
    const walked = samples[which] as (typeof samples)[number];
    const order = inOrder(walked.one);
    const act = next ? order[walked.done] : undefined;
    if (act !== undefined) walked.done += 1;
    return (act ?? (atAnyTime(day, walked.one)[other] as (typeof order)[number]))(entry());
  };
}

const step = fc.record({ which: fc.nat(2), next: fc.nat(3).map((n) => n > 0), other: fc.nat(5) });

describe('rebuilt derived rows', () => {
  test('equal the incremental ones, whatever was written in whatever order', async () => {
    const seen: Record<string, number> = { written: 0, refused: 0, sampleVoided: 0, cassetteSealed: 0, mishapNoted: 0 };
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 10, maxLength: 40 }), async (steps) => {
        const day = library();
        await write(openingFacts(day));
        const walk = walker(day);
        for (const one of steps) {
          clock.forward(60_000);
          const fact = walk(one);
          const outcome = await write([fact]);
          for (const name of [outcome.kind, ...(outcome.kind === 'written' ? [fact.kind.slice(0, -3)] : [])]) {
            seen[name] = (seen[name] ?? 0) + 1;
          }
        }
        const incremental = await derived();
        expect(await fromJournal()).toEqual(incremental);
        await rebuild(theSession());
        expect(await derived()).toEqual(incremental);
        expect(verifyChain(await journal())).toBeNull();
      }),
      { numRuns: 25, seed: 20261125 },
    );
    console.info('rebuilt equals incremental, seed 20261125:', seen);
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(5);
  }, 60_000);

  test('are dropped and rebuilt when their edition is another one', async () => {
    await write(openingFacts(library()));
    const right = await derived();
    const { db } = theSession();
    await db.meta.put({ key: 'derived', value: 'an older edition' });
    await db.records.clear();
    await db.records.put({
      key: 'person:000000000000',
      kind: 'person',
      sort: 'x',
      links: ['register'],
      record: {} as never,
    });
    await closeBook();
    await openBooks();
    await rebuildSettled();
    expect(bookState()).toMatchObject({ kind: 'open', rebuilding: null });
    expect(await derived()).toEqual(right);
  });

  test('a rebuild that was broken off starts again at the next opening', async () => {
    await write(openingFacts(library()));
    const right = await derived();
    const { db } = theSession();
    await db.meta.delete('derived');
    await db.records.delete(right[0]?.key ?? '');
    await closeBook();
    await openBooks();
    await rebuildSettled();
    expect(await derived()).toEqual(right);
  });

  test('writes that come in while a rebuild runs are in the rows afterwards', async () => {
    const book = generateBook({ samples: 120, seed: 5 });
    const { db } = theSession();
    await db.journal.bulkAdd([...book.rows]);
    const day = library();
    const running = rebuild(theSession());
    const outcome = await write(openingFacts(day));
    await running;
    expect(outcome).toMatchObject({ kind: 'written' });
    expect(await derived()).toEqual(await fromJournal());
  });
});

describe('a row that can no longer be read', () => {
  test.each(['not json at all', '{"id":"x"}', ''])(
    '%j: kept as it is, left out aloud, and the app starts',
    async (text) => {
      const day = library();
      const one = sampleOf(day);
      await write(openingFacts(day));
      await write([one.prepared(entry())]);
      clock.forward(60_000);
      await write([one.remark('Scaffold moved')(entry())]);
      const { db } = theSession();
      const last = (await journal()).at(-1) as JournalRow;
      await db.journal.put({ ...last, text });
      await db.meta.delete('derived');
      await closeBook();
      await openBooks();
      await rebuildSettled();
      expect(bookState()).toMatchObject({ kind: 'open', unreadable: [last.id] });
      const row = await theSession().db.records.get(`sample:${one.sampleId}`);
      expect(row?.record.notUnderstood).toEqual([last.id]);
      clock.forward(60_000);
      expect(await write([one.putOn(entry())])).toMatchObject({ kind: 'written' });
      expect((await journal()).find(({ id }) => id === last.id)?.text).toBe(text);
    },
  );
});
