/** Single suspicions of the careful side, each written down as on a device; expected values from the rule, by hand. */
import { describe, expect, it } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import type { NewFact } from '#records/fact.ts';
import { at, ids, office, phone, wanted } from '../../records/facts.ts';
import { bookFrom } from '../carefulStory.ts';
import * as s from './auditSeason.ts';

const [first, second, third] = ['2026-11-02', '2026-11-09', '2026-11-16'] as const;
const today = '2026-12-20';
const group = 'indoors|-|dustCleanup';
const shifts = (...days: readonly string[]): NewFact[] => days.flatMap((day) => s.shiftOpened(day));
const base = (...more: readonly (readonly NewFact[])[]): NewFact[] => [...s.registers(), ...more.flat()];
const low = (who: string, day: string, more: Partial<s.Sampled> = {}) =>
  s.sampled(who, day, { averageUgPerM3: 12, ...more });
const high = (who: string, day: string, averageUgPerM3 = 60, more: Partial<s.Sampled> = {}) =>
  s.sampled(who, day, { averageUgPerM3, ...more });
const found = (facts: readonly NewFact[], ...others: Parameters<typeof s.bookOf>[1][]) =>
  findDuties(s.bookOf(facts, ...others), today);
const courseIn = (in_: ReturnType<typeof found>, who: string, key = group) =>
  in_.courses.find(({ workerId, groupKey }) => workerId === who && groupKey === key);

describe('(d)(7): a change noted once, when the job starts, concerns whoever comes to it later', () => {
  it('a worker who was not there that morning measures again too', () => {
    const facts = base(shifts(first, second, third), low(s.ana, first), [s.changesAsked(second, { equipment: 'yes' })]);
    const came = found([...facts, s.noted(s.ana, third)]);
    expect(courseIn(found(facts), s.ana)).toMatchObject({ schedule: 'none', changeOwed: null });
    expect(courseIn(came, s.ana)).toMatchObject({ schedule: 'undetermined', changeOwed: { on: third } });
  });

  it('after it, what was measured before ends no presumption: hand scraping is presumed above the PEL again, (d)(2)(i)', () => {
    const taskIds = ['handScraping'];
    const facts = base(shifts(first, third), low(s.ana, first, { taskIds }), [s.noted(s.ana, third, { taskIds })]);
    const kinds = (more: readonly NewFact[]) => found([...facts, ...more]).duties.map(({ kind }) => kind);
    expect(kinds([])).not.toContain('respirator');
    expect(kinds([s.changesAsked(third, { control: 'yes' })])).toContain('respirator');
  });
});

describe('one day at two sites', () => {
  const two = [
    ...s.shiftOpened(second, s.bridge, {}),
    s.noted(s.ana, second, { siteId: s.bridge }),
    wanted('otherWorkAsked.v1', {
      workdayId: s.dayOf(s.ana, second),
      callOut: 'no',
      secondSite: 'no',
      secondEmployer: 'no',
    }),
  ];
  const facts = base(shifts(first, second), low(s.ana, first), high(s.ana, second), two);

  it('a high one lets neither of them be negative, (d)(4)', () => {
    const { determinations } = found(facts);
    expect(determinations.filter(({ siteId, outcome }) => siteId === ids.site && outcome === 'positive')).toHaveLength(
      1,
    );
    expect(determinations.filter(({ outcome }) => outcome === 'negativeMayBeWritten')).toEqual([]);
  });

  it('work at a second site that is on the roster and not in the hours leaves the day open, whatever was answered', () => {
    const day = base(shifts(second), low(s.ana, second));
    expect(found(day).measurements.get(s.dayOf(s.ana, second))?.provesBelowActionLevel).toBe(true);
    const with2 = found([...day, ...s.shiftOpened(second, s.bridge), s.noted(s.ana, second, { siteId: s.bridge })]);
    expect(with2.measurements.get(s.dayOf(s.ana, second))).toMatchObject({ provesBelowActionLevel: false });
    expect(with2.exposureDays.get(s.ana)?.days[0]?.atOrAbove).not.toBe('no');
  });
});

describe('a rule that is not held', () => {
  it('a high one in another state takes no schedule away that runs here', () => {
    const california = {
      ...s.registers()[1],
      body: { ...s.registers()[1]?.body, siteId: 's00000000003', stateCode: 'CA' },
    };
    const facts = base([{ ...california, about: ['site:s00000000003'] } as NewFact], shifts(first), high(s.ana, first));
    const there = [...s.shiftOpened(second, 's00000000003'), ...high(s.ana, second, 80, { siteId: 's00000000003' })];
    const quarterly = (facts_: readonly NewFact[]) => found(facts_).duties.filter(({ kind }) => kind === 'quarterly');
    expect(quarterly(facts)).toHaveLength(1);
    expect(quarterly([...facts, ...there])).toHaveLength(1);
  });
});

describe('what was done', () => {
  const facts = base(shifts(first, second), high(s.ana, first));
  const done = (dutyId: string, doneOn: string) =>
    wanted(
      'dutyDone.v1',
      { dutyId, doneOn, doneById: null, whereItLies: null, remark: null },
      { at: at('12:00', doneOn) },
    );
  const idOf = (kind: string) => found(facts).duties.find((duty) => duty.kind === kind)?.id ?? '';
  const duty = (kind: string, more: readonly NewFact[]) =>
    found([...facts, ...more]).duties.find((one) => one.kind === kind);

  it('counts for nothing while a newer version says something of it that is not understood', () => {
    const entries = s.entriesOf([phone, [...facts, done(idOf('training') || 'x', second)]]);
    const open = { ...done(idOf('bloodTests'), second), kind: 'dutyJudged.v7' } as unknown as NewFact;
    const dutyId = idOf('bloodTests');
    const known = s.entriesOf([phone, [...facts, done(dutyId, second)]]);
    const writer = s.entriesOf([
      office,
      [{ ...open, mustUnderstand: true, about: [`duty:${dutyId}`] } as unknown as NewFact],
    ]);
    const of = (all: typeof entries) => findDuties(bookFrom(all), today).duties.find(({ id }) => id === dutyId)?.done;
    expect(of(known)).not.toBeNull();
    expect(bookFrom([...known, ...writer]).duties.get(dutyId)?.notUnderstood).toHaveLength(1);
    expect(of([...known, ...writer])).toBeNull();
  });

  it('a respirator chosen before a higher result came in is chosen anew, (f)(3)', () => {
    const chosen = [done(idOf('respirator'), second)];
    expect(duty('respirator', chosen)?.done).toMatchObject({ on: second });
    const higher = high(s.ana, third, 900);
    const now = duty('respirator', [...chosen, ...shifts(third), ...higher]);
    expect(now).toMatchObject({ done: null, params: { lastDoneOn: second } });
    expect(duty('controls', [done(idOf('controls'), second), ...shifts(third), ...higher])?.done).toBeNull();
    // the programme stands, and is revised yearly
    expect(duty('programme', [done(idOf('programme'), second), ...shifts(third), ...higher])?.done).not.toBeNull();
  });
});
