/** The careful side of the season ahead, against what would make a prediction lower, a slot done or a need smaller than it is. */
import { describe, expect, it } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import { type DayAheadInput, dayAhead } from '#findings/season/dayAhead.ts';
import { planStanding } from '#findings/season/plan.ts';
import { type SampleAheadInput, sampleAhead } from '#findings/season/sampleAhead.ts';
import type { Book, PlanRecord } from '#records/book.ts';
import { type Day, type Job, jobBook, reported, tess, worked } from '../duties/jobBook.ts';
import { doubt, settled } from '../gear/gearFacts.ts';
import { base, factId, lot, lotId } from '../sliceRegisters.ts';
import { plan, seasonOf } from './seasonBook.ts';

const today = '2026-12-20';
const day = (workOn: string, averageUgPerM3: number, more: Partial<Day> = {}): Day => ({
  workOn,
  averageUgPerM3,
  ...more,
});
const piece = [{ taskIds: ['handScraping'], durationMin: 480 }];

function predict(job: Job, more: Partial<DayAheadInput> = {}, changed: (book: Book) => Book = (book) => book) {
  const book = changed(jobBook(job));
  return dayAhead({ pieces: piece, stateCode: 'TX', on: today, ...more }, book, findDuties(book, today));
}
const upperOf = (found: ReturnType<typeof predict>): number => found.upperUgPerM3 ?? Number.POSITIVE_INFINITY;

describe('a prediction is not lower than what was seen', () => {
  const sound = [day('2026-11-10', 8), day('2026-11-11', 12)];

  it('a day of like work that others measured raises it, and bounds nothing by itself', () => {
    const high = reported({ average: { kind: 'measured', twa8UgPerM3: 900 }, from: 'otherEmployer', ownFirm: 'no' });
    expect(upperOf(predict({ days: sound }))).toBeCloseTo(12, 9);
    const found = predict({ days: sound, reported: [high] });
    expect(upperOf(found)).toBeCloseTo(900, 9);
    // 900 is 18 times the PEL of 50: after 10 the next factor of 29 CFR 1910.134 Table 1 is 25
    expect(found.advice.leastApf).toBe(25);
    const alone = predict({ reported: [reported({ average: { kind: 'measured', twa8UgPerM3: 4 } })] });
    expect(alone.pieces[0]?.from).toBe('presumed');
    expect(predict({ days: sound, reported: [high] }, { setting: 'outdoors' }).pieces[0]?.samples).toEqual([]);
  });

  it('a void one that showed at least 9000 asks for its protection', () => {
    const voided = { voided: { why: 'torn hose', factId: factId() } };
    const found = predict({ days: [...sound, day('2026-11-12', 9000, { sample: voided })] });
    expect(found.upperUgPerM3).toBeNull();
    // 9000 is 180 times the PEL of 50: after 50 the next factor is 1000
    expect(found.advice.floorApf).toBeGreaterThanOrEqual(1000);
  });

  it('one at a site that is not in the book may be of this setting', () => {
    const lost = (book: Book): Book => ({ ...book, sites: new Map() });
    expect(upperOf(predict({ days: [day('2026-11-10', 700)] }, { setting: 'indoors' }, lost))).toBeGreaterThanOrEqual(
      700,
    );
  });
});

describe('a place is filled once, and surely', () => {
  const [on, later] = ['2026-11-10', '2026-11-12'];
  const planned = (id: string, workOn: string | null, more: Partial<PlanRecord> = {}): PlanRecord =>
    plan({ ...base('plan', id), planId: id, slots: [{ workerId: tess, workOn }], ...more });
  const states = (job: Job, plans: readonly PlanRecord[]) => {
    const { book, duties } = seasonOf(job, today, plans);
    return plans.map((one) => planStanding(one, book, duties).slots[0]?.state);
  };
  const [a, b] = ['g00000000001', 'g00000000002'];

  it('one measurement does not fill places of two plans on two days', () => {
    expect(states({ days: [day(on, 12)] }, [planned(a, on), planned(b, later)])).toEqual(['done', 'toDo']);
    expect(states({ days: [day(on, 12)] }, [planned(a, later), planned(b, on)])).toEqual(['toDo', 'done']);
    expect(states({ days: [day(on, 12)] }, [planned(a, null), planned(b, null)]).sort()).toEqual(['done', 'toDo']);
    expect(states({ days: [day(on, 12), day(later, 12)] }, [planned(a, null), planned(b, null)])).toEqual([
      'done',
      'done',
    ]);
  });
  it('two plans that name the same day share it; one that was given up takes nothing', () => {
    expect(states({ days: [day(on, 12)] }, [planned(a, on), planned(b, on)])).toEqual(['done', 'done']);
    const dropped = { dropped: { why: 'no job', factId: factId() } };
    expect(states({ days: [day(on, 12)] }, [planned(a, on, dropped), planned(b, later)])[1]).toBe('done');
  });
  it('not by a day that may have been of other work', () => {
    const twice = { worked: [worked(on), { ...worked(on), jobClassificationId: 'k00000000007' }] };
    const job = { days: [day(on, 12, { workday: twice })] };
    const { book, duties } = seasonOf(job, today, [planned(a, on, { jobClassificationId: 'k00000000007' })]);
    const [one] = duties.measurements.values();
    expect(one?.mayBeKeys?.length).toBeGreaterThan(0);
    for (const jobClassificationId of ['k00000000007', 'k00000000008']) {
      const plans = [planned(a, on, { jobClassificationId })];
      expect(states(job, plans)).toEqual(['toDo']);
    }
    expect(planStanding([...book.plans.values()][0] as PlanRecord, book, duties).slots[0]?.why).toBe('otherTasks');
  });
});

