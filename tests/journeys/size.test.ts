/** How much script a phone must have before the run sheet can be used: the entry, the first screen, and all they import at once. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';

/** 1 KB = 1,000 bytes of gzip -9. Limit and goal: issue 2, "What must be seen to work" 8. */
const limitBytes = 170_000;
const goalBytes = 150_000;
const lazyChunkBytes = 60_000;
const pdfChunkBytes = 225_000;
/** All that is kept, counted like the rest by gzip -9. */
const precacheBytes = 2_500_000;
/** As it lies on the device: our own figure, raised as pages and papers of duties and of the season ahead came. */
const onDeviceBytes = 3_600_000;
/** Style that every page waits for; and all of it, in pieces that come with their pages: our own figure. */
const entryStyleBytes = 15_000;
const styleBytes = 20_000;

const assets = join('dist', 'assets');
const files = readdirSync(assets);
const gzipped = (file: string): number => gzipSync(readFileSync(join(assets, file)), { level: 9 }).length;

function withImports(file: string, seen = new Set<string>()): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  const text = readFileSync(join(assets, file), 'utf8');
  for (const [, name] of text.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)) if (name) withImports(name, seen);
  return seen;
}

test('the run sheet needs at most 170 KB of script', () => {
  const html = readFileSync(join('dist', 'index.html'), 'utf8');
  const entries = [...html.matchAll(/(?:src|href)="\.\/assets\/([^"]+\.js)"/g)].map((match) => match[1] ?? '');
  const today = files.filter((file) => /^Today-.*\.js$/.test(file));
  expect(entries.length).toBeGreaterThan(0);
  expect(today).toHaveLength(1);
  const needed = new Set<string>();
  for (const file of [...entries, ...today]) withImports(file, needed);
  const total = [...needed].reduce((sum, file) => sum + gzipped(file), 0);
  console.info(
    `critical path: ${total} bytes of gzip -9 in ${needed.size} files; goal ${goalBytes}, limit ${limitBytes}`,
  );
  expect(needed.size).toBeGreaterThan(3);
  expect(total).toBeLessThanOrEqual(limitBytes);
});

test('what is loaded later comes in pieces', () => {
  const sizes = files.filter((file) => file.endsWith('.js')).map((file) => ({ file, bytes: gzipped(file) }));
  const large = sizes.filter(({ bytes }) => bytes > lazyChunkBytes).filter(({ file }) => !file.startsWith('index-'));
  expect(large.length).toBeLessThanOrEqual(1);
  for (const { bytes } of large) expect(bytes).toBeLessThanOrEqual(pdfChunkBytes);
  const styles = files.filter((file) => file.endsWith('.css'));
  const entry = styles.filter((file) => file.startsWith('index-'));
  expect(entry).toHaveLength(1);
  expect(entry.reduce((sum, file) => sum + gzipped(file), 0)).toBeLessThanOrEqual(entryStyleBytes);
  expect(styles.reduce((sum, file) => sum + gzipped(file), 0)).toBeLessThanOrEqual(styleBytes);
});

test('everything kept on the device is at most 2.5 MB to fetch and 3.6 MB to hold', () => {
  const all = readdirSync('dist', { recursive: true, withFileTypes: true }).filter(
    (entry) => entry.isFile() && !entry.name.endsWith('.map'),
  );
  const bytes = all.map((entry) => readFileSync(join(entry.parentPath, entry.name)));
  const held = bytes.reduce((sum, { length }) => sum + length, 0);
  const fetched = bytes.reduce((sum, each) => sum + gzipSync(each, { level: 9 }).length, 0);
  console.info(`kept on the device: ${held} bytes in ${all.length} files, ${fetched} of gzip -9`);
  expect(fetched).toBeLessThanOrEqual(precacheBytes);
  expect(held).toBeLessThanOrEqual(onDeviceBytes);
});
