/**
 * No room left, at each way of writing: the answer says so, what was typed is kept, nothing is half there, and with room again the same
 * act is done. The disk is one of bytes: what is given up makes room.
 */
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { forgetRun } from '#store/clock.ts';
import { flushDraft, forgetDrafts, loadDraft, setDraft } from '#store/drafts.ts';
import type { Preview } from '#store/handOver/handOver.ts';
import { takeInSteps } from '#store/handOver/limits.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { setDeviceName } from '#store/handOver/partners.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { setHolder } from '#store/holder.ts';
import { derivedRows } from '#store/lookup.ts';
import { setDerivedComplete } from '#store/marks.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { handIn, letGo, outgoingPhotos, tryAgain } from '#store/photos/outgoing.ts';
import type { PreparedPhoto } from '#store/photos.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { noteHandedOut } from '#store/sending.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from './device.ts';
import { copyOf, rowsIn } from './deviceCopy.ts';
import { type Act, fromOtherPhone, type Ground, layGround, pictureOf } from './faultGround.ts';
import { makeBackup } from './handOvers.ts';
import { entry, sampleOf } from './scenario.ts';
import { bytesOn, onDiskOf } from './smallDisk.ts';

let clock: TestClock;
let ground: Ground;
let start: TestDevice;
let device: TestDevice;
const files = { small: new Blob(), large: new Blob(), whole: new Blob() };

beforeAll(async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  clock = testClock();
  const first = newDevice();
  await pickUp(first);
  await openBooks();
  ground = await layGround(clock);
  files.whole = (await makeBackup()).blob;
  await closeBook();
  start = copyOf(first);
  files.small = await fromOtherPhone(files.whole, ground.runningId, 3, 1);
  // More pictures than go in at once: by chunks.
  files.large = await fromOtherPhone(files.whole, ground.runningId, 5, takeInSteps.atOnce.files + 2);
});

beforeEach(async () => {
  forgetRun();
  forgetDrafts();
  device = copyOf(start);
  await pickUp(device);
  setDerivedComplete('book', true);
  await openBooks();
});

afterEach(async () => {
  for (const { id } of outgoingPhotos()) letGo(id);
  await rebuildSettled();
});

const contentsNow = () => {
  const rows = rowsIn(device, 'fullshift-book');
  const of = (table: string) => (rows.get(table) ?? []) as readonly Record<string, unknown>[];
  const meta = of('meta').filter(({ key }) => !['derived', 'unreadable'].includes(String(key)));
  return JSON.stringify({
    journal: of('journal'),
    files: of('files').map(({ hash }) => hash),
    drafts: of('drafts'),
    meta,
  });
};
/** Room for what is here except the lists: giving them up frees nothing. */
const noRoomAtAll = (): number => bytesOn(device, (table) => table !== 'records');
const noMoreRoom = (): number => bytesOn(device);
const settled = async <T>(work: Promise<T>): Promise<T> => {
  const result = await work;
  await rebuildSettled();
  return result;
};

async function listsAreWhole(): Promise<void> {
  await closeBook();
  await openBooks();
  await rebuildSettled();
  expect(bookState()).toMatchObject({ kind: 'open', rebuilding: null });
  const { db } = theSession();
  const sorted = (rows: Iterable<{ key: string }>) => [...rows].sort((a, b) => (a.key < b.key ? -1 : 1));
  expect(sorted(await db.records.toArray())).toEqual(sorted(derivedRows(await db.journal.toArray()).values()));
}

const deed = (kind: string): Act => {
  const found = ground.acts.find((act) => act.kind === kind);
  if (found === undefined) throw new Error(kind);
  return found;
};
const written = ({ fact, files: bytes }: Act) =>
  write([fact], { draftKey: 'act', ...(bytes === undefined ? {} : { files: bytes }) });

describe('a deed', () => {
  test.each(['pumpStopped.v1', 'samplePrepared.v1', 'custodySheetIssued.v1', 'resultReceived.v1', 'valueCorrected.v1'])(
    '%s without any room is not written, what was typed is kept, and with room it is',
    async (kind) => {
      setDraft('act', 'a few words');
      await flushDraft('act');
      const before = contentsNow();
      const full = await onDiskOf(device, noRoomAtAll(), () => settled(written(deed(kind))));
      expect(full.result).toEqual({ kind: 'failed', why: 'quota' });
      expect(full.refusedCount).toBeGreaterThan(1);
      expect(contentsNow()).toBe(before);
      expect(await loadDraft(theSession().db, 'act')).toEqual({ value: 'a few words' });
      expect(bookState()).toMatchObject({ kind: 'open' });
      expect(await settled(written(deed(kind)))).toMatchObject({ kind: 'written' });
      expect(await loadDraft(theSession().db, 'act')).toBeNull();
      await listsAreWhole();
    },
  );

  test('where the lists can make room it is written, they come back when there is room, and no pump starts twice meanwhile', async () => {
    const act = deed('pumpPutOn.v1');
    const outcome = await onDiskOf(device, noMoreRoom(), async () => {
      const first = await settled(written(act));
      // The lists are not there: asked of the journal, the same pump is still known to run.
      return { first, again: await settled(written(act)) };
    });
    expect(outcome.refusedCount).toBeGreaterThan(0);
    expect(outcome.result.first).toMatchObject({ kind: 'written' });
    expect(outcome.result.again).toMatchObject({ kind: 'refused', refusals: [{ key: 'alreadyPutOn' }] });
    await listsAreWhole();
  });
});

