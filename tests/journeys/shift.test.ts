/**
 * The main job from end to end, in the built app. Every figure that is looked for was worked by hand beside it: float midpoints and
 * means (common practice: between 2.5 and 2.6 is 2.55), straight lines between two pairs of the meter's certificate, a rotameter away
 * from its calibration conditions by Q = Qread * sqrt(Pcal * Tact / (Pact * Tcal)) (29 CFR 1910.1001 Appendix B; NIOSH Manual, chapter
 * D), TWA8 = sum of C * t / 480 (29 CFR 1926.62), 400 / h for a day longer than eight hours (29 CFR 1926.62(c)(2)).
 */
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { waitUntilKept } from './appPages.ts';
import { readSheet } from './custodyPaper.ts';
import {
  beginBook,
  checkFlowsBefore,
  fitInEnglish,
  fitInSpanish,
  forgetInitialsInSpanish,
  numberOnCassette,
  openShift,
  prepare,
} from './fieldSteps.ts';
import { fill, heading, type Notebook, newShelf, openNotebook, says, saysFigures, tap } from './notebookSteps.ts';
import { explain, handOutSheet, handOverBox, keyIn, packBox, stateHours } from './officeSteps.ts';
import { startPreview } from './preview.ts';
import { dropProfile } from './realBrowser.ts';
import {
  afterLeaving,
  changeCassette,
  correctTime,
  fromTheDay,
  goAway,
  lookFromToday,
  noteConditions,
  openBlanks,
  putOn,
  seal,
  stopTyped,
  takeOff,
} from './samplingSteps.ts';

const ines = { name: 'Ines Farrow', reads: 'English', task: 'Scraping paint by hand', pump: 'P-11' } as const;
const tomas = { name: 'Tomás Quiroga', reads: 'Español', task: 'Scraping paint by hand', pump: 'P-12' } as const;
const out = join('tests', 'out', 'shift');

/*
 * By hand. Certificate 2.0 -> 2.02, 3.0 -> 3.04: true = 2.02 + (read - 2.0) * 1.02. Calibrated at 21 °C = 294.15 K and 101.3 kPa, all
 * day at 98.6 kPa, 101.3 / 98.6 = 1.0273834.
 *   18 °C: sqrt(1.0273834 * 291.15 / 294.15) = sqrt(1.0169052) = 1.0084172
 *   20 °C: sqrt(1.0273834 * 293.15 / 294.15) = sqrt(1.0238907) = 1.0118748
 *   24 °C: sqrt(1.0273834 * 297.15 / 294.15) = sqrt(1.0378616) = 1.0187550
 * Ines, P-11: before 2.5 to 2.6 -> 2.55 -> 2.581 -> 2.60272; after 2.4 to 2.5 -> 2.45 -> 2.479 -> 2.52549 (change 3.0 %);
 *   average 2.56411; 06:50 to 15:00 = 490 min; 1256.4 L.
 * Tomás, P-12: before 2.4 to 2.5 -> 2.45 -> 2.479 -> 2.49987; between 2.35 to 2.45 -> 2.40 -> 2.428 -> 2.45683;
 *   after 2.3 to 2.4 -> 2.35 -> 2.377 -> 2.42158.
 *   First cassette: average 2.47835; 07:00 to 10:00 = 180 min; 446.1 L.
 *   Second: average 2.43921; 10:10 to 15:05 without 11:30 to 12:00 = 265 min, 646.4 L; after the correction to 15:00, 260 min, 634.2 L.
 */
