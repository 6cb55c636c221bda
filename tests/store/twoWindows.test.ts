/** Two windows of one device take files in at the same time: with the browser's locks and without. Each has its own modules and connection. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { writeBookText } from '#records/fileFormat.ts';
import type { JournalRow } from '#store/database.ts';
import type { Preview } from '#store/handOver/handOver.ts';
import type * as LookingFile from '#store/handOver/looking.ts';
import type * as TakingFile from '#store/handOver/taking.ts';
import { derivedRows } from '#store/lookup.ts';
import type * as Opening from '#store/opening.ts';
import type * as Rebuild from '#store/rebuild.ts';
import type * as SessionFile from '#store/session.ts';
import { chainOf } from './chains.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { generateBook } from './generateBook.ts';

const book = generateBook({ samples: 240, seed: 5 });
const news = chainOf(
  'zzzzzzzzzzz1',
  Array.from({ length: 5 }, () => ({})),
);
const fileOf = (rows: readonly JournalRow[]): Blob =>
  new Blob([writeBookText({ bookId: book.bookId, practice: false, writtenBy: '0.1.0' }, [...rows])]);
const byKey = (a: { key: string }, b: { key: string }): number => (a.key < b.key ? -1 : 1);
const derivedOf = (rows: readonly JournalRow[]) => [...derivedRows(rows).values()].sort(byKey);

/** As the platform does it: one at a time by name; `ifAvailable` does not wait. */
function locks() {
  const tails = new Map<string, Promise<unknown>>();
  const request = async (name: string, second: unknown, third?: (lock: unknown) => unknown) => {
    const work = (third ?? second) as (lock: unknown) => unknown;
    if (third !== undefined && tails.has(name)) return work(null);
    const before = tails.get(name) ?? Promise.resolve();
    const mine = before.then(async () => work({ name }));
    const tail = mine.catch(() => undefined).then(() => void (tails.get(name) === tail && tails.delete(name)));
    tails.set(name, tail);
    return mine;
  };
  return { request };
}

const plain = Object.getOwnPropertyDescriptor(globalThis, 'navigator');
const withLocks = (present: boolean): void =>
  void Object.defineProperty(globalThis, 'navigator', {
    value: present ? { locks: locks() } : {},
    configurable: true,
  });
afterEach(() => {
  if (plain !== undefined) Object.defineProperty(globalThis, 'navigator', plain);
});

interface Window {
  readonly take: (file: Blob) => Promise<TakingFile.TakenIn>;
  readonly look: (file: Blob) => Promise<Preview>;
  readonly taking: typeof TakingFile;
  readonly session: () => SessionFile.Session;
  readonly settled: () => Promise<void>;
}

async function newWindow(): Promise<Window> {
  vi.resetModules();
  const opening: typeof Opening = await import('#store/opening.ts');
  const looking: typeof LookingFile = await import('#store/handOver/looking.ts');
  const taking: typeof TakingFile = await import('#store/handOver/taking.ts');
  const session: typeof SessionFile = await import('#store/session.ts');
  const rebuild: typeof Rebuild = await import('#store/rebuild.ts');
  await opening.openBooks();
  const look = async (file: Blob): Promise<Preview> => {
    const looked = await looking.lookInto(file);
    if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
    return looked;
  };
  const take = async (file: Blob) => taking.takeIn(await look(file));
  return { look, take, taking, session: session.theSession, settled: rebuild.rebuildSettled };
}

beforeEach(async () => {
  testClock('2026-11-25T11:00:00.000Z');
  await pickUp(newDevice());
});

describe.each([true, false])('with locks: %j', (present) => {
  const start = async (): Promise<readonly [Window, Window]> => {
    withLocks(present);
    const first = await newWindow();
    await first.take(fileOf(book.rows.slice(0, 20)));
    return [first, await newWindow()];
  };
  const expectBook = async (at: Window, rows: readonly JournalRow[]): Promise<void> => {
    await at.settled();
    const { db } = at.session();
    const inOrder = [...rows].sort((a, b) => (a.id < b.id ? -1 : 1));
    expect(await db.journal.orderBy('id').toArray()).toEqual(inOrder);
    expect((await db.records.toArray()).sort(byKey)).toEqual(derivedOf(inOrder));
    expect(await db.meta.get('takeIn')).toBeUndefined();
    expect((await db.meta.get('missing'))?.value).toEqual([]);
  };

  test('the same large file in both at once: each entry once, no mark left behind', async () => {
    const [first, second] = await start();
    const file = fileOf(book.rows);
    const shown = [await first.look(file), await second.look(file)] as const;
    const done = await Promise.all([first.taking.takeIn(shown[0]), second.taking.takeIn(shown[1])]);
    const kinds = done.map(({ kind }) => kind);
    expect(kinds).toContain('takenIn');
    // The other one was told to wait, or went along.
    for (const kind of kinds) expect(['takenIn', 'refused', 'cancelled']).toContain(kind);
    if (present) expect(done).toContainEqual({ kind: 'refused', why: 'begun' });
    await second.settled();
    await expectBook(first, book.rows);
    // Whoever was told to wait finds nothing left to do.
    expect((await second.look(file)).newCount).toBe(0);
  });

  test('two files at once: one waits aloud, and comes in afterwards', async () => {
    const [first, second] = await start();
    const shown = [await first.look(fileOf(book.rows)), await second.look(fileOf(news))] as const;
    const done = await Promise.all([first.taking.takeIn(shown[0]), second.taking.takeIn(shown[1])]);
    expect(done.filter(({ kind }) => kind === 'takenIn').length).toBeGreaterThan(0);
    for (const one of done) expect(['takenIn', 'refused']).toContain(one.kind);
    for (const [at, file] of [
      [first, fileOf(book.rows)],
      [second, fileOf(news)],
    ] as const)
      expect(await at.take(file)).toMatchObject({ kind: 'takenIn' });
    await second.settled();
    await expectBook(first, [...book.rows, ...news]);
  });

  test('left at what came in the other window: it stops there, and nothing is called whole', async () => {
    const [first, second] = await start();
    const shown = await first.look(fileOf(book.rows));
    let left: Promise<unknown> | null = null;
    const done = await first.taking.takeIn(shown, {
      onProgress: ({ step }) => {
        if (step === 'taking') left ??= second.taking.leaveTakeIn();
      },
    });
    await left;
    await first.settled();
    const { db } = first.session();
    const rows = await db.journal.orderBy('id').toArray();
    expect(['cancelled', 'takenIn']).toContain(done.kind);
    expect(await db.meta.get('takeIn')).toBeUndefined();
    const missing = (await db.meta.get('missing'))?.value as readonly { fromCount: number; toCount: number }[];
    expect(missing.reduce((sum, { fromCount, toCount }) => sum + toCount - fromCount + 1, 0)).toBe(
      book.rows.length - rows.length,
    );
  });
});
