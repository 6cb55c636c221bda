/** Browser tests on the built app (`npm run build` first; `npm test` does it). Three at a time, each file with a port of its own: much of a journey is waiting. */
import { defineConfig } from '@playwright/test';

export default defineConfig({
  testDir: '../journeys',
  testMatch: '*.test.ts',
  outputDir: '../out/browser',
  workers: 3,
  // A machine that is busy elsewhere may starve one of three browsers; what passes only then is told as flaky.
  retries: 1,
  fullyParallel: false,
  timeout: 240_000,
  expect: { timeout: 10_000 },
  forbidOnly: true,
  reporter: 'list',
  use: {
    browserName: 'chromium',
    serviceWorkers: 'allow',
    actionTimeout: 15_000,
    navigationTimeout: 20_000,
    viewport: { width: 390, height: 844 },
    launchOptions: {
      executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
});
