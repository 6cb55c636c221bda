/**
 * When a duty is due, done, owed again and late; each day counted by hand from the text of the paragraph. Ids, ends of jobs, what is kept
 * and shown.
 */
import { describe, expect, test } from 'vitest';
import { addDays } from '#core/calendar.ts';
import { groupKeyOf } from '#findings/duties/groups/taskGroup.ts';
import { dutyIdOf, shortHash } from '#findings/duties/list/dutyIds.ts';
import { triggersMissing } from '#findings/duties/list/dutyTriggers.ts';
import { factBodies } from '#records/fact.ts';
import { base, person, siteId } from '../sliceRegisters.ts';
import { done, dutiesIn, dutyOf, kindsIn, withDone } from './dutyCases.ts';
import { jobBook, olga, rosterDay, tess, vic, workdayIdOf } from './jobBook.ts';

const workOn = '2026-11-03';
const high = jobBook({ days: [{ workOn, averageUgPerM3: 80, receivedOn: '2026-11-10' }] });
const presumed = jobBook({ roster: [rosterDay(tess, workOn)] });

describe('(l)(1)(ii) to (iv): training before the work, then at least every year', () => {
  const id = `training.${tess}`;
  test('presumed: owed before the first day; the day after, late', () => {
    expect(dutyOf('training', presumed, workOn)).toMatchObject({
      id,
      when: 'beforeWorkStarts',
      dueOn: workOn,
      overdue: false,
    });
    expect(dutyOf('training', presumed, '2026-11-04')).toMatchObject({ overdue: true, late: true });
    expect(kindsIn(presumed, workOn)).not.toContain('trainingYearly');
  });
  test('measured where nothing was presumed: owed from the day on which the result was there', () => {
    const days = [{ workOn, averageUgPerM3: 80, receivedOn: '2026-11-10', taskIds: ['glazing'] }];
    expect(dutyOf('training', jobBook({ days }), '2026-11-10')).toMatchObject({ dueOn: '2026-11-10', overdue: false });
  });
  test('done in time: done, with a day a year later', () => {
    const book = withDone(presumed, done(id, '2026-11-02'));
    expect(dutyOf('training', book, '2026-11-20')).toMatchObject({
      late: false,
      overdue: false,
      done: { on: '2026-11-02' },
    });
    expect(dutyOf('trainingYearly', book, '2026-11-20')).toMatchObject({
      dueOn: '2027-11-02',
      when: 'by',
      done: null,
      late: false,
    });
    expect(dutyOf('trainingYearly', book, '2027-11-02').overdue).toBe(false);
    expect(dutyOf('trainingYearly', book, '2027-11-03')).toMatchObject({ overdue: true, late: true });
  });
  test('the year after: counted from the day on which it was done again; a late one stays visible', () => {
    const again = (on: string) => withDone(presumed, done(id, '2026-11-02'), done(`trainingYearly.${tess}`, on));
    expect(dutyOf('trainingYearly', again('2027-10-20'), '2027-12-01')).toMatchObject({
      dueOn: '2028-10-20',
      late: false,
    });
    const late = dutyOf('trainingYearly', again('2027-12-01'), '2027-12-02');
    expect(late).toMatchObject({ dueOn: '2028-12-01', late: true, overdue: false });
    expect(late.params.lastDueOn).toBe('2027-11-02');
  });
  test('29 February: the next is due on 28 February', () => {
    const book = withDone(jobBook({ roster: [rosterDay(tess, '2028-03-01')] }), done(id, '2028-02-29'));
    expect(dutyOf('trainingYearly', book, '2028-03-02').dueOn).toBe('2029-02-28');
  });
  test('done after the first day: done, and late', () => {
    const book = withDone(presumed, done(id, '2026-11-05'));
    expect(dutyOf('training', book, '2026-11-20')).toMatchObject({
      late: true,
      overdue: false,
      done: { on: '2026-11-05' },
    });
  });
});

