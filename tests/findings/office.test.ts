/** The run sheet, what is due, field blanks, presumed tiers, and the custody sheet with its gaps. Expected values by hand. */
import { describe, expect, it } from 'vitest';
import { blanksNeeded } from '#findings/blanks.ts';
import { custodySheetFor } from '#findings/custody.ts';
import { findDue } from '#findings/due.ts';
import { custodyGaps, workdayGaps } from '#findings/gaps.ts';
import { findOnWorker } from '#findings/onWorker.ts';
import { findPresumption } from '#findings/presumption.ts';
import { sheetDiffers } from '#findings/sheetDiffers.ts';
import type { Book, BoxRecord } from '#records/book.ts';
import { contradictionsOf, custodySheet } from '#records/custodySheet.ts';
import { at, boxId, factId, workdayId } from './sliceRegisters.ts';
import { blank, box, check, interval, result, sample, slice, workday } from './slices.ts';

const id = 'c00000000001';
const running = (more = {}) =>
  sample('07:00', '15:00', [], { stopped: null, sealed: null, intervals: [interval(at('07:00'), null)], ...more });
const before = [check('f00000000001', 'before', '06:40', 2)];

describe('the run sheet', () => {
  const aim = { methodId: 'niosh-7082', reportingLimitUg: 9, actionLevelFraction: 1 };
  const at0 = (time: string, more = {}) =>
    findOnWorker(id, slice({ checks: before, samples: [running(more)] }), at(time), aim);

  it('9 µg at 30 µg/m³ need 300 L (Cd-E 3.12.6): at 2 L/min after 150 min, not before', () => {
    const early = at0('09:00');
    expect(early.litresIfHeld?.estimate).toEqual({ kind: 'exact', value: 240 });
    expect(early.litresNeeded?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(300, 9) });
    expect(early).toMatchObject({ enough: 'notYet', soFarMin: 120 });
    expect(early.minutesToGoMin).toBeCloseTo(30, 9);
    expect(at0('09:30').enough).toBe('yes');
  });

  it('less than the 200 L of NIOSH 7082 (READ) is never enough', () => {
    const small = { ...aim, reportingLimitUg: 1 };
    const found = findOnWorker(id, slice({ checks: before, samples: [running()] }), at('08:00'), small);
    expect(found.litresNeeded?.estimate).toEqual({ kind: 'exact', value: 200 });
    expect(found.enough).toBe('notYet');
  });

  it('methods B12: looks about every two hours, counted from the last', () => {
    expect(at0('08:59')).toMatchObject({ nextLookAt: at('09:00'), lookOverdue: false });
    const look = {
      sampleId: id,
      running: true,
      inPlace: true,
      remark: null,
      at: at('08:30'),
      entry: 'tapped',
      factId: 'l',
    } as const;
    expect(at0('10:31', { looks: [look] })).toMatchObject({ nextLookAt: at('10:30'), lookOverdue: true });
  });

  it('without a flow before nothing is claimed', () => {
    const found = findOnWorker(id, slice({ checks: [], samples: [running()] }), at('12:00'), aim);
    expect(found).toMatchObject({ litresIfHeld: null, enough: 'notKnown', minutesToGoMin: null });
  });
});

