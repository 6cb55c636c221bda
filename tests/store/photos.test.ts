/** Pictures: what is refused before it is opened, what is taken out, and that none of it can touch a reading. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { FlowCheckRecord } from '#records/book.ts';
import { getFile, hashOf } from '#store/files.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { derivedIsComplete } from '#store/marks.ts';
import { newBook, openBooks } from '#store/opening.ts';
import type { Decode } from '#store/photos/codec.ts';
import { metadataIn, withoutMetadata } from '#store/photos/jpeg.ts';
import { handIn, letGo, outgoingPhotos, tryAgain } from '#store/photos/outgoing.ts';
import { pictureHead } from '#store/photos/pictureHead.ts';
import { keepPhoto, type PreparedPhoto, preparePhoto } from '#store/photos.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { diskFull, withFault } from './faults.ts';
import { makeBackup } from './handOvers.ts';
import {
  bareHeic,
  bareJpeg,
  barePng,
  bareWebp,
  device,
  exifSegment,
  includesText,
  takenAt,
  withSegment,
} from './pictures.ts';
import { entry, flowCheckOf, type Library, library, openingFacts } from './scenario.ts';

const file = (bytes: Uint8Array<ArrayBuffer>, name = 'IMG_0001.jpg'): File => new File([bytes], name);

/** Stands in for the browser's canvas: its pictures have the bytes that the test says, and place and time as some browsers leave them. */
function decoding(bytesAt: (longestPx: number, quality: number) => number) {
  const asked: number[] = [];
  const decode: Decode = async (_, head) => ({
    ...head,
    toJpeg: async (longest, quality) => {
      asked.push(longest);
      const bytes = withSegment(bareJpeg(longest, longest, bytesAt(longest, quality)), exifSegment());
      return { bytes, widthPx: longest, heightPx: longest };
    },
    close: () => undefined,
  });
  return { decode, asked };
}
const small = decoding(() => 1000).decode;
const neverOpened: Decode = async () => {
  throw new Error('this one must not reach the decoder');
};
const unread: Decode = async () => Promise.reject(new DOMException('cannot be decoded', 'EncodingError'));

describe('what a file says before it is opened', () => {
  test('sizes are read from JPEG, PNG, WebP and HEIC, as the picture is seen', () => {
    const size = { widthPx: 5712, heightPx: 4284, whole: true };
    expect(pictureHead(bareJpeg(5712, 4284))).toEqual(size);
    expect(pictureHead(barePng(5712, 4284))).toEqual(size);
    expect(pictureHead(bareWebp(5712, 4284))).toEqual(size);
    expect(pictureHead(bareHeic(5712, 4284))).toEqual(size);
    const turned = { widthPx: 4284, heightPx: 5712, whole: true };
    expect(pictureHead(bareHeic(5712, 4284, true))).toEqual(turned);
    for (const orientation of [5, 6, 7, 8])
      expect(pictureHead(withSegment(bareJpeg(5712, 4284), exifSegment(orientation)))).toEqual(turned);
    expect(pictureHead(withSegment(bareJpeg(5712, 4284), exifSegment(3)))).toEqual(size);
  });

  test('a picture of more than 50 million dots, and a file of 400 MB, never reach the decoder', async () => {
    for (const bomb of [bareJpeg(60_000, 60_000), barePng(100_000, 100_000), bareWebp(16_000, 16_000)])
      expect(await preparePhoto(file(bomb), neverOpened)).toEqual({ kind: 'refused', why: 'tooLarge' });
    const huge = { size: 400_000_000, arrayBuffer: () => Promise.reject(new Error('not read')) } as unknown as Blob;
    expect(await preparePhoto(huge, neverOpened)).toEqual({ kind: 'refused', why: 'tooLarge' });
    expect(await preparePhoto(file(bareJpeg(8064, 6048)), small)).toMatchObject({ kind: 'photo' });
  });

  test('text under the name of a picture is no picture', async () => {
    for (const text of ['a reading of 2.55 L/min', '<svg xmlns="http://www.w3.org/2000/svg"/>', '', '%PDF-1.7'])
      expect(await preparePhoto(new File([text], 'reading.jpg', { type: 'image/jpeg' }), neverOpened)).toEqual({
        kind: 'refused',
        why: 'notAPicture',
      });
  });

  test('a picture that is cut off is refused: a decoder would fill the rest with grey', async () => {
    for (const whole of [withSegment(bareJpeg(4000, 3000, 5000), exifSegment()), barePng(40, 30), bareWebp(40, 30)]) {
      expect(await preparePhoto(file(whole), small)).toMatchObject({ kind: 'photo' });
      for (let cut = 12; cut < whole.length; cut += Math.ceil(whole.length / 97))
        expect(await preparePhoto(file(whole.slice(0, cut)), neverOpened)).toEqual({
          kind: 'refused',
          why: 'cannotRead',
        });
    }
  });

  test('a kind that this browser does not read, and a file that is gone, are refused with the same words', async () => {
    const cannotRead = { kind: 'refused', why: 'cannotRead' };
    expect(await preparePhoto(file(bareHeic(4032, 3024), 'IMG_0002.HEIC'), unread)).toEqual(cannotRead);
    expect(await preparePhoto(new File(['GIF89a'], 'a.gif'), neverOpened)).toEqual(cannotRead);
    const gone = { size: 10, arrayBuffer: () => Promise.reject(new DOMException('', 'NotFoundError')) };
    expect(await preparePhoto(gone as unknown as Blob, neverOpened)).toEqual(cannotRead);
  });
});