test('a picture without room is offered again; nothing is given up for it, and the reading beside it stands', async () => {
  const { hash, bytes } = pictureOf(77, 900);
  const body = { hash, type: 'image/jpeg', widthPx: 4, heightPx: 3, bytesCount: bytes.length } as const;
  const photo: PreparedPhoto = { kind: 'photo', file: { hash, type: 'image/jpeg', bytes }, body };
  const lists = await theSession().db.records.count();
  const before = contentsNow();
  const wish = { recordKey: `sample:${ground.runningId}`, of: 'label', title: 'Pump', entry: entry() } as const;
  const { refusedCount } = await onDiskOf(device, noMoreRoom(), () => settled(handIn(Promise.resolve(photo), wish)));
  expect(refusedCount).toBe(1);
  expect(outgoingPhotos()).toMatchObject([{ state: 'notKept', why: 'quota' }]);
  expect(contentsNow()).toBe(before);
  expect(await theSession().db.records.count()).toBe(lists);
  await tryAgain(outgoingPhotos()[0]?.id ?? '');
  expect(outgoingPhotos()).toMatchObject([{ state: 'kept' }]);
});

test('what is being typed stays in hand, is said not to be kept, and is kept with room', async () => {
  const before = contentsNow();
  setDraft('note', 'half a sentence');
  expect((await onDiskOf(device, noMoreRoom(), () => flushDraft('note'))).result).toBe(false);
  expect(contentsNow()).toBe(before);
  expect(await loadDraft(theSession().db, 'note')).toEqual({ value: 'half a sentence' });
  expect(await flushDraft('note')).toBe(true);
  forgetDrafts();
  expect(await loadDraft(theSession().db, 'note')).toEqual({ value: 'half a sentence' });
});

const handedOut = { part: 'everything', partner: null, bookFactsCount: 3 } as Awaited<ReturnType<typeof makeBackup>>;
test.each([
  ['a backup handed out', () => noteHandedOut(handedOut)],
  ['the name of this device', () => setDeviceName('Van phone with a long name')],
  ['who holds the device', () => setHolder('f1rvf9kmzfte')],
] as const)('%s: not noted, and said so', async (_, note) => {
  const before = contentsNow();
  expect((await onDiskOf(device, noMoreRoom(), note)).result).toBe('quota');
  expect(contentsNow()).toBe(before);
  expect(await note()).toBeNull();
});

describe('a file', () => {
  const look = async (file: Blob): Promise<Preview> => {
    const looked = await lookInto(file);
    if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
    return looked;
  };

  test('that goes in at once is not taken in, and is with room', async () => {
    const shown = await look(files.small);
    const before = contentsNow();
    const { result } = await onDiskOf(device, noRoomAtAll(), () => settled(takeIn(shown)));
    expect(result).toEqual({ kind: 'failed', why: 'quota' });
    expect(contentsNow()).toBe(before);
    expect(await takeIn(await look(files.small))).toMatchObject({ kind: 'takenIn', newCount: 4 });
    await listsAreWhole();
  });

  test('of several chunks stops where the room ends, under its mark, and goes on with room: at every size of the disk', async () => {
    const marks = new Set<string>();
    const least = noRoomAtAll();
    let takenInAt = 0;
    for (let spare = 0; takenInAt === 0; spare += 700) {
      device = copyOf(start);
      await pickUp(device);
      setDerivedComplete('book', true);
      await openBooks();
      const shown = await look(files.large);
      const { result } = await onDiskOf(device, least + spare, () => settled(takeIn(shown)));
      if (result.kind === 'takenIn') takenInAt = spare;
      else expect(result).toEqual({ kind: 'failed', why: 'quota' });
      const { value } = (await theSession().db.meta.get('takeIn')) ?? { value: null };
      marks.add(JSON.stringify((value as { doneCount?: number } | null)?.doneCount ?? null));
      const remark = sampleOf({} as never, ground.runningId).remark('goes on')(entry());
      expect(await write([remark])).toMatchObject({ kind: 'written' });
      const rest = await look(files.large);
      expect(await takeIn(rest)).toMatchObject({ kind: 'takenIn', newCount: rest.newCount });
      await listsAreWhole();
      expect(await theSession().db.meta.get('takeIn')).toBeUndefined();
    }
    console.info(`room for all of it at ${takenInAt} bytes; marks met: ${[...marks].join(', ')}`);
    expect(takenInAt).toBeGreaterThan(2000);
    expect(marks.size).toBeGreaterThan(1);
  });

  test('on an empty device: not restored, and is with room', async () => {
    device = newDevice();
    await pickUp(device);
    await openBooks();
    const shown = await look(files.whole);
    for (const mostBytes of [0, 500, 5000, 15_000]) {
      const { result } = await onDiskOf(device, mostBytes, () => settled(takeIn(shown)));
      expect(result).toEqual({ kind: 'failed', why: 'quota' });
      expect(bookState()).toEqual({ kind: 'none', which: 'book' });
      expect(bytesOn(device)).toBe(0);
    }
    expect(await takeIn(shown)).toMatchObject({ kind: 'takenIn' });
    await listsAreWhole();
  });
});

test('a new book without room is not begun, and is with room', async () => {
  device = newDevice();
  await pickUp(device);
  await openBooks();
  const begin = () => newBook({ firmName: 'Old Sash & Steel', practice: false });
  for (const mostBytes of [0, 100, 300, 500]) {
    expect((await onDiskOf(device, mostBytes, begin)).result).toEqual({ kind: 'failed', why: 'quota' });
    expect(bytesOn(device)).toBe(0);
    expect(bookState()).toEqual({ kind: 'none', which: 'book' });
  }
  expect(await begin()).toMatchObject({ kind: 'written' });
});
