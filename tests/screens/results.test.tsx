// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { addMinutes } from '#core/calendar.ts';
import { findSample } from '#findings/sample.ts';
import type { Book } from '#records/book.ts';
import { happenedNow, now } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { sampleBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { Writer } from '../records/facts.ts';
import { arrive } from './foreign.ts';
import {
  address,
  alerts,
  button,
  facts,
  heading,
  leaveOffice,
  practiceOffice,
  samples,
  screen,
  visit,
  waitFor,
} from './office.tsx';

beforeEach(async () => {
  await practiceOffice();
});
afterEach(leaveOffice);

/** Stops today's pump after 100 minutes and checks its flow again: (2.53 + 2.54 + 2.54) / 3 = 2.5367 L/min before and after. */
async function stopToday(): Promise<string> {
  const running = (await samples()).find(({ putOn, stopped }) => putOn !== null && stopped === null);
  if (!running?.putOn) throw new Error('nothing runs');
  const at = (instant: string) => ({
    happened: { ...happenedNow('UTC'), at: instant, entry: 'typed' as const, from: null },
    by: null,
  });
  const before = (await facts('flowChecked.v1')).at(-1)?.body ?? {};
  const stopAt = addMinutes(running.putOn.at, 100);
  const after = { ...before, flowCheckId: 'aaaaaaaaaaaa', purpose: 'after' as const } as never;
  const written = await write([
    newFact('pumpStopped.v1', { sampleId: running.id, pumpMin: 100 }, at(stopAt)),
    newFact('flowChecked.v1', after, at(addMinutes(stopAt, 2))),
    newFact(
      'cassetteSealed.v1',
      { sampleId: running.id, labelled: true, lockedIn: 'Van', lockedById: null },
      at(now()),
    ),
  ]);
  expect(written).toMatchObject({ kind: 'written' });
  return running.sampleNumber;
}

async function fillHead(user: ReturnType<typeof visit>) {
  await user.type(await screen.findByLabelText('Report number'), 'R-2201');
  for (const group of screen.getAllByRole('group', { name: /subtracted|inner wall/ }))
    await user.click(group.querySelector('input[value=no]') as HTMLElement);
}

describe('keying in a report', () => {
  test('with nothing waiting, the page says so and leads back', async () => {
    visit('/results');
    expect(await screen.findByText(/Nothing waits for a result/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Go to Today' })).toBeVisible();
  });

  test('a line goes in by the keyboard alone, Enter after Enter, and is weighed against our own figure', async () => {
    const number = await stopToday();
    const user = visit('/results');
    await fillHead(user);
    await user.click(screen.getByLabelText('Number'));
    // 100 min at 2.5367 L/min are 253.67 L; 7.61 µg in it are 30.0 µg/m³, worked by hand
    await user.keyboard(`${number}{Enter}7.61{Enter}2.5{Enter}253.7{Enter}30.0`);
    expect(screen.getAllByLabelText(/Reported figure/)[0]).toHaveValue('30.0');
    expect(await screen.findByText(/Pia Putty, Wednesday 25 November 2026/)).toBeVisible();
    expect(await screen.findByText(/253\.7.L of air, so 30\.0.µg\/m³/)).toBeVisible();
    await user.click(await button('Write the result down'));
    await heading('One result is written down');
    const result = (await facts('resultReceived.v1')).at(-1)?.body;
    expect(result).toMatchObject({
      reportNumber: 'R-2201',
      mass: { kind: 'measured', massUg: 7.61 },
      reportingLimitUg: 2.5,
      blankCorrected: 'no',
      wallDeposit: 'no',
      laboratoryVolumeL: 253.7,
      laboratoryConcentrationUgPerM3: 30,
      saeFraction: null,
      receivedOn: '2026-11-25',
    });
    await user.click(screen.getByRole('link', { name: /Go to the day of Pia Putty/ }));
    expect(address()).toMatch(/^\/day\/[0-9a-z]{12}\.2026-11-25$/);
  });

  test('a figure of the laboratory that is far from ours is pointed at before anything is written', async () => {
    const number = await stopToday();
    const user = visit('/results');
    await user.type(await screen.findByLabelText('Number'), number);
    await user.type(screen.getAllByLabelText('Lead, µg')[0] as HTMLElement, '7.61');
    await user.type(screen.getAllByLabelText(/Reported figure/)[0] as HTMLElement, '60');
    expect(await screen.findByText(/look which volume it was given/)).toBeVisible();
  });

  test('a less-than carries its reporting limit, and a tap on the list puts the number in', async () => {
    const number = await stopToday();
    const user = visit('/results');
    await fillHead(user);
    await user.click(await button(new RegExp(`^${number}`)));
    expect(screen.getAllByLabelText('Number')[0]).toHaveValue(number);
    await user.type(screen.getAllByLabelText('Lead, µg')[0] as HTMLElement, '<2,5');
    await user.click(await button('Write the result down'));
    await heading('One result is written down');
    expect((await facts('resultReceived.v1')).at(-1)?.body).toMatchObject({
      mass: { kind: 'lessThan', reportingLimitUg: 2.5 },
      reportingLimitUg: 2.5,
    });
  });

  test('a second report of a sample is told, and both are kept', async () => {
    await stopToday();
    const earlier = (await samples()).find(({ results, sampleKind }) => sampleKind === 'air' && results.length > 0);
    const user = visit('/results');
    await fillHead(user);
    await user.type(screen.getAllByLabelText('Number')[0] as HTMLElement, earlier?.sampleNumber ?? '');
    expect(await screen.findByText(/A result is in already/)).toBeVisible();
    await user.type(screen.getAllByLabelText('Lead, µg')[0] as HTMLElement, '25');
    await user.click(await button('Write the result down'));
    await heading('One result is written down');
    await waitFor(async () => {
      const again = (await samples()).find(({ id }) => id === earlier?.id);
      expect(again?.results).toHaveLength(2);
    });
  });

  test('what is typed is there again after the page was left', async () => {
    const number = await stopToday();
    const user = visit('/results');
    await user.type(await screen.findByLabelText('Number'), number);
    await user.type(screen.getAllByLabelText('Lead, µg')[0] as HTMLElement, '7.6');
    await waitFor(() => expect(screen.getByText(/Pia Putty, Wednesday/)).toBeVisible());
    visit('/results');
    await waitFor(() => expect(screen.getAllByLabelText('Lead, µg')[0]).toHaveValue('7.6'));
    expect(alerts()).toBe('');
  });
});

describe('a number on two cassettes', () => {
  test('is chosen from by worker, day and site; unchosen it is told, and the result goes to the one chosen', async () => {
    const number = await stopToday();
    const one = (await samples()).find((sample) => sample.sampleNumber === number);
    const prepared = (await facts('samplePrepared.v1')).find(({ body }) => body.sampleId === one?.id);
    const twin = 'k00000000001';
    const device = new Writer('77777777aaaa', '2026-11-25');
    await arrive(device, [
      newFact('samplePrepared.v1', { ...prepared?.body, sampleId: twin } as never, {
        happened: happenedNow('UTC'),
        by: null,
      }),
    ]);
    const user = visit('/results');
    await fillHead(user);
    await user.type(screen.getAllByLabelText('Number')[0] as HTMLElement, number);
    await user.type(screen.getAllByLabelText('Lead, µg')[0] as HTMLElement, '12.4');
    expect(await screen.findByRole('group', { name: new RegExp(`Which cassette ${number}`) })).toBeVisible();
    await user.click(await button('Write the result down'));
    expect(alerts()).toContain(`More than one cassette has the number ${number}`);
    expect(await facts('resultReceived.v1')).toHaveLength(
      (await samples()).filter(({ results }) => results.length > 0).length,
    );
    const choice = screen.getAllByRole('radio').find((radio) => (radio as HTMLInputElement).value === twin);
    await user.click(choice as HTMLElement);
    await user.click(await button('Write the result down'));
    await heading('One result is written down');
    expect((await facts('resultReceived.v1')).at(-1)?.body.sampleId).toBe(twin);
    const { db } = theSession();
    const finding = findSample(twin, (await sampleBook(db, twin)) as Book);
    expect(finding.reasons.map(({ key }) => key)).toContain('numberTwice');
  });
});
