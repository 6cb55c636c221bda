/** Files that came from outside wait a day, few at a time, under clean names, and go when they were taken up. */
import { beforeEach, describe, expect, test } from 'vitest';
import {
  cleanName,
  forgetReceived,
  onReceived,
  park,
  receivedFile,
  receivedFiles,
  receivedLimits,
} from '#store/received.ts';
import { newCaches, type TestCaches } from './cacheStorage.ts';
import { type TestClock, testClock } from './device.ts';

let clock: TestClock;
let kept: TestCaches;
const hourMs = 3_600_000;
const fileOf = (name: string, text = 'text', type = ''): File => new File([text], name, { type });

beforeEach(() => {
  clock = testClock();
  kept = newCaches();
});

describe('a file that came in', () => {
  test('waits with its name, size and time, gives its bytes, and goes when it was taken up', async () => {
    expect(await park([fileOf('book.zip', 'PK bytes', 'application/zip')])).toEqual({ parkedCount: 1, not: null });
    const [waiting] = await receivedFiles();
    expect(waiting).toMatchObject({ name: 'book.zip', bytesCount: 8, receivedAt: '2026-11-25T11:00:00.000Z' });
    const file = await receivedFile(waiting?.key ?? '');
    expect([file?.name, file?.type, await file?.text()]).toEqual(['book.zip', 'application/zip', 'PK bytes']);
    await forgetReceived(waiting?.key ?? '');
    expect(await receivedFiles()).toEqual([]);
    expect(await receivedFile(waiting?.key ?? '')).toBeNull();
  });

  test('is gone after a day, also when the clock was set back by more than that', async () => {
    await park([fileOf('a.zip')]);
    const key = (await receivedFiles())[0]?.key ?? '';
    clock.forward(24 * hourMs);
    expect(await receivedFile(key)).not.toBeNull();
    clock.forward(1);
    expect(await receivedFile(key)).toBeNull();
    expect(await receivedFiles()).toEqual([]);
    expect(kept.count()).toBe(0);
    await park([fileOf('b.zip')]);
    clock.forward(-25 * hourMs);
    expect(await receivedFiles()).toEqual([]);
  });

  test('a flood never fills the device: what waited longest makes room', async () => {
    for (let at = 0; at < 12; at += 1) {
      clock.forward(1000);
      await park([fileOf(`${at}.zip`)]);
    }
    expect((await receivedFiles()).map(({ name }) => name)).toEqual(['8.zip', '9.zip', '10.zip', '11.zip']);
    const many = Array.from({ length: 9 }, (_, at) => fileOf(`many-${at}.zip`));
    expect(await park(many)).toEqual({ parkedCount: receivedLimits.filesCount, not: 'tooMany' });
    expect(kept.count()).toBe(receivedLimits.filesCount);
  });

  test('too large, none at all, no room: said, and nothing waits', async () => {
    const large = new File(['x'], 'large.zip');
    Object.defineProperty(large, 'size', { value: receivedLimits.fileBytes + 1 });
    expect(await park([large])).toEqual({ parkedCount: 0, not: 'tooLarge' });
    expect(await park([large, fileOf('small.zip')])).toEqual({ parkedCount: 1, not: 'tooLarge' });
    expect(await park([])).toEqual({ parkedCount: 0, not: 'noFile' });
    kept.failing = true;
    expect(await park([fileOf('a.zip')])).toEqual({ parkedCount: 0, not: 'noSpace' });
    expect((await receivedFiles()).map(({ name }) => name)).toEqual(['small.zip']);
  });

  test('pages of this window hear of it', async () => {
    let heard = 0;
    const leave = onReceived(() => {
      heard += 1;
    });
    await park([fileOf('a.zip')]);
    await forgetReceived((await receivedFiles())[0]?.key ?? '');
    leave();
    await park([fileOf('b.zip')]);
    expect(heard).toBe(2);
  });

  test('a key that is none asks for nothing', async () => {
    await park([fileOf('a.zip')]);
    for (const key of ['', '../sw.js', 'x', '0123456789abc', 'https://elsewhere.example/']) {
      expect(await receivedFile(key)).toBeNull();
      await forgetReceived(key);
    }
    expect(kept.count()).toBe(1);
  });
});

describe('hostile names', () => {
  const names: readonly (readonly [string, string])[] = [
    ['../../etc/passwd', 'passwd'],
    ['C:\\fakepath\\book.zip', 'book.zip'],
    ['line\r\nx-file-name: other.zip', 'linex-file-name: other.zip'],
    ['payroll\u202Epiz.exe', 'payrollpiz.exe'],
    ['half\ud83d.zip', 'half.zip'],
    ['null\u0000.zip', 'null.zip'],
    ['   ', ''],
    ['', ''],
    ['µ g/m³ 100%.csv', 'm³ 100%.csv'],
    ['%00%2e%2e.zip', '%00%2e%2e.zip'],
  ];
  test.each(names)('%j becomes %j, here and through the cache', async (name, clean) => {
    expect(cleanName(name)).toBe(clean);
    await park([fileOf(name)]);
    expect((await receivedFiles())[0]?.name).toBe(clean);
  });

  test('a long name keeps its ending; a type that is none becomes plain bytes', async () => {
    const long = cleanName(`${'a'.repeat(5000)}.zip`);
    expect([...long]).toHaveLength(120);
    expect(long.endsWith('.zip')).toBe(true);
    const odd = fileOf('a.zip');
    Object.defineProperty(odd, 'type', { value: 'text/html\r\nset-cookie: a=b' });
    await park([odd]);
    const file = await receivedFile((await receivedFiles())[0]?.key ?? '');
    expect(file?.type).toBe('application/octet-stream');
  });
});
