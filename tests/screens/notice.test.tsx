// @vitest-environment happy-dom
/** Telling a result on a real store: made without a connection, given worker by worker, late, revised. 29 CFR 1926.62(d)(8). */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { getFile, hashOf } from '#store/files.ts';
import { newFact } from '#store/newFact.ts';
import { entry } from '#tests/store/scenario.ts';
import {
  choose,
  type Measured,
  measuredDay,
  openPage,
  resultOf,
  watchDownloads,
  withoutConnection,
} from './officeDay.tsx';
import {
  alerts,
  button,
  drafts,
  journal,
  lastFact,
  minute,
  put,
  type Stage,
  screen,
  setStage,
  strike,
  waitFor,
} from './stage.tsx';

let stage: Stage;
let measured: Measured;

beforeEach(async () => {
  withoutConnection();
  stage = await setStage();
  measured = await measuredDay(stage);
});
afterEach(async () => {
  await strike();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const noticePath = () => `/notice/${measured.workdayId}`;

async function filled(): Promise<ReturnType<typeof openPage>> {
  const user = openPage(noticePath());
  await screen.findByRole('group', { name: 'How is it given?' });
  await choose(user, 'How is it given?', 'To each one in writing');
  await choose(user, 'Workers on the notice', 'By name');
  await user.type(
    screen.getByLabelText(/^What was done, or will be done, to bring it below/),
    'Mist and shroud from Monday',
  );
  return user;
}

async function made(): Promise<ReturnType<typeof openPage>> {
  const user = await filled();
  await user.click(await button('Make the notice'));
  await waitFor(async () => expect(await lastFact('noticeIssued.v1')).toBeDefined(), { timeout: 20_000 });
  await button('Print or share notice 1');
  return user;
}

describe('(d)(8)(i): as soon as possible, within five working days of receipt, to everyone it stands for', () => {
  test('received Wednesday 25 November: Wednesday 2 December is the last day, counted by hand; the holiday reading is a note', async () => {
    openPage(noticePath());
    expect(await screen.findByText(/by Wednesday 2 December 2026 at the latest/)).toBeVisible();
    // Thanksgiving, Thursday 26 November 2026, left out as well.
    expect(screen.getByText(/Thursday 3 December 2026\. Our own note, not a citation/)).toBeVisible();
  });

  test('the measured worker and whoever did the same by the roster are ticked, with the other employer', async () => {
    openPage(noticePath());
    expect(await screen.findByRole('checkbox', { name: 'Ada Quill' })).toBeChecked();
    expect(screen.getByRole('checkbox', { name: 'Luz Lath' })).toBeChecked();
    expect(screen.getByText('Second Coat')).toBeVisible();
  });

  test('leaving somebody out asks why; nothing is made, and what was typed is kept', async () => {
    const user = await filled();
    await user.click(screen.getByRole('checkbox', { name: 'Luz Lath' }));
    await user.click(await button('Make the notice'));
    expect(alerts()).toContain('Say why somebody is left out');
    expect(await lastFact('noticeIssued.v1')).toBeUndefined();
    expect(JSON.stringify(await drafts())).toContain('Mist and shroud');
  });

  test('an empty form says each thing that is missing', async () => {
    const user = openPage(noticePath());
    await screen.findByRole('group', { name: 'How is it given?' });
    await user.click(await button('Make the notice'));
    expect(alerts()).toContain('How is it given?');
    expect(alerts()).toContain('Workers on the notice');
    expect(alerts()).toContain('Say what was done or will be done');
  });

  test('a worker who reads Spanish is not given English alone, and a number that is missing is told', async () => {
    const user = await filled();
    await user.click(screen.getByRole('checkbox', { name: 'Spanish' }));
    await choose(user, 'Workers on the notice', "By the firm's own number");
    await user.click(await button('Make the notice'));
    expect(alerts()).toContain('Luz Lath reads Spanish: add that language');
    expect(alerts()).toContain('Without a number of the firm: Luz Lath');
  });

  test('posted asks for the place', async () => {
    const user = await filled();
    await choose(user, 'How is it given?', 'Posted where everyone can reach it');
    await user.click(await button('Make the notice'));
    expect(alerts()).toContain('Say where it is posted');
  });
});

describe('(d)(8)(ii): the statement and the corrective action', () => {
  test('62.5 is at or above 50: both languages say so as the worker reads them, with the action in the words of the firm', async () => {
    await filled();
    expect(await screen.findByText(/^Exposure was at or above the permissible exposure limit of 50/)).toBeVisible();
    expect(screen.getByText(/^La exposición estuvo en el límite de exposición permisible de 50/)).toBeVisible();
    expect(screen.getAllByText('Mist and shroud from Monday').length).toBeGreaterThan(1);
    expect(screen.getAllByText(/62\.5/).length).toBeGreaterThan(1);
  });
});

describe('making and giving it', () => {
  test('bytes and fact are written together, without a connection; the values are those of the result', async () => {
    await made();
    const body = (await lastFact('noticeIssued.v1'))?.body as Record<string, unknown> & { pdfHash: string };
    expect(body).toMatchObject({
      measurementId: measured.workdayId,
      revision: '1',
      receivedOn: '2026-11-25',
      form: 'inWriting',
      languages: ['en', 'es'],
      pelStatement: true,
      correctiveAction: 'Mist and shroud from Monday',
    });
    expect(new Set(body.workerIds as string[])).toEqual(new Set([stage.day.personId, measured.besideId]));
    const file = await getFile(body.pdfHash);
    expect(hashOf(file?.bytes ?? new Uint8Array())).toBe(body.pdfHash);
    expect(new TextDecoder('latin1').decode(file?.bytes.slice(0, 5))).toBe('%PDF-');
  }, 30_000);

  test('it is handed out by the kept bytes, and each worker is noted: handed over, would not sign', async () => {
    const user = await made();
    const handed = watchDownloads();
    await user.click(await button('Print or share notice 1'));
    await waitFor(() => expect(handed).toEqual(['notice-of-results-2026-11-25-1.pdf']));
    await choose(user, 'Who', 'Ada Quill');
    await user.click(await button('Note it'));
    expect(alerts()).toContain('How');
    await choose(user, 'How', 'Handed over');
    await user.type(screen.getByLabelText(/^Initials/), 'AQ');
    await user.click(await button('Note it'));
    expect(await screen.findByText(/^Ada Quill: handed over 25 November 2026/)).toBeVisible();
    expect((await lastFact('noticeGiven.v1'))?.body).toMatchObject({ how: 'handedOver', initials: 'AQ' });
    expect(await screen.findByText('Not told yet: Luz Lath')).toBeVisible();
    await choose(user, 'Who', 'Luz Lath');
    await choose(user, 'How', 'Handed over; would not sign');
    await user.click(await button('Note it'));
    expect(await screen.findByText('Everyone it stands for was told this result.')).toBeVisible();
  }, 30_000);

  test('given after the last day it is late, and says how that is mended', async () => {
    stage.clock.forward(9 * 24 * 60 * minute);
    openPage(noticePath());
    expect(
      await screen.findByText(/Wednesday 2 December 2026, has passed\. Give the notice now all the same/),
    ).toBeVisible();
  });

  test('a revised result asks for a new notice and why; the first one stays', async () => {
    await made();
    stage.clock.forward(24 * 60 * minute);
    await put([newFact('resultReceived.v1', resultOf(measured.sampleId, 48, 'R-2', '2026-11-26'), entry())]);
    const user = openPage(noticePath());
    expect(await screen.findByText(/The result was revised since the last notice/)).toBeVisible();
    await screen.findByRole('group', { name: 'How is it given?' });
    await choose(user, 'How is it given?', 'To each one in writing');
    await choose(user, 'Workers on the notice', 'By name');
    await user.click(await button('Make notice 2'));
    expect(alerts()).toContain('Say what changed since the last notice');
    expect((await journal()).filter(({ kind }) => kind === 'noticeIssued.v1')).toHaveLength(1);
  }, 30_000);

  test('where nothing is to be told, the page says so', async () => {
    openPage('/notice/0123456789ab.2026-11-25');
    expect(await screen.findByText('No notice is owed here')).toBeVisible();
  });
});