describe('what is kept', () => {
  test('place, device and time are in the camera file, and not in what is kept', async () => {
    const taken = withSegment(bareJpeg(4000, 3000), exifSegment(6));
    for (const text of ['Exif', device, takenAt]) expect(includesText(taken, text)).toBe(true);
    expect(metadataIn(taken)).toEqual(['e1']);
    const photo = (await preparePhoto(file(taken), small)) as PreparedPhoto;
    for (const text of ['Exif', device, takenAt]) expect(includesText(photo.file.bytes, text)).toBe(false);
    expect(metadataIn(photo.file.bytes)).toEqual([]);
    expect(photo.body.hash).toBe(hashOf(photo.file.bytes));
    expect(photo.body.bytesCount).toBe(photo.file.bytes.length);
  });

  test('what stands behind the picture goes too, and the picture itself stays as it is', () => {
    const plain = bareJpeg(40, 30);
    const behind = Uint8Array.from([...withSegment(plain, exifSegment()), ...exifSegment()]);
    expect(metadataIn(behind)).toEqual(['e1', 'behind']);
    expect(withoutMetadata(behind)).toEqual(plain);
  });

  test('it is made smaller until it is 300,000 bytes at most', async () => {
    const { decode, asked } = decoding((longest) => longest ** 2 * 0.17);
    const photo = (await preparePhoto(file(bareJpeg(4000, 3000)), decode)) as PreparedPhoto;
    expect(photo.body).toMatchObject({ widthPx: 1280, heightPx: 1280 });
    expect(photo.body.bytesCount).toBeLessThanOrEqual(300_000);
    expect(asked.at(0)).toBe(2048);
    expect(Math.max(...asked)).toBeLessThanOrEqual(2048);
  });

  test('one that cannot be made small enough is refused', async () => {
    expect(await preparePhoto(file(bareJpeg(4000, 3000)), decoding(() => 900_000).decode)).toEqual({
      kind: 'refused',
      why: 'tooLarge',
    });
  });
});

