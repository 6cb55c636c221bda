/**
 * What another device is known to hold and this one does not: it is missing here, also where nothing later of that writer is here. And
 * what changed in the book between looking into a file and taking it in.
 */
import { beforeEach, describe, expect, test } from 'vitest';
import type { MissingEntries } from '#records/book.ts';
import { link, writerOf } from '#records/chain.ts';
import { writeBookText } from '#records/fileFormat.ts';
import type { JournalRow } from '#store/database.ts';
import type { Preview, Progress, TakeInMark } from '#store/handOver/handOver.ts';
import { takeInSteps } from '#store/handOver/limits.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { leaveTakeIn, noteNothingNew, takeIn } from '#store/handOver/taking.ts';
import { derivedRows } from '#store/lookup.ts';
import { closeBook, openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { blank, chainOf } from './chains.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { generateBook } from './generateBook.ts';
import { entry, library } from './scenario.ts';

const { chunkRows } = takeInSteps;
const book = generateBook({ samples: 420, seed: 11 });
const other = chainOf('zzzzzzzzzzz1', blank(5));
const about = { bookId: book.bookId, practice: false, writtenBy: '0.1.0' };
const headOf = (row: JournalRow | undefined) => ({ factId: row?.id ?? '', link: row?.link ?? '' });
const from = { writer: 'a00000000001', deviceName: null, madeAt: '2026-11-24T18:00:00.000Z' };
type Told = Partial<Parameters<typeof writeBookText>[0]>;
const textOf = (rows: readonly JournalRow[], told: Told = {}): string =>
  writeBookText({ ...about, ...told }, [...rows]);
const fileOf = (rows: readonly JournalRow[], told: Told = {}): Blob => new Blob([textOf(rows, told)]);
const small = book.rows.slice(0, 30);

beforeEach(async () => {
  testClock('2026-11-25T11:00:00.000Z');
  await pickUp(newDevice());
  await openBooks();
});

async function look(file: Blob, salvage = false): Promise<Preview> {
  const looked = await lookInto(file, { salvage });
  if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
  return looked;
}
const take = async (file: Blob, salvage = false) => takeIn(await look(file, salvage));
const kept = async (key: string) => (await theSession().db.meta.get(key))?.value;
const missing = async () => (await kept('missing')) as readonly MissingEntries[];
const stopAfter = (count: number) => {
  const stop = new AbortController();
  const onProgress = ({ step, done }: Progress): void => {
    if (step === 'taking' && done >= count) stop.abort();
  };
  return { signal: stop.signal, onProgress };
};
const last = book.rows.length;
const byKey = (a: { key: string }, b: { key: string }): number => (a.key < b.key ? -1 : 1);

describe('is missing until it comes', () => {
  test('the rest of a file that a person left half taken in, also after other files', async () => {
    await takeIn(await look(fileOf(book.rows)), stopAfter(chunkRows));
    await leaveTakeIn();
    const rest = { writer: book.writer, fromCount: chunkRows + 1, toCount: last };
    expect(await missing()).toMatchObject([rest]);
    // No day before the file was chosen is out of its reach.
    expect((await missing())[0]?.untilOn.localeCompare('2026-11-25')).toBeGreaterThanOrEqual(0);
    expect(await take(fileOf(other))).toMatchObject({ kind: 'takenIn' });
    expect(await missing()).toMatchObject([rest]);
    expect(await take(fileOf(book.rows))).toMatchObject({ kind: 'takenIn' });
    expect(await missing()).toEqual([]);
  });

  test('a writer of whom nothing had come when a person left it', async () => {
    await takeIn(await look(fileOf([...book.rows, ...other])), stopAfter(chunkRows));
    await leaveTakeIn();
    expect(await missing()).toContainEqual(expect.objectContaining({ writer: writerOf(other[0]?.id ?? '') }));
  });

  test('what was cut off a damaged file whose rest was taken', async () => {
    const cut = new Blob([textOf(small).split('\n').slice(0, 21).join('\n'), '\n']);
    const shown = await look(cut, true);
    expect(shown).toMatchObject({ salvaged: true, newCount: 20 });
    expect(shown.gaps).toEqual([{ writer: book.writer, fromCount: 21, toCount: 30 }]);
    await takeIn(shown);
    expect(await missing()).toMatchObject([{ fromCount: 21, toCount: 30 }]);
  });

  test('an entry that no journal takes, at the end of its writer', async () => {
    const poison = '"body":{"__proto__":1,';
    const before = small.slice(0, -1);
    const text = (small.at(-1)?.text ?? '').replace('"body":{', poison);
    const row = { id: small.at(-1)?.id ?? '', about: [], text, link: link(before.at(-1)?.link ?? '', text) };
    const shown = await look(fileOf([...before, row]));
    expect(shown).toMatchObject({ unreadableCount: 1, newCount: 29 });
    await takeIn(shown);
    expect(await missing()).toMatchObject([{ fromCount: 30, toCount: 30 }]);
  });

  test('what a file made for a third device presupposes', async () => {
    await take(fileOf(small));
    const shown = await look(
      fileOf(book.rows.slice(30, 32), {
        ...{ part: 'lacking', from, since: [headOf(small.at(-1)), headOf(other[4])] },
        holds: [headOf(book.rows[31]), headOf(other[4])],
      }),
    );
    const lacking = { writer: writerOf(other[0]?.id ?? ''), fromCount: 1, toCount: 5 };
    expect(shown.gaps).toEqual([lacking]);
    await takeIn(shown);
    expect(await missing()).toMatchObject([lacking]);
    await take(fileOf(other));
    expect(await missing()).toEqual([]);
  });

  test('what a file tells that brings nothing new', async () => {
    await take(fileOf(small));
    const holds = [headOf(small.at(-1)), headOf(other[2])];
    const shown = await look(fileOf(small, { part: 'lacking', from, since: [], holds }));
    expect(shown).toMatchObject({ newCount: 0 });
    await noteNothingNew(shown);
    expect(await missing()).toMatchObject([{ fromCount: 1, toCount: 3 }]);
  });
});

describe('between looking and taking in', () => {
  test('a gap that another file made is not forgotten', async () => {
    await take(fileOf(small));
    const [first, second] = [await look(fileOf(book.rows.slice(30, 40))), await look(fileOf(other.slice(3)))];
    await takeIn(second);
    expect(await missing()).toMatchObject([{ fromCount: 1, toCount: 3 }]);
    expect(await takeIn(first)).toEqual({ kind: 'refused', why: 'stale' });
    expect(await take(fileOf(book.rows.slice(30, 40)))).toMatchObject({ kind: 'takenIn', newCount: 10 });
    expect(await missing()).toMatchObject([{ fromCount: 1, toCount: 3 }]);
  });

  test('an id that came with other words is refused, and nothing of the file is taken', async () => {
    await take(fileOf(small));
    const twin = chainOf('zzzzzzzzzzz1', [...blank(2), { body: { oiled: 'twice' } }, ...blank(2)]);
    const [first, second] = [await look(fileOf(other)), await look(fileOf(twin.slice(0, 3)))];
    await takeIn(second);
    const before = await theSession().db.journal.toArray();
    expect(await takeIn(first)).toEqual({ kind: 'refused', why: 'stale' });
    expect(await theSession().db.journal.toArray()).toEqual(before);
    expect((await look(fileOf(other))).forks).toEqual([other[2]?.id]);
  });
});

test('entries of our own writer that we never wrote: another device writes as this one, so a new writer goes on', async () => {
  const shelf = library();
  await take(fileOf(small));
  const { writer } = theSession();
  expect(await write([shelf.siteAdded(entry())])).toMatchObject({ kind: 'written' });
  const own = await theSession().db.journal.where('id').startsWith(writer).toArray();
  const copied = chainOf(writer, blank(1));
  expect(own.length).toBe(1);
  // The twin: the same first entry, and one more.
  const next = (copied[0]?.text ?? '').replace(`${writer}.00000001`, `${writer}.00000002`);
  const more = {
    id: `${writer}.00000002`,
    about: ['site:s00000000001'],
    text: next,
    link: link(own[0]?.link ?? '', next),
  };
  expect(await take(fileOf([...own, more]))).toMatchObject({ kind: 'takenIn', newCount: 1 });
  expect(theSession().writer).not.toBe(writer);
  const after = await write([shelf.pumpAdded(entry())]);
  expect(after).toMatchObject({ kind: 'written', factIds: [`${theSession().writer}.00000001`] });
  const kept = theSession().writer;
  await closeBook();
  await openBooks();
  expect(theSession().writer).toBe(kept);
});

test('the rest of a large file is small, and its mark stays until every list is whole', async () => {
  const places: string[] = [];
  await takeIn(await look(fileOf(book.rows)), stopAfter(Math.floor(last / chunkRows) * chunkRows));
  await rebuildSettled();
  // As after a kill before the lists were made.
  await theSession().db.meta.delete('derived');
  await theSession().db.records.clear();
  const mark = (await kept('takeIn')) as TakeInMark;
  expect(mark.totalCount - mark.doneCount).toBeLessThan(chunkRows);
  const { meta } = theSession().db;
  meta.hook('creating', (key) => void places.push(`put ${key}`));
  meta.hook('deleting', (key) => void places.push(`gone ${key}`));
  expect(await take(fileOf(book.rows))).toMatchObject({ kind: 'takenIn' });
  expect(places.indexOf('gone takeIn')).toBeGreaterThan(places.indexOf('put derived'));
  expect(places).toContain('put derived');
});

test('left in the middle, the mark stays until every list is whole', async () => {
  const places: string[] = [];
  await takeIn(await look(fileOf(book.rows)), stopAfter(chunkRows));
  await rebuildSettled();
  const whole = await theSession().db.records.toArray();
  // Of what was taken, and of nothing else that stands in the file.
  expect(whole).toEqual([...derivedRows(book.rows.slice(0, chunkRows)).values()].sort(byKey));
  await theSession().db.meta.delete('derived');
  await theSession().db.records.clear();
  const { meta } = theSession().db;
  meta.hook('creating', (key) => void places.push(`put ${key}`));
  meta.hook('deleting', (key) => void places.push(`gone ${key}`));
  await leaveTakeIn();
  expect(places.indexOf('gone takeIn')).toBeGreaterThan(places.indexOf('put derived'));
  expect(await theSession().db.records.toArray()).toEqual(whole);
});
