/**
 * 29 CFR 1926.62(b), (c), (d)(1): where a worker's day stands for duties. Masses are made by hand from m = C V (2 L/min over the minutes
 * worn); averages of long and short days by TWA8 = C t / 480. Limits 30 and 50 of the regulation sheet A1.
 */
import { describe, expect, it } from 'vitest';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { Book, ReportedRecord } from '#records/book.ts';
import { base, factId, siteId } from '../sliceRegisters.ts';
import { explained, interval, result } from '../slices.ts';
import { jobBook, massUgFor, tess, workdayIdOf } from './jobBook.ts';

const workOn = '2026-03-02';
const id = workdayIdOf(tess, workOn);
const at = (time: string): string => `${workOn}T${time}:00.000Z`;
const only = (book: Book, which = id): Measurement => {
  const found = measurementsOf(book).get(which);
  if (!found) throw new Error('not measured');
  return found;
};
const measured = (averageUgPerM3: number, more: object = {}): Measurement =>
  only(jobBook({ days: [{ workOn, averageUgPerM3, ...more }] }));

/** One cassette from 13:00 for so many minutes, all of the hours worked, with the flow after at its end. */
function longDay(concentrationUgPerM3: number, minutes: number, endsAt: string): Measurement {
  const massUg = (concentrationUgPerM3 * 2 * minutes) / 1000;
  const moment = { at: endsAt, entry: 'tapped' as const, factId: factId() };
  const day = {
    ...{ workOn, averageUgPerM3: 0 },
    sample: {
      results: [{ ...result(massUg), sampleId: 'c1' }],
      stopped: { ...moment, pumpMin: minutes },
      intervals: [interval(at('13:00'), endsAt)],
    },
    workday: { pieces: [{ startedAt: at('13:00'), endedAt: endsAt, place: null, employer: null }] },
  };
  const book = jobBook({ days: [day] });
  const atEnd = [...book.flowChecks.values()].map((one) =>
    one.purpose === 'after' ? { ...one, happened: { ...one.happened, at: endsAt } } : one,
  );
  return only({ ...book, flowChecks: new Map(atEnd.map((one) => [one.id, one])) });
}

describe('(b), (c)(1): below, exactly at, above, and one part in a thousand to either side', () => {
  const cases = [
    [29, 'belowActionLevel', true, true, 'no'],
    [29.97, 'belowActionLevel', true, true, 'no'],
    [30, 'actionLevelToPel', false, true, 'no'],
    [30.03, 'actionLevelToPel', false, true, 'no'],
    [49.95, 'actionLevelToPel', false, true, 'no'],
    [50, 'actionLevelToPel', false, true, 'yes'],
    [50.05, 'abovePel', false, false, 'yes'],
    [120, 'abovePel', false, false, 'yes'],
  ] as const;
  for (const [average, band, below, notAbove, atOrAbovePel] of cases)
    it(`${average}: ${band}; at or above the PEL: ${atOrAbovePel}`, () => {
      expect(measured(average)).toMatchObject({
        band,
        provesBelowActionLevel: below,
        provesNotAbovePel: notAbove,
        atOrAbovePel,
        blocks: [],
        resultOwed: false,
      });
    });
});

describe('the day as it was worked', () => {
  it('10 hours at 39 make 48.75: to the PEL; at 41 they make 51.25: above', () => {
    // 39 × 600 / 480 and 41 × 600 / 480
    expect(longDay(39, 600, at('23:00')).band).toBe('actionLevelToPel');
    expect(longDay(41, 600, at('23:00')).band).toBe('abovePel');
  });
  it('12 hours at 20 make 30: the action level is reached', () => {
    expect(longDay(20, 720, '2026-03-03T01:00:00.000Z').band).toBe('actionLevelToPel');
  });
  it('a call-out that nobody sampled leaves the day open, however low the rest is', () => {
    const day = measured(20, {
      workday: {
        pieces: [
          { startedAt: at('13:00'), endedAt: at('21:00'), place: null, employer: null },
          { startedAt: at('22:00'), endedAt: at('23:00'), place: 'bridge', employer: null },
        ],
        otherWork: { workdayId: id, callOut: 'yes', secondSite: 'no', secondEmployer: 'no' },
      },
    });
    expect(day).toMatchObject({ band: 'open', provesBelowActionLevel: false });
  });
});

describe('bounds: duties run on the larger of point value and upper bound', () => {
  it('between 0 and 35 runs as 35; between 0 and 29 proves below', () => {
    const lessThan = (averageUgPerM3: number) => ({
      sample: { results: [{ ...result({ lessThanUg: massUgFor(averageUgPerM3) }), sampleId: 'c1' }] },
    });
    expect(measured(0, lessThan(35))).toMatchObject({ band: 'actionLevelToPel', provesBelowActionLevel: false });
    expect(measured(0, lessThan(29))).toMatchObject({ band: 'belowActionLevel', provesBelowActionLevel: true });
    expect(measured(0, lessThan(51))).toMatchObject({ band: 'abovePel', atOrAbovePel: 'unresolved' });
  });
  it('a void sample keeps what it shows: 35 and 60 stay, 20 is open and proves nothing', () => {
    const voided = { sample: { voided: { why: 'found open', factId: factId() } } };
    expect(measured(60, voided)).toMatchObject({ band: 'abovePel', atLeastOnly: true, atOrAbovePel: 'yes' });
    expect(measured(35, voided)).toMatchObject({ band: 'actionLevelToPel', provesNotAbovePel: false });
    expect(measured(20, voided)).toMatchObject({ band: 'open', atLeastOnly: true, provesBelowActionLevel: false });
    expect(measured(20, voided).receipts).toHaveLength(1);
  });
  it('a void takes the six months of a bounded result away no more than any other duty', () => {
    const day = measured(0, {
      sample: {
        results: [{ ...result({ lessThanUg: massUgFor(35) }), sampleId: 'c1' }],
        voided: { why: 'found open', factId: factId() },
      },
    });
    expect(day.band).toBe('actionLevelToPel');
  });
  it('without a flow after, only at least: 20 is open', () => {
    expect(measured(20, { flowAfter: false })).toMatchObject({ band: 'open', atLeastOnly: true });
  });
});

