/** A large file: looked into in a small heap, and taken into a filled book without reading that book over and over. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { writeBookText } from '#records/fileFormat.ts';
import type { JournalRow } from '#store/database.ts';
import type { Preview } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { generateBook } from './generateBook.ts';

const heapMB = 300;
const textOf = (bookId: string, rows: readonly JournalRow[]): string =>
  writeBookText({ bookId, practice: false, writtenBy: '0.1.0' }, [...rows]);

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

test(`100,000 facts are looked into with a heap of ${heapMB} MB`, () => {
  const { bookId, rows } = generateBook({ samples: 12_500, seed: 3 });
  expect(rows.length).toBeGreaterThan(100_000);
  const folder = mkdtempSync(join(tmpdir(), 'look'));
  try {
    const path = join(folder, 'book.txt');
    writeFileSync(path, textOf(bookId, rows));
    const args = [`--max-old-space-size=${heapMB}`, '--import', 'tsx', 'tests/store/lookChild.ts', path];
    const said = JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' })) as { maxRssMB: number };
    console.info(`looking into ${rows.length} facts: ${said.maxRssMB} MB in all`);
    expect(said).toMatchObject({ kind: 'preview', newCount: rows.length });
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 120_000);

test('a large file into a filled book reads of it only what stands beside the file', async () => {
  const { bookId, rows } = generateBook({ samples: 900, seed: 4 });
  const held = rows.slice(0, Math.floor(rows.length / 2));
  await takeIn(await look(new Blob([textOf(bookId, held)])));
  await rebuildSettled();
  const fresh = rows.slice(held.length);
  const freshKeys = new Set(fresh.flatMap(({ about }) => about));
  const touched = held.filter(({ about }) => about.some((key) => freshKeys.has(key)));

  // The news alone: what is held of the same writer is read once, as keys.
  const looking = await counting(() => look(new Blob([textOf(bookId, fresh)])));
  const taking = await counting(() => takeIn(looking.result));
  console.info(
    `${held.length} held, ${fresh.length} new about ${freshKeys.size} records, ${touched.length} held about them;`,
    `look: ${looking.requests.length} requests, ${looking.rows} rows; take: ${taking.requests.length}, ${taking.rows}`,
  );
  expect(taking.result).toMatchObject({ kind: 'takenIn', newCount: fresh.length });
  expect(looking.rows).toBeLessThan(held.length + touched.length + 500);
  // Each touched record's facts once, and whether what is put was there.
  expect(taking.rows).toBeLessThan(touched.length + 1.1 * fresh.length + 200);
  const reads = taking.requests.filter((name) => !/\.(put|add)$/.test(name)).length;
  expect(reads).toBeLessThan(freshKeys.size + fresh.length / 100 + 200);
  expect(looking.requests.length).toBeLessThan(freshKeys.size + fresh.length / 100 + 300);
}, 60_000);
