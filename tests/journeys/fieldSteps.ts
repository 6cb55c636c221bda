/** The day on the phone: the book begun, flow checks, two workers prepared, and what each pump has to be asked. */
import { expect } from '@playwright/test';
import { choose, fill, fillPair, heading, type Notebook, says, tap, tick, tickAll } from './notebookSteps.ts';

export async function beginBook(notebook: Notebook): Promise<void> {
  await heading(notebook, 'Begin a book');
  await notebook.picture('start');
  await tap(notebook, 'Open the new book');
  await says(notebook, 'Write the name of the firm');
  await notebook.picture('start-name-missing');
  await fill(notebook, 'Name of the firm', 'Ironbow Painting');
  await tap(notebook, 'Open the new book');
  await heading(notebook, 'Who holds this device?');
  await fill(notebook, 'Name', 'Wanda Keel');
  await notebook.picture('who');
  await tap(notebook, 'Go on');
  await heading(notebook, /6 October 2026/);
}

export async function openShift(notebook: Notebook): Promise<void> {
  await notebook.picture('today-empty');
  await fill(notebook, 'Name of the site', 'Footbridge over the mill race');
  await notebook.page.getByLabel('State or territory').selectOption('OH');
  await choose(notebook, 'Outdoors');
  await fill(notebook, /^Altitude/, '230');
  await expect(notebook.page.getByLabel('Time zone')).toHaveValue('America/New_York');
  await notebook.picture('site');
  await tap(notebook, "Open today's shift");
  await heading(notebook, 'The day at Footbridge over the mill race');
  await notebook.picture('shift-empty');
}

type Reading = readonly [string, string];

const read = (notebook: Notebook, [low, high]: Reading): Promise<void> =>
  fillPair(notebook, /^Reading 1/, [
    ['lowest', low],
    ['highest', high],
  ]);

/** Both pumps in a batch, before it is known who wears which; the flow meter and the lot are written down with the first. */
export async function checkFlowsBefore(notebook: Notebook, first: Reading, second: Reading): Promise<void> {
  await tap(notebook, 'Check the flow of a pump');
  await heading(notebook, 'Check the flow before');
  await notebook.picture('flow-empty');
  await fill(notebook, 'Number on the pump', 'P-11');
  await choose(notebook, /^Rotameter/);
  await fill(notebook, 'Serial number', 'R-4');
  await fill(notebook, /^Date of its certificate/, '3/2/2026');
  await fill(notebook, /^Calibration due on/, '3/2/2027');
  await fill(notebook, /^Temperature it was calibrated at/, '21');
  await fill(notebook, /^Pressure it was calibrated at/, '101.3');
  await fillPair(notebook, /^Certificate line 1/, [
    ['read', '2.0'],
    ['true flow', '2.02'],
  ]);
  await fillPair(notebook, /^Certificate line 2/, [
    ['read', '3.0'],
    ['true flow', '3.04'],
  ]);
  await fill(notebook, 'Lot number on the bag or box', 'M37-2208');
  await fill(notebook, /^Air temperature at the check/, '18');
  await fill(notebook, /^Station pressure/, '98.6');
  await read(notebook, ['2,5 L', 'two']);
  await tap(notebook, 'Save, next pump');
  await says(notebook, /Reading 1: write a number in L\/min, without words/);
  await notebook.picture('flow-wrong');
  await read(notebook, first);
  // (2.5 + 2.6) / 2 = 2.55 reads true 2.02 + 0.55 * 1.02 = 2.581, times sqrt(1.0169052) = 2.60272 L/min.
  await says(notebook, '2.60');
  await notebook.picture('flow-first');
  await tap(notebook, 'Save, next pump');
  await says(notebook, /^Pump P-11: .* is saved\.$/);
  await choose(notebook, 'Add a pump');
  await fill(notebook, 'Number on the pump', 'P-12');
  await read(notebook, second);
  await tap(notebook, 'Save, next pump');
  await says(notebook, /^Pump P-12: .* is saved\.$/);
  await notebook.picture('flow-both');
  await tap(notebook, 'Back to the day');
}

export interface Worker {
  readonly name: string;
  readonly reads: 'English' | 'Español';
  readonly task: string;
  readonly pump: string;
}

/** Prepares a worker's cassette; answers its number, digits only. */
export async function prepare(notebook: Notebook, worker: Worker): Promise<string> {
  const { page } = notebook;
  await heading(notebook, 'Prepare a worker');
  await choose(notebook, 'Add a worker');
  await fill(notebook, 'Name', worker.name);
  await choose(notebook, worker.reads);
  await tick(notebook, worker.task);
  await choose(notebook, new RegExp(`^${worker.pump}`), 'Which pump');
  await says(notebook, /^Presumed until measured/);
  await notebook.picture(`fit-${worker.pump}`);
  await tap(notebook, 'Prepare the cassette');
  await heading(notebook, `The cassette for ${worker.name} is prepared.`);
  return numberOnCassette(page);
}

export async function numberOnCassette(page: Notebook['page']): Promise<string> {
  const text = await page
    .getByText(/^\d(\s\d)+$/)
    .first()
    .textContent();
  return (text ?? '').replaceAll(/\s/g, '');
}

/** The worker reads, taps and signs. */
export async function fitInEnglish(notebook: Notebook, initials: string): Promise<void> {
  await heading(notebook, /, this is your pump$/);
  await tickAll(notebook);
  await choose(notebook, 'It was fitted on me, and I saw the check');
  await fill(notebook, 'Initials', initials);
  await notebook.picture('worker-english');
  await tap(notebook, 'Done: give the phone back');
}

export async function fitInSpanish(notebook: Notebook, initials: string): Promise<void> {
  await heading(notebook, /, esta es su bomba$/);
  await expect(notebook.page.getByRole('main')).toHaveAttribute('lang', 'es');
  await tickAll(notebook);
  await choose(notebook, 'Me la colocaron y vi la revisión');
  await fill(notebook, 'Iniciales', initials);
  await tap(notebook, 'Listo: devuelva el teléfono');
}

/** Initials are asked of whoever saw the check. */
export async function forgetInitialsInSpanish(notebook: Notebook): Promise<void> {
  await heading(notebook, /, esta es su bomba$/);
  await choose(notebook, 'Me la colocaron y vi la revisión');
  await tap(notebook, 'Listo: devuelva el teléfono');
  await says(notebook, /Escriba sus iniciales/);
  await notebook.picture('worker-spanish');
}

/** Flow after or between, asked for from a page of the sample. */
export async function checkFlowOf(notebook: Notebook, reading: Reading, temperature: string): Promise<void> {
  await fill(notebook, /^Air temperature at the check/, temperature);
  await fill(notebook, /^Station pressure/, '98.6');
  await read(notebook, reading);
}
