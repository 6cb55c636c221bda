/** May this be written down now: notices, determinations, what was done; and what waits while a file is half taken in. */
import { describe, expect, test } from 'vitest';
import { needs } from '#records/decide.ts';
import { bodyOf, first, people, refused, tomorrow } from './deciding.ts';
import {
  anaDay,
  bookOpened,
  changes,
  determination,
  done,
  dutyId,
  employed,
  given,
  limits,
  notice,
  recordIssued,
  relied,
  reopened,
  reported,
  reportedId,
  requested,
  shiftOpened,
  struck,
  worked,
} from './dutyFacts.ts';
import { at, corrects, ids, phone, prepared, wanted } from './facts.ts';

describe('notices', () => {
  const measured = [worked(['a']), ...people];

  test.each([
    ['the first revision', measured, notice(), []],
    ['of a day of which only a sample is known', [prepared()], notice(), []],
    ['of nothing', people, notice(), ['recordUnknown 0/body/measurementId']],
    ['a second as first', measured, notice({ revision: '2' }), ['noticeRevisionNotNext 0/body/revision']],
    [
      'the same again',
      [...measured, notice()],
      notice({ noticeId: 'n00000000002' }),
      ['noticeRevisionNotNext 0/body/revision'],
    ],
    ['the next one', [...measured, notice()], notice({ noticeId: 'n00000000002', revision: '2' }), []],
    [
      'the first one of another measurement',
      [...measured, notice(), reported()],
      notice({ noticeId: 'n00000000002', measurementId: reportedId }),
      [],
    ],
    ['posted nowhere', measured, notice({ form: 'posted' }), ['entryNotComplete 0/body/places']],
    ['posted in the cabin', measured, notice({ form: 'posted', places: ['Cabin'] }), []],
    [
      'at the limit without corrective action',
      measured,
      notice({ pelStatement: true }),
      ['entryNotComplete 0/body/correctiveAction'],
    ],
    ['at the limit with corrective action', measured, notice({ pelStatement: true, correctiveAction: 'Wet' }), []],
    ['received tomorrow', measured, notice({ receivedOn: tomorrow }), ['dayInFuture 0/body/receivedOn']],
    ['for nobody', measured, notice({ workerIds: [] }), ['entryNotComplete 0/body/workerIds']],
    [
      'a moment in what is printed may lie ahead',
      measured,
      notice({ notice: { dueAt: '2026-12-09T18:00:00.000Z' } }),
      [],
    ],
  ] as const)('%s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test.each([
    ['to somebody it names', [notice()], given(), []],
    [
      'to somebody it does not name',
      [notice()],
      given({ workerId: 'p00000000077' }),
      ['notNamedInNotice 0/body/workerId'],
    ],
    ['that is not here', [], given(), ['recordUnknown 0/body/noticeId']],
    [
      'posted, though it was made to be handed over',
      [notice()],
      given({ workerId: null, how: 'posted', place: 'Cabin', initials: null }),
      ['noticeNotPosted 0/body/how', 'entryNotComplete 0/body/place'],
    ],
    [
      'posted where it was to be',
      [notice({ form: 'posted', places: ['Cabin'] })],
      given({ workerId: null, how: 'posted', place: 'Cabin', initials: null }),
      [],
    ],
    [
      'posted elsewhere',
      [notice({ form: 'posted', places: ['Cabin'] })],
      given({ workerId: null, how: 'posted', place: 'Van', initials: null }),
      ['entryNotComplete 0/body/place'],
    ],
    [
      'posted for one',
      [notice({ form: 'posted', places: ['Cabin'] })],
      given({ how: 'posted', place: 'Cabin' }),
      ['entryNotComplete 0/body/workerId'],
    ],
    ['refused, with initials', [notice()], given({ how: 'refusedToSign' }), ['entryNotComplete 0/body/initials']],
    [
      'before it was made',
      [notice()],
      given({}, { at: at('14:59', '2026-12-02'), entry: 'typed' }),
      ['givenBeforeIssued 0/happened/at'],
    ],
  ] as const)('given %s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test('what left the firm is not corrected', () => {
    const key = 'notice:n00000000001';
    const of = (id: string, path: string, old: unknown, now: unknown) =>
      refused([notice(), given()], corrects(id, path, old, now, null, [key]));
    expect(of(first, '/receivedOn', '2026-12-02', '2026-12-01')).toEqual(['fieldFixed 0/body/path']);
    expect(of(`${phone}.00000002`, '/initials', 'AP', 'A.P.')).toEqual([]);
    expect(of(`${phone}.00000002`, '/happened/at', at('16:00', '2026-12-02'), at('14:00', '2026-12-02'))).toEqual([
      'givenBeforeIssued 0/body/new',
    ]);
  });

  test('each exposure record of a day is the next revision', () => {
    expect(refused([worked(['a'])], recordIssued('1'))).toEqual([]);
    expect(refused([worked(['a']), recordIssued('1')], recordIssued('1'))).toEqual([
      'noticeRevisionNotNext 0/body/revision',
    ]);
    expect(refused([worked(['a']), recordIssued('1')], recordIssued('2'))).toEqual([]);
  });
});

