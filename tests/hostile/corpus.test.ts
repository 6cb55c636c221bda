/**
 * Every bad file of the corpus in a process of its own: a heap of at most 300 MB, five seconds for each. What must come of each stands
 * beside it, written by hand; a process that hangs or dies is the file's failure, and the next process goes on behind it.
 */
import { spawn } from 'node:child_process';
import { expect, test } from 'vitest';
import type { Verdict } from './child.ts';
import { corpus } from './corpus.ts';

const mostMs = 5000;
const heapMB = 300;

interface Run {
  readonly verdicts: readonly Verdict[];
  readonly maxRssMB: number | null;
}

/** From one file of the corpus on, until the end or a death. */
function runFrom(first: number): Promise<Run> {
  return new Promise((resolve, reject) => {
    const args = [`--max-old-space-size=${heapMB}`, '--import', 'tsx', 'tests/hostile/child.ts', String(first)];
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] });
    const verdicts: Verdict[] = [];
    let maxRssMB: number | null = null;
    let at: string | null = null;
    let left = '';
    let said = '';
    let clock: NodeJS.Timeout | undefined;
    const hear = (line: string): void => {
      const {
        name = '',
        wrong,
        tookMs = 0,
        maxRssMB: most,
      } = JSON.parse(line) as Partial<Verdict & { maxRssMB: number }>;
      clearTimeout(clock);
      if (most !== undefined) maxRssMB = most;
      else if (wrong === undefined) {
        at = name;
        // Longer than five seconds: a busy machine is no defect, and the child tells how much of the processor it took.
        clock = setTimeout(() => child.kill('SIGKILL'), mostMs * 4);
      } else {
        at = null;
        verdicts.push({ name, wrong, tookMs });
      }
    };
    child.stdout.on('data', (bytes: Buffer) => {
      const lines = (left + bytes.toString()).split('\n');
      left = lines.pop() ?? '';
      for (const line of lines) hear(line);
    });
    child.stderr.on('data', (bytes: Buffer) => {
      said = (said + bytes.toString()).slice(-2000);
    });
    child.on('error', reject);
    child.on('close', () => {
      clearTimeout(clock);
      if (at !== null) verdicts.push({ name: at, wrong: `the process hung or died: ${said}`, tookMs: mostMs });
      else if (maxRssMB === null) return reject(new Error(`the process died between two files: ${said}`));
      resolve({ verdicts, maxRssMB });
    });
  });
}

test('each bad file comes to what is written beside it, in bounded time and memory', async () => {
  expect(new Set(corpus.map(({ name }) => name)).size).toBe(corpus.length);
  const verdicts: Verdict[] = [];
  const most: number[] = [];
  while (verdicts.length < corpus.length) {
    const run = await runFrom(verdicts.length);
    verdicts.push(...run.verdicts);
    if (run.maxRssMB !== null) most.push(run.maxRssMB);
  }
  const slowest = verdicts.reduce((one, other) => (one.tookMs > other.tookMs ? one : other));
  console.info(
    `${verdicts.length} bad files; the slowest took ${slowest.tookMs} ms: ${slowest.name}; at most ${Math.max(...most)} MB of memory`,
  );
  expect(verdicts.filter(({ wrong }) => wrong !== '')).toEqual([]);
  expect(verdicts.filter(({ tookMs }) => tookMs > mostMs)).toEqual([]);
  expect(corpus.length).toBeGreaterThanOrEqual(50);
}, 300_000);
