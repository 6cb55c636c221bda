/** May this be written down now: roster, what is said anew, measurements of others. Given, when, then. */
import { describe, expect, test } from 'vitest';
import { bodyOf, cautions, first, people, refused, tomorrow } from './deciding.ts';
import {
  anaDay,
  bookOpened,
  changes,
  employed,
  limits,
  relied,
  reported,
  reportedId,
  shiftOpened,
  struck,
  workdayKey,
  worked,
} from './dutyFacts.ts';
import { corrects, ids, phone, wanted } from './facts.ts';

describe('the roster', () => {
  test.each([
    ['a first entry', people, worked(['handScraping']), []],
    ['the same shift twice', [...people, worked(['handScraping'])], worked(['x']), ['alreadyStated 0/body/shiftId']],
    [
      'another site on the same day',
      [...people, worked(['handScraping'])],
      worked(['x'], { shiftId: 's00000000002.2026-11-25' }),
      [],
    ],
    ['after it was struck', [worked(['a']), struck(first, []), ...people], worked(['b']), []],
    ['somebody who is not in the book', [], worked(['x']), ['recordUnknown 0/body/workdayId']],
    [
      'another day than the shift',
      people,
      worked(['x'], { shiftId: `${ids.site}.2026-11-24` }),
      ['entryNotComplete 0/body/shiftId'],
    ],
    [
      'a day that has not come',
      people,
      worked(['x'], { workdayId: `${ids.ana}.${tomorrow}`, shiftId: `${ids.site}.${tomorrow}` }),
      ['dayInFuture 0/body/workdayId'],
    ],
    ['today', people, worked(['x'], { workdayId: `${ids.ana}.2026-12-02`, shiftId: `${ids.site}.2026-12-02` }), []],
    ['no task', people, worked([]), ['entryNotComplete 0/body/taskIds']],
  ] as const)('%s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test('twice in one act is refused too', () => {
    expect(refused(people, [worked(['a']), worked(['b'])])).toEqual(['alreadyStated 1/body/shiftId']);
  });

  test.each([
    ['before the first day', '2026-11-26', null, ['notEmployedThen']],
    ['on the first day', '2026-11-25', null, []],
    ['on the last day', null, '2026-11-25', []],
    ['after the last day', '2026-01-05', '2026-11-24', ['notEmployedThen']],
  ] as const)('%s of who works here: written all the same', (_, fromOn, toOn, expected) => {
    expect(cautions([...people, employed(fromOn, toOn)], worked(['x']))).toEqual(expected);
  });

  test('a strike needs a reason, an entry of that day, and one that stands', () => {
    const before = [worked(['a']), ...people];
    expect(refused(before, struck(first, undefined, { why: null }))).toEqual(['whyNeeded 0/why']);
    expect(refused(before, struck(`${phone}.00000099`))).toEqual(['factUnknown 0/body/noted']);
    expect(refused(before, struck(`${phone}.00000002`))).toEqual(['factUnknown 0/body/noted']);
    expect(refused([worked(['a']), struck(first, [])], struck(first))).toEqual(['alreadyStruck 0/body/noted']);
  });

  test('a strike is given the corrections that it knew of', () => {
    const correction = corrects(first, '/taskIds', ['a'], ['b'], null, [workdayKey]);
    expect(bodyOf([worked(['a']), correction], struck(first)).knew).toEqual([`${phone}.00000002`]);
    expect(bodyOf([worked(['a'])], struck(first, [])).knew).toEqual([]);
  });

  test('a struck entry is not corrected; a standing one is', () => {
    const correction = corrects(first, '/taskIds', ['a'], ['b'], null, [workdayKey]);
    expect(refused([worked(['a']), struck(first, [])], correction)).toEqual(['alreadyStruck 0/body/replaces']);
    expect(bodyOf([worked(['a'])], correction)).toMatchObject({ new: ['b'], supersedes: null });
    const another = corrects(first, '/taskIds', ['b'], ['c'], null, [workdayKey]);
    expect(bodyOf([worked(['a']), correction], another).supersedes).toBe(`${phone}.00000002`);
  });

  test('what is new is asked once, at a shift of the book', () => {
    expect(refused([], changes({}))).toEqual(['recordUnknown 0/body/shiftId']);
    expect(refused([shiftOpened()], changes({}))).toEqual([]);
    expect(refused([shiftOpened(), changes({})], changes({}))).toEqual(['alreadyStated 0/body']);
  });

  test('a measurement stands for others than who wore it', () => {
    const represents = (...workerIds: string[]) => wanted('representsStated.v1', { workdayId: anaDay, workerIds });
    expect(refused(people, represents(ids.ben))).toEqual([]);
    expect(refused(people, represents(ids.ben, ids.ana))).toEqual(['representsSelf 0/body/workerIds/1']);
    expect(refused([], represents(ids.ben))).toEqual(['recordUnknown 0/body/workdayId']);
  });
});

