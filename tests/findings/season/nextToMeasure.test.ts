/**
 * What to measure next, in order of need. What is owed and when follows from 29 CFR 1926.62(d) (regulation sheet A2 to A5, read by hand);
 * here each group must stand at its place and say why.
 */
import { describe, expect, it } from 'vitest';
import { needKinds } from '#findings/season/need.ts';
import { needsByDuty } from '#findings/season/needsOf.ts';
import type { NextToMeasure } from '#findings/season/nextToMeasure.ts';
import type { PlanRecord } from '#records/book.ts';
import { dutiesOfSet } from '#reference/duties.ts';
import {
  type Day,
  type Job,
  olga,
  reported,
  rosterDay,
  shiftOn,
  tess,
  vic,
  workdayIdOf,
  worked,
} from '../duties/jobBook.ts';
import { base, factId, site, siteId } from '../sliceRegisters.ts';
import { plan, seasonOf } from './seasonBook.ts';

const today = '2026-11-25';
const listOf = (job: Job, plans: readonly PlanRecord[] = [], on = today): readonly NextToMeasure[] =>
  seasonOf(job, on, plans).list;
const first = (job: Job, plans: readonly PlanRecord[] = [], on = today): NextToMeasure | undefined =>
  listOf(job, plans, on)[0];
const day = (workOn: string, averageUgPerM3: number | null, more: Partial<Day> = {}): Day => ({
  workOn,
  averageUgPerM3,
  ...more,
});
const roster = (workerId: string, workOn: string, taskIds: readonly string[]) => ({
  ...rosterDay(workerId, workOn),
  worked: [worked(workOn, siteId, taskIds)],
});
const nothingNew = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;

describe('an empty book', () => {
  it('has nothing to list', () => {
    expect(listOf({})).toEqual([]);
  });
  it('lists what is planned, as never measured, with the presumed tier and the crew', () => {
    const slots = [tess, vic].map((workerId) => ({ workerId, workOn: '2026-12-01' }));
    const one = first({}, [plan({ slots })]);
    expect(one).toMatchObject({
      need: { kind: 'neverMeasured' },
      openCount: 2,
      last: null,
      reliable: null,
      ruleHeld: true,
    });
    expect(one?.presumption).toMatchObject({ tier: '1', mapping: 'listed' });
    expect(one?.workers.map(({ workerId }) => workerId)).toEqual([tess, vic]);
    expect(one?.plans).toEqual([{ planId: 'g00000000001', openCount: 2, slotsCount: 2 }]);
  });
  it('of what is planned the higher presumed tier comes first: blasting, then power sanding without extraction, then scraping', () => {
    const plans = [['handScraping'], ['abrasiveBlasting'], ['setUp'], ['torchCutting']].map((taskIds, i) =>
      plan({ ...base('plan', `g0000000000${i}`), planId: `g0000000000${i}`, taskIds, siteId: null }),
    );
    const made = listOf({}, plans);
    expect(made.map(({ taskIds }) => taskIds[0]).at(-1)).toBe('setUp');
    expect(made.map(({ presumption: { tier } }) => tier)).toEqual(['3', '3', '1', 'none']);
  });
  it('a plan that was given up is not listed', () => {
    expect(listOf({}, [plan({ dropped: { why: 'no job', factId: factId() } })])).toEqual([]);
  });
});

