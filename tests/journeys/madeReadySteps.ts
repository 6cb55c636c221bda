/** The day that was made ready: the evening with its papers, the morning that asks again, the run sheet that begins from it. */
import { expect } from '@playwright/test';
import { en as shift } from '#words/shift.ts';
import { en as tomorrow } from '#words/tomorrowScreen.ts';
import { address, go, pagesOf } from './dutySteps.ts';
import { fitInEnglish, numberOnCassette } from './fieldSteps.ts';
import { choose, fill, fillPair, heading, type Notebook, says, tap } from './notebookSteps.ts';
import { fromTheDay, lookFromToday, putOn, seal } from './samplingSteps.ts';
import { handedOut, labelsListed, readLabels } from './seasonSteps.ts';

export const site = 'Old public library, reading room';
export const scraping = 'Scraping paint by hand';
export const ines = 'Ines Farrow';
export const tomas = 'Tomás Quiroga';
export const hollis = 'Hollis Brandt';

/** Both of the plan stand there, each with a pump of its own and the lot; what is missing is said. */
export async function evening(notebook: Notebook): Promise<void> {
  const { page } = notebook;
  for (const name of [ines, tomas])
    await expect(page.getByRole('checkbox', { name: new RegExp(`^${name}`) })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: new RegExp(`^${hollis}`) })).not.toBeChecked();
  await expect(page.getByLabel(`Pump for ${ines}`)).toHaveValue(/./);
  await page.getByLabel(`Pump for ${ines}`).selectOption({ label: 'P-11, charged to the full on 14 September' });
  await page.getByLabel(`Pump for ${tomas}`).selectOption({ label: 'P-12, charged to the full on 14 September' });
  for (const text of [
    'No spare pump. If one stops, that day is lost for its worker.',
    'No spare cassettes.',
    'Nobody is named who charges the pumps.',
  ])
    await says(notebook, text);
  await fill(notebook, 'Spare cassettes', '1');
  await page.getByLabel('Who charges the pumps').selectOption({ label: 'Wanda Keel' });
  await expect(page.getByText('No spare cassettes.')).toHaveCount(0);
  await tap(notebook, 'Save it for the day');
  await says(notebook, 'Saved. The sheet and the labels can be made now.');
}

export interface Numbers {
  readonly ines: string;
  readonly blanks: readonly string[];
}

/** The sheet and the labels as programs of others read them. */
export async function papers(notebook: Notebook): Promise<Numbers> {
  const labels = await handedOut(notebook, 'Make the labels');
  const listed = await labelsListed(notebook);
  // One for each wearer, the spare that was named, two blanks for two samples (a tenth of them, never under two).
  expect([...listed].map(([whose, { length }]) => [whose, length])).toEqual([
    [tomas, 1],
    [ines, 1],
    ['Spare', 1],
    ['Field blank', 2],
  ]);
  const all = [...listed.values()].flat();
  await readLabels(labels.path, all);
  const sheet = await handedOut(notebook, 'Make the sheet');
  expect(sheet.name).toMatch(/2026-09-15.*\.pdf$/);
  const text = pagesOf(sheet.path)?.join(' ');
  if (text !== undefined)
    for (const part of [
      'Sheet for the day',
      site,
      'Tuesday 15 September 2026',
      ines,
      tomas,
      'P-11',
      'P-12',
      'M37-2208',
      'S-3, due 2 March 2027',
      // Least volume of NIOSH 7082, 200 L, at 2 L/min: 100 minutes.
      '1 h 40 min',
      'Wanda Keel',
      ...all.map((number) => [...number].join(' ')),
    ])
      expect(text).toContain(part);
  await notebook.picture('tomorrow-ready');
  return { ines: listed.get(ines)?.[0] ?? '', blanks: listed.get('Field blank') ?? [] };
}

