// @vitest-environment happy-dom
/**
 * Before a sample is taken and before a day is worked; money; results by date. Figures by hand: n × R / (0.48 × Q) with two cassettes of
 * 5 µg at 2 L/min is 10 / 0.96 = 10.4 µg/m³, and to come below 15 µg/m³ it takes 480 × 10.4167 / 15 = 333.3, that is 334 whole minutes.
 */
import '@testing-library/jest-dom/vitest';
import { cleanup, render, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import { DayAhead } from '#screens/dayAhead/DayAhead.tsx';
import { Money } from '#screens/money/Money.tsx';
import { Prove } from '#screens/prove/Prove.tsx';
import { ResultsByDate } from '#screens/resultsByDate/ResultsByDate.tsx';
import { openNew, openPractice } from '#screens/start/begin.ts';
import { closeBook } from '#store/opening.ts';
import { emptyOffice, facts, journalTexts, leaveOffice, screen, waitFor } from './office.tsx';

function visit(path: string): ReturnType<typeof userEvent.setup> {
  cleanup();
  window.location.hash = path;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/prove" component={Prove} />
        <Route path="/day-ahead" component={DayAhead} />
        <Route path="/money" component={Money} />
        <Route path="/results-by-date" component={ResultsByDate} />
      </Switch>
    </Router>,
  );
  return userEvent.setup({ delay: null });
}

const main = (): string => document.querySelector('main')?.textContent?.replaceAll('\u00a0', ' ') ?? '';
const tap = (user: ReturnType<typeof visit>, name: string | RegExp) => user.click(screen.getByRole('button', { name }));
const fill = async (user: ReturnType<typeof visit>, label: string | RegExp, text: string) => {
  const field = screen.getByLabelText(label);
  await user.clear(field);
  await user.type(field, text);
};

describe('will this sample prove anything', () => {
  test('without a book, from the figures of a plan: yes, with the bound and the minutes', async () => {
    await closeBook();
    visit('/prove?method=niosh-7082&limit=5&flow=2&cassettes=2');
    expect(await screen.findByText(/^Yes, it could/)).toBeVisible();
    expect(main()).toContain('The most that the day could then be10.4 µg/m³');
    expect(main()).toContain('Minutes needed5 h 34 min');
    expect(main()).toContain('Splitting the day costs proof');
  });

  test('a lower limit is asked for where no time suffices', async () => {
    visit('/prove?limit=20&cassettes=1');
    expect(await screen.findByText(/^No\. With 1 cassette/)).toBeVisible();
    // 0.48 × 2 × 15 = 14.4 µg
    expect(main()).toContain('less than 14.4');
  });

  test('a filter that is full early stands against it, whatever the figures', async () => {
    // NIOSH 7082 holds 2 mg: at 2 L/min and 5 mg/m³ that is 200 minutes
    visit('/prove?method=niosh-7082&limit=5&flow=2&cassettes=2&dust=5');
    // 2 * 5 * 480 / (0.48 * 2 * 15) = 333.3 minutes on two cassettes are 167 each, before either is full
    expect(await screen.findByText(/^Not as planned\. With 5.h 34.min sampled/)).toBeVisible();
    expect(main()).toContain('One filter lasts3 h 20 min');
  });

  test('what cannot be read is told at the field, and what was typed stays', async () => {
    const user = visit('/prove');
    await fill(user, /^Reporting limit/, '5');
    await fill(user, /^Cassettes/, '1.5');
    await tap(user, 'Work it out');
    expect(screen.getByRole('alert')).toHaveTextContent('Cassettes, one after the other');
    expect(screen.getByLabelText(/^Cassettes/)).toHaveValue('1.5');
  });

  test('the picture says the same as its table, and the level of California stands beside', async () => {
    visit('/prove?limit=5');
    const picture = await screen.findByRole('img', { name: /^The bound against the minutes sampled/ });
    expect(picture.querySelectorAll('polyline')).toHaveLength(4);
    const last = within(screen.getAllByRole('table', { hidden: true })[0] as HTMLElement).getAllByRole('row', {
      hidden: true,
    });
    // 480 minutes: 5, 10, 15, 20 µg over 0.96 m³
    expect(last.at(-1)?.textContent).toBe('4805.2110.415.620.8');
    expect(main()).toContain("California's action level");
  });
});

