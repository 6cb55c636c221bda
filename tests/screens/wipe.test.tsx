// @vitest-environment happy-dom
/** Wiping from the page: the backup first, then what stands in the way, then the name of the firm, and then nothing is left. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { setDraft } from '#store/drafts.ts';
import { newBook } from '#store/opening.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { entry, flowCheckOf, library, openingFacts, sampleOf } from '#tests/store/scenario.ts';
import { makeBackup } from '../store/handOvers.ts';
import { alerts, button, emptyOffice, heading, leaveOffice, type Office, screen, visit, waitFor } from './office.tsx';

let office: Office;
const day = library();
beforeEach(async () => {
  office = await emptyOffice();
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  await write(openingFacts(day));
});
afterEach(leaveOffice);

const backup = async (): Promise<File> => {
  const { blob, name } = await makeBackup();
  return new File([blob], name);
};

async function checked(file: File) {
  const user = visit('/wipe');
  await user.upload(await screen.findByLabelText('Backup file'), file);
  await user.click(await button('Read it through'));
  return user;
}

test('a backup with everything, the name of the firm, and nothing is left', async () => {
  const user = await checked(await backup());
  await heading('Wipe this device');
  expect(screen.getByText(/It holds everything that is on this device/)).toBeVisible();
  await user.type(await screen.findByLabelText(/type the name of the firm: Old Sash & Steel/), 'old sash');
  await user.click(await button('Wipe this device'));
  await waitFor(() => expect(alerts()).toContain('as it stands above'));
  expect(bookState().kind).toBe('open');
  await user.clear(screen.getByLabelText(/type the name of the firm/));
  await user.type(screen.getByLabelText(/type the name of the firm/), 'Old Sash & Steel');
  await user.click(await button('Wipe this device'));
  await heading('This device is wiped');
  expect(await office.device.indexedDB.databases()).toEqual([]);
  expect([...office.device.storage.keys()]).toEqual([]);
});

test('a backup that lacks one entry is refused, and the page says what to do', async () => {
  const old = await backup();
  await write([flowCheckOf(day, 'before')(entry())]);
  await checked(old);
  expect(await screen.findByText(/1 entry of this device is not in it/)).toBeVisible();
  expect(screen.queryByRole('button', { name: 'Wipe this device' })).toBeNull();
});

test('no file, and a foreign file, are said at the field', async () => {
  const user = visit('/wipe');
  await user.click(await button('Read it through'));
  await waitFor(() => expect(alerts()).toContain('Choose the backup file first'));
  await user.upload(screen.getByLabelText(/^Backup file/), new File(['hello'], 'book.zip'));
  await user.click(await button('Read it through'));
  await waitFor(() => expect(alerts()).toContain('not a backup of Fullshift'));
});

test('a running pump and what is being typed stand in the way, each said; what is typed can be thrown away', async () => {
  const one = sampleOf(day);
  await write([flowCheckOf(day, 'before')(entry()), one.prepared(entry())]);
  office.clock.forward(60_000);
  expect(await write([one.putOn(entry())])).toMatchObject({ kind: 'written' });
  setDraft('book/results', { rows: [] });
  const user = await checked(await backup());
  expect(await screen.findByText('1 pump is running')).toBeVisible();
  expect(screen.getByText(/^Results of the laboratory: begun today, not written down/)).toBeVisible();
  expect(screen.queryByLabelText(/type the name of the firm/)).toBeNull();
  await user.click(await button('Throw away what is being typed'));
  const confirm = screen.getAllByRole('button', { name: 'Throw away what is being typed' }).at(-1);
  if (confirm) await user.click(confirm);
  await waitFor(() => expect(screen.queryByText(/^Results of the laboratory/)).toBeNull());
  expect(await theSession().db.drafts.count()).toBe(0);
  expect(screen.getByText('1 pump is running')).toBeVisible();
});
