/**
 * *Relaxations need evidence: blank any one input while its sample or day stays, and no relaxation appears*, over the whole of what follows
 * from a book. Seed printed; SEED=… changes it, TIMES=… draws more.
 */
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { respiratorFor } from '#findings/duties/protecting/respirators.ts';
import type { Book } from '#records/book.ts';
import { presumptionFor } from '#reference/presumption.ts';
import { type Blanked, blankedOnce } from '../blanked.ts';
import { relaxed, takenAway } from './auditLaw.ts';
import * as s from './auditSeason.ts';

vi.setConfig({ testTimeout: 60_000 });
const seed = Number(process.env.SEED ?? 20261125);
console.info(`blank any one input: seed ${seed} (SEED=… to change)`);
const today = '2026-12-20';
const dates = ['2026-11-02', '2026-11-09', '2026-11-16'] as const;

const drawn = fc.record({
  averages: fc.array(fc.constantFrom(12, 12, 20, 30, 60, null, null), { minLength: 6, maxLength: 6 }),
  task: fc.constantFrom('dustCleanup', 'handScraping', 'glazing'),
  named: fc.boolean(),
  reported: fc.constantFrom(null, 12, 44, 70),
});
type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

/** null: on the roster, not measured. */
function bookOf({ averages, task, named, reported }: Drawn): Book {
  const facts = [...s.registers(), ...dates.flatMap((on) => s.shiftOpened(on))];
  averages.forEach((averageUgPerM3, index) => {
    const [who, on] = [index % 2 === 0 ? s.ana : s.ben, dates[Math.floor(index / 2)] ?? dates[0]];
    if (averageUgPerM3 === null) facts.push(s.noted(who, on, { taskIds: [task] }));
    else facts.push(...s.sampled(who, on, { taskIds: [task], averageUgPerM3 }));
  });
  if (named) facts.push(s.represents(s.ana, dates[0], s.ben));
  if (reported !== null)
    facts.push(
      s.reported({ workOn: '2026-11-12', taskIds: [task], average: { kind: 'measured', twa8UgPerM3: reported } }),
    );
  return s.bookOf(facts);
}

function ofReported(book: Book): Blanked[] {
  const [one] = book.reported.values();
  if (!one) return [];
  const as = (what: string, more: Partial<typeof one>): Blanked => ({
    what: `reported ${what}`,
    book: { ...book, reported: new Map([[one.id, { ...one, ...more }]]) },
  });
  return [
    as('full shift', { fullShift: 'notStated' }),
    as('own firm', { ownFirm: 'notStated' }),
    as('accuracy', { accuracy: 'notStated' }),
    as('hours', { workedHours: null }),
    as('number', { reportNumber: null }),
  ];
}

const blanks = (book: Book): Blanked[] => [
  ...blankedOnce(book),
  ...ofReported(book),
  ...[...book.shifts.values()].map((shift) => ({
    what: 'conditions',
    book: { ...book, shifts: new Map(book.shifts).set(shift.id, { ...shift, conditions: null }) },
  })),
  ...[...book.workdays.values()].flatMap((day) =>
    day.represents?.length
      ? [
          {
            what: 'named in writing',
            book: { ...book, workdays: new Map(book.workdays).set(day.id, { ...day, represents: [] }) },
          },
        ]
      : [],
  ),
  {
    what: 'entries',
    book: { ...book, missing: [{ writer: 'wwwwwwwwwwww', fromCount: 1, toCount: 1, untilOn: today }] },
  },
  { what: 'half a file', book: { ...book, takingIn: true } },
];

/** What shows only by the figure itself goes with it; then nothing may be said to be low, or to be over, that was not. */
const isFigure = (what: string): boolean =>
  / (result|putOn|stop)$/.test(what) || what === 'flow before' || what === 'flow after';

const saysLow = (before: DutiesOfBook, after: DutiesOfBook): readonly string[] =>
  relaxed(before, after).filter((one) => /^negative|to none|to no$/.test(one));

const factors = (found: DutiesOfBook): ReadonlyMap<string, number> =>
  new Map(
    [...found.measurements.values()].map((measurement) => {
      const { leastApf, floorApf, unbounded } = respiratorFor({
        measurement,
        presumption: presumptionFor(measurement.taskIds),
        limits: measurement.limits,
      });
      return [measurement.id, unbounded && leastApf === null ? Number.POSITIVE_INFINITY : (floorApf ?? 0)];
    }),
  );

test('no negative determination, no course that stops, no day below, no lower factor and no duty less, whatever is blank', () => {
  const seen = new Map<string, number>();
  const violations = new Map<string, string>();
  fc.assert(
    fc.property(drawn, (given) => {
      const book = bookOf(given);
      const before = findDuties(book, today);
      for (const { what, book: blanked } of blanks(book)) {
        seen.set(what, (seen.get(what) ?? 0) + 1);
        const after = findDuties(blanked, today);
        const now = factors(after);
        const lower = [...factors(before)].flatMap(([id, apf]) =>
          isFigure(what) || (now.get(id) ?? apf) >= apf ? [] : [`factor of ${id}: ${apf} to ${now.get(id)}`],
        );
        const gone = isFigure(what)
          ? saysLow(before, after)
          : [
              ...takenAway(before, after, ({ kind, id }) => kind === 'writeDetermination' && id !== ''),
              ...relaxed(before, after),
            ];
        const all = [...lower, ...gone];
        if (all.length > 0 && !violations.has(what))
          violations.set(what, `${given.task} ${given.averages} ${given.named} ${given.reported}: ${all.join('; ')}`);
      }
    }),
    { seed, numRuns: 4 * Number(process.env.TIMES ?? 1) },
  );
  console.info([...seen].map(([name, count]) => `${name}: ${count}`).join(', '));
  expect(seen.size).toBeGreaterThan(25);
  expect(Object.fromEntries(violations)).toEqual({});
});
