/** A file out of one device and into the other by its pages, and what lies on both: each file is opened by programs of others. */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { en as send } from '#words/handOver.ts';
import { en as results } from '#words/results.ts';
import { en as shift } from '#words/shift.ts';
import { en as start } from '#words/start.ts';
import { en as taking } from '#words/takeIn.ts';
import { type BookOnDisk, readDisk, tornIn } from './bookOnDisk.ts';
import { choose, fill, heading, load, type Notebook, says, tap } from './notebookSteps.ts';

export const out = join('tests', 'out', 'exchange');

export async function nameDevice(notebook: Notebook, name: string): Promise<void> {
  await load(notebook, '/storage');
  await fill(notebook, send.deviceName.label, name);
  await tap(notebook, send.deviceName.save);
  await says(notebook, send.deviceName.saved);
  await notebook.picture('storage');
}

/** What is ready is downloaded; answers where it lies. */
export async function saved(notebook: Notebook, name: string): Promise<string> {
  const download = notebook.page.waitForEvent('download');
  await tap(notebook, send.ways.download);
  const file = await download;
  const path = join(out, `${name}${/\.[^.]+$/.exec(file.suggestedFilename())?.[0] ?? ''}`);
  await file.saveAs(path);
  await says(notebook, send.outcome.downloaded);
  return path;
}

/** The day's page lies open, the shift is over: how many taps until its file has left, and where it lies. */
export async function sendTheDay(notebook: Notebook): Promise<{ readonly taps: number; readonly path: string }> {
  await heading(notebook, /^The day at /);
  await notebook.page.evaluate(() => {
    const counting = globalThis as unknown as { taps: number };
    counting.taps = 0;
    document.addEventListener('click', ({ isTrusted }) => {
      if (isTrusted) counting.taps += 1;
    });
  });
  await tap(notebook, shift.file.open);
  await says(notebook, /^Ready: /);
  await notebook.picture('send-today');
  const path = await saved(notebook, 'first');
  const taps = await notebook.page.evaluate(() => (globalThis as unknown as { taps: number }).taps);
  return { taps, path };
}

/** Hands out what the other device lacks; it was heard of before and is chosen already. */
export async function handOut(notebook: Notebook, partner: string, name: string): Promise<string> {
  await load(notebook, '/send');
  await expect(notebook.page.getByRole('radio', { name: partner })).toBeChecked();
  await says(notebook, /^Ready: /);
  await notebook.picture(`send-${name}`);
  return saved(notebook, name);
}

/** Sealed with the words that the page shows; answers them and where the file lies. */
export async function handOutSealed(notebook: Notebook, partner: string, name: string) {
  await load(notebook, '/send');
  await expect(notebook.page.getByRole('radio', { name: partner })).toBeChecked();
  await choose(notebook, send.seals.made.label);
  const shown = notebook.page.getByRole('region', { name: send.words.label }).locator('[translate="no"]');
  const passphrase = ((await shown.textContent()) ?? '').trim();
  await expect(notebook.page.getByText(/^Ready: .*, sealed$/)).toBeVisible({ timeout: 60_000 });
  await notebook.picture(`send-${name}`);
  return { passphrase, path: await saved(notebook, name) };
}

/** A device without a book takes one up from a file of another, and whoever holds it says so. */
export async function takeUp(
  notebook: Notebook,
  path: string,
  device: string,
  holder: string,
  ...said: readonly string[]
): Promise<void> {
  await notebook.page.goto(notebook.address);
  await choose(notebook, new RegExp(`^${start.choices.backup.label}`));
  await notebook.page.getByLabel(start.file).setInputFiles(path);
  await tap(notebook, start.lookInto);
  await fill(notebook, send.deviceName.label, device);
  for (const sentence of said) await says(notebook, sentence);
  await notebook.picture('join');
  await tap(notebook, start.takeIn);
  await heading(notebook, start.who.heading);
  await choose(notebook, start.who.add);
  await fill(notebook, start.who.name, holder);
  await tap(notebook, start.who.goOn);
  await heading(notebook, /October 2026/);
}

