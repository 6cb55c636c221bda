/** Whose figure bears on which task group, 29 CFR 1926.62(d)(3)(ii), (d)(5): a classification that nobody noted may be any. */
import { expect, test } from 'vitest';
import { determinationFor } from '#findings/duties/determining/determinations.ts';
import { groupKeyOf } from '#findings/duties/groups/taskGroup.ts';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { Book } from '#records/book.ts';
import { siteId } from '../sliceRegisters.ts';
import { type Day, jobBook, rosterDay, tess, vic, worked } from './jobBook.ts';

const [painter, plumber] = ['j00000000001', 'j00000000002'];
const workOn = '2026-11-03';

const dayOf = (workerId: string, averageUgPerM3: number, jobClassificationId: string | null): Day => ({
  ...{ workerId, workOn, averageUgPerM3, sample: { jobClassificationId } },
  workday: { worked: [{ ...worked(workOn), jobClassificationId }] },
});

const outcomeOf = (...days: readonly Day[]): string => outcomeIn(jobBook({ days }));

function outcomeIn(book: Book): string {
  const key = groupKeyOf('indoors', painter, ['handScraping']);
  return determinationFor(siteId, key, measurementsOf(book), book, groupDaysOf(book), '2026-11-25').outcome;
}

test('a high figure of another classification bears on another group', () => {
  expect(outcomeOf(dayOf(tess, 12, painter), dayOf(vic, 90, plumber))).toBe('negativeMayBeWritten');
});

test('a high figure of this classification is positive, and so is one whose classification is blanked', () => {
  expect(outcomeOf(dayOf(tess, 12, painter), dayOf(vic, 90, painter))).toBe('positive');
  expect(outcomeOf(dayOf(tess, 12, painter), dayOf(vic, 90, null))).toBe('positive');
});

test('a low figure of a worker whose classification nobody noted proves nothing of this group', () => {
  expect(outcomeOf(dayOf(tess, 12, null))).toBe('open');
});

test('somebody on the roster whose classification nobody noted may be of this group, and was not measured', () => {
  const low = dayOf(tess, 12, painter);
  const there = (jobClassificationId: string | null): string => {
    const entry = { ...rosterDay(vic, workOn), worked: [{ ...worked(workOn), jobClassificationId }] };
    return outcomeIn(jobBook({ days: [low], roster: [entry] }));
  };
  expect(there(plumber)).toBe('negativeMayBeWritten');
  expect(there(painter)).toBe('open');
  expect(there(null)).toBe('open');
});
