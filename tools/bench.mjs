/** `npm run bench`: the speeds this book is built for, each as a median with the load of the machine beside it. Nothing fails here. */
import { execFileSync } from 'node:child_process';
import { availableParallelism, loadavg } from 'node:os';
import { browser, build, packages, run, runPackage } from './setUp.mjs';

packages();
build();
const chromiumPath = await browser();

function version(path) {
  try {
    return execFileSync(path, ['--version'], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }).trim();
  } catch {
    return 'a browser that does not tell its version';
  }
}

const load = loadavg().map((value) => value.toFixed(1));
console.log(
  `Node ${process.versions.node}, ${chromiumPath ? version(chromiumPath) : 'no browser'}, ${availableParallelism()} cores, load ${load.join(' ')}`,
);
const [part, ...parts] = process.argv.slice(2);
let code = 0;
if (part === undefined || part === 'findings')
  code ||= run(process.execPath, ['--expose-gc', '--import', 'tsx', 'tests/bench/findingsRate.ts']);
if (part === undefined || part === 'duties')
  code ||= run(process.execPath, ['--expose-gc', '--import', 'tsx', 'tests/bench/dutiesRate.ts']);
if (part !== 'findings' && part !== 'duties') {
  if (chromiumPath) {
    const args = ['tests/bench/inBrowser.ts', ...(part === undefined ? [] : [part, ...parts])];
    code ||= runPackage('tsx/dist/cli.mjs', args, { CHROMIUM_PATH: chromiumPath });
  } else {
    console.error('No Chromium found, so nothing was measured in a browser; set CHROMIUM_PATH to one.');
    code ||= 1;
  }
}
process.exit(code);
