import { beforeEach, describe, expect, test } from 'vitest';
import type { SampleRecord } from '#records/book.ts';
import { forgetRun } from '#store/clock.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { oneRecord } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { entry, flowCheckOf, type Library, library, openingFacts, sampleOf } from './scenario.ts';

const minutesMs = 60_000;
let clock: TestClock;
let day: Library;
let one: ReturnType<typeof sampleOf>;

beforeEach(async () => {
  forgetRun();
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  one = sampleOf(day);
  await write(openingFacts(day));
  await write([one.prepared(entry())]);
  clock.forward(minutesMs);
  await write([one.putOn(entry())]);
  clock.forward(120 * minutesMs);
  await write([one.lookedAt(entry())]);
});

const sample = async () => (await oneRecord(theSession().db, `sample:${one.sampleId}`)) as SampleRecord;
const setBackCount = async (): Promise<number> =>
  (await sample()).clockDoubts.filter(({ kind }) => kind === 'setBack').length;
const restart = async (): Promise<void> => {
  forgetRun();
  await closeBook();
  await openBooks();
};

describe('a clock set back while a pump runs', () => {
  test('is on the sample after the next write, whatever that write was about, once', async () => {
    clock.atMs -= 60 * minutesMs;
    await write([flowCheckOf(day, 'between')(entry())]);
    expect(await setBackCount()).toBe(1);
    clock.forward(minutesMs);
    await write([flowCheckOf(day, 'between')(entry())]);
    expect(await setBackCount()).toBe(1);
  });

  test('is on the sample after the next start of the app', async () => {
    clock.atMs -= 60 * minutesMs;
    clock.monotonicMs = 0;
    await restart();
    expect(await setBackCount()).toBe(1);
    await restart();
    expect(await setBackCount()).toBe(1);
  });

  test('is noticed within one run although the wall time still lies after the last write', async () => {
    clock.forward(90 * minutesMs);
    clock.atMs -= 60 * minutesMs;
    await write([flowCheckOf(day, 'between')(entry())]);
    expect(await setBackCount()).toBe(1);
  });

  test('a tap on that sample is refused, so that its time is typed from a watch', async () => {
    clock.atMs -= 60 * minutesMs;
    const outcome = await write([one.lookedAt(entry())]);
    expect(outcome.kind === 'refused' && outcome.refusals.map(({ key }) => key)).toContain('clockSetBack');
    expect(await setBackCount()).toBe(1);
  });
});

describe('no false alarm', () => {
  test('a phone that slept: the clock that cannot be set stood still', async () => {
    clock.atMs += 8 * 60 * minutesMs;
    await write([one.lookedAt(entry())]);
    expect(await setBackCount()).toBe(0);
  });

  test('a trim by some seconds, and a change of zone, which moves no instant', async () => {
    clock.forward(minutesMs);
    clock.atMs -= 20_000;
    await write([flowCheckOf(day, 'between')(entry())]);
    const at = entry();
    await write([
      flowCheckOf(day, 'between')({ ...at, happened: { ...at.happened, zone: 'America/Denver', offsetMin: -420 } }),
    ]);
    expect(await setBackCount()).toBe(0);
  });

  test('with nothing running the clock is taken as it stands, and a later pump goes on without a doubt', async () => {
    await write([one.stopped(entry())]);
    clock.atMs -= 600 * minutesMs;
    const next = sampleOf(day);
    expect(await write([next.prepared(entry())])).toMatchObject({ kind: 'written' });
    expect(await setBackCount()).toBe(0);
    const record = (await oneRecord(theSession().db, `sample:${next.sampleId}`)) as SampleRecord;
    expect(record.clockDoubts).toEqual([]);
  });
});
