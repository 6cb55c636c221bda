// @vitest-environment happy-dom
/** The written determination on a real store: 29 CFR 1926.62(d)(4) and (d)(5). Negative only when nothing stands against it. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { getFile } from '#store/files.ts';
import { choose, measuredDay, openPage, withoutConnection } from './officeDay.tsx';
import { alerts, button, drafts, lastFact, type Stage, screen, setStage, strike, waitFor } from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  withoutConnection();
  stage = await setStage();
});
afterEach(async () => {
  await strike();
  vi.unstubAllGlobals();
});

const groupPath = () => `/determination/${stage.day.siteId}?group=${encodeURIComponent('indoors|-|handScraping')}`;

test('the groups of a site are listed with how they stand; a site without work says what to do', async () => {
  openPage(`/determination/${stage.day.siteId}`);
  expect(await screen.findByText(/Nothing was done at this site yet/)).toBeVisible();
  await measuredDay(stage);
  openPage(`/determination/${stage.day.siteId}`);
  expect(await screen.findByRole('link', { name: /Scraping paint by hand, indoors/ })).toHaveTextContent('positive');
});

describe('62.5 µg/m³, above the action level', () => {
  test('is positive; a negative one is not offered, and the reason leads to the day', async () => {
    const { workdayId } = await measuredDay(stage);
    openPage(groupPath());
    expect(await screen.findByText(/the determination is positive/)).toBeVisible();
    expect(screen.queryByLabelText(/^Negative/)).toBeNull();
    const reason = screen.getByRole('link', { name: /at or above the action level/ });
    expect(reason).toHaveAttribute('href', `#/day/${workdayId}`);
  });

  test('an empty form says what (d)(5) asks for, keeps what was typed, and makes nothing', async () => {
    await measuredDay(stage);
    const user = openPage(groupPath());
    await user.type(await screen.findByLabelText('Information, observations and calculations'), 'Dust seen');
    await user.type(screen.getByLabelText('Complaints of workers that they laid to lead'), 'BLL 31 told');
    await user.click(await button('Write the positive determination'));
    expect(alerts()).toContain('Where within the worksite');
    expect(alerts()).toContain('looks like a medical value');
    expect(await lastFact('determinationWritten.v1')).toBeUndefined();
    expect(JSON.stringify(await drafts())).toContain('Dust seen');
  });

  test('is written: bytes and fact together, with place, day, the monitored worker and whom it stands for', async () => {
    const { workdayId, besideId } = await measuredDay(stage);
    const user = openPage(groupPath());
    await user.type(await screen.findByLabelText('Where within the worksite'), 'Reading room');
    await choose(user, 'Workers on the paper', 'By name');
    await user.click(await button('Write the positive determination'));
    await waitFor(async () => expect(await lastFact('determinationWritten.v1')).toBeDefined(), { timeout: 20_000 });
    const body = (await lastFact('determinationWritten.v1'))?.body as Record<string, unknown>;
    expect(body).toMatchObject({
      outcome: 'positive',
      siteId: stage.day.siteId,
      location: 'Reading room',
      determinedOn: '2026-11-25',
      taskIds: ['handScraping'],
      measurementIds: [workdayId],
      monitoredIds: [stage.day.personId],
    });
    expect(body.standsForIds).toContain(besideId);
    expect((await getFile(String(body.pdfHash)))?.type).toBe('application/pdf');
    expect(await screen.findByText('Written, positive, 25 November 2026')).toBeVisible();
  }, 30_000);
});

test('9.6 µg of lead make 10 µg/m³: low, yet what was never asked stands against a negative one, each reason said', async () => {
  // 9.6 µg in 960 L; nobody stated the hours, the other work, or whether it was a regular day.
  await measuredDay(stage, 9.6);
  openPage(groupPath());
  expect(await screen.findByText('A negative initial determination may not be written yet.')).toBeVisible();
  expect(screen.getByText(/It is not said whether it was a regular day/)).toBeVisible();
  expect(screen.queryByLabelText(/^Negative/)).toBeNull();
});

test('a site that is not in the book says so', async () => {
  openPage('/determination/0123456789ab');
  expect(await screen.findByText('This site or this task group is not in the book.')).toBeVisible();
});
