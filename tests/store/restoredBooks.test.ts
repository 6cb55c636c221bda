/**
 * Books with pictures, all different: backed up, wiped, restored, and each is the same book, by a hash that is not ours. 150 of them in
 * every run, 500 by BOOKS=500 as in the long run.
 */
import { createHash, randomInt } from 'node:crypto';
import Dexie from 'dexie';
import { expect, test } from 'vitest';
import type { Gap } from '#records/merge.ts';
import { BookDatabase, databaseNames, type FileRow, type JournalRow } from '#store/database.ts';
import { derivedEdition } from '#store/edition.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { derivedRows } from '#store/lookup.ts';
import { setHeldMark } from '#store/marks.ts';
import { closeBook, openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { bookState, theSession } from '#store/session.ts';
import { checkBackup, wipe } from '#store/wiping.ts';
import { newDevice, pickUp, type TestDevice, testClock } from './device.ts';
import { rowsIn } from './deviceCopy.ts';
import { makeBackup } from './handOvers.ts';
import { type VariedBook, variedBook } from './variedBook.ts';

const books = Number(process.env.BOOKS ?? 150);
const seed = Number(process.env.SEED ?? randomInt(2 ** 31));
console.info(`seed ${seed} (SEED=${seed} makes the same books again)`);

/** Entries in order of ids, then papers and pictures by hash with the hash of their bytes as they are now. */
function canonicalHash(device: TestDevice): string {
  const rows = rowsIn(device, databaseNames.book);
  const journal = [...((rows.get('journal') ?? []) as readonly JournalRow[])].sort((a, b) => (a.id < b.id ? -1 : 1));
  const files = [...((rows.get('files') ?? []) as readonly FileRow[])].sort((a, b) => (a.hash < b.hash ? -1 : 1));
  const hash = createHash('sha256');
  for (const { id, about, link, text } of journal) hash.update(`${id} ${about.join(',')} ${link} ${text}\n`);
  for (const { hash: name, type, bytes } of files)
    hash.update(`${name} ${type} ${createHash('sha256').update(bytes).digest('hex')}\n`);
  return hash.digest('hex');
}

async function seeded({ bookId, writers, rows, files }: VariedBook): Promise<TestDevice> {
  const device = newDevice();
  await pickUp(device);
  const db = new BookDatabase(databaseNames.book);
  await db.open();
  await db.journal.bulkAdd([...rows]);
  await db.files.bulkAdd([...files]);
  await db.records.bulkAdd([...derivedRows(rows).values()]);
  const writer = writers[0] ?? '';
  await db.meta.bulkPut([
    { key: 'bookId', value: bookId },
    { key: 'writer', value: writer },
    { key: 'prefix', value: '47' },
    { key: 'derived', value: derivedEdition },
  ]);
  const lastSequence = rows.filter(({ id }) => id.startsWith(writer)).length;
  setHeldMark('book', { bookId, writer, lastSequence });
  db.close();
  await openBooks();
  expect(bookState()).toMatchObject({ kind: 'open', bookId });
  return device;
}

/** As the page does it; where a pump still runs the page refuses, and the browser's own emptying stands in for it. */
async function wiped(blob: Blob): Promise<'wiped' | 'evicted'> {
  const checked = await checkBackup(blob);
  if (checked.kind !== 'holdsAll') throw new Error(JSON.stringify(checked));
  const { kind } = await wipe(checked);
  if (kind === 'wiped') return kind;
  expect(kind).toBe('inTheWay');
  await closeBook();
  await Dexie.delete(databaseNames.book);
  return 'evicted';
}

const byKey = (a: { key: string }, b: { key: string }): number => (a.key < b.key ? -1 : 1);
const gapsOf = (ranges: readonly Gap[]): readonly string[] =>
  ranges.map(({ writer, fromCount, toCount }) => `${writer} ${fromCount} ${toCount}`).sort();

test(`${books} books come back the same`, async () => {
  testClock('2026-11-25T11:00:00.000Z');
  const met = new Map<string, number>();
  const count = (name: string): void => void met.set(name, (met.get(name) ?? 0) + 1);
  for (let at = 0; at < books; at += 1) {
    const book = variedBook(seed + at);
    const what = `book ${at} of seed ${seed}`;
    for (const name of book.holds) count(name);
    const device = await seeded(book);
    const before = canonicalHash(device);
    const { blob } = await makeBackup();
    count(await wiped(blob));
    expect(rowsIn(device, databaseNames.book).size, what).toBe(0);
    await openBooks();
    const looked = await lookInto(blob);
    if (looked.kind !== 'preview') throw new Error(`${what}: ${JSON.stringify(looked)}`);
    expect(await takeIn(looked), what).toMatchObject({ kind: 'takenIn', newCount: book.rows.length });
    await rebuildSettled();
    expect(canonicalHash(device), what).toBe(before);
    const { db, writer, bookId } = theSession();
    expect(bookId, what).toBe(book.bookId);
    expect(book.writers, what).not.toContain(writer);
    expect(gapsOf(((await db.meta.get('missing'))?.value ?? []) as Gap[]), what).toEqual([...book.missing].sort());
    expect((await db.records.toArray()).sort(byKey), what).toEqual([...derivedRows(book.rows).values()].sort(byKey));
  }
  console.info('books with', Object.fromEntries([...met].sort()));
  for (const name of ['picture', 'paper', 'correction', 'void', 'result', 'unknown kind', 'gap', 'several writers'])
    expect(met.get(name) ?? 0, name).toBeGreaterThan(books / 10);
  for (const name of ['wiped', 'evicted', 'more files than go in at once'])
    expect(met.get(name) ?? 0, name).toBeGreaterThan(books / 25);
}, 120_000);
