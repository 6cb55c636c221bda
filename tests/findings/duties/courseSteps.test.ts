/**
 * 29 CFR 1926.62(d)(6), (7): the course of re-monitoring. Every expected schedule and date is read off the table A5 of the regulation sheet
 * by hand: below 30 none; 30 to 50 six months; above 50 quarterly; two in a row at least seven days apart. Dates were counted on a calendar.
 */
import { describe, expect, it } from 'vitest';
import type { Course } from '#findings/duties/course/course.ts';
import type { ChangeNoted, Occasion } from '#findings/duties/course/courseInput.ts';
import { courseRuleOf } from '#findings/duties/course/courseRule.ts';
import { courseOf } from '#findings/duties/course/courseSteps.ts';
import { limitSetOn } from '#reference/limits.ts';

type Kind = 'below' | 'between' | 'above' | 'owed' | 'doubtful' | 'highDoubtful' | 'betweenUnproven';

const shape: Readonly<Record<Kind, Partial<Occasion>>> = {
  below: { band: 'belowActionLevel', provesBelowActionLevel: true, provesNotAbovePel: true },
  between: { band: 'actionLevelToPel', provesNotAbovePel: true },
  above: { band: 'abovePel' },
  owed: { band: 'open', sound: false, resultOwed: true },
  doubtful: { band: 'open', sound: false },
  highDoubtful: { band: 'abovePel', sound: false },
  betweenUnproven: { band: 'actionLevelToPel', sound: false },
};

const occasion = (on: string, kind: Kind, more: Partial<Occasion> = {}): Occasion => ({
  on,
  measurementIds: [`m.${on}`],
  relation: 'own',
  band: 'open',
  provesBelowActionLevel: false,
  provesNotAbovePel: false,
  sound: true,
  resultOwed: false,
  because: [],
  ...shape[kind],
  ...more,
});

const rule = courseRuleOf(limitSetOn('2026-03-02', 'TX').set);

interface Given {
  readonly today?: string;
  readonly lastDoneOn?: string | null;
  readonly changes?: readonly ChangeNoted[];
}

const course = (
  occasions: readonly Occasion[],
  { today = '2026-12-31', lastDoneOn = today, changes = [] }: Given = {},
): Course => courseOf({ workerId: 'p1', groupKey: 'g', occasions, changes, rule, lastDoneOn, today });

const change = (on: string): ChangeNoted => ({ on, because: ['f'] });

describe('(d)(6)(i): below the action level at the first determination', () => {
  it('nothing is due', () => {
    expect(course([occasion('2026-03-02', 'below')])).toMatchObject({ schedule: 'none', due: 'none', dueOn: null });
  });
  it('doubtful, or with the result owed, it decides nothing: measuring is owed now', () => {
    expect(course([occasion('2026-03-02', 'doubtful')])).toMatchObject({
      schedule: 'undetermined',
      due: 'now',
      measureAgain: true,
    });
    expect(course([occasion('2026-03-02', 'owed')])).toMatchObject({
      schedule: 'undetermined',
      measureAgain: false,
      steps: [{ why: 'owed', on: '2026-03-02' }],
    });
  });
  it('a later result from the action level to the PEL brings the six months', () => {
    const found = course([occasion('2026-03-02', 'below'), occasion('2026-05-04', 'between')], { today: '2026-05-05' });
    expect(found).toMatchObject({ schedule: 'sixMonthly', dueOn: '2026-11-04', due: 'byDate' });
    expect(found.steps.map(({ why }) => why)).toEqual(['begins', 'rises']);
  });
});

