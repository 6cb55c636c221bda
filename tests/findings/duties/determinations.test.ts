/**
 * The initial determination, 29 CFR 1926.62(d)(3) to (5), as the 2015 annual edition has it: each thing that keeps a negative one from
 * being written, by a book that shows it and by one that differs in nothing but its absence.
 */
import { describe, expect, test } from 'vitest';
import type { DeterminationBlockKey } from '#findings/duties/determining/determination.ts';
import { determinationFor, determinationsOf } from '#findings/duties/determining/determinations.ts';
import { groupKeyOf } from '#findings/duties/groups/taskGroup.ts';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { Book } from '#records/book.ts';
import { site, siteId } from '../sliceRegisters.ts';
import { explained, result } from '../slices.ts';
import {
  type Day,
  type Job,
  jobBook,
  massUgFor,
  olga,
  reported,
  rosterDay,
  shiftOn,
  tess,
  vic,
  workdayIdOf,
} from './jobBook.ts';

const workOn = '2026-11-03';
const today = '2026-11-25';
const scraping = groupKeyOf('indoors', null, ['handScraping']);
const low: Day = { workOn, averageUgPerM3: 12 };
const fresh: Day = { workOn: '2026-11-17', averageUgPerM3: 14 };

const determined = (book: Book, on = today, groupKey = scraping) =>
  determinationFor(siteId, groupKey, measurementsOf(book), book, groupDaysOf(book), on);
const keysIn = (book: Book, on = today): readonly DeterminationBlockKey[] => [
  ...new Set(determined(book, on).blocks.map(({ key }) => key)),
];
const keys = (job: Job, on = today) => keysIn(jobBook(job), on);

test('(d)(5): a proven low day of everyone in the group, on a regular day, may be written as negative', () => {
  const found = determined(jobBook({ days: [low] }));
  expect(found).toMatchObject({ outcome: 'negativeMayBeWritten', blocks: [], writtenId: null });
  expect(found).toMatchObject({ measurementIds: [workdayIdOf(tess, workOn)], monitoredIds: [tess] });
  expect(found.highest?.upperUgPerM3).toBeCloseTo(12, 9);
});

