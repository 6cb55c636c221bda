// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { isSampleNumber } from '#records/sampleNumber.ts';
import { everydayTasks } from '#reference/tasks.ts';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import { en as fittingWords } from '#words/fitting.ts';
import { en, es } from '#words/worker.ts';
import {
  address,
  button,
  heading,
  journal,
  lastFact,
  put,
  type Stage,
  screen,
  setStage,
  strike,
  visit,
  waitFor,
} from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

const fitPage = () => `/shift/${stage.day.shiftId}/fit`;

/** Ada, scraping by hand, with pump P-1 and lot L-77. */
async function chooseAll() {
  const user = visit(fitPage());
  await heading('Prepare a worker');
  await user.click(screen.getByRole('radio', { name: 'Ada Quill' }));
  await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
  await user.click(screen.getByRole('radio', { name: 'P-1' }));
  return user;
}

async function preparedSample(taskIds = ['handScraping']) {
  const one = sampleOf(stage.day);
  const prepared = one.prepared(entry());
  await put([{ ...prepared, body: { ...prepared.body, taskIds } } as typeof prepared]);
  return one.sampleId;
}

describe('preparing a worker', () => {
  test('shows what is presumed of scraping by hand, with its paragraph, 29 CFR 1926.62(d)(2)', async () => {
    await chooseAll();
    expect(screen.getByText(/above 50.µg\/m³ and up to 500.µg\/m³/)).toBeVisible();
    expect(screen.getAllByText(/29 CFR 1926\.62.*\(d\)\(2\)/)[0]).toBeVisible();
    expect(screen.getByText(/^A respirator with protection factor 10 or more for up to 8 hours of work/)).toBeVisible();
  });

  test('gives the cassette a number with its check digit, to be written on it, and then asks for the worker', async () => {
    await put([flowCheckOf(stage.day, 'before')(entry())]);
    const user = await chooseAll();
    expect(screen.getByText(/flow before 2\.00.L\/min at 06:00/)).toBeVisible();
    await user.click(await button('Prepare the cassette'));
    await heading('The cassette for Ada Quill is prepared.');
    const fact = await lastFact('samplePrepared.v1');
    const number = String(fact?.body.sampleNumber);
    expect(isSampleNumber(number)).toBe(true);
    expect(screen.getByText(number.split('').join('\u00a0'), { normalizer: (text) => text })).toBeVisible();
    expect(screen.getByRole('link', { name: 'Hand the phone to Ada Quill' })).toHaveAttribute(
      'href',
      `#/worker/${fact?.body.sampleId}`,
    );
  });

  test('says that a pump has no flow check yet', async () => {
    const user = await chooseAll();
    expect(screen.getByText('no flow check yet')).toBeVisible();
    await user.click(await button('Prepare the cassette'));
    expect(await screen.findByText(/Pump P-1 has no flow check yet/)).toBeVisible();
  });

  test('writes down a new worker, pump, lot and job classification where they are first needed', async () => {
    const user = visit(fitPage());
    await heading('Prepare a worker');
    await user.click(screen.getByRole('radio', { name: 'Add a worker' }));
    await user.type(screen.getByLabelText('Name'), 'Benicio Ruelle');
    await user.click(screen.getByRole('radio', { name: 'Español' }));
    await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
    await user.click(screen.getByRole('radio', { name: 'Add a pump' }));
    await user.type(screen.getByLabelText('Number on the pump'), 'P-9');
    await user.type(screen.getByLabelText(/Job classification, as/), 'Sash restorer');
    await user.click(await button('Prepare the cassette'));
    await heading('The cassette for Benicio Ruelle is prepared.');
    const kinds = (await journal()).slice(-5).map(({ kind }) => kind);
    expect(kinds).toEqual([
      'jobClassificationAdded.v1',
      'personAdded.v1',
      'pumpAdded.v1',
      'samplePrepared.v1',
      'workNoted.v1',
    ]);
  });

  test('asks what the list of presumed tasks leaves open, and shows the more careful reading until it is answered', async () => {
    const user = await chooseAll();
    await user.click(screen.getByRole('button', { name: /^Show all \d+ tasks$/ }));
    await user.click(screen.getByRole('checkbox', { name: 'Power sanding' }));
    expect(screen.getByText(/Does the tool collect its dust/)).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'Power sanding with a shroud and HEPA vacuum' }));
    await waitFor(() => expect(screen.queryByText(/Does the tool collect its dust/)).toBeNull());
    expect(screen.getByRole('checkbox', { name: 'Power sanding with a shroud and HEPA vacuum' })).toBeChecked();
  });

  test('every open question of the list of everyday tasks has its words', () => {
    const asked = everydayTasks().flatMap(({ question }) => question ?? []);
    expect(asked.length).toBeGreaterThan(5);
    for (const question of asked) expect(fittingWords.questions[question]).toMatch(/\?$/);
  });
});

describe("the worker's page", () => {
  test('speaks the language of the worker, and the other at a tap', async () => {
    const sampleId = await preparedSample();
    const user = visit(`/worker/${sampleId}`);
    await heading('Ada Quill, this is your pump');
    await user.click(await button('Español'));
    await heading('Ada Quill, esta es su bomba');
    expect(screen.getByRole('main')).toHaveAttribute('lang', 'es');
    expect(screen.getByText(es.watchText)).toBeVisible();
  });

  test('keeps the points, the offer to watch and the initials', async () => {
    const sampleId = await preparedSample();
    const user = visit(`/worker/${sampleId}`);
    await heading(/Ada Quill/);
    for (const box of screen.getAllByRole('checkbox')) await user.click(box);
    await user.click(screen.getByRole('radio', { name: en.modes.fitted }));
    await user.type(screen.getByLabelText('Initials'), 'AQ');
    await user.click(await button(en.done));
    await waitFor(() => expect(address()).toBe(`/sample/${sampleId}`));
    expect((await lastFact('fittingChecked.v1'))?.body).toMatchObject({
      mode: 'fitted',
      initials: 'AQ',
      observationOffered: true,
      points: { breathingZone: true, insideHelmet: null, running: true },
    });
  });

  test('asks once about points that are not tapped, then writes them down as they are', async () => {
    const sampleId = await preparedSample();
    const user = visit(`/worker/${sampleId}`);
    await heading(/Ada Quill/);
    for (const box of screen.getAllByRole('checkbox').slice(1)) await user.click(box);
    await user.click(screen.getByRole('radio', { name: en.modes.declined }));
    await user.click(await button(en.done));
    expect(await screen.findByText('One line is not tapped')).toBeVisible();
    await user.click(await button(en.goOn));
    await waitFor(async () => expect(await lastFact('fittingChecked.v1')).toBeDefined());
    expect((await lastFact('fittingChecked.v1'))?.body).toMatchObject({
      mode: 'declined',
      initials: null,
      points: { pumpSecured: false, tubingSecured: true },
    });
  });

  test('hot work adds the point of the helmet', async () => {
    visit(`/worker/${await preparedSample(['torchCutting'])}`);
    await heading(/Ada Quill/);
    expect(screen.getByRole('checkbox', { name: en.points.insideHelmet })).toBeVisible();
  });
});

describe('words of the worker', () => {
  test('are complete in Spanish, and none is left in English', () => {
    const flat = (words: object): string[] =>
      Object.values(words).flatMap((value) =>
        typeof value === 'string' ? [value] : typeof value === 'object' && value !== null ? flat(value) : [],
      );
    const [english, spanish] = [flat(en), flat(es)];
    expect(spanish.length).toBe(english.length);
    expect(spanish.filter((text) => english.includes(text))).toEqual([]);
  });
});
