/** Every request of every write fails once, for ever, and once more during the recovery: all or nothing, and the answer says which. */
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type FactKind, factBodies } from '#records/fact.ts';
import { flushDraft, setDraft } from '#store/drafts.ts';
import { closeBook, openBooks } from '#store/opening.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from './device.ts';
import { copyOf } from './deviceCopy.ts';
import { type Answer, faultsOf, modes, stackedModes, type Tally, total, type UseCase } from './everyFault.ts';
import { type Act, type Ground, layGround } from './faultGround.ts';

let clock: TestClock;
let ground: Ground;
let start: TestDevice;
const tally: Tally = new Map();

beforeAll(async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined);
  vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  clock = testClock();
  const device = newDevice();
  await pickUp(device);
  await openBooks();
  ground = await layGround(clock);
  await closeBook();
  start = copyOf(device);
});

afterAll(() => {
  console.info(`faults injected: ${total(tally)}`, Object.fromEntries(tally));
});

const typing = async (): Promise<void> => {
  setDraft('act', 'a few words');
  expect(await flushDraft('act')).toBe(true);
};

const writes = ({ kind, fact, files }: Act): UseCase => ({
  name: kind,
  start,
  ready: typing,
  act: async (): Promise<Answer> => {
    const outcome = await write([fact], { draftKey: 'act', ...(files === undefined ? {} : { files }) });
    if (outcome.kind === 'refused') throw new Error(JSON.stringify(outcome.refusals));
    return outcome.kind === 'written' ? 'done' : 'failed';
  },
});

const kinds = (Object.keys(factBodies) as (keyof typeof factBodies)[]).filter(
  // The first is a case of its own; the second is written by the device itself.
  (kind) => !['bookOpened.v1', 'clockSetBackNoticed.v1'].includes(kind),
);

test.each(kinds)('%s', async (kind) => {
  const act = ground.acts.find((each) => each.kind === kind);
  if (act === undefined) throw new Error('no act of this kind');
  const { everyRequest } = faultsOf(clock, ground.runningId, tally);
  expect(await everyRequest(writes(act), modes)).toBeGreaterThanOrEqual(28);
});

describe('one more during the recovery', () => {
  const hard: readonly FactKind[] = [
    ...(['samplePrepared.v1', 'pumpStopped.v1', 'custodySheetIssued.v1', 'photoTaken.v1'] as const),
  ];
  test.each(hard)('%s', async (kind) => {
    const act = ground.acts.find((each) => each.kind === kind);
    if (act === undefined) throw new Error('no act of this kind');
    const { everyRequest } = faultsOf(clock, ground.runningId, tally);
    expect(await everyRequest(writes(act), stackedModes)).toBeGreaterThan(50);
  });
});

test('that was over a thousand faults', () => {
  expect(total(tally)).toBeGreaterThan(1000);
});
