// @vitest-environment happy-dom
/** This device: what it says of itself, in words, and the report that somebody saves. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { setUpdates } from '#store/appUpdates.ts';
import { theSession } from '#store/session.ts';
import { button, leaveOffice, practiceOffice, screen, visit, waitFor } from './office.tsx';

beforeEach(async () => {
  await practiceOffice();
});
afterEach(async () => {
  vi.restoreAllMocks();
  setUpdates({ waiting: false, changedElsewhere: false });
  await leaveOffice();
});

test('says what is missing, which versions stand here, and that no file ever left', async () => {
  const missing = [{ writer: '0123456789ab', fromCount: 4, toCount: 6, untilOn: '2026-11-24' }];
  await theSession().db.meta.put({ key: 'missing', value: missing });
  visit('/storage');
  expect(await screen.findByText('3 entries of other devices')).toBeVisible();
  expect(await screen.findAllByText('never')).toHaveLength(3);
  expect(screen.getByText('none waits')).toBeVisible();
  expect(screen.queryByRole('button', { name: 'Change to it now' })).toBeNull();
});

test('a newer version is told and not offered while a pump runs', async () => {
  setUpdates({ waiting: true });
  visit('/storage');
  expect(await screen.findByText('waits until every pump is off')).toBeVisible();
  expect(screen.queryByRole('button', { name: 'Change to it now' })).toBeNull();
});

test('asks the browser again, and says what it answered', async () => {
  Object.defineProperty(navigator, 'storage', {
    value: { persist: async () => true, persisted: async () => false, estimate: async () => ({ usage: 2_500_000 }) },
    configurable: true,
  });
  const user = visit('/storage');
  await user.click(await button('Ask the browser again'));
  expect(await screen.findByText('The browser has promised to keep the book.')).toBeVisible();
  expect(screen.getByText('2.5 MB')).toBeVisible();
  expect((await theSession().db.meta.get('persisted'))?.value).toBe(true);
});

test('the name of this device is asked for once, and a blank one is said', async () => {
  const user = visit('/storage');
  await user.click(await button('Save the name'));
  expect(await screen.findAllByText(/Write a name/)).not.toHaveLength(0);
  await user.type(screen.getByLabelText('Name of this device'), 'Office');
  await user.click(await button('Save the name'));
  await waitFor(async () => expect((await theSession().db.meta.get('deviceName'))?.value).toBe('Office'));
});

test('the report is read first and then saved, and names nobody', async () => {
  const blobs: Blob[] = [];
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    blobs.push(blob as Blob);
    return 'blob:report';
  });
  const names: string[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    names.push(this.download);
  });
  const user = visit('/storage');
  await screen.findByText(/FULLSHIFT PROBLEM REPORT/);
  await user.click(await button('Save the report'));
  await screen.findByText(/Handed to the browser as a download/);
  expect(names).toEqual(['fullshift-problem-report-2026-11-25.txt']);
  const text = (await blobs.at(-1)?.text()) ?? '';
  expect(text).toContain('entries: ');
  for (const name of ['Putty', 'Oakum', 'Sill and Sash', 'Tallow']) expect(text).not.toContain(name);
});
