/** Pictures as a camera would leave them, made in the browser itself, and what its database holds of them afterwards. */
import { execFileSync } from 'node:child_process';
import type { Page } from '@playwright/test';
import { exifSegment, withSegment } from '#tests/store/pictures.ts';

type Fill = readonly [colour: string, x: number, y: number, width: number, height: number];
type Size = readonly [widthPx: number, heightPx: number];

/** As much fine structure as peeling paint has. */
const spots = ([width, height]: Size): Fill[] =>
  Array.from({ length: 30_000 }, (_, at) => [
    `hsl(${(at * 47) % 360} 30% ${20 + ((at * 31) % 60)}%)`,
    (at * 7919) % width,
    (at * 104_729) % height,
    8 + (at % 57),
    6 + (at % 43),
  ]);

/** `half`: left half red, right half blue. `clear`: nothing drawn at all. `grain`: every dot another colour. */
const motifs = {
  scene: (size: Size): Fill[] => [['#c9bc9d', 0, 0, ...size], ...spots(size)],
  half: ([width, height]: Size): Fill[] => [
    ['#ff0000', 0, 0, width / 2, height],
    ['#0000ff', width / 2, 0, width / 2, height],
  ],
  clear: (): Fill[] => [],
  grain: (): Fill[] => [],
} as const;
export type Motif = keyof typeof motifs;

/** A picture of so many dots, as bytes; drawn in the page, so that no picture has to lie with the tests. */
export async function drawnPicture(
  page: Page,
  size: Size,
  motif: Motif,
  type = 'image/jpeg',
): Promise<Uint8Array<ArrayBuffer>> {
  const base64 = await page.evaluate(
    async ([[width, height], fills, grain, kind]) => {
      const canvas = new OffscreenCanvas(width, height);
      const context = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
      for (const [colour, ...where] of fills) {
        context.fillStyle = colour;
        context.fillRect(...where);
      }
      const tile = new ImageData(1024, 1024);
      for (let at = 0; grain && at < tile.data.length; at += 65_536)
        crypto.getRandomValues(tile.data.subarray(at, at + 65_536));
      // Not clear anywhere, or the grain would be white.
      for (let at = 3; at < tile.data.length; at += 4) tile.data[at] = 255;
      for (let at = 0; grain && at < width * height; at += 1024 * 1024)
        context.putImageData(tile, (at / 1024) % width, Math.floor(at / 1024 / width) * 1024);
      const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: kind, quality: 0.95 })).arrayBuffer());
      let text = '';
      for (let at = 0; at < bytes.length; at += 30_000) text += String.fromCharCode(...bytes.subarray(at, at + 30_000));
      return btoa(text);
    },
    [size, motifs[motif](size), motif === 'grain', type] as const,
  );
  return Uint8Array.from(Buffer.from(base64, 'base64'));
}

/** The same with place, device and time in it, and which way up it was held. */
export const asTaken = (jpeg: Uint8Array, orientation = 1): Uint8Array<ArrayBuffer> =>
  withSegment(jpeg, exifSegment(orientation));

export const chosen = (bytes: Uint8Array, name = 'IMG_0417.jpg', mimeType = 'image/jpeg') => ({
  name,
  mimeType,
  buffer: Buffer.from(bytes),
});

export interface KeptPicture {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Red, green, blue: at an eighth from the left and the top, and at an eighth from the right and the bottom. */
  readonly corners: readonly (readonly number[])[];
}

/** Every picture in the open database, decoded by the browser as it stands there. */
export async function keptPictures(page: Page, database: string): Promise<readonly KeptPicture[]> {
  const found = await page.evaluate(async (name) => {
    const opened = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const rows = await new Promise<{ type: string; bytes: Uint8Array<ArrayBuffer> }[]>((resolve, reject) => {
      const request = opened.transaction('files').objectStore('files').getAll();
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    opened.close();
    const pictures = rows.filter(({ type }) => type === 'image/jpeg');
    return Promise.all(
      pictures.map(async ({ bytes }) => {
        const bitmap = await createImageBitmap(new Blob([bytes]));
        const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d', { willReadFrequently: true });
        if (context === null) throw new Error('no canvas');
        context.drawImage(bitmap, 0, 0);
        const corners = [1, 7].map((eighth) => [
          ...context.getImageData((bitmap.width * eighth) >> 3, (bitmap.height * eighth) >> 3, 1, 1).data.slice(0, 3),
        ]);
        let text = '';
        for (let at = 0; at < bytes.length; at += 30_000)
          text += String.fromCharCode(...bytes.subarray(at, at + 30_000));
        return { base64: btoa(text), widthPx: bitmap.width, heightPx: bitmap.height, corners };
      }),
    );
  }, database);
  return found.map(({ base64, ...rest }) => ({ ...rest, bytes: Uint8Array.from(Buffer.from(base64, 'base64')) }));
}

/** What ImageMagick reads out of a picture, every word of it; null where it is not installed. */
export function readOutside(bytes: Uint8Array): string | null {
  try {
    return execFileSync('identify', ['-verbose', 'jpeg:-'], { input: bytes, encoding: 'utf8', maxBuffer: 50_000_000 });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    console.warn('ImageMagick is not installed: the pictures were read by our own eyes and the browser only.');
    return null;
  }
}
