/**
 * Notices of results, 29 CFR 1926.62(d)(8), as the 2015 annual edition has it: five working days after receipt of any result, to each
 * affected worker, with a statement and the corrective action at or above the PEL. Last days are counted by hand on the calendar of 2026.
 */
import { describe, expect, test } from 'vitest';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import { noticesOwed } from '#findings/duties/telling/notices.ts';
import type { Book } from '#records/book.ts';
import { person, site } from '../sliceRegisters.ts';
import { result } from '../slices.ts';
import {
  type Day,
  jobBook,
  massUgFor,
  notice,
  olga,
  reported,
  rosterDay,
  sampleIdOf,
  tess,
  vic,
  workdayIdOf,
} from './jobBook.ts';

const workOn = '2026-11-03';
const id = workdayIdOf(tess, workOn);
const low: Day = { workOn, averageUgPerM3: 12, receivedOn: '2026-11-09' };

const resultsOf = (book: Book, workerId = tess, on = workOn): string[] =>
  (book.samples.get(sampleIdOf(workerId, on))?.results ?? []).map(({ factId }) => factId);

const owedIn = (book: Book, today = '2026-11-10') => noticesOwed(measurementsOf(book), book, groupDaysOf(book), today);

function owed(book: Book, today = '2026-11-10', measurementId = id) {
  const found = owedIn(book, today).find((one) => one.measurementId === measurementId);
  if (!found) throw new Error('no notice is owed');
  return found;
}

/** The book with notices, which name the results as the book has them. */
const told = (book: Book, ...notices: readonly Omit<Parameters<typeof notice>[0], 'measurementId'>[]): Book => ({
  ...book,
  notices: new Map(
    notices.map((one, index) => {
      const made = notice({ id: `n0000000000${index + 1}`, ...one, measurementId: id });
      return [made.id, made];
    }),
  ),
});

describe('(d)(8)(i): as soon as possible, at most five working days after receipt', () => {
  test.each([
    ['a Monday', '2026-11-09', '2026-11-16'],
    ['a Friday', '2026-11-13', '2026-11-20'],
    ['a Saturday', '2026-11-14', '2026-11-20'],
    ['a Sunday', '2026-11-15', '2026-11-20'],
  ])('a result received on %s', (_, receivedOn, dueOn) => {
    expect(owed(jobBook({ days: [{ ...low, receivedOn }] }))).toMatchObject({ receivedOn, dueOn });
  });

  test('1903.22(c): holidays in between make a note, and never the last day', () => {
    // Thanksgiving is 26 November 2026
    const found = owed(jobBook({ days: [{ ...low, receivedOn: '2026-11-23' }] }));
    expect(found).toMatchObject({ dueOn: '2026-11-30', laterReadingOn: '2026-12-01' });
    expect(owed(jobBook({ days: [{ ...low, receivedOn: '2026-11-16' }] })).laterReadingOn).toBeNull();
  });

  test('overdue from the day after the last one, in the later reading too', () => {
    const book = jobBook({ days: [{ ...low, receivedOn: '2026-11-23' }] });
    expect(owed(book, '2026-11-30').overdue).toBe(false);
    expect(owed(book, '2026-12-01').overdue).toBe(true);
  });

  test('of any result: below the action level too, and without a statement', () => {
    const found = owed(jobBook({ days: [low] }));
    expect(found).toMatchObject({ affectedIds: [tess], openIds: [tess], toldIds: [], kind: 'first' });
    expect(found).toMatchObject({ pelStatement: false, correctiveActionNeeded: false });
  });

  test('a result that is owed owes no notice yet', () => {
    expect(owedIn(jobBook({ days: [{ ...low, averageUgPerM3: null }] }))).toEqual([]);
  });

  test('(d)(8)(i): a measurement that was reported to us, from the day it was had', () => {
    const book = jobBook({ reported: [reported()] });
    expect(owed(book, '2026-11-18', 'r00000000001')).toMatchObject({
      receivedOn: '2026-11-16',
      dueOn: '2026-11-23',
      openIds: [tess],
    });
  });

  test("where the state's own rule is not held, the federal days are a courtesy", () => {
    const book = jobBook({ days: [low], sites: [site({ stateCode: 'CA' })] });
    expect(owed(book)).toMatchObject({ dueOn: '2026-11-16', openIds: [tess] });
  });
});

