import { describe, expect, test } from 'vitest';
import type { BoxRecord, ShiftRecord, WorkdayRecord } from '#records/book.ts';
import { decide } from '#records/decide.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import {
  at,
  folded,
  freshOf,
  ids,
  journal,
  office,
  phone,
  prepared,
  result,
  shiftId,
  wanted,
  workOn,
} from './facts.ts';

const workdayId = `${ids.ana}.${workOn}`;
const key = `workday:${workdayId}`;
const piece = (from: string, to: string) => ({ startedAt: at(from), endedAt: at(to), place: null, employer: null });
const hours = (...pieces: readonly ReturnType<typeof piece>[]) =>
  wanted('workHoursStated.v1', { workdayId, pieces: [...pieces] });
const regular = (answer: 'yes' | 'no') => wanted('dayDescribed.v1', { workdayId, regular: answer, reason: null });
const otherWork = (callOut: 'yes' | 'no') =>
  wanted('otherWorkAsked.v1', { workdayId, callOut, secondSite: 'no', secondEmployer: 'no' });
const apart = (onPhone: readonly NewFact[], inOffice: readonly NewFact[]) => [
  ...journal(onPhone, phone),
  ...journal(inOffice, office),
];

describe("a worker's day", () => {
  test('is made by whatever is stated first', () => {
    expect(folded<WorkdayRecord>(key, journal([regular('yes')]))).toMatchObject({
      workerId: ids.ana,
      workOn,
      pieces: null,
      regular: { regular: 'yes' },
    });
  });

  test('stated differently on two devices: the careful one stands and the conflict is shown', () => {
    const record = folded<WorkdayRecord>(
      key,
      apart(
        [hours(piece('12:00', '20:00')), regular('no'), otherWork('no')],
        [hours(piece('12:00', '19:00')), regular('yes'), otherWork('yes')],
      ),
    );
    expect(record.pieces).toEqual([piece('12:00', '20:00')]);
    expect(record.regular?.regular).toBe('no');
    expect(record.otherWork?.callOut).toBe('yes');
    expect(record.conflicts.map(({ path }) => path).sort()).toEqual(['/otherWork', '/pieces', '/regular']);
  });

  test('stated alike on two devices: no conflict', () => {
    expect(folded<WorkdayRecord>(key, apart([regular('yes')], [regular('yes')])).conflicts).toEqual([]);
  });

  test('a conflict of statements is settled by choosing one', () => {
    const facts = apart([regular('no')], [regular('yes')]);
    const settle = wanted(
      'correctionSettled.v1',
      { replaces: facts[0]?.id, path: '/regular', chosen: facts[1]?.id } as FactBody<'correctionSettled.v1'>,
      { about: [key], why: 'asked the crew' },
    );
    expect(decide([{ ...settle, why: ' ' }], freshOf(facts), { now: at('23:00'), lastSeenAt: null })).toMatchObject({
      refusals: [{ key: 'whyNeeded' }],
    });
    const decision = decide([settle], freshOf(facts), { now: at('23:00'), lastSeenAt: null });
    expect(decision.kind).toBe('facts');
    const settled = journal([regular('no'), ...(decision.kind === 'facts' ? decision.facts : [])], phone);
    const record = folded<WorkdayRecord>(key, [...settled, ...facts.slice(1)]);
    expect(record).toMatchObject({ conflicts: [], regular: { regular: 'yes' } });
  });

  test.each<[string, readonly NewFact[], NewFact, string]>([
    ['hours stated twice', [hours(piece('12:00', '20:00'))], hours(piece('12:00', '19:00')), 'alreadyStated'],
    ['a regular day or not, twice', [regular('yes')], regular('no'), 'alreadyStated'],
    ['an end before the start', [], hours(piece('20:00', '12:00')), 'endBeforeStart'],
    ['two pieces at once', [], hours(piece('12:00', '16:00'), piece('15:00', '20:00')), 'piecesOverlap'],
    [
      'minutes away without a reason',
      [],
      wanted('minutesExplained.v1', {
        workdayId,
        fromAt: at('12:00'),
        toAt: at('13:00'),
        as: 'away',
        sampleId: null,
        reason: null,
      }),
      'whyNeeded',
    ],
  ])('refuses %s', (_, facts, fact, reason) => {
    const decision = decide([fact], freshOf(journal(facts)), { now: at('23:00'), lastSeenAt: null });
    expect(decision).toMatchObject({ kind: 'refused', refusals: [{ key: reason }] });
  });
});

