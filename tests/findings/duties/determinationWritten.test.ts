/** A job that rests on an earlier measurement, 29 CFR 1926.62(d)(3)(iii), and a determination that was written, (d)(5). */
import { describe, expect, test } from 'vitest';
import type { DeterminationBlockKey } from '#findings/duties/determining/determination.ts';
import { determinationFor } from '#findings/duties/determining/determinations.ts';
import { groupKeyOf } from '#findings/duties/groups/taskGroup.ts';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { Book, DeterminationRecord, RelianceRecord } from '#records/book.ts';
import { base, factId, site, siteId } from '../sliceRegisters.ts';
import { type Day, jobBook, reliance, rosterDay, shiftOn, tess, vic, workdayIdOf } from './jobBook.ts';

const [annex, workOn, jobOn] = ['s00000000002', '2026-11-03', '2026-11-25'];
const sites = [site(), site({ id: annex, siteId: annex, key: `site:${annex}`, name: 'Library annex' })];
const scraping = groupKeyOf('indoors', null, ['handScraping']);
const low: Day = { workOn, averageUgPerM3: 12 };
const no = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;
const asked = { ...no, factId: 'wwwwwwwwwwww.00003333' };

const determined = (book: Book, at: string, today = '2026-11-30') =>
  determinationFor(at, scraping, measurementsOf(book), book, groupDaysOf(book), today);

/** The crew goes on in the annex, and rests on what was measured in the library. */
interface Rests {
  readonly more?: Partial<RelianceRecord>;
  readonly day?: Partial<Day>;
  readonly changes?: typeof asked | Record<string, string> | null;
  readonly measuredThere?: Day;
}
function annexBook({ more = {}, day = {}, changes = asked, measuredThere }: Rests = {}): Book {
  const measured = { ...low, ...day };
  const relied = reliance({
    ...{ measurementId: workdayIdOf(tess, measured.workOn), shiftId: `${annex}.${jobOn}` },
    ...more,
  });
  const shift = shiftOn(jobOn, { changes: changes as typeof asked | null }, {}, annex);
  const there = measuredThere ? [{ ...measuredThere, siteId: annex }] : [];
  return jobBook({
    ...{ sites, reliances: [relied], shifts: [shift], days: [measured, ...there] },
    roster: [rosterDay(vic, jobOn, annex)],
  });
}

describe('(d)(3)(iii): a job that rests on an earlier measurement', () => {
  test('own, under a year, alike in five respects, nothing new: negative may be written', () => {
    expect(determined(annexBook(), annex)).toMatchObject({
      ...{ outcome: 'negativeMayBeWritten', blocks: [], monitoredIds: [tess] },
      relianceIds: ['v00000000001'],
    });
  });

  test.each<readonly [DeterminationBlockKey, string, Rests]>([
    ['unlike', 'another control', { more: { controls: 'unlike' } }],
    ['resemblanceNotAsked', 'nobody knows the material', { more: { material: 'notKnown' } }],
    ['tooOld', 'twelve months and a day', { day: { workOn: '2025-11-24' } }],
    ['notOwnData', 'not said to be own', { more: { ownFirm: 'notStated' } }],
    ['changesNotAsked', '(d)(7) not asked at the start', { changes: null }],
    ['changesNotAsked', '(d)(7) nobody knows', { changes: { ...asked, personnel: 'notKnown' } }],
    ['changeNoted', '(d)(7) a new tool', { changes: { ...asked, equipment: 'yes' } }],
    ['noMeasurement', 'it is not in the book', { more: { measurementId: 'r00000000009' } }],
    ['irregularDay', 'measured on a day that was rained off', { day: { regular: 'no' } }],
    ['sampleDoubtful', 'no flow after', { day: { flowAfter: false } }],
  ])('%s: %s', (key, _, rests) => {
    const found = determined(annexBook(rests), annex);
    expect(found.blocks.map((one) => one.key)).toContain(key);
    expect(found.outcome).toBe('open');
  });

  test('obtained on the same day of the year before is within twelve months', () => {
    expect(determined(annexBook({ day: { workOn: '2025-11-25' } }), annex).outcome).toBe('negativeMayBeWritten');
  });

  test('(d)(4): a high one is positive, however unlike and old it is', () => {
    const book = annexBook({ day: { averageUgPerM3: 31, workOn: '2024-11-05' }, more: { processes: 'unlike' } });
    expect(determined(book, annex).outcome).toBe('positive');
  });

  test('once the job itself was measured, why it could not rest on another bears on nothing', () => {
    const rests: Rests = { more: { controls: 'unlike' }, changes: null };
    const measuredThere: Day = { workOn: jobOn, averageUgPerM3: 9, workerId: vic };
    expect(determined(annexBook(rests), annex).outcome).toBe('open');
    expect(determined(annexBook({ ...rests, measuredThere }), annex).outcome).toBe('negativeMayBeWritten');
  });
});

