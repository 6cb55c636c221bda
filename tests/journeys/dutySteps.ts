/** What follows a result, by hands and eyes: the roster, shifts keyed in from paper, reports, notices, and papers read by programs of others. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import ICAL from 'ical.js';
import { en as keying } from '#words/keyIn.ts';
import { en as noticing } from '#words/noticeScreen.ts';
import { en as results } from '#words/results.ts';
import { en as roster } from '#words/roster.ts';
import { en as shift } from '#words/shift.ts';
import { en as worker } from '#words/worker.ts';
import { oracle } from '../house/oracles.ts';
import { numberOnCassette } from './fieldSteps.ts';
import { choose, fill, heading, type Notebook, says, tap, tick } from './notebookSteps.ts';
import { stateHours } from './officeSteps.ts';

export const out = join('tests', 'out', 'duties');

export interface Person {
  readonly name: string;
  readonly language: 'English' | 'Español';
  readonly pump: string;
}

/** Inside the app by its address, without loading it anew. */
export const go = ({ page }: Notebook, path: string): Promise<void> =>
  page.evaluate((to) => {
    window.location.hash = to;
  }, path);

/** What stands behind the `#`, without its first slash. */
export const address = ({ page }: Notebook): string => decodeURIComponent(page.url().split('#/')[1] ?? '');

/** Opens what is folded on the page. */
export async function unfold({ page }: Notebook): Promise<void> {
  const folded = await page.locator('main details:not([open]) > summary').all();
  // each stands for its place among those that are closed
  for (const summary of folded.toReversed()) await summary.click();
}

/** Fields of a long form by their ids: the same labels stand in it before and after. */
async function put({ page }: Notebook, texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [id, text] of Object.entries(texts)) await page.locator(`[id="${id}"]`).fill(text);
}

export async function beginFirm(notebook: Notebook, firm: string, holder: string): Promise<void> {
  await heading(notebook, 'Begin a book');
  await fill(notebook, 'Name of the firm', firm);
  await tap(notebook, 'Open the new book');
  await heading(notebook, 'Who holds this device?');
  await fill(notebook, 'Name', holder);
  await tap(notebook, 'Go on');
  await says(notebook, 'Where is the work today?');
}

/** A new site, its shift of today, and everyone who works there at the same task. */
export async function firstDay(notebook: Notebook, site: string, people: readonly Person[], task: string) {
  await fill(notebook, 'Name of the site', site);
  await notebook.page.getByLabel('State or territory').selectOption('OH');
  await choose(notebook, 'Indoors');
  await tap(notebook, "Open today's shift");
  await heading(notebook, `The day at ${site}`);
  await tap(notebook, roster.line.none);
  await heading(notebook, roster.heading);
  for (const [at, { name, language }] of people.entries()) {
    await tap(notebook, roster.person.add);
    const lines = roster.person.heading(at + 1);
    await fill(notebook, roster.person.name, name, lines);
    await choose(notebook, language, lines);
  }
  await tick(notebook, task);
  await notebook.picture('roster');
  await tap(notebook, roster.save(people.length));
  await heading(notebook, `The day at ${site}`);
}

/** The shift of another day at the same site; who works there is the same as before. Answers the taps of the roster. */
export async function sameAsBefore(notebook: Notebook, site: string, same: string, save: string): Promise<number> {
  await go(notebook, '/');
  await tap(notebook, "Open today's shift");
  await heading(notebook, `The day at ${site}`);
  await tap(notebook, roster.line.none);
  await heading(notebook, roster.heading);
  await notebook.page.evaluate(() => {
    const counting = globalThis as unknown as { taps: number };
    counting.taps = 0;
    document.addEventListener('click', ({ isTrusted }) => {
      if (isTrusted) counting.taps += 1;
    });
  });
  await tap(notebook, same);
  await tap(notebook, save);
  await heading(notebook, `The day at ${site}`);
  return notebook.page.evaluate(() => (globalThis as unknown as { taps: number }).taps);
}

