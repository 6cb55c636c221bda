// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  alerts,
  button,
  dayOfWorker,
  facts,
  heading,
  journalTexts,
  leaveOffice,
  practiceOffice,
  screen,
  visit,
  waitFor,
  workdays,
} from './office.tsx';

const width = (px: number): void =>
  (window as unknown as { happyDOM: { setViewport: (size: { width: number }) => void } }).happyDOM.setViewport({
    width: px,
  });

beforeEach(async () => {
  width(390);
  await practiceOffice();
});
afterEach(leaveOffice);

const dayPage = async (name: string) => `/day/${await dayOfWorker(name)}`;
const figure = (label: string): string =>
  screen.getByText(label, { selector: 'p' }).parentElement?.textContent?.replaceAll('\u00a0', ' ') ?? '';

describe('a whole day, longer than eight hours', () => {
  test('its figures are those worked by hand, and each opens into its working', async () => {
    const user = visit(await dayPage('Pia Putty'));
    await heading('The day of Pia Putty');
    // By hand, m / (0.48 Q) for each cassette: Q1 = (2.55 + 2.52) / 2 = 2.535, Q2 = (2.52 + 2.49667) / 2 = 2.50833 L/min;
    // 26.4 / (0.48 × 2.535) + 21.2 / (0.48 × 2.50833) = 21.696 + 17.608 = 39.304
    expect(await screen.findByText('39.3')).toBeVisible();
    expect(figure('8-hour average')).toContain('39.3 µg/m³');
    // hours 07:00 to 11:31 and 12:04 to 15:45 are 8.2 h: 39.304 × 8 / 8.2 = 38.346, and 400 / 8.2 = 48.78 (29 CFR 1926.62(c)(2))
    expect(figure('Average over the shift')).toContain('38.3');
    expect(figure('May reach over this shift, at most')).toContain('48.8');
    await user.click(screen.getAllByText(/How this was worked out/)[0] as HTMLElement);
    expect(screen.getAllByText(/Σ \(C × t\) \/ 480/)[0]).toBeVisible();
  });

  test('on a wide page the workings stand beside the figures, opened', async () => {
    width(1280);
    visit(await dayPage('Pia Putty'));
    expect(await screen.findByRole('heading', { name: 'How these figures were worked out' })).toBeVisible();
    expect(screen.getAllByText(/Σ \(C × t\) \/ 480/)[0]).toBeVisible();
    expect(screen.queryByText(/^How this was worked out/)).toBeNull();
  });

  test('it stands above the action level and below the PEL, in words', async () => {
    visit(await dayPage('Pia Putty'));
    expect(await screen.findByText(/^Above the action level, 30.µg\/m³$/)).toBeVisible();
    expect(screen.getByText(/^Below the permissible exposure limit, 50.µg\/m³$/)).toBeVisible();
    expect(screen.getByText(/Not above what the average over a shift of this length may reach/)).toBeVisible();
  });

  test('every minute is accounted for: 12 + 259 + 212 + 9 are the 492 of 8.2 hours', async () => {
    visit(await dayPage('Pia Putty'));
    await screen.findByRole('table');
    const minutes = screen.getAllByRole('row').flatMap((row) => row.querySelectorAll('td')[1]?.textContent ?? []);
    expect(minutes).toEqual(['12', '259', '212', '9']);
    expect(screen.getByText('Setting up at the truck, nothing disturbed')).toBeVisible();
    expect(screen.queryByText('not known')).toBeNull();
  });
});

