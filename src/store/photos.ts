/**
 * A picture beside a record: made small and rid of place, time and device before any transaction, then written in a write of its own. It
 * never holds up a reading: forms save first and hand the picture in afterwards. Loaded when a picture is first chosen.
 */
import type { FactBody } from '#records/fact.ts';
import type { FileRow } from './database.ts';
import { newId } from './device.ts';
import { hashOf } from './files.ts';
import { type Entry, newFact } from './newFact.ts';
import { type Decode, type Decoded, decodeInBrowser, type Encoded } from './photos/codec.ts';
import { isJpeg, metadataIn, withoutMetadata } from './photos/jpeg.ts';
import { pictureHead } from './photos/pictureHead.ts';
import { type Written, write } from './write.ts';

export type PhotoOf = FactBody<'photoTaken.v1'>['of'];

export interface PreparedPhoto {
  readonly kind: 'photo';
  readonly file: FileRow;
  readonly body: Pick<FactBody<'photoTaken.v1'>, 'hash' | 'type' | 'widthPx' | 'heightPx' | 'bytesCount'>;
}

/** `tooLarge`: too many dots to open here, or not to be made small enough. */
export type PhotoRefusedWhy = 'notAPicture' | 'tooLarge' | 'cannotRead';
export type Prepared = PreparedPhoto | { readonly kind: 'refused'; readonly why: PhotoRefusedWhy };

const mostBytes = 300_000;
const longestPx = 2048;
/** Fifty million dots: what the brief allows an image. */
const mostDots = 50_000_000;
/** A file of more bytes is not even read: a camera's own JPEG of fifty million dots has some thirty million. */
const mostFileBytes = 100_000_000;

/** Tried in turn. `share`: about how many of the first one's bytes; steps that cannot be enough are passed over. Own figures. */
const steps = [
  { longest: 2048, quality: 0.82, share: 1 },
  { longest: 2048, quality: 0.68, share: 0.7 },
  { longest: 2048, quality: 0.52, share: 0.55 },
  { longest: 1600, quality: 0.62, share: 0.4 },
  { longest: 1600, quality: 0.48, share: 0.32 },
  { longest: 1280, quality: 0.55, share: 0.24 },
  { longest: 1024, quality: 0.5, share: 0.15 },
  { longest: 800, quality: 0.42, share: 0.08 },
];

/** null: even the last step is too large. */
async function squeezed(picture: Decoded): Promise<Encoded | null> {
  let expected = 0;
  for (const [index, { longest, quality, share }] of steps.entries()) {
    const isLast = index === steps.length - 1;
    if (expected * share > mostBytes * 1.1 && !isLast) continue;
    const made = await picture.toJpeg(longest, quality);
    if (!isJpeg(made.bytes)) throw new Error('no JPEG was written');
    const bytes = withoutMetadata(made.bytes);
    if (bytes.length <= mostBytes) return { ...made, bytes };
    expected = bytes.length / share;
  }
  return null;
}

const refused = (why: PhotoRefusedWhy): Prepared => ({ kind: 'refused', why });

function prepared({ bytes, widthPx, heightPx }: Encoded): Prepared {
  const left = metadataIn(bytes);
  if (left.length > 0) throw new Error(`a picture would be kept with ${left.join(', ')}`);
  const [hash, type] = [hashOf(bytes), 'image/jpeg' as const];
  return {
    kind: 'photo',
    file: { hash, type, bytes },
    body: { hash, type, widthPx, heightPx, bytesCount: bytes.length },
  };
}

/** Never throws for what is in a file. Tests hand in what decodes. */
export async function preparePhoto(file: Blob, decode: Decode = decodeInBrowser): Promise<Prepared> {
  if (file.size > mostFileBytes) return refused('tooLarge');
  // A file that was moved or deleted since it was chosen cannot be read.
  const bytes = await file.arrayBuffer().catch(() => null);
  if (bytes === null) return refused('cannotRead');
  const head = pictureHead(new Uint8Array(bytes));
  if (head === 'notAPicture') return refused('notAPicture');
  if (head === 'otherKind') return refused('cannotRead');
  if (head.widthPx * head.heightPx > mostDots) return refused('tooLarge');
  // A decoder would fill the missing half with grey, where the figure may have stood.
  if (!head.whole) return refused('cannotRead');
  // Decoded by what the bytes are, not by what the file's name says.
  const picture = await decode(new Blob([bytes]), head, longestPx).catch(() => null);
  if (picture === null) return refused('cannotRead');
  try {
    const made = await squeezed(picture).catch(() => 'notWritten' as const);
    if (made === 'notWritten') return refused('cannotRead');
    return made === null ? refused('tooLarge') : prepared(made);
  } finally {
    picture.close();
  }
}

/** One write: the fact and the bytes, or neither. For want of room nothing else is given up. */
export function keepPhoto(recordKey: string, of: PhotoOf, photo: PreparedPhoto, entry: Entry): Promise<Written> {
  const body = { photoId: newId(), of, ...photo.body };
  return write([newFact('photoTaken.v1', body, { ...entry, about: [recordKey] })], {
    files: [photo.file],
    givesUpNothing: true,
  });
}