export interface Paper {
  readonly person: Person;
  readonly task: string;
  /** The first form of the book: flow meter, lot and pump are written down with it. */
  readonly isFirst: boolean;
  /** A day without a roster: site and respirator stand on the paper too. */
  readonly alone: { readonly site: string; readonly day: string } | null;
  /** The conditions of the day, where no other form of the day told them. */
  readonly method: 'Wet' | 'Dry' | null;
}

const conditions = [
  ['Tool', 'Hand tools'],
  ['Dust collected at the tool', 'None'],
  ['Containment', 'Partly closed'],
  ['Air in the work area', 'Still air'],
  ['Weather', 'Indoors'],
  ['Lead in the paint', 'Tested'],
  ['How much was worked on', 'About a room'],
] as const;

async function gearOfForm(notebook: Notebook, { person, isFirst }: Paper): Promise<void> {
  if (isFirst) {
    await choose(notebook, /^Soap film/);
    await fill(notebook, 'Serial number', 'S-3');
    await fill(notebook, /^Date of its certificate/, '3/2/2026');
    await fill(notebook, /^Calibration due on/, '3/2/2027');
    await fill(notebook, 'Lot number on the bag or box', 'M37-2208');
  } else {
    await choose(notebook, /^S-3/, 'Which flow meter');
    await choose(notebook, /^M37-2208/, 'Lot of the cassettes');
  }
  await choose(notebook, new RegExp(`^${person.name}`), 'Which worker');
  const pump = notebook.page.getByRole('radio', { name: person.pump });
  if ((await pump.count()) > 0) return choose(notebook, person.pump, 'Which pump');
  if (!isFirst) await choose(notebook, 'Add a pump', 'Which pump');
  await fill(notebook, 'Number on the pump', person.pump);
}

/** From the page of the day, where the filled forms lie beside. */
export async function openForm(notebook: Notebook, shiftId: string): Promise<void> {
  await go(notebook, `/shift/${shiftId}`);
  await tap(notebook, new RegExp(`^${shift.paper.keyIn}`));
}

/** One worker's form, top to bottom: 07:00 to 15:00 at 2.00 L/min before and after. Answers the number on the cassette. */
export async function keyInForm(notebook: Notebook, paper: Paper): Promise<string> {
  const { alone, method, task } = paper;
  await heading(notebook, keying.heading);
  if (alone !== null) {
    await choose(notebook, new RegExp(`^${alone.site}`), keying.site);
    await put(notebook, { day: alone.day });
  }
  await gearOfForm(notebook, paper);
  await put(notebook, { 'before-time': '06:40', 'before-reading-0-low': '2.0' });
  await tick(notebook, task);
  if (alone !== null) await notebook.page.locator('[id="respirator"]').selectOption('airPurifyingHalf');
  await choose(notebook, worker.modes.fitted);
  for (const point of ['pumpSecured', 'tubingSecured', 'breathingZone', 'outsideRespirator', 'inletDown'] as const)
    await tick(notebook, worker.points[point]);
  for (const point of ['plugsOff', 'running'] as const) await tick(notebook, worker.points[point]);
  await tick(notebook, keying.watchOffered);
  await fill(notebook, worker.initials, paper.person.name.replaceAll(/[^A-Z]/g, ''));
  await put(notebook, { 'putOn-time': '07:00', 'look-0-time': '09:00', 'stopped-time': '15:00', pumpMin: '480' });
  await put(notebook, { 'after-time': '15:10', 'after-reading-0-low': '2.0', 'sealed-time': '15:20' });
  await choose(notebook, 'Yes', keying.labelled);
  await fill(notebook, keying.lockedIn, 'Steel box in the van');
  if (method !== null) {
    await choose(notebook, method, /^Wet or dry/);
    for (const [label, option] of conditions) await choose(notebook, option, new RegExp(`^${label}`));
  }
  await choose(notebook, keying.regularOptions.yes);
  await tap(notebook, keying.save);
  await heading(notebook, keying.savedHeading);
  return numberOnCassette(notebook.page);
}

