/** One worker's day: 29 CFR 1926.62(b), (c) and the vectors of the regulation sheet, F "test vectors", each worked by hand. */
import { describe, expect, it } from 'vitest';
import { upperOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import type { Book } from '#records/book.ts';
import { at, site, workdayId } from './sliceRegisters.ts';
import { check, explained, result, sample, slice, workday } from './slices.ts';

const exact = (term: Term | null): number => {
  if (term?.estimate.kind !== 'exact') throw new Error(`not one number: ${JSON.stringify(term?.estimate)}`);
  return term.estimate.value;
};
const found = (book: Book): WorkdayFinding => findWorkday(workdayId, book);
const at2 = (day: WorkdayFinding, which: 'actionLevel' | 'pel') => {
  const standing = day.standings.find((one) => one.which === which);
  if (!standing) throw new Error(`no standing at ${which}`);
  return standing;
};
const keys = (reasons: readonly { readonly key: string }[]): string[] => reasons.map(({ key }) => key);

/** Mass that makes `c` µg/m³ over `min` minutes at 2 L/min: c × 0.002 × min. */
const massFor = (c: number, min: number): number => (c * 2 * min) / 1000;
/** One sample over the whole of so many minutes from 07:00, all of it worked. */
const wholeDay = (c: number, endsAt: string, min: number): Book =>
  slice({ samples: [sample('07:00', endsAt, [result(massFor(c, min))])], day: workday([['07:00', endsAt]]) });

describe('29 CFR 1926.62(b), (c)(1), (c)(2): the hand-worked days of the regulation sheet', () => {
  it('45 for 600 min: average 45, allowed 40, TWA8 56.25: above the PEL', () => {
    const day = found(wholeDay(45, '17:00', 600));
    expect(exact(day.shiftAverage)).toBeCloseTo(45, 9);
    expect(exact(day.allowableAverage)).toBeCloseTo(40, 9);
    expect(exact(day.twa8)).toBeCloseTo(56.25, 9);
    expect(at2(day, 'pel')).toMatchObject({ verdict: 'above', crossed: 'yes' });
    expect(day.shiftComparison?.crossed).toBe('yes');
  });

  it('39 for 600 min: TWA8 48.75: reaches the action level, not above the PEL', () => {
    const day = found(wholeDay(39, '17:00', 600));
    expect(exact(day.twa8)).toBeCloseTo(48.75, 9);
    expect(at2(day, 'pel')).toMatchObject({ verdict: 'below', crossed: 'no', atOrAbove: 'no' });
    expect(at2(day, 'actionLevel')).toMatchObject({ verdict: 'above', crossed: 'yes' });
    expect(day.shiftComparison?.crossed).toBe('no');
  });

  it('41 for 600 min: TWA8 51.25: above the PEL', () => {
    const day = found(wholeDay(41, '17:00', 600));
    expect(exact(day.twa8)).toBeCloseTo(51.25, 9);
    expect(at2(day, 'pel').crossed).toBe('yes');
  });

  it('28 for 600 min: the action level is held against TWA8, 35, and is reached; it is not adjusted', () => {
    const day = found(wholeDay(28, '17:00', 600));
    expect(exact(day.twa8)).toBeCloseTo(35, 9);
    expect(at2(day, 'actionLevel').crossed).toBe('yes');
  });

  it('120 for 120 min and away for 360: TWA8 exactly 30: at the action level, which counts as reaching it', () => {
    const day = found(
      slice({
        samples: [sample('07:00', '09:00', [result(massFor(120, 120))])],
        day: workday([['07:00', '15:00']], { explained: [explained('09:00', '15:00', 'away')] }),
      }),
    );
    expect(exact(day.twa8)).toBeCloseTo(30, 12);
    expect(at2(day, 'actionLevel')).toMatchObject({ verdict: 'exactlyAt', crossed: 'yes' });
    expect(at2(day, 'pel')).toMatchObject({ verdict: 'below', crossed: 'no' });
    expect(day.segments.map(({ as, durationMin }) => [as, durationMin])).toEqual([
      ['sampled', 120],
      ['away', 360],
    ]);
  });

  it('(d)(8)(ii): 50 for 480 min: exactly at the PEL, not above it, and the notice must say at or above', () => {
    const day = found(wholeDay(50, '15:00', 480));
    expect(at2(day, 'pel')).toMatchObject({ verdict: 'exactlyAt', crossed: 'no', atOrAbove: 'yes' });
    expect(day.allowableAverage).toBeNull();
  });

  it('200 for 60 min and 20 for 420: TWA8 42.5', () => {
    const checks = [
      check('f00000000001', 'before', '06:40', 2),
      check('f00000000002', 'between', '08:00', 2),
      check('f00000000003', 'after', '15:10', 2),
    ];
    const day = found(
      slice({
        checks,
        samples: [
          sample('07:00', '08:00', [result(massFor(200, 60))], { id: 'c00000000001' }),
          sample('08:00', '15:00', [result(massFor(20, 420))], { id: 'c00000000002', sampleNumber: '120027' }),
        ],
      }),
    );
    expect(exact(day.twa8)).toBeCloseTo(42.5, 9);
    // 120 L is less than the 200 L of NIOSH 7082: its high figure stands, but nothing low may be said of the day
    expect(keys(day.blocksBelow)).toContain('volumeBelowMethod');
    expect(at2(day, 'actionLevel').crossed).toBe('yes');
    expect(at2(day, 'pel')).toMatchObject({ verdict: 'unresolved', crossed: 'unresolved' });
  });

  it('methods C15 (READ-2): 1.700 and 1.715 L/min, 720 min, 44 µg: 1.7075, 1229.4 L, 35.79, TWA8 53.68, allowed 33.33', () => {
    const day = found(
      slice({
        checks: [check('f00000000001', 'before', '05:40', 1.7), check('f00000000002', 'after', '18:10', 1.715)],
        samples: [sample('06:00', '18:00', [result(44)])],
        day: workday([['06:00', '18:00']]),
      }),
    );
    const [only] = day.samples;
    expect(exact(only?.averageFlow ?? null)).toBeCloseTo(1.7075, 10);
    expect(exact(only?.volume ?? null)).toBeCloseTo(1229.4, 6);
    // 44 000 / 1229.4 = 35.7898
    expect(exact(only?.concentration ?? null)).toBeCloseTo(35.7898, 3);
    // 44 / (0.48 × 1.7075) = 53.685
    expect(exact(day.twa8)).toBeCloseTo(53.685, 2);
    expect(exact(only?.twaShare ?? null)).toBeCloseTo(exact(day.twa8), 9);
    expect(exact(day.allowableAverage)).toBeCloseTo(33.333333, 5);
    expect(at2(day, 'pel').crossed).toBe('yes');
    expect(day.shiftComparison?.crossed).toBe('yes');
  });
});

describe('design 4, item 6: minutes that nobody sampled', () => {
  const half = (more: Parameters<typeof workday>[1] = {}, c = 40): Book =>
    slice({
      samples: [sample('07:00', '11:00', [result(massFor(c, 240))])],
      day: workday([['07:00', '15:00']], more),
    });

  it('unknown minutes leave an at-least figure and say what average would reach each limit', () => {
    const day = found(half());
    expect(day.twa8?.estimate).toEqual({ kind: 'atLeast', lower: expect.closeTo(20, 9) });
    expect(day.unknownMin).toBe(240);
    // (30 - 20) × 480 / 240 = 20; (50 - 20) × 480 / 240 = 60
    expect(exact(at2(day, 'actionLevel').unknownWouldReach)).toBeCloseTo(20, 9);
    expect(exact(at2(day, 'pel').unknownWouldReach)).toBeCloseTo(60, 9);
    expect(at2(day, 'pel')).toMatchObject({ verdict: 'atLeastBelow', crossed: 'unresolved' });
  });

  it('unknown minutes never block at or above', () => {
    const day = found(half({}, 130));
    // 130 × 240 / 480 = 65 at least
    expect(at2(day, 'pel')).toMatchObject({ verdict: 'above', crossed: 'yes' });
  });

  it('the same as the sample, with a reason: 40 all day', () => {
    const said = explained('11:00', '15:00', 'sameAs', { sampleId: 'c00000000001', reason: 'same sashes, same tools' });
    const day = found(half({ explained: [said] }));
    expect(exact(day.twa8)).toBeCloseTo(40, 9);
    expect(at2(day, 'pel').verdict).toBe('below');
  });

  it('away or same without a reason counts as unknown', () => {
    for (const as of ['away', 'sameAs'] as const) {
      const day = found(
        half({ explained: [explained('11:00', '15:00', as, { sampleId: 'c00000000001', reason: null })] }),
      );
      expect(day.unknownMin).toBe(240);
      expect(day.twa8?.estimate.kind).toBe('atLeast');
    }
  });

  it('hours not stated, or other work not asked about: the figure stands, below is not said', () => {
    for (const more of [{ pieces: null }, { otherWork: null }]) {
      const book = slice({
        samples: [sample('07:00', '15:00', [result(massFor(10, 480))])],
        day: workday([['07:00', '15:00']], more),
      });
      const day = found(book);
      expect(exact(day.twa8)).toBeCloseTo(10, 9);
      expect(at2(day, 'actionLevel')).toMatchObject({ verdict: 'unresolved', crossed: 'unresolved' });
    }
  });

  it('a second employer whose hours nobody wrote down blocks below', () => {
    const otherWork = { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'yes' } as const;
    const day = found(
      slice({
        samples: [sample('07:00', '15:00', [result(massFor(10, 480))])],
        day: workday([['07:00', '15:00']], { otherWork }),
      }),
    );
    expect(keys(at2(day, 'actionLevel').why)).toEqual(['otherWorkWithoutHours']);
  });

  it('a result that is not in leaves its minutes open', () => {
    const day = found(slice({ samples: [sample('07:00', '15:00', [])] }));
    expect(day.awaitedMin).toBe(480);
    expect(day.twa8?.estimate).toEqual({ kind: 'atLeast', lower: 0 });
    expect(keys(day.reasons)).toContain('resultAwaited');
    // an average of 30 over all 480 min reaches the action level
    expect(exact(at2(day, 'actionLevel').unknownWouldReach)).toBeCloseTo(30, 9);
  });

  it('a day over midnight counts its real minutes', () => {
    const [from, to] = ['2026-11-25T22:00:00.000Z', '2026-11-26T06:00:00.000Z'];
    const checks = [
      check('f00000000001', 'before', at('21:40'), 2),
      check('f00000000002', 'after', '2026-11-26T06:10:00.000Z', 2),
    ];
    const day = found(
      slice({ checks, samples: [sample(from, to, [result(massFor(20, 480))])], day: workday([[from, to]]) }),
    );
    expect(exact(day.hoursWorked)).toBe(8);
    expect(exact(day.twa8)).toBeCloseTo(20, 9);
  });
});

describe('methods D3, D5: less than is carried as bounds from mass to verdict', () => {
  it('240 min below 4.2 and 240 min at 38: TWA8 19.0 to 21.1', () => {
    const checks = [
      check('f00000000001', 'before', '06:40', 2),
      check('f00000000002', 'between', '11:00', 2),
      check('f00000000003', 'after', '15:10', 2),
    ];
    const day = found(
      slice({
        checks,
        samples: [
          sample('07:00', '11:00', [result({ lessThanUg: massFor(4.2, 240) })]),
          sample('11:00', '15:00', [result(massFor(38, 240))], { id: 'c00000000002', sampleNumber: '120027' }),
        ],
      }),
    );
    expect(day.twa8?.estimate).toEqual({
      kind: 'between',
      lower: expect.closeTo(19, 9),
      upper: expect.closeTo(21.1, 9),
    });
    expect(at2(day, 'actionLevel').verdict).toBe('below');
  });

  it('bounds that straddle the action level are not settled', () => {
    const day = found(slice({ samples: [sample('07:00', '15:00', [result({ lessThanUg: massFor(35, 480) })])] }));
    expect(upperOf(day.twa8?.estimate ?? { kind: 'atLeast', lower: 0 })).toBeCloseTo(35, 9);
    expect(at2(day, 'actionLevel')).toMatchObject({ verdict: 'unresolved', crossed: 'unresolved' });
    expect(at2(day, 'pel').verdict).toBe('below');
  });
});

describe('methods A3 (Ceballos 2015, READ): deposit on the wall stays an open reason where it could matter', () => {
  const withWall = (c: number, wallDeposit: 'yes' | 'no' | 'notStated') =>
    found(slice({ samples: [sample('07:00', '15:00', [result(massFor(c, 480), { wallDeposit })])] }));

  it('14 with up to 54 % on the wall is 14 / 0.46 = 30.4: not settled at 30; settled at 50', () => {
    for (const wallDeposit of ['no', 'notStated'] as const) {
      const day = withWall(14, wallDeposit);
      expect(at2(day, 'actionLevel').verdict).toBe('unresolved');
      expect(keys(at2(day, 'actionLevel').why)).toEqual(['wallDepositCouldMatter']);
      expect(at2(day, 'pel').verdict).toBe('below');
    }
  });

  it('13 / 0.46 = 28.3 cannot reach 30, and included deposit leaves nothing open', () => {
    expect(at2(withWall(13, 'notStated'), 'actionLevel').verdict).toBe('below');
    expect(at2(withWall(29, 'yes'), 'actionLevel').verdict).toBe('below');
  });
});

describe('design 5: a site has a state', () => {
  it('California: its own limits, and no list of duties because the rule is not held complete', () => {
    const book = slice({
      samples: [sample('07:00', '15:00', [result(massFor(5, 480))])],
      site: site({ stateCode: 'CA' }),
    });
    const day = found(book);
    expect(day.ruleHeld).toBe(false);
    // 8 CCR 1532.1 (READ): action level 2, limit 10
    expect(at2(day, 'actionLevel').limit.value).toBe(2);
    expect(at2(day, 'actionLevel').crossed).toBe('yes');
    expect(keys(day.reasons)).toContain('stateRuleNotHeld');
  });
});

describe('confidence: with the error that the laboratory gave (Boss & Day 4.6.1)', () => {
  it('27 with an error of 0.2 may reach 30; it adds a caution and changes no verdict', () => {
    const day = (saeFraction: number | null) =>
      found(slice({ samples: [sample('07:00', '15:00', [result(massFor(27, 480), { saeFraction })])] }));
    // Y = 0.9, E = 0.2 × 27 / 30 = 0.18, UCL 1.08
    expect(at2(day(0.2), 'actionLevel')).toMatchObject({ verdict: 'below', confidence: 'possiblyAbove' });
    expect(keys(at2(day(0.2), 'actionLevel').notes)).toEqual(['saeReachesLimit']);
    expect(at2(day(null), 'actionLevel')).toMatchObject({ verdict: 'below', confidence: 'notGiven' });
  });
});
