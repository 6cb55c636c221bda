/**
 * The office's browser is killed in the middle of taking a large file in: what came so far is there and whole, it is said to be half, and
 * the same file goes on. The book that must lie there is the one that the file was made of.
 */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { writeBookText } from '#records/fileFormat.ts';
import { generateBook } from '#tests/store/generateBook.ts';
import { en as start } from '#words/start.ts';
import { en as taking } from '#words/takeIn.ts';
import { readDisk, tornIn } from './bookOnDisk.ts';
import { linesOf, lookInto, takeIn } from './exchangeSteps.ts';
import { choose, desk, load, type Notebook, newShelf, openNotebook, says, tap } from './notebookSteps.ts';
import { startPreview } from './preview.ts';
import { dropProfile } from './realBrowser.ts';

const out = join('tests', 'out', 'half-taken');

/** So many facts stand under the mark of the file that is being taken in; null: no such mark. */
const doneCount = ({ page }: Notebook): Promise<number | null> =>
  page.evaluate(async () => {
    if (!(await indexedDB.databases()).some(({ name }) => name === 'fullshift-book')) return null;
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open('fullshift-book');
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const asked = db.transaction('meta').objectStore('meta').get('takeIn');
    const row = await new Promise<{ value?: { doneCount: number } } | undefined>((resolve) => {
      asked.onsuccess = () => resolve(asked.result);
    });
    db.close();
    return row?.value?.doneCount ?? null;
  });

async function untilHalf(notebook: Notebook, least: number): Promise<void> {
  const end = Date.now() + 30_000;
  while (((await doneCount(notebook)) ?? 0) < least) {
    if (Date.now() > end) throw new Error('the file was never half taken in');
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

test('a browser killed while a large file is taken in: a whole part is there, said to be half, and the same file goes on', async () => {
  test.setTimeout(180_000);
  const book = generateBook({ samples: 1_000, seed: 11 });
  const preview = await startPreview(4634);
  const shelf = newShelf(preview.address, '2026-10-06', out, desk);
  const path = join(out, 'book.txt');
  writeFileSync(path, writeBookText({ bookId: book.bookId, practice: false, writtenBy: '0.1.0' }, [...book.rows]));
  const expected = book.rows.map(({ link, text }) => `${link} ${text}`);
  let office = await openNotebook(shelf, '09:00');
  try {
    await office.page.goto(office.address);
    await choose(office, new RegExp(`^${start.choices.backup.label}`));
    await office.page.getByLabel(start.file).setInputFiles(path);
    await tap(office, start.lookInto);
    await tap(office, start.takeIn);
    await untilHalf(office, 2_000);
    office = await office.restart();

    await load(office, '/take-in');
    await says(office, taking.unfinished.means);
    await office.picture('half');
    const half = await readDisk(office.page, 'fullshift-book');
    if (half === null) throw new Error('the book is gone');
    expect(tornIn({ journal: half.journal, records: [] }).filter((text) => !text.startsWith('no record of'))).toEqual(
      [],
    );
    const came = linesOf(half);
    expect(came.length).toBeGreaterThanOrEqual(2_000);
    expect(came.length).toBeLessThan(expected.length);
    expect(came).toEqual(expected.slice(0, came.length));

    await lookInto(office, path);
    await takeIn(office, expected.length - came.length);
    const whole = await readDisk(office.page, 'fullshift-book');
    if (whole === null) throw new Error('the book is gone');
    expect(tornIn(whole)).toEqual([]);
    expect(linesOf(whole)).toEqual(expected);
    expect(await doneCount(office)).toBeNull();
    await load(office, '/take-in');
    await expect(office.page.getByText(taking.unfinished.means)).toHaveCount(0);
    expect(shelf.watched.flat()).toEqual([]);
  } catch (failure) {
    await office.picture('failed').catch(() => undefined);
    throw failure;
  } finally {
    await office.kill();
    await preview.stop();
    dropProfile(shelf.profile);
  }
});
