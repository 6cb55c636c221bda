/** What is found again after a change equals what is found from nothing; the figures of speed stand in tests/bench/dutiesRate.ts. */
import { expect, test, vi } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import { season, withBadMeter } from '#tests/bench/seasonBook.ts';

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
