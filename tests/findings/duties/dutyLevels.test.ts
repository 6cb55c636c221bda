/**
 * Which duties appear at which 8-hour average: 29 CFR 1926.62 as the 2015 annual edition has it. The table is written from the text of
 * the paragraphs: at or above the action level of 30; above the PEL of 50; over 200; the notice's statement at or above 50.
 */
import { describe, expect, test } from 'vitest';
import { findDuties } from '#findings/duties/findDuties.ts';
import { limitSetOn } from '#reference/limits.ts';
import { site } from '../sliceRegisters.ts';
import { dutyOf, kindsIn } from './dutyCases.ts';
import { jobBook, rosterDay, tess, workdayIdOf } from './jobBook.ts';

const workOn = '2026-11-03';
const today = '2026-11-05';
/** Not on the list of (d)(2): nothing is presumed of it. */
const taskIds = ['glazing'];
const at = (averageUgPerM3: number) => jobBook({ days: [{ workOn, averageUgPerM3, taskIds }] });

const always = ['handWashing', 'housekeeping', 'keepRecords', 'notice', 'recordsTold'];
const fromActionLevel = ['bloodTests', 'training', 'observation'];
const abovePel = [
  'controls',
  'programme',
  'inspections',
  'respirator',
  'protectiveClothing',
  'laundryTold',
  'containerLabel',
  'noFoodTobacco',
  'changeAreas',
  'showersEating',
  'signs',
];

describe('29 CFR 1926.62: at, one part in a thousand below and above each level', () => {
  test.each([
    [8, ['writeDetermination']],
    [29.97, ['writeDetermination']],
    [30, [...fromActionLevel, 'sixMonthly']],
    [30.03, [...fromActionLevel, 'sixMonthly']],
    [49.95, [...fromActionLevel, 'sixMonthly']],
    [50, [...fromActionLevel, 'sixMonthly', 'correctiveAction']],
    [50.05, [...fromActionLevel, ...abovePel, 'quarterly', 'correctiveAction', 'cleanClothingWeekly']],
    [199.8, [...fromActionLevel, ...abovePel, 'quarterly', 'correctiveAction', 'cleanClothingWeekly']],
    [200, [...fromActionLevel, ...abovePel, 'quarterly', 'correctiveAction', 'cleanClothingWeekly']],
    [200.2, [...fromActionLevel, ...abovePel, 'quarterly', 'correctiveAction', 'cleanClothingDaily']],
  ])('an 8-hour average of %d µg/m³', (average, more) => {
    expect([...kindsIn(at(average), today)].sort()).toEqual([...always, ...more].sort());
  });

  test.each([
    ['bloodTests', '(j)(1)(i)', 30],
    ['training', '(l)(1)', 30],
    ['sixMonthly', '(d)(6)(ii)', 30],
    ['quarterly', '(d)(6)(iii)', 50.05],
    ['respirator', '(f)(1)', 50.05],
    ['protectiveClothing', '(g)(1)', 50.05],
    ['cleanClothingWeekly', '(g)(2)(i)', 50.05],
    ['cleanClothingDaily', '(g)(2)(i)', 200.2],
    ['programme', '(e)(2)', 50.05],
    ['inspections', '(e)(2)(iii)', 50.05],
    ['changeAreas', '(i)(2)', 50.05],
    ['signs', '(m)(1)(i)', 50.05],
    ['notice', '(d)(8)(i)', 8],
    ['correctiveAction', '(d)(8)(ii)', 50],
    ['writeDetermination', '(d)(5)', 8],
    ['handWashing', '(i)(5)', 8],
    ['observation', '(o)', 30],
  ])('%s is asked by %s and not below its level', (kind, paragraph, average) => {
    const duty = dutyOf(kind, at(average), today);
    expect(duty).toMatchObject({ paragraph, presumed: false, limitSetId: 'us-fed-constr-lead' });
    expect(duty.source.mark).toBe('READ');
  });
});