describe('money in a new book', () => {
  beforeAll(async () => {
    await emptyOffice();
    expect(await openNew('Sill and Sash Restoration')).toMatchObject({ kind: 'open' });
  }, 60_000);
  afterAll(leaveOffice);

  test('prices begin empty; parts of a cent are told at the field; then they hold', async () => {
    const user = visit('/money');
    expect(await screen.findByText('No prices are entered yet.')).toBeVisible();
    window.location.hash = '/money?form=prices';
    await screen.findByRole('heading', { level: 1, name: 'Your prices' });
    await fill(user, /^One sample analysed/, '23.505');
    await tap(user, 'Save these prices');
    expect(screen.getByRole('alert')).toHaveTextContent('whole cents');
    expect(await facts('pricesStated.v1')).toEqual([]);
    await fill(user, /^One sample analysed/, '$23,50');
    await tap(user, 'Save these prices');
    await waitFor(async () => expect(await facts('pricesStated.v1')).toHaveLength(1));
    expect((await facts('pricesStated.v1'))[0]?.body).toMatchObject({ analysisUsd: 23.5, blankUsd: null });
  });

  test('a bill is entered, and struck only with a reason', async () => {
    const user = visit('/money?form=bill');
    await screen.findByRole('heading', { level: 1, name: 'Enter a bill' });
    await fill(user, /^Amount/, '70.50');
    await tap(user, 'Save the bill');
    expect(screen.getByRole('alert')).toHaveTextContent('Choose: What for');
    await user.selectOptions(screen.getByLabelText('What for'), 'Samples analysed');
    await fill(user, /^How many/, '3');
    await tap(user, 'Save the bill');
    await user.click(await screen.findByRole('link', { name: /^Samples analysed, \$70\.50/ }));
    await tap(user, 'Strike the entry');
    expect(screen.getByRole('alert')).toHaveTextContent('Write why');
    await fill(user, 'Why is it wrong?', 'Entered twice');
    await tap(user, 'Strike the entry');
    expect(await screen.findByText(/struck: Entered twice/)).toBeVisible();
    expect((await facts('spendingStruck.v1'))[0]?.why).toBe('Entered twice');
  });
});

describe('with the practice book', () => {
  beforeAll(async () => {
    await emptyOffice();
    expect(await openPractice()).toEqual({ kind: 'open', next: '/' });
  }, 60_000);
  afterAll(leaveOffice);

  test('a predicted day is said to be one; minutes that are missing are asked for', async () => {
    const before = await journalTexts();
    const user = visit('/day-ahead');
    await user.click((await screen.findAllByRole('checkbox'))[0] as HTMLElement);
    await tap(user, 'Work it out');
    expect(screen.getByRole('alert')).toHaveTextContent('Minutes of piece 1');
    await fill(user, /^Minutes of piece 1/, '240');
    expect(await screen.findByText(/^This is a prediction, not a result: one piece of work, 4/)).toBeVisible();
    expect(main()).toContain('Least protection');
    expect(await journalTexts()).toEqual(before);
  });

  test('one price that is not known leaves the sums not known, and says which', async () => {
    visit('/money');
    expect(await screen.findByText(/^Not known: one cassette/)).toBeVisible();
    expect(screen.getAllByText('not known').length).toBeGreaterThanOrEqual(2);
    expect(main()).toMatch(/To comenot known\$\d+\.\d\d of it is known/);
  });

  test('results by date: a mark for each, hollow where doubtful, and each leads to its day', async () => {
    visit('/results-by-date');
    const picture = await screen.findByRole('img', { name: /^8-hour averages from/ });
    const rows = within(screen.getByRole('table')).getAllByRole('row').slice(1);
    expect(picture.querySelectorAll('circle')).toHaveLength(rows.length);
    expect(rows.length).toBeGreaterThan(1);
    for (const row of rows)
      expect(within(row).getByRole('link')).toHaveAttribute('href', expect.stringMatching(/day\/|reported/));
    const inDoubt = rows.filter((row) => row.textContent?.includes('in doubt'));
    expect(picture.querySelectorAll('[class*=doubtful]')).toHaveLength(inDoubt.length);
  });
});
