/** The roster of a day: two hands that differ, what was struck, and that a strike never hides a correction it did not know of. */
import { describe, expect, test } from 'vitest';
import type { WorkdayRecord } from '#records/book.ts';
import type { JournalEntry } from '#records/chain.ts';
import type { FactBody } from '#records/fact.ts';
import { anaDay, recordIssued, struck, workdayKey, worked } from './dutyFacts.ts';
import { corrects, folded, ids, office, phone, shiftId, Writer, wanted } from './facts.ts';

const day = (...writers: readonly Writer[]): WorkdayRecord => {
  const entries = writers.flatMap((writer) => writer.entries);
  const record = folded<WorkdayRecord>(workdayKey, entries);
  // Whatever the order in which they came.
  expect(folded<WorkdayRecord>(workdayKey, [...entries].reverse())).toEqual(record);
  return record;
};
const tasksOf = ({ worked: entries = [] }: WorkdayRecord): string[] => entries.map(({ taskIds }) => taskIds.join('+'));
const both = () => [new Writer(phone), new Writer(office)] as [Writer, Writer];
const settled = (replaces: string, path: string, chosen: string, over: readonly string[]) =>
  wanted('correctionSettled.v1', { replaces, path, chosen, over: [...over] } as FactBody<'correctionSettled.v1'>, {
    about: [workdayKey],
    why: 'asked her',
  });
const correctsTasks = (id: string, now: readonly string[]) =>
  corrects(id, '/taskIds', ['handScraping'], now, null, [workdayKey]);

describe('entries', () => {
  test('an entry stands with its fact', () => {
    const a = new Writer(phone);
    const id = a.add(worked(['handScraping'], { respirator: 'airPurifyingHalf' }));
    expect(day(a).worked).toEqual([
      { shiftId, taskIds: ['handScraping'], jobClassificationId: null, respirator: 'airPurifyingHalf', factId: id },
    ]);
  });

  test('a later entry of the same writer about the same shift follows its own earlier one', () => {
    const a = new Writer(phone);
    a.add(worked(['handScraping']));
    a.add(worked(['windowTakeOut']));
    expect(tasksOf(day(a))).toEqual(['windowTakeOut']);
    expect(day(a).conflicts).toEqual([]);
  });

  test('two sites on one day are two entries', () => {
    const a = new Writer(phone);
    a.add(worked(['handScraping']));
    a.add(worked(['powerToolCleaning'], { shiftId: `s00000000002.2026-11-25` }));
    expect(tasksOf(day(a))).toEqual(['handScraping', 'powerToolCleaning']);
  });

  test('two devices that say the same, in whatever order of tasks, say it once; a respirator that only one noted is kept', () => {
    const [a, b] = both();
    a.add(worked(['handScraping', 'windowTakeOut'], { respirator: 'airPurifyingHalf' }));
    b.add(worked(['windowTakeOut', 'handScraping']));
    expect(day(a, b).worked).toHaveLength(1);
    expect(day(a, b).worked?.[0]?.respirator).toBe('airPurifyingHalf');
    expect(day(a, b).conflicts).toEqual([]);
  });

  test.each([
    ['tasks', { taskIds: ['windowTakeOut'] }],
    ['job classification', { jobClassificationId: 'j00000000001' }],
  ])('two devices that differ in %s both count, in dispute, until a person settles it', (_, more) => {
    const [a, b] = both();
    const one = a.add(worked(['handScraping']));
    const other = b.add(worked(['handScraping'], more));
    expect(
      day(a, b)
        .worked?.map(({ factId }) => factId)
        .sort(),
    ).toEqual([one, other].sort());
    const [conflict] = day(a, b).conflicts;
    expect(conflict).toMatchObject({ path: '/worked', judges: 'careful' });
    expect(conflict?.candidates.map(({ correctionId }) => correctionId)).toEqual([one, other]);
    const all = new Set([...('taskIds' in more ? more.taskIds : []), 'handScraping']);
    expect(conflict?.standingValue).toMatchObject({ taskIds: [...all].sort() });
    a.add(settled(one, '/worked', other, [one, other]));
    expect(day(a, b).worked?.map(({ factId }) => factId)).toEqual([other]);
    expect(day(a, b)).toMatchObject({ conflicts: [], notUnderstood: [] });
  });

  test('an answer to a dispute that did not know of a third entry does not settle it', () => {
    const [a, b] = both();
    const c = new Writer('000000000002');
    const one = a.add(worked(['handScraping']));
    const other = b.add(worked(['windowTakeOut']));
    a.add(settled(one, '/worked', one, [one, other]));
    c.add(worked(['powerToolCleaning']));
    expect(tasksOf(day(a, b, c)).sort()).toEqual(['handScraping', 'powerToolCleaning', 'windowTakeOut']);
    expect(day(a, b, c).conflicts).toHaveLength(1);
  });
});

