// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { happenedNow, newId } from '#store/device.ts';
import { setDeviceName } from '#store/handOver/partners.ts';
import { newFact } from '#store/newFact.ts';
import { openBooks, switchBook } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp } from '#tests/store/device.ts';
import { makeBackup } from '../store/handOvers.ts';
import {
  address,
  alerts,
  button,
  emptyOffice,
  facts,
  heading,
  journalTexts,
  leaveOffice,
  type Office,
  practiceOffice,
  screen,
  visit,
  waitFor,
} from './office.tsx';

let office: Office;
beforeEach(async () => {
  office = await practiceOffice();
});
afterEach(async () => {
  vi.restoreAllMocks();
  await leaveOffice();
});

const asFile = ({ blob, name }: { blob: Blob; name: string }): File => new File([blob], name);

/** The same book on another device, which writes something of its own and sends everything back, named or sealed. */
async function fileOfOther(passphrase: string | null = null): Promise<File> {
  const old = asFile(await makeBackup());
  const phone = office.device;
  await pickUp(newDevice());
  await openBooks();
  await switchBook('practice');
  const { lookInto } = await import('#store/handOver/looking.ts');
  const { takeIn } = await import('#store/handOver/taking.ts');
  const shown = await lookInto(old);
  if (shown.kind === 'preview') await takeIn(shown);
  await setDeviceName('Phone of the crew');
  const entry = { happened: happenedNow('UTC'), by: null };
  await write([newFact('pumpAdded.v1', { pumpId: newId(), serial: 'P-99', model: null }, entry)]);
  const file = asFile(await makeBackup({ passphrase }));
  await pickUp(phone);
  await openBooks();
  return file;
}

const clicks = (): string[] => {
  const handed: string[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    if (this.download !== '') handed.push(this.download);
  });
  return handed;
};

describe('sending', () => {
  test('the file is ready before the tap, the tap hands it out, and its age is said', async () => {
    const handed = clicks();
    const count = (await journalTexts()).length;
    const user = visit('/send');
    expect(await screen.findByText(new RegExp(`^Ready: ${count} entries`))).toBeVisible();
    expect(screen.getByText(/says what each of them breathed/)).toBeVisible();
    await user.click(await button('Download the file'));
    expect(await screen.findByText(/Handed to the browser as a download/)).toBeVisible();
    expect(handed).toEqual([expect.stringMatching(/^fullshift-EXAMPLE-everything-2026-11-25-1900\.zip$/)]);
    visit('/keep');
    expect(await screen.findByText(/last file with everything left today; nothing was written since/)).toBeVisible();
  });

  test('sealed with the app’s own words, they stand there large, and only they open it', async () => {
    clicks();
    const blobs: Blob[] = [];
    vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
      blobs.push(blob as Blob);
      return 'blob:file';
    });
    const user = visit('/send');
    await user.click(await screen.findByRole('radio', { name: 'Sealed with seven words' }));
    const region = await screen.findByRole('region', { name: 'The passphrase of this file' });
    expect(screen.getByText(/nobody can recover it/)).toBeVisible();
    const words = region.querySelector('[translate=no]')?.textContent ?? '';
    expect(words.split(' ')).toHaveLength(7);
    await screen.findByText(/^Ready: .*, sealed$/, undefined, { timeout: 30_000 });
    await user.click(await button('Download the file'));
    await screen.findByText(/Handed to the browser as a download/);
    const { lookInto } = await import('#store/handOver/looking.ts');
    const sealed = blobs.at(-1) ?? new Blob();
    expect((await lookInto(sealed)).kind).toBe('sealed');
    expect(await lookInto(sealed, { passphrase: words })).toMatchObject({ kind: 'preview', newCount: 0 });
  }, 90_000);

  test('an own passphrase that is too short is said at its field, and nothing is made', async () => {
    const user = visit('/send');
    await user.click(await screen.findByRole('radio', { name: 'Sealed with a passphrase of your own' }));
    const field = await screen.findByLabelText('Passphrase');
    expect(field).toHaveAttribute('autocomplete', 'new-password');
    await user.click(field);
    await user.paste('short one');
    await user.click(await button('Show'));
    expect(field).toHaveAttribute('type', 'text');
    await user.click(await button('Use this passphrase'));
    await waitFor(() => expect(alerts()).toContain('at least 20 characters'));
    expect(screen.queryByText(/^Ready:/)).toBeNull();
    expect(field).toHaveValue('short one');
  });

  test.each([
    ['AbortError', /you went back. The file is still ready/],
    ['NotAllowedError', /waited too long. Tap once more/],
    ['DataError', /did not say why, but the file did not leave/],
  ])('when the share sheet ends with %s, the file is still there', async (name, says) => {
    const share = vi.fn(() => Promise.reject(new DOMException('', name)));
    Object.assign(navigator, { share, canShare: () => true });
    vi.spyOn(window, 'matchMedia').mockReturnValue({ matches: true } as MediaQueryList);
    try {
      const user = visit('/send');
      await screen.findByText(/^Ready: /);
      await user.click(await button('Share the file'));
      expect(await screen.findByText(says)).toBeVisible();
      expect(await theSession().db.meta.get('lastBackup')).toBeUndefined();
      expect(await button('Share the file')).not.toHaveAttribute('aria-busy');
    } finally {
      Object.assign(navigator, { share: undefined, canShare: undefined });
    }
  });
});

