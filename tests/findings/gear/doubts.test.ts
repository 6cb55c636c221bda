/**
 * What a doubt about gear does to a sample and its day. Figures worked by hand from C = m / (Q t) and TWA8 = sum(C t) / 480 (29 CFR
 * 1926.62 Appendix B): 24 µg at 2.0 L/min over 480 min are 25 µg/m³; at 2.0 x 0.8 = 1.6 L/min (768 L) 31.25; at 2.5 (1200 L) 20.
 */
import { describe, expect, it } from 'vitest';
import { findSample } from '#findings/sample.ts';
import { findWorkday } from '#findings/workday.ts';
import type { Book, GearDoubt, PumpRecord } from '#records/book.ts';
import { base, factId, lot, lotId, meter, workdayId } from '../sliceRegisters.ts';
import { box, check, result, sample, slice, workday } from '../slices.ts';
import { doubt, settled } from './gearFacts.ts';

const [meterId, pumpId, sampleId] = ['m00000000001', 'q00000000001', 'c00000000001'];
const pump: PumpRecord = { ...base('pump', pumpId), pumpId, serial: 'SP-4', model: null };
const twoChecks = [check('f00000000001', 'before', '06:40', 2), check('f00000000002', 'after', '15:10', 2)];

function day(massUg: number, doubts: readonly GearDoubt[], more: Partial<Book> = {}): Book {
  const of = (gear: GearDoubt['gear']) => doubts.filter((one) => one.gear === gear);
  const made = slice({
    samples: [sample('07:00', '15:00', [result(massUg)])],
    checks: twoChecks,
    day: workday([['07:00', '15:00']]),
    meter: meter({ doubts: of('meter') }),
    lots: [lot({ doubts: of('lot') })],
    box: box([sampleId]),
  });
  return { ...made, pumps: new Map([[pumpId, { ...pump, doubts: of('pump') }]]), ...more };
}

const verdicts = (book: Book) => findWorkday(workdayId, book).standings.map(({ verdict }) => verdict);
const gearKeys = (book: Book) =>
  findSample(sampleId, book)
    .reasons.map(({ key }) => key)
    .filter((key) => key.startsWith('gear'));

describe('a doubt that is open, or that stays: low proves nothing, high stays high', () => {
  it('sound: 25 is below the action level of 30', () => {
    expect(verdicts(day(24, []))).toEqual(['below', 'below']);
  });

  it.each([
    ['pump', pumpId],
    ['meter', meterId],
    ['lot', lotId],
  ] as const)('%s', (gear, id) => {
    const open = doubt(gear, id);
    expect(verdicts(day(24, [open]))).toEqual(['unresolved', 'unresolved']);
    // 60 µg / 0.96 m³ = 62.5
    expect(verdicts(day(60, [open]))).toEqual(['above', 'above']);
    expect(gearKeys(day(24, [open]))).toEqual(['gearDoubted']);
    expect(findSample(sampleId, day(24, [open])).quality).toBe('doubtful');
    const stays = { ...open, settled: settled('staysDoubtful') };
    expect(verdicts(day(24, [stays]))).toEqual(['unresolved', 'unresolved']);
    expect(verdicts(day(24, [{ ...open, settled: settled('noEffect') }]))).toEqual(['below', 'below']);
    expect(gearKeys(day(24, [{ ...open, settled: settled('noEffect') }]))).toEqual(['gearNoEffect']);
  });

  it('it names the gear and what was found', () => {
    const [why] = findWorkday(workdayId, day(24, [doubt('pump', pumpId)])).blocksBelow;
    expect(why).toMatchObject({
      key: 'gearDoubted',
      params: {
        gear: 'pump',
        gearNumber: 'SP-4',
        found: 'reads 8 % high against the soap film',
        ofSampleNumber: '120019',
      },
    });
  });

  it.each([
    [{ fromOn: '2026-11-25', untilOn: '2026-11-25' }, true],
    [{ fromOn: '2026-11-26' }, false],
    [{ untilOn: '2026-11-24' }, false],
    [{ fromOn: '2026-01-01' }, true],
  ])('within its days: %o', (days, touched) => {
    for (const [gear, id] of [
      ['pump', pumpId],
      ['meter', meterId],
      ['lot', lotId],
    ] as const)
      expect(verdicts(day(24, [doubt(gear, id, days)]))[0]).toBe(touched ? 'unresolved' : 'below');
  });

  it('a decision without a reason settles nothing, nor one by a factor that only a flow meter can have', () => {
    const silent = settled('noEffect', null, { why: ' ' });
    expect(verdicts(day(24, [doubt('lot', lotId, { settled: silent })]))[0]).toBe('unresolved');
    const byFactor = settled('asFound', 1.1);
    expect(verdicts(day(24, [doubt('pump', pumpId, { settled: byFactor })]))[0]).toBe('unresolved');
    const noFactor = settled('asFound', null);
    expect(verdicts(day(24, [doubt('meter', meterId, { settled: noFactor })]))[0]).toBe('unresolved');
  });

  it('what has no last day goes on after a decision that mends nothing, of a flow meter until a newer certificate', () => {
    const on = (more: object) =>
      doubt('meter', meterId, {
        ...{ foundOn: '2026-11-20', settled: settled('staysDoubtful', null, { onDay: '2026-11-21' }) },
        ...more,
      });
    expect(verdicts(day(24, [on({})]))[0]).toBe('unresolved');
    expect(verdicts(day(24, [on({ renewedOn: '2026-11-25' })]))[0]).toBe('unresolved');
    expect(verdicts(day(24, [on({ renewedOn: '2026-11-24' })]))[0]).toBe('below');
    expect(verdicts(day(24, [on({ untilOn: '2026-11-24' })]))[0]).toBe('below');
  });

  it('found on a day it is doubtful on that day, whatever later day it is said to begin on', () => {
    const typo = doubt('pump', pumpId, { foundOn: '2026-11-24', fromOn: '2027-11-24' });
    expect(verdicts(day(24, [typo]))[0]).toBe('unresolved');
  });

  it('a run past midnight is touched on both days', () => {
    const night = sample('2026-11-26T00:00:00.000Z', '2026-11-26T08:00:00.000Z', [result(24)]);
    const book = day(24, [doubt('lot', lotId, { fromOn: '2026-11-26' })], { samples: new Map([[sampleId, night]]) });
    expect(gearKeys(book)).toEqual(['gearDoubted']);
  });
});