describe('struck', () => {
  test('a strike removes only the entry it names', () => {
    const [a, b] = both();
    const one = a.add(worked(['handScraping']));
    b.add(worked(['windowTakeOut']));
    a.add(struck(one, []));
    expect(tasksOf(day(a, b))).toEqual(['windowTakeOut']);
    expect(day(a, b).conflicts).toEqual([]);
  });

  test('a strike without a reason removes nothing', () => {
    const a = new Writer(phone);
    const one = a.add(worked(['handScraping']));
    a.add(struck(one, [], { why: ' ' }));
    expect(tasksOf(day(a))).toEqual(['handScraping']);
  });

  test('what was corrected before, and known to be, is struck with its correction', () => {
    const a = new Writer(phone);
    const one = a.add(worked(['handScraping']));
    const correction = a.add(correctsTasks(one, ['windowTakeOut']));
    a.add(struck(one, [correction]));
    expect(tasksOf(day(a))).toEqual([]);
  });

  test('struck here and corrected there it stays, corrected, and is in dispute until a person settles it', () => {
    const [a, b] = both();
    const one = a.add(worked(['handScraping']));
    const strike = a.add(struck(one, []));
    const correction = b.add(correctsTasks(one, ['windowTakeOut']));
    expect(tasksOf(day(a, b))).toEqual(['windowTakeOut']);
    const [conflict] = day(a, b).conflicts;
    expect(conflict).toMatchObject({ factId: one, path: '/struck', standing: one, standingValue: false });
    expect(conflict?.candidates.map(({ value }) => value)).toEqual([false, true]);
    expect(conflict?.besides).toEqual([correction]);
    // Whoever settles it without knowing of the correction has settled nothing.
    b.add(settled(one, '/struck', strike, [one, strike]));
    expect(tasksOf(day(a, b))).toEqual(['windowTakeOut']);
    b.add(settled(one, '/struck', strike, [one, strike, correction]));
    expect(tasksOf(day(a, b))).toEqual([]);
    expect(day(a, b)).toMatchObject({ conflicts: [], notUnderstood: [] });
  });

  test('a person may settle that it stays', () => {
    const [a, b] = both();
    const one = a.add(worked(['handScraping']));
    const strike = a.add(struck(one, []));
    b.add(correctsTasks(one, ['windowTakeOut']));
    b.add(settled(one, '/struck', one, [one, strike]));
    expect(tasksOf(day(a, b))).toEqual(['windowTakeOut']);
    expect(day(a, b)).toMatchObject({ conflicts: [], notUnderstood: [] });
  });

  test('a strike of an entry that is not here yet strikes it when it comes', () => {
    const [a, b] = both();
    const one = a.add(worked(['handScraping']));
    b.add(struck(one, []));
    expect(tasksOf(day(b))).toEqual([]);
    expect(tasksOf(day(a, b))).toEqual([]);
  });
});

test('two corrections of the tasks that did not know of each other: the longer list judges', () => {
  const [a, b] = both();
  const one = a.add(worked(['handScraping']));
  a.add(correctsTasks(one, ['handScraping', 'windowTakeOut']));
  b.add(correctsTasks(one, ['powerToolCleaning']));
  expect(tasksOf(day(a, b))).toEqual(['handScraping+windowTakeOut']);
  expect(day(a, b).conflicts).toHaveLength(1);
});

test('whom it stands for: every statement counts; records handed out stand in the order of time', () => {
  const [a, b] = both();
  const represents = (workerId: string) => wanted('representsStated.v1', { workdayId: anaDay, workerIds: [workerId] });
  a.add(represents(ids.ben));
  b.add(represents('p00000000003'));
  b.add(recordIssued('1'));
  const record = day(a, b);
  expect(record.represents?.flatMap(({ workerIds }) => workerIds).sort()).toEqual([ids.ben, 'p00000000003'].sort());
  expect(record.recordsIssued).toMatchObject([{ revision: '1', to: 'Ana Putty', by: ids.supervisor }]);
  expect(record.conflicts).toEqual([]);
});

test('an unknown kind that must be understood leaves the day doubtful, and its entries stand', () => {
  const a = new Writer(phone);
  a.add(worked(['handScraping']));
  const id = a.add(worked(['handScraping']), { kind: 'workMoved.v3', mustUnderstand: true });
  expect(day(a)).toMatchObject({ notUnderstood: [id], worked: [{ taskIds: ['handScraping'] }] });
  const entries: readonly JournalEntry[] = a.entries;
  expect(entries).toHaveLength(2);
});