describe('what is due', () => {
  const keysAt = (book: Book, now: string) => findDue(book, at(now)).map(({ key }) => key);

  it('in the order of the day, on one worker', () => {
    const prepared = running({ putOn: null, fitting: null, intervals: [] });
    expect(keysAt(slice({ checks: [], samples: [prepared] }), '06:45')).toEqual(['flowBefore', 'fit', 'putOn']);
    expect(keysAt(slice({ checks: before, samples: [running()] }), '08:00')).toEqual(['look']);
    const stopped = sample('07:00', '15:00', [], { sealed: null });
    const after = keysAt(slice({ checks: before, samples: [stopped] }), '15:05');
    expect(after.slice(0, 2)).toEqual(['flowAfter', 'seal']);
    expect(after).toEqual(expect.arrayContaining(['blanks', 'conditions']));
  });

  it('a look that is overdue comes first, and a pump still running after the hours of work is to be stopped', () => {
    const [first] = findDue(slice({ checks: before, samples: [running()] }), at('09:20'));
    expect(first).toMatchObject({ key: 'look', overdue: true, dueAt: at('09:00') });
    const late = slice({ checks: before, samples: [running()], day: workday([['07:00', '15:00']]) });
    expect(keysAt(late, '15:30')).toEqual(expect.arrayContaining(['look', 'stop']));
  });

  it('a backup is due when there was none', () => {
    const book = slice({ samples: [sample('07:00', '15:00', [])] });
    const keys = findDue(book, at('16:00'), { lastBackupAt: null }).map(({ key }) => key);
    expect(keys).toContain('backup');
    expect(findDue(book, at('16:00'), { lastBackupAt: at('15:30') }).map(({ key }) => key)).not.toContain('backup');
  });
});

describe('methods B18: field blanks by two published counts', () => {
  it.each([
    [1, 2, 2],
    [10, 2, 2],
    [20, 2, 4],
    [30, 3, 6],
    [50, 5, 10],
    [80, 8, 10],
  ])('%i samples: %i (29 CFR 1910.1001 App. B 5.2.9) or %i (NMAM chapter D, p. 32)', (n, ten, per) => {
    expect(blanksNeeded(n, 'tenPercent').count).toBe(ten);
    expect(blanksNeeded(n, 'twoPerTen').count).toBe(per);
  });
});

describe('29 CFR 1926.62(d)(2): presumed until measured', () => {
  it('(i) scraping by hand: above the PEL up to ten times it, factor 10', () => {
    const found = findPresumption(['handScraping'], 'tested');
    expect(found).toMatchObject({
      tier: '1',
      presumedAbove: { value: 50 },
      presumedUpTo: { value: 500 },
      leastApf: { value: 10 },
    });
    expect(found.respirators.every(({ apf }) => apf.value >= 10)).toBe(true);
    expect(found.respirators.length).toBeGreaterThan(3);
  });

  it('the highest tier of the day stands; open mappings take the higher one; paint not tested counts as lead paint', () => {
    expect(findPresumption(['handScraping', 'torchCutting'], 'tested').tier).toBe('3');
    expect(findPresumption(['powerSanding'], 'tested')).toMatchObject({ tier: '2', mapping: 'open' });
    expect(findPresumption(['handScraping'], 'notKnown').leadTakenAsPresent).toBe(true);
    expect(findPresumption(['handScraping'], null).leadTakenAsPresent).toBe(true);
  });
});

