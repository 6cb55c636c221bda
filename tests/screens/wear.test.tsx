// @vitest-environment happy-dom
/** The first two minutes and the page of limits, under their addresses; without a book and with one. */
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test } from 'vitest';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import type { BookRecord } from '#records/book.ts';
import { Rules } from '#screens/rules/Rules.tsx';
import { Wear } from '#screens/wear/Wear.tsx';
import { openSession } from '#store/session.ts';
import { emptyOffice, leaveOffice, practiceOffice } from './office.tsx';

afterEach(leaveOffice);

function visit(path: string): ReturnType<typeof userEvent.setup> {
  cleanup();
  window.location.hash = path;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/wear" component={Wear} />
        <Route path="/rules" component={Rules} />
      </Switch>
    </Router>,
  );
  return userEvent.setup();
}
const book = async (): Promise<BookRecord | undefined> =>
  (await openSession()?.db.records.toArray())?.find(({ kind }) => kind === 'book')?.record as BookRecord | undefined;

test('two questions without a book: what is missing is said, then what must be worn and why', async () => {
  await emptyOffice();
  const user = visit('/wear');
  await user.click(screen.getByRole('button', { name: 'Show what they must wear' }));
  expect(screen.getByRole('alert')).toHaveTextContent('Choose the state: it decides whose rule governs');
  expect(screen.getByRole('alert')).toHaveTextContent('Choose at least one task');
  await user.selectOptions(screen.getByLabelText('In which state is the job?'), 'NY');
  await user.click(screen.getByLabelText('Scraping paint by hand'));
  await user.click(screen.getByRole('button', { name: 'Show what they must wear' }));
  expect(await screen.findByRole('heading', { name: 'Until it is measured' })).toBeVisible();
  expect(screen.getByText(/presumes more than 50 µg\/m³ of lead in the air, up to 500 µg\/m³/)).toBeVisible();
  expect(screen.getByText('29 CFR 1926.62 Lead, (d)(2)(i); 2015 annual edition.', { exact: false })).toBeVisible();
  expect(screen.getByText('Half mask with HEPA-class filters')).toBeVisible();
  for (const letter of 'ABCDEF') expect(screen.getByText(`29 CFR 1926.62(d)(2)(v)(${letter})`)).toBeVisible();
  expect(screen.getByText(/no permission/)).toBeVisible();
  expect(document.body.textContent).not.toMatch(/N95|compliant|\bsafe\b/i);
});

test('the crew reads its part in Spanish; the rest stays as it was', async () => {
  await emptyOffice();
  const user = visit('/wear?state=TX&tasks=powerSandingOpen&show=1');
  await user.click(screen.getByRole('button', { name: 'Español' }));
  const part = screen.getByRole('heading', { name: 'Para la cuadrilla' }).closest('section');
  expect(part).toHaveAttribute('lang', 'es');
  expect(within(part as HTMLElement).getByText(/Factor de protección 50 o más/)).toBeVisible();
  expect(screen.getByRole('heading', { name: 'Until it is measured' })).toBeVisible();
});

test('a longer shift asks for more, and an address typed wrong asks again', async () => {
  await emptyOffice();
  visit('/wear?state=TX&tasks=handScraping&shift=10&show=1');
  expect(screen.getAllByText('25')[0]).toBeVisible();
  visit('/wear?state=QQ&tasks=handScraping&show=1');
  expect(screen.getByRole('heading', { name: 'What must the crew wear tomorrow?' })).toBeVisible();
});

test('limits are read without a book; with one, sets are chosen and own limits kept where they are stricter', async () => {
  await emptyOffice();
  visit('/rules');
  expect(screen.getByText(/No change of the two limits since was found/)).toBeVisible();
  expect(screen.queryByRole('button', { name: 'Keep this choice' })).toBeNull();
  await leaveOffice();

  await practiceOffice();
  const user = visit('/rules');
  const level = await screen.findByLabelText(/^Our action level/);
  await user.type(level, '30');
  await user.click(screen.getByRole('button', { name: 'Keep this choice' }));
  expect(await screen.findByRole('alert')).toHaveTextContent('Write less than 30 µg/m³');
  expect((await book())?.limits ?? null).toBeNull();
  await user.clear(level);
  await user.type(level, '15');
  await user.click(screen.getByLabelText('NIOSH: Recommended exposure limit'));
  await user.click(screen.getByRole('button', { name: 'Keep this choice' }));
  expect(await screen.findByText('Kept: days show it from now on')).toBeVisible();
  await waitFor(async () =>
    expect((await book())?.limits).toMatchObject({
      besideIds: ['niosh-rel'],
      ownActionLevelUgPerM3: 15,
      ownPelUgPerM3: null,
    }),
  );
});