describe('in the book', () => {
  let day: Library;
  let checkKey: string;
  let photo: PreparedPhoto;

  beforeEach(async () => {
    testClock();
    await pickUp(newDevice());
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    day = library();
    await write(openingFacts(day));
    const check = flowCheckOf(day, 'before')(entry(day.personId));
    await write([check]);
    checkKey = check.about[0] ?? '';
    photo = (await preparePhoto(file(bareJpeg(4000, 3000)), small)) as PreparedPhoto;
    for (const { id } of outgoingPhotos()) letGo(id);
  });

  const recordOf = async (key: string): Promise<FlowCheckRecord> =>
    (await theSession().db.records.get(key))?.record as FlowCheckRecord;
  const wish = () =>
    ({ recordKey: checkKey, of: 'meterReading', title: 'Pump P-1', entry: entry(day.personId) }) as const;
  const full = (at: number) => ({ at, forEver: true, error: diskFull, changesOnly: true });

  test('the picture stands on its record, with its bytes by their hash', async () => {
    expect(await keepPhoto(checkKey, 'meterReading', photo, entry(day.personId))).toMatchObject({ kind: 'written' });
    const [shown] = (await recordOf(checkKey)).photos ?? [];
    expect(shown).toMatchObject({ of: 'meterReading', by: day.personId, hash: photo.file.hash });
    expect((await getFile(photo.file.hash))?.bytes).toEqual(photo.file.bytes);
  });

  test('a full disk keeps neither half of it, gives up nothing for it, and the reading stands', async () => {
    for (const at of [1, 2, 3]) {
      const { result, struck } = await withFault(full(at), () =>
        keepPhoto(checkKey, 'meterReading', photo, entry(day.personId)),
      );
      expect(struck).toBe(true);
      expect(result).toEqual({ kind: 'failed', why: 'quota' });
      expect(await getFile(photo.file.hash)).toBeNull();
      const check = await recordOf(checkKey);
      expect(check.photos).toBeUndefined();
      expect(check.readings.length).toBeGreaterThan(0);
      expect(derivedIsComplete('book')).toBe(true);
    }
  });

  test('what found no room is offered again, and kept when there is room', async () => {
    await withFault(full(1), () => handIn(Promise.resolve(photo), wish()));
    const [waiting] = outgoingPhotos();
    expect(waiting).toMatchObject({ state: 'notKept', why: 'quota', title: 'Pump P-1' });
    await tryAgain(waiting?.id ?? '');
    expect(outgoingPhotos()).toMatchObject([{ state: 'kept' }]);
    expect((await recordOf(checkKey)).photos).toHaveLength(1);
  });

  test('a picture that turns out to be none is told, and there is nothing to try again', async () => {
    await handIn(preparePhoto(new File(['text'], 'reading.jpg'), neverOpened), wish());
    expect(outgoingPhotos()).toMatchObject([{ state: 'notKept', why: 'notAPicture', photo: null }]);
  });

  test('the same picture twice, and a picture of nothing in the book, are refused', async () => {
    await keepPhoto(checkKey, 'meterReading', photo, entry());
    expect(await keepPhoto(checkKey, 'meterReading', photo, entry())).toMatchObject({ kind: 'refused' });
    expect(await keepPhoto('meter:nowhere', 'certificate', photo, entry())).toMatchObject({ kind: 'refused' });
  });

  test('a picture taken in one book never goes into the one that was opened meanwhile', async () => {
    let finish: (found: PreparedPhoto) => void = () => undefined;
    const handed = handIn(new Promise((resolve) => (finish = resolve)), wish());
    await newBook({ firmName: 'Practice', practice: true });
    finish(photo);
    await handed;
    expect(outgoingPhotos()).toMatchObject([{ state: 'notKept', why: 'otherBook' }]);
    expect(await getFile(photo.file.hash)).toBeNull();
  });

  test('a hand-over file carries it as files/<hash>.jpg, and the other device has the same bytes', async () => {
    await keepPhoto(checkKey, 'meterReading', photo, entry());
    const { blob } = await makeBackup();
    const packed = Buffer.from(await blob.arrayBuffer());
    expect(packed.includes(`files/${photo.file.hash}.jpg`)).toBe(true);
    // Stored, not packed: the picture's own bytes stand in the file in one piece.
    expect(packed.includes(Buffer.from(photo.file.bytes))).toBe(true);
    await pickUp(newDevice());
    await openBooks();
    const looked = await lookInto(new File([blob], 'book.zip'));
    if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
    expect(await takeIn(looked)).toMatchObject({ kind: 'takenIn' });
    expect(await getFile(photo.file.hash)).toEqual({ ...photo.file, type: 'image/jpeg' });
    expect((await recordOf(checkKey)).photos).toMatchObject([{ hash: photo.file.hash }]);
  });
});