describe('taking in', () => {
  test('what is new is told before anything is taken; the same file twice changes nothing; then only what lacks is sent', async () => {
    const file = await fileOfOther();
    const before = await journalTexts();
    const user = visit('/take-in');
    await user.upload(await screen.findByLabelText('File from the other device'), file);
    await user.click(await button('Look into the file'));
    expect(await screen.findByText('Phone of the crew')).toBeVisible();
    expect(screen.getByText('1 pump')).toBeVisible();
    expect(await journalTexts()).toEqual(before);
    await user.click(await button('Take in 1 entry'));
    expect(await screen.findByText('Taken in: 1 entry.')).toBeVisible();
    expect((await facts('pumpAdded.v1')).some(({ body }) => body.serial === 'P-99')).toBe(true);
    const after = await journalTexts();
    const again = visit('/take-in');
    await again.upload(await screen.findByLabelText('File from the other device'), file);
    await again.click(await button('Look into the file'));
    expect(await screen.findByText('Everything in this file is here already.')).toBeVisible();
    expect(await journalTexts()).toEqual(after);
    visit('/send');
    expect(await screen.findByRole('radio', { name: 'Phone of the crew' })).toBeChecked();
    expect(await screen.findByText(/^Ready: 0 entries/)).toBeVisible();
  });

  test('a sealed file asks for its passphrase, a wrong one is said, the right one opens it', async () => {
    const passphrase = 'old sash and steel in the rain';
    const file = await fileOfOther(passphrase);
    const user = visit('/take-in');
    await user.upload(await screen.findByLabelText('File from the other device'), file);
    await user.click(await button('Look into the file'));
    const field = await screen.findByLabelText('Passphrase of this file');
    await user.type(field, 'not this one at all, no');
    await user.click(await button('Look into the file'));
    await waitFor(() => expect(alerts()).toContain('does not open the file'), { timeout: 30_000 });
    await user.clear(screen.getByLabelText('Passphrase of this file'));
    await user.type(screen.getByLabelText('Passphrase of this file'), passphrase);
    await user.click(await button('Look into the file'));
    expect(await screen.findByText('1 pump', undefined, { timeout: 30_000 })).toBeVisible();
  }, 120_000);

  test('a file half taken in is said here and on Kept records; leaving it asks first', async () => {
    const mark = { fileName: 'phone.zip', startedAt: '2026-11-25T18:00:00.000Z', doneCount: 3, totalCount: 9, of: 'x' };
    await theSession().db.meta.put({ key: 'takeIn', value: mark });
    const user = visit('/keep');
    expect(await screen.findByText(/Half taken in: 3 of 9 entries of phone.zip/)).toBeVisible();
    await user.click(await button('Leave it at that'));
    expect(screen.getByText(/What was taken in stays/)).toBeVisible();
    await user.click(await button('Leave it at what was taken in'));
    await waitFor(async () => expect(await theSession().db.meta.get('takeIn')).toBeUndefined());
    await waitFor(() => expect(screen.queryByText(/Half taken in/)).toBeNull());
  });
});

test('the change to the real book leads to the first page while there is none', async () => {
  const user = visit('/keep');
  await user.click(await button('Change to the real book'));
  await waitFor(() => expect(address()).toBe('/start'));
  await heading('Begin a book');
  expect(screen.getByRole('radio', { name: 'A new book' })).toBeChecked();
});

test.each(['/keep', '/send', '/take-in', '/storage', '/wipe'])(
  'without a book %s leads to the first one',
  async (at) => {
    await emptyOffice();
    await openBooks();
    visit(at);
    expect(await screen.findByRole('link', { name: 'Go to the first page' })).toHaveAttribute('href', '#/start');
  },
);
