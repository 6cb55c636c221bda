// @vitest-environment happy-dom
/** One worker, one worker's exposure record, one site at the door, and the papers that are no record: on a real store. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { newId } from '#store/device.ts';
import { getFile } from '#store/files.ts';
import { newFact } from '#store/newFact.ts';
import { entry, zone } from '#tests/store/scenario.ts';
import { choose, measuredDay, openPage, watchDownloads, withoutConnection } from './officeDay.tsx';
import { alerts, button, heading, lastFact, put, type Stage, screen, setStage, strike, waitFor } from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  withoutConnection();
  stage = await setStage();
});
afterEach(async () => {
  await strike();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const page = (): string => document.querySelector('main')?.textContent?.replaceAll('\u00a0', ' ') ?? '';

describe('one worker', () => {
  test('above the PEL: every three months, the next date, the day that counts, the notice that is owed, the record', async () => {
    await measuredDay(stage);
    openPage(`/person/${stage.day.personId}`);
    await heading('Ada Quill');
    // (d)(6)(iii): from 25 November 2026 three calendar months on; and now, since the hours were never asked.
    expect(page()).toContain('at least every three months; due now, in any case by Thursday 25 February 2027');
    expect(page()).toContain('One day in the twelve months from');
    expect(page()).toContain('Result of Wednesday 25 November 2026: not told yet, by Wednesday 2 December 2026');
    expect(screen.getByRole('link', { name: /^Wednesday 25 November 2026.*exposure record as PDF/ })).toHaveAttribute(
      'href',
      `#/exposure-record/${stage.day.personId}.2026-11-25`,
    );
    // 62.5 over 50 is 1.25: the least factor of 1910.134 Table 1 that reaches it for a tier 1 task is 10.
    expect(page()).toContain('assigned protection factor at least 10');
    expect(page()).not.toContain('N95 ');
  });

  test('somebody for whom it stands counts the day as represented, told apart', async () => {
    const { besideId } = await measuredDay(stage);
    const user = openPage(`/person/${besideId}`);
    await heading('Luz Lath');
    await user.click(screen.getByText('Show the day'));
    expect(page()).toContain('Wednesday 25 November 2026: at or above, by a measurement that stands for it');
  });

  test('without any work it says so; without the person too; the list names everybody', async () => {
    openPage(`/person/${stage.day.personId}`);
    expect(await screen.findByText(/No day of work is written down/)).toBeVisible();
    openPage('/person/0123456789ab');
    expect(await screen.findByText('This person is not in the book on this device.')).toBeVisible();
    openPage('/person');
    expect(await screen.findByRole('link', { name: 'Ada Quill' })).toBeVisible();
  });
});

describe('the exposure record', () => {
  test('for whom is asked; bytes and fact are written together; a second one says what changed', async () => {
    const { workdayId } = await measuredDay(stage);
    const user = openPage(`/exposure-record/${workdayId}`);
    const to = await screen.findByLabelText('For whom is it');
    await user.clear(to);
    await user.click(await button('Make the exposure record'));
    expect(alerts()).toContain('For whom is it');
    await user.type(to, 'Dr. Plumb');
    await user.click(await button('Make the exposure record'));
    await waitFor(async () => expect(await lastFact('exposureRecordIssued.v1')).toBeDefined(), { timeout: 20_000 });
    const body = (await lastFact('exposureRecordIssued.v1'))?.body as Record<string, unknown>;
    expect(body).toMatchObject({ workdayId, revision: '1', to: 'Dr. Plumb' });
    expect((await getFile(String(body.pdfHash)))?.type).toBe('application/pdf');
    expect(await screen.findByText(/^Record 1 for Dr\. Plumb, made 25 November 2026/)).toBeVisible();
    await user.click(await button('Make record 2'));
    expect(alerts()).toContain('Say what changed since the last one');
  }, 30_000);

  test('of a day that is not here says so', async () => {
    openPage('/exposure-record/0123456789ab.2026-11-25');
    expect(await screen.findByText('This day is not in the book on this device.')).toBeVisible();
  });
});

describe('one site at the door', () => {
  test('two taps away; figures, people, what is told; of another site neither its name nor whoever worked there only', async () => {
    await measuredDay(stage);
    const [siteId, otherId] = [newId(), newId()];
    const by = entry(stage.day.personId);
    const site = { siteId, name: 'Footbridge', stateCode: 'OH', setting: 'outdoors' as const, altitudeM: null, zone };
    const other = { name: 'Bo Rivet', identifier: null, language: 'en' as const, jobClassificationId: null };
    const work = { taskIds: ['handScraping'], jobClassificationId: null, respirator: null };
    await put([
      newFact('siteAdded.v1', site, by),
      newFact('personAdded.v1', { personId: otherId, employer: null, ...other }, by),
      newFact('shiftOpened.v1', { shiftId: `${siteId}.2026-11-25`, siteId, workOn: '2026-11-25' }, by),
      newFact('workNoted.v1', { workdayId: `${otherId}.2026-11-25`, shiftId: `${siteId}.2026-11-25`, ...work }, by),
    ]);
    const user = openPage('/inspector');
    await user.click(await screen.findByRole('link', { name: /^Public library, reading room/ }));
    expect(await screen.findByText('62.5 µg/m³')).toBeVisible();
    expect(page()).toContain('above the PEL');
    expect(page()).toContain('Luz Lath');
    expect(page()).toContain('Result of Wednesday 25 November 2026: 0 of 2 told');
    expect(page()).toContain('Print this page');
    expect(page()).not.toContain('Footbridge');
    expect(page()).not.toContain('Bo Rivet');
    expect(page()).not.toContain('undefined');
  });

  test('gear found bad stands at each measured day that rests on it', async () => {
    await measuredDay(stage);
    const found = { foundOn: '2026-11-25', fromOn: null, untilOn: null, found: 'Loses flow when warm' };
    const body = { gear: 'pump', gearId: stage.day.pumpId, doubtId: newId(), ...found } as const;
    await put([newFact('gearDoubted.v1', body, entry(stage.day.personId))]);
    openPage(`/inspector/${stage.day.siteId}`);
    expect(await screen.findByText('62.5 µg/m³')).toBeVisible();
    expect(page()).toMatch(/rests on pump \S+, found bad on 25 November 2026 \(not settled\)/);
  });

  test('a site without work says so in each part; one that is not here too', async () => {
    openPage(`/inspector/${stage.day.siteId}`);
    expect(await screen.findByText('Nothing was measured at this site.')).toBeVisible();
    expect(screen.getByText('No box went to a laboratory from this site.')).toBeVisible();
    openPage('/inspector/0123456789ab');
    expect(await screen.findByText('This site is not in the book on this device.')).toBeVisible();
  });
});

describe('papers that are no record', () => {
  test('sign and blank form are made without a connection; a bad count is told at its field', async () => {
    const handed = watchDownloads();
    const user = openPage('/papers');
    await user.click(await button('Sign and label as PDF'));
    await waitFor(() => expect(handed).toEqual(['lead-sign-and-label.pdf']), { timeout: 20_000 });
    const sheets = screen.getByLabelText('How many sheets');
    await user.clear(sheets);
    await user.type(sheets, 'two');
    await choose(user, 'In which languages', 'English');
    await choose(user, 'In which languages', 'Spanish');
    await user.click(await button('Blank form as PDF'));
    expect(alerts()).toContain('write a whole number from 1 to 20');
    expect(alerts()).toContain('choose at least one');
    await user.clear(sheets);
    await user.type(sheets, '2');
    await choose(user, 'In which languages', 'Spanish');
    await user.click(await button('Blank form as PDF'));
    await waitFor(() => expect(handed).toHaveLength(2), { timeout: 20_000 });
  }, 40_000);
});
