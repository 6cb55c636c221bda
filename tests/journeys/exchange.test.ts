/** Two devices with one book: restored from a backup, each with a sample of its own, and what both wrote brought together by files. */
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { en as send } from '#words/handOver.ts';
import { en as start } from '#words/start.ts';
import { en as taking } from '#words/takeIn.ts';
import { readDisk, tornIn, writersOf } from './bookOnDisk.ts';
import { beginBook, checkFlowsBefore, openShift, prepare } from './fieldSteps.ts';
import { choose, heading, load, type Notebook, newShelf, openNotebook, says, tap } from './notebookSteps.ts';
import { startPreview } from './preview.ts';
import { dropProfile } from './realBrowser.ts';

const out = join('tests', 'out', 'exchange');
const ines = { name: 'Ines Farrow', reads: 'English', task: 'Scraping paint by hand', pump: 'P-11' } as const;
const tomas = { name: 'Tomás Quiroga', reads: 'Español', task: 'Scraping paint by hand', pump: 'P-12' } as const;

/** Hands a file out through the page for it; answers where the file lies. */
async function handOut(notebook: Notebook, name: string): Promise<string> {
  await load(notebook, '/send');
  await says(notebook, /^Ready: /);
  const download = notebook.page.waitForEvent('download');
  await tap(notebook, send.ways.download);
  const path = join(out, `${name}.zip`);
  await (await download).saveAs(path);
  await says(notebook, send.outcome.downloaded);
  return path;
}

async function takeIn(notebook: Notebook, path: string): Promise<void> {
  await load(notebook, '/take-in');
  await notebook.page.getByLabel(taking.file).setInputFiles(path);
  await tap(notebook, taking.look);
  await tap(notebook, /^Take in /);
  await says(notebook, /^Taken in: /);
}

async function restore(notebook: Notebook, path: string): Promise<void> {
  await notebook.page.goto(notebook.address);
  await choose(notebook, new RegExp(`^${start.choices.backup.label}`));
  await notebook.page.getByLabel(start.file).setInputFiles(path);
  await tap(notebook, start.lookInto);
  await tap(notebook, start.takeIn);
  await heading(notebook, start.who.heading);
  await choose(notebook, /^Wanda Keel/);
  await tap(notebook, /^Go on/);
  await heading(notebook, /6 October 2026/);
}

const toFit = async (notebook: Notebook): Promise<void> => {
  await load(notebook, '/');
  await tap(notebook, /^The day's page|^Go to the day's page/);
  await tap(notebook, 'Prepare a worker');
};

async function bookOf(notebook: Notebook) {
  const disk = await readDisk(notebook.page, 'fullshift-book');
  if (disk === null) throw new Error('the book is gone');
  expect(tornIn(disk)).toEqual([]);
  return disk;
}

/** Both cassettes stand on the page of all samples, each with its number; `numbers` as shown there. */
async function showsBoth(notebook: Notebook, numbers: readonly string[]): Promise<void> {
  await load(notebook, '/samples');
  await says(notebook, '2 cassettes in this book');
  for (const number of numbers) await says(notebook, new RegExp(number));
}

test('a book restored on a second device, a new sample on each, exchanged by backup files: two samples on both', async () => {
  test.setTimeout(180_000);
  const preview = await startPreview(4633);
  const shelves = ['first', 'second'].map((name) => newShelf(preview.address, '2026-10-06', join(out, name)));
  const opened: Notebook[] = [];
  try {
    const [firstShelf, secondShelf] = shelves;
    if (!firstShelf || !secondShelf) throw new Error('two devices are needed');
    const first = { ...(await openNotebook(firstShelf, '06:10')), picture: async () => {} };
    opened.push(first);
    await first.page.goto(preview.address);
    await beginBook(first);
    await openShift(first);
    await first.at('06:20');
    await checkFlowsBefore(first, ['2.5', '2.6'], ['2.4', '2.5']);
    const begun = await handOut(first, 'begun');

    const second = { ...(await openNotebook(secondShelf, '06:30')), picture: async () => {} };
    opened.push(second);
    await restore(second, begun);
    await toFit(second);
    const secondNumber = await prepare(second, tomas);
    await first.at('06:35');
    await toFit(first);
    const firstNumber = await prepare(first, ines);
    // Each device has digits of its own at the front: no number is given twice.
    expect(firstNumber.slice(0, 2)).not.toBe(secondNumber.slice(0, 2));

    const ofFirst = await handOut(first, 'of-first');
    const ofSecond = await handOut(second, 'of-second');
    await takeIn(second, ofFirst);
    await takeIn(first, ofSecond);
    for (const notebook of [first, second]) await showsBoth(notebook, [firstNumber, secondNumber]);

    const books = [await bookOf(first), await bookOf(second)] as const;
    const lines = books.map(({ journal }) => journal.map(({ id, text, link }) => `${id} ${link} ${text}`));
    expect(lines[0]).toEqual(lines[1]);
    expect(writersOf(books[0])).toHaveLength(2);
    // Each sample stands in the chain of the device that prepared it.
    const writers = books[0].journal
      .filter(({ text }) => text.includes('"kind":"samplePrepared.v1"'))
      .map(({ id }) => id.slice(0, id.indexOf('.')));
    expect(new Set(writers).size).toBe(2);

    // Taken in once more, nothing changes.
    await load(first, '/take-in');
    await first.page.getByLabel(taking.file).setInputFiles(ofSecond);
    await tap(first, taking.look);
    await says(first, taking.preview.nothingNew);
  } finally {
    for (const notebook of opened) await notebook.kill();
    await preview.stop();
    for (const { profile } of shelves) dropProfile(profile);
  }
});