describe('(d)(6)(ii): from the action level to the PEL, at least every six months', () => {
  const first = occasion('2026-03-02', 'between');
  it('is due six calendar months after the sampling date', () => {
    expect(course([first], { today: '2026-03-03' })).toMatchObject({
      schedule: 'sixMonthly',
      due: 'byDate',
      dueOn: '2026-09-02',
      overdue: false,
      run: { towards: 'none', count: 0, of: 2, nextFromOn: null },
    });
  });
  it('31 August and six months is 28 February, and 29 February in a leap year', () => {
    expect(course([occasion('2026-08-31', 'between')], { today: '2026-09-01' }).dueOn).toBe('2027-02-28');
    expect(course([occasion('2027-08-31', 'between')], { today: '2027-09-01' }).dueOn).toBe('2028-02-29');
  });
  it('two below, seven days apart, stop it; six days apart they do not', () => {
    const low = occasion('2026-04-06', 'below');
    expect(course([first, low, occasion('2026-04-13', 'below')])).toMatchObject({ schedule: 'none', due: 'none' });
    const six = course([first, low, occasion('2026-04-12', 'below')], { today: '2026-04-12' });
    expect(six).toMatchObject({ schedule: 'sixMonthly', run: { count: 1, nextFromOn: '2026-04-19' } });
  });
  it('one below does not stop it, and says from which day another one counts', () => {
    expect(course([first, occasion('2026-04-06', 'below')], { today: '2026-04-07' })).toMatchObject({
      schedule: 'sixMonthly',
      dueOn: '2026-10-06',
      run: { towards: 'none', count: 1, of: 2, nextFromOn: '2026-04-13' },
    });
  });
  for (const kind of ['owed', 'doubtful', 'between', 'betweenUnproven'] as const)
    it(`${kind} between two below breaks the row`, () => {
      const found = course([
        first,
        occasion('2026-04-06', 'below'),
        occasion('2026-04-13', kind),
        occasion('2026-04-20', 'below'),
      ]);
      expect(found.schedule).toBe('sixMonthly');
    });
  it('a later result above the PEL moves to quarterly', () => {
    expect(course([first, occasion('2026-06-01', 'above')], { today: '2026-06-02' })).toMatchObject({
      schedule: 'quarterly',
      dueOn: '2026-09-01',
      lastMeasurementId: 'm.2026-06-01',
    });
  });
});

describe('(d)(6)(iii): above the PEL, quarterly', () => {
  const first = occasion('2026-11-30', 'above');
  it('is due three calendar months after the sampling date: 30 November gives 28 February', () => {
    expect(course([first], { today: '2026-12-01' })).toMatchObject({ schedule: 'quarterly', dueOn: '2027-02-28' });
  });
  const later = (kinds: readonly (readonly [string, Kind])[]) =>
    course([first, ...kinds.map(([on, kind]) => occasion(on, kind))], { today: '2027-06-30', lastDoneOn: null });
  it('two from the action level to the PEL step down to six months', () => {
    const found = later([
      ['2027-01-04', 'between'],
      ['2027-01-11', 'between'],
    ]);
    expect(found.schedule).toBe('sixMonthly');
    expect(found.steps.at(-1)).toMatchObject({ why: 'stepsDown', paragraph: '(d)(6)(iii)' });
  });
  it('one there and the next below the action level step down to six months, not further', () => {
    expect(
      later([
        ['2027-01-04', 'between'],
        ['2027-01-11', 'below'],
      ]).schedule,
    ).toBe('sixMonthly');
  });
  it('after that step a second one below stops it', () => {
    const found = later([
      ['2027-01-04', 'between'],
      ['2027-01-11', 'below'],
      ['2027-01-18', 'below'],
    ]);
    expect(found.schedule).toBe('none');
  });
  it('two below the action level stop it', () => {
    expect(
      later([
        ['2027-01-04', 'below'],
        ['2027-01-11', 'below'],
      ]).schedule,
    ).toBe('none');
  });
  it('six days apart they do not', () => {
    expect(
      later([
        ['2027-01-04', 'below'],
        ['2027-01-10', 'below'],
      ]).schedule,
    ).toBe('quarterly');
  });
  for (const kind of ['owed', 'doubtful', 'above', 'highDoubtful', 'betweenUnproven'] as const)
    it(`${kind} between two breaks the row`, () => {
      const found = later([
        ['2027-01-04', 'below'],
        ['2027-01-11', kind],
        ['2027-01-18', 'below'],
      ]);
      expect(found.schedule).toBe('quarterly');
    });
  it('in doubt, a high result brings the next date forward and never puts it off', () => {
    // quarterly from 30 November: 28 February. A doubtful one on 4 January would give 4 April.
    expect(later([['2027-01-04', 'highDoubtful']])).toMatchObject({ schedule: 'quarterly', measureAgain: true });
    const found = course([first, occasion('2027-01-04', 'highDoubtful')], { today: '2027-01-05' });
    expect(found.dueOn).toBe('2027-02-28');
  });
});

