/** Attempts to get *below* out of a worker's day that does not show it, or to lose a limit that was crossed. Facts in, values by hand. */
import { describe, expect, it } from 'vitest';
import type { FactBody, NewFact } from '#records/fact.ts';
import { at, corrects, ids, journal, office, phone, wanted } from '../records/facts.ts';
import {
  asked,
  dayFrom,
  dayOf,
  explains,
  fitted,
  flow,
  hours,
  keysOf,
  piece,
  prepared,
  putOn,
  registers,
  regular,
  result,
  site,
  soundDay,
  standing,
  stopped,
  workdayKey,
} from './carefulStory.ts';

const withHours = (facts: readonly NewFact[], ...stated: readonly NewFact[]): NewFact[] => [
  ...facts.filter(({ kind }) => kind !== 'workHoursStated.v1' && kind !== 'otherWorkAsked.v1'),
  ...stated,
];
/** A second cassette on the same worker, with its own pump and flow checks. */
const second = (
  from: string,
  to: string,
  min: number,
  massUg: number,
  shift: Partial<FactBody<'flowChecked.v1'>> = {},
) => [
  flow('f00000000011', 'before', '11:30', 2, { pumpId: ids.pumpB, ...shift }),
  prepared(ids.two, { pumpId: ids.pumpB, ...(shift.shiftId === undefined ? {} : { shiftId: shift.shiftId }) }),
  fitted(ids.two),
  putOn(from, ids.two),
  stopped(to, min, ids.two),
  flow('f00000000012', 'after', '23:30', 2, { pumpId: ids.pumpB, ...shift }),
  result(massUg, { sampleId: ids.two }),
];

describe('hours that arrive by correction or from two hands', () => {
  const corrected = (path: string, old: unknown, now: unknown) => {
    const entries = journal(soundDay(24), phone);
    const stated = entries.find(({ text }) => text.includes('"workHoursStated.v1"'))?.id ?? '';
    return dayFrom([...entries, ...journal([corrects(stated, path, old, now, null, [workdayKey])], office)]);
  };

  it('a piece of work that ends before it starts does not vanish: the hours are not known', () => {
    const day = corrected('/pieces/0/endedAt', at('20:00'), at('10:00'));
    expect(keysOf(day.blocksBelow)).toContain('hoursContradict');
    expect(standing(day, 'actionLevel').crossed).toBe('unresolved');
  });

  it('two pieces at one time hide hours that were worked at another', () => {
    const both = [piece('12:00', '20:00'), piece('14:00', '18:00', { employer: 'Sash Hire' })];
    const day = corrected('/pieces', [piece('12:00', '20:00')], both);
    expect(keysOf(day.blocksBelow)).toContain('hoursContradict');
    // each minute once
    expect(day.hoursWorked?.estimate).toEqual({ kind: 'exact', value: 8 });
  });

  it('hours that end long before the pump was stopped are contradicted by it', () => {
    const day = dayOf(withHours(soundDay(24), hours(piece('12:00', '13:00')), asked()));
    expect(keysOf(day.blocksBelow)).toContain('hoursContradict');
    const minutes = dayOf(withHours(soundDay(24), hours(piece('12:00', '19:55')), asked()));
    expect(keysOf(minutes.blocksBelow)).toEqual([]);
    expect(keysOf(minutes.reasons)).toContain('sampledOutsideHours');
  });

  it('a call-out and a second site are not both shown by one piece of work', () => {
    const elsewhere = piece('21:00', '22:00', { place: 'Town hall' });
    const away = explains('21:00', '22:00', 'away');
    const one = [hours(piece('12:00', '20:00'), elsewhere), away, asked({ callOut: 'yes', secondSite: 'yes' })];
    expect(keysOf(dayOf(withHours(soundDay(24), ...one)).blocksBelow)).toEqual(['otherWorkWithoutHours']);
    const two = [
      hours(piece('12:00', '20:00'), elsewhere, piece('22:00', '23:00', { place: 'Bridge' })),
      explains('21:00', '23:00', 'away'),
      asked({ callOut: 'yes', secondSite: 'yes' }),
    ];
    expect(keysOf(dayOf(withHours(soundDay(24), ...two)).blocksBelow)).toEqual([]);
  });

  it('hours at a second employer do not show a second site', () => {
    const stated = [
      hours(piece('12:00', '20:00'), piece('21:00', '22:00', { place: 'Mill', employer: 'Sash Hire' })),
      explains('21:00', '22:00', 'away'),
      asked({ secondSite: 'yes', secondEmployer: 'yes' }),
    ];
    expect(keysOf(dayOf(withHours(soundDay(24), ...stated)).blocksBelow)).toEqual(['otherWorkWithoutHours']);
  });
});

