/** What became of a plan: declined, rained off, void and doubtful days stay to do; a plan ends no duty. Days worked out by hand. */
import { describe, expect, it } from 'vitest';
import { planStanding, type SlotFinding } from '#findings/season/plan.ts';
import { plannedOn } from '#findings/season/plannedOn.ts';
import type { PlanRecord } from '#records/book.ts';
import { type Day, olga, rosterDay, sampleIdOf, tess, vic } from '../duties/jobBook.ts';
import { base, factId, site, siteId } from '../sliceRegisters.ts';
import { missed, plan, planId, seasonOf } from './seasonBook.ts';

const today = '2026-11-25';
const on = '2026-11-10';
const later = '2026-11-12';

function standing(days: readonly Day[], more: Partial<PlanRecord> = {}, job: object = {}) {
  const one = plan(more);
  const { book, duties } = seasonOf({ days, ...job }, today, [one]);
  return planStanding(one, book, duties);
}
const slot = (days: readonly Day[], more: Partial<PlanRecord> = {}, job: object = {}): SlotFinding | undefined =>
  standing(days, more, job).slots[0];
const day = (workOn: string, averageUgPerM3: number | null, more: Partial<Day> = {}): Day => ({
  workOn,
  averageUgPerM3,
  ...more,
});

describe('a place is done', () => {
  it('when this worker has a good measurement of this work on its day', () => {
    expect(slot([day(on, 12)])).toMatchObject({
      state: 'done',
      why: null,
      measurementId: `${tess}.${on}`,
      reasons: [],
    });
  });
  it('high as well as low', () => {
    expect(slot([day(on, 600)])).toMatchObject({ state: 'done' });
  });
  it('by another day in the life of the plan', () => {
    expect(slot([day(later, 12)])).toMatchObject({ state: 'done', measuredOn: later });
  });
  it('not by one from before the plan was made, 1 November', () => {
    expect(slot([day('2026-10-20', 12)])).toMatchObject({ state: 'toDo', why: 'passed', measurementId: null });
  });
  it('not by another worker, at another site, at other work', () => {
    expect(slot([day(on, 12, { workerId: vic })])).toMatchObject({ why: 'passed' });
    const other = 's00000000002';
    const sites = [site(), { ...site({ siteId: other }), id: other }];
    expect(slot([day(on, 12, { siteId: other })], {}, { sites })).toMatchObject({ state: 'toDo', why: 'otherTasks' });
    expect(slot([day(on, 12, { taskIds: ['dustCleanup'] })])).toMatchObject({ state: 'toDo', why: 'otherTasks' });
  });
  it('one measurement fills one place, its own day first', () => {
    const slots = [
      { workerId: tess, workOn: on },
      { workerId: tess, workOn: later },
    ];
    const { slots: found, doneCount, toDoCount } = standing([day(later, 12)], { slots });
    expect(found.map(({ state }) => state)).toEqual(['toDo', 'done']);
    expect([doneCount, toDoCount]).toEqual([1, 1]);
  });
});

describe('a place is under way', () => {
  it('with a result that is owed: sealed and not sent, then with the laboratory', () => {
    expect(slot([day(on, null)])).toMatchObject({ state: 'notSent', why: null });
    const packed = { sampleIds: [sampleIdOf(tess, on)] };
    const box = { ...base('box', 'x00000000009'), packed, packedFactId: factId(), issues: [], arrivedAt: null };
    const boxes = new Map([[box.id, { ...box, handedOver: { at: `${later}T15:00:00.000Z` } }]]);
    expect(slot([day(on, null)], {}, { more: { boxes } })).toMatchObject({ state: 'withTheLaboratory' });
  });
  it('on the worker while the pump runs', () => {
    const fromAt = `${on}T13:00:00.000Z`;
    const running = {
      stopped: null,
      sealed: null,
      intervals: [
        { fromAt, toAt: null, state: 'worn' as const, awayFromLead: false, reason: null, becauseFactId: factId() },
      ],
    };
    expect(slot([day(on, null, { sample: running })])).toMatchObject({ state: 'onTheWorker' });
  });
});

