/** Set-up shared by `npm start`, `npm test` and the long runs: Node's version, the packages, the built app, a browser, the oracles. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** Runs a command with inherited output; returns its exit code. */
export function run(command, args, env = {}) {
  const result = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
  if (result.error) console.error(String(result.error.message));
  return result.status ?? 1;
}

/** Runs a package's own script with this Node, so that no shell and no `.cmd` file is in the way on Windows. */
export const runPackage = (script, args, env) =>
  run(process.execPath, [join(root, 'node_modules', script), ...args], env);

function newestUnder(path) {
  if (!existsSync(path)) return 0;
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newestUnder(join(path, name))));
}

export function packages() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`Node ${process.versions.node} is too old: Node 20.19 or newer is needed.`);
    process.exit(1);
  }
  const marker = join(root, 'node_modules', '.package-lock.json');
  if (existsSync(marker) && statSync(marker).mtimeMs >= statSync(join(root, 'package-lock.json')).mtimeMs) return;
  console.log('Setting up: installing packages …');
  const npm = process.env.npm_execpath;
  const code = npm?.endsWith('.js')
    ? run(process.execPath, [npm, 'ci'])
    : spawnSync('npm ci', { cwd: root, stdio: 'inherit', shell: true }).status;
  if (code !== 0) process.exit(code ?? 1);
}

/** Builds dist/ when anything it is made of is newer. */
export function build() {
  const made = join(root, 'dist', 'index.html');
  const from = ['src', 'shared', 'public', 'vite.config.ts', 'package-lock.json'].map((path) =>
    newestUnder(join(root, path)),
  );
  if (existsSync(made) && statSync(made).mtimeMs >= Math.max(...from)) return;
  console.log('Building the app …');
  const code = runPackage('vite/bin/vite.js', ['build', '--logLevel', 'warn']);
  if (code !== 0) process.exit(code);
}

const onPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .some((folder) => existsSync(join(folder, name)) || existsSync(join(folder, `${name}.exe`)));

/** The same browser without a window of its own: it takes a fifth less of a small machine. */
const windowless = '/usr/bin/chromium-headless-shell';
const browserPlaces = [
  windowless,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

const knownBrowser = () => [process.env.CHROMIUM_PATH, ...browserPlaces].find((path) => path && existsSync(path));

let aptFresh = false;
function bringByApt(names) {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !onPath('apt-get')) return;
  if (!aptFresh) run('apt-get', ['update', '-qq']);
  aptFresh = true;
  console.log(`Setting up: ${names.join(', ')} …`);
  run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...names], { DEBIAN_FRONTEND: 'noninteractive' });
}

/** Path of a Chromium: one on this machine, else brought by the system's packages, else by the test library. */
export async function browser() {
  if (!process.env.CHROMIUM_PATH && !existsSync(windowless)) bringByApt(['chromium-headless-shell']);
  if (!knownBrowser()) bringByApt(['chromium']);
  const found = knownBrowser();
  if (found) return found;
  if (runPackage('@playwright/test/cli.js', ['install', 'chromium']) !== 0) return null;
  const { chromium } = await import('@playwright/test');
  return existsSync(chromium.executablePath()) ? chromium.executablePath() : null;
}

/** Independent readers that tests hold our documents against, and the system package that brings each. */
export const oracles = {
  pdfinfo: 'poppler-utils',
  pdftotext: 'poppler-utils',
  pdffonts: 'poppler-utils',
  pdfdetach: 'poppler-utils',
  pdftoppm: 'poppler-utils',
  qpdf: 'qpdf',
  age: 'age',
};

/** Brings what it can; returns the names that are still missing. */
export function bringOracles() {
  const missing = () => Object.keys(oracles).filter((name) => !onPath(name));
  if (missing().length > 0) bringByApt([...new Set(missing().map((name) => oracles[name]))]);
  return missing();
}
