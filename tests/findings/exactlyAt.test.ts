/** Exactly at: every flow from 1.00 to 4.00 L/min in hundredths and six durations, masses that make exactly 30 and exactly 50 (design 3.3). */
import { expect, it, vi } from 'vitest';
import { addMinutes } from '#core/calendar.ts';
import { findWorkday } from '#findings/workday.ts';
import { at, workdayId } from './sliceRegisters.ts';
import { check, explained, result, sample, slice, workday } from './slices.ts';

vi.setConfig({ testTimeout: 120_000 });
const startAt = at('06:00');

/** TWA8 = m / (0.48 Q), so m = 0.48 × Q × c whatever the minutes; with Q in hundredths one division of whole numbers. */
const massUg = (hundredths: number, c: number): number => (48 * hundredths * c) / 10_000;

function dayOf(hundredths: number, min: number, c: number) {
  const [stopAt, endAt] = [addMinutes(startAt, min), addMinutes(startAt, Math.max(480, min))];
  const flow = hundredths / 100;
  const book = slice({
    checks: [check('f00000000001', 'before', startAt, flow), check('f00000000002', 'after', stopAt, flow)],
    samples: [sample(startAt, stopAt, [result(massUg(hundredths, c))])],
    day: workday([[startAt, endAt]], { explained: min < 480 ? [explained(stopAt, endAt, 'away')] : [] }),
  });
  return findWorkday(workdayId, book);
}

it.each([60, 120, 240, 450, 480, 720])('%i min: 301 flows at 30 and at 50', (min) => {
  let count = 0;
  for (let hundredths = 100; hundredths <= 400; hundredths++) {
    const [actionLevel] = dayOf(hundredths, min, 30).standings;
    expect(actionLevel, `${hundredths}`).toMatchObject({ verdict: 'exactlyAt', crossed: 'yes', atOrAbove: 'yes' });
    const atPel = dayOf(hundredths, min, 50);
    const pel = atPel.standings[1];
    // not above it: said outright only where nothing is in doubt, that is between the 200 and 1500 L of NIOSH 7082 (READ)
    const clear = atPel.blocksBelow.length === 0;
    const expected = clear ? { verdict: 'exactlyAt', crossed: 'no' } : { verdict: 'atOrAbove', crossed: 'unresolved' };
    expect(pel, `${hundredths}`).toMatchObject({ ...expected, atOrAbove: 'yes' });
    expect(clear, `${hundredths}`).toBe(hundredths * min >= 20_000 && hundredths * min <= 150_000);
    if (atPel.shiftComparison) expect(atPel.shiftComparison.standing).toBe('exactlyAt');
    count += 2;
  }
  expect(count).toBe(602);
});
