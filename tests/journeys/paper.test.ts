/**
 * The phone is lost after the shift; the courier's custody sheet is not. Its PDF opens on an empty device, and the shift is there again:
 * samples, flow checks, minutes and the sheet. The figures are those worked by hand in shift.test.ts for the first pump:
 * before 2.5 to 2.6 -> 2.55 -> 2.581 -> 2.60272; after 2.4 to 2.5 -> 2.45 -> 2.479 -> 2.52549 L/min; 06:50 to 15:00 = 490 min; 1256.4 L.
 */
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { en as start } from '#words/start.ts';
import { readDisk, tornIn, writersOf } from './bookOnDisk.ts';
import { beginBook, openShift } from './fieldSteps.ts';
import { choose, fill, heading, load, type Notebook, newShelf, openNotebook, says, tap } from './notebookSteps.ts';
import { handOutSheet } from './officeSteps.ts';
import { startPreview } from './preview.ts';
import { dropProfile } from './realBrowser.ts';
import { afterLeaving, putOnFirst } from './samplingSteps.ts';

const out = join('tests', 'out', 'paper');
const ines = { name: 'Ines Farrow', reads: 'English', task: 'Scraping paint by hand', pump: 'P-11' } as const;
const noPicture = { picture: async () => {} };

async function packOne(notebook: Notebook): Promise<void> {
  await tap(notebook, 'Boxes');
  await tap(notebook, 'Pack a box');
  await heading(notebook, 'Pack a box for the laboratory');
  await fill(notebook, 'Name of the laboratory', 'Quern Hill Analytical');
  await choose(notebook, 'Yes', /^Include the dust on the inner wall/);
  await choose(notebook, 'Yes', /^Call before analyzing/);
  await fill(notebook, /^Results wanted within/, '5 working days');
  await choose(notebook, 'By name');
  await tap(notebook, 'The box is packed');
  await heading(notebook, 'Box for Quern Hill Analytical');
}

/** One worker's shift on the phone, up to the sheet; answers the number on the cassette. */
async function shiftOnPhone(phone: Notebook, sheet: string): Promise<string> {
  await beginBook(phone);
  await openShift(phone);
  const number = await putOnFirst(phone, ines, 'IF');
  await phone.at('15:00');
  await tap(phone, /^Stop: the pump is off for good/);
  await phone.at('15:20');
  const leaving = {
    worker: ines.name,
    pumpMin: '490',
    after: ['2.4', '2.5'],
    average: '2.56',
    volume: '1256.4',
  } as const;
  await afterLeaving(phone, leaving, 'after');
  await phone.at('15:45');
  await packOne(phone);
  await handOutSheet(phone, 'Make the custody sheet', '1', sheet);
  return number;
}

test('a shift is rebuilt from the PDF of its custody sheet on a device that held nothing', async () => {
  test.setTimeout(120_000);
  const server = await startPreview(4645);
  const shelves = ['phone', 'office'].map((name) => newShelf(server.address, '2026-10-06', join(out, name)));
  const opened: Notebook[] = [];
  try {
    const [phoneShelf, officeShelf] = shelves;
    if (!phoneShelf || !officeShelf) throw new Error('two devices are needed');
    const phone = { ...(await openNotebook(phoneShelf, '06:10')), ...noPicture };
    opened.push(phone);
    await phone.page.goto(server.address);
    const sheet = join(out, 'sheet.pdf');
    const number = await shiftOnPhone(phone, sheet);
    const before = await readDisk(phone.page, 'fullshift-book');
    await phone.kill();

    const office = await openNotebook(officeShelf, '09:00', '2026-10-07');
    opened.push(office);
    await office.page.goto(server.address);
    await choose(office, new RegExp(`^${start.choices.backup.label}`));
    await office.page.getByLabel(start.file).setInputFiles(sheet);
    await tap(office, start.lookInto);
    await office.picture('preview');
    await tap(office, start.takeIn);
    await heading(office, start.who.heading);
    await choose(office, /^Wanda Keel/);
    await tap(office, /^Go on/);

    await load(office, '/samples');
    await says(office, 'One cassette in this book');
    await tap(office, new RegExp(number));
    await office.picture('sample');
    for (const line of [/^Put on/, /^Stopped/, /490/, /1256\.4/]) await says(office, line);
    await tap(office, 'Boxes');
    await tap(office, /for Quern Hill Analytical/);
    await says(office, /^Revision 1/);
    await expect(office.page.getByRole('button', { name: 'Hand out revision 1' })).toBeEnabled();
    await office.picture('box');
    await expect(office.page.getByText('The sheet differs from the record: raise its revision')).toHaveCount(0);
    // The same bytes go out again.
    const download = office.page.waitForEvent('download');
    await tap(office, 'Hand out revision 1');
    const again = join(out, 'again.pdf');
    await (await download).saveAs(again);
    const { readFileSync } = await import('node:fs');
    expect(readFileSync(again).equals(readFileSync(sheet))).toBe(true);

    const after = await readDisk(office.page, 'fullshift-book');
    if (before === null || after === null) throw new Error('a book is gone');
    expect(tornIn(before)).toEqual([]);
    // Every fact of the phone came over byte for byte but the ones that the sheet does not rest on; the act of issuing was written anew.
    const lines = new Map(before.journal.map(({ id, text }) => [id, text]));
    const foreign = after.journal.filter(({ id, text }) => lines.get(id) !== text);
    expect(foreign.map(({ text }) => (JSON.parse(text) as { kind: string }).kind)).toEqual(['custodySheetIssued.v1']);
    expect(writersOf(after)).toHaveLength(2);
    expect(shelves.flatMap(({ watched }) => watched.flat())).toEqual([]);
  } finally {
    for (const notebook of opened) await notebook.kill();
    await server.stop();
    for (const { profile } of shelves) dropProfile(profile);
  }
});
