/**
 * 29 CFR 1926.62(d)(3) to (7) over a whole book: who is measured, who is represented, what the roster tells. Expected schedules and dates
 * read off the regulation sheet (A4, A5) by hand.
 */
import { describe, expect, it } from 'vitest';
import type { Course } from '#findings/duties/course/course.ts';
import { coursesOf } from '#findings/duties/course/courses.ts';
import { standsFor } from '#findings/duties/groups/standsFor.ts';
import { groupDaysOf, taskGroupsOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { Book } from '#records/book.ts';
import { factId, person, site, siteId } from '../sliceRegisters.ts';
import { jobBook, olga, rosterDay, shiftOn, tess, vic, workdayIdOf } from './jobBook.ts';

const today = '2026-06-30';
const coursesIn = (book: Book, on = today): readonly Course[] =>
  coursesOf(measurementsOf(book), groupDaysOf(book), book, on);
const of = (workerId: string, book: Book, on = today): Course | undefined =>
  coursesIn(book, on).find((one) => one.workerId === workerId);
const day = (workerId: string, workOn: string, averageUgPerM3: number | null, more: object = {}) => ({
  ...{ workerId, workOn, averageUgPerM3 },
  ...more,
});
const represents = (workerIds: readonly string[]) => ({
  workday: { represents: [{ workerIds, factId: factId() }] },
});

describe('(d)(6)(iii): monitoring stops for the worker who was measured low twice, not for another', () => {
  const high = [day(tess, '2026-03-02', 60), day(vic, '2026-03-02', 70)];
  const lows = [day(tess, '2026-04-06', 20), day(tess, '2026-04-13', 20)];
  it('hers stops and his goes on: quarterly, three months after his own date', () => {
    const book = jobBook({
      days: [...high, ...lows],
      roster: [rosterDay(vic, '2026-04-06'), rosterDay(vic, '2026-04-13')],
    });
    expect(of(tess, book)).toMatchObject({ schedule: 'none', due: 'none' });
    expect(of(vic, book, '2026-04-14')).toMatchObject({ schedule: 'quarterly', dueOn: '2026-06-02', due: 'byDate' });
  });
  it('named in writing on both days, he is represented and his stops too', () => {
    const written = lows.map((one) => ({ ...one, ...represents([vic]) }));
    expect(of(vic, jobBook({ days: [...high, ...written] }))?.schedule).toBe('none');
  });
  it('named on one of them only, it does not', () => {
    const [first, second] = lows;
    if (!first || !second) throw new Error('two days');
    const book = jobBook({ days: [...high, first, { ...second, ...represents([vic]) }] });
    expect(of(vic, book)?.schedule).toBe('quarterly');
  });
  it('six days apart, hers does not stop either', () => {
    const book = jobBook({ days: [...high, day(tess, '2026-04-06', 20), day(tess, '2026-04-12', 20)] });
    expect(of(tess, book)?.schedule).toBe('quarterly');
  });
});

describe('(d)(4)(i): a high result begins a course for everyone of the same shift and group', () => {
  const book = jobBook({
    days: [day(tess, '2026-03-02', 60)],
    roster: [rosterDay(vic, '2026-03-02'), rosterDay(olga, '2026-03-03')],
  });
  it('by the roster', () => {
    expect(of(vic, book)?.schedule).toBe('quarterly');
    expect(of(olga, book)?.schedule).toBe('undetermined');
  });
  it('a low one says nothing of who is only on the roster', () => {
    const low = jobBook({ days: [day(tess, '2026-03-02', 20)], roster: [rosterDay(vic, '2026-03-02')] });
    expect(of(vic, low)).toMatchObject({ schedule: 'undetermined', due: 'now' });
    expect(of(tess, low)?.schedule).toBe('none');
  });
  it('two low ones that follow stop nothing of who was not measured and not named', () => {
    const days = [day(tess, '2026-03-02', 60), day(tess, '2026-04-06', 20), day(tess, '2026-04-13', 20)];
    const roster = days.map(({ workOn }) => rosterDay(vic, workOn));
    expect(of(vic, jobBook({ days, roster }))?.schedule).toBe('quarterly');
  });
});

describe('(d)(7): the questions of a job start', () => {
  const answers = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;
  const askedOn = (workOn: string, more: object) =>
    shiftOn(workOn, { changes: { ...answers, ...more, factId: factId() } });
  const withChange = (more: object) =>
    jobBook({
      days: [day(tess, '2026-03-02', 20)],
      roster: [rosterDay(tess, '2026-04-06')],
      shifts: [askedOn('2026-04-06', more)],
    });
  it('all no: nothing starts again', () => {
    expect(of(tess, withChange({}))).toMatchObject({ schedule: 'none', changeOwed: null });
  });
  it('each of them, yes or not known, asks for additional monitoring', () => {
    for (const what of Object.keys(answers))
      for (const said of ['yes', 'notKnown'])
        expect(of(tess, withChange({ [what]: said }))).toMatchObject({
          schedule: 'undetermined',
          changeOwed: { on: '2026-04-06' },
        });
  });
});

describe('where the rule is not held complete', () => {
  it('nothing is due: California keeps figures only', () => {
    const book = jobBook({ days: [day(tess, '2026-03-02', 60)], sites: [site({ stateCode: 'CA' })] });
    expect(of(tess, book)).toMatchObject({ schedule: 'undetermined', due: 'none', steps: [] });
  });
});

describe('(d)(8)(i), (n)(1)(ii)(D): whom a measurement stands for', () => {
  const workOn = '2026-03-02';
  const standing = (book: Book): readonly string[] => {
    const found = measurementsOf(book).get(workdayIdOf(tess, workOn));
    return found ? standsFor(found, book, groupDaysOf(book)) : [];
  };
  const painters = 'j00000000001';
  it('the measured worker first, then the same shift and tasks; other tasks, sites and days not', () => {
    const other = {
      ...rosterDay(olga, workOn),
      worked: [{ ...rosterDay(olga, workOn).worked?.[0], taskIds: ['setUp'] }],
    };
    const book = jobBook({
      days: [day(tess, workOn, 20)],
      roster: [rosterDay(vic, workOn), other as ReturnType<typeof rosterDay>, rosterDay(olga, '2026-03-03')],
    });
    expect(standing(book)).toEqual([tess, vic]);
  });
  it("another employer's worker is among them", () => {
    const people = [person(tess, 'Tess'), { ...person(vic, 'Vic'), employer: 'Ladder and Lime' }];
    const book = jobBook({ days: [day(tess, workOn, 20)], roster: [rosterDay(vic, workOn)], people });
    expect(standing(book)).toEqual([tess, vic]);
  });
  it('another job classification is another group; whoever is named in writing is in it', () => {
    const people = [
      { ...person(tess, 'Tess'), jobClassificationId: painters },
      { ...person(vic, 'Vic'), jobClassificationId: 'j00000000002' },
      person(olga, 'Olga'),
    ];
    const days = [{ ...day(tess, workOn, 20), ...represents([olga]) }];
    const book = jobBook({ days, roster: [rosterDay(vic, workOn)], people });
    expect(standing(book)).toEqual([tess, olga]);
  });
  it('a classification that nobody noted may be any: he is told too', () => {
    const people = [{ ...person(tess, 'Tess'), jobClassificationId: painters }, person(vic, 'Vic')];
    const book = jobBook({ days: [day(tess, workOn, 20)], roster: [rosterDay(vic, workOn)], people });
    expect(standing(book)).toEqual([tess, vic]);
  });
});

describe('task groups: job classification, setting and tasks', () => {
  it('tasks of roster and sample together make the group; their order does not', () => {
    const workOn = '2026-03-02';
    const entry = {
      shiftId: `${siteId}.${workOn}`,
      jobClassificationId: null,
      respirator: 'halfMask',
      factId: factId(),
    };
    const book = jobBook({
      days: [day(tess, workOn, 20, { workday: { worked: [{ ...entry, taskIds: ['setUp'] }] } })],
      roster: [{ ...rosterDay(vic, workOn), worked: [{ ...entry, taskIds: ['setUp', 'handScraping'] }] }],
    });
    const groups = taskGroupsOf(groupDaysOf(book));
    expect([...groups.keys()]).toEqual(['indoors|-|handScraping+setUp']);
    const [group] = groups.values();
    expect(group).toMatchObject({ lastOn: workOn, workerIds: [tess, vic] });
    expect(group?.days.map(({ from, respirator }) => [from, respirator])).toEqual([
      ['roster', 'halfMask'],
      ['roster', 'halfMask'],
    ]);
  });
});