describe("a site's day", () => {
  const opened = (time: string) => wanted('shiftOpened.v1', { shiftId, siteId: ids.site, workOn }, { at: at(time) });
  const conditions = (tool: 'hand' | 'power') =>
    wanted('conditionsNoted.v1', {
      shiftId,
      tool,
      method: 'dry',
      dustCollection: 'none',
      containment: 'none',
      ventilation: 'natural',
      weather: 'indoors',
      paintLead: 'presumed',
      area: 'room',
      remark: null,
    });

  test('opened on two devices is one record; no direction is known for conditions, so the first stand', () => {
    const record = folded<ShiftRecord>(
      `shift:${shiftId}`,
      apart([opened('11:00'), conditions('hand')], [opened('11:05'), conditions('power')]),
    );
    expect(record).toMatchObject({ openedAt: at('11:00'), siteId: ids.site, conditions: { tool: 'hand' } });
    expect(record.conflicts).toMatchObject([{ path: '/conditions' }]);
  });
});

describe('results and boxes on two devices', () => {
  test('one report keyed in twice with two masses: the heavier comes last, and the conflict is shown', () => {
    for (const [here, there] of [
      [5, 7],
      [7, 5],
    ] as const) {
      const facts = apart([prepared(), result(here)], [result(there)]);
      const record = folded(`sample:${ids.one}`, facts);
      expect(record.results.map(({ mass }) => mass)).toEqual([
        { kind: 'measured', massUg: 5 },
        { kind: 'measured', massUg: 7 },
      ]);
      expect(record.conflicts).toMatchObject([{ path: '/mass' }]);
    }
  });

  test('a revised report of a later day comes last, whoever keyed it first', () => {
    const revised = result(3, 'R-2');
    const later = { ...revised, body: { ...revised.body, reportedOn: '2026-12-09' } };
    const record = folded(`sample:${ids.one}`, apart([prepared(), later], [result(5)]));
    expect(record.results.map(({ reportNumber }) => reportNumber)).toEqual(['R-1', 'R-2']);
    expect(record.conflicts).toEqual([]);
  });

  test('a box handed over and arrived', () => {
    const box = { boxId: ids.box };
    const facts = [
      wanted('boxPacked.v1', {
        ...box,
        siteId: ids.site,
        sampleIds: [ids.one],
        laboratoryId: ids.laboratory,
        samplerId: ids.supervisor,
        analysis: 'lead',
        methodId: null,
        reportingLimitUg: null,
        includeWallDeposit: true,
        callBeforeReanalysis: true,
        turnaround: 'standard',
        workersShownAs: 'identifier',
        remark: null,
      }),
      wanted('boxHandedOver.v1', { ...box, to: 'carrier', trackingNumber: 'T1', sealed: true }, { at: at('21:00') }),
      wanted('boxArrived.v1', { ...box, remark: null }, { at: at('15:00', '2026-11-27') }),
    ];
    expect(folded<BoxRecord>(`box:${ids.box}`, journal(facts))).toMatchObject({
      packed: { sampleIds: [ids.one] },
      handedOver: { to: 'carrier', at: at('21:00') },
      arrivedAt: at('15:00', '2026-11-27'),
    });
    expect(folded(`box:${ids.box}`, journal(facts).slice(1))).toBeNull();
  });
});