describe('what is said anew', () => {
  test('who works here: in order, not the same again, and given what it knew of', () => {
    expect(refused([], employed(null, null))).toEqual(['recordUnknown 0/body/personId']);
    expect(refused(people, employed('2026-03-02', '2026-03-01'))).toEqual(['endBeforeStart 0/body/toOn']);
    expect(refused([...people, employed('2026-03-02', null)], employed('2026-03-02', null))).toEqual([
      'sameValue 0/body',
    ]);
    const before = [...people, employed('2026-03-02', null)];
    expect(bodyOf(before, employed('2026-03-02', '2027-01-31')).knew).toEqual([`${phone}.00000003`]);
  });

  test('own limits: the action level is not above the limit', () => {
    expect(refused([], limits([], 20, null))).toEqual(['recordUnknown 0/body/bookId']);
    expect(refused([bookOpened()], limits([], 30, 25))).toEqual(['actionAboveLimit 0/body/ownActionLevelUgPerM3']);
    expect(refused([bookOpened()], limits([], 25, 25))).toEqual([]);
    expect(refused([bookOpened()], limits([], 0, null))).toEqual(['entryNotComplete 0/body/ownActionLevelUgPerM3']);
    expect(refused([bookOpened(), limits(['b', 'a'], 20, null)], limits(['a', 'b'], 20, null))).toEqual([
      'sameValue 0/body',
    ]);
    expect(bodyOf([bookOpened(), limits([], 20, null)], limits([], 15, null)).knew).toEqual([`${phone}.00000002`]);
  });
});

describe('measurements of others', () => {
  test.each([
    ['one of a worker of the book', people, reported(), []],
    ['one of a worker who is not named', [], reported({ workerId: null }), []],
    ['a worker who is not in the book', [], reported(), ['recordUnknown 0/body/workerId']],
    ['twice', [...people, reported()], reported(), ['alreadyInBook 0/body/reportedId']],
    ['received tomorrow', people, reported({ receivedOn: tomorrow }), ['dayInFuture 0/body/receivedOn']],
    [
      'of tomorrow',
      people,
      reported({ workOn: tomorrow, receivedOn: tomorrow }),
      ['dayInFuture 0/body/workOn', 'dayInFuture 0/body/receivedOn'],
    ],
    [
      'received before the work',
      people,
      reported({ receivedOn: '2026-11-24' }),
      ['receivedBeforeWork 0/body/receivedOn'],
    ],
    ['received on the day itself', people, reported({ receivedOn: '2026-11-25' }), []],
    [
      'a remark with a social security number',
      people,
      reported({ remark: 'SSN 123-45-6789' }),
      ['looksLikeSocialSecurityNumber 0/body/remark'],
    ],
  ] as const)('%s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test.each([
    ['on one that is in the book', [reported()], relied(), []],
    ['on a day of the book', [worked(['a'])], relied({ measurementId: anaDay }), []],
    ['on nothing', [], relied(), ['recordUnknown 0/body/measurementId']],
    [
      'on one that was measured after the job',
      [reported()],
      relied({ shiftId: `${ids.site}.2026-11-24` }),
      ['measuredAfterJob 0/body/measurementId'],
    ],
    ['twice', [reported(), relied()], relied(), ['alreadyInBook 0/body/relianceId']],
  ] as const)('a job that rests %s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test('a corrected day keeps its order and does not lie ahead', () => {
    const id = first;
    const correct = (path: string, old: unknown, now: unknown) =>
      refused([reported()], corrects(id, path, old, now, null, [`reported:${reportedId}`]));
    expect(correct('/receivedOn', '2026-12-01', '2026-11-30')).toEqual([]);
    expect(correct('/receivedOn', '2026-12-01', '2026-11-24')).toEqual(['receivedBeforeWork 0/body/new']);
    expect(correct('/receivedOn', '2026-12-01', tomorrow)).toEqual(['dayInFuture 0/body/new']);
    expect(correct('/average', { kind: 'measured', twa8UgPerM3: 12 }, { kind: 'lessThan', twa8UgPerM3: 5 })).toEqual(
      [],
    );
    expect(correct('/average/twa8UgPerM3', 12, -1)).toEqual(['entryNotComplete 0/body/new']);
  });
});