describe('(d)(2): presumed until it is measured', () => {
  const onRoster = (tasks: readonly string[]) => {
    const entry = rosterDay(tess, workOn);
    return jobBook({
      roster: [{ ...entry, worked: (entry.worked ?? []).map((one) => ({ ...one, taskIds: [...tasks] })) }],
    });
  };

  test.each([
    ['(d)(2)(v)(A)', 'respirator'],
    ['(d)(2)(v)(B)', 'protectiveClothing'],
    ['(d)(2)(v)(C)', 'changeAreas'],
    ['(d)(2)(v)(E)', 'bloodTests'],
    ['(d)(2)(v)(F)', 'training'],
  ])('%s: %s, for scraping by hand, taking off with a power tool, blasting', (paragraph, kind) => {
    for (const tasks of [['handScraping'], ['powerToolOpen'], ['abrasiveBlasting']])
      expect(dutyOf(kind, onRoster(tasks), today)).toMatchObject({ paragraph, presumed: true, measurementIds: [] });
  });

  test('(i)(5), (d)(2)(v)(D): hand washing is asked of every lead work, presumed or not', () => {
    for (const tasks of [['handScraping'], ['glazing']])
      expect(kindsIn(onRoster(tasks), today)).toContain('handWashing');
  });

  test('(d)(1)(i): a task that is not on the list is to be measured too, and nothing is presumed of it', () => {
    const kinds = kindsIn(onRoster(['glazing']), today);
    expect([...kinds].sort()).toEqual([
      'handWashing',
      'housekeeping',
      'initialDetermination',
      'observation',
      'recordsTold',
    ]);
    expect(dutyOf('initialDetermination', onRoster(['glazing']), today).presumed).toBe(false);
    expect(dutyOf('initialDetermination', onRoster(['handScraping']), today).presumed).toBe(true);
  });

  test('(d)(2)(i)(B): a proven day not above the PEL ends what was presumed, and keeps what its own figure asks', () => {
    const book = jobBook({ days: [{ workOn, averageUgPerM3: 40 }] });
    expect(kindsIn(book, today)).not.toContain('respirator');
    expect(dutyOf('bloodTests', book, today)).toMatchObject({ presumed: false, paragraph: '(j)(1)(i)' });
  });

  test.each([
    ['not a regular day', { regular: 'no' as const }],
    ['no flow after', { flowAfter: false }],
    ['the result is owed', { averageUgPerM3: null }],
  ])('doubt ends nothing: %s', (_, more) => {
    const book = jobBook({ days: [{ workOn, averageUgPerM3: 12, ...more }] });
    expect(dutyOf('respirator', book, today)).toMatchObject({ presumed: true, paragraph: '(d)(2)(v)(A)' });
    expect(dutyOf('protectiveClothing', book, today).presumed).toBe(true);
  });

  test('doubt asks to measure again: a low figure of a day that was not the regular one', () => {
    const book = jobBook({ days: [{ workOn, averageUgPerM3: 12, regular: 'no' }] });
    expect(dutyOf('measureAgain', book, today)).toMatchObject({
      id: `measureAgain.${workdayIdOf(tess, workOn)}`,
      fulfilledBy: 'measurement',
    });
    expect(kindsIn(book, today)).not.toContain('writeDetermination');
  });
});

describe('whose rule', () => {
  test.each([
    ['OR', 'statePlan'],
    ['CA', 'statePlanPartlyHeld'],
    ['ZZ', 'unknownState'],
  ] as const)('%s: figures, no list of duties, and one line for the site', (stateCode, governs) => {
    const found = findDuties(jobBook({ days: [{ workOn, averageUgPerM3: 300 }], sites: [site({ stateCode })] }), today);
    expect(limitSetOn(workOn, stateCode).heldComplete).toBe(false);
    expect(found.duties).toEqual([]);
    expect(found.notHeld).toMatchObject([{ siteId: site().id, stateCode, governs }]);
    expect(found.measurements.size).toBe(1);
    expect(found.notices).toHaveLength(1);
  });

  test('a federal site beside it keeps its list', () => {
    const other = site({ id: 's00000000002', siteId: 's00000000002', name: 'Footbridge', stateCode: 'OR' });
    const found = findDuties(
      jobBook({
        days: [
          { workOn, averageUgPerM3: 300 },
          { workOn: '2026-11-04', averageUgPerM3: 300, siteId: other.id },
        ],
        sites: [site(), other],
      }),
      today,
    );
    expect(found.notHeld).toHaveLength(1);
    expect(new Set(found.duties.flatMap(({ siteId }) => siteId ?? []))).toEqual(new Set([site().id]));
  });
});

describe("the firm's own stricter limits", () => {
  const own = (averageUgPerM3: number, ownActionLevelUgPerM3: number | null, ownPelUgPerM3: number | null) => {
    const book = at(averageUgPerM3);
    const limits = { besideIds: [], ownActionLevelUgPerM3, ownPelUgPerM3, factId: 'wwwwwwwwwwww.00000099' };
    return { ...book, book: book.book && { ...book.book, limits } };
  };

  test.each([
    [24.975, false],
    [25, false],
    [25.025, true],
  ])('our own PEL of 25, an average of %d: what is asked above the PEL %s', (average, asked) => {
    const kinds = kindsIn(own(average, null, 25), today);
    for (const kind of ['respirator', 'signs', 'programme', 'protectiveClothing'])
      expect(kinds.includes(kind), kind).toBe(asked);
  });

  test.each([
    [9.99, false],
    [10, true],
  ])('our own action level of 10, an average of %d: what is asked from the action level %s', (average, asked) => {
    const kinds = kindsIn(own(average, 10, null), today);
    for (const kind of ['bloodTests', 'training', 'sixMonthly']) expect(kinds.includes(kind), kind).toBe(asked);
  });

  test('looser ones relax nothing', () => {
    expect(kindsIn(own(60, 100, 500), today)).toEqual(kindsIn(at(60), today));
  });

  test('the words can tell that it is by our own limit', () => {
    expect(dutyOf('respirator', own(27, null, 25), today).params.ownLimitUgPerM3).toBe(25);
    expect(dutyOf('bloodTests', own(12, 10, null), today).params.ownLimitUgPerM3).toBe(10);
    expect(dutyOf('respirator', own(60, null, 25), today).params.ownLimitUgPerM3).toBeUndefined();
  });
});