describe('one group, what it needs first', () => {
  it('(d)(2): worked yesterday, nobody measured', () => {
    expect(first({ roster: [rosterDay(tess, '2026-11-24')] })).toMatchObject({
      need: { kind: 'neverMeasured', siteId, workerIds: [tess] },
      lastDoneOn: '2026-11-24',
    });
  });
  it('the same, and not done for over two weeks: told last but one, and planned it is at the top again', () => {
    const job = { roster: [rosterDay(tess, '2026-10-01')] };
    expect(first(job)).toMatchObject({ need: { kind: 'notMeasuredNoWork' } });
    expect(first(job, [plan({ slots: [{ workerId: tess, workOn: '2026-12-01' }] })])).toMatchObject({
      need: { kind: 'neverMeasured' },
    });
  });
  it('a result that is owed', () => {
    expect(first({ days: [day('2026-11-20', null)] })).toMatchObject({
      need: { kind: 'resultOwed', workerIds: [tess] },
    });
  });
  it('no flow after: measured, and to be measured again, with the reasons', () => {
    const one = first({ days: [day('2026-11-20', 12, { flowAfter: false })] });
    expect(one?.need).toMatchObject({ kind: 'again', workerIds: [tess] });
    expect(one?.reasons.map(({ key }) => key)).toContain('noFlowAfter');
    expect(one?.reliable).toBeNull();
  });
  it('to be measured again, and a younger result is owed: nothing is measured needlessly meanwhile', () => {
    const days = [day('2026-11-10', 12, { flowAfter: false }), day('2026-11-20', null)];
    expect(first({ days })?.need.kind).toBe('resultOwed');
  });
  it('(d)(6)(i): between the levels, measured again by six months after, soon in the last thirty days, then overdue', () => {
    const days = [day('2026-05-20', 40)];
    const at = (on: string, roster = [rosterDay(tess, on)]) => first({ days, roster }, [], on)?.need;
    expect(at('2026-10-20')).toMatchObject({ kind: 'known', dueOn: '2026-11-20' });
    expect(at('2026-10-21')).toMatchObject({ kind: 'dueSoon', dueOn: '2026-11-20', overdue: false });
    expect(at('2026-11-20')).toMatchObject({ kind: 'dueAgain', dueOn: '2026-11-20', overdue: false });
    expect(at('2026-11-21')).toMatchObject({ kind: 'dueAgain', dueOn: '2026-11-20', overdue: true });
    expect(at('2026-11-21', [])).toMatchObject({ kind: 'dueAgain', dueOn: null, overdue: false });
  });
  it('(d)(7): a new tool was noted after a low measurement', () => {
    const shifts = [shiftOn('2026-11-20', { changes: { ...nothingNew, equipment: 'yes', factId: factId() } })];
    const job = { days: [day('2026-11-02', 12)], roster: [rosterDay(tess, '2026-11-20')], shifts };
    expect(first(job)?.need).toMatchObject({ kind: 'changed', workerIds: [tess] });
  });
  it('(d)(3)(iii): low and sound, not due, and a job may rest on it for twelve months', () => {
    const one = first({ days: [day('2026-11-20', 12)] });
    expect(one?.need).toMatchObject({ kind: 'known', dueOn: null });
    expect(one?.reliable).toEqual({
      measurementId: workdayIdOf(tess, '2026-11-20'),
      untilOn: '2027-11-20',
      past: false,
    });
    expect(first({ days: [day('2025-11-20', 12)] })?.reliable).toMatchObject({ untilOn: '2026-11-20', past: true });
  });
  it('known, and a plan has an open place', () => {
    const open = plan({ slots: [{ workerId: vic, workOn: '2026-12-01' }] });
    expect(first({ days: [day('2026-11-20', 12)] }, [open])).toMatchObject({ need: { kind: 'planned' }, openCount: 1 });
  });
  it('what is answered at a desk is not measured again: was the day a regular one, were conditions alike', () => {
    expect(first({ days: [day('2026-11-20', 12, { regular: null })] })?.need.kind).toBe('answer');
    expect(first({ days: [day('2026-11-20', 12, { regular: 'no' })] })?.need.kind).toBe('again');
    const noted = first({
      days: [day('2026-11-20', 12)],
      roster: [rosterDay(tess, '2026-11-23')],
      shifts: [shiftOn('2026-11-23', {}, null)],
    });
    expect(noted?.need.kind).toBe('answer');
    expect(noted?.blocks.map(({ key }) => key)).toContain('resemblanceNotAsked');
  });
  it('at or above the action level, and a workmate whom nothing stands for', () => {
    const one = first({ days: [day('2026-11-20', 40)], roster: [rosterDay(vic, '2026-11-24')] });
    expect(one?.need).toMatchObject({ kind: 'neverMeasured', workerIds: [vic] });
  });
  it('reported by a consultant: known without a day on the roster', () => {
    const one = first({ reported: [reported({ workerId: tess })] });
    expect(one?.last?.from).toBe('consultant');
    expect(one?.workers).toMatchObject([{ workerId: tess, lastMeasuredOn: '2026-11-02', lastDoneOn: null }]);
  });
});

