/**
 * Which certificate judges a flow check. The two-point line is the plain one between two pairs (y1 + (x - x1) * (y2 - y1) / (x2 - x1)),
 * worked by hand.
 */
import { describe, expect, it, test } from 'vitest';
import { findFlowCheck } from '#findings/flow.ts';
import { certificateInForce } from '#findings/gear/certificateInForce.ts';
import { gearStanding } from '#findings/gear/gearStanding.ts';
import { meter } from '../sliceRegisters.ts';
import { check, slice } from '../slices.ts';
import { certificate, withCertificates } from './gearFacts.ts';

// the check is of 2026-11-25
const old = meter({ certificateOn: '2025-11-01', dueOn: '2026-11-01' });
const newer = certificate('2026-11-20', { dueOn: '2027-11-20' });
const steady = check('f00000000001', 'before', '06:40', 2);
const found = (of: typeof old) => findFlowCheck(steady, slice({ meter: of }), null);
const keys = (of: typeof old): string[] => found(of).reasons.map(({ key }) => key);
const flowOf = (of: typeof old) => found(of).flow?.estimate;

describe('the newest certificate whose day is not after that of the check', () => {
  it.each([
    ['2026-11-19', '2025-11-01'],
    ['2026-11-20', '2026-11-20'],
    ['2028-01-01', '2026-11-20'],
    ['2025-01-01', '2025-11-01'],
  ])('on %s it is that of %s', (onDay, certificateOn) => {
    expect(certificateInForce(withCertificates(old, newer), onDay).certificateOn).toBe(certificateOn);
  });

  it('one of the past, entered after a newer one, holds for its own time', () => {
    const both = withCertificates(old, newer, certificate('2024-11-01', { dueOn: '2025-11-01' }));
    expect(certificateInForce(both, '2025-03-01').certificateOn).toBe('2024-11-01');
    expect(certificateInForce(both, '2026-12-01').certificateOn).toBe('2026-11-20');
  });

  it('its due day judges, and a later one changes nothing', () => {
    expect(keys(old)).toEqual(['meterOutOfDate']);
    expect(keys(withCertificates(old, newer))).toEqual([]);
    const later = certificate('2026-11-26', { dueOn: '2027-11-26' });
    expect(found(withCertificates(old, later))).toEqual(found(old));
    const other = meter({ meterKind: 'rotameter', pairs: [] });
    const withPairs = certificate('2026-11-26', { pairs: [{ readLPerMin: 1, trueLPerMin: 3 }] });
    expect(found(withCertificates(other, withPairs))).toEqual(found(other));
  });

  it('without a due day nobody can say that the meter is in date', () => {
    expect(keys(withCertificates(old, certificate('2026-11-20')))).toEqual(['meterDueNotKnown']);
  });
});

const pairs = (low: number, high: number) => [
  { readLPerMin: 1, trueLPerMin: low },
  { readLPerMin: 3, trueLPerMin: high },
];

test('its pairs judge: 2.0 read is 1.9 by 1.0 to 0.9 and 3.0 to 2.9', () => {
  const first = meter({ pairs: pairs(1.1, 3.1) });
  expect(flowOf(first)).toEqual({ kind: 'exact', value: expect.closeTo(2.1, 12) });
  const second = withCertificates(first, certificate('2026-11-20', { dueOn: '2027-11-20', pairs: pairs(0.9, 2.9) }));
  expect(flowOf(second)).toEqual({ kind: 'exact', value: expect.closeTo(1.9, 12) });
});

describe('two certificates of one day that differ', () => {
  const a = certificate('2026-11-20', { dueOn: '2027-11-20', pairs: pairs(0.9, 2.9) });
  const b = certificate('2026-11-20', { dueOn: '2027-05-20', pairs: pairs(1.1, 3.1) });

  it.each([
    ['a first', [a, b]],
    ['b first', [b, a]],
  ])('%s: a doubt, and the lower flow stands', (_name, both) => {
    const of = withCertificates(old, ...both);
    expect(keys(of)).toEqual(['certificatesDiffer']);
    expect(flowOf(of)).toEqual({ kind: 'exact', value: expect.closeTo(1.9, 12) });
  });

  it('the earlier due day stands; one without a due day leaves it open', () => {
    const due = certificate('2026-11-20', { dueOn: '2026-11-24' });
    expect(keys(withCertificates(old, due, certificate('2026-11-20', { dueOn: '2027-11-20' })))).toEqual([
      'meterOutOfDate',
      'certificatesDiffer',
    ]);
    expect(keys(withCertificates(old, newer, certificate('2026-11-20')))).toContain('meterDueNotKnown');
  });

  it('that of the entry counts as one of them; two that say the same are one', () => {
    const entered = meter({ certificateOn: '2026-11-20', dueOn: '2027-11-20' });
    expect(keys(withCertificates(entered, certificate('2026-11-20', { dueOn: '2027-06-01' })))).toContain(
      'certificatesDiffer',
    );
    const conditions = { calibrationTemperatureC: 25, calibrationPressureKPa: 101.325 };
    expect(keys(withCertificates(entered, certificate('2026-11-20', { dueOn: '2027-11-20', ...conditions })))).toEqual(
      [],
    );
  });

  it('an entry of no day may be the newest, unless it was due before the other was made', () => {
    const undated = meter({ certificateOn: null, dueOn: '2027-02-01' });
    expect(keys(withCertificates(undated, newer))).toContain('certificatesDiffer');
    expect(keys(withCertificates({ ...undated, dueOn: '2026-11-01' }, newer))).toEqual([]);
  });
});

describe('when a meter is due (40 CFR 50 Appendix B 9.2.17, READ: once a year)', () => {
  const standing = (of: typeof old, today: string) => gearStanding(slice({ meter: of }), today).meters[0];

  it('twelve months after its certificate where nothing else is said; thirty days ahead it is soon', () => {
    const bare = meter({ certificateOn: '2026-03-31', dueOn: null });
    const expected = { dueOn: '2027-03-31', dueFrom: 'twelveMonths' };
    expect(standing(bare, '2027-02-28')).toMatchObject({ ...expected, due: 'later' });
    expect(standing(bare, '2027-03-01')).toMatchObject({ ...expected, due: 'soon' });
    expect(standing(bare, '2027-03-31')).toMatchObject({ ...expected, due: 'soon' });
    expect(standing(bare, '2027-04-01')).toMatchObject({ ...expected, due: 'overdue' });
  });

  it('the day that is stated goes before', () => {
    expect(standing(old, '2026-11-25')).toMatchObject({ dueOn: '2026-11-01', dueFrom: 'stated', due: 'overdue' });
    expect(standing(withCertificates(old, newer), '2026-11-25')).toMatchObject({ dueOn: '2027-11-20', due: 'later' });
    expect(standing(meter({ certificateOn: null, dueOn: null }), '2026-11-25')).toMatchObject({ due: 'notKnown' });
  });
});
