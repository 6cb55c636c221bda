/** The office, days later: the box and its custody sheet, the laboratory's report by keyboard, and each worker's day. */
import { expect } from '@playwright/test';
import { choose, fill, heading, type Notebook, says, tap } from './notebookSteps.ts';

export async function packBox(
  notebook: Notebook,
  inside = '3 air samples, 2 field blanks. Enough blanks.',
): Promise<void> {
  await tap(notebook, 'Boxes');
  await heading(notebook, 'Boxes for the laboratory');
  await notebook.picture('boxes-empty');
  await tap(notebook, 'Pack a box');
  await heading(notebook, 'Pack a box for the laboratory');
  await says(notebook, inside);
  await fill(notebook, 'Name of the laboratory', 'Quern Hill Analytical');
  await fill(notebook, 'Address, as it goes on the box', '7 Quern Hill Road, Dayton, OH 45402');
  await fill(notebook, /^Accreditation/, 'ELLAP 100999 (invented)');
  await notebook.page.getByLabel(/^Method/).selectOption({ label: 'NIOSH 7082, Lead by flame AAS' });
  await fill(notebook, /^Reporting limit asked/, '2,5');
  await choose(notebook, 'Yes', /^Include the dust on the inner wall/);
  await choose(notebook, 'Yes', /^Call before analyzing/);
  await fill(notebook, /^Results wanted within/, '5 working days');
  await tap(notebook, 'The box is packed');
  await says(notebook, 'Choose: Workers on the sheet');
  await choose(notebook, 'By name');
  await notebook.picture('pack');
  await tap(notebook, 'The box is packed');
  await heading(notebook, 'Box for Quern Hill Analytical');
  await notebook.picture('box-packed');
}

/** Makes the sheet and hands it out; answers where the PDF lies. */
export async function handOutSheet(notebook: Notebook, make: string, revision: string, path: string): Promise<void> {
  await tap(notebook, make);
  const name = `Hand out revision ${revision}`;
  await expect(notebook.page.getByRole('button', { name })).toBeEnabled();
  const download = notebook.page.waitForEvent('download');
  await tap(notebook, name);
  const file = await download;
  expect(file.suggestedFilename()).toBe(`custody-sheet-2026-10-06-revision-${revision}.pdf`);
  await file.saveAs(path);
  await says(notebook, /^Handed to the browser as a download/);
}

export async function handOverBox(notebook: Notebook): Promise<void> {
  await fill(notebook, /^Handed over to/, 'Fleetfoot Parcels');
  await fill(notebook, /^Tracking number/, 'FP 0042 7731');
  await choose(notebook, 'Yes', 'Is the box sealed?');
  await tap(notebook, 'Handed over now');
  await says(notebook, /^Handed over to Fleetfoot Parcels/);
  await notebook.picture('box-handed-over');
}

/** The keys that were pressed, one after the other; nothing is clicked. */
export async function press({ page }: Notebook, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}
export const type = ({ page }: Notebook, text: string): Promise<void> => page.keyboard.type(text);

interface ReportLine {
  readonly mass: string;
  readonly limit?: string;
  readonly volume?: string;
  readonly concentration?: string;
}

/** A whole report at the keyboard: the box's numbers are put in, then Tab and Enter lead from field to field. */
export async function keyIn(notebook: Notebook, lines: readonly ReportLine[]): Promise<void> {
  const { page } = notebook;
  await heading(notebook, 'Key in the results');
  await tap(notebook, 'Put the 5 numbers of the box for Quern Hill Analytical in');
  await expect(page.getByLabel('Report number')).toBeFocused();
  await type(notebook, 'QH-26-1180');
  await press(notebook, 'Tab', 'Tab', 'Tab', 'Tab');
  await type(notebook, '10/13/2026');
  await press(notebook, 'Enter');
  await type(notebook, '10/12/2026');
  await press(notebook, 'Enter', 'Tab', 'Tab');
  // The blanks were not subtracted; the deposit on the inner wall is included.
  await press(notebook, 'Space', 'ArrowDown', 'Tab', 'Space', 'Tab');
  for (const { mass, limit = '', volume = '', concentration = '' } of lines) {
    for (const text of [mass, limit, volume, concentration]) {
      await press(notebook, 'Enter');
      if (text !== '') await type(notebook, text);
    }
    await press(notebook, 'Enter');
  }
}

/** Says what minutes without a sample were. */
export async function explain(
  notebook: Notebook,
  span: readonly [string, string],
  as: 'Away from the lead area' | 'The same as while a sample ran',
  reason: string,
  like?: string,
): Promise<void> {
  await tap(notebook, 'Say what the unknown minutes were');
  await heading(notebook, `What were the minutes from ${span[0]} to ${span[1]}?`);
  await choose(notebook, new RegExp(`^${as}`));
  if (like !== undefined) await choose(notebook, like);
  await fill(notebook, /^How do you know/, reason);
  await tap(notebook, 'Write it down');
}

export async function stateHours(notebook: Notebook, from: string, to: string): Promise<void> {
  await tap(notebook, 'Write down the hours of work');
  await heading(notebook, 'Hours of work that day');
  await fill(notebook, 'From', from);
  await fill(notebook, 'To', to);
  await tap(notebook, 'Write the hours down');
  await tap(notebook, 'Ask about other work');
  await heading(notebook, 'Other work that day');
  for (const group of [/^A call-out/, /^Work at a second site/, /^Work for a second employer/])
    await choose(notebook, 'No', group);
  await tap(notebook, 'Write the answers down');
}
