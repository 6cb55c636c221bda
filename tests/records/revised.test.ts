/** Who works here, which limits were chosen, what is new at a job; notices, duties and requests as records. In any order of arrival. */
import { describe, expect, test } from 'vitest';
import type {
  AnyRecord,
  BookRecord,
  DutyRecord,
  NoticeRecord,
  PersonRecord,
  ReportedRecord,
  ShiftRecord,
} from '#records/book.ts';
import { foldRecord } from '#records/fold.ts';
import {
  bookOpened,
  changes,
  determination,
  done,
  dutyKey,
  employed,
  given,
  limits,
  notice,
  noticeId,
  personAdded,
  relied,
  reopened,
  reported,
  reportedId,
  requested,
  shiftOpened,
} from './dutyFacts.ts';
import { at, corrects, folded, ids, journal, office, phone, shiftId, Writer } from './facts.ts';

const record = <R extends AnyRecord>(key: string, ...writers: readonly Writer[]): R => {
  const entries = writers.flatMap((writer) => writer.entries);
  const found = folded<R>(key, entries);
  expect(folded<R>(key, [...entries].reverse())).toEqual(found);
  return found;
};
const both = () => [new Writer(phone), new Writer(office)] as [Writer, Writer];

describe('who works here', () => {
  const person = (...writers: readonly Writer[]) => record<PersonRecord>(`person:${ids.ana}`, ...writers);

  test('nobody said: null', () => {
    const a = new Writer(phone);
    a.add(personAdded());
    expect(person(a).employed).toBeNull();
  });

  test('a statement that knew of the one before follows it, whoever wrote that', () => {
    const [a, b] = both();
    a.add(personAdded());
    const one = a.add(employed('2026-03-02', null));
    const left = b.add(employed('2026-03-02', '2026-11-20', [one]));
    expect(person(a, b).employed).toEqual({ fromOn: '2026-03-02', toOn: '2026-11-20', factId: left });
    expect(person(a, b).conflicts).toEqual([]);
  });

  test.each([
    [
      ['2026-03-02', '2026-11-20'],
      ['2026-01-05', '2026-10-01'],
      ['2026-01-05', '2026-11-20'],
    ],
    [
      ['2026-03-02', null],
      ['2026-01-05', '2026-10-01'],
      ['2026-01-05', null],
    ],
    [
      [null, '2026-11-20'],
      ['2026-01-05', '2026-12-01'],
      [null, '2026-12-01'],
    ],
  ] as const)('%j and %j, unknown to each other: the longest time stands, %j', (one, other, [fromOn, toOn]) => {
    const [a, b] = both();
    a.add(personAdded());
    a.add(employed(...(one as [string | null, string | null])));
    b.add(employed(...(other as [string | null, string | null])));
    expect(person(a, b).employed).toMatchObject({ fromOn, toOn });
    expect(person(a, b).conflicts).toMatchObject([{ path: '/employed', standingValue: { fromOn, toOn } }]);
  });
});

describe('limits', () => {
  const book = (...writers: readonly Writer[]) => record<BookRecord>(`book:${ids.book}`, ...writers);

  test('of two choices the stricter own limits stand, and all that either shows beside', () => {
    const [a, b] = both();
    a.add(bookOpened());
    a.add(limits(['niosh-rel'], 20, null));
    b.add(limits(['acgih-tlv'], 15, 40));
    expect(book(a, b).limits).toMatchObject({
      besideIds: ['acgih-tlv', 'niosh-rel'],
      ownActionLevelUgPerM3: 15,
      ownPelUgPerM3: 40,
    });
    expect(book(a, b).conflicts).toHaveLength(1);
  });

  test('a choice that knew of both settles it, also towards the less strict', () => {
    const [a, b] = both();
    a.add(bookOpened());
    const one = a.add(limits([], 20, null));
    const other = b.add(limits([], 15, 40));
    const last = b.add(limits([], null, null, [one, other]));
    expect(book(a, b).limits).toMatchObject({ ownActionLevelUgPerM3: null, factId: last });
    expect(book(a, b).conflicts).toEqual([]);
  });
});

test('what is new: of two answers a yes stands, then not known', () => {
  const [a, b] = both();
  a.add(shiftOpened());
  a.add(changes({ equipment: 'yes', personnel: 'no', control: 'notKnown' }));
  b.add(changes({ equipment: 'no', personnel: 'notKnown', newTask: 'no' }));
  expect(record<ShiftRecord>(`shift:${shiftId}`, a, b).changes).toMatchObject({
    ...{ equipment: 'yes', process: 'no', control: 'notKnown', personnel: 'notKnown', newTask: 'no' },
  });
  expect(record<ShiftRecord>(`shift:${shiftId}`, a, b).conflicts).toMatchObject([{ path: '/changes' }]);
});

