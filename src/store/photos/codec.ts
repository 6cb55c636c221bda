/**
 * The browser's own eyes: decodes what it can, upright and shrunk while decoding, and writes JPEG. A canvas never holds more than iOS
 * allows, 16,777,216 dots (READ: ivmartel/dwv#902): a photo of 24 million dots is only ever drawn into a smaller one.
 */
import type { PictureHead } from './pictureHead.ts';

export interface Decoded {
  readonly widthPx: number;
  readonly heightPx: number;
  /** JPEG with its longer side at most `longestPx`, and its true size. */
  readonly toJpeg: (longestPx: number, quality: number) => Promise<Encoded>;
  readonly close: () => void;
}

export interface Encoded {
  readonly bytes: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Throws when the browser cannot read the file. */
export type Decode = (file: Blob, head: PictureHead, longestPx: number) => Promise<Decoded>;

interface Source {
  readonly image: CanvasImageSource;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly close: () => void;
}

async function bySmallBitmap(file: Blob, { widthPx, heightPx }: PictureHead, longestPx: number): Promise<Source> {
  const share = Math.min(1, longestPx / Math.max(widthPx, heightPx));
  const shrink =
    share < 1 ? { resizeWidth: Math.max(1, Math.round(widthPx * share)), resizeQuality: 'high' as const } : {};
  const image = await createImageBitmap(file, { imageOrientation: 'from-image', ...shrink });
  return { image, widthPx: image.width, heightPx: image.height, close: () => image.close() };
}

/** Browsers without those options: an image element turns the picture upright by itself, and is drawn from in steps. */
async function byElement(file: Blob): Promise<Source> {
  const url = URL.createObjectURL(file);
  const close = (): void => URL.revokeObjectURL(url);
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    return { image, widthPx: image.naturalWidth, heightPx: image.naturalHeight, close };
  } catch (error) {
    close();
    throw error;
  }
}

type Canvas = OffscreenCanvas | HTMLCanvasElement;

function newCanvas(widthPx: number, heightPx: number): Canvas {
  if (typeof OffscreenCanvas !== 'undefined') return new OffscreenCanvas(widthPx, heightPx);
  return Object.assign(document.createElement('canvas'), { width: widthPx, height: heightPx });
}

function drawn(image: CanvasImageSource, widthPx: number, heightPx: number): Canvas {
  const canvas = newCanvas(widthPx, heightPx);
  const context = canvas.getContext('2d', { alpha: false }) as CanvasRenderingContext2D | null;
  if (context === null) throw new Error('no canvas to draw on');
  // JPEG knows no transparency: what shines through stands on paper, not on black.
  context.fillStyle = '#ffffff';
  context.fillRect(0, 0, widthPx, heightPx);
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, widthPx, heightPx);
  return canvas;
}

async function jpegOf(canvas: Canvas, quality: number): Promise<Uint8Array> {
  const type = 'image/jpeg';
  const blob =
    'convertToBlob' in canvas
      ? await canvas.convertToBlob({ type, quality })
      : await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, type, quality));
  // The memory of a canvas is given back at once, where browsers give it back.
  canvas.width = 0;
  canvas.height = 0;
  if (blob === null || blob.type !== type) throw new Error('no JPEG is written here');
  return new Uint8Array(await blob.arrayBuffer());
}

/** Not more than half at a time, or fine strokes of a scale fall between the dots; the first step as large as a canvas may be. */
function inSteps({ image, widthPx, heightPx }: Source, width: number, height: number): Canvas {
  const steps = Math.ceil(Math.log2(Math.min(4096, Math.max(widthPx, heightPx)) / Math.max(width, height)));
  let from = image;
  for (let step = steps - 1; step > 0; step -= 1) from = drawn(from, width * 2 ** step, height * 2 ** step);
  return drawn(from, width, height);
}

export const decodeInBrowser: Decode = async (file, head, longestPx) => {
  const source = await bySmallBitmap(file, head, longestPx).catch(() => byElement(file));
  const { widthPx, heightPx, close } = source;
  return {
    widthPx,
    heightPx,
    close,
    toJpeg: async (longest, quality) => {
      const share = Math.min(1, longest / Math.max(widthPx, heightPx));
      const [width, height] = [Math.max(1, Math.round(widthPx * share)), Math.max(1, Math.round(heightPx * share))];
      return { bytes: await jpegOf(inSteps(source, width, height), quality), widthPx: width, heightPx: height };
    },
  };
};
