/**
 * What a file's first bytes say: which kind of picture, how many dots, and whether its end is there. Read before anything is decoded, so
 * that a small file which unfolds to a huge picture never reaches the decoder. Sizes are as the picture is seen, turned upright.
 * Sources: JPEG, ITU-T T.81; Exif 2.32 (CIPA DC-008); PNG, W3C; WebP, RFC 9649; HEIF, ISO/IEC 23008-12.
 */
import { isJpeg, jpegSegments } from './jpeg.ts';

export interface PictureHead {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly whole: boolean;
}

/** `otherKind`: a picture, but of a kind that is not read here, or whose size cannot be found. */
export type HeadFound = PictureHead | 'notAPicture' | 'otherKind';

const text = (bytes: Uint8Array, from: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(from, from + length));
const view = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

const upright = (widthPx: number, heightPx: number, turned: boolean, whole: boolean): HeadFound => {
  if (widthPx < 1 || heightPx < 1) return 'otherKind';
  return turned ? { widthPx: heightPx, heightPx: widthPx, whole } : { widthPx, heightPx, whole };
};

/** Orientation 5 to 8: the picture lies on its side. Anything that cannot be read counts as upright. */
function liesOnItsSide(bytes: Uint8Array): boolean {
  const tiff = bytes.subarray(10);
  if (text(bytes, 4, 4) !== 'Exif' || tiff.length < 14) return false;
  const data = view(tiff);
  const little = text(tiff, 0, 2) === 'II';
  const first = data.getUint32(4, little);
  if (first + 2 > tiff.length) return false;
  const count = data.getUint16(first, little);
  for (let entry = first + 2; entry + 12 <= Math.min(tiff.length, first + 2 + count * 12); entry += 12) {
    if (data.getUint16(entry, little) === 0x0112) return data.getUint16(entry + 8, little) >= 5;
  }
  return false;
}

/** C0 to CF but for tables (C4), JPG (C8) and arithmetic conditioning (CC): the frame's head. */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

function jpegHead(bytes: Uint8Array): HeadFound {
  const { segments, whole } = jpegSegments(bytes);
  const frame = segments.find(({ marker }) => isFrame(marker));
  if (frame === undefined || frame.end - frame.start < 9) return 'otherKind';
  const data = view(bytes);
  const exif = segments.find(({ marker, start }) => marker === 0xe1 && text(bytes, start + 4, 4) === 'Exif');
  const turned = exif !== undefined && liesOnItsSide(bytes.subarray(exif.start, exif.end));
  return upright(data.getUint16(frame.start + 7), data.getUint16(frame.start + 5), turned, whole);
}

function pngHead(bytes: Uint8Array): HeadFound {
  const data = view(bytes);
  if (bytes.length < 33 || text(bytes, 12, 4) !== 'IHDR') return 'otherKind';
  let at = 8;
  let whole = false;
  while (!whole && at + 12 <= bytes.length) {
    whole = text(bytes, at + 4, 4) === 'IEND';
    at += 12 + data.getUint32(at);
  }
  return upright(data.getUint32(16), data.getUint32(20), false, whole);
}

function webpHead(bytes: Uint8Array): HeadFound {
  if (bytes.length < 30) return 'otherKind';
  const data = view(bytes);
  const whole = data.getUint32(4, true) + 8 <= bytes.length;
  const low14 = 0x3fff;
  const chunk = text(bytes, 12, 4);
  if (chunk === 'VP8X') {
    const [width, height] = [data.getUint32(24, true) & 0xffffff, data.getUint32(26, true) >>> 8];
    return upright(width + 1, height + 1, false, whole);
  }
  if (chunk === 'VP8L') {
    const bits = data.getUint32(21, true);
    return upright((bits & low14) + 1, ((bits >>> 14) & low14) + 1, false, whole);
  }
  return upright(data.getUint16(26, true) & low14, data.getUint16(28, true) & low14, false, whole);
}

/** The largest of the sizes that the file names: the whole picture, not its tiles. `irot` 1 and 3 turn it by a quarter. */
function heifHead(bytes: Uint8Array): HeadFound {
  const head = bytes.subarray(0, 1_000_000);
  const data = view(head);
  let largest = { widthPx: 0, heightPx: 0 };
  let turned = false;
  for (let at = head.indexOf(0x69); at >= 0 && at + 16 <= head.length; at = head.indexOf(0x69, at + 1)) {
    const box = text(head, at, 4);
    if (box === 'irot') turned = ((head[at + 4] ?? 0) & 1) === 1;
    if (box !== 'ispe') continue;
    const size = { widthPx: data.getUint32(at + 8), heightPx: data.getUint32(at + 12) };
    if (size.widthPx * size.heightPx > largest.widthPx * largest.heightPx) largest = size;
  }
  return upright(largest.widthPx, largest.heightPx, turned, true);
}

const heifBrands: readonly string[] = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1', 'avif', 'avis'];
const otherKinds: readonly string[] = ['GIF8', 'II*\0', 'MM\0*'];

export function pictureHead(bytes: Uint8Array): HeadFound {
  if (isJpeg(bytes)) return jpegHead(bytes);
  if (text(bytes, 0, 8) === '\u0089PNG\r\n\u001a\n') return pngHead(bytes);
  if (text(bytes, 0, 4) === 'RIFF' && text(bytes, 8, 4) === 'WEBP') return webpHead(bytes);
  if (text(bytes, 4, 4) === 'ftyp' && heifBrands.includes(text(bytes, 8, 4))) return heifHead(bytes);
  return otherKinds.includes(text(bytes, 0, 4)) || text(bytes, 0, 2) === 'BM' ? 'otherKind' : 'notAPicture';
}
