/** What a correction may not do: hide hours, or make the value that stands in a conflict the less careful one. */
import { describe, expect, it } from 'vitest';
import type { WorkdayRecord } from '#records/book.ts';
import { decide } from '#records/decide.ts';
import type { NewFact } from '#records/fact.ts';
import { at, corrects, folded, freshOf, ids, journal, office, phone, result, wanted, workOn } from './facts.ts';

const workdayId = `${ids.ana}.${workOn}`;
const key = `workday:${workdayId}`;
const piece = (from: string, to: string) => ({ startedAt: at(from), endedAt: at(to), place: null, employer: null });
const hours = wanted('workHoursStated.v1', { workdayId, pieces: [piece('12:00', '16:00'), piece('17:00', '20:00')] });
const explained = wanted('minutesExplained.v1', {
  workdayId,
  fromAt: at('16:00'),
  toAt: at('17:00'),
  as: 'away',
  sampleId: null,
  reason: 'lunch',
});
const first = `${phone}.00000001`;

/** What decide answers, with the fields it names. */
function answers(fact: NewFact, to: NewFact): readonly string[] {
  const decision = decide([to], freshOf(journal([fact])), { now: at('23:00'), lastSeenAt: null });
  return decision.kind === 'facts' ? ['facts'] : decision.refusals.map((one) => `${one.key} ${one.fields.join(' ')}`);
}
const to = (path: string, old: unknown, now: unknown) => corrects(first, path, old, now, null, [key]);

describe('a correction of hours or of explained minutes', () => {
  it.each([
    ['a later end', '/pieces/1/endedAt', at('20:00'), at('21:00'), 'facts'],
    ['an end before the start', '/pieces/1/endedAt', at('20:00'), at('16:30'), 'endBeforeStart 0/body/new'],
    ['two pieces at one time', '/pieces/1/startedAt', at('17:00'), at('15:00'), 'piecesOverlap 0/body/new'],
  ])('%s: %s', (_, path, old, now, expected) => {
    expect(answers(hours, to(path, old, now))).toEqual([expected]);
  });

  it('of all pieces at once keeps the same order and room', () => {
    const old = [piece('12:00', '16:00'), piece('17:00', '20:00')];
    expect(answers(hours, to('/pieces', old, [piece('12:00', '18:00'), piece('17:00', '20:00')]))).toEqual([
      'piecesOverlap 0/body/new',
    ]);
    expect(answers(hours, to('/pieces', old, [piece('12:00', '20:00')]))).toEqual(['facts']);
  });

  it('of explained minutes ends after it starts and keeps its reason', () => {
    expect(answers(explained, to('/toAt', at('17:00'), at('15:00')))).toEqual(['endBeforeStart 0/body/new']);
    expect(answers(explained, to('/reason', 'lunch', null))).toEqual(['whyNeeded 0/body/new']);
    expect(answers(explained, to('/as', 'away', 'unknown'))).toEqual(['facts']);
  });
});

describe('what stands while two corrections contradict', () => {
  const apart = (fact: NewFact, about: string, path: string, old: unknown, a: unknown, b: unknown) => [
    ...journal([fact], phone),
    ...journal([corrects(first, path, old, a, null, [about])], office),
    ...journal([corrects(first, path, old, b, null, [about])], 'xxxxxxxxxxx1'),
  ];

  it('of one end of a piece of work, the longer piece', () => {
    for (const [a, b] of [
      ['18:30', '22:00'],
      ['22:00', '18:30'],
    ] as const) {
      const day = folded<WorkdayRecord>(key, apart(hours, key, '/pieces/1/endedAt', at('20:00'), at(a), at(b)));
      expect(day.pieces?.[1]?.endedAt).toBe(at('22:00'));
      expect(day.conflicts).toHaveLength(1);
    }
  });

  it('of minutes, what leaves the most lead: the same as a sample before unknown before away', () => {
    const day = folded<WorkdayRecord>(key, apart(explained, key, '/as', 'away', 'unknown', 'sameAs'));
    expect(day.explained[0]?.as).toBe('sameAs');
  });

  it('of a mass, what it is at least: 40 stands before "less than 45"', () => {
    const sampleKey = `sample:${ids.one}`;
    const old = { kind: 'measured', massUg: 5 };
    const lessThan = { kind: 'lessThan', reportingLimitUg: 45 };
    const measured = { kind: 'measured', massUg: 40 };
    const prepared = wanted('samplePrepared.v1', {
      sampleId: ids.one,
      sampleNumber: '120019',
      shiftId: `${ids.site}.${workOn}`,
      workerId: ids.ana,
      pumpId: ids.pumpA,
      lotId: ids.lot,
      taskIds: ['windowRemoval'],
      jobClassificationId: null,
      follows: null,
    });
    for (const [a, b] of [
      [lessThan, measured],
      [measured, lessThan],
    ]) {
      const facts = [...apart(result(5), sampleKey, '/mass', old, a, b), ...journal([prepared], 'yyyyyyyyyyy1')];
      expect(folded(sampleKey, facts).results.at(-1)?.mass).toEqual(measured);
    }
  });
});
