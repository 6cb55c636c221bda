/**
 * How long findings and duties of a book take: from nothing, and after one meter is found bad that touched some of its samples; and the
 * list of what to measure next. Medians; the load of the machine stands beside. That both find the same is held by tests/findings/duties/again.test.ts.
 */
import { findDuties } from '#findings/duties/findDuties.ts';
import { touchedBy } from '#findings/gear/touchedBy.ts';
import { nextToMeasure } from '#findings/season/nextToMeasure.ts';
import type { Book } from '#records/book.ts';
import { doubt } from '#tests/findings/gear/gearFacts.ts';
import { print } from './figure.ts';
import { type Season, season, withBadMeter } from './seasonBook.ts';

const sweep = (): void => (globalThis as { readonly gc?: () => void }).gc?.();

interface Spent {
  readonly ms: number;
  /** Milliseconds of the processor, all threads together: what other work on the machine cannot stretch. */
  readonly processorMs: number;
}

function timed(act: () => unknown): Spent {
  sweep();
  const before = process.cpuUsage();
  const from = process.hrtime.bigint();
  act();
  const ms = Number(process.hrtime.bigint() - from) / 1e6;
  const { user, system } = process.cpuUsage(before);
  return { ms, processorMs: (user + system) / 1e3 };
}

/** The lot of every cassette found bad: all that the book has rests on it. */
function withBadLot({ book }: Season): { readonly bad: Book; readonly lotId: string; readonly doubtId: string } {
  const [lot] = book.lots.values();
  if (!lot) throw new Error('no lot');
  const one = doubt('lot', lot.id);
  return {
    bad: { ...book, lots: new Map([[lot.id, { ...lot, doubts: [one] }]]) },
    lotId: lot.id,
    doubtId: one.doubtId,
  };
}

/** `rounds` of each; the first from nothing also warms up and is not counted. */
export function dutiesRate(samplesCount = 10_000, rounds = 5) {
  const made = season(samplesCount);
  const bad = withBadMeter(made);
  const today = made.lastOn;
  let before = findDuties(made.book, today);
  const fromNothing: Spent[] = [];
  const again: Spent[] = [];
  const next: Spent[] = [];
  const touched: Spent[] = [];
  const { bad: badLot, lotId, doubtId } = withBadLot(made);
  for (let round = 0; round < rounds; round++) {
    fromNothing.push(
      timed(() => {
        before = findDuties(made.book, today);
      }),
    );
    next.push(timed(() => nextToMeasure(made.book, before)));
    again.push(timed(() => findDuties(bad, today, before)));
    touched.push(timed(() => touchedBy('lot', lotId, doubtId, badLot, before)));
  }
  return { fromNothing, again, next, touched, touchedCount: made.touchedCount, dutiesCount: before.duties.length };
}

if (process.argv[1]?.replaceAll('\\', '/').endsWith('tests/bench/dutiesRate.ts')) {
  const { fromNothing, again, next, touched, touchedCount, dutiesCount } = dutiesRate();
  const lines: readonly (readonly [string, readonly Spent[], number])[] = [
    [`findings and duties from nothing, 10,000 samples, ${dutiesCount} duties`, fromNothing, 2000],
    [`after a bad meter that touched ${touchedCount} samples`, again, 200],
    ['what to measure next, with duties at hand', next, 200],
    ['what rests on a lot found bad that all samples are of, with duties at hand', touched, 300],
  ];
  for (const [name, spent, goal] of lines) {
    print({ name, unit: 'ms', values: spent.map(({ ms }) => ms), goal });
    print({ name: `${name}, processor time`, unit: 'ms', values: spent.map(({ processorMs }) => processorMs), goal });
  }
}
