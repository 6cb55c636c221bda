/**
 * `npm run soak`: the long figures. 200 kills of the browser, laws over many more generated days with a new seed each round, 500 backups
 * wiped and restored, drawn hand-over files. No part begins after 56 minutes; `--short` is a few minutes of each. The last lines say what was done.
 */
import { randomInt } from 'node:crypto';
import { browser, build, packages, root, run, runPackage } from './setUp.mjs';

const short = process.argv.includes('--short');
const kills = short ? 20 : 200;
const restores = short ? 50 : 500;
const lawRounds = short ? 1 : 12;
/** Each round draws so many times the days that `npm test` draws. */
const times = short ? 2 : 10;
/** In each round: a million files drawn in all. */
const drawnFiles = short ? 20_000 : 85_000;
const mostMs = (short ? 10 : 56) * 60_000;

const laws = [
  'tests/core/properties.test.ts',
  'tests/records/merge.test.ts',
  'tests/records/threeDevices.test.ts',
  'tests/records/foldOrder.test.ts',
  'tests/findings/properties.test.ts',
  'tests/findings/carefulLaw.test.ts',
];

const startedMs = Date.now();
const minutes = () => ((Date.now() - startedMs) / 60_000).toFixed(1);
const lines = [];
let failed = false;

/** Left out, and said so, when the time is over. */
function part(name, work) {
  if (Date.now() - startedMs > mostMs) {
    lines.push(`left out, no time: ${name}`);
    return;
  }
  console.log(`\n${name}`);
  const code = work();
  if (code !== 0) failed = true;
  lines.push(`${code === 0 ? 'ok    ' : 'FAILED'} ${name} (${minutes()} min in)`);
}

packages();
build();
const chromiumPath = await browser();
const env = { CHROMIUM_PATH: chromiumPath ?? '' };

part(`${restores} varied books backed up, wiped and restored`, () =>
  runPackage('vitest/vitest.mjs', ['run', 'tests/store/restoredBooks.test.ts'], { ...env, BOOKS: String(restores) }),
);
if (chromiumPath) {
  part(`${restores} backups wiped and restored`, () =>
    runPackage('tsx/dist/cli.mjs', ['tests/bench/restores.ts', String(restores)], env),
  );
  part(`${kills} kills of the browser`, () =>
    runPackage(
      '@playwright/test/cli.js',
      ['test', '-c', 'tests/house/playwright.config.ts', '--reporter=list', 'kills'],
      { ...env, KILLS: String(kills) },
    ),
  );
} else {
  failed = true;
  lines.push('FAILED no Chromium found, so nothing was killed or restored; set CHROMIUM_PATH to one');
}
for (let round = 1; round <= lawRounds; round += 1) {
  const seed = String(randomInt(2 ** 31));
  part(`laws over ${times} times the days, round ${round} of ${lawRounds}, SEED=${seed}`, () =>
    run(process.execPath, [`${root}/node_modules/vitest/vitest.mjs`, 'run', '--testTimeout=1200000', ...laws], {
      SEED: seed,
      TIMES: String(times),
    }),
  );
  part(`${drawnFiles} drawn hand-over files, round ${round} of ${lawRounds}, SEED=${seed}`, () =>
    run(process.execPath, [`${root}/node_modules/vitest/vitest.mjs`, 'run', 'tests/hostile/fuzz.test.ts'], {
      SEED: seed,
      FILES: String(drawnFiles),
    }),
  );
}

console.log(`\n${lines.join('\n')}\n${failed ? 'FAILED' : 'all held'} after ${minutes()} minutes`);
process.exit(failed ? 1 : 0);