describe('many groups, in order of need', () => {
  const job: Job = {
    days: [
      day('2026-11-20', 12, { workerId: tess, taskIds: ['handScraping'] }),
      day('2026-05-02', 40, { workerId: vic, taskIds: ['handSanding'] }),
      day('2026-11-18', null, { workerId: olga, taskIds: ['windowTakeOut'] }),
      day('2026-11-17', 12, { workerId: vic, taskIds: ['trimRemoval'], flowAfter: false }),
    ],
    roster: [
      roster(tess, '2026-11-24', ['abrasiveBlasting']),
      roster(vic, '2026-11-24', ['handSanding']),
      roster(olga, '2026-11-23', ['dustCleanup']),
    ],
  };
  it('what blocks or is owed first', () => {
    expect(listOf(job).map(({ taskIds, need: { kind } }) => `${taskIds[0]} ${kind}`)).toEqual([
      'abrasiveBlasting neverMeasured',
      'dustCleanup neverMeasured',
      'trimRemoval again',
      'handSanding dueAgain',
      'windowTakeOut resultOwed',
      'handScraping known',
    ]);
  });
  it('needs of every group stand in the order of the list, and the first is the need', () => {
    for (const { need, needs } of listOf(job)) {
      expect(needs[0]).toBe(need);
      const ranks = needs.map(({ kind }) => needKinds.indexOf(kind));
      expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    }
  });
  it('published figures stand beside those tasks alone that they speak of', () => {
    for (const { taskIds, published } of listOf(job))
      for (const hint of published) expect(hint.taskIds.every((id) => taskIds.includes(id))).toBe(true);
    expect(listOf(job).find(({ taskIds }) => taskIds[0] === 'handScraping')?.published.length).toBeGreaterThan(3);
  });
  it('adding a plan takes no need away', () => {
    const planned = plan({ taskIds: ['trimRemoval'], slots: [{ workerId: vic, workOn: '2026-12-01' }] });
    const needs = (plans: readonly PlanRecord[]) =>
      listOf(job, plans).map(({ groupKey, needs: all }) => [
        groupKey,
        all.map(({ kind }) => kind).filter((kind) => kind !== 'planned'),
      ]);
    expect(needs([planned])).toEqual(needs([]));
  });
});

describe('where the rule is not held', () => {
  const sites = [site({ stateCode: 'CA' })];
  it('says so, lists no date, and still says what was never measured', () => {
    const one = first({ sites, roster: [rosterDay(tess, '2026-11-24')] });
    expect(one).toMatchObject({ ruleHeld: false, need: { kind: 'neverMeasured', dutyIds: [] }, dueOn: null });
    expect(one?.notHeld).toMatchObject([{ stateCode: 'CA' }]);
  });
  it('a sound figure below its action level is known, a doubtful one is to be measured again', () => {
    expect(first({ sites, days: [day('2026-11-20', 1)] })?.need.kind).toBe('known');
    expect(first({ sites, days: [day('2026-11-20', 1, { flowAfter: false })] })?.need.kind).toBe('again');
  });
});

describe('the careful side: doubt never moves a group down the list', () => {
  const rankOf = (one: Day): number => needKinds.indexOf(first({ days: [one] })?.need.kind ?? 'known');
  const doubts: readonly (readonly [string, Partial<Day>])[] = [
    ['no flow after', { flowAfter: false }],
    ['not the regular day', { regular: 'no' }],
    ['nobody said whether it was one', { regular: null }],
    ['void', { sample: { voided: { why: 'wet', factId: factId() } } }],
  ];
  it.each(doubts)('%s', (_, doubt) => {
    for (const average of [1, 12, 29, 40, 600]) {
      const sound = day('2026-11-20', average);
      expect(rankOf({ ...sound, ...doubt }), String(average)).toBeLessThanOrEqual(rankOf(sound));
    }
  });
});

it('every kind of duty that a measurement fulfils has its place in the list', () => {
  const kinds = (dutiesOfSet('us-fed-constr-lead')?.duties ?? [])
    .filter(({ fulfilledBy }) => fulfilledBy === 'measurement')
    .map(({ kind }) => kind);
  expect(kinds.length).toBeGreaterThan(4);
  expect(Object.keys(needsByDuty).sort()).toEqual(kinds.sort());
});
