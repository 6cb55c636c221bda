/** `npm test`: sets up and runs every check and test, browser tests included. The same command runs before a change lands. */
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative } from 'node:path';
import { bringOracles, browser, build, packages, root, runPackage } from './setUp.mjs';

packages();
const missing = bringOracles();
const chromiumPath = await browser();
const inCi = process.env.CI === 'true';
const out = join(root, 'tests', 'out');
mkdirSync(out, { recursive: true });

const started = Date.now();
const steps = [];
const failures = [];
let passed = 0;
let failed = 0;
let skipped = 0;

function step(name, code) {
  steps.push(`${code === 0 ? 'ok    ' : 'FAILED'} ${name} (${Math.round((Date.now() - started) / 1000)} s in)`);
  if (code === 0) passed += 1;
  else failed += 1;
}

/** Names of what failed, from either runner's report: told again at the end, where whoever reads it looks first. */
function failuresIn(report) {
  const unit = (report.testResults ?? []).flatMap(({ name, message, assertionResults }) => {
    const tests = assertionResults.filter(({ status }) => status === 'failed');
    const lines = tests.map(({ fullName, failureMessages }) => `${fullName}: ${firstLine(failureMessages[0])}`);
    return (tests.length > 0 ? lines : message ? [firstLine(message)] : []).map(
      (line) => `${relative(root, name)}: ${line}`,
    );
  });
  const inSuite = ({ file, specs = [], suites = [] }) => [
    ...specs.filter(({ ok }) => !ok).map(({ title }) => `${file}: ${title}`),
    ...suites.flatMap(inSuite),
  ];
  return [...unit, ...(report.suites ?? []).flatMap(inSuite)];
}
const firstLine = (text = '') => text.split('\n')[0].slice(0, 300);

function counted(name, file, code, read) {
  try {
    const report = JSON.parse(readFileSync(file, 'utf8'));
    const [good, bad, left] = read(report);
    failures.push(...failuresIn(report));
    passed += good;
    failed += bad;
    skipped += left;
    if (good + bad === 0) failed += 1;
    if (code !== 0 && bad === 0) failed += 1;
  } catch {
    failed += 1;
  }
  steps.push(`${code === 0 ? 'ok    ' : 'FAILED'} ${name} (${Math.round((Date.now() - started) / 1000)} s in)`);
}

step('types', runPackage('typescript/bin/tsc', ['--noEmit']));
step('format and lint', runPackage('@biomejs/biome/bin/biome', ['check', '--config-path=tests/house/lint.json']));

const unitFile = join(out, 'vitest.json');
rmSync(unitFile, { force: true });
const unitCode = runPackage('vitest/vitest.mjs', [
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${unitFile}`,
]);
counted('unit tests', unitFile, unitCode, (r) => [r.numPassedTests, r.numFailedTests, r.numPendingTests]);

build();
if (chromiumPath) {
  const journeyFile = join(out, 'journeys.json');
  rmSync(journeyFile, { force: true });
  const code = runPackage(
    '@playwright/test/cli.js',
    ['test', '-c', 'tests/house/playwright.config.ts', '--reporter=list,json'],
    {
      CHROMIUM_PATH: chromiumPath,
      PLAYWRIGHT_JSON_OUTPUT_NAME: journeyFile,
    },
  );
  counted('browser tests', journeyFile, code, ({ stats }) => [
    stats.expected + stats.flaky,
    stats.unexpected,
    stats.skipped,
  ]);
} else {
  steps.push('FAILED browser tests: no Chromium found; set CHROMIUM_PATH to one');
  failed += 1;
}

console.log(`\n${steps.join('\n')}`);
if (missing.length > 0) {
  console.log(`Not here, so what they check was left out: ${missing.join(', ')}`);
  if (inCi) failed += 1;
}
for (const failure of failures) console.log(`failed: ${failure}`);
console.log(`${passed} passed, ${failed} failed, ${skipped} skipped`);
process.exit(failed === 0 ? 0 : 1);