describe('(d)(1)(iii), (iv): what proves nothing low', () => {
  it('a result that is owed', () => {
    const day = only(jobBook({ days: [{ workOn, averageUgPerM3: null }] }));
    expect(day).toMatchObject({ band: 'open', resultOwed: true, receipts: [], provesBelowActionLevel: false });
  });
  it('a day that was not the regular one, or of which nobody said', () => {
    for (const regular of ['no', null] as const)
      expect(measured(20, { regular })).toMatchObject({ band: 'belowActionLevel', provesBelowActionLevel: false });
    expect(measured(60, { regular: 'no' }).band).toBe('abovePel');
  });
  it('unknown minutes; explained ones away from the lead area do not count against it', () => {
    const pieces = [{ startedAt: at('13:00'), endedAt: at('22:00'), place: null, employer: null }];
    expect(measured(20, { workday: { pieces } })).toMatchObject({ band: 'open' });
    const away = [explained(at('21:00'), at('22:00'), 'away', { workdayId: id })];
    expect(measured(20, { workday: { pieces, explained: away } })).toMatchObject({ provesBelowActionLevel: true });
  });
  it('a cassette that was never put on is no measurement', () => {
    const days = [{ workOn, averageUgPerM3: null, sample: { putOn: null, stopped: null, intervals: [] } }];
    expect(measurementsOf(jobBook({ days })).size).toBe(0);
  });
});

const reported = (more: Partial<ReportedRecord> = {}): ReportedRecord => ({
  ...base('reported', 'r00000000001'),
  ...{ reportedId: 'r00000000001', from: 'inspector', fromName: 'Inspector', reportNumber: 'I-1', workerId: tess },
  ...{ siteId, setting: 'indoors', workOn, receivedOn: '2026-03-20', taskIds: ['handScraping'] },
  ...{ jobClassificationId: null, average: { kind: 'measured', twa8UgPerM3: 20 }, workedHours: 8 },
  ...{ fullShift: 'yes', ownFirm: 'yes', accuracy: 'yes', remark: null, reportedFactId: factId() },
  ...more,
});
const averageOf = (twa8UgPerM3: number) => ({ average: { kind: 'measured', twa8UgPerM3 } as const });

describe('a measurement that was reported to us', () => {
  const alone = (more: Partial<ReportedRecord>) => only(jobBook({ reported: [reported(more)] }), 'r00000000001');
  it('proves below only for a full shift of our own by an accurate method', () => {
    expect(alone({})).toMatchObject({ band: 'belowActionLevel', provesBelowActionLevel: true, blocks: [] });
    for (const what of ['fullShift', 'accuracy', 'ownFirm'] as const)
      for (const said of ['no', 'notStated'] as const)
        expect(alone({ [what]: said }).provesBelowActionLevel).toBe(false);
    expect(alone({ workerId: null }).provesBelowActionLevel).toBe(false);
  });
  it('high stays high, whatever is not stated', () => {
    const doubtful = { ...averageOf(60), fullShift: 'notStated', accuracy: 'notStated', ownFirm: 'no' } as const;
    expect(alone(doubtful)).toMatchObject({ band: 'abovePel', atOrAbovePel: 'yes' });
  });
  it("an inspector's of the same worker and day: the higher judges both", () => {
    const both = (ours: number, theirs: number) => {
      const book = jobBook({ days: [{ workOn, averageUgPerM3: ours }], reported: [reported(averageOf(theirs))] });
      return [only(book), only(book, 'r00000000001')] as const;
    };
    for (const pair of [both(20, 60), both(60, 20)])
      for (const one of pair)
        expect(one).toMatchObject({ band: 'abovePel', provesBelowActionLevel: false, provesNotAbovePel: false });
    expect(both(20, 60)[0]).toMatchObject({ judgedById: 'r00000000001', twa8UgPerM3: { value: 60 } });
    expect(both(20, 22).every((one) => one.provesBelowActionLevel)).toBe(true);
  });
  it('ours still owed beside it leaves both open', () => {
    const book = jobBook({ days: [{ workOn, averageUgPerM3: null }], reported: [reported()] });
    expect([only(book), only(book, 'r00000000001')].map(({ band }) => band)).toEqual(['open', 'open']);
  });
});

describe("the firm's own stricter limits", () => {
  const limits = { besideIds: [], ownActionLevelUgPerM3: 20, ownPelUgPerM3: null, factId: factId() };
  it('tighten the band, say what the rule alone gives, and never relax', () => {
    const book = (averageUgPerM3: number, own = limits) => {
      const made = jobBook({ days: [{ workOn, averageUgPerM3 }] });
      return { ...made, book: made.book && { ...made.book, limits: own } };
    };
    expect(only(book(25))).toMatchObject({
      band: 'actionLevelToPel',
      provesBelowActionLevel: false,
      byRule: { band: 'belowActionLevel', provesBelowActionLevel: true },
    });
    expect(only(book(19)).byRule).toBeUndefined();
    expect(only(book(35, { ...limits, ownActionLevelUgPerM3: 40 })).band).toBe('actionLevelToPel');
  });
});