describe('as found: the flow lies between what was read and what that makes by the factor', () => {
  const asFound = (f: number) => doubt('meter', meterId, { settled: settled('asFound', f) });

  it('0.8: between 1.6 and 2.0 L/min, 25 to 31.25 µg/m³, so the action level is open', () => {
    const book = day(24, [asFound(0.8)]);
    const { averageFlow, volume, concentration, asRead, blocksBelow } = findSample(sampleId, book);
    expect(averageFlow?.estimate).toEqual({ kind: 'between', lower: expect.closeTo(1.6, 12), upper: 2 });
    expect(volume?.estimate).toEqual({ kind: 'between', lower: expect.closeTo(768, 9), upper: expect.closeTo(960, 9) });
    const bounds = { kind: 'between', lower: expect.closeTo(25, 9), upper: expect.closeTo(31.25, 9) };
    expect(concentration?.estimate).toEqual(bounds);
    expect(findWorkday(workdayId, book).twa8?.estimate).toEqual(bounds);
    expect(verdicts(book)).toEqual(['unresolved', 'below']);
    expect(blocksBelow).toEqual([]);
    // the sheet that went with the cassette said what was read
    expect(asRead.volume?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(960, 9) });
    expect(gearKeys(book)).toEqual(['gearAsFound']);
  });

  it('1.25: between 20 and 25, both below', () => {
    expect(verdicts(day(24, [asFound(1.25)]))).toEqual(['below', 'below']);
    // 32 µg: 26.67 to 33.33
    expect(verdicts(day(32, [asFound(1.25)]))[0]).toBe('unresolved');
  });

  it('0.9 at 50 µg: 52.08 to 57.87, above at both ends', () => {
    expect(verdicts(day(50, [asFound(0.9)]))).toEqual(['above', 'above']);
  });

  it('its working shows the flow read and the factor', () => {
    const { flowBefore } = findSample(sampleId, day(24, [asFound(0.8)]));
    expect(flowBefore).toMatchObject({
      kind: 'working',
      formula: { name: 'asFoundFlow', expression: 'Q = Qr × f', source: { mark: 'DERIVED' } },
      inputs: { Qr: { estimate: { value: 2 } }, f: { estimate: { kind: 'between', lower: 0.8, upper: 1 } } },
    });
  });

  it('an open doubt beside it keeps everything low from being proven', () => {
    const open = doubt('lot', lotId);
    expect(verdicts(day(24, [asFound(1.25), open]))).toEqual(['unresolved', 'unresolved']);
  });

  it('one meter before and after is off by the same: no change; two meters: |2.0 − 2.0 × 0.94| / 1.88 = 6.38 %', () => {
    const change = (book: Book) => findSample(sampleId, book).flowChange?.estimate;
    expect(change(day(24, [asFound(0.94)]))).toEqual({ kind: 'exact', value: 0 });
    const other = meter({ ...base('meter', 'm00000000002'), meterId: 'm00000000002' });
    const book = day(24, []);
    const checks = new Map(book.flowChecks);
    const [, second] = twoChecks;
    if (second) checks.set(second.id, { ...second, meterId: other.id });
    const meters = new Map(book.meters)
      .set(other.id, other)
      .set(meterId, meter({ doubts: [asFound(0.94)], factIds: [factId()] }));
    const two = { ...book, flowChecks: checks, meters };
    expect(change(two)).toEqual({ kind: 'exact', value: expect.closeTo(6.382979, 6) });
    expect(findSample(sampleId, two).flowRule).toBe('averageFlagged');
  });

  it('either end outside the method is told: 1.8 x 0.5 is under 1 L/min of NIOSH 7082 (READ)', () => {
    const slow = [check('f00000000001', 'before', '06:40', 1.8), check('f00000000002', 'after', '15:10', 1.8)];
    const book = day(24, [asFound(0.5)], { flowChecks: new Map(slow.map((one) => [one.id, one])) });
    expect(findSample(sampleId, book).reasons.map(({ key }) => key)).toContain('flowOutsideMethod');
  });

  it("the laboratory's volume of the sheet is not called different", () => {
    const book = day(24, [asFound(0.8)]);
    const known = result(24, { laboratoryVolumeL: 960, laboratoryConcentrationUgPerM3: 25 });
    const samples = new Map([[sampleId, sample('07:00', '15:00', [known])]]);
    const keys = findSample(sampleId, { ...book, samples }).reasons.map(({ key }) => key);
    expect(keys.filter((key) => key.startsWith('laboratory'))).toEqual([]);
  });
});
