/**
 * Pictures as bytes, made by hand after the published layouts: JPEG (ITU-T T.81), Exif (CIPA DC-008), PNG (W3C), HEIF (ISO/IEC 23008-12).
 * The Exif part names a place, a device and a time, so that a test can look for what must be gone.
 */

const ascii = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const u16 = (value: number): number[] => [value >> 8, value & 255];
const u32 = (value: number): number[] => [(value >>> 24) & 255, (value >>> 16) & 255, (value >>> 8) & 255, value & 255];
const segment = (marker: number, body: readonly number[]): number[] => [0xff, marker, ...u16(body.length + 2), ...body];

export const device = 'Invented Camera 7';
export const takenAt = '2026:10:06 06:50:12';

type Field = readonly [tag: number, type: number, count: number, value: readonly number[]];

/** One directory of fields, big-endian; values over four bytes lie behind it. `at` counts from the start of the TIFF part. */
function directory(fields: readonly Field[], at: number): number[] {
  const head = [...u16(fields.length)];
  const behind: number[] = [];
  const valuesAt = at + 2 + fields.length * 12 + 4;
  for (const [tag, type, count, value] of fields) {
    head.push(...u16(tag), ...u16(type), ...u32(count));
    if (value.length <= 4) head.push(...value, ...Array.from({ length: 4 - value.length }, () => 0));
    else {
      head.push(...u32(valuesAt + behind.length));
      behind.push(...value, ...(value.length % 2 === 1 ? [0] : []));
    }
  }
  return [...head, ...u32(0), ...behind];
}

const asciiField = (tag: number, text: string): Field => [tag, 2, text.length + 1, [...ascii(text), 0]];
const degrees = (...parts: readonly number[]): number[] => parts.flatMap((part) => [...u32(part), ...u32(1)]);

/** APP1 with device, time, orientation, and 40° 26' 46" N, 79° 58' 56" W. */
export function exifSegment(orientation = 1): Uint8Array {
  const gps = (at: number): number[] =>
    directory(
      [asciiField(1, 'N'), [2, 5, 3, degrees(40, 26, 46)], asciiField(3, 'W'), [4, 5, 3, degrees(79, 58, 56)]],
      at,
    );
  const first = (gpsAt: number): number[] =>
    directory(
      [
        asciiField(0x0110, device),
        [0x0112, 3, 1, u16(orientation)],
        asciiField(0x0132, takenAt),
        [0x8825, 4, 1, u32(gpsAt)],
      ],
      8,
    );
  const gpsAt = 8 + first(0).length;
  const tiff = [...ascii('MM'), ...u16(42), ...u32(8), ...first(gpsAt), ...gps(gpsAt)];
  return Uint8Array.from(segment(0xe1, [...ascii('Exif\0\0'), ...tiff]));
}

/** The same JPEG with a segment more, behind its first two bytes. */
export function withSegment(jpeg: Uint8Array, added: Uint8Array): Uint8Array<ArrayBuffer> {
  const out = new Uint8Array(jpeg.length + added.length);
  out.set(jpeg.subarray(0, 2));
  out.set(added, 2);
  out.set(jpeg.subarray(2), 2 + added.length);
  return out;
}

/** Heads and an empty scan: a size to be read, and nothing to be seen. */
export const bareJpeg = (widthPx: number, heightPx: number, dataBytes = 100): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([
    ...[0xff, 0xd8],
    ...segment(0xe0, [...ascii('JFIF\0'), 1, 2, 0, 0, 1, 0, 1, 0, 0]),
    ...segment(0xc0, [8, ...u16(heightPx), ...u16(widthPx), 1, 1, 0x11, 0]),
    ...segment(0xda, [1, 1, 0, 0, 63, 0]),
    // Data bytes of 0xFF are followed by 0, and a restart mark stands among them.
    ...Array.from({ length: dataBytes }, (_, index) => index % 50),
    ...[0xff, 0x00, 0xff, 0xd0, 7],
    ...[0xff, 0xd9],
  ]);

export const barePng = (widthPx: number, heightPx: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([
    ...[0x89, ...ascii('PNG\r\n'), 0x1a, 0x0a],
    ...[...u32(13), ...ascii('IHDR'), ...u32(widthPx), ...u32(heightPx), 8, 6, 0, 0, 0, ...u32(0)],
    ...[...u32(0), ...ascii('IEND'), ...u32(0)],
  ]);

/** As phones write it: the sizes of tiles before the size of the whole, and turned by a quarter. */
export const bareHeic = (widthPx: number, heightPx: number, turned = false): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([
    ...[...u32(24), ...ascii('ftypheic'), ...u32(0), ...ascii('mif1heic')],
    ...[...u32(20), ...ascii('ispe'), ...u32(0), ...u32(512), ...u32(512)],
    ...[...u32(20), ...ascii('ispe'), ...u32(0), ...u32(widthPx), ...u32(heightPx)],
    ...(turned ? [...u32(9), ...ascii('irot'), 3] : []),
    ...Array.from({ length: 40 }, () => 9),
  ]);

export const bareWebp = (widthPx: number, heightPx: number): Uint8Array<ArrayBuffer> => {
  const low = (value: number): number[] => [value & 255, (value >> 8) & 255, (value >> 16) & 255];
  const body = [...ascii('WEBPVP8X'), 10, 0, 0, 0, 0, 0, 0, 0, ...low(widthPx - 1), ...low(heightPx - 1)];
  return Uint8Array.from([...ascii('RIFF'), body.length, 0, 0, 0, ...body]);
};

export const includesText = (bytes: Uint8Array, text: string): boolean =>
  Buffer.from(bytes).includes(Buffer.from(text, 'latin1'));