describe('duties', () => {
  const duty = (...writers: readonly Writer[]) => record<DutyRecord>(dutyKey, ...writers);
  const days = (found: DutyRecord): string[] => found.done.map(({ doneOn }) => doneOn);

  test('a reopening takes back what it knew of; what was done elsewhere meanwhile counts', () => {
    const [a, b] = both();
    const one = a.add(done('2026-11-27'));
    b.add(done('2026-11-30', {}, { at: at('15:00', '2026-12-01') }));
    a.add(reopened([one]));
    expect(days(duty(a, b))).toEqual(['2026-11-30']);
    a.add(done('2026-12-02'));
    expect(days(duty(a, b))).toEqual(['2026-11-30', '2026-12-02']);
  });

  test('a reopening that names nothing takes back all: the careful side', () => {
    const [a, b] = both();
    a.add(done('2026-11-27'));
    b.add(reopened());
    expect(days(duty(a, b))).toEqual([]);
  });
});

describe('papers', () => {
  const key = `notice:${noticeId}`;

  test('a notice lists every time that it was given, in the order of time', () => {
    const [a, b] = both();
    a.add(notice());
    b.add(given({ workerId: ids.ben, how: 'refusedToSign', initials: null }, { at: at('17:00', '2026-12-02') }));
    b.add(given());
    const found = record<NoticeRecord>(key, a, b);
    expect(found.issued).toMatchObject({ revision: '1', at: at('15:00', '2026-12-02'), by: ids.supervisor });
    expect(found.given.map(({ workerId }) => workerId)).toEqual([ids.ana, ids.ben]);
  });

  test('nobody was given a notice that is not here', () => {
    expect(foldRecord(key, journal([given()]))).toBeNull();
  });

  test('what was reported, relied on, determined and asked stands as it was written', () => {
    const all = journal([reported(), relied(), determination(), requested()]);
    expect(folded(`reported:${reportedId}`, all)).toMatchObject({ fromName: 'Harbor Air', reportedFactId: all[0]?.id });
    expect(folded('reliance:v00000000001', all)).toMatchObject({ processes: 'alike', reliedFactId: all[1]?.id });
    expect(folded('determination:d00000000001', all)).toMatchObject({ written: { outcome: 'negative' } });
    expect(folded('request:k00000000001', all)).toMatchObject({ askedOn: '2026-12-01' });
  });
});

describe('two corrections that did not know of each other: the careful one judges', () => {
  const reportKey = `reported:${reportedId}`;
  const measured = (twa8UgPerM3: number) => ({ kind: 'measured', twa8UgPerM3 });
  const lessThan = (twa8UgPerM3: number) => ({ kind: 'lessThan', twa8UgPerM3 });

  test.each([
    ['/average', measured(12), measured(20), measured(31), measured(31)],
    ['/average', measured(12), lessThan(40), measured(31), measured(31)],
    ['/average', measured(12), lessThan(40), lessThan(10), lessThan(40)],
    ['/average/twa8UgPerM3', 12, 20, 31, 31],
    ['/receivedOn', '2026-12-01', '2026-11-30', '2026-11-27', '2026-11-27'],
    ['/fullShift', 'yes', 'no', 'notStated', 'no'],
    ['/ownFirm', 'yes', 'notStated', 'no', 'no'],
    ['/accuracy', 'yes', 'notStated', 'no', 'no'],
    // No direction is known: what was there first stands.
    ['/taskIds', ['handScraping'], ['windowTakeOut'], ['powerToolCleaning'], ['handScraping']],
  ])('%s of a reported measurement', (path, old, here, there, stands) => {
    for (const [first, second] of [
      [here, there],
      [there, here],
    ]) {
      const [a, b] = both();
      const id = a.add(reported());
      a.add(corrects(id, path, old, first, null, [reportKey]));
      b.add(corrects(id, path, old, second, null, [reportKey]));
      const found = record<ReportedRecord>(reportKey, a, b);
      const name = path.split('/')[1] as keyof ReportedRecord;
      const value = path.endsWith('UgPerM3') ? (found.average as { twa8UgPerM3: number }).twa8UgPerM3 : found[name];
      expect(value).toEqual(stands);
      expect(found.conflicts).toHaveLength(1);
    }
  });

  test.each([
    ['/processes', 'unlike', 'notKnown', 'unlike'],
    ['/environment', 'notKnown', 'unlike', 'unlike'],
    ['/ownFirm', 'no', 'notStated', 'no'],
  ])('%s of what a job rests on', (path, here, there, stands) => {
    const [a, b] = both();
    const old = path === '/ownFirm' ? 'yes' : 'alike';
    const id = a.add(relied());
    a.add(corrects(id, path, old, here, null, ['reliance:v00000000001']));
    b.add(corrects(id, path, old, there, null, ['reliance:v00000000001']));
    const found = record<AnyRecord>('reliance:v00000000001', a, b) as unknown as Record<string, unknown>;
    expect(found[path.slice(1)]).toBe(stands);
  });
});