describe('a day with unknown minutes', () => {
  test('says at least, and never below', async () => {
    visit(await dayPage('Otto Oakum'));
    await screen.findByRole('table');
    expect(figure('8-hour average')).toContain('at least 9.45 µg/m³');
    expect(screen.queryByText(/^Below/)).toBeNull();
    expect(screen.getAllByText(/that proves nothing yet/)).toHaveLength(2);
    expect(screen.getByText('20 min of the day are unknown.')).toBeVisible();
  });

  test('saying what they were settles the day, with a reason and only with one', async () => {
    const user = visit(await dayPage('Otto Oakum'));
    await user.click(await button('Say what the unknown minutes were'));
    await heading('What were the minutes from 07:00 to 07:20?');
    await user.click(screen.getByRole('radio', { name: 'Away from the lead area' }));
    const before = await journalTexts();
    await user.click(await button('Write it down'));
    await waitFor(() => expect(alerts()).toContain('how you know'));
    expect(await journalTexts()).toEqual(before);
    await user.type(screen.getByLabelText('How do you know?'), 'Carried ladders in from the truck');
    await user.click(await button('Write it down'));
    expect(await screen.findByText(/^Below the action level, 30.µg\/m³$/)).toBeVisible();
    // 9.2 µg / (0.48 × (2.09 + 1.96333) / 2 L/min) = 9.457
    expect(screen.getByText('9.46')).toBeVisible();
    const said = (await facts('minutesExplained.v1')).at(-1)?.body;
    expect(said).toMatchObject({ as: 'away', sampleId: null, reason: 'Carried ladders in from the truck' });
    expect([said?.fromAt, said?.toAt]).toEqual(['2026-11-24T07:00:00.000Z', '2026-11-24T07:20:00.000Z']);
  });

  test('part of the minutes can be said, and the rest stays unknown', async () => {
    const user = visit(await dayPage('Otto Oakum'));
    await user.click(await button('Say what these minutes were'));
    await user.click(await screen.findByRole('radio', { name: 'The same as while a sample ran' }));
    await user.type(screen.getByLabelText('How do you know?'), 'Same window, same scraper');
    await user.clear(screen.getByLabelText('From'));
    await user.type(screen.getByLabelText('From'), '0710');
    await user.click(await button('Write it down'));
    expect(await screen.findByText('10 min of the day are unknown.')).toBeVisible();
    expect(screen.getByText(/^the same as sample/)).toBeVisible();
  });
});

describe('what is said of a day', () => {
  test('hours are put right with a reason, and a night past midnight is understood', async () => {
    const user = visit(await dayPage('Otto Oakum'));
    await user.click(await button(/Worked 07:00 to 11:33/));
    await heading('Hours of work that day');
    await user.click(await button('Another piece of work'));
    const [, , from] = screen.getAllByLabelText('From');
    const [, , to] = screen.getAllByLabelText('To');
    await user.type(from as HTMLElement, '23:30');
    await user.type(to as HTMLElement, '00:30');
    await user.type(screen.getAllByLabelText(/Where, if not/)[2] as HTMLElement, 'Footbridge');
    await user.type(screen.getByLabelText('Why is it changed?'), 'Call-out in the night');
    await user.click(await button('Write the hours down'));
    expect(await screen.findByText(/23:30 to 00:30 at Footbridge/)).toBeVisible();
    const day = (await workdays()).find(({ pieces }) => pieces?.length === 3);
    expect(day?.pieces?.[2]).toMatchObject({
      startedAt: '2026-11-24T23:30:00.000Z',
      endedAt: '2026-11-25T00:30:00.000Z',
      place: 'Footbridge',
    });
    expect((await facts('valueCorrected.v1')).at(-1)?.why).toBe('Call-out in the night');
  });

  test('a day that was not regular keeps its figure and its standing', async () => {
    const user = visit(await dayPage('Pia Putty'));
    await user.click(await button('A regular day'));
    await heading('Was it a regular day?');
    await user.click(screen.getByRole('radio', { name: 'No' }));
    await user.type(screen.getByLabelText('What was different?'), 'Half the crew.');
    await user.type(screen.getByLabelText('Why is it changed?'), 'The time sheet says so');
    await user.click(await button('Write it down'));
    expect(await screen.findByText('Not a regular day: Half the crew.')).toBeVisible();
    expect(screen.getByText('39.3')).toBeVisible();
    expect(screen.getByText(/^Above the action level/)).toBeVisible();
  });

  test('a second employer that turns up unsettles what was below, until its hours are there', async () => {
    const user = visit(await dayPage('Pia Putty'));
    expect(await screen.findByText(/^Below the permissible/)).toBeVisible();
    await user.click(await button(/No call-out/));
    const group = await screen.findByRole('group', { name: 'Work for a second employer?' });
    await user.click(group.querySelector('input[value=yes]') as HTMLElement);
    await user.type(screen.getByLabelText('Why is it changed?'), 'Pia said so');
    await user.click(await button('Write the answers down'));
    expect(await screen.findByText('There was a second employer')).toBeVisible();
    expect(screen.queryByText(/^Below the permissible/)).toBeNull();
    expect(screen.getByText(/^Above the action level/)).toBeVisible();
  });

  test('a day that is not on this device says so', async () => {
    visit('/day/000000000000.2026-01-01');
    await heading('There is no such day');
  });
});
