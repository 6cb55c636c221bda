// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { deliver } from '#store/handOver/delivery.ts';

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
