// @vitest-environment happy-dom
import { afterEach, describe, expect, test } from 'vitest';
import { newBook } from '#store/opening.ts';
import {
  address,
  alerts,
  button,
  emptyOffice,
  facts,
  heading,
  leaveOffice,
  practiceOffice,
  screen,
  visit,
  waitFor,
} from './office.tsx';

afterEach(leaveOffice);
const hour = 60 * 60_000;

describe('today without a shift', () => {
  test('opening the shift is the one thing to do; the site is written down with what is needed now', async () => {
    await emptyOffice();
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const user = visit('/');
    await heading(/25 November 2026/);
    await user.type(await screen.findByLabelText('Name of the site'), 'Steel footbridge');
    await user.selectOptions(screen.getByLabelText('State or territory'), 'OH');
    await user.click(screen.getByRole('radio', { name: 'Outdoors' }));
    await user.type(screen.getByLabelText(/Altitude/), '230');
    await user.clear(screen.getByLabelText('Time zone'));
    await user.type(screen.getByLabelText('Time zone'), 'America/New_York');
    await user.click(await button("Open today's shift"));
    await waitFor(() => expect(address()).toMatch(/^\/shift\/[0-9a-z]{12}\.2026-11-25$/));
    const [site] = await facts('siteAdded.v1');
    expect(site?.body).toMatchObject({
      name: 'Steel footbridge',
      stateCode: 'OH',
      setting: 'outdoors',
      altitudeM: 230,
      zone: 'America/New_York',
    });
    const [shift] = await facts('shiftOpened.v1');
    expect(shift?.body).toMatchObject({ siteId: site?.body.siteId, workOn: '2026-11-25' });
  });

  test('nobody said who holds the device: it is asked for and blocks nothing', async () => {
    await emptyOffice();
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    visit('/');
    expect(await screen.findByText(/Say who holds this device/)).toBeVisible();
    expect(screen.getByRole('link', { name: 'Say who holds it' })).toHaveAttribute('href', '#/who');
    expect(await button("Open today's shift")).toBeVisible();
  });

  test('an empty form is told field by field, and nothing is written', async () => {
    await emptyOffice();
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    const user = visit('/');
    await user.click(await button("Open today's shift"));
    await waitFor(() => expect(alerts()).toContain('Name of the site'));
    expect(alerts()).toContain('State or territory');
    expect(await facts('shiftOpened.v1')).toEqual([]);
  });
});

describe('today with a shift', () => {
  test('what is due stands on top, and its first line is the main action', async () => {
    await practiceOffice();
    visit('/');
    await heading(/Wednesday 25 November 2026, Tallow Street Library/);
    const look = await screen.findByRole('link', { name: 'Look at the pump on Pia Putty' });
    expect(look.getAttribute('href')).toMatch(/^#\/sample\/[0-9a-z]{12}$/);
    expect(screen.getByText('Pia Putty: look at the pump')).toBeVisible();
    expect(screen.getByText('1 on a worker')).toBeVisible();
  });

  test('a look that is overdue is said to be, with the time since when', async () => {
    const { clock } = await practiceOffice();
    clock.forward(hour);
    visit('/');
    // put on 105 minutes before 19:00 UTC, and looks are due every 120 minutes
    expect(await screen.findByText('due since 19:15')).toBeVisible();
  });

  test('after twelve hours it asks again who holds the device', async () => {
    const { clock } = await practiceOffice();
    visit('/');
    await heading(/Tallow Street/);
    expect(screen.queryByText(/Twelve hours/)).toBeNull();
    clock.forward(12 * hour);
    visit('/');
    expect(await screen.findByText(/Twelve hours have gone by/)).toBeVisible();
  });
});
