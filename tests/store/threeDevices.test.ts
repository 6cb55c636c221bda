/**
 * Three devices of one book, each with its own writes, hand each other everything in every order, by chunks and with stops in between:
 * the journal and every record are the same on all of them. What they hash to is computed here, by Node, over rows as they lie.
 */
import { createHash } from 'node:crypto';
import { beforeAll, expect, test, vi } from 'vitest';
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import type { Progress } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { newFact } from '#store/newFact.ts';
import { closeBook, newBook, openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from './device.ts';
import { copyOf } from './deviceCopy.ts';
import { mustTakeIn, photoOf, pictureOf } from './faultGround.ts';
import { makeBackup, makeNews } from './handOvers.ts';
import { entry, flowCheckOf, library, openingFacts, sampleOf } from './scenario.ts';

vi.mock('#store/handOver/limits.ts', async (original) => ({
  ...(await original<typeof import('#store/handOver/limits.ts')>()),
  // Small steps, so that a small file goes in by many.
  takeInSteps: { atOnce: { rows: 1, records: 90, files: 0 }, chunkRows: 1, chunkBytes: 100 },
}));

const names = ['phone', 'office', 'third'] as const;
type Name = (typeof names)[number];
let clock: TestClock;
let start: Record<Name, TestDevice>;
const day = library();
const one = sampleOf(day);
/** Off the worker before the others got the book; packed on two devices. */
const two = sampleOf(day);
const workdayId = `${day.personId}.2026-11-25`;

async function use(device: TestDevice): Promise<void> {
  await pickUp(device);
  await openBooks();
  await rebuildSettled();
}
async function must(...facts: readonly NewFact[]): Promise<readonly string[]> {
  const outcome = await write(facts);
  if (outcome.kind !== 'written') throw new Error(JSON.stringify(outcome));
  return outcome.factIds;
}
const hours = (endedAt: string) =>
  newFact(
    'workHoursStated.v1',
    { workdayId, pieces: [{ startedAt: '2026-11-25T11:00:00.000Z', endedAt, place: null, employer: null }] },
    entry(),
  );
const packed = () => {
  const box = { boxId: newId(), siteId: day.siteId, sampleIds: [two.sampleId], laboratoryId: newId() };
  const how = { analysis: 'lead', methodId: null, reportingLimitUg: null, includeWallDeposit: true } as const;
  const more = {
    callBeforeReanalysis: true,
    turnaround: '5 days',
    workersShownAs: 'identifier',
    remark: null,
  } as const;
  return newFact('boxPacked.v1', { ...box, ...how, ...more, samplerId: day.personId }, entry());
};

beforeAll(async () => {
  clock = testClock('2026-11-25T11:00:00.000Z');
  const [phone, office, third] = [newDevice(), newDevice(), newDevice()];
  await pickUp(phone);
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  await must(...openingFacts(day), flowCheckOf(day, 'before')(entry()));
  for (const { prepared, putOn } of [two, one]) {
    await must(prepared(entry()));
    clock.forward(600_000);
    await must(putOn(entry()));
    clock.forward(600_000);
    if (putOn === two.putOn) await must(two.stopped(entry()), two.sealed(entry()));
  }
  const first = (await makeBackup()).blob;
  for (const device of [office, third]) {
    await use(device);
    await mustTakeIn(first);
  }
  // Each by itself, with clocks years apart.
  await use(phone);
  clock.forward(7_200_000);
  const [stopId = ''] = await must(one.stopped(entry()));
  await must(one.sealed(entry()), flowCheckOf(day, 'after')(entry()));
  await must(hours('2026-11-25T12:00:00.000Z'), packed(), sampleOf(day).prepared(entry()));
  const [label, site] = [pictureOf(1), pictureOf(2)];
  await write([photoOf(label, `sample:${one.sampleId}`)], { files: [label] });
  await write([photoOf(site, `shift:${day.shiftId}`)], { files: [site] });
  expect(stopId).not.toBe('');

  await use(office);
  clock.forward(4 * 365 * 86_400_000);
  await must(hours('2026-11-25T12:30:00.000Z'), packed(), sampleOf(day).prepared(entry()));
  await must(newFact('sampleVoided.v1', { sampleId: one.sampleId }, { ...entry(), why: 'found open' }));

  await use(third);
  clock.forward(3 * 365 * 86_400_000);
  await must(one.remark('stood beside the door')(entry()));
  await must(
    newFact('otherWorkAsked.v1', { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' }, entry()),
  );
  const picture = pictureOf(3);
  await write([photoOf(picture, `sample:${one.sampleId}`)], { files: [picture] });
  await closeBook();
  start = { phone, office, third };
});

const hashed = (rows: readonly unknown[]): string => createHash('sha256').update(JSON.stringify(rows)).digest('hex');

async function state() {
  await rebuildSettled();
  const { db } = theSession();
  return {
    journal: hashed(await db.journal.orderBy('id').toArray()),
    records: hashed(await db.records.orderBy('key').toArray()),
    files: (await db.files.toCollection().primaryKeys()).sort(),
    missing: (await db.meta.get('missing'))?.value ?? [],
    mark: (await db.meta.get('takeIn')) ?? null,
  };
}

/** By chunks, stopped after each, until it is whole. */
async function takeStopping(file: Blob): Promise<number> {
  for (let stops = 0; ; stops += 1) {
    const looked = await lookInto(file);
    if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
    const stop = new AbortController();
    const onProgress = ({ step }: Progress): void => void (step === 'taking' && stop.abort());
    const taken = await takeIn(looked, { signal: stop.signal, onProgress });
    if (taken.kind === 'takenIn') return stops;
    expect(taken.kind).toBe('cancelled');
    await closeBook();
    await openBooks();
    await rebuildSettled();
  }
}

const others = (own: Name): readonly Name[] => names.filter((name) => name !== own);
const orders = Array.from({ length: 8 }, (_, bits) => names.map((_, at) => ((bits >> at) & 1) === 1));

test('everything, in every order, stopped after every chunk: one journal, one book', async () => {
  const files = {} as Record<Name, Blob>;
  for (const name of names) {
    await use(copyOf(start[name]));
    files[name] = (await makeBackup()).blob;
  }
  const states: unknown[] = [];
  let stops = 0;
  for (const turned of orders)
    for (const [at, name] of names.entries()) {
      await use(copyOf(start[name]));
      const order = turned[at] ? [...others(name)].reverse() : others(name);
      for (const from of order) stops += await takeStopping(files[from]);
      // Once more, and the own one: nothing changes.
      const before = await state();
      for (const from of names) await mustTakeIn(files[from]);
      expect(await state()).toEqual(before);
      states.push(before);
    }
  expect(stops).toBeGreaterThan(80);
  for (const one of states) expect(one).toEqual(states[0]);
  expect(states[0]).toMatchObject({ missing: [], mark: null });
  expect((states[0] as { files: string[] }).files).toHaveLength(3);
}, 120_000);

test('only what each lacked, round and round: one journal, one book, and nothing left to send', async () => {
  const devices = { phone: copyOf(start.phone), office: copyOf(start.office), third: copyOf(start.third) };
  const writers = {} as Record<Name, string>;
  for (const name of names) {
    await use(devices[name]);
    writers[name] = theSession().writer;
  }
  const route: readonly (readonly [Name, Name])[] = [
    ['third', 'office'],
    ['office', 'phone'],
    ['phone', 'third'],
    ['third', 'office'],
    ['office', 'phone'],
    ['phone', 'third'],
    ['office', 'third'],
    ['third', 'phone'],
    ['phone', 'office'],
  ];
  for (const [from, to] of route) {
    await use(devices[from]);
    const { blob } = await makeNews(writers[to]);
    await use(devices[to]);
    await takeStopping(blob);
  }
  const states: unknown[] = [];
  for (const name of names) {
    await use(devices[name]);
    states.push(await state());
    for (const other of others(name)) expect((await makeNews(writers[other])).factsCount).toBe(0);
  }
  for (const one of states) expect(one).toEqual(states[0]);
  expect(states[0]).toMatchObject({ missing: [], mark: null });
});