describe('(e)(2): the written programme, before the job and revised at least every year', () => {
  const id = `programme.${siteId}`;
  test('before the job; written ahead of it, it is done', () => {
    expect(dutyOf('programme', presumed, workOn)).toMatchObject({ id, when: 'beforeWorkStarts', dueOn: workOn });
    const book = withDone(presumed, done(id, '2026-10-20'));
    expect(dutyOf('programme', book, '2026-11-09')).toMatchObject({
      late: false,
      done: { on: '2026-10-20', whereItLies: 'green folder' },
    });
    expect(dutyOf('programmeRevision', book, '2026-11-09')).toMatchObject({
      dueOn: '2027-10-20',
      paragraph: '(e)(2)(v)',
    });
  });
  test('(e)(2)(iii): inspections count until the next day of work', () => {
    const seen = done(`inspections.${siteId}`, workOn);
    expect(dutyOf('inspections', withDone(presumed, seen), '2026-11-05').done?.on).toBe(workOn);
    const twoDays = jobBook({ roster: [rosterDay(tess, workOn), rosterDay(tess, '2026-11-04')] });
    const open = dutyOf('inspections', withDone(twoDays, seen), '2026-11-05');
    expect(open.done).toBeNull();
    expect(open.params.lastDoneOn).toBe(workOn);
    expect(open.decidedBy).toBe('competentPerson');
  });
  test('fifteen days without work: what lasts with the work is owed before the next day of it; what was missed stays late', () => {
    expect(dutyOf('programme', presumed, addDays(workOn, 14))).toMatchObject({
      when: 'beforeWorkStarts',
      overdue: true,
    });
    expect(dutyOf('programme', presumed, addDays(workOn, 15))).toMatchObject({
      when: 'beforeOrOnFirstDayAgain',
      overdue: false,
      late: true,
    });
  });
});

describe('(j)(1)(ii): more than 30 days in any consecutive 12 months', () => {
  const days = (count: number, from = '2026-01-05', step = 7) =>
    jobBook({ roster: Array.from({ length: count }, (_, i) => rosterDay(tess, addDays(from, i * step))) });
  test('30 days: not asked; 31: asked, counted as presumed, and the physician told', () => {
    const today = '2026-12-20';
    expect(kindsIn(days(30), today)).not.toContain('surveillance');
    const duty = dutyOf('surveillance', days(31), today);
    expect(duty).toMatchObject({ presumed: true, decidedBy: 'physician', paragraph: '(j)(1)(ii)' });
    expect(duty.params).toMatchObject({ daysCount: 31, presumedCount: 31, moreThanDays: 30 });
    expect(dutyOf('physicianTold', days(31), today).paragraph).toBe('(j)(3)(iv)(A)(3)');
  });
  test('31 days spread over more than twelve months: not asked', () => {
    // 30 steps of 13 days are 390 days: 365 days hold 29 of them
    expect(kindsIn(days(31, '2025-11-03', 13), '2026-12-20')).not.toContain('surveillance');
  });
});

describe('1910.1020: told on hiring and every year; records within 15 working days', () => {
  const request = {
    ...base('request', 'y00000000001'),
    ...{
      requestId: 'y00000000001',
      askedOn: '2026-11-25',
      by: 'Vera Vent',
      personId: tess,
      as: 'worker' as const,
      remark: null,
    },
  };
  const book = { ...presumed, requests: new Map([[request.id, request]]) };
  test('(e)(1)(i): asked on Wednesday 25 November 2026, the fifteenth working day is Wednesday 16 December', () => {
    // 26 27 | 30 1 2 3 4 | 7 8 9 10 11 | 14 15 16; without Thanksgiving, 26 November, the 17th
    expect(dutyOf('recordsAccess', book, '2026-12-16')).toMatchObject({
      id: 'recordsAccess.y00000000001',
      dueOn: '2026-12-16',
      laterReadingOn: '2026-12-17',
      overdue: false,
      paragraph: '(e)(1)(i)',
    });
    expect(dutyOf('recordsAccess', book, '2026-12-17').overdue).toBe(true);
    const late = withDone(book, done('recordsAccess.y00000000001', '2026-12-20'));
    expect(dutyOf('recordsAccess', late, '2026-12-21')).toMatchObject({ late: true, done: { on: '2026-12-20' } });
  });
  test("(g)(1): our own workers, not another employer's", () => {
    const other = { ...person(vic, 'Vic Vise'), employer: 'Glass and Grit' };
    const two = jobBook({
      roster: [rosterDay(tess, workOn), rosterDay(vic, workOn)],
      people: [person(tess, 'Tess Trestle'), other],
    });
    expect(dutyOf('recordsTold', two, workOn).workerIds).toEqual([tess]);
    expect(
      dutiesIn(two, workOn).filter(({ kind, workerIds }) => kind === 'training' && workerIds.includes(vic)),
    ).toHaveLength(1);
  });
  test('(n)(1)(iii): kept for 30 years from the newest entry', () => {
    expect(dutyOf('keepRecords', high, '2026-11-20').params).toMatchObject({
      keepUntilOn: '2056-11-10',
      keepYears: 30,
    });
  });
});

