/** What stands beside the book on a device: who holds it, what the browser promised, ids and offsets. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { factId, recordId } from '#records/common.ts';
import { bookMeta } from '#store/bookMeta.ts';
import { estimate, happenedNow, newId, persisted, setPorts } from '#store/device.ts';
import { holder, holderIsDue, setHolder } from '#store/holder.ts';
import { newBook } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let clock: TestClock;
let day: Library;
beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await write(openingFacts(day));
});
afterEach(() => vi.unstubAllGlobals());

const hourMs = 3_600_000;

describe('who holds the device', () => {
  test('is asked at first, not for twelve hours, and again then', async () => {
    expect(holderIsDue(await holder())).toBe(true);
    await setHolder(day.personId);
    expect(await holder()).toEqual({ personId: day.personId, askedAt: '2026-11-25T11:00:00.000Z' });
    clock.forward(12 * hourMs - 1);
    expect(holderIsDue(await holder())).toBe(false);
    clock.forward(1);
    expect(holderIsDue(await holder())).toBe(true);
  });

  test('is asked again when the clock went back behind the question', async () => {
    await setHolder(day.personId);
    clock.atMs -= 5 * hourMs;
    expect(holderIsDue(await holder())).toBe(true);
  });
});

describe('the promise not to evict', () => {
  test.each([true, false])('is asked for after the first saved sample, once; the answer %s is kept', async (answer) => {
    const persist = vi.fn(async () => answer);
    vi.stubGlobal('navigator', { storage: { persist } });
    expect(persist).not.toHaveBeenCalled();
    await write([sampleOf(day).prepared(entry())]);
    await write([sampleOf(day).prepared(entry())]);
    await vi.waitFor(async () => expect((await bookMeta(theSession().db)).persisted).toBe(answer));
    expect(persist).toHaveBeenCalledTimes(1);
  });

  test('a browser that does not say has promised nothing', async () => {
    vi.stubGlobal('navigator', {});
    expect(await persisted()).toBeNull();
    expect(await estimate()).toEqual({ usedBytes: null });
    expect((await bookMeta(theSession().db)).persisted).toBeNull();
  });
});

describe('the device', () => {
  test('draws ids of 60 bits that fit the schemas, and all letters occur', () => {
    const ids = Array.from({ length: 2000 }, newId);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.every((id) => recordId.safeParse(id).success)).toBe(true);
    expect(new Set(ids.join('')).size).toBe(32);
    expect(factId.safeParse(`${ids[0]}.00000001`).success).toBe(true);
  });

  // Offsets as the IANA zone data has had them since 2007: daylight saving in New York ended on 1 November 2026 at 06:00 UTC.
  test.each([
    ['2026-11-01T05:59:59.000Z', 'America/New_York', -240],
    ['2026-11-01T06:00:00.000Z', 'America/New_York', -300],
    ['2026-07-01T12:00:00.000Z', 'America/Phoenix', -420],
    ['2026-07-01T12:00:00.000Z', 'Pacific/Guam', 600],
  ])('a tap at %s in %s stands %i minutes from UTC', (at, zone, offsetMin) => {
    setPorts({ wallMs: () => Date.parse(at) });
    expect(happenedNow(zone)).toEqual({ at, zone, offsetMin, entry: 'tapped', from: null });
  });
});
