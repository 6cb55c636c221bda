// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { happenedNow, newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { openBooks, switchBook } from '#store/opening.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp } from '#tests/store/device.ts';
import { makeBackup } from '../store/handOvers.ts';
import {
  address,
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
afterEach(leaveOffice);

const backupFile = async (): Promise<File> => {
  const { blob, name } = await makeBackup();
  return new File([blob], name);
};

describe('making a backup', () => {
  test('the file is ready before the tap, the tap hands it out, and its age is said', async () => {
    const handed: string[] = [];
    const click = HTMLAnchorElement.prototype.click;
    HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
      if (this.download !== '') handed.push(this.download);
    };
    try {
      const count = (await journalTexts()).length;
      const user = visit('/keep');
      expect(await screen.findByText(new RegExp(`^Ready: ${count} entries`))).toBeVisible();
      expect(screen.getByText('No backup was ever handed out.')).toBeVisible();
      await user.click(await button('Hand the backup out'));
      expect(await screen.findByText(/Handed to the browser as a download/)).toBeVisible();
      expect(handed).toEqual([expect.stringMatching(/^fullshift-EXAMPLE-everything-2026-11-25-1900\.zip$/)]);
      expect(await screen.findByText('Last backup today; nothing written since.')).toBeVisible();
    } finally {
      HTMLAnchorElement.prototype.click = click;
    }
  });
});

describe('taking a backup in', () => {
  test('shows what is new before anything is taken in; the same file twice changes nothing', async () => {
    const old = await backupFile();
    const phone = office.device;
    await pickUp(newDevice());
    await openBooks();
    await switchBook('practice');
    const { lookInto } = await import('#store/handOver/looking.ts');
    const { takeIn } = await import('#store/handOver/taking.ts');
    const shown = await lookInto(old);
    if (shown.kind === 'preview') await takeIn(shown);
    const entry = { happened: happenedNow('UTC'), by: null };
    await write([newFact('pumpAdded.v1', { pumpId: newId(), serial: 'P-99', model: null }, entry)]);
    const file = await backupFile();
    await pickUp(phone);
    await openBooks();

    const before = await journalTexts();
    const user = visit('/keep');
    await user.upload(await screen.findByLabelText('Backup file'), file);
    await user.click(await button('Look into the file'));
    expect(await screen.findByText('1 entry')).toBeVisible();
    expect(await journalTexts()).toEqual(before);
    await user.click(await button('Take it in'));
    expect(await screen.findByText('Taken in: 1 entry.')).toBeVisible();
    expect((await facts('pumpAdded.v1')).some(({ body }) => body.serial === 'P-99')).toBe(true);
    const after = await journalTexts();
    await user.upload(screen.getByLabelText('Backup file'), file);
    await user.click(await button('Look into the file'));
    expect(await screen.findByText('Everything in this file is here already.')).toBeVisible();
    expect(await journalTexts()).toEqual(after);
  });
});

test('the change to the real book leads to the first page while there is none', async () => {
  const user = visit('/keep');
  await user.click(await button('Change to the real book'));
  await waitFor(() => expect(address()).toBe('/start'));
  await heading('Begin a book');
  expect(screen.getByRole('radio', { name: 'A new book' })).toBeChecked();
});

test('without a book the page leads to the first one', async () => {
  await emptyOffice();
  await openBooks();
  visit('/keep');
  expect(await screen.findByRole('link', { name: 'Go to the first page' })).toHaveAttribute('href', '#/start');
});