describe('a sample ahead promises no less than what it could leave open', () => {
  // NIOSH 7082 (READ): 200 to 1500 L, at most 2 mg of dust on a filter
  const ahead = (more: Partial<SampleAheadInput> = {}) =>
    sampleAhead({
      ...{ methodId: 'niosh-7082', reportingLimitUg: 10, flowLPerMin: 2, shiftMin: 480, cassettesCount: 1 },
      ...{ shareOfActionLevel: 1, dustMgPerM3: null, actionLevelUgPerM3: 30, pelUgPerM3: 50, on: '2026-11-25' },
      ...more,
    });
  it('a filter that is full before the day is over', () => {
    // by hand: 1 x 10 / (0.48 x 2) = 10.4 is under 30. At 5 mg/m3 it is full after 2000 / (2 x 5) = 200 min; 10 x 480 / (0.96 x 200) = 25
    expect(ahead().actionLevel.couldShow).toBe('yes');
    expect(ahead({ dustMgPerM3: 5 }).actionLevel).toMatchObject({
      couldShow: 'withOtherMinutes',
      minutesNeededMin: 167,
    });
    // at 10 mg/m3 after 100 min, which is 50: under neither; and 200 L are just reached
    expect(ahead({ dustMgPerM3: 10 })).toMatchObject({ actionLevel: { couldShow: 'no' }, pel: { couldShow: 'no' } });
    // with three cassettes of 160 min each: 3 x 10.4 = 31.25
    const three = ahead({ dustMgPerM3: 5, cassettesCount: 3 });
    expect([three.actionLevel.couldShow, three.pel.couldShow]).toEqual(['no', 'yes']);
  });
  it('exactly at a level is not below it', () => {
    // 28.8 / (0.48 x 2) = 30
    expect(ahead({ reportingLimitUg: 28.8 }).actionLevel).toMatchObject({ couldShow: 'no', minutesNeededMin: null });
    expect(ahead({ reportingLimitUg: 28.79 }).actionLevel.couldShow).toBe('yes');
    // 14.4 x 480 / (0.96 x 240) = 30: one minute more
    expect(ahead({ reportingLimitUg: 14.4, sampledMin: 240 }).actionLevel).toMatchObject({ minutesNeededMin: 241 });
  });
  it('minutes beyond the shift draw no air for the day', () => {
    expect(ahead({ sampledMin: 900 }).bound).toEqual(ahead().bound);
  });
});

describe('gear found bad afterwards', () => {
  const on = '2026-11-10';
  const one = plan({ slots: [{ workerId: tess, workOn: on }] });
  const job = (settledAs: Parameters<typeof settled>[0] | null): Job => {
    const doubts = [doubt('lot', lotId, { settled: settledAs && settled(settledAs) })];
    return { days: [day(on, 12)], more: { lots: new Map([[lotId, lot({ doubts })]]) } };
  };
  it('what rested on it is to be measured again, until a decision says that it had no effect', () => {
    for (const decision of [null, 'staysDoubtful', 'noEffect'] as const) {
      const { book, duties, list } = seasonOf(job(decision), today, [one]);
      const isLifted = decision === 'noEffect';
      expect(planStanding(one, book, duties).slots[0]).toMatchObject(
        isLifted ? { state: 'done' } : { state: 'toDo', why: 'doubtful' },
      );
      expect(list[0]?.need.kind).toBe(isLifted ? 'known' : 'again');
      expect(list[0]?.reliable === null).toBe(!isLifted);
      const found = dayAhead({ pieces: piece, stateCode: 'TX', on: today }, book, duties);
      // presumed of scraping: up to 500
      expect(upperOf(found)).toBeCloseTo(isLifted ? 12 : 500, 9);
    }
  });
});
