// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { deliver, type WayOut, waysOut } from '#store/handOver/delivery.ts';

const pdf = new Blob(['%PDF'], { type: 'application/pdf' });
const zip = new Blob(['PK'], { type: 'application/zip' });

interface Device {
  coarse: boolean;
  standalone?: boolean;
  shares?: (file: File) => boolean;
  share?: () => Promise<void>;
  picker?: unknown;
}

/** A device that this file is handed out on. */
function on({ coarse, standalone, shares, share, picker }: Device): void {
  vi.stubGlobal('matchMedia', () => ({ matches: coarse }));
  vi.stubGlobal('showSaveFilePicker', picker);
  const known = {
    ...(standalone === undefined ? {} : { standalone }),
    ...(shares === undefined ? {} : { canShare: ({ files }: { files: File[] }) => files.every(shares) }),
    ...(shares === undefined ? {} : { share: share ?? (async () => {}) }),
  };
  vi.stubGlobal('navigator', known);
}

let clicked: string[] = [];
beforeEach(() => {
  clicked = [];
  URL.createObjectURL = () => 'blob:kept';
  URL.revokeObjectURL = () => {};
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function click(this: HTMLAnchorElement) {
    clicked.push(this.download);
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const failing = (name: string) => async () => {
  throw new DOMException('no', name);
};

describe('handing a file out', () => {
  test('a phone shares what it can share', async () => {
    on({ coarse: true, shares: () => true });
    expect(await deliver(pdf, 'sheet.pdf')).toEqual({ kind: 'shared' });
    expect(clicked).toEqual([]);
  });

  test('a phone that cannot share downloads', async () => {
    on({ coarse: true, shares: () => false });
    expect(await deliver(zip, 'book.zip')).toEqual({ kind: 'downloaded' });
    expect(clicked).toEqual(['book.zip']);
  });

  test('a home-screen app on iOS never downloads: a zip goes out as text, or not at all', async () => {
    const names: string[] = [];
    const shares = (file: File): boolean => {
      names.push(file.name);
      return file.type === 'text/plain';
    };
    on({ coarse: true, standalone: true, shares });
    expect(await deliver(zip, 'book.zip')).toEqual({ kind: 'shared' });
    expect(names).toEqual(['book.zip', 'book.zip.txt']);
    on({ coarse: true, standalone: true, shares: () => false });
    expect(await deliver(zip, 'book.zip')).toEqual({ kind: 'failed', why: 'cannotShareHere' });
    on({ coarse: true, standalone: true });
    expect(await deliver(zip, 'book.zip')).toEqual({ kind: 'failed', why: 'cannotShareHere' });
    expect(clicked).toEqual([]);
  });

  test.each([
    ['AbortError', { kind: 'cancelled' }],
    ['NotAllowedError', { kind: 'tapAgain' }],
    ['DataError', { kind: 'failed', why: 'unknown' }],
  ])('a share that ends in %s says so and is no download', async (name, expected) => {
    on({ coarse: true, shares: () => true, share: failing(name) });
    expect(await deliver(pdf, 'sheet.pdf')).toEqual(expected);
    expect(clicked).toEqual([]);
  });

  test('a laptop with a save picker writes the whole file there', async () => {
    const wrote: Blob[] = [];
    const close = vi.fn(async () => {});
    const writable = { write: async (data: Blob) => void wrote.push(data), close };
    on({ coarse: false, picker: async () => ({ createWritable: async () => writable }) });
    expect(await deliver(pdf, 'sheet.pdf')).toEqual({ kind: 'saved' });
    expect(await wrote[0]?.text()).toBe('%PDF');
    expect(close).toHaveBeenCalledTimes(1);
  });

  test('a laptop without one downloads; a cancelled picker is cancelled', async () => {
    on({ coarse: false });
    expect(await deliver(pdf, 'sheet.pdf')).toEqual({ kind: 'downloaded' });
    on({ coarse: false, picker: failing('AbortError') });
    expect(await deliver(pdf, 'sheet.pdf')).toEqual({ kind: 'cancelled' });
    expect(clicked).toEqual(['sheet.pdf']);
  });
});

/**
 * Platforms as the brief's platform.md tells them: C5 (sharing files: Chromium on phones, iOS; not on most desktops; the list of usual types
 * has no zip), C6 (save dialog: Chromium on desktops, lately on Android), X1 (iOS home-screen app: never download), X3 (zip refused: text).
 */
describe('the ways out of each platform, the best first', () => {
  const usual = ({ type }: File): boolean => ['application/pdf', 'text/plain', 'text/csv', 'image/jpeg'].includes(type);
  const anything = (): boolean => true;
  const picker = async () => ({});
  const sealed = new Blob(['age-encryption.org/v1'], { type: 'application/octet-stream' });
  const platforms: readonly [string, Device, Record<'pdf' | 'zip' | 'sealed', readonly WayOut[]>][] = [
    [
      'Chromium on Android',
      { coarse: true, shares: usual },
      {
        pdf: ['share', 'download'],
        zip: ['shareAsText', 'download'],
        sealed: ['shareAsText', 'download'],
      },
    ],
    [
      'Chromium on Android with a save dialog',
      { coarse: true, shares: usual, picker },
      {
        pdf: ['share', 'saveDialog', 'download'],
        zip: ['shareAsText', 'saveDialog', 'download'],
        sealed: ['shareAsText', 'saveDialog', 'download'],
      },
    ],
    ['Firefox on Android', { coarse: true }, { pdf: ['download'], zip: ['download'], sealed: ['download'] }],
    [
      'Safari on iOS, in a tab',
      { coarse: true, standalone: false, shares: usual },
      { pdf: ['share', 'download'], zip: ['shareAsText', 'download'], sealed: ['shareAsText', 'download'] },
    ],
    [
      'iOS from the home screen',
      { coarse: true, standalone: true, shares: usual },
      { pdf: ['share'], zip: ['shareAsText'], sealed: ['shareAsText'] },
    ],
    [
      'iOS from the home screen, where everything may be shared',
      { coarse: true, standalone: true, shares: anything },
      { pdf: ['share'], zip: ['share'], sealed: ['share'] },
    ],
    ['iOS from the home screen, old', { coarse: true, standalone: true }, { pdf: [], zip: [], sealed: [] }],
    [
      'Chromium on a laptop',
      { coarse: false, picker },
      { pdf: ['saveDialog', 'download'], zip: ['saveDialog', 'download'], sealed: ['saveDialog', 'download'] },
    ],
    [
      'Chromium on a laptop that shares',
      { coarse: false, picker, shares: usual },
      {
        pdf: ['saveDialog', 'download', 'share'],
        zip: ['saveDialog', 'download', 'shareAsText'],
        sealed: ['saveDialog', 'download', 'shareAsText'],
      },
    ],
    ['Firefox on a laptop', { coarse: false }, { pdf: ['download'], zip: ['download'], sealed: ['download'] }],
    [
      'Safari on a laptop',
      { coarse: false, shares: usual },
      {
        pdf: ['download', 'share'],
        zip: ['download', 'shareAsText'],
        sealed: ['download', 'shareAsText'],
      },
    ],
  ];
  const files = { pdf: [pdf, 'a.pdf'], zip: [zip, 'a.zip'], sealed: [sealed, 'a.zip.age'] } as const;

  test.each(platforms)('%s', (_, device, wanted) => {
    on(device);
    const found = Object.fromEntries(Object.entries(files).map(([kind, [blob, name]]) => [kind, waysOut(blob, name)]));
    expect(found).toEqual(wanted);
    if (device.standalone === true) expect(Object.values(found).flat()).not.toContain('download');
  });

  test('a sealed file goes out as text under its whole name, with the same bytes', async () => {
    const shared: File[] = [];
    on({ coarse: true, standalone: true, shares: usual });
    Object.assign(navigator, { share: async ({ files: [file] }: { files: [File] }) => void shared.push(file) });
    expect(await deliver(sealed, 'fullshift-book-news-2026-11-25-1107.zip.age')).toEqual({ kind: 'shared' });
    expect(shared[0]?.name).toBe('fullshift-book-news-2026-11-25-1107.zip.age.txt');
    expect(await shared[0]?.text()).toBe('age-encryption.org/v1');
  });

  test('another way than the best may be asked for', async () => {
    on({ coarse: true, shares: usual });
    expect(await deliver(zip, 'a.zip', 'download')).toEqual({ kind: 'downloaded' });
    expect(clicked).toEqual(['a.zip']);
  });

  // X2: a share sheet that is asked for after other work is silently ignored.
  test('nothing comes between the tap and the share sheet', () => {
    const share = vi.fn(async () => {});
    on({ coarse: true, shares: usual, share });
    void deliver(zip, 'a.zip');
    expect(share).toHaveBeenCalledTimes(1);
  });

  test('a browser whose question about sharing throws is one that cannot share', () => {
    const shares = (): boolean => {
      throw new TypeError('no');
    };
    on({ coarse: true, shares });
    expect(waysOut(zip, 'a.zip')).toEqual(['download']);
  });
});
