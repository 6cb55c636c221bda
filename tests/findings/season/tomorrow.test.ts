/** What lies ready for a day and what is missing, on slices made by hand. Two blanks at least: READ sources stand in shared/blanks. */
import { describe, expect, test } from 'vitest';
import { tomorrowOf } from '#findings/season/tomorrow.ts';
import type { Book, DayPlanRecord, GearDoubt } from '#records/book.ts';
import { factId, lot, lotId, meter, shiftId, siteId, workOn } from '../sliceRegisters.ts';
import { sample } from '../slices.ts';
import { dayPlanOf, evening, personIdOf, planId, planOf, preparedOf, pumpIdOf, pumpOf } from './evening.ts';

const on = (book: Book) => tomorrowOf(book, shiftId, null);
const keysOf = (book: Book): string[] => on(book).cautions.map(({ key }) => key);
const withDay = (book: Book, change: Partial<DayPlanRecord>): Book => {
  const day = book.dayPlans.get(shiftId) ?? dayPlanOf();
  return { ...book, dayPlans: new Map([[shiftId, { ...day, ...change }]]) };
};
const one = <R extends { readonly id: string }>(record: R) => new Map([[record.id, record]]);
const doubt = (more: Partial<GearDoubt> = {}): GearDoubt => ({
  gear: 'pump',
  gearId: pumpIdOf(1),
  doubtId: 'd00000000001',
  foundOn: workOn,
  fromOn: null,
  untilOn: null,
  found: 'Hose cracked',
  factId: factId(),
  settled: null,
  ...more,
});

describe('who wears what', () => {
  test('with everything ready there is nothing to look at', () => {
    const day = on(evening(3));
    expect(day.cautions).toEqual([]);
    expect(
      day.wearers.map(({ pump, lot: lotOf, sampleNumber }) => [pump?.serial, lotOf?.lotNumber, sampleNumber]),
    ).toEqual([
      ['SP-2011', 'L-7', '410007'],
      ['SP-2012', 'L-7', '410008'],
      ['SP-2013', 'L-7', '410009'],
    ]);
    expect([day.blanks.count, day.cassettesCount, day.blankNumbers, day.spareNumbers]).toEqual([
      2,
      3,
      ['410010', '410011', '410012'],
      ['410013'],
    ]);
  });

  test('nobody was asked yet: the plans of that day and site name the wearers', () => {
    const book = { ...evening(3), dayPlans: new Map() };
    const day = on(book);
    expect(day.asked).toBeNull();
    expect(day.wearers.map(({ workerId, from, pump }) => [workerId, from, pump])).toEqual(
      [1, 2, 3].map((at) => [personIdOf(at), 'plan', null]),
    );
  });

  test.each([
    ['of another site', planOf({ siteId: 's00000000002' })],
    ['that was dropped', planOf({ dropped: { why: null, factId: factId() } })],
    ['of another day', planOf({ slots: [{ workerId: personIdOf(1), workOn: '2026-11-26' }] })],
    [
      'whose day was missed',
      planOf({
        slots: [{ workerId: personIdOf(1), workOn }],
        missed: [{ workerId: personIdOf(1), workOn, because: 'declined', remark: null, factId: factId() }],
      }),
    ],
  ])('a plan %s names nobody', (_, plan) => {
    const book = { ...evening(3), plans: one(plan), dayPlans: new Map() };
    expect([on(book).wearers, keysOf(book)]).toEqual([[], ['nobodyYet']]);
  });

  test('whom a plan names and nobody asked is told', () => {
    const book = withDay(evening(3), { prepared: preparedOf(2) });
    const told = on(book).cautions.filter(({ key }) => key === 'plannedNotPrepared');
    expect(told.map(({ workerId }) => workerId)).toEqual([personIdOf(3)]);
  });

  test('once the cassette is prepared its own number stands, a void one does not', () => {
    const own = { workerId: personIdOf(1), sampleNumber: '990010', pumpId: pumpIdOf(90), shiftId, siteId };
    const fitted = sample('07:00', '15:00', [], own);
    expect(on({ ...evening(3), samples: one(fitted) }).wearers[0]).toMatchObject({
      sampleNumber: '990010',
      sampleId: fitted.id,
      pump: { serial: 'SP-20100' },
    });
    const voided = { why: 'Dropped', factId: factId() } as never;
    const book = { ...evening(3), samples: one({ ...fitted, sampleNumber: '410007', voided }) };
    expect(on(book).wearers[0]?.sampleNumber).toBeNull();
  });
});

