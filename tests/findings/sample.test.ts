/** One sample: design 4 items 3 to 5, methods B and D. Expected values worked by hand in the comments. */
import { describe, expect, it } from 'vitest';
import type { Term } from '#core/formula.ts';
import { findSample, type SampleFinding } from '#findings/sample.ts';
import type { FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { at, lotId, shiftId } from './sliceRegisters.ts';
import { blank, box, check, interval, result, sample, slice } from './slices.ts';

const exact = (term: Term | null): number => {
  if (term?.estimate.kind !== 'exact') throw new Error(`not one number: ${JSON.stringify(term?.estimate)}`);
  return term.estimate.value;
};
const keys = (finding: SampleFinding): string[] => finding.reasons.map(({ key }) => key);
const checks = (before: number | null, after: number | null): FlowCheckRecord[] => [
  ...(before === null ? [] : [check('f00000000001', 'before', '06:40', before)]),
  ...(after === null ? [] : [check('f00000000002', 'after', '15:10', after)]),
];
const cleanBlank = blank('c00000000090', [result({ lessThanUg: 0.3 })]);
const oneDay = (
  own: readonly FlowCheckRecord[],
  more: Partial<SampleRecord> = {},
  others: readonly SampleRecord[] = [],
  massUg = 24,
) =>
  findSample(
    'c00000000001',
    slice({
      checks: own,
      samples: [sample('07:00', '15:00', [result(massUg)], more), cleanBlank, ...others],
      box: box(['c00000000001']),
    }),
  );

describe('methods B5 (40 CFR 50 App. B 10.1.1, READ) and B6: flow before and after', () => {
  it('no change: 2.0 L/min, 480 min, 960 L, 24 µg: 25 µg/m³, good', () => {
    const found = oneDay(checks(2, 2));
    expect(found.quality).toBe('good');
    expect(exact(found.volume)).toBeCloseTo(960, 9);
    expect(exact(found.concentration)).toBeCloseTo(25, 9);
    expect(found.flowRule).toBe('average');
    expect(found.judged).toBe(found.concentration);
  });

  it('exactly 5 % is averaged without a flag: 2.0 and 1.9', () => {
    const found = oneDay(checks(2, 1.9));
    expect(found.flowRule).toBe('average');
    expect(exact(found.averageFlow)).toBeCloseTo(1.95, 12);
    expect(found.quality).toBe('good');
  });

  it('over 5 to 10 %: average, flagged, and the lower flow judges: 2.0 and 1.82 is 9 %', () => {
    const found = oneDay(checks(2, 1.82));
    expect(found.flowRule).toBe('averageFlagged');
    expect(keys(found)).toEqual(['flowChangedSome']);
    // 24 000 / (1.91 × 480) = 26.178; 24 000 / (1.82 × 480) = 27.473
    expect(exact(found.concentration)).toBeCloseTo(26.178, 3);
    expect(exact(found.protectiveConcentration)).toBeCloseTo(27.473, 3);
  });

  it('exactly 10 % is still flagged, more is not averaged: 2.0 and 1.8; 2.0 and 1.79', () => {
    expect(oneDay(checks(2, 1.8)).flowRule).toBe('averageFlagged');
    const over = oneDay(checks(2, 1.79));
    expect(over).toMatchObject({ flowRule: 'atLeastOnly', averageFlow: null, volume: null, quality: 'doubtful' });
    // NIOSH 7082 allows 4 L/min at most: 24 000 / (4 × 480) = 12.5 at least
    expect(over.judged?.estimate).toEqual({ kind: 'atLeast', lower: expect.closeTo(12.5, 9) });
  });

  it.each([
    [2, null, 'noFlowAfter'],
    [null, 2, 'noFlowBefore'],
  ] as const)('a missing reading is never filled in: %s and %s', (before, after, key) => {
    const found = oneDay(checks(before, after));
    expect(found).toMatchObject({ flowRule: 'atLeastOnly', averageFlow: null, concentration: null });
    expect(keys(found)).toContain(key);
    expect(found.judged?.estimate.kind).toBe('atLeast');
  });

  it('a decision with a reason uses the average, and the lower flow still judges', () => {
    const flowDecision = { use: 'average', why: 'tubing was kinked for the last minutes only', factId: 'd' } as const;
    const found = oneDay(checks(2, 1.6), { flowDecision });
    expect(found.flowRule).toBe('decided');
    expect(exact(found.averageFlow)).toBeCloseTo(1.8, 12);
    expect(exact(found.lowerFlow)).toBeCloseTo(1.6, 12);
    expect(found.blocksBelow).toEqual([]);
  });

  it('a decision without a reason does not count; one on a single reading never allows below', () => {
    const noReason = oneDay(checks(2, 1.6), { flowDecision: { use: 'average', why: null, factId: 'd' } });
    expect(noReason.flowRule).toBe('atLeastOnly');
    const single = oneDay(checks(2, null), { flowDecision: { use: 'lower', why: 'pump shared', factId: 'd' } });
    expect(exact(single.averageFlow)).toBe(2);
    expect(single.blocksBelow.map(({ key }) => key)).toEqual(
      expect.arrayContaining(['noFlowAfter', 'flowDecidedOnOneReading']),
    );
  });
});

describe('which flow checks belong to a sample', () => {
  it('the last before at put-on, the first after, ahead of the next before', () => {
    const own = [
      check('f00000000001', 'before', '06:00', 3),
      check('f00000000002', 'before', '07:00', 2),
      check('f00000000003', 'after', '15:00', 2),
      check('f00000000004', 'before', '15:20', 2.5),
      check('f00000000005', 'after', '15:30', 2.5),
    ];
    const found = oneDay(own);
    expect(found.checkBefore?.flowCheckId).toBe('f00000000002');
    expect(found.checkAfter?.flowCheckId).toBe('f00000000003');
    const late = oneDay(own.filter(({ id }) => id !== 'f00000000003'));
    expect(late.checkAfter).toBeNull();
  });

  it('a cassette change without a check between: the figure stands on shared checks, and below is not said', () => {
    const samples = [
      sample('07:00', '11:00', [result(12)]),
      sample('11:05', '15:00', [result(12)], { id: 'c00000000002', sampleNumber: '120027' }),
    ];
    const shared = slice({ checks: checks(2, 2), samples });
    for (const { id } of samples)
      expect(findSample(id, shared).blocksBelow.map(({ key }) => key)).toEqual(['flowCheckShared']);
    const between = check('f00000000003', 'between', '11:02', 2);
    const own = slice({ checks: [...checks(2, 2), between], samples });
    for (const { id } of samples) expect(findSample(id, own).blocksBelow).toEqual([]);
  });

  it('nothing in line does not count, and is told', () => {
    const empty = check('f00000000002', 'after', '15:10', 2, { inLine: 'nothing' });
    const found = oneDay([...checks(2, null), empty]);
    expect(found.checkAfter).toBeNull();
    expect(keys(found)).toEqual(expect.arrayContaining(['nothingInLine', 'noFlowAfter']));
    expect(found.quality).toBe('doubtful');
  });
});

describe('design 4, item 4: worn minutes and the pump as witness', () => {
  const stoppedWith = (pumpMin: number | null) => ({
    stopped: { at: at('15:00'), entry: 'tapped', factId: 's', pumpMin } as const,
  });

  it('within two minutes nothing is said', () => {
    for (const pumpMin of [478, 480, 482]) expect(keys(oneDay(checks(2, 2), stoppedWith(pumpMin)))).toEqual([]);
  });

  it('fewer pump minutes leave the rest unsampled: 400 of 480; 24 µg in 800 L is 30', () => {
    const found = oneDay(checks(2, 2), stoppedWith(400));
    expect(exact(found.wornMin)).toBe(400);
    expect(found.unsampledMin).toBe(80);
    expect(exact(found.concentration)).toBeCloseTo(30, 9);
    expect(keys(found)).toEqual(['pumpMinutesFewer']);
  });

  it('a pump that ran on off the worker drew clean air: C = m / (Q × worn minutes)', () => {
    const intervals = [
      interval(at('07:00'), at('11:00')),
      interval(at('11:00'), at('12:00'), { state: 'offRunning', awayFromLead: true, reason: 'lunch' }),
      interval(at('12:00'), at('15:00')),
    ];
    const found = oneDay(checks(2, 2), { intervals });
    expect(exact(found.wornMin)).toBe(420);
    // 24 000 / (2 × 420)
    expect(exact(found.concentration)).toBeCloseTo(28.5714, 4);
    expect(keys(found)).toEqual([]);
  });

  it('a doubtful stretch counts only as far as the pump shows it', () => {
    const intervals = [interval(at('07:00'), at('13:00')), interval(at('13:00'), at('15:00'), { state: 'doubtful' })];
    expect(exact(oneDay(checks(2, 2), { intervals, ...stoppedWith(420) }).wornMin)).toBe(420);
    const blankDisplay = oneDay(checks(2, 2), { intervals, ...stoppedWith(null) });
    expect(exact(blankDisplay.wornMin)).toBe(360);
    expect(keys(blankDisplay)).toEqual(expect.arrayContaining(['pumpMinutesBlank', 'runNotSure']));
  });
});

describe('design 4, item 5 and methods D8: field blanks', () => {
  const blanks = (...masses: (number | { lessThanUg: number })[]) =>
    masses.map((m, i) => blank(`c0000000009${i}`, [result(m, typeof m === 'number' ? { reportingLimitUg: 0.3 } : {})]));
  const withBlanks = (others: readonly SampleRecord[], blankCorrected: 'yes' | 'no' | 'notStated', massUg = 24.6) =>
    findSample(
      'c00000000001',
      slice({
        checks: checks(2, 2),
        samples: [sample('07:00', '15:00', [result(massUg, { blankCorrected, reportingLimitUg: 2 })]), ...others],
      }),
    );

  it('24.6 µg, blanks 0.4 and 0.6: 24.1 µg in 0.960 m³ is 25.10 (own vector of methods C)', () => {
    const found = withBlanks(blanks(0.4, 0.6), 'no');
    expect(exact(found.mass)).toBeCloseTo(24.1, 9);
    expect(exact(found.concentration)).toBeCloseTo(25.1042, 4);
  });

  it.each([
    ['the laboratory already did', blanks(0.4, 0.6), 'yes'],
    ['the laboratory does not say', blanks(0.4, 0.6), 'notStated'],
    ['one blank is below its reporting limit', blanks(0.4, { lessThanUg: 0.3 }), 'no'],
    ['one blank has no result', [...blanks(0.4), blank('c00000000099', [])], 'no'],
    [
      'one blank is void',
      [
        ...blanks(0.4),
        blank('c00000000099', [result(0.6, { reportingLimitUg: 0.3 })], { voided: { why: 'lost', factId: 'v' } }),
      ],
      'no',
    ],
    ['no blank goes with it', [], 'no'],
  ] as const)('nothing is subtracted when %s', (_, others, corrected) => {
    expect(exact(withBlanks([...others], corrected).mass)).toBe(24.6);
  });

  it('a detected blank is a flag that blocks nothing', () => {
    const found = withBlanks(blanks(0.4, 0.6), 'yes');
    expect(keys(found)).toContain('blankDetected');
    expect(found.quality).toBe('good');
  });

  it('subtraction stops at the reporting limit', () => {
    expect(exact(withBlanks(blanks(0.4, 0.6), 'no', 2.2).mass)).toBe(2);
  });
});

describe('high stays high, low proves nothing', () => {
  it.each(['wet', 'dropped', 'overloaded', 'inletUp', 'opened'] as const)('%s', (mishap) => {
    const mishaps = [
      { sampleId: 'c00000000001', mishap, remark: null, at: at('09:00'), entry: 'tapped', factId: 'm' } as const,
    ];
    const found = oneDay(checks(2, 2), { mishaps });
    expect(exact(found.judged)).toBeCloseTo(25, 9);
    expect(found.blocksBelow.map(({ key }) => key)).toEqual(['mishap']);
  });

  it('a void sample with a result keeps what it still shows', () => {
    const found = oneDay(checks(2, 2), { voided: { why: 'wrong worker noted', factId: 'v' } });
    expect(found.quality).toBe('void');
    expect(found.judged?.estimate).toEqual({ kind: 'atLeast', lower: expect.closeTo(25, 9) });
  });

  it('NIOSH 7082 (READ): under 200 L or over 1500 L', () => {
    const short = findSample('c00000000001', slice({ samples: [sample('07:00', '08:00', [result(24)])] }));
    expect(keys(short)).toContain('volumeBelowMethod');
    const long = findSample(
      'c00000000001',
      slice({ checks: checks(3.5, 3.5), samples: [sample('07:00', '15:00', [result(24)])] }),
    );
    expect(keys(long)).toContain('volumeAboveMethod');
  });
});

describe('what blocks below', () => {
  it.each([
    ['fittingNotRecorded', { fitting: null }],
    ['numberTwice', {}],
    ['notUnderstood', { notUnderstood: ['zzzzzzzzzzz1.00000001'] }],
    ['clockSetBack', { clockDoubts: [{ factId: 'k', kind: 'setBack' }] }],
  ] as const)('%s', (key, more) => {
    const others =
      key === 'numberTwice'
        ? [sample('16:00', '17:00', [], { id: 'c00000000002', workdayId: `p00000000002.2026-11-25` })]
        : [];
    expect(oneDay(checks(2, 2), more as Partial<SampleRecord>, others).blocksBelow.map((r) => r.key)).toEqual([key]);
  });

  it("methods D9: the laboratory's own figures more than 2 % apart", () => {
    const with2 = (laboratoryVolumeL: number, laboratoryConcentrationUgPerM3: number) =>
      findSample(
        'c00000000001',
        slice({
          checks: checks(2, 2),
          samples: [sample('07:00', '15:00', [result(24, { laboratoryVolumeL, laboratoryConcentrationUgPerM3 })])],
        }),
      );
    expect(keys(with2(950, 25.2)).filter((key) => key.startsWith('laboratory'))).toEqual([]);
    expect(keys(with2(900, 26.7))).toEqual(
      expect.arrayContaining(['laboratoryVolumeDiffers', 'laboratoryConcentrationDiffers']),
    );
  });

  it('hot work: inside the helmet must be said', () => {
    const found = oneDay(checks(2, 2), { taskIds: ['torchCutting'] });
    const known = keys(found);
    expect(known).toEqual(['helmetNotStated']);
  });
});

describe('blanks are of the same shift or box, and of the same lot', () => {
  it('another lot does not count', () => {
    const other = blank('c00000000099', [result(0.6, { reportingLimitUg: 0.3 })], { lotId: 'h00000000002', shiftId });
    const book = slice({
      checks: checks(2, 2),
      samples: [sample('07:00', '15:00', [result(24, { blankCorrected: 'no', reportingLimitUg: 2 })]), other],
    });
    expect(lotId).not.toBe(other.lotId);
    expect(keys(findSample('c00000000001', book))).toContain('blanksMissing');
  });
});