describe('determinations, duties, requests', () => {
  test.each([
    ['a negative one with a measurement', [], determination(), []],
    [
      'a negative one with nothing',
      [],
      determination({ measurementIds: [] }),
      ['negativeWithoutMeasurement 0/body/measurementIds'],
    ],
    ['a positive one with nothing', [], determination({ outcome: 'positive', measurementIds: [] }), []],
    ['of tomorrow', [], determination({ determinedOn: tomorrow }), ['dayInFuture 0/body/determinedOn']],
    ['twice', [determination()], determination(), ['alreadyInBook 0/body/determinationId']],
    [
      'with a social security number in a complaint',
      [],
      determination({ complaints: 'from 123-45-6789' }),
      ['looksLikeSocialSecurityNumber 0/body/complaints'],
    ],
    ['done', [], done('2026-12-02'), []],
    ['done tomorrow', [], done(tomorrow), ['dayInFuture 0/body/doneOn']],
    ['done twice on a day', [done('2026-12-01')], done('2026-12-01'), ['alreadyStated 0/body/doneOn']],
    ['done again on another day', [done('2026-12-01')], done('2026-12-02'), []],
    ['reopened', [done('2026-12-01')], reopened(), []],
    ['reopened without a reason', [done('2026-12-01')], reopened(undefined, { why: null }), ['whyNeeded 0/why']],
    ['reopened though it was not done', [], reopened(), ['notDone 0/body/dutyId']],
    ['asked', people, requested(), []],
    ['asked tomorrow', people, requested({ askedOn: tomorrow }), ['dayInFuture 0/body/askedOn']],
    ['asked of somebody unknown', [], requested(), ['recordUnknown 0/body/personId']],
    ['asked of nobody in particular', [], requested({ personId: null }), []],
  ] as const)('%s', (_, before, wish, expected) => {
    expect(refused(before, wish)).toEqual(expected);
  });

  test('a reopening is given what it takes back', () => {
    expect(bodyOf([done('2026-12-01'), done('2026-12-02')], reopened()).knew).toEqual([first, `${phone}.00000002`]);
  });
});

describe('while a file is half taken in', () => {
  const known = [...people, bookOpened(), worked(['a']), reported(), shiftOpened()];
  const entry = `${phone}.00000004`;
  const represents = wanted('representsStated.v1', { workdayId: anaDay, workerIds: [ids.ben] });

  test.each([
    ['a strike', struck(entry)],
    ['a last day', employed(null, '2026-11-20')],
    ['whom a measurement stands for', represents],
    ['relying on an earlier one', relied()],
    ['done', done('2026-12-01')],
    ['other limits', limits([], null, null)],
    ['a negative determination', determination()],
  ])('%s waits', (_, wish) => {
    expect(needs([wish]).takingIn).toBe(true);
    expect(refused(known, wish)).toEqual([]);
    expect(refused(known, wish, true)).toEqual(['takingIn ']);
  });

  test.each([
    ['an entry of the roster', worked(['b'], { shiftId: 's00000000002.2026-11-25' })],
    ['a positive determination', determination({ outcome: 'positive' })],
    ['a notice', notice()],
    ['what was reported', reported({ reportedId: 'r00000000002' })],
    ['what is new', changes({})],
  ])('%s does not', (_, wish) => {
    expect(needs([wish]).takingIn).toBe(false);
    expect(refused(known, wish, true)).toEqual([]);
  });
});

test('what is read beside the record is as little as may be', () => {
  expect(needs([notice()]).noticesOf).toEqual([anaDay]);
  expect(needs([worked(['a'])]).keys).toEqual([`workday:${anaDay}`, `person:${ids.ana}`]);
  expect(needs([relied()]).keys).toEqual(['reliance:v00000000001', `reported:${reportedId}`]);
  expect(needs([done('2026-12-01')]).keys).toEqual([`duty:${dutyId}`]);
  expect(needs([notice()]).missing).toBe(false);
});
