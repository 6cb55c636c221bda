// @vitest-environment happy-dom
/** Pictures beside a reading: the reading is saved whatever becomes of its picture. The browser's canvas is stood in for; nothing of ours is. */
import { fireEvent } from '@testing-library/react';
import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { letGo, outgoingPhotos } from '#store/photos/outgoing.ts';
import { diskFull } from '#tests/store/faults.ts';
import { bareJpeg, exifSegment, withSegment } from '#tests/store/pictures.ts';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import { en as words } from '#words/photos.ts';
import {
  alerts,
  button,
  journal,
  lastFact,
  put,
  type Stage,
  screen,
  setStage,
  strike,
  visit,
  waitFor,
} from './stage.tsx';

let stage: Stage;

/** A browser that decodes anything, and writes JPEG as some do: with a segment of its own for the time. */
function withCanvas(): void {
  vi.stubGlobal('createImageBitmap', async () => ({ width: 2048, height: 1536, close: () => undefined }));
  vi.stubGlobal(
    'OffscreenCanvas',
    class {
      getContext = () => ({ fillRect: () => undefined, drawImage: () => undefined });
      convertToBlob = async () => new Blob([withSegment(bareJpeg(2048, 1536), exifSegment())], { type: 'image/jpeg' });
    },
  );
}

beforeEach(async () => {
  stage = await setStage();
  withCanvas();
});
afterEach(async () => {
  for (const { id } of outgoingPhotos()) letGo(id);
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  await strike();
});

const low = (n: number) => document.getElementById(`reading-${n}-low`) as HTMLInputElement;
const photo = () => new File([withSegment(bareJpeg(4032, 3024), exifSegment())], 'IMG_1.jpg', { type: 'image/jpeg' });
const camera = () => screen.getByLabelText(words.take.meterReading) as HTMLInputElement;

function choose(file: File): void {
  Object.defineProperty(camera(), 'files', { value: [file], configurable: true });
  fireEvent.change(camera());
}

async function ready() {
  const user = visit(`/shift/${stage.day.shiftId}/flow`);
  for (const name of ['P-1', 'M-1', 'L-77']) await user.click(await screen.findByRole('radio', { name }));
  await user.type(low(0), '2.5');
  return user;
}

/** No room for pictures, and room for everything else. */
function noRoomForPictures(): () => void {
  const original = IDBObjectStore.prototype.put;
  const spy = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function put(this: IDBObjectStore, ...args) {
    if (this.name === 'files') throw diskFull();
    return original.apply(this, args);
  });
  return () => spy.mockRestore();
}

describe('a picture of the reading', () => {
  test('is shown before it is saved, can be left out, and is asked for with the camera at the back', async () => {
    const user = await ready();
    expect(camera()).toHaveAttribute('accept', 'image/*');
    expect(camera()).toHaveAttribute('capture', 'environment');
    choose(photo());
    expect(await screen.findByAltText(words.preview)).toBeVisible();
    await user.click(await button(words.remove));
    expect(screen.queryByAltText(words.preview)).toBeNull();
    await user.click(await button('Save, next pump'));
    await screen.findByText(/is saved\./);
    expect(await lastFact('photoTaken.v1')).toBeUndefined();
  });

  test('is written after the reading, in a write of its own, and stands under its line in the story', async () => {
    const user = await ready();
    choose(photo());
    await screen.findByAltText(words.preview);
    await user.click(await button('Save, next pump'));
    await screen.findByText(/Pump P-1: the picture is kept\./);
    const kinds = (await journal()).map(({ kind }) => kind);
    expect(kinds.slice(-2)).toEqual(['flowChecked.v1', 'photoTaken.v1']);
    const one = sampleOf(stage.day);
    await put([one.prepared(entry(stage.day.personId))]);
    stage.clock.forward(60_000);
    await put([one.putOn(entry(stage.day.personId))]);
    visit(`/sample/${one.sampleId}`);
    const shown = await screen.findByAltText(/^Picture of the reading, taken .*06:00, by Ada Quill/);
    const large = shown.closest('button');
    expect(large).toHaveAttribute('aria-expanded', 'false');
    fireEvent.click(large as HTMLElement);
    expect(large).toHaveAttribute('aria-expanded', 'true');
  });

  test('that finds no room is told beside the saved reading, and kept when there is room', async () => {
    const user = await ready();
    choose(photo());
    await screen.findByAltText(words.preview);
    const makeRoom = noRoomForPictures();
    await user.click(await button('Save, next pump'));
    await screen.findByText(/Pump P-1: 2\.50.L\/min is saved\./);
    await waitFor(() => expect(alerts()).toMatch(/the picture is not kept\. The device has no room/));
    expect(alerts()).toContain(words.readingStands);
    expect((await lastFact('flowChecked.v1'))?.body).toMatchObject({ readings: [{ lowLPerMin: 2.5 }] });
    expect(await lastFact('photoTaken.v1')).toBeUndefined();
    makeRoom();
    await user.click(await button(words.queue.again));
    await screen.findByText(/Pump P-1: the picture is kept\./);
    expect(await lastFact('photoTaken.v1')).toBeDefined();
  });

  test('that the browser cannot read says so, and HEIC is named; the reading is saved', async () => {
    vi.stubGlobal('createImageBitmap', () => Promise.reject(new DOMException('', 'InvalidStateError')));
    vi.stubGlobal(
      'Image',
      class {
        decode = () => Promise.reject(new DOMException('', 'EncodingError'));
      },
    );
    const user = await ready();
    choose(photo());
    expect(await screen.findByText(/HEIC/)).toBeVisible();
    await user.click(await button('Save, next pump'));
    await screen.findByText(/is saved\./);
    expect(alerts()).not.toMatch(/picture/);
  });

  test('whose making takes long holds nothing up: it follows the reading when it is ready', async () => {
    let decoded: (bitmap: unknown) => void = () => undefined;
    vi.stubGlobal('createImageBitmap', () => new Promise((resolve) => (decoded = resolve)));
    const user = await ready();
    choose(photo());
    await screen.findByText(words.preparing);
    await user.click(await button('Save, next pump'));
    await screen.findByText(/is saved\./);
    await screen.findByText(/the picture is being written down/);
    decoded({ width: 2048, height: 1536, close: () => undefined });
    await screen.findByText(/the picture is kept\./);
    expect(await lastFact('photoTaken.v1')).toBeDefined();
  });
});

test('a picture of another device that is not here yet says so', async () => {
  const { personId } = stage.day;
  const check = flowCheckOf(stage.day, 'before')(entry(personId));
  await put([check]);
  const body = { photoId: newId(), of: 'meterReading', hash: 'ab'.repeat(32), type: 'image/jpeg' } as const;
  const size = { widthPx: 2048, heightPx: 1536, bytesCount: 200_000 };
  await put([newFact('photoTaken.v1', { ...body, ...size }, { ...entry(personId), about: check.about })]);
  const one = sampleOf(stage.day);
  await put([one.prepared(entry(personId))]);
  stage.clock.forward(60_000);
  await put([one.putOn(entry(personId))]);
  visit(`/sample/${one.sampleId}`);
  expect(
    await screen.findByText(/The picture is not on this device\. It comes with the next hand-over file/),
  ).toBeVisible();
});