describe('(d)(8)(i): each affected worker', () => {
  const crew = jobBook({ days: [low], roster: [rosterDay(vic, workOn), rosterDay(olga, '2026-11-04')] });

  test('everyone whom it stands for by the roster of that shift', () => {
    expect(owed(crew).affectedIds).toEqual([tess, vic]);
  });

  test('workers of other employers are among them', () => {
    const hired = { ...person(vic, 'Vic Vise'), employer: 'Cornice and Sons' };
    const book = { ...crew, people: new Map([...crew.people, [vic, hired]]) };
    expect(owed(book).openIds).toEqual([tess, vic]);
  });

  test('given to one of two: the other stays open', () => {
    const book = told(crew, { resultFactIds: resultsOf(crew), workerIds: [tess, vic], issuedOn: '2026-11-10' });
    expect(owed(book)).toMatchObject({ toldIds: [tess], openIds: [vic], noticeIds: ['n00000000001'] });
    expect(owed(book, '2026-11-17').overdue).toBe(true);
  });

  test('posted counts for all it names, and for nobody else', () => {
    const posted = { workerId: null, how: 'posted', place: 'site hut', initials: null } as const;
    const telling = { resultFactIds: resultsOf(crew), issuedOn: '2026-11-10', given: [posted] };
    expect(owed(told(crew, { ...telling, workerIds: [tess, vic] })).openIds).toEqual([]);
    expect(owed(told(crew, { ...telling, workerIds: [tess] })).openIds).toEqual([vic]);
  });

  test('made and not given, it told nobody', () => {
    const book = told(crew, { resultFactIds: resultsOf(crew), workerIds: [tess], issuedOn: '2026-11-10', given: [] });
    expect(owed(book).toldIds).toEqual([]);
  });

  test.each(['handedOver', 'readAloud', 'refusedToSign'] as const)('%s counts as given', (how) => {
    const book = told(crew, { resultFactIds: resultsOf(crew), issuedOn: '2026-11-10', given: [{ how }] });
    expect(owed(book).toldIds).toEqual([tess]);
  });

  test('a notice that a newer version changed tells nobody until that is understood', () => {
    const book = told(crew, { resultFactIds: resultsOf(crew), issuedOn: '2026-11-10' });
    const [made] = [...book.notices.values()];
    if (!made) throw new Error('no notice');
    const unknown = { ...made, notUnderstood: ['wwwwwwwwwwww.00009999'] };
    expect(owed({ ...book, notices: new Map([[made.id, unknown]]) }).toldIds).toEqual([]);
  });
});

describe('(d)(8)(i): late stays visible', () => {
  const alone = jobBook({ days: [low] });
  const given = (on: string) => owed(told(alone, { resultFactIds: resultsOf(alone), issuedOn: on }), '2026-12-01');

  test('given on the last day is in time, on the day after late', () => {
    expect(given('2026-11-16')).toMatchObject({ openIds: [], overdue: false, toldLate: false });
    expect(given('2026-11-17')).toMatchObject({ openIds: [], overdue: false, toldLate: true });
  });

  test('the day counts at the site: half past eleven at night in Texas is still the last day', () => {
    const night = { at: '2026-11-17T05:30:00.000Z' };
    const book = told(alone, { resultFactIds: resultsOf(alone), issuedOn: '2026-11-16', given: [night] });
    expect(owed(book, '2026-12-01').toldLate).toBe(false);
  });
});

