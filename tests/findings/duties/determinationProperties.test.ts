/** The careful side as one law (design.md section 4) for determinations and notices, over drawn jobs. Printed seed; SEED=… changes it. */
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { determinationsOf } from '#findings/duties/determining/determinations.ts';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import { noticesOwed } from '#findings/duties/telling/notices.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { blankedOnce } from '../blanked.ts';
import { box, result } from '../slices.ts';
import { type Day, jobBook, massUgFor, olga, reported, rosterDay, shiftOn, tess, vic } from './jobBook.ts';

vi.setConfig({ testTimeout: 120_000 });
const seed = Number(process.env.SEED ?? 20261125);
console.info(`properties of determinations: seed ${seed} (SEED=… to change)`);
const runs = (numRuns: number) => ({ seed, numRuns: numRuns * Number(process.env.TIMES ?? 1) });
const today = '2026-12-20';

const voided = { voided: { why: 'found open', factId: 'wwwwwwwwwwww.00004444' } };
interface Figure {
  readonly averageUgPerM3: number;
  readonly receivedOn: string;
}

function sampleOf(isVoid: boolean, lessThan: boolean, figure: Figure): Partial<SampleRecord> {
  const { averageUgPerM3, receivedOn } = figure;
  const bounded = { results: [result({ lessThanUg: massUgFor(averageUgPerM3) }, { receivedOn })] };
  if (isVoid) return lessThan ? { ...voided, ...bounded } : voided;
  return lessThan ? bounded : {};
}

const drawnDay = fc
  .record({
    workerId: fc.constantFrom(tess, vic),
    workOn: fc.constantFrom('2026-11-03', '2026-11-10', '2026-11-17'),
    averageUgPerM3: fc.constantFrom(8, 8, 8, 8, 8, 20, 20, 20, 29.97, 30, 51, 300),
    regular: fc.constantFrom<'yes' | 'no' | null>('yes', 'yes', 'yes', 'yes', 'yes', 'no', null),
    flowAfter: fc.constantFrom(true, true, true, true, true, true, false),
    isVoid: fc.constantFrom(false, false, false, false, false, false, true),
    lessThan: fc.constantFrom(false, false, false, true),
    receivedOn: fc.constantFrom('2026-11-20', '2026-11-23', '2026-12-01'),
  })
  .map(
    ({ isVoid, lessThan, ...day }): Day => ({
      ...day,
      sample: sampleOf(isVoid, lessThan, day),
    }),
  );

const drawnJob = fc.record({
  days: fc.uniqueArray(drawnDay, { selector: (day) => `${day.workerId} ${day.workOn}`, minLength: 1, maxLength: 4 }),
  olgaThere: fc.constantFrom(false, false, true),
  inspector: fc.constantFrom(null, null, 9, 44),
  dry: fc.constantFrom(false, false, false, true),
});

function drawn(job: typeof drawnJob extends fc.Arbitrary<infer T> ? T : never): Book {
  const inspected = job.inspector;
  const made = jobBook({
    days: job.days,
    roster: job.olgaThere ? [rosterDay(olga, '2026-11-10')] : [],
    reported:
      inspected === null
        ? []
        : [
            reported({
              from: 'inspector',
              average: { kind: 'measured', twa8UgPerM3: inspected },
              workOn: '2026-11-10',
            }),
          ],
    shifts: [shiftOn('2026-11-17', {}, job.dry ? { method: 'dry' } : {})],
  });
  const packed = box([...made.samples.keys()]);
  return { ...made, boxes: new Map([[packed.id, packed]]) };
}

function found(book: Book) {
  const [measurements, days] = [measurementsOf(book), groupDaysOf(book)];
  return {
    determinations: determinationsOf(measurements, book, days, today),
    notices: noticesOwed(measurements, book, days, today),
  };
}
type Found = ReturnType<typeof found>;

const outcomes = ({ determinations }: Found) =>
  new Map(determinations.map(({ siteId, groupKey, outcome }) => [`${siteId} ${groupKey}`, outcome]));

function noNegativeThatWasNot(before: Found, after: Found, what: string): void {
  const was = outcomes(before);
  for (const [group, outcome] of outcomes(after))
    if (outcome === 'negativeMayBeWritten') expect(was.get(group), what).toBe('negativeMayBeWritten');
}

test('relaxations need evidence: blanking any one input makes no negative determination possible that was not', () => {
  const seen = { negative: 0, positive: 0, open: 0, taken: 0 };
  fc.assert(
    fc.property(drawnJob, (job) => {
      const book = drawn(job);
      const before = found(book);
      for (const outcome of outcomes(before).values())
        seen[outcome === 'negativeMayBeWritten' ? 'negative' : outcome] += 1;
      for (const { what, book: blanked } of blankedOnce(book)) {
        const after = found(blanked);
        noNegativeThatWasNot(before, after, `blank ${what}`);
        if (outcomes(before).size === 1 && [...outcomes(before).values()][0] !== [...outcomes(after).values()][0])
          seen.taken += 1;
      }
    }),
    runs(60),
  );
  console.info(`determinations drawn: ${JSON.stringify(seen)}`);
  for (const [what, count] of Object.entries(seen)) expect(count, `no case of: ${what}`).toBeGreaterThan(0);
});

const changedEach = (book: Book, change: (sample: SampleRecord) => Partial<SampleRecord>): Book[] =>
  [...book.samples.values()].map((sample) => ({
    ...book,
    samples: new Map(book.samples).set(sample.id, { ...sample, ...change(sample) }),
  }));

function nothingTakenAway(before: Found, after: Found, seen: { positive: number; statement: number }): void {
  for (const [group, outcome] of outcomes(before))
    if (outcome === 'positive') {
      seen.positive += 1;
      expect(outcomes(after).get(group)).toBe('positive');
    }
  const later = new Map(after.notices.map((notice) => [notice.measurementId, notice]));
  for (const was of before.notices) {
    const now = later.get(was.measurementId);
    expect(now).toMatchObject({ dueOn: was.dueOn, openIds: was.openIds });
    if (!was.pelStatement) continue;
    seen.statement += 1;
    expect(now).toMatchObject({ pelStatement: true, correctiveActionNeeded: true });
  }
}

test('a void, a mishap or an error of the laboratory takes no positive determination, no notice and no statement away', () => {
  const seen = { positive: 0, statement: 0 };
  fc.assert(
    fc.property(drawnJob, (job) => {
      const book = drawn(job);
      const before = found(book);
      const added = [
        ...changedEach(book, () => voided),
        ...changedEach(book, ({ id }) => ({
          mishaps: [{ sampleId: id, mishap: 'wet', remark: null, at: today, entry: 'tapped', factId: 'm' }],
        })),
        ...changedEach(book, ({ results }) => ({ results: results.map((one) => ({ ...one, saeFraction: 0.2 })) })),
      ];
      for (const [index, one] of added.entries()) {
        const after = found(one);
        noNegativeThatWasNot(before, after, `added ${index}`);
        nothingTakenAway(before, after, seen);
      }
    }),
    runs(80),
  );
  for (const [what, count] of Object.entries(seen)) expect(count, `no case of: ${what}`).toBeGreaterThan(0);
});