describe('(d)(7): a change, or nobody knows of one, asks for additional monitoring', () => {
  it('with nothing owed before, it starts again until somebody measures', () => {
    const found = course([occasion('2026-03-02', 'below')], { changes: [change('2026-04-01')] });
    expect(found).toMatchObject({ schedule: 'undetermined', due: 'now', changeOwed: { on: '2026-04-01' } });
    expect(found.steps.at(-1)).toMatchObject({ why: 'restarts', paragraph: '(d)(7)', on: '2026-04-01' });
    const after = course([occasion('2026-03-02', 'below'), occasion('2026-04-02', 'below')], {
      changes: [change('2026-04-01')],
    });
    expect(after).toMatchObject({ schedule: 'none', changeOwed: null });
  });
  it('a running schedule stays, is owed now, and its row begins anew', () => {
    const occasions = [occasion('2026-03-02', 'between'), occasion('2026-04-06', 'below')];
    const found = course(occasions, { today: '2026-04-10', changes: [change('2026-04-09')] });
    expect(found).toMatchObject({ schedule: 'sixMonthly', due: 'now', dueOn: '2026-10-06', run: { count: 0 } });
    const next = course([...occasions, occasion('2026-04-13', 'below')], { changes: [change('2026-04-09')] });
    expect(next).toMatchObject({ schedule: 'sixMonthly', changeOwed: null });
  });
  it('a doubtful measurement does not settle it; one on the very day does', () => {
    const changes = [change('2026-04-01')];
    expect(
      course([occasion('2026-03-02', 'below'), occasion('2026-04-02', 'doubtful')], { changes }).changeOwed,
    ).not.toBeNull();
    expect(
      course([occasion('2026-03-02', 'below'), occasion('2026-04-01', 'below')], { changes }).changeOwed,
    ).toBeNull();
  });
  it('before anything was measured there is nothing to start again', () => {
    expect(course([], { changes: [change('2026-04-01')] })).toMatchObject({
      schedule: 'undetermined',
      changeOwed: null,
    });
  });
});

describe('a date that falls when nobody does the task', () => {
  const first = occasion('2026-03-02', 'between'); // due on 2 September
  it('is before or on the first day that it is done again', () => {
    expect(course([first], { today: '2026-09-03', lastDoneOn: '2026-08-28' })).toMatchObject({
      due: 'beforeNextTime',
      dueOn: null,
      overdue: false,
    });
  });
  it('on the day itself it is due by that day', () => {
    expect(course([first], { today: '2026-09-02', lastDoneOn: '2026-08-28' })).toMatchObject({
      due: 'byDate',
      dueOn: '2026-09-02',
      overdue: false,
    });
  });
  it('done on that day or later without measuring, it is overdue', () => {
    for (const lastDoneOn of ['2026-09-02', '2026-09-03'])
      expect(course([first], { today: '2026-09-03', lastDoneOn })).toMatchObject({ due: 'byDate', overdue: true });
  });
});

describe('whose occasions count', () => {
  it('in writing they step down; by the roster alone a high one only begins a course', () => {
    const first = occasion('2026-03-02', 'above');
    const lows = (relation: Occasion['relation']) => [
      first,
      occasion('2026-04-06', 'below', { relation }),
      occasion('2026-04-13', 'below', { relation }),
    ];
    expect(course(lows('written')).schedule).toBe('none');
    expect(course(lows('roster')).schedule).toBe('quarterly');
    expect(course([occasion('2026-03-02', 'above', { relation: 'roster' })]).schedule).toBe('quarterly');
  });
  it("another's high result does not start again what the worker's own measurements stopped", () => {
    const own = [occasion('2026-03-02', 'below'), occasion('2026-04-06', 'above', { relation: 'roster' })];
    expect(course(own).schedule).toBe('none');
  });
  it('where no rule is held, nothing is due', () => {
    const found = courseOf({
      ...{ workerId: 'p1', groupKey: 'g', occasions: [occasion('2026-03-02', 'above')], changes: [] },
      ...{ rule: null, lastDoneOn: null, today: '2026-03-03' },
    });
    expect(found).toMatchObject({ schedule: 'undetermined', due: 'none', steps: [] });
  });
});