describe('(d)(3), (d)(5): what blocks a negative determination', () => {
  const laterReport = result({ lessThanUg: massUgFor(31) });
  const wide = { results: [laterReport] };
  const wallLeftOpen = { results: [result(massUgFor(20), { wallDeposit: 'notStated' })] };
  const roomy = { results: [result(massUgFor(5), { wallDeposit: 'notStated' })] };
  const minutes = explained(`${workOn}T21:00:00.000Z`, `${workOn}T22:00:00.000Z`, 'unknown');
  const longDay = {
    pieces: [{ startedAt: `${workOn}T13:00:00.000Z`, endedAt: `${workOn}T22:00:00.000Z`, place: null, employer: null }],
  };
  const asAway = { ...minutes, as: 'away' as const, reason: 'in the site office' };
  const on = (workOnOther: string, conditions: Parameters<typeof shiftOn>[2]) => shiftOn(workOnOther, {}, conditions);
  const asked = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;
  const changes = (more: object) => [
    shiftOn('2026-11-10', { changes: { ...asked, ...more, factId: 'wwwwwwwwwwww.00007777' } }),
  ];
  const gap = { writer: 'wwwwwwwwwwww', fromCount: 3, toCount: 5 };

  const cases: readonly (readonly [DeterminationBlockKey, string, Job, Job])[] = [
    ['noMeasurement', 'nothing but the roster', { roster: [rosterDay(tess, workOn)] }, { days: [low] }],
    [
      'resultOwed',
      'a cassette with the laboratory',
      { days: [low, { ...fresh, averageUgPerM3: null }] },
      { days: [low, fresh] },
    ],
    [
      'minutesUnknown',
      'an hour of which nobody knows',
      { days: [{ ...low, workday: { ...longDay, explained: [minutes] } }] },
      { days: [{ ...low, workday: { ...longDay, explained: [asAway] } }] },
    ],
    ['sampleDoubtful', 'no flow after', { days: [{ ...low, flowAfter: false }] }, { days: [low] }],
    ['notProvenBelow', 'a bound over the action level', { days: [{ ...low, sample: wide }] }, { days: [low] }],
    [
      'atOrAboveActionLevel',
      'exactly at it',
      { days: [{ ...low, averageUgPerM3: 30 }] },
      { days: [{ ...low, averageUgPerM3: 29.97 }] },
    ],
    ['irregularDay', 'rained off', { days: [{ ...low, regular: 'no' }] }, { days: [low] }],
    ['notAskedWhetherRegular', 'nobody asked', { days: [{ ...low, regular: null }] }, { days: [low] }],
    [
      'wallDepositOpen',
      'a deposit on the wall that could carry it there',
      { days: [{ ...low, sample: wallLeftOpen }] },
      { days: [{ ...low, sample: roomy }] },
    ],
    [
      'unlike',
      'dry on another day of the same work',
      { days: [low], roster: [rosterDay(tess, '2026-11-10')], shifts: [on('2026-11-10', { method: 'dry' })] },
      { days: [low], roster: [rosterDay(tess, '2026-11-10')], shifts: [on('2026-11-10', { weather: 'dryWindy' })] },
    ],
    [
      'resemblanceNotAsked',
      'conditions of another day that nobody noted',
      { days: [low], roster: [rosterDay(tess, '2026-11-10')], shifts: [shiftOn('2026-11-10', {}, null)] },
      { days: [low], roster: [rosterDay(tess, '2026-11-10')] },
    ],
    [
      'tooOld',
      'obtained twelve months and a day ago',
      { days: [{ ...low, workOn: '2025-11-24' }] },
      { days: [{ ...low, workOn: '2025-11-25' }] },
    ],
    ['notOwnData', "another firm's workers", { reported: [reported({ ownFirm: 'no' })] }, { reported: [reported()] }],
    [
      'notOwnData',
      'whose workers was not asked',
      { reported: [reported({ ownFirm: 'notStated' })] },
      { reported: [reported()] },
    ],
    [
      'notOwnData',
      "an inspector's sample alone",
      { reported: [reported({ from: 'inspector' })] },
      { reported: [reported()] },
    ],
    [
      'accuracyNotStated',
      '(d)(9) not stated',
      { reported: [reported({ accuracy: 'notStated' })] },
      { reported: [reported()] },
    ],
    [
      'notFullShift',
      '(d)(1)(iii) not stated',
      { reported: [reported({ fullShift: 'notStated' })] },
      { reported: [reported()] },
    ],
    [
      'changeNoted',
      '(d)(7) a new control since',
      { days: [low], shifts: changes({ control: 'yes' }) },
      { days: [low], shifts: changes({}) },
    ],
    [
      'changesNotAsked',
      '(d)(7) nobody knows who is new',
      { days: [low], shifts: changes({ personnel: 'notKnown' }) },
      { days: [low], shifts: changes({}) },
    ],
    [
      'takingIn',
      'a file that is half taken in',
      { days: [low], more: { takingIn: true } },
      { days: [low], more: { takingIn: false } },
    ],
    [
      'entriesMissing',
      'entries of another device up to that day',
      { days: [low], more: { missing: [{ ...gap, untilOn: workOn }] } },
      { days: [low], more: { missing: [{ ...gap, untilOn: '2026-11-02' }] } },
    ],
    [
      'ruleNotHeld',
      'a state with a plan of its own',
      { days: [{ ...low, averageUgPerM3: 1 }], sites: [site({ stateCode: 'CA' })] },
      { days: [{ ...low, averageUgPerM3: 1 }] },
    ],
    [
      'highestNotMeasured',
      '(d)(3)(ii) somebody on the roster was never measured',
      { days: [low], roster: [rosterDay(vic, workOn)] },
      { days: [low, { ...low, workerId: vic }] },
    ],
    [
      'highestNotMeasured',
      '(d)(3)(ii) and nobody said in writing whom the measured one stands for',
      { days: [low], roster: [rosterDay(vic, workOn)] },
      {
        days: [{ ...low, workday: { represents: [{ workerIds: [vic], factId: 'wwwwwwwwwwww.00006666' }] } }],
        roster: [rosterDay(vic, workOn)],
      },
    ],
  ];

  test.each(cases)('%s: %s', (key, _, shows, without) => {
    expect(keys(shows)).toContain(key);
    expect(determined(jobBook(shows)).outcome).not.toBe('negativeMayBeWritten');
    expect(keys(without)).not.toContain(key);
  });

  test.each(cases)('and its absence frees it: %s, %s', (_, __, ___, without) => {
    expect(determined(jobBook(without))).toMatchObject({ outcome: 'negativeMayBeWritten', blocks: [] });
  });

  test('statesDiffer: measured under a rule with other figures than that of the site today', () => {
    const bridge = site({ siteId: 's00000000002', id: 's00000000002', key: 'site:s00000000002', stateCode: 'CA' });
    const pieces = [{ ...low, averageUgPerM3: 1 }];
    const here = jobBook({ days: pieces });
    const moved: Book = { ...here, sites: new Map([[siteId, { ...bridge, siteId, id: siteId }]]) };
    const measurements = measurementsOf(here);
    const found = determinationFor(siteId, scraping, measurements, moved, groupDaysOf(moved), today);
    expect(found.blocks.map(({ key }) => key)).toContain('statesDiffer');
  });

  test('objective data end nothing that is presumed, (d)(3)(iv)(B): the block names the tier of the task', () => {
    const found = determined(jobBook({ roster: [rosterDay(tess, workOn)] }));
    expect(found.blocks).toMatchObject([{ key: 'noMeasurement', params: { tier: '1' } }]);
    expect(found.outcome).toBe('open');
  });

  test('a group that nobody knows at a site has no measurement', () => {
    expect(determined(jobBook({}), today, scraping)).toMatchObject({ outcome: 'open', measurementIds: [] });
  });
});

