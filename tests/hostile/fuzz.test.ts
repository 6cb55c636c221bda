/**
 * 20,000 drawn files: each is refused or shown, none throws or hangs, and what is taken is the plain union with all that was here. A file
 * that ever came to something else is kept under `past` and met again first. SEED draws others, TIMES more of them.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { setPorts } from '#store/device.ts';
import { lots } from '../records/interleavings.ts';
import type { Journal } from './carrying.ts';
import { type Drawn, draw, meet } from './fuzzing.ts';
import { deviceWith } from './judging.ts';

const seed = Number(process.env.SEED ?? 20_261_125);
const times = Number(process.env.TIMES ?? 1);
const count = Number(process.env.FILES ?? 20_000 * times);
/** So many files meet one book; then a new one is opened, so that it stays small. */
const filesOfBook = 50;
const past = join('tests', 'hostile', 'past');
const out = join('tests', 'out', 'hostile');

const bookHere = async (): Promise<Journal> => {
  const lines = await deviceWith('book');
  return new Map(lines.map(({ id, link, text }) => [id, `${link} ${text}`]));
};

async function metOrThrown(drawn: Drawn, held: Journal) {
  try {
    return await meet(drawn, held);
  } catch (error) {
    const said = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { outcome: 'thrown', held, wrong: said };
  }
}

beforeEach(() => setPorts());

test.each(existsSync(past) ? readdirSync(past).filter((name) => name.endsWith('.json')) : [])(
  'what once went wrong: %s',
  async (name) => {
    const { base64, text, passphrase } = JSON.parse(readFileSync(join(past, name), 'utf8')) as Record<
      string,
      string | null
    >;
    const kept: Drawn = {
      ...{ how: name, bytes: Uint8Array.from(Buffer.from(base64 ?? '', 'base64')), text: text ?? null },
      ...(passphrase == null ? {} : { passphrase }),
    };
    expect((await metOrThrown(kept, await bookHere())).wrong).toBeNull();
  },
);

test(`${count} drawn files are refused or shown, and what is taken is the union`, async () => {
  const counts: Record<string, number> = {};
  const wrong: string[] = [];
  let held: Journal = new Map();
  for (let at = 0; at < count && wrong.length < 5; at += 1) {
    if (at % filesOfBook === 0) held = await bookHere();
    const drawn = await draw(lots(seed + at));
    const met = await metOrThrown(drawn, held);
    held = met.held;
    const name = `${drawn.how}: ${met.outcome}`;
    counts[name] = (counts[name] ?? 0) + 1;
    if (met.wrong === null) continue;
    mkdirSync(out, { recursive: true });
    const { bytes, text, passphrase = null } = drawn;
    const kept = { how: drawn.how, wrong: met.wrong, passphrase, text, base64: Buffer.from(bytes).toString('base64') };
    writeFileSync(join(out, `${seed + at}.json`), `${JSON.stringify(kept, null, 2)}\n`);
    wrong.push(`${drawn.how}, seed ${seed + at} (kept in ${out}): ${met.wrong}`);
    held = await bookHere();
  }
  console.info(`seed ${seed}: ${JSON.stringify(Object.fromEntries(Object.entries(counts).sort()), null, 1)}`);
  expect(wrong).toEqual([]);
  const outcomes = new Set(Object.keys(counts).map((name) => name.split(': ')[1]));
  for (const must of ['taken', 'nothing new', 'fork', 'damaged', 'notABackup', 'otherBook'])
    expect(outcomes).toContain(must);
}, 1_800_000);
