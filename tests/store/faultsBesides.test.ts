/**
 * Every request fails, once and for ever, in what is not a deed of a shift: a book begun, taken in whole and by chunks, left, restored,
 * wiped, what is being typed, and what stands beside the book.
 */
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { now } from '#store/device.ts';
import { flushDraft, loadDraft, setDraft } from '#store/drafts.ts';
import type { Preview } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { forgetPartner, partners, setDeviceName } from '#store/handOver/partners.ts';
import { leaveTakeIn, noteNothingNew, takeIn } from '#store/handOver/taking.ts';
import { setHolder } from '#store/holder.ts';
import { newFact } from '#store/newFact.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { keepSendChoice, noteHandedOut, noteVerified } from '#store/sending.ts';
import { theSession } from '#store/session.ts';
import { checkBackup, type VerifiedBackup, wipe } from '#store/wiping.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from './device.ts';
import { copyOf } from './deviceCopy.ts';
import {
  type Answer,
  alike,
  faultsOf,
  modes,
  type State,
  stackedModes,
  type Tally,
  total,
  type UseCase,
} from './everyFault.ts';
import { fromOtherPhone, layGround, mustTakeIn, mustWrite, photoOf, pictureOf } from './faultGround.ts';
import { makeBackup } from './handOvers.ts';
import { entry, library, openingFacts } from './scenario.ts';

vi.mock('#store/handOver/limits.ts', async (original) => ({
  ...(await original<typeof import('#store/handOver/limits.ts')>()),
  // Small steps, so that a small file goes in by many.
  takeInSteps: { atOnce: { rows: 9, records: 90, files: 2 }, chunkRows: 5, chunkBytes: 100 },
}));

let clock: TestClock;
let runningId: string;
let bare: TestDevice;
let start: TestDevice;
let halfTaken: TestDevice;
let quiet: TestDevice;
let [quietBackup, wholeBackup, smallFile, largeFile] = [new Blob(), new Blob(), new Blob(), new Blob()];
const tally: Tally = new Map();
/** One line for each state a take-in was left in. */
const left = new Map<string, number>();

const closed = async (device: TestDevice): Promise<TestDevice> => {
  await closeBook();
  return copyOf(device);
};
beforeAll(async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  clock = testClock();
  bare = newDevice();
  const device = newDevice();
  await pickUp(device);
  await openBooks();
  runningId = (await layGround(clock)).runningId;
  wholeBackup = (await makeBackup()).blob;
  start = await closed(device);
  smallFile = await fromOtherPhone(wholeBackup, runningId, 2, 1);
  largeFile = await fromOtherPhone(wholeBackup, runningId, 9, 3);

  halfTaken = copyOf(start);
  await pickUp(halfTaken);
  await openBooks();
  const stop = new AbortController();
  const shown = await looked(largeFile);
  await takeIn(shown, { signal: stop.signal, onProgress: () => stop.abort() });
  halfTaken = await closed(halfTaken);

  quiet = newDevice();
  await pickUp(quiet);
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  await mustWrite(openingFacts(library()));
  const picture = pictureOf(1);
  await mustWrite([photoOf(picture, (await theSession().db.records.toArray())[0]?.key ?? '')], [picture]);
  quietBackup = (await makeBackup()).blob;
  quiet = await closed(quiet);
});

afterAll(() => {
  console.info(
    `faults injected: ${total(tally)}`,
    Object.fromEntries(tally),
    'take-ins left:',
    Object.fromEntries(left),
  );
});

async function looked(file: Blob): Promise<Preview> {
  const found = await lookInto(file);
  if (found.kind !== 'preview') throw new Error(JSON.stringify(found));
  return found;
}

const took = async (shown: unknown): Promise<Answer> => {
  const { kind } = await takeIn(shown as Preview);
  if (kind !== 'takenIn' && kind !== 'failed') throw new Error(kind);
  return kind === 'takenIn' ? 'done' : 'failed';
};
const told = async (work: Promise<unknown>): Promise<Answer> => ((await work) === null ? 'done' : 'failed');
const every = (useCase: UseCase, which = modes) => faultsOf(clock, runningId, tally).everyRequest(useCase, which);

