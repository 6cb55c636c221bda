/** Found in steps is the same as found at once, and most of the work is done before the last step. */
import { expect, test } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { season } from '#tests/bench/seasonBook.ts';

function through(book: Parameters<typeof findDutiesInSteps>[0], today: string) {
  const steps = findDutiesInSteps(book, today);
  let count = 0;
  for (;;) {
    const step = steps.next();
    if (step.done === true) return { count, found: step.value };
    count += 1;
  }
}

test('in steps the same is found as at once, whichever shifts a step holds', () => {
  const { book, lastOn } = season(800);
  const { count, found } = through(book, lastOn);
  expect(count).toBeGreaterThan(2);
  expect(found.duties.length).toBeGreaterThan(0);
  const atOnce = findDuties(book, lastOn);
  expect([...found.measurements.keys()].sort()).toEqual([...atOnce.measurements.keys()].sort());
  expect(found.duties).toEqual(atOnce.duties);
  expect(found.courses).toEqual(atOnce.courses);
  expect(found.notices).toEqual(atOnce.notices);
  expect(found.determinations).toEqual(atOnce.determinations);
  expect(found.exposureDays).toEqual(atOnce.exposureDays);
});

test('a small book takes no step, and one found before is found again at once', () => {
  const { book, lastOn } = season(60);
  const first = through(book, lastOn);
  expect(first.count).toBe(0);
  const again = findDutiesInSteps(book, lastOn, first.found).next();
  expect(again.done).toBe(true);
});
