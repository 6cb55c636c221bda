/** Flow checks: design 4 items 1 and 2, methods part B. Expected values worked by hand or from methods.md (own vectors, DERIVED). */
import { describe, expect, it } from 'vitest';
import { type FlowCheckFinding, findFlowCheck } from '#findings/flow.ts';
import type { Book, FlowCheckRecord } from '#records/book.ts';
import { meter, site } from './sliceRegisters.ts';
import { check, slice } from './slices.ts';

const range = { id: 'niosh-7082', flowFromLPerMin: 1, flowToLPerMin: 4 };
const keys = ({ reasons }: FlowCheckFinding): string[] => reasons.map(({ key }) => key);
const flowOf = ({ flow }: FlowCheckFinding): number =>
  flow?.estimate.kind === 'exact' ? flow.estimate.value : Number.NaN;
const lowOf = ({ lowFlow }: FlowCheckFinding): number =>
  lowFlow?.estimate.kind === 'exact' ? lowFlow.estimate.value : Number.NaN;
const one = (more: Partial<FlowCheckRecord>, book: Book = slice({})): FlowCheckFinding =>
  findFlowCheck(check('f00000000001', 'before', '06:40', 2, more), book, range);

describe('design 4, item 1: readings', () => {
  it('a float between 2.5 and 2.6 is 2.55 (common practice, no source)', () => {
    const found = one({ readings: [{ lowLPerMin: 2.5, highLPerMin: 2.6 }] });
    expect(flowOf(found)).toBeCloseTo(2.55, 12);
    expect(found.lowFlow).toBeNull();
    // 0.05 / 2.55
    expect(found.halfWidthPct).toBeCloseTo(1.9608, 3);
    expect(keys(found)).toEqual(['fewReadings']);
  });

  it('NMAM chapter D, p. 28 step 5: three readings are averaged', () => {
    const readings = [2.0, 2.1, 2.2].map((q) => ({ lowLPerMin: q, highLPerMin: q }));
    expect(flowOf(one({ readings }))).toBeCloseTo(2.1, 12);
    expect(keys(one({ readings }))).toEqual([]);
  });

  it('a float that bounces more than 5 % is told at once, and its low end is the protective figure', () => {
    const readings = Array.from({ length: 3 }, () => ({ lowLPerMin: 1.8, highLPerMin: 2.2 }));
    const found = one({ readings });
    expect(found.halfWidthPct).toBeCloseTo(10, 9);
    expect(flowOf(found)).toBeCloseTo(2, 12);
    expect(lowOf(found)).toBeCloseTo(1.8, 12);
    expect(keys(found)).toEqual(['flowBounces']);
  });
});

describe('NIOSH 7082 (READ): 1 to 4 L/min', () => {
  it.each([
    [0.99, true],
    [1, false],
    [4, false],
    [4.01, true],
  ])('%s L/min outside: %s', (flow, outside) => {
    const readings = Array.from({ length: 3 }, () => ({ lowLPerMin: flow, highLPerMin: flow }));
    expect(keys(one({ readings })).includes('flowOutsideMethod')).toBe(outside);
  });
});

describe('design 4, item 2: nothing in line is not a flow check', () => {
  it('gives no flow', () => {
    const found = one({ inLine: 'nothing' });
    expect(found.flow).toBeNull();
    expect(keys(found)).toEqual(['nothingInLine']);
  });
});

describe('the flow meter must be shown to be in date', () => {
  it.each([
    [{ dueOn: '2026-11-24' }, ['meterOutOfDate']],
    [{ dueOn: '2026-11-25' }, []],
    [{ dueOn: null }, ['meterDueNotKnown']],
    [{ certificateOn: null }, ['meterCertificateNotKnown']],
    [{ certificateOn: '2026-11-26' }, ['meterCertifiedLater']],
  ])('%o: %o', (more, expected) => {
    expect(keys(one({}, slice({ meter: meter(more) })))).toEqual(expected);
  });
});

describe('methods B7 (formula READ; own vectors DERIVED): a rotameter away from its calibration conditions', () => {
  const pairs = [
    { readLPerMin: 1, trueLPerMin: 1 },
    { readLPerMin: 3, trueLPerMin: 3 },
  ];
  const kPa = (mmHg: number): number => (mmHg * 101.325) / 760;
  const rotameter = (more = {}) => slice({ meter: meter({ meterKind: 'rotameter', pairs, ...more }) });

  it.each([
    ['632 mm Hg, 25 °C', kPa(632), 25, 2.1932],
    ['632 mm Hg, 5 °C', kPa(632), 5, 2.1184],
    ['760 mm Hg, 35 °C', kPa(760), 35, 2.0333],
  ])('2.00 L/min read at %s', (_, pressureKPa, temperatureC, expected) => {
    expect(flowOf(one({ pressureKPa, temperatureC }, rotameter()))).toBeCloseTo(expected, 4);
  });

  it.each([
    [1500, 2.1894],
    [3000, 2.4044],
  ])('no barometer: altitude %i m by the 1976 standard atmosphere', (altitudeM, expected) => {
    const book = { ...rotameter(), sites: new Map([[site().id, site({ altitudeM })]]) };
    expect(flowOf(one({ pressureKPa: null }, book))).toBeCloseTo(expected, 4);
  });

  it('temperature, or pressure and altitude, blank: the reading is shown, with the doubt', () => {
    const noTemperature = one({ temperatureC: null }, rotameter());
    expect(flowOf(noTemperature)).toBe(2);
    expect(keys(noTemperature)).toEqual(['temperatureBlank']);
    const book = { ...rotameter(), sites: new Map([[site().id, site({ altitudeM: null })]]) };
    expect(keys(one({ pressureKPa: null }, book))).toEqual(['pressureBlank']);
    expect(keys(one({}, rotameter({ calibrationPressureKPa: null })))).toEqual(['calibrationConditionsBlank']);
    expect(keys(one({}, rotameter({ pairs: [] })))).toEqual(['certificatePairsBlank']);
  });

  it('a dry piston at the site is not corrected', () => {
    expect(flowOf(one({ pressureKPa: 80, temperatureC: 5 }))).toBe(2);
  });

  it("the certificate's pairs are applied linearly, and refused outside", () => {
    const bent = [
      { readLPerMin: 1.5, trueLPerMin: 1.6 },
      { readLPerMin: 2.5, trueLPerMin: 2.4 },
    ];
    // 1.6 + (2.0 - 1.5) × (2.4 - 1.6) / 1.0 = 2.0; for 2.2: 1.6 + 0.7 × 0.8 = 2.16
    const reading = (q: number) => ({ readings: Array.from({ length: 3 }, () => ({ lowLPerMin: q, highLPerMin: q })) });
    expect(flowOf(one(reading(2.2), slice({ meter: meter({ pairs: bent }) })))).toBeCloseTo(2.16, 12);
    const outside = one(reading(2.6), slice({ meter: meter({ pairs: bent }) }));
    expect(outside.flow).toBeNull();
    expect(keys(outside)).toContain('outsideCertificatePairs');
  });
});
