/** Reads codes from a page as a camera would meet them: drawn by pdftoppm at 200 dpi, read by zxing-wasm, which is none of ours. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import type { Box } from '#documents/labelPlaces.ts';

const dotsPerInch = 200;

const wasm = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(wasm).buffer } });

export interface GreyPage {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
}

/** A page in grey (PGM, "P5 width height 255" and a byte a dot). */
export function greyPage(path: string): GreyPage {
  const bytes = readFileSync(path);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 60).toString('latin1'));
  if (!head) throw new Error(`no grey page: ${path}`);
  return { width: Number(head[1]), height: Number(head[2]), dots: bytes.subarray(head[0].length) };
}

export const drawnAt200 = (path: string, out: string): string[] => ['-r', String(dotsPerInch), '-gray', path, out];

const dotsOf = (pt: number): number => Math.round((pt * dotsPerInch) / 72);

/** What lies inside a box of the page, and only that. */
function cut(page: GreyPage, box: Box) {
  const [left, top, width, height] = [box.xPt, box.yPt, box.widthPt, box.heightPt].map(dotsOf) as [
    number,
    number,
    number,
    number,
  ];
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const inside = left + x < page.width && top + y < page.height;
      const dot = inside ? (page.dots[(top + y) * page.width + left + x] ?? 255) : 255;
      data.fill(dot, (y * width + x) * 4, (y * width + x) * 4 + 3);
    }
  return { data, width, height, colorSpace: 'srgb' as const };
}

/** Texts of all codes inside a box. */
export async function codesIn(page: GreyPage, box: Box): Promise<string[]> {
  const found = await readBarcodes(cut(page, box) as ImageData, { formats: ['QRCode'] });
  return found.filter(({ isValid }) => isValid).map(({ text }) => text);
}
