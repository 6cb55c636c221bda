import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foldRecord } from '#records/fold.ts';
import { clocks, type Device, device, entriesOf, prologue, step, storedOf, takeIn, write, writers } from './devices.ts';
import { dutyKeys } from './dutyActs.ts';
import { ids } from './facts.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 31));

test('a record does not depend on the order in which its facts arrived', () => {
  let corrected = 0;
  let disputed = 0;
  const steps = fc.array(step, { minLength: 10, maxLength: 50 });
  fc.assert(
    fc.property(
      steps,
      clocks,
      fc.infiniteStream(fc.double({ noNaN: true, min: 0, max: 1 })),
      (acts, aheadMs, random) => {
        const devices = writers.map((writer, at) => device(writer, aheadMs[at] ?? 0));
        for (const act of prologue) write(devices[0] as Device, act, 0);
        for (const other of devices.slice(1)) takeIn(other, entriesOf((devices[0] as Device).held), 0);
        for (const [tick, act] of acts.entries()) write(devices[act.device] as Device, act, tick);
        const [first, ...others] = devices as [Device, ...Device[]];
        for (const other of others) takeIn(first, entriesOf(other.held), acts.length);
        for (const key of [`sample:${ids.one}`, ...dutyKeys]) {
          const facts = storedOf(first.held).filter(({ text }) => text.includes(`"${key}"`));
          const ranked = facts.map((fact) => [random.next().value, fact] as const);
          const shuffled = ranked.sort(([a], [b]) => a - b).map(([, fact]) => fact);
          const record = foldRecord(key, facts);
          expect(foldRecord(key, shuffled)).toEqual(record);
          corrected += Number((record?.strikes.length ?? 0) > 0);
          disputed += Number(key !== `sample:${ids.one}` && (record?.conflicts.length ?? 0) > 0);
        }
      },
    ),
    { seed, numRuns: 300 * Number(process.env.TIMES ?? 1) },
  );
  console.info(`fold order: seed ${seed}, with corrections ${corrected}`);
  expect(corrected).toBeGreaterThan(20);
  expect(disputed).toBeGreaterThan(20);
});
