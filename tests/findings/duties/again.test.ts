/** What is found again after a change equals what is found from nothing; the figures of speed stand in tests/bench/dutiesRate.ts. */
import { isDeepStrictEqual } from 'node:util';
import { expect, test, vi } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import { season, withBadMeter } from '#tests/bench/seasonBook.ts';
import { seededRandom } from '../../store/seeded.ts';
import { drawnChanges } from './drawnChanges.ts';

vi.setConfig({ testTimeout: 120_000 });

const made = season(600);
const today = made.lastOn;
const before = findDuties(made.book, today);

test('a meter found bad: thirty of six hundred samples are judged anew, and all that follows is as from nothing', () => {
  const bad = withBadMeter(made);
  const again = findDuties(bad, today, before);
  const fromNothing = findDuties(bad, today);
  const other = [...again.measurements].filter(([id, one]) => before.measurements.get(id) !== one);
  expect(made.touchedCount).toBe(30);
  expect(other).toHaveLength(30);
  expect(again).toEqual(fromNothing);
  expect(again.duties.length).toBeGreaterThan(600);
  expect(again.duties).not.toEqual(before.duties);
});

test('and again after that one, and back', () => {
  const bad = withBadMeter(made);
  const back = findDuties(made.book, today, findDuties(bad, today, before));
  expect(back).toEqual(before);
});

test('another day, and an entry taken off the roster: all as from nothing', () => {
  const later = findDuties(made.book, '2027-01-04', before);
  expect(later).toEqual(findDuties(made.book, '2027-01-04'));
  const workdays = new Map(made.book.workdays);
  const [first] = workdays.keys();
  workdays.delete(first ?? '');
  const other = { ...made.book, workdays };
  expect(findDuties(other, today, before)).toEqual(findDuties(other, today));
});

test('the same book made of other lists of the same records is not found anew', () => {
  const copied = { ...made.book, workdays: new Map(made.book.workdays), samples: new Map(made.book.samples) };
  const again = findDuties(copied, today, before);
  expect(again).toEqual(before);
  expect(again.groups).toBe(before.groups);
});

test('drawn changes of every kind of record, one after the other: what is found again is what is found from nothing', () => {
  const small = season(60);
  const seed = Number(process.env.SEED ?? 20261125);
  const seeded = seededRandom(seed);
  const changes = drawnChanges(seeded, small.lastOn);
  const measuring = ['meter', 'gearDoubted', 'gearDoubtSettled', 'certificateEntered'];
  const counts: Record<string, number> = {};
  let keptCount = 0;
  for (let round = 0; round < 5; round += 1) {
    let { book } = small;
    let on = small.lastOn;
    let found = findDuties(book, on);
    for (let step = 0; step < 14; step += 1) {
      // Every other one touches measurements alone, so that what is kept is tried on books that hold every kind.
      const what = step % 2 === 1 ? seeded.pick(measuring) : seeded.pick([...Object.keys(changes), 'day']);
      if (what === 'day') on = seeded.pick(['2024-03-01', '2024-08-01', '2025-02-01', small.lastOn]);
      else book = changes[what]?.(book, found) ?? book;
      const again = findDuties(book, on, found);
      // Far quicker than the runner's own comparison, which then tells what differs.
      if (!isDeepStrictEqual(again, findDuties(book, on)))
        expect(again, `seed ${seed}, round ${round}, step ${step}: ${what}`).toEqual(findDuties(book, on));
      counts[what] = (counts[what] ?? 0) + 1;
      keptCount += again.courses.filter((course) => found.courses.includes(course)).length;
      found = again;
    }
  }
  console.info(`seed ${seed}: ${JSON.stringify(counts)}, ${keptCount} courses kept`);
  expect(Object.keys(counts).length).toBeGreaterThan(12);
  expect(keptCount).toBeGreaterThan(50);
});
