// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { unpack } from '#tests/store/unpacking.ts';
import { button, leaveOffice, practiceOffice, screen, visit } from './office.tsx';

beforeEach(async () => {
  await practiceOffice();
});
afterEach(leaveOffice);

test('the backup that is handed out holds the data dictionary, the same as the committed one', async () => {
  const blobs: Blob[] = [];
  const made = vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    blobs.push(blob as Blob);
    return 'blob:backup';
  });
  const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
  try {
    const user = visit('/send');
    await screen.findByText(/^Ready: /);
    await user.click(await button('Download the file'));
    await screen.findByText(/Handed to the browser as a download/);
  } finally {
    made.mockRestore();
    click.mockRestore();
  }
  const archive = await unpack(blobs.at(-1) ?? new Blob(), () => true);
  if (archive.kind !== 'unpacked') throw new Error(archive.why);
  expect([...archive.entries.keys()]).toContain('book.txt');
  const dictionary = new TextDecoder().decode(archive.entries.get('dictionary.md'));
  expect(dictionary).toBe(readFileSync('shared/dictionary.md', 'utf8').replaceAll('\r\n', '\n'));
});