describe('(d)(8)(i): a revised report starts a new clock and asks for a new notice', () => {
  const first = result(massUgFor(12), { receivedOn: '2026-11-09', reportedOn: '2026-11-09', reportNumber: 'R-1' });
  const second = result(massUgFor(41), { receivedOn: '2026-11-18', reportedOn: '2026-11-18', reportNumber: 'R-1.1' });
  const before = jobBook({ days: [{ ...low, sample: { results: [first] } }] });
  const after = jobBook({ days: [{ ...low, sample: { results: [first, second] } }] });
  const old = { resultFactIds: [first.factId], issuedOn: '2026-11-10' };
  const fresh = { resultFactIds: [second.factId], issuedOn: '2026-11-19' };

  test('told of the first one: nothing is open until the second one comes', () => {
    expect(owed(told(before, old), '2026-11-17')).toMatchObject({ openIds: [], kind: 'first' });
    expect(owed(told(after, old), '2026-11-19')).toMatchObject({
      ...{ receivedOn: '2026-11-18', dueOn: '2026-11-25', kind: 'revised', overdue: false },
      ...{ openIds: [tess], toldIds: [] },
    });
  });

  test('told of both, each in time', () => {
    expect(owed(told(after, old, fresh), '2026-12-01')).toMatchObject({ openIds: [], toldLate: false, overdue: false });
  });

  test('never told of the first one: its clock still runs, and the second notice is late for it', () => {
    expect(owed(after, '2026-11-19')).toMatchObject({ receivedOn: '2026-11-09', dueOn: '2026-11-16', overdue: true });
    expect(owed(told(after, fresh), '2026-12-01')).toMatchObject({ openIds: [], toldLate: true });
  });

  test('a notice that knew only some of the results is not enough', () => {
    const half = { ...old, resultFactIds: [] };
    expect(owed(told(before, half))).toMatchObject({ openIds: [tess], kind: 'revised' });
  });

  test('a notice that told another figure is not enough', () => {
    const figure = (value: number) => ({ issued: { notice: { twa8UgPerM3: { kind: 'exact', value } } } });
    expect(owed(told(before, { ...old, ...figure(12) })).openIds).toEqual([]);
    expect(owed(told(before, { ...old, ...figure(11) })).openIds).toEqual([tess]);
  });
});

describe('(d)(8)(ii): the statement, and the corrective action', () => {
  const at = (averageUgPerM3: number) => owed(jobBook({ days: [{ ...low, averageUgPerM3 }] }));

  test.each([
    ['one part in a thousand below 50', 49.95, false],
    ['exactly 50, though that is not above the PEL', 50, true],
    ['one part in a thousand above 50', 50.05, true],
  ])('%s', (_, averageUgPerM3, asked) => {
    expect(at(averageUgPerM3)).toMatchObject({ pelStatement: asked, correctiveActionNeeded: asked });
  });

  test('a bound that straddles 50: it may have been', () => {
    const wide = result({ lessThanUg: massUgFor(60) }, { receivedOn: '2026-11-09' });
    const book = jobBook({ days: [{ ...low, sample: { results: [wide] } }] });
    expect(measurementsOf(book).get(id)?.atOrAbovePel).toBe('unresolved');
    expect(owed(book).pelStatement).toBe(true);
  });

  test('no flow after: at least a figure is known, and its notice is owed with the statement', () => {
    const book = jobBook({ days: [{ ...low, averageUgPerM3: 20, flowAfter: false }] });
    expect(measurementsOf(book).get(id)?.atLeastOnly).toBe(true);
    expect(owed(book)).toMatchObject({ openIds: [tess], pelStatement: true });
  });

  test('a void sample with a high result keeps its figure and its notice', () => {
    const voided = { voided: { why: 'found open', factId: 'wwwwwwwwwwww.00008888' } };
    const book = jobBook({ days: [{ ...low, averageUgPerM3: 300, sample: voided }] });
    expect(measurementsOf(book).get(id)?.atOrAbovePel).toBe('yes');
    expect(owed(book)).toMatchObject({ openIds: [tess], pelStatement: true, correctiveActionNeeded: true });
  });

  test('without the statement, or without the corrective action, the notice is not the one that is asked for', () => {
    const high = jobBook({ days: [{ ...low, averageUgPerM3: 80 }] });
    const telling = { resultFactIds: resultsOf(high), issuedOn: '2026-11-10' };
    const open = (issued: { pelStatement: boolean; correctiveAction: string | null }) =>
      owed(told(high, { ...telling, issued })).openIds;
    expect(open({ pelStatement: true, correctiveAction: 'Wet scraping, with a second water sprayer' })).toEqual([]);
    expect(open({ pelStatement: false, correctiveAction: 'Wet scraping' })).toEqual([tess]);
    expect(open({ pelStatement: true, correctiveAction: null })).toEqual([tess]);
    expect(open({ pelStatement: true, correctiveAction: '  ' })).toEqual([tess]);
  });
});