/** Asked again, opened, checked, fitted, worn and sealed; nothing of the evening is asked twice. */
export async function morning(notebook: Notebook, shiftId: string, numbers: Numbers): Promise<void> {
  const { page } = notebook;
  await go(notebook, '/');
  await tap(notebook, 'Who wears what today');
  await heading(notebook, 'Who wears what today');
  await says(notebook, tomorrow.changes.none);
  await tap(notebook, 'Save it and open the day');
  await heading(notebook, `The day at ${site}`);
  expect(address(notebook)).toBe(`shift/${shiftId}`);
  await notebook.picture('day-made-ready');

  await tap(notebook, 'Check the flow of a pump');
  const pumps = page.getByRole('group', { name: 'Which pump' }).getByRole('radio');
  await expect(pumps.first()).toHaveAccessibleName(/^P-11/);
  await choose(notebook, /^P-11/, 'Which pump');
  // The only flow meter, and the lot that both wear; what is in line is asked for, as at every first check.
  for (const name of [/^S-3/, /^M37-2208/]) await expect(page.getByRole('radio', { name })).toBeChecked();
  await says(notebook, 'What is in line with the pump');
  await readSteady(notebook, '2.0');
  await tap(notebook, 'Save, next pump');
  await says(notebook, /^Pump P-11: .* is saved\.$/);
  await tap(notebook, 'Back to the day');

  await says(notebook, 'Somebody does not wear one today');
  await tap(notebook, new RegExp(`^${tomas}$`));
  await tap(notebook, 'The worker declined');
  await says(notebook, `${tomas}: the worker declined; still to do`);

  await notebook.at('06:35');
  // The action of the page is for whoever is still to wear one, not for the first who was named and declined.
  await tap(notebook, shift.actions.prepareOne(ines));
  await heading(notebook, 'Prepare a worker');
  for (const name of [new RegExp(`^${ines}`), /^P-11/, /^M37-2208/, /^Window restorer/])
    await expect(page.getByRole('radio', { name })).toBeChecked();
  await expect(page.getByRole('checkbox', { name: scraping })).toBeChecked();
  await expect(page.getByLabel('Number for the cassette')).toHaveValue(numbers.ines);
  await notebook.picture('fit-in-place');
  await tap(notebook, 'Prepare the cassette');
  await heading(notebook, `The cassette for ${ines} is prepared.`);
  expect(await numberOnCassette(page)).toBe(numbers.ines);
  await tap(notebook, `Hand the phone to ${ines}`);
  await fitInEnglish(notebook, 'IF');
  await notebook.at('07:00');
  await putOn(notebook, ines);
  await notebook.at('09:00');
  await lookFromToday(notebook, ines, '09:00');
  await notebook.at('15:00');
  await fromTheDay(notebook, new RegExp(`^${ines}: put on`));
  await tap(notebook, /^Stop: the pump is off for good/);
  await heading(notebook, `After leaving: ${ines}`);
  await fill(notebook, /^The pump's own minutes/, '480');
  await tap(notebook, "Save the pump's minutes");
  await says(notebook, /^The pump shows /);
  await tap(notebook, 'Check the flow after');
  await readSteady(notebook, '2.0');
  await tap(notebook, 'Save this flow check');
  await heading(notebook, `After leaving: ${ines}`);
  await says(notebook, '960.0');
  await choose(notebook, 'Yes, a regular day');
  await tap(notebook, 'Save the day');
  await says(notebook, 'A regular day.');
  await seal(notebook);
  await says(notebook, 'All of it is written down.');
  expect(address(notebook)).toMatch(/^sample\/\w+\/after$/);
}

const readSteady = (notebook: Notebook, flow: string): Promise<void> =>
  fillPair(notebook, /^Reading 1/, [
    ['lowest', flow],
    ['highest', flow],
  ]);

export async function blanksAndConditions(notebook: Notebook, numbers: readonly string[]): Promise<void> {
  await fromTheDay(notebook, /^0 of 2 field blanks/);
  await fill(notebook, /^Where it was opened/, 'At the change area');
  for (const [at, number] of numbers.entries()) {
    if (at > 0) await tap(notebook, 'Open another blank');
    await tap(notebook, 'Opened and closed now');
    await heading(notebook, 'Write this number on the blank');
    expect(await numberOnCassette(notebook.page)).toBe(number);
    await notebook.at('15:30');
  }
  await fromTheDay(notebook, /^Not written down yet/);
  for (const [label, option] of [
    ['Tool', 'Hand tools'],
    ['Wet or dry', 'Wet'],
    ['Dust collected at the tool', 'None'],
    ['Containment', 'Partly closed'],
    ['Air in the work area', 'Still air'],
    ['Weather', 'Indoors'],
    ['Lead in the paint', 'Tested'],
    ['How much was worked on', 'About a room'],
  ] as const)
    await choose(notebook, option, new RegExp(`^${label}`));
  await tap(notebook, 'Save the conditions');
  await heading(notebook, /^The day at /);
}
