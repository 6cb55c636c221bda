/** Numbers of labels: given by the book, never twice, taken by cassettes of their own day; and where plans and days made ready are read. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { DayPlanRecord, SampleRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { isSampleNumber } from '#records/sampleNumber.ts';
import { newId } from '#store/device.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { setDerivedComplete } from '#store/marks.ts';
import { newFact } from '#store/newFact.ts';
import { newBook, openBooks } from '#store/opening.ts';
import { shiftBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { wholeBook } from '#store/wholeBook.ts';
import { nextFreeNumber, type Written, write } from '#store/write.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, type TestClock, testClock } from './device.ts';
import { mustTakeIn } from './faultGround.ts';
import { makeBackup } from './handOvers.ts';
import { entry, type Library, library, openingFacts, sampleOf } from './scenario.ts';

let clock: TestClock;
let day: Library;

beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await must(write(openingFacts(day)));
});

async function must(answer: Promise<Written>): Promise<Extract<Written, { kind: 'written' }>> {
  const outcome = await answer;
  expect(outcome).toMatchObject({ kind: 'written' });
  clock.forward(60_000);
  return outcome as Extract<Written, { kind: 'written' }>;
}

const label = { sampleNumber: nextFreeNumber, workerId: null, blank: false };
const labelsOf = (count: number, shiftId = day.shiftId) =>
  newFact('labelsMade.v1', { shiftId, labels: Array.from({ length: count }, () => label) }, entry());
const numbers = async (shiftId = day.shiftId): Promise<readonly string[]> => {
  const record = (await theSession().db.records.get(`dayPlan:${shiftId}`))?.record as DayPlanRecord | undefined;
  return (record?.labels ?? []).map(({ sampleNumber }) => sampleNumber);
};
const prepared = (sampleNumber: string, shiftId = day.shiftId) => {
  const { sampleId, prepared: of } = sampleOf({ ...day, shiftId, pumpId: newId() }, newId(), newId());
  const fact = of(entry());
  return { sampleId, fact: { ...fact, body: { ...fact.body, sampleNumber } } as typeof fact };
};
const blankOf = (sampleNumber: string) =>
  newFact(
    'blankOpened.v1',
    { sampleId: newId(), sampleNumber, shiftId: day.shiftId, lotId: day.lotId, openedWhere: 'Truck' },
    entry(),
  );
const running = (number: string): number => Number(number.slice(2, -1));

describe('numbers of labels', () => {
  test('are given in a row after those in use, whatever was handed in, and are told', async () => {
    const first = await must(write([prepared(nextFreeNumber).fact]));
    expect(first.sampleNumbers.map(running)).toEqual([1]);
    const keyed = {
      ...labelsOf(3),
      body: { shiftId: day.shiftId, labels: [label, { ...label, sampleNumber: '990019' }] },
    };
    const answer = await must(write([keyed as never]));
    expect(answer.sampleNumbers).toEqual(await numbers());
    expect((await numbers()).map(running)).toEqual([2, 3]);
    for (const number of await numbers()) expect(isSampleNumber(number)).toBe(true);
    await must(write([labelsOf(120)]));
    expect((await must(write([prepared(nextFreeNumber).fact]))).sampleNumbers.map(running)).toEqual([124]);
    expect((await must(write([labelsOf(1), prepared(nextFreeNumber).fact]))).sampleNumbers.map(running)).toEqual([
      125, 126,
    ]);
    const all = [...(await numbers())];
    expect(new Set(all).size).toBe(all.length);
  });

  test('are not given again while the lists are being rebuilt', async () => {
    await must(write([labelsOf(2)]));
    setDerivedComplete(theSession().which, false);
    await theSession().db.records.clear();
    expect((await must(write([prepared(nextFreeNumber).fact]))).sampleNumbers.map(running)).toEqual([3]);
    setDerivedComplete(theSession().which, true);
  });

  test('are taken by a cassette or a field blank of their day, once; another day takes none of them', async () => {
    await must(write([labelsOf(2)]));
    const [one = '', two = ''] = await numbers();
    const elsewhere = prepared(one, `${day.siteId}.2026-11-24`).fact;
    expect(await write([elsewhere])).toMatchObject({ kind: 'refused', refusals: [{ key: 'numberReserved' }] });
    const taken = await must(write([prepared(one).fact]));
    expect(taken.sampleNumbers).toEqual([one]);
    expect(await write([prepared(one).fact])).toMatchObject({ kind: 'refused', refusals: [{ key: 'numberUsed' }] });
    expect((await must(write([blankOf(two)]))).sampleNumbers).toEqual([two]);
    expect((await must(write([prepared(nextFreeNumber).fact]))).sampleNumbers.map(running)).toEqual([3]);
  });

  test('a number is put right only to one that is not another day’s', async () => {
    await must(write([labelsOf(1, `${day.siteId}.2026-11-24`), labelsOf(1)]));
    const { sampleId, fact } = prepared(nextFreeNumber);
    const { factIds, sampleNumbers } = await must(write([fact]));
    const [foreign = ''] = await numbers(`${day.siteId}.2026-11-24`);
    const [own = ''] = await numbers();
    const about = [`sample:${sampleId}`];
    const corrected = (now: string) => {
      const body = { replaces: factIds[0] ?? '', path: '/sampleNumber', old: sampleNumbers[0] ?? '', new: now };
      return newFact('valueCorrected.v1', { ...body, supersedes: null }, { ...entry(), about, why: 'misread' });
    };
    expect(await write([corrected(foreign)])).toMatchObject({ refusals: [{ key: 'numberReserved' }] });
    await must(write([corrected(own)]));
    const record = (await theSession().db.records.get(`sample:${sampleId}`))?.record as SampleRecord;
    expect(record.sampleNumber).toBe(own);
  });

  test('two devices: the other steps aside of what was reserved here, and a number stands on one cassette', async () => {
    const phone = newDevice();
    await pickUp(phone);
    await newBook({ firmName: 'Old Sash & Steel', practice: false });
    await must(write(openingFacts(day)));
    const { prefix } = theSession();
    const before = (await makeBackup()).blob;
    await must(write([labelsOf(3)]));
    const reserved = await numbers();
    const after = (await makeBackup()).blob;
    await pickUp(newDevice());
    await openBooks();
    await mustTakeIn(before);
    // two devices that drew the same digits before they heard of each other
    theSession().prefix = prefix;
    const looked = await lookInto(after);
    if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
    expect(looked.sharedNumbers).toEqual([]);
    expect(await takeIn(looked)).toMatchObject({ kind: 'takenIn', sharedNumbers: [] });
    expect(theSession().prefix).not.toBe(prefix);
    expect(await numbers()).toEqual(reserved);
    const [given = ''] = (await must(write([prepared(nextFreeNumber).fact]))).sampleNumbers;
    expect(reserved).not.toContain(given);
    expect((await must(write([prepared(reserved[1] ?? '').fact]))).sampleNumbers).toEqual([reserved[1]]);
  });
});

describe('what is written and read', () => {
  const planId = 'k00000000001';
  const plan = (): FactBody<'measurementPlanned.v1'> => ({
    ...{ planId, jobClassificationId: null, setting: 'indoors', taskIds: ['handScraping'], siteId: day.siteId },
    ...{ season: null, crewCount: 1, choice: 'all', reason: null, slots: [{ workerId: day.personId, workOn: null }] },
    ...{ methodId: null, reportingLimitUg: null, flowLPerMin: null, cassettesCount: 1, remark: null },
  });
  const ready = (): FactBody<'dayPrepared.v1'> => ({
    ...{ shiftId: day.shiftId, asked: 'evening', wearers: [], sparePumpIds: [], spareCassettesCount: 0 },
    ...{ chargedById: null, remark: null },
  });
  const spent = (): FactBody<'moneySpent.v1'> => ({
    ...{ spendingId: newId(), spentOn: '2026-11-25', spentFor: 'analysis', amountUsd: 24.5, count: 1 },
    ...{ siteId: day.siteId, boxId: null, bill: null, remark: null },
  });

  test('each act takes at most 6 requests', async () => {
    // after the first numbers the browser is asked once to keep the book, and its answer is written down
    await must(write([labelsOf(1)]));
    const acts = [
      newFact('measurementPlanned.v1', plan(), entry()),
      newFact('dayPrepared.v1', ready(), entry()),
      labelsOf(120),
      newFact('moneySpent.v1', spent(), entry()),
    ];
    for (const act of acts) {
      const counted = await counting(() => write([act]));
      expect(counted.result).toMatchObject({ kind: 'written' });
      expect([act.kind, counted.requests.length <= 6 ? 'at most 6' : counted.requests]).toEqual([
        act.kind,
        'at most 6',
      ]);
    }
  });

  test('the whole book has them, before and after a write; a shift has what was made ready for it', async () => {
    expect((await wholeBook(theSession().db)).plans.size).toBe(0);
    await must(write([newFact('measurementPlanned.v1', plan(), entry()), newFact('dayPrepared.v1', ready(), entry())]));
    await must(write([newFact('moneySpent.v1', spent(), entry())]));
    const book = await wholeBook(theSession().db);
    expect([book.plans.size, book.dayPlans.size, book.spendings.size]).toEqual([1, 1, 1]);
    expect((await shiftBook(theSession().db, day.shiftId))?.dayPlans.get(day.shiftId)?.prepared?.asked).toBe('evening');
  });
});
