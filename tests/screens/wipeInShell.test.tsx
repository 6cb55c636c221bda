// @vitest-environment happy-dom
/** Wiping inside the shell, which puts up other pages as books open and close: whoever wiped is told so, and goes on to a first page. */
import { cleanup, render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test } from 'vitest';
import { Router } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import { Pages } from '#app/Pages.tsx';
import { newBook, openBooks } from '#store/opening.ts';
import { bookState } from '#store/session.ts';
import { makeBackup } from '../store/handOvers.ts';
import { button, emptyOffice, heading, leaveOffice, screen } from './office.tsx';

afterEach(leaveOffice);

test('says that the device is wiped, and the first page stands as on a new device', async () => {
  const { device } = await emptyOffice();
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const { blob, name } = await makeBackup();
  cleanup();
  window.location.hash = '/wipe';
  render(
    <Router hook={useHashPath}>
      <Pages />
    </Router>,
  );
  const user = userEvent.setup();
  await user.upload(await screen.findByLabelText('Backup file', {}, { timeout: 20_000 }), new File([blob], name));
  await user.click(await button('Read it through'));
  await user.type(await screen.findByLabelText(/type the name of the firm/), 'Old Sash & Steel');
  await user.click(await button('Wipe this device'));
  await heading('This device is wiped');
  expect(await device.indexedDB.databases()).toEqual([]);
  await user.click(await screen.findByRole('link', { name: 'Go to the first page' }));
  await heading('Begin a book');
  await openBooks();
  expect(bookState()).toEqual({ kind: 'none', which: 'book' });
}, 60_000);
