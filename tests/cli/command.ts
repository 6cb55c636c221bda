/** Runs the real command as a child process, on files of the example folder or on files written for the case. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const examples = 'shared/examples/days';
export const exampleText = (name: string): string => readFileSync(`${examples}/${name}.json`, 'utf8');

export interface Ran {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** `preload`: a module text that is run before the command. */
export function command(args: readonly string[], { input = '', preload = '' } = {}): Ran {
  const before = preload === '' ? [] : ['--import', `data:text/javascript,${encodeURIComponent(preload)}`];
  const ran = spawnSync(process.execPath, ['--import', 'tsx', ...before, 'src/cli/assess.ts', ...args], {
    encoding: 'utf8',
    input,
    maxBuffer: 64 * 1024 * 1024,
  });
  return { exit: ran.status, out: ran.stdout, err: ran.stderr };
}

const folder = mkdtempSync(join(tmpdir(), 'fullshift-'));

/** Writes a file for a case and gives its path. */
export function written(name: string, text: string | Uint8Array): string {
  const path = join(folder, `${name.replace(/[^a-zA-Z0-9]+/g, '-')}.json`);
  writeFileSync(path, text);
  return path;
}

/** The example with values changed, by JSON pointer; undefined takes the value away. */
export function edited(name: string, changes: Readonly<Record<string, unknown>>): string {
  const file = JSON.parse(exampleText(name)) as Record<string, unknown>;
  for (const [pointer, value] of Object.entries(changes)) {
    const parts = pointer.slice(1).split('/');
    const last = parts.pop() ?? '';
    const parent = parts.reduce<Record<string, unknown>>((at, part) => at[part] as Record<string, unknown>, file);
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  }
  return JSON.stringify(file, null, 2);
}

/** One run over several files, and what was printed of each, by its path. A file of which nothing was printed has no part. */
export function commandOver(
  paths: readonly string[],
  options: readonly string[] = [],
): Ran & { of: (path: string) => string } {
  const ran = command([...paths, ...options]);
  const parts = ran.out.split(/^File (?=\S+\.json$)/m).slice(1);
  return { ...ran, of: (path) => parts.find((part) => part.startsWith(`${path}\n`)) ?? '' };
}