describe('the custody sheet from the record', () => {
  const occasion = {
    issuedInstant: at('22:10'),
    why: null,
    heads: [{ factId: factId(), link: 'a'.repeat(64) }],
    editions: { app: '0.1.0', rules: 'r', formulas: 'f' },
  };
  const blanks = [blank('c00000000091', []), blank('c00000000092', [])];
  const ofBox = (more: Partial<BoxRecord> = {}, samples = [sample('07:00', '15:00', []), ...blanks]) =>
    slice({
      checks: [...before, check('f00000000002', 'after', '15:10', 1.9)],
      samples,
      box: box(
        samples.map((one) => one.id),
        more,
      ),
    });
  const sheetOf = (book: Book) => {
    const made = custodySheetFor(boxId, book, occasion);
    if (made.kind !== 'sheet') throw new Error(JSON.stringify(made.gaps));
    return made.sheet;
  };

  it('7 h to 15 h UTC is 01:00 to 09:00 in Chicago; 1.95 L/min for 480 min is 936 L; a sound sheet', () => {
    const sheet = sheetOf(ofBox());
    expect(custodySheet.safeParse(sheet).success).toBe(true);
    expect(contradictionsOf(sheet)).toEqual([]);
    expect(sheet).toMatchObject({
      revision: '1',
      issuedAt: '2026-11-25T16:10:00-06:00',
      counts: { airCount: 1, blankCount: 2 },
    });
    expect(sheet.rows[0]).toMatchObject({
      worker: 'Ana Sill',
      startedAt: '2026-11-25T01:00:00-06:00',
      stoppedAt: '2026-11-25T09:00:00-06:00',
      durationMin: 480,
      flowBeforeLPerMin: 2,
      flowAfterLPerMin: expect.closeTo(1.9, 12),
      averageFlowLPerMin: expect.closeTo(1.95, 12),
      volumeL: expect.closeTo(936, 9),
    });
    expect(sheet.rows[1]).toMatchObject({ sampleKind: 'blank', volumeL: { kind: 'absent', why: 'noAirDrawn' } });
  });

  it('a missing flow after is a word on the sheet, not a number, and is told', () => {
    const book = { ...ofBox(), flowChecks: new Map(before.map((one) => [one.id, one])) };
    expect(sheetOf(book).rows[0]).toMatchObject({
      flowAfterLPerMin: { kind: 'absent', why: 'notTaken' },
      averageFlowLPerMin: { kind: 'absent', why: 'notAveraged' },
      volumeL: { kind: 'absent', why: 'notAveraged' },
    });
    expect(custodyGaps(boxId, book).map(({ key }) => key)).toContain('flowAfterMissing');
  });

  it.each([
    ['sampleOpen', () => ofBox({}, [running(), ...blanks])],
    [
      'numberTwice',
      () => ofBox({}, [sample('07:00', '15:00', []), { ...blank('c00000000091', []), sampleNumber: '120019' }]),
    ],
    ['laboratoryMissing', () => ({ ...ofBox(), laboratories: new Map() })],
    ['lotMissing', () => ({ ...ofBox(), lots: new Map() })],
    ['boxNotPacked', () => slice({})],
  ] as const)('%s stops it', (key, book) => {
    const made = custodySheetFor(boxId, book(), occasion);
    expect(made.kind).toBe('gaps');
    expect(
      custodyGaps(boxId, book())
        .filter(({ weight }) => weight === 'stops')
        .map((gap) => gap.key),
    ).toContain(key);
  });

  it('an issued sheet still says what the record says, until the record changes: raise its revision', () => {
    const issued = JSON.parse(JSON.stringify(sheetOf(ofBox()))) as Record<string, unknown>;
    const issue = {
      boxId,
      revision: '1',
      paper: 'letter' as const,
      sheet: issued,
      pdfHash: '0'.repeat(64),
      editions: occasion.editions,
      heads: [],
      factId: factId(),
      at: occasion.issuedInstant,
      why: null,
    };
    const book = ofBox({ issues: [issue as BoxRecord['issues'][number]] });
    expect(sheetDiffers(boxId, book)).toEqual([]);
    const late = check('f00000000002', 'after', '15:10', 1.94);
    const changed = { ...book, flowChecks: new Map(book.flowChecks).set(late.id, late) };
    const paths = sheetDiffers(boxId, changed).map(({ path }) => path);
    expect(paths).toEqual(['/rows/0/flowAfterLPerMin', '/rows/0/averageFlowLPerMin', '/rows/0/volumeL']);
    expect(custodySheetFor(boxId, changed, { ...occasion, why: 'flow after misread' })).toMatchObject({
      sheet: { revision: '2' },
    });
  });
});

describe('what is missing for a day', () => {
  it('hours, other work, regular day, conditions, results', () => {
    const day = workday([], { pieces: null, otherWork: null, regular: null });
    const keys = workdayGaps(workdayId, slice({ samples: [sample('07:00', '15:00', [])], day })).map(({ key }) => key);
    expect(keys).toEqual(
      expect.arrayContaining([
        'hoursNotStated',
        'otherWorkNotAsked',
        'regularNotSaid',
        'resultAwaited',
        'conditionsMissing',
      ]),
    );
    const whole = slice({ samples: [sample('07:00', '15:00', [result(24)])] });
    expect(workdayGaps(workdayId, whole).map(({ key }) => key)).toEqual(['conditionsMissing']);
  });
});
