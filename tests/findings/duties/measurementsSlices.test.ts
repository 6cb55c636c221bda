/**
 * The figure of a day does not depend on how much of the book is looked at, and what is found again equals what is found from nothing.
 * The reference is the finding on the whole book, which is older than the slices and tested by itself in tests/findings.
 */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wasWorn } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import { findWorkday } from '#findings/workday.ts';
import type { Book } from '#records/book.ts';
import { bookFrom, someBook } from './sharedGear.ts';

const seed = 20_261_125;

/** The same book with one record replaced by a copy that says something else. */
function changed(book: Book, which: number): Book {
  const [meter] = [...book.meters.values()];
  const samples = [...book.samples.values()];
  const picked = samples[which % samples.length];
  if (which % 3 === 0 && meter)
    return { ...book, meters: new Map(book.meters).set(meter.id, { ...meter, dueOn: '2026-01-01' }) };
  if (which % 3 === 1 && picked)
    return {
      ...book,
      samples: new Map(book.samples).set(picked.id, { ...picked, voided: { why: 'opened', factId: 'v2' } }),
    };
  const checks = [...book.flowChecks.values()];
  const check = checks[which % Math.max(1, checks.length)];
  if (!check) return book;
  return { ...book, flowChecks: new Map(book.flowChecks).set(check.id, { ...check, purpose: 'between' }) };
}

describe('a small slice for each day', () => {
  it('says of a day what the whole book says of it, down to every reason', () => {
    let days = 0;
    let shared = 0;
    fc.assert(
      fc.property(someBook, (given) => {
        const book = bookFrom(given);
        const found = measurementsOf(book);
        const ids = new Set([...book.samples.values()].filter(wasWorn).flatMap(({ workdayId }) => workdayId ?? []));
        expect(new Set(found.keys())).toEqual(ids);
        for (const [id, { finding }] of found) {
          expect(finding).toEqual(findWorkday(id, book));
          days++;
          if (finding?.reasons.some(({ key }) => key === 'pumpOnAnother' || key === 'flowCheckShared')) shared++;
        }
      }),
      { seed, numRuns: 600 },
    );
    console.info(`slices: ${days} days, ${shared} of them with a pump or a check in dispute, seed ${seed}`);
    expect(days).toBeGreaterThan(1000);
    expect(shared).toBeGreaterThan(100);
  }, 60_000);

  it('is made again only where a record of it changed, and equals what is found from nothing', () => {
    let reused = 0;
    let again = 0;
    fc.assert(
      fc.property(someBook, fc.nat(20), (given, which) => {
        const before = bookFrom(given);
        const earlier = measurementsOf(before);
        const after = changed(before, which);
        const found = measurementsOf(after, earlier);
        expect(found).toEqual(measurementsOf(after));
        for (const [id, one] of found) one === earlier.get(id) ? reused++ : again++;
      }),
      { seed, numRuns: 300 },
    );
    console.info(`reuse: ${reused} kept, ${again} made again, seed ${seed}`);
    expect(reused).toBeGreaterThan(100);
    expect(again).toBeGreaterThan(100);
  }, 60_000);

  it('keeps everything when nothing changed', () => {
    const [given] = fc.sample(someBook, { seed, numRuns: 1 });
    if (!given) throw new Error('no book');
    const book = bookFrom(given);
    const earlier = measurementsOf(book);
    const found = measurementsOf({ ...book, samples: new Map(book.samples) }, earlier);
    expect(found.size).toBeGreaterThan(0);
    for (const [id, one] of found) expect(one).toBe(earlier.get(id));
  });
});
