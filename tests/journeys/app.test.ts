/** The app as a thing on a device: there without a connection, under any address, and silent. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { headersFor, policyInPage } from '#app/responseHeaders.ts';
import {
  everyPath,
  expectGone,
  load,
  openPracticeBook,
  standsThere,
  test,
  waitUntilKept,
  watchPage,
} from './appPages.ts';

const built = readdirSync('dist', { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && !entry.name.endsWith('.map'))
  .map((entry) =>
    join(entry.parentPath, entry.name)
      .replaceAll('\\', '/')
      .replace(/^dist\//, ''),
  );

for (const base of ['/', '/notebook/']) {
  test(`opens ${base === '/' ? 'every page' : 'its pages'} with the server gone, at ${base}`, async ({
    page,
    serve,
  }) => {
    const preview = await serve(base === '/' ? 4611 : 4612, base);
    await page.goto(preview.address);
    await waitUntilKept(page);
    await openPracticeBook(page);
    await preview.stop();
    await expectGone(preview.address);
    const wrong = await watchPage(page, preview.address);
    // Addresses stand behind `#`: in a folder every sixth page shows what the folder could spoil.
    for (const path of everyPath.filter((_, at) => base === '/' || at % 6 === 0)) {
      await load(page, preview.address, path);
      await test.step(path, () => standsThere(page));
    }
    expect(wrong).toEqual([]);
    // Not only what these pages asked for: every file that was built is on the device.
    expect(built.length).toBeGreaterThan(30);
    const missing = await page.evaluate(
      async (files) => {
        const answers = await Promise.all(
          files.map(async (file) => (await fetch(file).catch(() => null))?.ok ?? false),
        );
        return files.filter((_, index) => !answers[index]);
      },
      built.filter((file) => !/^(sw\.js|workbox-.*\.js|robots\.txt)$/.test(file)),
    );
    expect(missing).toEqual([]);
  });
}

// Every page in each of its states is watched for the same on the round of everyPage*.test.ts.
test('asks nobody else for anything, and the policy has nothing to refuse, from the first page on', async ({
  page,
  serve,
}) => {
  const preview = await serve(4613);
  const wrong = await watchPage(page, preview.address);
  await page.goto(preview.address);
  await openPracticeBook(page);
  for (const path of everyPath.filter((_, at) => at % 10 === 0)) {
    await load(page, preview.address, path);
    await standsThere(page);
  }
  expect(wrong).toEqual([]);
});

test('refuses markup from text, foreign addresses, and a worker by a plain string', async ({ page, serve }) => {
  const preview = await serve(4614);
  await page.goto(preview.address);
  const refused = await page.evaluate(async () => {
    const tried = async (attempt: () => unknown): Promise<boolean> => {
      try {
        await attempt();
        return false;
      } catch {
        return true;
      }
    };
    return {
      markup: await tried(() => {
        document.createElement('div').innerHTML = '<b>x</b>';
      }),
      foreign: await tried(() => fetch('https://example.org/')),
      worker: await tried(() => navigator.serviceWorker.register('other.js')),
      // In a task of its own: a debugger's evaluation is allowed more than the page.
      compiled: await new Promise<boolean>((resolve) => {
        setTimeout(() => void tried(() => new Function('return 1')()).then(resolve), 0);
      }),
    };
  });
  expect(refused).toEqual({ markup: true, foreign: true, worker: true, compiled: true });
});

test('can be installed', async ({ page, context, serve }) => {
  const preview = await serve(4615);
  await page.goto(preview.address);
  await waitUntilKept(page);
  const devtools = await context.newCDPSession(page);
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // A private context may never install, and says so; anything else is ours.
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
  const manifest = await devtools.send('Page.getAppManifest');
  expect(manifest.errors).toEqual([]);
  const written = JSON.parse(manifest.data ?? '{}') as { id: string; icons: { src: string; purpose?: string }[] };
  expect(written.id).toBe('./');
  expect(written.icons.some(({ purpose }) => purpose === 'maskable')).toBe(true);
  for (const { src } of written.icons)
    expect((await fetch(preview.address + src)).headers.get('content-type')).toBe('image/png');
});

test('serves the headers that are written down, and the page carries the same policy', async ({ serve }) => {
  const preview = await serve(4616);
  const hashed = built.find((file) => /^assets\/index-.*\.js$/.test(file)) ?? '';
  for (const file of ['', 'sw.js', 'manifest.webmanifest', hashed]) {
    const answer = await fetch(preview.address + file);
    expect(answer.status).toBe(200);
    for (const [name, value] of Object.entries(headersFor(`/${file}`))) expect(answer.headers.get(name)).toBe(value);
  }
  const html = await (await fetch(preview.address)).text();
  const inPage = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)?.[1];
  expect(inPage?.replaceAll('&#39;', "'")).toBe(policyInPage);
});
