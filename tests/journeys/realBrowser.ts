/**
 * A browser of its own process with a profile on disk, that can be killed the hard way. A test library's usual context keeps its
 * database in memory, where a kill proves nothing.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from '@playwright/test';

const executable = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';

const flags = [
  '--headless=new',
  '--hide-scrollbars',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--remote-debugging-port=0',
];

export const newProfile = (): string => mkdtempSync(join(tmpdir(), 'fullshift-profile-'));
export const dropProfile = (profile: string): void =>
  rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });

export interface RealBrowser {
  readonly context: BrowserContext;
  readonly page: Page;
  /** SIGKILL to the whole process group: nothing gets a chance to tidy up. */
  readonly kill: () => Promise<void>;
}

const exited = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) =>
    child.exitCode !== null || child.signalCode !== null ? resolve() : child.once('exit', () => resolve()),
  );

async function debuggingPort(profile: string): Promise<string> {
  const file = join(profile, 'DevToolsActivePort');
  for (let attempt = 0; attempt < 300; attempt += 1) {
    if (existsSync(file)) {
      const port = readFileSync(file, 'utf8').split('\n')[0];
      if (port) return port;
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('the browser did not come up within 15 s');
}

export async function startBrowser(profile: string, viewport = { width: 390, height: 844 }): Promise<RealBrowser> {
  rmSync(join(profile, 'DevToolsActivePort'), { force: true });
  const child = spawn(executable, [...flags, `--user-data-dir=${profile}`, 'about:blank'], {
    detached: true,
    stdio: 'ignore',
  });
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await debuggingPort(profile)}`);
  const context = browser.contexts()[0];
  if (!context) throw new Error('the browser has no context');
  const page = context.pages()[0] ?? (await context.newPage());
  await page.setViewportSize(viewport);
  const kill = async (): Promise<void> => {
    if (child.pid !== undefined && child.exitCode === null) {
      try {
        process.kill(-child.pid, 'SIGKILL');
      } catch {
        child.kill('SIGKILL');
      }
    }
    await exited(child);
    await browser.close().catch(() => undefined);
  };
  return { context, page, kill };
}