describe('minutes that two hands explain', () => {
  const long = withHours(soundDay(24), hours(piece('12:00', '22:00')), asked());

  it('away on one device, the same as the sample on another: the careful one stands, whoever wrote last', () => {
    const [away, same] = [explains('20:00', '22:00', 'away'), explains('20:00', '22:00', 'sameAs')];
    for (const [first, last] of [
      [away, same],
      [same, away],
    ] as const) {
      const day = dayFrom([...journal([...long, first], phone), ...journal([last], office)]);
      // 25 × 600 / 480
      expect(day.twa8?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(31.25, 9) });
      expect(standing(day, 'actionLevel').crossed).toBe('yes');
      expect(keysOf(day.blocksBelow)).toEqual(['explanationsDiffer']);
    }
  });

  it('said alike by both, or put right by the same hand: no doubt', () => {
    const away = explains('20:00', '22:00', 'away');
    expect(keysOf(dayFrom([...journal([...long, away], phone), ...journal([away], office)]).blocksBelow)).toEqual([]);
    const again = dayOf([...long, explains('20:00', '22:00', 'unknown'), away]);
    expect(keysOf(again.blocksBelow)).toEqual([]);
  });
});

describe('two samples of one worker at one time', () => {
  it('count each minute once, the higher of the two, and are a reason', () => {
    const day = dayOf([...soundDay(24), ...second('14:00', '18:00', 240, 19.2)]);
    // 25 for 240 min, 40 for 240 min: 32.5
    expect(day.twa8?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(32.5, 9) });
    expect(day.hoursWorked?.estimate).toEqual({ kind: 'exact', value: 8 });
    expect(keysOf(day.blocksBelow)).toEqual(['samplesOverlap']);
    expect(standing(day, 'actionLevel').crossed).toBe('yes');
  });

  it('of a bounded and a measured one the blocked day says nothing low', () => {
    const low = second('12:00', '20:00', 480, 0).map((fact) =>
      fact.kind === 'resultReceived.v1' ? result({ lessThanUg: 40 }, { sampleId: ids.two }) : fact,
    );
    expect(standing(dayOf([...soundDay(24), ...low]), 'actionLevel').crossed).toBe('unresolved');
  });
});

describe('one pump on two workers at one time', () => {
  it('came from two hands: neither sample says anything low', () => {
    const [ben] = [prepared(ids.two, { workerId: ids.ben })];
    const onBen = [ben, fitted(ids.two), putOn('14:00', ids.two), stopped('18:00', 240, ids.two)];
    expect(keysOf(dayOf([...soundDay(24), ...onBen]).blocksBelow)).toEqual(['pumpOnAnother']);
  });
});

describe('shifts over midnight and clock changes', () => {
  // New York: clocks went back on 1 November 2026 at 06:00 UTC and go forward on 14 March 2027 at 07:00 UTC
  it.each([
    ['clocks go back', '2026-11-01T02:00:00.000Z', '2026-11-01T11:00:00.000Z', 540],
    ['clocks go forward', '2027-03-14T03:00:00.000Z', '2027-03-14T11:00:00.000Z', 480],
  ])('22:00 (or 23:00) to 06:00 (or 07:00) by the wall while %s: real minutes', (_, from, to, min) => {
    const facts = [
      ...registers(),
      flow('f00000000001', 'before', from, 2),
      prepared(),
      fitted(),
      putOn(from),
      stopped(to, min),
      flow('f00000000002', 'after', to, 2),
      hours(piece(from, to)),
      asked(),
      regular(),
      result(24),
    ];
    const day = dayOf(facts);
    expect(day.hoursWorked?.estimate).toEqual({ kind: 'exact', value: min / 60 });
    expect(day.twa8?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(25, 9) });
    expect(day.unknownMin).toBe(0);
  });

  it('a long shift: h counts the minutes away too, and TWA8 is not held against 400 / h', () => {
    const day = dayOf(
      withHours(soundDay(40), hours(piece('12:00', '22:00')), asked(), explains('20:00', '22:00', 'away')),
    );
    // 40 µg / (0.48 × 2) = 41.67 over 8 h; average over 10 h 33.33, allowed 40
    expect(day.hoursWorked?.estimate).toEqual({ kind: 'exact', value: 10 });
    expect(day.twa8?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(41.6667, 3) });
    expect(day.shiftAverage?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(33.3333, 3) });
    expect(day.allowableAverage?.estimate).toEqual({ kind: 'exact', value: 40 });
    expect(standing(day, 'pel')).toMatchObject({ verdict: 'below', crossed: 'no' });
    expect(standing(day, 'actionLevel').crossed).toBe('yes');
    expect(day.shiftComparison?.crossed).toBe('no');
  });
});

