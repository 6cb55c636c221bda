/** Papers and pictures are not held while a file is looked into, and go in by their own transactions; a bad one harms no other. */
import { strToU8, zipSync } from 'fflate';
import { beforeEach, expect, test } from 'vitest';
import { writeBookText } from '#records/fileFormat.ts';
import { hashOf } from '#store/files.ts';
import { takeInLimits } from '#store/handOver/limits.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { openBooks } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { zip } from '../hostile/zipMaking.ts';
import { processorMs } from '../house/processorTime.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { generateBook } from './generateBook.ts';

const book = generateBook({ samples: 4, seed: 3 });
const text = writeBookText({ bookId: book.bookId, practice: false, writtenBy: '0.1.0' }, [...book.rows]);
const pictures = Array.from({ length: 30 }, (_, index) =>
  Uint8Array.from({ length: 290_000 }, (_, at) => (at * 7 + index) % 256),
);
const named = Object.fromEntries(pictures.map((bytes) => [`files/${hashOf(bytes)}.jpg`, bytes]));
const blobOf = (entries: Record<string, Uint8Array>): Blob => new Blob([zipSync(entries) as Uint8Array<ArrayBuffer>]);

beforeEach(async () => {
  testClock();
  await pickUp(newDevice());
  await openBooks();
});

test('thirty pictures come in byte for byte, and a changed one is left out and told', async () => {
  const [first = ''] = Object.keys(named);
  const file = blobOf({ 'book.txt': strToU8(text), ...named, [first]: strToU8('another picture') });
  const looked = await lookInto(file);
  expect(looked).toMatchObject({ kind: 'preview', filesCount: 29, filesDamagedCount: 1, newCount: book.rows.length });
  if (looked.kind !== 'preview') return;
  expect(await takeIn(looked)).toMatchObject({ kind: 'takenIn', filesCount: 29 });
  const rows = await theSession().db.files.toArray();
  expect(rows.map(({ hash, bytes }) => hash === hashOf(bytes) && bytes.length === 290_000)).toEqual(
    Array(29).fill(true),
  );
  expect(await theSession().db.meta.get('takeIn')).toBeUndefined();
  expect(await lookInto(file)).toMatchObject({ newCount: 0, sameCount: book.rows.length });
});

test('an archive whose end is gone is refused, says how much is left, and gives it up when asked', async () => {
  const whole = blobOf({ 'book.txt': strToU8(text), ...named });
  const cut = whole.slice(0, whole.size - 5000);
  expect(await lookInto(cut)).toEqual({ kind: 'refused', why: 'damaged', intactCount: book.rows.length });
  expect(await lookInto(cut, { salvage: true })).toMatchObject({ kind: 'preview', newCount: book.rows.length });
});

test('too many entries, and a line without an end, are refused soon', async () => {
  const many = Object.fromEntries(
    Array.from({ length: takeInLimits.entriesCount }, (_, at) => [`${at}.txt`, new Uint8Array()]),
  );
  const spentMs = processorMs();
  expect(await lookInto(blobOf({ 'book.txt': strToU8(text), ...many }))).toMatchObject({ why: 'tooManyEntries' });
  const endless = zip([{ name: 'book.txt', bytes: new Uint8Array(140_000_000) }]);
  expect(await lookInto(endless)).toMatchObject({ why: 'notABackup' });
  const bomb = zip([{ name: 'book.txt', bytes: new Uint8Array(takeInLimits.bookTextBytes + 1) }]);
  expect(await lookInto(bomb)).toMatchObject({ why: 'tooLarge' });
  expect(spentMs()).toBeLessThan(10_000);
}, 40_000);
