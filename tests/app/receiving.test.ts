// @vitest-environment happy-dom
/**
 * The ways by which a file comes in: a phone's share sheet posts it to the worker, a desktop hands it over at launch, and a phone that
 * has neither chooses it. All three end in the same file waiting in the same place.
 */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { takeUpLaunches } from '#app/launched.ts';
import { manifest } from '#app/manifest.ts';
import { receivePath, shareField } from '#app/receivePath.ts';
import { isShare, receive } from '#app/worker/receiving.ts';
import { receivedFile, receivedFiles } from '#store/received.ts';
import { newCaches } from '../store/cacheStorage.ts';
import { testClock } from '../store/device.ts';

const scope = 'https://notebook.example/field/';
const address = new URL(receivePath, scope).href;

beforeEach(() => {
  testClock();
  newCaches();
  window.location.hash = '';
});
afterEach(() => {
  Reflect.deleteProperty(window, 'launchQueue');
});

/** Written by hand, so that the form is one that a browser sends and not one that our own runtime would. */
const posted = (parts: readonly string[], type = 'multipart/form-data; boundary=XX'): Request =>
  new Request(address, {
    method: 'POST',
    headers: { 'content-type': type },
    body: `${parts.map((part) => `--XX\r\n${part}\r\n`).join('')}--XX--\r\n`,
  });
const part = (name: string, fileName: string, text: string): string =>
  `Content-Disposition: form-data; name="${name}"; filename="${fileName}"\r\nContent-Type: application/zip\r\n\r\n${text}`;

const waitingTexts = async (): Promise<(readonly [string, string | undefined])[]> => {
  const found: (readonly [string, string | undefined])[] = [];
  for (const { key, name } of await receivedFiles()) found.push([name, await (await receivedFile(key))?.text()]);
  return found;
};

describe("a phone's share sheet", () => {
  test('posts the file to the address that the manifest names; the answer leads to the page', async () => {
    expect(manifest.share_target).toMatchObject({ action: receivePath, method: 'POST' });
    expect(manifest.share_target.params.files[0].name).toBe(shareField);
    const answer = await receive(posted([part(shareField, 'today.zip', 'PK today')]), scope);
    expect([answer.status, answer.headers.get('location')]).toEqual([303, `${scope}#/received`]);
    expect(await waitingTexts()).toEqual([['today.zip', 'PK today']]);
  });

  test.each([
    ['no file', posted(['Content-Disposition: form-data; name="title"\r\n\r\nhello'])],
    ['an empty file', posted([part(shareField, '', '')])],
    ['a file under another name', posted([part('other', 'a.zip', 'PK')])],
    ['text for a file', posted([`Content-Disposition: form-data; name="${shareField}"\r\n\r\nhello`])],
    ['no form at all', posted([], 'application/json')],
  ])('%s: said, and nothing waits', async (_, request) => {
    const answer = await receive(request, scope);
    expect([answer.status, answer.headers.get('location')]).toEqual([303, `${scope}#/received?not=noFile`]);
    expect(await receivedFiles()).toEqual([]);
  });

  test('only that one address below the app is answered so', () => {
    expect(isShare(new URL(address), scope)).toBe(true);
    for (const other of ['https://notebook.example/receive', `${address}/x`, `${address}?x=1`, `${scope}index.html`])
      expect(isShare(new URL(other), scope)).toBe(false);
  });
});

interface Launch {
  readonly targetURL?: string;
  readonly files?: readonly { readonly getFile: () => Promise<File> }[];
}

/** A desktop browser that has launched the app; answers once the files are put by. */
async function launchWith(launch: Launch): Promise<void> {
  let consumer: ((launch: Launch) => void) | null = null;
  const setConsumer = (given: (launch: Launch) => void): void => {
    consumer = given;
  };
  Object.defineProperty(window, 'launchQueue', { value: { setConsumer }, configurable: true });
  takeUpLaunches();
  (consumer as ((launch: Launch) => void) | null)?.(launch);
  for (let turn = 0; turn < 50; turn += 1) await new Promise((resolve) => setTimeout(resolve, 1));
}

describe('a desktop', () => {
  test('hands over what was opened with the app, and it waits like a shared one', async () => {
    const file = new File(['PK desk'], 'office.zip', { type: 'application/zip' });
    await launchWith({ files: [{ getFile: async () => file }] });
    expect(window.location.hash).toBe('#/received');
    expect(await waitingTexts()).toEqual([['office.zip', 'PK desk']]);
  });

  test('a file that may not be read is none, and an ordinary launch changes nothing', async () => {
    await launchWith({ files: [{ getFile: () => Promise.reject(new DOMException('no', 'NotAllowedError')) }] });
    expect(window.location.hash).toBe('#/received?not=noFile');
    window.location.hash = '#/samples';
    await launchWith({ files: [], targetURL: 'https://notebook.example/field/' });
    expect(window.location.hash).toBe('#/samples');
  });

  test('its manifest opens only kinds of file that are read here', () => {
    const endings = manifest.file_handlers.flatMap(({ accept }) => Object.values(accept).flat());
    expect(endings.sort()).toEqual(['.age', '.csv', '.pdf', '.txt', '.zip']);
  });
});

test('a phone with neither has no launch queue, and nothing fails', () => {
  expect('launchQueue' in window).toBe(false);
  expect(() => takeUpLaunches()).not.toThrow();
});