/** Eight hours, all of them with a sample; no other work. Answers the id of the work day. */
export async function hoursOfForm(notebook: Notebook, { person }: Paper): Promise<string> {
  await tap(notebook, keying.toHours);
  await heading(notebook, `The day of ${person.name}`);
  await stateHours(notebook, '07:00', '15:00');
  await heading(notebook, `The day of ${person.name}`);
  return address(notebook).slice('day/'.length);
}

export interface Report {
  readonly number: string;
  readonly reportedOn: string;
  readonly analysedOn: string;
  readonly lines: readonly { readonly number: string; readonly mass: string }[];
}

/** The laboratory's report, received on the day of the clock. Reporting limit 2.5 µg. */
export async function report(notebook: Notebook, { number, reportedOn, analysedOn, lines }: Report): Promise<void> {
  await go(notebook, '/results');
  await heading(notebook, results.heading);
  await fill(notebook, results.report.reportNumber, number);
  await fill(notebook, results.report.reportedOn, reportedOn);
  await fill(notebook, results.report.analysedOn, analysedOn);
  await fill(notebook, results.report.accreditation, 'ELLAP 100999 (invented)');
  await notebook.page.getByLabel(/^Method/).selectOption({ label: 'NIOSH 7082, Lead by flame AAS' });
  await choose(notebook, new RegExp(`^${results.report.answers.no}$`), results.report.blankCorrected);
  await choose(notebook, new RegExp(`^${results.report.answers.yes}$`), results.report.wallDeposit);
  for (const [at, line] of lines.entries()) {
    const row = results.rows.row(at + 1);
    await fill(notebook, results.rows.number, line.number, row);
    await fill(notebook, `${results.rows.mass}, µg`, line.mass, row);
    await fill(notebook, `${results.rows.limit}, µg`, '2.5', row);
  }
  await tap(notebook, results.save(lines.length));
  await heading(notebook, /written down$/);
}

/** A file handed out as a download; answers its name and where it lies. */
export async function handedOut(notebook: Notebook, action: string | RegExp): Promise<{ name: string; path: string }> {
  const download = notebook.page.waitForEvent('download', { timeout: 20_000 });
  await tap(notebook, action);
  const file = await download;
  const name = file.suggestedFilename();
  const path = join(out, name);
  await file.saveAs(path);
  return { name, path };
}

/** The words of a PDF as poppler reads them, page by page; null where that program is missing. */
export function pagesOf(pdf: string): readonly string[] | null {
  const text = oracle('pdftotext')?.(['-layout', pdf, '-']);
  return text === undefined ? null : text.split('\f').map((page) => page.replaceAll(/\s+/g, ' '));
}

/** Its pages as pictures, to be looked at. */
export const picturesOf = (pdf: string): void =>
  void oracle('pdftoppm')?.(['-r', '80', '-png', pdf, pdf.replace(/\.pdf$/, '')]);

/** All-day events of a calendar file as ical.js reads it, an independent parser of RFC 5545. */
export function eventsOf(path: string): readonly { readonly on: string; readonly summary: string }[] {
  const calendar = new ICAL.Component(ICAL.parse(readFileSync(path, 'utf8')));
  expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
  return calendar.getAllSubcomponents('vevent').map((each) => {
    const { startDate, summary } = new ICAL.Event(each);
    return { on: startDate.toString(), summary };
  });
}

/** Gives a notice that was made: to one in the hand with initials, and to one who would not sign. */
export async function giveNotice(notebook: Notebook, given: Person, refused: Person): Promise<void> {
  const { give } = noticing;
  await choose(notebook, given.name, give.worker);
  await choose(notebook, new RegExp(`^${give.hows.handedOver}$`), give.how);
  await choose(notebook, noticing.languages.en, give.language);
  await fill(notebook, give.initials, given.name.replaceAll(/[^A-Z]/g, ''));
  await tap(notebook, give.save);
  await says(notebook, new RegExp(`^${given.name}: handed over `));
  await choose(notebook, refused.name, give.worker);
  await choose(notebook, give.hows.refusedToSign, give.how);
  await choose(notebook, noticing.languages.es, give.language);
  await tap(notebook, give.save);
  await says(notebook, new RegExp(`^${refused.name}: handed over .*, would not sign$`));
}