describe('(d)(4)(i): positive as soon as somebody may be at or above the action level, and no doubt blocks it', () => {
  const doubtful: Day = { ...low, averageUgPerM3: 44, regular: 'no', workday: { otherWork: null } };
  test.each<readonly [string, Job]>([
    ['exactly at it', { days: [{ ...low, averageUgPerM3: 30 }] }],
    ['a bound over it', { days: [{ ...low, sample: { results: [result({ lessThanUg: massUgFor(31) })] } }] }],
    ['an irregular day with other work not asked for', { days: [doubtful] }],
    [
      'a void sample that still shows it',
      { days: [{ ...low, averageUgPerM3: 90, sample: { voided: { why: 'wet', factId: 'v' } } }] },
    ],
    ['more than a year old', { days: [{ ...low, averageUgPerM3: 44, workOn: '2024-11-05' }] }],
    ['of another firm', { reported: [reported({ average: { kind: 'measured', twa8UgPerM3: 44 }, ownFirm: 'no' })] }],
    ['one high day among low ones', { days: [low, fresh, { ...low, workerId: vic, averageUgPerM3: 55 }] }],
    ['a file half taken in', { days: [doubtful], more: { takingIn: true } }],
  ])('%s', (_, job) => {
    expect(determined(jobBook(job)).outcome).toBe('positive');
  });
});

describe('low figures that stand beside better ones', () => {
  test('a rained-off day is replaced by a later regular one of the same worker, and by nobody else', () => {
    const rain: Day = { ...low, regular: 'no' };
    expect(determined(jobBook({ days: [rain, fresh] }))).toMatchObject({
      outcome: 'negativeMayBeWritten',
      measurementIds: [workdayIdOf(tess, fresh.workOn)],
    });
    expect(keys({ days: [rain, { ...fresh, workerId: vic }] })).toContain('irregularDay');
    expect(keys({ days: [fresh, { ...rain, workOn: '2026-11-24' }] })).toContain('irregularDay');
  });

  test('any other doubt stays: it might hide a high one', () => {
    expect(keys({ days: [{ ...low, flowAfter: false }, fresh] })).toContain('sampleDoubtful');
  });

  test("an inspector's low sample on another day stands beside ours and blocks nothing", () => {
    const inspector = reported({ from: 'inspector', accuracy: 'notStated', workOn: '2026-11-04' });
    const book = jobBook({ days: [low], reported: [inspector], shifts: [shiftOn('2026-11-04')] });
    expect(determined(book).outcome).toBe('negativeMayBeWritten');
  });

  test('a change is answered by a measurement of that day or later, (d)(7)', () => {
    const changed = { equipment: 'yes', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;
    const shifts = [shiftOn('2026-11-17', { changes: { ...changed, factId: 'wwwwwwwwwwww.00005555' } })];
    expect(keys({ days: [low], shifts })).toContain('changeNoted');
    expect(keys({ days: [low, fresh], shifts })).not.toContain('changeNoted');
  });
});

test('every site and task group has its finding, in a fixed order', () => {
  const book = jobBook({
    days: [low, { ...fresh, workerId: olga, taskIds: ['heatGun'] }],
    roster: [rosterDay(vic, workOn)],
  });
  const found = determinationsOf(measurementsOf(book), book, groupDaysOf(book), today);
  expect(found.map(({ groupKey }) => groupKey)).toEqual([scraping, groupKeyOf('indoors', null, ['heatGun'])]);
  expect(found[0]).toEqual(determined(book));
});