describe('(d)(6): dates of measuring again', () => {
  test('above the PEL: three calendar months after the sample, late from the day after', () => {
    const duty = dutyOf('quarterly', high, '2027-01-20');
    expect(duty).toMatchObject({
      paragraph: '(d)(6)(iii)',
      workerIds: [tess],
      measurementIds: [workdayIdOf(tess, workOn)],
    });
    const still = jobBook({
      days: [{ workOn, averageUgPerM3: 80, receivedOn: '2026-11-10' }],
      roster: [rosterDay(tess, '2027-02-03'), rosterDay(tess, '2027-02-04')],
    });
    expect(dutyOf('quarterly', still, '2027-02-03')).toMatchObject({ dueOn: '2027-02-03', overdue: false, when: 'by' });
    expect(dutyOf('quarterly', still, '2027-02-04').overdue).toBe(true);
  });
  test('two low results of one worker, seven days apart, stop hers and not his', () => {
    const hot = (workerId: string) => ({ workerId, workOn, averageUgPerM3: 80 });
    const low = (on: string) => ({ workerId: tess, workOn: on, averageUgPerM3: 12 });
    const both = jobBook({ days: [hot(tess), hot(vic), low('2026-11-10'), low('2026-11-17')] });
    const six = jobBook({ days: [hot(tess), hot(vic), low('2026-11-10'), low('2026-11-16')] });
    const whose = (book: typeof both) =>
      dutiesIn(book, '2026-11-20')
        .filter(({ kind }) => kind === 'quarterly')
        .flatMap(({ workerIds }) => workerIds);
    expect(whose(both)).toEqual([vic]);
    expect([...whose(six)].sort()).toEqual([tess, vic]);
  });
});

describe('ids', () => {
  test('letters, digits, dots and hyphens, as the fact that a duty was done takes them; each once', () => {
    const longest = groupKeyOf(
      'outdoors',
      olga,
      Array.from({ length: 12 }, (_, i) => `powerSandingCollected${i}`),
    );
    const ids = [
      dutyIdOf('x'.repeat(30), [tess, longest, workdayIdOf(tess, workOn)]),
      dutyIdOf('notice', ['Old | "library"']),
    ];
    const all = dutiesIn(high, '2026-11-20').map(({ id }) => id);
    expect(new Set(all).size).toBe(all.length);
    for (const dutyId of [...ids, ...all])
      expect(
        factBodies['dutyDone.v1'].safeParse({ dutyId, doneOn: workOn, doneById: null, whereItLies: null, remark: null })
          .success,
        dutyId,
      ).toBe(true);
  });
  test('the hash is FNV-1a of 64 bits: its published test values', () => {
    // Fowler, Noll, Vo: FNV-1a 64 of '' is cbf29ce484222325, of 'a' af63dc4c8601ec8c, of 'foobar' 85944171f73967e8
    const base32 = (hex: string) => {
      const digits = '0123456789abcdefghjkmnpqrstvwxyz';
      return BigInt(`0x${hex}`)
        .toString(32)
        .padStart(13, '0')
        .replace(/./g, (digit) => digits[Number.parseInt(digit, 32)] ?? '');
    };
    expect(shortHash('')).toBe(base32('cbf29ce484222325'));
    expect(shortHash('a')).toBe(base32('af63dc4c8601ec8c'));
    expect(shortHash('foobar')).toBe(base32('85944171f73967e8'));
  });
  test('every trigger of shared/duties is looked for', () => {
    expect(triggersMissing()).toEqual([]);
  });
});
