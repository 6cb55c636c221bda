// @vitest-environment happy-dom
import { afterEach, expect, test } from 'vitest';
import { happenedNow } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { newBook } from '#store/opening.ts';
import { write } from '#store/write.ts';
import {
  alerts,
  button,
  emptyOffice,
  heading,
  leaveOffice,
  practiceOffice,
  samples,
  screen,
  visit,
  waitFor,
} from './office.tsx';

afterEach(leaveOffice);

test('an empty book says where the first sample begins', async () => {
  await emptyOffice();
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  visit('/samples');
  expect(await screen.findByText(/The first one begins on Today/)).toBeVisible();
});

test('every sample stands there in a sentence, blanks and void ones too', async () => {
  await practiceOffice();
  const running = (await samples()).find(({ stopped, putOn }) => putOn !== null && stopped === null);
  const entry = { happened: happenedNow('UTC'), by: null, why: 'Tubing found cut' };
  const done = (await samples()).find(({ results, sampleKind }) => sampleKind === 'air' && results.length > 0);
  await write([newFact('sampleVoided.v1', { sampleId: done?.id ?? '' }, entry)]);
  visit('/samples');
  expect(await screen.findByText('6 cassettes in this book')).toBeVisible();
  expect(screen.getAllByRole('link', { name: /Field blank/ })).toHaveLength(2);
  expect(screen.getByText('on the worker since 17:15')).toBeVisible();
  expect(screen.getByText(/void, with a result that is kept: Tubing found cut/)).toBeVisible();
  expect(screen.getAllByText('result in, report EX-1071')).toHaveLength(4);
  expect(screen.getAllByRole('link', { name: /Pia Putty/ })[0]).toHaveAttribute('href', `#/sample/${running?.id}`);
});

test('a sample is found by its number; a wrong digit is told as such', async () => {
  await practiceOffice();
  const otto = (await samples()).find(({ pumpId, follows, results }) => pumpId && !follows && results.length > 0);
  const number = otto?.sampleNumber ?? '';
  const user = visit('/samples');
  await heading('Samples');
  await user.type(await screen.findByLabelText('Find by number'), number);
  await user.click(await button('Find'));
  expect(await screen.findByRole('heading', { name: 'Found' })).toBeVisible();
  const wrong = number.slice(0, -1) + ((Number(number.slice(-1)) + 1) % 10);
  await user.clear(screen.getByLabelText('Find by number'));
  await user.type(screen.getByLabelText('Find by number'), wrong);
  await user.click(await button('Find'));
  await waitFor(() => expect(alerts()).toContain('do not fit together'));
});