const without = (keys: RegExp, { journal, beside }: State): State => ({
  journal,
  beside: beside.filter((line) => !keys.test(line)),
});
/** What the other device holds may stay unknown for want of room: it is sent too much, and its next file tells it again. */
const withoutPartner = (state: State): State => without(/"key":"partners"/, state);
/** Apart from who writes, too: a writer is drawn at each try. */
const withoutWriter = (state: State): State => without(/"key":"(writer|prefix|partners)"/, state);

/** What came so far, in the order of the file, and the mark that says so. */
function isBeginning(found: State, before: State, after: State): boolean {
  const fresh = after.journal.filter((line) => !before.journal.includes(line));
  const came = fresh.filter((line) => found.journal.includes(line));
  const isAll = found.journal.length === before.journal.length + came.length;
  const marked = found.beside.some((line) => line.includes('"key":"takeIn"'));
  const name = `${came.length} of ${fresh.length}`;
  left.set(name, (left.get(name) ?? 0) + 1);
  return fresh.slice(0, came.length).every((line, at) => line === came[at]) && isAll && marked;
}

describe('a book', () => {
  const begins: UseCase = {
    ...{ name: 'new book', empty: true },
    get start() {
      return bare;
    },
    act: async () => {
      const { kind } = await newBook({ firmName: 'Old Sash & Steel', practice: false });
      return kind === 'written' ? 'done' : 'failed';
    },
  };
  test('begun', async () => {
    expect(await every(begins, [...modes, ...stackedModes])).toBeGreaterThan(30);
  });

  const restores = (file: Blob): UseCase => ({
    ...{ name: 'restore', empty: true, start: bare, ready: () => looked(file), act: took },
    between: (found, before, after, answer) =>
      alike(withoutWriter(found), withoutWriter(answer === 'done' ? after : before)),
  });
  test('restored in one piece', async () => {
    expect(await every(restores(quietBackup))).toBeGreaterThan(30);
  });

  test('restored by chunks', async () => {
    const useCase = restores(wholeBackup);
    const between: UseCase['between'] = (found, before, after, answer) =>
      useCase.between?.(found, before, after, answer) === true ||
      (answer === 'failed' && (isBeginning(found, before, after) || alike(withoutWriter(found), withoutWriter(after))));
    const three = modes.filter(({ name }) => ['lost once', 'lost for ever', 'full for ever'].includes(name));
    expect(await every({ ...useCase, between }, three)).toBeGreaterThan(100);
  });

  test('wiped: whole or gone, and wiped is only said when it is gone', async () => {
    const useCase: UseCase = {
      ...{ name: 'wipe', start: quiet, ready: () => checkBackup(quietBackup) },
      act: async (checked) => {
        const { kind } = await wipe(checked as VerifiedBackup);
        return kind === 'wiped' ? 'done' : 'failed';
      },
      between: (found, _, after, answer) => answer === 'failed' && alike(found, after),
    };
    expect(await every(useCase)).toBeGreaterThan(30);
  });
});

describe('taken in', () => {
  /** Also after a failure: where only the lists had no room, they were made in the background meanwhile. */
  const isWhole = (found: State, after: State): boolean => alike(withoutPartner(found), withoutPartner(after));

  test('a small file, in one piece', async () => {
    const useCase: UseCase = {
      ...{ name: 'small', start, ready: () => looked(smallFile), act: took },
      between: (found, _, after, answer) => answer === 'done' && isWhole(found, after),
    };
    expect(await every(useCase, [...modes, ...stackedModes])).toBeGreaterThan(30);
  });

  test('a large file by chunks: what came is a beginning of it, under the mark', async () => {
    const useCase: UseCase = {
      ...{ name: 'large', start, ready: () => looked(largeFile), act: took },
      between: (found, before, after, answer) =>
        isWhole(found, after) || (answer === 'failed' && isBeginning(found, before, after)),
    };
    expect(await every(useCase)).toBeGreaterThan(100);
  });

  test('left at what came', async () => {
    const useCase: UseCase = { name: 'leave', start: halfTaken, act: () => told(leaveTakeIn()) };
    expect(await every(useCase)).toBeGreaterThan(10);
  });
});