test('records a full shift of two workers without a signal, and the office finishes it', async () => {
  // Some forty seconds on an idle machine; a shared one may take its time.
  test.setTimeout(300_000);
  const server = await startPreview(4621);
  const shelf = newShelf(server.address, '2026-10-06', out);
  let notebook: Notebook = await openNotebook(shelf, '06:10');
  try {
    await notebook.page.goto(server.address);
    await waitUntilKept(notebook.page);
    await beginBook(notebook);
    await openShift(notebook);
    await notebook.at('06:20');
    await checkFlowsBefore(notebook, ['2.5', '2.6'], ['2.4', '2.5']);

    await notebook.at('06:35');
    await tap(notebook, 'Prepare a worker');
    const inesNumber = await prepare(notebook, ines);
    await tap(notebook, `Hand the phone to ${ines.name}`);
    await fitInEnglish(notebook, 'IF');
    await notebook.picture('put-on');
    await notebook.at('06:50');
    await putOn(notebook, ines.name);
    await notebook.picture('on-worker');

    // From here on there is no signal: the server is gone, and the page is loaded anew.
    await server.stop();
    await notebook.page.reload();
    await heading(notebook, `The pump is on ${ines.name}`);
    await notebook.at('06:55');
    await fromTheDay(notebook, 'Prepare a worker');
    const firstNumber = await prepare(notebook, tomas);
    await tap(notebook, `Hand the phone to ${tomas.name}`);
    await forgetInitialsInSpanish(notebook);
    await fitInSpanish(notebook, 'TQ');
    await notebook.at('07:00');
    await putOn(notebook, tomas.name);
    await tap(notebook, 'Today');
    await notebook.picture('today-running');

    await notebook.at('09:00');
    await lookFromToday(notebook, ines.name, '09:00');
    await lookFromToday(notebook, tomas.name, '09:00');
    await notebook.at('10:00');
    await changeCassette(notebook, tomas.name, '180', ['2.35', '2.45']);
    const secondNumber = await numberOnCassette(notebook.page);
    await tap(notebook, `Hand the phone to ${tomas.name}`);
    await fitInSpanish(notebook, 'TQ');
    await notebook.at('10:10');
    await putOn(notebook, tomas.name);

    await notebook.at('11:30');
    await goAway(notebook, ines.name);
    await takeOff(notebook, tomas.name);
    // The battery gives out at lunch: the browser is killed, and opens again with nothing but what is on the phone.
    await notebook.at('11:45');
    notebook = await notebook.restart();
    await says(notebook, "The day's page");
    await notebook.at('12:00');
    await fromTheDay(notebook, new RegExp(`^${ines.name}: put on`));
    await tap(notebook, 'Back in the lead area now');
    await heading(notebook, `The pump is on ${ines.name}`);
    await fromTheDay(notebook, new RegExp(`^${tomas.name}: put on`));
    await tap(notebook, 'Back on the worker now');
    await heading(notebook, `The pump is on ${tomas.name}`);

    await notebook.at('15:00');
    await fromTheDay(notebook, new RegExp(`^${ines.name}: put on`));
    await tap(notebook, /^Stop: the pump is off for good/);
    await notebook.at('15:20');
    await afterLeaving(
      notebook,
      { worker: ines.name, pumpMin: '491', after: ['2.4', '2.5'], average: '2.56', volume: '1256.4' },
      'after-ines',
    );
    await stopTyped(notebook, tomas.name, '15:05');
    await afterLeaving(
      notebook,
      { worker: tomas.name, pumpMin: '265', after: ['2.3', '2.4'], average: '2.44', volume: '646.4' },
      'after-tomas',
    );
    await fromTheDay(notebook, new RegExp(`^${tomas.name}: cassette ${firstNumber}`));
    await seal(notebook);
    await openBlanks(notebook);
    await noteConditions(notebook);
    await notebook.picture('shift-done');
    await tap(notebook, 'Today');
    await notebook.picture('today-done');
    await tap(notebook, 'Samples');
    await notebook.picture('samples');

    await notebook.at('15:45');
    await packBox(notebook);
    const first = join(out, 'revision-1.pdf');
    await handOutSheet(notebook, 'Make the custody sheet', '1', first);
    await notebook.picture('sheet-1');
    const numbers = [inesNumber, firstNumber, secondNumber];
    readSheet(first, { revision: '1', numbers, lastStop: '15:05', lastLitres: '646.4' });

    // The watch that the stop was read off was five minutes fast.
    await notebook.at('16:00');
    await tap(notebook, 'Samples');
    await tap(notebook, new RegExp(`^${tomas.name}.*${secondNumber}|${secondNumber}`));
    await correctTime(
      notebook,
      'Correct: Time of “Stopped; the pump shows',
      '15:00',
      'The watch was five minutes fast',
    );
    await tap(notebook, 'Boxes');
    await tap(notebook, '5 cassettes for Quern Hill Analytical');
    await says(notebook, 'The sheet differs from the record: raise its revision');
    await tap(notebook, 'Make revision 2');
    await says(notebook, /^Fill in: What changed, and why|Say/);
    await notebook.picture('sheet-why-missing');
    await fill(notebook, /^What changed, and why/, 'Stop of the last cassette put right by five minutes');
    const second = join(out, 'revision-2.pdf');
    await handOutSheet(notebook, 'Make revision 2', '2', second);
    readSheet(second, { revision: '2', numbers, lastStop: '15:00', lastLitres: '634.2' });
    await handOverBox(notebook);
    await tap(notebook, 'Today');
    await notebook.picture('today-sent');

    // Eight days later, the laboratory's report in hand.
    await notebook.at('09:00', '2026-10-14');
    await tap(notebook, 'Results');
    await notebook.picture('results-empty');
    await keyIn(notebook, [
      { mass: '38.0', limit: '2.5', volume: '1256', concentration: '30.2' },
      { mass: '9.6', limit: '2.5' },
      { mass: 'ND' },
      { mass: '<2.5' },
      { mass: '<2.5' },
    ]);
    await tap(notebook, 'Write 5 results down');
    await says(notebook, /"ND" carries no number/);
    await notebook.picture('results-wrong');
    await notebook.page.getByLabel('Lead, µg').nth(2).fill('<2.5');
    await notebook.picture('results');
    await tap(notebook, 'Write 5 results down');
    await heading(notebook, '5 results are written down');
    await notebook.picture('results-written');

    await tap(notebook, `Go to the day of ${ines.name}`);
    await heading(notebook, `The day of ${ines.name}`);
    await notebook.picture('day-ines-open');
    await stateHours(notebook, '06:30', '15:30');
    await explain(notebook, ['06:30', '06:50'], 'Away from the lead area', 'Setting up at the truck');
    await explain(notebook, ['15:00', '15:30'], 'Away from the lead area', 'Washed and changed, then paperwork');
    // 38.0 / (0.48 * 2.56411) = 30.875 µg/m³: above 30, below 50. Nine hours: 30.875 * 8 / 9 = 27.44 against 400 / 9 = 44.44.
    await saysFigures(notebook, ['30.9', '27.4', '44.4']);
    await says(notebook, /^Above the action level, 30.µg\/m³$/);
    await says(notebook, /^Below the permissible exposure limit, 50.µg\/m³$/);
    await says(notebook, 'Not above what the average over a shift of this length may reach');
    await notebook.picture('day-ines');
    await tap(notebook, 'Samples');
    await tap(notebook, new RegExp(`${firstNumber}`));
    await notebook.picture('sample-finished');
    await tap(notebook, 'See the day and its result');
    await heading(notebook, `The day of ${tomas.name}`);
    await stateHours(notebook, '06:30', '15:30');
    await explain(notebook, ['06:30', '07:00'], 'Away from the lead area', 'Setting up at the truck');
    await explain(
      notebook,
      ['10:00', '10:10'],
      'The same as while a sample ran',
      'Scraped on while the cassette was changed',
      firstNumber,
    );
    await explain(notebook, ['15:00', '15:30'], 'Away from the lead area', 'Washed and changed');
    /*
     * First cassette 9.6 / (0.48 * 2.47835) = 8.0699, ten minutes like it (9.6 µg / 446.10 L = 21.520 µg/m³) * 10 / 480 = 0.4483, second
     * cassette from nothing to 2.5 / (0.48 * 2.43921) = 2.1353: from 8.518 to 10.653, over nine hours from 7.572 to 9.470 µg/m³. Bounds
     * are shown rounded outward.
     */
    await saysFigures(notebook, ['between 8.51 and 10.7', 'between 7.57 and 9.47', '44.4']);
    await says(notebook, /^Below the action level, 30.µg\/m³$/);
    await says(notebook, /^Below the permissible exposure limit, 50.µg\/m³$/);
    await notebook.picture('day-tomas');
    expect(shelf.watched.flat()).toEqual([]);
  } catch (failure) {
    await notebook.picture('failed').catch(() => undefined);
    throw failure;
  } finally {
    await notebook.kill();
    await server.stop();
    dropProfile(shelf.profile);
  }
});