describe('what to look at first', () => {
  test('asked in the evening only', () =>
    expect(keysOf(withDay(evening(3), { prepared: preparedOf(3, { asked: 'evening' }) }))).toEqual([
      'askInTheMorning',
    ]));

  test('one pump for two workers, and none for a third', () => {
    const { wearers } = preparedOf(3);
    const pumps = [pumpIdOf(1), pumpIdOf(1), null];
    const prepared = preparedOf(3, { wearers: wearers.map((each, at) => ({ ...each, pumpId: pumps[at] ?? null })) });
    expect(keysOf(withDay(evening(3), { prepared }))).toEqual(['pumpTwice', 'pumpNone']);
  });

  // 25 November 01:00 UTC is the evening of the 24th in Chicago; 05:59 UTC of the 24th is still the 23rd there.
  test.each([
    ['2026-11-24T06:00:00.000Z', []],
    ['2026-11-24T05:59:00.000Z', ['pumpNotCharged']],
  ])('charged at %s', (at, keys) => {
    const charges = [{ at, full: true, by: null, factId: factId() }];
    expect(
      keysOf(evening(1, { pumps: new Map([...evening(1).pumps, [pumpIdOf(1), pumpOf(1, { charges })]]) })),
    ).toEqual(keys);
  });

  test.each([
    ['open', doubt(), ['pumpDoubted']],
    ['open, of earlier days', doubt({ untilOn: '2026-11-24' }), []],
    ['open, of later days', doubt({ foundOn: '2026-11-26', fromOn: '2026-11-26' }), []],
    [
      'settled as without effect',
      doubt({ settled: { decision: 'noEffect', trueOverRead: null, why: 'Hose only', factId: factId() } }),
      [],
    ],
    [
      'settled as staying',
      doubt({ settled: { decision: 'staysDoubtful', trueOverRead: null, why: 'Leaks', factId: factId() } }),
      ['pumpDoubted'],
    ],
  ])('a doubt that is %s', (_, one, keys) => {
    const pump = pumpOf(1, { doubts: [one] });
    expect(keysOf(evening(1, { pumps: new Map([...evening(1).pumps, [pump.id, pump]]) }))).toEqual(keys);
  });

  test('flow meter: the certificate in force on that day says when it is due', () => {
    const newer = { certificateOn: '2026-11-20', dueOn: '2027-11-20', by: null, pairs: [], factId: factId() };
    const certificates = [{ ...newer, calibrationTemperatureC: null, calibrationPressureKPa: null }];
    const late = meter({ dueOn: '2026-11-24' });
    expect(keysOf(evening(1, { meters: one(late) }))).toEqual(['meterOutOfDate']);
    expect(keysOf(evening(1, { meters: one({ ...late, certificates }) }))).toEqual([]);
    const future = certificates.map((each) => ({ ...each, certificateOn: '2026-11-26' }));
    expect(keysOf(evening(1, { meters: one({ ...late, certificates: future }) }))).toEqual(['meterOutOfDate']);
    expect(keysOf(evening(1, { meters: new Map() }))).toEqual(['meterNone']);
  });

  test('lot expired the day before, nothing spare, nobody charges, one blank label of two', () => {
    const prepared = preparedOf(1, { sparePumpIds: [], spareCassettesCount: 0, chargedById: null });
    const book = evening(1, { lots: new Map([[lotId, lot({ expiresOn: '2026-11-24' })]]) });
    const labels = (book.dayPlans.get(shiftId)?.labels ?? []).slice(0, 2);
    expect(keysOf(withDay(book, { prepared, labels }))).toEqual([
      'lotExpired',
      'sparePumpNone',
      'spareCassettesNone',
      'blankLabelsFew',
      'chargedByNone',
    ]);
  });

  test('two cassettes a worker and day count twice for the blanks: 22 of 11 workers need three', () => {
    const book = evening(11);
    const plans = one({ ...planOf(), slots: book.plans.get(planId)?.slots ?? [], cassettesCount: 2 });
    expect(on({ ...book, plans })).toMatchObject({ cassettesCount: 22, blanks: { count: 3 } });
  });
});
