// @vitest-environment happy-dom
/** Backups that must not be enough to wipe a device, as the page says it; and what goes with the book when one is. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { putFile } from '#store/files.ts';
import { newBook, openBooks, switchBook } from '#store/opening.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp } from '#tests/store/device.ts';
import { library, openingFacts } from '#tests/store/scenario.ts';
import { makeBackup } from '../store/handOvers.ts';
import { alerts, button, emptyOffice, heading, leaveOffice, type Office, screen, visit, waitFor } from './office.tsx';

const passphrase = 'seven sashes lean against the old north wall';
let office: Office;

async function begin(firmName: string, practice = false): Promise<void> {
  await newBook({ firmName, practice });
  expect(await write(openingFacts(library()))).toMatchObject({ kind: 'written' });
}

beforeEach(async () => {
  office = await emptyOffice();
  await begin('Old Sash & Steel');
});
afterEach(async () => {
  Reflect.deleteProperty(globalThis, 'caches');
  await leaveOffice();
});

const backup = async (sealedWith: string | null = null): Promise<File> => {
  const { blob, name } = await makeBackup({ passphrase: sealedWith });
  return new File([blob], name);
};

async function checked(file: File) {
  const user = visit('/wipe');
  await user.upload(await screen.findByLabelText('Backup file'), file);
  await user.click(await button('Read it through'));
  return user;
}

/** Nothing is gone, and the page has no way to make it so. */
async function nothingToWipeWith(): Promise<void> {
  expect(screen.queryByRole('button', { name: 'Wipe this device' })).toBeNull();
  expect(screen.queryByLabelText(/type the name of the firm/)).toBeNull();
  expect(bookState().kind).toBe('open');
  expect(await theSession().db.journal.count()).toBeGreaterThan(0);
}

test('a backup that lacks one picture', async () => {
  const old = await backup();
  await putFile(new Uint8Array([0xff, 0xd8, 9]), 'image/jpeg');
  await checked(old);
  expect(await screen.findByText(/^It does not hold everything: 1 .*of this device is not in it/)).toBeVisible();
  await nothingToWipeWith();
});

test('the backup of another book', async () => {
  const { device } = office;
  await pickUp(newDevice());
  await begin('Another Firm');
  const other = await backup();
  await pickUp(device);
  await openBooks();
  await checked(other);
  await waitFor(() => expect(alerts()).toContain('This backup is of another book'));
  await nothingToWipeWith();
});

test('a sealed backup asks for its passphrase, refuses a wrong one, and is read through with the right one', async () => {
  const user = await checked(await backup(passphrase));
  const field = await screen.findByLabelText(/^Passphrase/);
  await nothingToWipeWith();
  await user.type(field, 'seven sashes lean against the new north wall');
  await user.click(await button('Read it through'));
  await waitFor(() => expect(alerts()).toContain('This passphrase does not open the file'), { timeout: 20_000 });
  await nothingToWipeWith();
  await user.clear(screen.getByLabelText(/^Passphrase/));
  await user.type(screen.getByLabelText(/^Passphrase/), passphrase);
  await user.click(await button('Read it through'));
  expect(await screen.findByLabelText(/type the name of the firm/, {}, { timeout: 20_000 })).toBeVisible();
  await waitFor(async () => expect(await theSession().db.meta.get('verified')).toBeDefined());
}, 60_000);

test('an entry written after the backup was read through: nothing goes, and the way back is offered', async () => {
  const user = await checked(await backup());
  await heading('Wipe this device');
  await putFile(new Uint8Array([0xff, 0xd8, 7]), 'image/jpeg');
  await user.type(await screen.findByLabelText(/type the name of the firm/), 'Old Sash & Steel');
  await user.click(await button('Wipe this device'));
  await waitFor(() => expect(alerts()).toContain('Something was written since'));
  expect(bookState().kind).toBe('open');
  await user.click(await button('Check a new backup'));
  await heading('Check a backup, or wipe this device');
});

test('both books and files received go; the app itself stays', async () => {
  const names = new Set(['fullshift-received-v1', 'app-precache-v2']);
  Object.defineProperty(globalThis, 'caches', {
    value: { keys: async () => [...names], delete: async (name: string) => names.delete(name) },
    configurable: true,
  });
  await switchBook('practice');
  await begin('EXAMPLE Joinery', true);
  await switchBook('book');
  const user = await checked(await backup());
  expect(await screen.findByText(/practice book on this device goes as well/)).toBeVisible();
  await user.type(await screen.findByLabelText(/type the name of the firm/), 'Old Sash & Steel');
  await user.click(await button('Wipe this device'));
  await heading('This device is wiped');
  expect([...names]).toEqual(['app-precache-v2']);
  expect(await office.device.indexedDB.databases()).toEqual([]);
  expect([...office.device.storage.keys()]).toEqual([]);
});