/** Looks into a file, which changes nothing; a sealed one with its passphrase. */
export async function lookInto(notebook: Notebook, path: string, passphrase?: string): Promise<void> {
  await load(notebook, '/take-in');
  await notebook.page.getByLabel(taking.file).setInputFiles(path);
  await tap(notebook, taking.look);
  if (passphrase !== undefined) {
    await says(notebook, taking.sealed);
    await fill(notebook, taking.passphrase, passphrase);
    await tap(notebook, taking.look);
  }
  await expect(notebook.page.getByRole('heading', { level: 1, name: taking.preview.heading })).toBeVisible({
    timeout: 60_000,
  });
}

/** What was looked into is taken in. */
export async function takeIn(notebook: Notebook, count: number): Promise<void> {
  await tap(notebook, taking.preview.action(count));
  await says(notebook, /^Taken in: /);
}

interface ReportLine {
  readonly number: string;
  readonly mass: string;
}

/** The office keys a report in. */
export async function keyIn(notebook: Notebook, report: string, lines: readonly ReportLine[]): Promise<void> {
  await tap(notebook, 'Results');
  await heading(notebook, results.heading);
  await fill(notebook, results.report.reportNumber, report);
  await fill(notebook, results.report.reportedOn, '10/13/2026');
  await fill(notebook, results.report.analysedOn, '10/12/2026');
  await choose(notebook, new RegExp(`^${results.report.answers.no}$`), results.report.blankCorrected);
  await choose(notebook, new RegExp(`^${results.report.answers.yes}$`), results.report.wallDeposit);
  for (const [at, { number, mass }] of lines.entries()) {
    const line = results.rows.row(at + 1);
    await fill(notebook, results.rows.number, number, line);
    await fill(notebook, `${results.rows.mass}, µg`, mass, line);
    await fill(notebook, `${results.rows.limit}, µg`, '2.5', line);
  }
  await tap(notebook, results.save(lines.length));
  await heading(notebook, /written down$/);
}

export async function bookOf(notebook: Notebook): Promise<BookOnDisk> {
  const disk = await readDisk(notebook.page, 'fullshift-book');
  if (disk === null) throw new Error('the book is gone');
  expect(tornIn(disk)).toEqual([]);
  return disk;
}

/** Papers and pictures on the device: name -> SHA-256 of their bytes by Node's own hash. */
export async function filesOf({ page }: Notebook): Promise<Readonly<Record<string, string>>> {
  const found = await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open('fullshift-book');
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const rows = await new Promise<readonly { hash: string; bytes: Uint8Array }[]>((resolve, reject) => {
      const asked = db.transaction('files').objectStore('files').getAll();
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    db.close();
    return rows.map(({ hash, bytes }) => [hash, [...bytes]] as const);
  });
  return Object.fromEntries(
    found.map(([hash, bytes]) => [hash, createHash('sha256').update(Uint8Array.from(bytes)).digest('hex')]),
  );
}

/** Info-ZIP reads the archive; its `unzip -p` writes an entry out byte for byte. */
export function unzipped(path: string): { readonly names: readonly string[]; readonly book: string } {
  const read = (...args: readonly string[]): string => {
    const { status, stdout, stderr, error } = spawnSync('unzip', args, { encoding: 'utf8', maxBuffer: 50_000_000 });
    if (error || status !== 0) throw new Error(`unzip ${args.join(' ')}: ${error?.message ?? stderr}`);
    return stdout;
  };
  return { names: read('-Z1', path).trim().split('\n'), book: read('-p', path, 'book.txt') };
}

/** The lines between header and end mark, each `<link> <text>`. */
export const factLinesIn = (book: string): readonly string[] => book.split('\n').slice(1, -2);

export const linesOf = ({ journal }: BookOnDisk): readonly string[] =>
  journal.map(({ link, text }) => `${link} ${text}`);

/** What stands on `one` and not on `other`. */
export const lackedBy = (other: BookOnDisk, one: BookOnDisk): readonly string[] => {
  const known = new Set(linesOf(other));
  return linesOf(one).filter((line) => !known.has(line));
};
