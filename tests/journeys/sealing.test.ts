/**
 * Sealing in the built app, under its real headers: in a worker that the Trusted Types policy lets start, with the page awake. What it
 * sealed is opened by the standard command line, where it is installed.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import { ageProgram } from '../store/ageProgram.ts';
import { test, watchPage } from './appPages.ts';
import { passphrase, sealInPage } from './sealInPage.ts';

test('a file is sealed in a worker, without a word against the policy and with the page awake', async ({
  page,
  serve,
}) => {
  const { address } = await serve(4672);
  const wrong = await watchPage(page, address);
  const workers: string[] = [];
  page.on('worker', (worker) => workers.push(worker.url()));
  const answer = await page.goto(address);
  expect(answer?.headers()['content-security-policy']).toContain("require-trusted-types-for 'script'");
  await expect(page.getByRole('heading').first()).toBeVisible();
  const large = await sealInPage(page, 20_000_000);
  console.info(`20 MB: ${JSON.stringify({ ...large, base64: undefined })}`);
  expect(large.sameBytes).toBe(true);
  expect(large.longestTaskMs).toBeLessThanOrEqual(200);
  expect(workers).toHaveLength(2);
  for (const url of workers) expect(url).toMatch(/\/assets\/sealingWorker-[\w-]+\.js$/);

  const small = await sealInPage(page, 200_000, true);
  expect(small.sameBytes).toBe(true);
  const age = ageProgram();
  if (age !== null) {
    const folder = mkdtempSync(join(tmpdir(), 'fullshift-sealed-'));
    writeFileSync(join(folder, 'sealed.age'), Buffer.from(small.base64, 'base64'));
    await age.run(`-d -o ${join(folder, 'opened')} ${join(folder, 'sealed.age')}`, passphrase);
    expect(readFileSync(join(folder, 'opened'))).toHaveLength(200_000);
    rmSync(folder, { recursive: true });
  }
  expect(wrong).toEqual([]);

  // Another address is not let through, and is told: so the silence before means something.
  const refused = await page.evaluate(() => {
    try {
      new Worker('sw.js');
      return '';
    } catch (error) {
      return String(error);
    }
  });
  expect(refused).toContain('TrustedScriptURL');
  await expect.poll(() => wrong.length).toBeGreaterThan(0);
  expect(wrong.join(' ')).toMatch(/trusted/i);
});