describe('a place stays to do, and says why', () => {
  it.each(['declined', 'rainedOff', 'otherWork', 'notAtWork', 'gear', 'other'] as const)('%s', (because) => {
    const said = { missed: [missed(tess, on, because, 'as told at seven')] };
    expect(slot([], said)).toMatchObject({ state: 'toDo', why: because, remark: 'as told at seven' });
  });
  it('void', () => {
    const sample = { voided: { why: 'fell into the bucket', factId: factId() } };
    expect(slot([day(on, null, { sample })])).toMatchObject({
      state: 'toDo',
      why: 'void',
      measurementId: `${tess}.${on}`,
    });
  });
  it('a low day that was not the regular one, with its reason', () => {
    const found = slot([day(on, 12, { regular: 'no' })]);
    expect(found).toMatchObject({ state: 'toDo', why: 'irregularDay' });
    expect(found?.reasons.map(({ key }) => key)).toContain('notRegular');
  });
  it('in doubt, no flow after', () => {
    expect(slot([day(on, 12, { flowAfter: false })])).toMatchObject({ state: 'toDo', why: 'doubtful' });
  });
  it('the day went by; it is ahead; it is open', () => {
    expect(slot([])).toMatchObject({ why: 'passed' });
    expect(slot([], { slots: [{ workerId: tess, workOn: today }] })).toMatchObject({ why: 'ahead' });
    expect(slot([], { slots: [{ workerId: tess, workOn: null }] })).toMatchObject({ why: 'dayOpen' });
  });
  it('declined, then measured on another day: done', () => {
    expect(slot([day(later, 12)], { missed: [missed(tess, on, 'declined')] })).toMatchObject({ state: 'done' });
  });
  it('void, then measured on another day: done', () => {
    const sample = { voided: { why: 'wet', factId: factId() } };
    expect(slot([day(on, null, { sample }), day(later, 12)])).toMatchObject({ state: 'done', measuredOn: later });
  });
});

describe('counts', () => {
  const crew = [tess, vic, olga];
  it('three workers on two days with two cassettes: 12 cassettes, two blanks a day', () => {
    const slots = crew.flatMap((workerId) => [on, later].map((workOn) => ({ workerId, workOn })));
    const found = standing([day(on, 12)], { slots, cassettesCount: 2 });
    expect(found).toMatchObject({ slotsCount: 6, doneCount: 1, underWayCount: 0, toDoCount: 5 });
    expect(found).toMatchObject({ samplesCount: 12, samplesToDoCount: 10, blanksCount: 4, blanksToDoCount: 4 });
  });
  it('open days of three workers, two each, are two days', () => {
    const slots = crew.flatMap((workerId) => [1, 2].map(() => ({ workerId, workOn: null })));
    expect(standing([], { slots }).blanksCount).toBe(4);
  });
});

describe('a plan proves nothing', () => {
  it('with or without it the duties are the same', () => {
    const job = { roster: [rosterDay(tess, '2026-11-24')] };
    const slots = [{ workerId: tess, workOn: '2026-11-26' }];
    expect(seasonOf(job, today, [plan({ slots })]).duties.duties).toEqual(seasonOf(job, today).duties.duties);
  });
});

describe('who is planned for a day', () => {
  const slots = [
    { workerId: tess, workOn: on },
    { workerId: vic, workOn: later },
    { workerId: olga, workOn: on },
  ];
  const who = (plans: readonly PlanRecord[], dayOn = on, at = siteId) =>
    plannedOn(seasonOf({}, today, plans).book, dayOn, at).map(({ workerId }) => workerId);
  it('those of that day and site, with flow and method of the plan', () => {
    expect(who([plan({ slots })])).toEqual([tess, olga]);
    expect(who([plan({ slots })], on, 's00000000002')).toEqual([]);
    expect(plannedOn(seasonOf({}, today, [plan({ slots })]).book, later, siteId)).toMatchObject([
      { planId, workerId: vic, flowLPerMin: 2, methodId: 'niosh-7082', cassettesCount: 1, missed: null },
    ]);
  });
  it('a plan of no site is wherever its setting is; one that was dropped is nowhere', () => {
    expect(who([plan({ slots, siteId: null })])).toEqual([tess, olga]);
    expect(who([plan({ slots, siteId: null, setting: 'outdoors' })])).toEqual([]);
    expect(who([plan({ slots, dropped: { why: 'the job is off', factId: factId() } })])).toEqual([]);
  });
  it('who declined already is told so', () => {
    const book = seasonOf({}, today, [plan({ slots, missed: [missed(olga, on, 'declined')] })]).book;
    expect(plannedOn(book, on, siteId).map((one) => one.missed?.because ?? null)).toEqual([null, 'declined']);
  });
});
