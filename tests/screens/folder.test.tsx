// @vitest-environment happy-dom
/** The folder of the firm on the office's pages: chosen by a tap, new files told, one looked into; and a file put into it. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { theSession } from '#store/session.ts';
import { FolderStandIn } from '#tests/store/folderStandIn.ts';
import { unpack } from '#tests/store/unpacking.ts';
import { makeBackup } from '../store/handOvers.ts';
import { button, leaveOffice, type Office, practiceOffice, screen, visit, waitFor } from './office.tsx';

let folder: FolderStandIn;
let office: Office;
beforeEach(async () => {
  office = await practiceOffice();
  folder = new FolderStandIn();
  folder.now = office.clock.atMs;
  vi.stubGlobal('showDirectoryPicker', async () => folder);
});
afterEach(async () => {
  vi.unstubAllGlobals();
  await leaveOffice();
});

test('chosen by a tap, a new file in it is told and looked into from there', async () => {
  // The book's text alone, as somebody may have unpacked it: the stand-in holds text.
  const archive = await unpack((await makeBackup()).blob, (each) => each === 'book.txt');
  if (archive.kind !== 'unpacked') throw new Error(archive.why);
  const name = 'fullshift-EXAMPLE-unpacked.txt';
  folder.put(name, new TextDecoder().decode(archive.entries.get('book.txt')));
  office.clock.forward(120_000);
  const user = visit('/keep');
  await user.click(await button('Choose a folder'));
  expect(await screen.findByText('1 new file in the folder')).toBeVisible();
  const link = screen.getByRole('link', { name: `Look into ${name}` });
  expect(link).toHaveAttribute('href', `#/take-in?folder=${encodeURIComponent(name)}`);
  const again = visit(`/take-in?folder=${encodeURIComponent(name)}`);
  expect(await screen.findByText(`From the folder: ${name}`)).toBeVisible();
  await again.click(await button('Look into the file'));
  expect(await screen.findByText('Everything in this file is here already.')).toBeVisible();
});

test('a file is put into it under a name that is free, and counts as handed out', async () => {
  const user = visit('/keep');
  await user.click(await button('Choose a folder'));
  await screen.findByText('Nothing new in the folder.');
  const sending = visit('/send');
  await screen.findByText(/^Ready: /);
  await sending.click(await button(/^Put it into the folder/));
  expect(await screen.findByText(/^It lies in the folder as fullshift-EXAMPLE-everything/)).toBeVisible();
  await waitFor(async () => expect(await theSession().db.meta.get('lastBackup')).toBeDefined());
});