describe('whose rule', () => {
  const inCalifornia = 's00000000002';
  const shiftThere = `${inCalifornia}.2026-11-25`;
  const thereToo = [
    site({ siteId: inCalifornia, stateCode: 'CA' }),
    wanted('shiftOpened.v1', { shiftId: shiftThere, siteId: inCalifornia, workOn: '2026-11-25' }),
  ];

  it('a day at sites of two states is held against the lower limits, in whichever order the sites were visited', () => {
    const day = dayOf([
      ...withHours(soundDay(5), hours(piece('12:00', '22:00')), asked()),
      ...thereToo,
      ...second('20:00', '22:00', 120, 0.6, { shiftId: shiftThere }),
    ]);
    // 8 CCR 1532.1 (READ): action level 2. 5 / 0.96 + 0.6 / 0.96 = 5.83
    expect(standing(day, 'actionLevel').limit.value).toBe(2);
    expect(standing(day, 'actionLevel').crossed).toBe('yes');
    expect(day.ruleHeld).toBe(false);
    expect(keysOf(day.blocksBelow)).toContain('statesDiffer');
  });

  it('a state that nobody knows: the site is not in the book, so nothing is relaxed and no duties are listed', () => {
    const day = dayOf(soundDay(24).filter(({ kind }) => kind !== 'siteAdded.v1'));
    expect(day.ruleHeld).toBe(false);
    expect(keysOf(day.blocksBelow)).toContain('stateNotKnown');
    const odd = dayOf(soundDay(24).map((f) => (f.kind === 'siteAdded.v1' ? site({ stateCode: 'ZZ' }) : f)));
    expect(keysOf(odd.blocksBelow)).toContain('stateNotKnown');
  });
});

describe('at the limit', () => {
  const withWall = (massUg: number, wallDeposit: 'yes' | 'no') =>
    dayOf(soundDay(24).map((f) => (f.kind === 'resultReceived.v1' ? result(massUg, { wallDeposit }) : f)));

  it('exactly at the PEL without the wall deposit is at or above it, never *not above*', () => {
    expect(standing(withWall(48, 'yes'), 'pel')).toMatchObject({ verdict: 'exactlyAt', crossed: 'no' });
    const open = standing(withWall(48, 'no'), 'pel');
    expect(open).toMatchObject({ verdict: 'atOrAbove', crossed: 'unresolved', atOrAbove: 'yes' });
    expect(keysOf(open.why)).toEqual(['wallDepositCouldMatter']);
  });

  it("with the laboratory's error the minutes like a sample err as the sample does, not by chance", () => {
    const half = [
      ...registers(),
      flow('f00000000001', 'before', '11:40', 2),
      prepared(),
      fitted(),
      putOn('12:00'),
      stopped('16:00', 240),
      flow('f00000000002', 'after', '20:10', 2),
      hours(piece('12:00', '20:00')),
      explains('16:00', '20:00', 'sameAs'),
      asked(),
      regular(),
      result(12.48, { saeFraction: 0.2 }),
    ];
    // 26 for all 480 min: Y = 0.8667, E = 0.2 × 26 / 30 = 0.1733: 1.04. Of two samples by chance it would be 0.1226: 0.989
    expect(standing(dayOf(half), 'actionLevel')).toMatchObject({ confidence: 'possiblyAbove', verdict: 'below' });
  });

  it('what the unknown minutes must average is reckoned from the figure that judges', () => {
    const facts = withHours(soundDay(24), hours(piece('12:00', '22:00')), asked()).map((fact) =>
      fact.kind === 'flowChecked.v1' && fact.body.purpose === 'after'
        ? flow('f00000000002', 'after', '20:10', 1.84)
        : fact,
    );
    // lower flow 1.84: 24 / (0.48 × 1.84) = 27.174; (30 − 27.174) × 480 / 120 = 11.30
    expect(standing(dayOf(facts), 'actionLevel').unknownWouldReach?.estimate).toEqual({
      kind: 'exact',
      value: expect.closeTo(11.304, 3),
    });
  });
});
