/** What two devices write down of gear, folded as on a device, and what follows from it for one worker's day. Figures as in doubts.test.ts. */
import { describe, expect, it } from 'vitest';
import { findSample } from '#findings/sample.ts';
import type { Book } from '#records/book.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { at, ids, journal, office, wanted } from '../../records/facts.ts';
import { bookFrom, dayFrom, keysOf, soundDay, standing } from '../carefulStory.ts';

const elsewhere = 'xxxxxxxxxxx1';
const why = 'compared anew with a soap film';
const doubted = (more: Partial<FactBody<'gearDoubted.v1'>> = {}) =>
  wanted('gearDoubted.v1', {
    ...{
      gear: 'meter',
      gearId: ids.meter,
      doubtId: 'd00000000001',
      foundOn: '2026-12-20',
      fromOn: null,
      untilOn: null,
    },
    found: 'reads 25 % high',
    ...more,
  } as FactBody<'gearDoubted.v1'>);
const decided = (
  decision: FactBody<'gearDoubtSettled.v1'>['decision'],
  trueOverRead: number | null = null,
  day = '2026-12-21',
) =>
  wanted(
    'gearDoubtSettled.v1',
    { gear: 'meter', gearId: ids.meter, doubtId: 'd00000000001', decision, trueOverRead },
    { why, at: at('12:00', day), entry: 'typed' },
  );
const certificate = (certificateOn: string, more: Partial<FactBody<'certificateEntered.v1'>> = {}) =>
  wanted('certificateEntered.v1', {
    ...{ meterId: ids.meter, certificateOn, dueOn: '2027-11-01', by: null },
    ...{ calibrationTemperatureC: null, calibrationPressureKPa: null, pairs: [] },
    ...more,
  } as FactBody<'certificateEntered.v1'>);

const entries = (massUg: number, ...more: readonly (readonly [string, readonly NewFact[]])[]) => [
  ...journal(soundDay(massUg)),
  ...more.flatMap(([writer, facts]) => journal(facts, writer)),
];
const verdict = (given: ReturnType<typeof entries>) => standing(dayFrom(given), 'actionLevel').verdict;
const sampleOf = (book: Book) => findSample(ids.one, book);
const found = (given: ReturnType<typeof entries>) => sampleOf(bookFrom(given));

describe('a doubt and what two devices decide on it', () => {
  it('open, lifted, and the more careful of two decisions', () => {
    expect(verdict(entries(24))).toBe('below');
    expect(verdict(entries(24, [office, [doubted()]]))).toBe('unresolved');
    expect(verdict(entries(24, [office, [doubted(), decided('noEffect')]]))).toBe('below');
    const both = entries(24, [office, [doubted(), decided('noEffect')]], [elsewhere, [decided('staysDoubtful')]]);
    expect(verdict(both)).toBe('unresolved');
  });

  it('a factor that one of them found bounds the flow, whatever the other decided', () => {
    const both = entries(24, [office, [doubted(), decided('asFound', 0.8)]], [elsewhere, [decided('staysDoubtful')]]);
    expect(found(both).concentration?.estimate).toEqual({
      kind: 'between',
      lower: expect.closeTo(25, 9),
      upper: expect.closeTo(31.25, 9),
    });
    expect(keysOf(found(both).blocksBelow)).toEqual(['gearDoubted']);
  });

  it('two factors that differ: both bound it, and it stays doubtful', () => {
    const both = entries(24, [office, [doubted(), decided('asFound', 0.8)]], [elsewhere, [decided('asFound', 1.25)]]);
    expect(found(both).averageFlow?.estimate).toEqual({ kind: 'between', lower: expect.closeTo(1.6, 9), upper: 2.5 });
    expect(keysOf(found(both).blocksBelow)).toEqual(['gearDoubted']);
  });

  it('what has no last day goes on after the decision, until the day of a newer certificate', () => {
    const facts = [doubted({ foundOn: '2026-11-20' }), decided('staysDoubtful', null, '2026-11-21')];
    expect(verdict(entries(24, [office, facts]))).toBe('unresolved');
    const renewed = (day: string) => certificate(day, { dueOn: '2027-11-01' });
    expect(verdict(entries(24, [office, [...facts, renewed('2026-11-22')]]))).toBe('below');
    // one that is no newer than what was found shows nothing of it
    expect(verdict(entries(24, [office, [...facts, renewed('2026-11-20')]]))).toBe('unresolved');
  });
});

describe('certificates', () => {
  it('a later one changes nothing before its day', () => {
    const later = entries(24, [office, [certificate('2026-11-26', { dueOn: '2026-11-27' })]]);
    const { checkBefore, blocksBelow, concentration } = found(later);
    expect({ checkBefore, blocksBelow, concentration }).toEqual({
      checkBefore: found(entries(24)).checkBefore,
      blocksBelow: [],
      concentration: found(entries(24)).concentration,
    });
  });

  const pairs = (off: number) => [
    { readLPerMin: 1, trueLPerMin: 1 + off },
    { readLPerMin: 3, trueLPerMin: 3 + off },
  ];

  it('two of one day that did not know of each other and differ: the lower flow, in doubt', () => {
    const [a, b] = [
      certificate('2026-11-20', { pairs: pairs(-0.1) }),
      certificate('2026-11-20', { pairs: pairs(0.1) }),
    ];
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const) {
      const sample = found(entries(24, [office, [one]], [elsewhere, [other]]));
      expect(sample.averageFlow?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(1.9, 9) });
      expect(keysOf(sample.blocksBelow)).toEqual(['certificatesDiffer']);
    }
    // what two devices say of a certificate of the next day bears on nothing here
    const later = [certificate('2026-11-26', { pairs: pairs(-0.1) }), certificate('2026-11-26', { pairs: pairs(0.1) })];
    expect(found(entries(24, [office, later.slice(0, 1)], [elsewhere, later.slice(1)])).blocksBelow).toEqual([]);
  });
});

it('whose the flow meter is bears on no figure, said twice or not', () => {
  const held = (how: 'owned' | 'rented') =>
    wanted('gearHeld.v1', { gear: 'meter', gearId: ids.meter, held: how, from: null, backOn: null, retired: false });
  expect(found(entries(24, [office, [held('owned')]], [elsewhere, [held('rented')]])).blocksBelow).toEqual([]);
});
