/**
 * The careful law over courses and days (design.md section 4, end): relaxations need evidence, and adding anything but a valid measurement
 * removes no duty. Stated here from the law itself, on generated seasons of two workers; nothing expected comes from the findings.
 */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Course, Schedule } from '#findings/duties/course/course.ts';
import { coursesOf } from '#findings/duties/course/courses.ts';
import { exposureDaysOf } from '#findings/duties/exposure/daysAtOrAbove.ts';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { Book, SampleRecord, WorkdayRecord } from '#records/book.ts';
import { result } from '../slices.ts';
import { jobBook, massUgFor, rosterDay, sampleIdOf, shiftOn, tess, vic, workdayIdOf } from './jobBook.ts';

const seed = 20_261_125;
const today = '2026-06-30';
const dates = ['2026-03-02', '2026-03-08', '2026-03-09', '2026-03-16', '2026-03-23', '2026-04-06'] as const;

const season = fc.record({
  tess: fc.array(fc.constantFrom(null, 12, 20, 29, 30, 40, 50, 60), { minLength: 6, maxLength: 6 }),
  vic: fc.array(fc.constantFrom(null, null, 20, 40, 60), { minLength: 6, maxLength: 6 }),
  named: fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
});
type Season = typeof season extends fc.Arbitrary<infer T> ? T : never;

/** null: on the roster only. */
function bookOf(given: Season): Book {
  const days = dates.flatMap((workOn, i) => {
    const represents = given.named[i] ? { represents: [{ workerIds: [vic], factId: 'n' }] } : {};
    const own = given.tess[i] ?? null;
    const his = given.vic[i] ?? null;
    return [
      ...(own === null ? [] : [{ workerId: tess, workOn, averageUgPerM3: own, workday: represents }]),
      ...(his === null ? [] : [{ workerId: vic, workOn, averageUgPerM3: his }]),
    ];
  });
  const measured = new Set(days.map(({ workerId, workOn }) => workdayIdOf(workerId, workOn)));
  const roster = [tess, vic].flatMap((who) =>
    dates.flatMap((workOn) => (measured.has(workdayIdOf(who, workOn)) ? [] : [rosterDay(who, workOn)])),
  );
  return jobBook({ days, roster });
}

interface Found {
  readonly courses: ReadonlyMap<string, Course>;
  /** Worker and day. */
  readonly reached: ReadonlyMap<string, string>;
}

function found(book: Book): Found {
  const measurements = measurementsOf(book);
  const days = groupDaysOf(book);
  const courses = coursesOf(measurements, days, book, today);
  const exposure = exposureDaysOf(measurements, days, book, today);
  return {
    courses: new Map(courses.map((one) => [`${one.workerId} ${one.groupKey}`, one])),
    reached: new Map(
      [...exposure].flatMap(([who, one]) => one.days.map(({ on, atOrAbove }) => [`${who} ${on}`, atOrAbove] as const)),
    ),
  };
}

/** Nothing is owed less than before: a schedule, *measure now*, a date that moved back. */
const rank: Readonly<Record<Schedule, number>> = { none: 0, sixMonthly: 1, quarterly: 2, undetermined: 3 };
function isRelaxed(before: Course, after: Course | undefined): boolean {
  if (!after) return true;
  // a last measurement in doubt may leave an earlier schedule standing, and says that measuring is owed now
  if (after.measureAgain && after.due === 'now') return false;
  if (before.schedule === 'undetermined') return after.schedule === 'none' || after.due !== 'now';
  if (rank[after.schedule] < rank[before.schedule]) return true;
  if (before.due === 'now' && after.due !== 'now') return true;
  return before.dueOn !== null && after.dueOn !== null && after.due !== 'now' && after.dueOn > before.dueOn;
}

function relaxations(before: Found, after: Found): string[] {
  const courses = [...before.courses].flatMap(([key, one]) =>
    isRelaxed(one, after.courses.get(key)) ? [`${key}: ${one.schedule} to ${after.courses.get(key)?.schedule}`] : [],
  );
  const days = [...before.reached].flatMap(([key, was]) => {
    const now = after.reached.get(key) ?? 'gone';
    return was !== 'no' && now === 'no' ? [`${key}: ${was} to ${now}`] : was === 'yes' && now !== 'yes' ? [key] : [];
  });
  return [...courses, ...days];
}

const withSample = (book: Book, id: string, change: (one: SampleRecord) => SampleRecord): Book => {
  const one = book.samples.get(id);
  return one ? { ...book, samples: new Map(book.samples).set(id, change(one)) } : book;
};
const withDay = (book: Book, id: string, change: (one: WorkdayRecord) => WorkdayRecord): Book => {
  const one = book.workdays.get(id);
  return one ? { ...book, workdays: new Map(book.workdays).set(id, change(one)) } : book;
};

type Change = (book: Book, who: string, workOn: string) => Book;