describe('what is being typed', () => {
  test('kept, or still in hand and said so', async () => {
    const useCase: UseCase = {
      ...{ name: 'draft', start },
      act: async () => {
        setDraft('note', 'half a sentence');
        const kept = await flushDraft('note');
        expect(await loadDraft(theSession().db, 'note').catch(() => ({ value: 'half a sentence' }))).toEqual({
          value: 'half a sentence',
        });
        return kept ? 'done' : 'failed';
      },
    };
    expect(await every(useCase, [...modes, ...stackedModes])).toBeGreaterThan(5);
  });
});

describe('beside the book', () => {
  const cases: readonly (readonly [string, () => Promise<unknown>])[] = [
    ['the name of this device', () => setDeviceName('Van phone')],
    ['a backup that was handed out', async () => noteHandedOut({ ...handedOut, part: 'everything' })],
    ['news that were handed out', async () => noteHandedOut({ ...handedOut, part: 'lacking' })],
    ['who holds the device', () => setHolder('f1rvf9kmzfte')],
    ['how files are sent', () => keepSendChoice({ partner: null, seal: 'none', passphrase: null })],
    ['a backup that was read through', () => noteVerified(now())],
  ];
  const handedOut = { ...{ blob: new Blob(), name: '', sealed: false, factsCount: 1 }, bookFactsCount: 1 } as never as {
    blob: Blob;
  } & Awaited<ReturnType<typeof makeBackup>>;

  test.each(cases)('%s', async (name, act) => {
    expect(await every({ name, start, act: () => told(act()) }, [...modes, ...stackedModes])).toBeGreaterThan(5);
  });

  test('a device that is not offered any more', async () => {
    const partnered = copyOf(start);
    await pickUp(partnered);
    await openBooks();
    await mustTakeIn(smallFile);
    const [partner] = await partners();
    await closeBook();
    const useCase: UseCase = {
      ...{ name: 'forget partner', start: partnered, act: () => told(forgetPartner(partner?.writer ?? '')) },
    };
    expect(await every(useCase)).toBeGreaterThan(5);
  });

  test('a file that brings nothing new: best effort, the next one tells it again', async () => {
    const known = copyOf(start);
    await pickUp(known);
    await openBooks();
    await mustTakeIn(smallFile);
    await theSession().db.meta.delete('partners');
    await closeBook();
    const useCase: UseCase = {
      ...{ name: 'nothing new', start: known, ready: () => looked(smallFile) },
      act: async (shown) => {
        await noteNothingNew(shown as Preview);
        return 'done';
      },
      between: (found, before) => alike(found, before),
    };
    expect(await every(useCase)).toBeGreaterThan(5);
  });
});

test('a clock that was set back: its notices are whole or not there, and so is what was tapped', async () => {
  const note = (): Promise<Answer> =>
    write([newFact('noteMade.v1', { text: 'float sticks' }, { ...entry(), about: [`sample:${runningId}`] })]).then(
      ({ kind }) => (kind === 'written' ? 'done' : 'failed'),
    );
  const setBack = async (): Promise<void> => {
    clock.atMs -= 300_000;
  };
  const useCase: UseCase = {
    ...{ name: 'clock set back', start, ready: setBack, act: note },
    // Notices are best effort: a tap is never held up by one, and the next write brings them.
    between: (found, before, after, answer) => {
      // Rows stand in order of their writers, which are drawn: what is new may stand anywhere.
      const known = new Set(before.journal);
      const added = found.journal.filter((line) => !known.has(line));
      const kinds = added.map((line) => /(clockSetBackNoticed|noteMade)/.exec(line)?.[1]);
      const notices = after.journal.length - before.journal.length - 1;
      const noticed = kinds.filter((kind) => kind === 'clockSetBackNoticed').length;
      const tapped = kinds.at(-1) === 'noteMade';
      return [0, notices].includes(noticed) && tapped === (answer === 'done') && kinds.length === noticed + +tapped;
    },
  };
  expect(await every(useCase)).toBeGreaterThan(30);
});