describe('(d)(5): what was written, held against what is so now', () => {
  const papers = { pdfHash: '0'.repeat(64), editions: { app: '0', rules: '0', formulas: '0' }, heads: [] };
  const written = (more: Partial<DeterminationRecord['written']> = {}): DeterminationRecord => ({
    ...base('determination', 'd00000000001'),
    written: {
      ...{ determinationId: 'd00000000001', outcome: 'negative', siteId, shiftId: null, location: 'reading room' },
      ...{ determinedOn: '2026-11-12', taskIds: ['handScraping'], jobClassificationId: null, relianceIds: [] },
      ...{ measurementIds: [workdayIdOf(tess, workOn)], monitoredIds: [tess], standsForIds: [] },
      ...{ observations: null, earlierMeasurements: null, complaints: null, determination: {}, ...papers },
      ...{ factId: factId(), at: '2026-11-12T20:00:00.000Z', by: null },
      ...more,
    },
  });
  const withWritten = (days: readonly Day[], more: Partial<DeterminationRecord['written']> = {}): Book => {
    const record = written(more);
    return jobBook({ days, more: { determinations: new Map([[record.id, record]]) } });
  };

  test('it stands while nothing is new', () => {
    expect(determined(withWritten([low]), siteId)).toMatchObject({
      writtenId: 'd00000000001',
      differsFromRecord: false,
    });
  });

  test('(d)(6)(i): written in time, it does not grow too old; not written, the measurement does', () => {
    const [inTime, aYearOn] = [withWritten([low]), '2027-12-01'];
    expect(determined(inTime, siteId, aYearOn)).toMatchObject({
      outcome: 'negativeMayBeWritten',
      differsFromRecord: false,
    });
    const never = determined(jobBook({ days: [low] }), siteId, aYearOn);
    expect(never.blocks.map(({ key }) => key)).toEqual(['tooOld']);
  });

  test.each<readonly [string, readonly Day[], Partial<DeterminationRecord['written']>]>([
    ['another measurement', [low, { ...low, workOn: '2026-11-17' }], {}],
    ['a high one', [low, { ...low, workOn: '2026-11-17', averageUgPerM3: 60 }], {}],
    ['a day that is doubtful now', [{ ...low, flowAfter: false }], {}],
    ['written as positive, though nothing is high', [low], { outcome: 'positive' }],
    [
      'another figure than it was written with',
      [low],
      {
        determination: {
          measurements: [{ measurementId: workdayIdOf(tess, workOn), twa8UgPerM3: { kind: 'exact', value: 11 } }],
        },
      },
    ],
  ])('differs by %s', (_, days, more) => {
    expect(determined(withWritten(days, more), siteId)).toMatchObject({
      writtenId: 'd00000000001',
      differsFromRecord: true,
    });
  });

  test('of other tasks, another site or other measurements it is another one', () => {
    expect(determined(withWritten([low], { taskIds: ['heatGun'] }), siteId).writtenId).toBeNull();
    expect(determined(withWritten([low], { siteId: annex }), siteId).writtenId).toBeNull();
    expect(determined(withWritten([low], { measurementIds: ['r00000000005'] }), siteId).writtenId).toBeNull();
  });
});