/** One thing blanked, or one doubt added, on one worker's day. A result that is not in is held against no sample at all, further down; without the flow after, the same as a void. */
const doubts: Readonly<Record<string, Change>> = {
  'a void': (book, who, on) =>
    withSample(book, sampleIdOf(who, on), (one) => ({ ...one, voided: { why: 'found open', factId: 'v' } })),
  'the fitting': (book, who, on) => withSample(book, sampleIdOf(who, on), (one) => ({ ...one, fitting: null })),
  "the pump's minutes": (book, who, on) =>
    withSample(book, sampleIdOf(who, on), (one) => ({
      ...one,
      stopped: one.stopped && { ...one.stopped, pumpMin: null },
    })),
  'the hours': (book, who, on) => withDay(book, workdayIdOf(who, on), (one) => ({ ...one, pieces: null })),
  'other work': (book, who, on) => withDay(book, workdayIdOf(who, on), (one) => ({ ...one, otherWork: null })),
  'the regular day': (book, who, on) => withDay(book, workdayIdOf(who, on), (one) => ({ ...one, regular: null })),
  'an irregular day': (book, who, on) =>
    withDay(book, workdayIdOf(who, on), (one) => ({
      ...one,
      regular: { regular: 'no', reason: 'rain', factId: 'r' },
    })),
  'who is named in writing': (book, who, on) =>
    withDay(book, workdayIdOf(who, on), (one) => ({ ...one, represents: [] })),
  'the conditions': (book, _, on) => {
    const shift = shiftOn(on, {}, null);
    return { ...book, shifts: new Map(book.shifts).set(shift.id, shift) };
  },
  'a change noted': (book, _, on) => {
    const changes = { equipment: 'no', process: 'no', control: 'notKnown', personnel: 'no', newTask: 'no' } as const;
    const shift = shiftOn(on, { changes: { ...changes, factId: 'f' } });
    return { ...book, shifts: new Map(book.shifts).set(shift.id, shift) };
  },
  'entries missing': (book) => ({
    ...book,
    missing: [{ writer: 'wwwwwwwwwwww', fromCount: 1, toCount: 1, untilOn: today }],
  }),
  'a file half taken in': (book) => ({ ...book, takingIn: true }),
  'the meter out of date': (book) => ({
    ...book,
    meters: new Map([...book.meters].map(([id, one]) => [id, { ...one, dueOn: null }])),
  }),
};

describe('doubt relaxes nothing', () => {
  for (const [name, change] of Object.entries(doubts))
    it(`without, or with: ${name}`, () => {
      let cases = 0;
      fc.assert(
        fc.property(season, fc.constantFrom(tess, vic), fc.constantFrom(...dates), (given, who, on) => {
          const book = bookOf(given);
          const doubted = change(book, who, on);
          if (doubted === book) return;
          cases++;
          expect(relaxations(found(book), found(doubted))).toEqual([]);
        }),
        { seed, numRuns: 60 },
      );
      console.info(`${name}: ${cases} seasons, seed ${seed}`);
      expect(cases).toBeGreaterThan(20);
    }, 60_000);
});

/** A measurement of a worker who was only on the roster that day, void, doubtful or high: whatever it is, it proves nothing low. */
describe('adding what proves nothing low', () => {
  const added: Readonly<Record<string, object>> = {
    'a void one': { voided: { why: 'found open', factId: 'v' } },
    'a doubtful one': { fitting: null },
    'one that is owed': { results: [] },
  };
  for (const [name, sample] of Object.entries(added))
    for (const average of [20, 40, 60])
      it(`${name} of ${average}: no schedule falls, no date moves back, no day is freed`, () => {
        let cases = 0;
        fc.assert(
          fc.property(season, fc.nat(5), (given, place) => {
            const workOn = dates[place] ?? dates[0];
            const book = bookOf({ ...given, tess: given.tess.map((one, i) => (i === place ? null : one)) });
            const { samples, flowChecks, workdays } = jobBook({
              days: [{ workerId: tess, workOn, averageUgPerM3: average, sample }],
            });
            const more: Book = {
              ...book,
              samples: new Map([...book.samples, ...samples]),
              flowChecks: new Map([...book.flowChecks, ...flowChecks]),
              workdays: new Map([...book.workdays, ...workdays]),
            };
            cases++;
            expect(relaxations(found(book), found(more))).toEqual([]);
          }),
          { seed, numRuns: 40 },
        );
        expect(cases).toBe(40);
      }, 60_000);
});

describe('the law can fail', () => {
  it('a valid low result does relax: the measure sees it', () => {
    const given: Season = { tess: [40, null, 20, null, null, null], vic: [], named: [] };
    const book = bookOf(given);
    const low = bookOf({ ...given, tess: [40, null, 20, 20, null, null] });
    expect(relaxations(found(book), found(low))).not.toEqual([]);
    expect(massUgFor(20)).toBeCloseTo(19.2, 9);
    expect(result(1).mass).toEqual({ kind: 'measured', massUg: 1 });
  });
});
