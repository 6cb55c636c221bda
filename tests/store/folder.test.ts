// @vitest-environment happy-dom
/** A folder that the firm shares: written into whole or not at all, and watched without haste. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { setPorts } from '#store/device.ts';
import {
  askAgain,
  canChooseFolder,
  chooseFolder,
  folderState,
  forgetFolder,
  writeInto,
} from '#store/handOver/folder.ts';
import { type LookedInto, newFilesIn, watchFolder } from '#store/handOver/folderWatch.ts';
import { noteSeen } from '#store/handOver/seenFiles.ts';
import { newBook } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { FolderStandIn } from './folderStandIn.ts';

let clock: TestClock;
let folder: FolderStandIn;
const news = 'fullshift-book-news-2026-11-25-1107.zip';
const file = { blob: new Blob(['PK whole']), name: news };

beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  folder = new FolderStandIn();
  folder.now = clock.atMs;
  vi.stubGlobal('showDirectoryPicker', async () => folder);
  await chooseFolder();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const forward = (ms: number): void => {
  clock.forward(ms);
  folder.now = clock.atMs;
};
const looked = async (): Promise<Extract<LookedInto, { kind: 'looked' }>> => {
  const found = await newFilesIn();
  expect(found.kind).toBe('looked');
  return found as Extract<LookedInto, { kind: 'looked' }>;
};
const names = ({ files }: { files: readonly { name: string }[] }): string[] => files.map(({ name }) => name);

describe('choosing', () => {
  test('is offered only where the browser can', () => {
    expect(canChooseFolder()).toBe(true);
    vi.stubGlobal('showDirectoryPicker', undefined);
    expect(canChooseFolder()).toBe(false);
  });

  test('a closed dialog changes nothing; a folder can be forgotten', async () => {
    vi.stubGlobal('showDirectoryPicker', async () => {
      throw new DOMException('closed', 'AbortError');
    });
    expect(await chooseFolder()).toBeNull();
    expect(await folderState()).toEqual({ kind: 'ready', name: folder.name });
    await forgetFolder();
    expect(await folderState()).toEqual({ kind: 'none' });
    expect(await newFilesIn()).toEqual({ kind: 'failed', why: 'none' });
    expect(await writeInto(file)).toEqual({ kind: 'failed', why: 'none' });
  });

  test('after a restart the browser wants a tap; a no stays a no', async () => {
    folder.permission = 'prompt';
    expect(await folderState()).toEqual({ kind: 'askAgain', name: folder.name });
    expect(await newFilesIn()).toEqual({ kind: 'failed', why: 'permission' });
    folder.answer = 'denied';
    expect(await askAgain()).toMatchObject({ kind: 'askAgain' });
    folder.permission = 'prompt';
    folder.answer = 'granted';
    expect(await askAgain()).toMatchObject({ kind: 'ready' });
  });

  test('a folder that was taken away is told as gone', async () => {
    folder.gone = true;
    expect(await folderState()).toEqual({ kind: 'gone', name: folder.name });
    expect(await newFilesIn()).toEqual({ kind: 'failed', why: 'gone' });
    expect(await writeInto(file)).toEqual({ kind: 'failed', why: 'gone' });
  });
});

describe('writing', () => {
  test('gives the file a name that no other device gives, overwrites nothing, and is not news to itself', async () => {
    const mark = theSession().writer.slice(0, 4);
    const first = await writeInto(file);
    expect(first).toEqual({ kind: 'written', name: `fullshift-book-news-2026-11-25-1107-${mark}.zip` });
    const second = await writeInto({ blob: new Blob(['PK other']), name: `${news}.age` });
    expect(second).toMatchObject({ name: `fullshift-book-news-2026-11-25-1107-${mark}.zip.age` });
    expect(await writeInto(file)).toMatchObject({ name: `fullshift-book-news-2026-11-25-1107-${mark}-2.zip` });
    expect([...folder.files.values()].map(({ bytes }) => bytes)).toEqual(['PK whole', 'PK other', 'PK whole']);
    forward(120_000);
    expect(await looked()).toMatchObject({ files: [], waiting: [] });
  });

  test.each([
    ['the disk is full', () => Object.assign(folder, { roomBytes: 3 }), 'full'],
    ['the permission was taken back', () => Object.assign(folder, { permission: 'denied' }), 'permission'],
  ])('when %s, nothing is left that looks like a file', async (_, spoil, why) => {
    spoil();
    expect(await writeInto(file)).toEqual({ kind: 'failed', why });
    expect([...folder.files.keys()]).toEqual([]);
  });

  test('when the permission goes while it writes, the name that is left holds no bytes and is never offered', async () => {
    const blob = new Blob(['PK whole']);
    vi.spyOn(Blob.prototype, 'text').mockImplementationOnce(async () => {
      folder.permission = 'denied';
      return 'PK wh';
    });
    expect(await writeInto({ blob, name: news })).toEqual({ kind: 'failed', why: 'permission' });
    folder.permission = 'granted';
    expect([...folder.files.values()].map(({ bytes }) => bytes)).toEqual(['']);
    forward(3_600_000);
    expect(await looked()).toMatchObject({ files: [], waiting: [expect.stringContaining('1107')] });
  });
});

describe('looking', () => {
  test('offers hand-over files of any kind that lie there for a minute, and nothing else', async () => {
    const wanted = [news, `${news}.age`, `${news}.txt`, `${news}.age.txt`];
    const others = ['report.pdf', 'fullshift.zip', `${news}.crswap`, `.${news}`, `fullshift-${'x'.repeat(400)}.zip`];
    for (const name of [...wanted, ...others]) folder.put(name, 'PK');
    forward(61_000);
    expect(names(await looked())).toEqual([...wanted].sort());
  });

  test('a file that still grows waits until two looks find the same', async () => {
    folder.put(news, 'PK');
    expect(await looked()).toMatchObject({ files: [], waiting: [news] });
    forward(30_000);
    folder.put(news, 'PK grown');
    expect(await looked()).toMatchObject({ files: [], waiting: [news] });
    forward(30_000);
    const { files } = await looked();
    expect(files).toMatchObject([{ name: news, size: 8 }]);
    expect(await files[0]?.file.text()).toBe('PK grown');
  });

  test('a file from a clock that runs ahead waits for the second look too', async () => {
    folder.put(news, 'PK', clock.atMs + 86_400_000);
    expect(names(await looked())).toEqual([]);
    expect(names(await looked())).toEqual([news]);
  });

  test('a locked file waits and keeps no other back', async () => {
    folder.put('fullshift-book-news-a.zip', 'PK');
    folder.put('fullshift-book-news-b.zip', 'PK');
    Object.assign(folder.files.get('fullshift-book-news-a.zip') as object, { locked: true });
    forward(61_000);
    const found = await looked();
    expect([names(found), found.waiting]).toEqual([['fullshift-book-news-b.zip'], ['fullshift-book-news-a.zip']]);
  });

  test('what was dealt with is not offered again, until it is another file under that name', async () => {
    folder.put(news, 'PK');
    forward(61_000);
    await noteSeen(theSession().db, (await looked()).files);
    expect(names(await looked())).toEqual([]);
    folder.put(news, 'PK longer');
    forward(61_000);
    expect(names(await looked())).toEqual([news]);
  });
});

describe('watching', () => {
  let view: DocumentVisibilityState;
  const show = (state: DocumentVisibilityState): void => {
    view = state;
    document.dispatchEvent(new Event('visibilitychange'));
  };
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance', 'Date'] });
    setPorts({ wallMs: () => Date.now(), monotonicMs: () => performance.now() });
    view = 'visible';
    vi.spyOn(document, 'visibilityState', 'get').mockImplementation(() => view);
    folder.looks = 0;
  });
  /** The database answers between timers: these are not faked. */
  const pass = async (ms: number): Promise<void> => {
    for (let passed = 0; passed < ms; passed += 500) {
      await vi.advanceTimersByTimeAsync(500);
      await new Promise((done) => setImmediate(done));
    }
  };

  test('looks at the start and every half minute in view, never faster; not at all out of view or afterwards', async () => {
    const heard: LookedInto[] = [];
    const stop = watchFolder((found) => void heard.push(found));
    await pass(1000);
    expect(folder.looks).toBe(1);
    await pass(60_000);
    expect(folder.looks).toBe(3);
    for (let turn = 0; turn < 10; turn += 1) {
      show('hidden');
      show('visible');
      await pass(1000);
    }
    expect(folder.looks).toBe(3);
    show('hidden');
    await pass(600_000);
    expect(folder.looks).toBe(3);
    show('visible');
    await pass(1000);
    expect(folder.looks).toBe(4);
    expect(heard).toHaveLength(4);
    stop();
    await pass(120_000);
    show('visible');
    await pass(1000);
    expect(folder.looks).toBe(4);
  });

  test('goes on when the folder comes back', async () => {
    const heard: string[] = [];
    folder.gone = true;
    const stop = watchFolder((found) => void heard.push(found.kind));
    await pass(1000);
    folder.gone = false;
    await pass(30_000);
    expect(heard).toEqual(['failed', 'looked']);
    stop();
  });
});
