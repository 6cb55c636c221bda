/**
 * A JPEG as its segments (ITU-T T.81, Annex B): what kind each is, whether the picture is there to its end, and the same picture without
 * the segments that programs fill with place, time, device and remarks.
 */

interface Segment {
  readonly marker: number;
  /** Of its first byte, 0xFF. */
  readonly start: number;
  readonly end: number;
}

export interface JpegSegments {
  readonly segments: readonly Segment[];
  /** The end of the picture was found: nothing is cut off. */
  readonly whole: boolean;
}

const startOfImage = 0xd8;
const endOfImage = 0xd9;
const startOfScan = 0xda;
const comment = 0xfe;

export const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === 0xff && bytes[1] === startOfImage;
const isAlone = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= startOfImage);

/** After a scan's head its data run on to the next marker; 0xFF00 is a data byte, D0 to D7 are marks within the data. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let at = bytes.indexOf(0xff, from);
  while (at >= 0 && at + 1 < bytes.length) {
    const next = bytes[at + 1] ?? 0;
    if (next !== 0x00 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
    at = bytes.indexOf(0xff, at + 1);
  }
  return bytes.length;
}

/** The segment that begins at `start`; null when it is cut off. */
function segmentAt(bytes: Uint8Array, start: number): Segment | null {
  const marker = bytes[start + 1] ?? 0;
  const length = ((bytes[start + 2] ?? 0) << 8) | (bytes[start + 3] ?? 0);
  const headEnd = start + 2 + length;
  if (length < 2 || headEnd > bytes.length) return null;
  return { marker, start, end: marker === startOfScan ? endOfScan(bytes, headEnd) : headEnd };
}

/** Reads up to the end of the first picture: a second one behind it (some cameras) is no part of it. */
export function jpegSegments(bytes: Uint8Array): JpegSegments {
  const segments: Segment[] = [];
  let at = 2;
  while (bytes[at] === 0xff && at + 1 < bytes.length) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === endOfImage) return { segments, whole: true };
    if (marker === 0xff || isAlone(marker)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    const segment = segmentAt(bytes, at);
    if (segment === null) break;
    segments.push(segment);
    at = segment.end;
  }
  return { segments, whole: false };
}

/** APP0 says only how dots are shaped, APP14 how colours are coded; every other one can tell where, when and with what. */
const tellsMore = (marker: number): boolean =>
  marker === comment || (marker >= 0xe1 && marker <= 0xef && marker !== 0xee);

/** The markers of segments that may tell of place, time or device, and whether anything stands behind the picture. */
export function metadataIn(bytes: Uint8Array): readonly string[] {
  const { segments } = jpegSegments(bytes);
  const found = segments.filter(({ marker }) => tellsMore(marker)).map(({ marker }) => marker.toString(16));
  const end = (segments.at(-1)?.end ?? 0) + 2;
  return bytes.length > end ? [...found, 'behind'] : found;
}

/** The same picture without them. Browsers write some of their own, so this runs on every picture that is kept. */
export function withoutMetadata(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const kept = jpegSegments(bytes).segments.filter(({ marker }) => !tellsMore(marker));
  const out = new Uint8Array(kept.reduce((sum, { start, end }) => sum + end - start, 4));
  out.set([0xff, startOfImage]);
  let at = 2;
  for (const { start, end } of kept) {
    out.set(bytes.subarray(start, end), at);
    at += end - start;
  }
  out.set([0xff, endOfImage], at);
  return out;
}
