/**
 * How long findings and duties of a book take: from nothing, and after one meter is found bad that touched some of its samples. Medians;
 * the load of the machine stands beside. That both find the same is held by tests/findings/duties/again.test.ts.
 */
import { findDuties } from '#findings/duties/findDuties.ts';
import { print } from './figure.ts';
import { season, withBadMeter } from './seasonBook.ts';

const sweep = (): void => (globalThis as { readonly gc?: () => void }).gc?.();

function timedMs(act: () => unknown): number {
  sweep();
  const from = process.hrtime.bigint();
  act();
  return Number(process.hrtime.bigint() - from) / 1e6;
}

/** `rounds` of each; the first from nothing also warms up and is not counted. */
export function dutiesRate(samplesCount = 10_000, rounds = 5) {
  const made = season(samplesCount);
  const bad = withBadMeter(made);
  const today = made.lastOn;
  let before = findDuties(made.book, today);
  const fromNothing: number[] = [];
  const again: number[] = [];
  for (let round = 0; round < rounds; round++) {
    fromNothing.push(
      timedMs(() => {
        before = findDuties(made.book, today);
      }),
    );
    again.push(timedMs(() => findDuties(bad, today, before)));
  }
  return { fromNothing, again, touchedCount: made.touchedCount, dutiesCount: before.duties.length };
}

if (process.argv[1]?.replaceAll('\\', '/').endsWith('tests/bench/dutiesRate.ts')) {
  const { fromNothing, again, touchedCount, dutiesCount } = dutiesRate();
  const of = `10,000 samples, ${dutiesCount} duties`;
  print({ name: `findings and duties from nothing, ${of}`, unit: 'ms', values: fromNothing, goal: 2000 });
  print({ name: `after a bad meter that touched ${touchedCount} samples`, unit: 'ms', values: again, goal: 200 });
}
