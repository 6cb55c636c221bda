/**
 * 29 CFR 1926.62(d)(3)(iii), (d)(9): relying on an earlier measurement. The twelve months are counted on a calendar and held against the day
 * on which it is relied on (regulation sheet A4).
 */
import { describe, expect, it } from 'vitest';
import { type RelianceFinding, relianceOf } from '#findings/duties/groups/reliance.ts';
import { compareTerms, termsOn } from '#findings/duties/groups/resemblance.ts';
import { resemblanceTerms } from '#findings/duties/groups/taskGroup.ts';
import { measurementsOf } from '#findings/duties/measuring/measurements.ts';
import type { RelianceRecord, ShiftRecord } from '#records/book.ts';
import { base, factId, site, siteId } from '../sliceRegisters.ts';
import { jobBook, shiftOn, tess, workdayIdOf } from './jobBook.ts';

const workOn = '2026-03-02';
const answers = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' } as const;
const asked = (): NonNullable<ShiftRecord['changes']> => ({ ...answers, factId: factId() });

const reliance = (reliedOn: string, more: Partial<RelianceRecord> = {}): RelianceRecord => ({
  ...base('reliance', 'y00000000001'),
  ...{ relianceId: 'y00000000001', measurementId: workdayIdOf(tess, workOn), shiftId: `${siteId}.${reliedOn}` },
  ...{ taskIds: ['handScraping'], jobClassificationId: null, ownFirm: 'yes', reliedFactId: factId() },
  ...{ processes: 'alike', material: 'alike', controls: 'alike', practices: 'alike', environment: 'alike' },
  ...more,
});

interface Given {
  readonly more?: Partial<RelianceRecord>;
  readonly average?: number | null;
  readonly shift?: ShiftRecord;
  readonly stateCode?: string;
}

function found(reliedOn: string, { more = {}, average = 20, shift, stateCode = 'TX' }: Given = {}): RelianceFinding {
  const book = jobBook({
    days: [{ workOn, averageUgPerM3: average }],
    shifts: [shift ?? shiftOn(reliedOn, { changes: asked() })],
    sites: [site({ stateCode })],
  });
  return relianceOf(reliance(reliedOn, more), measurementsOf(book), book);
}
const keys = ({ blocks }: RelianceFinding) => blocks.map(({ key }) => key);
const later = '2026-09-01';

describe('(d)(3)(iii): an earlier measurement may be relied on', () => {
  it('with five terms alike, own data, an accurate method, asked at the job start', () => {
    expect(found(later)).toMatchObject({ valid: true, blocks: [], reliedOn: later, reliableUntilOn: '2027-03-02' });
  });
  it('to the day twelve months after the sampling and not on the next', () => {
    expect(found('2027-03-02').valid).toBe(true);
    expect(keys(found('2027-03-03'))).toEqual(['tooOld']);
  });
  it('not before it was made, and not without a measurement', () => {
    expect(keys(found('2026-03-01'))).toEqual(['noMeasurement']);
    expect(keys(found(later, { more: { measurementId: 'r00000000009' } }))).toEqual(['noMeasurement']);
  });
  for (const term of resemblanceTerms) {
    it(`${term} unlike: it fails`, () => {
      expect(found(later, { more: { [term]: 'unlike' } }).blocks).toMatchObject([{ key: 'unlike', params: { term } }]);
    });
    it(`${term} not known: it fails`, () => {
      const { blocks } = found(later, { more: { [term]: 'notKnown' } });
      expect(blocks).toMatchObject([{ key: 'resemblanceNotAsked', params: { term } }]);
    });
  }
  it('said to be alike where the conditions of both days say otherwise', () => {
    const shift = shiftOn(later, { changes: asked() }, { method: 'dry', containment: 'none' });
    expect(found(later, { shift }).blocks.map(({ params }) => params.term)).toEqual(['controls', 'practices']);
  });
  it('other tasks, or another job classification', () => {
    const other = found(later, { more: { taskIds: ['handSanding'], jobClassificationId: 'j00000000001' } });
    expect(other.blocks.map(({ params }) => params.term)).toEqual(['processes', 'jobClassification']);
  });
  it("only the employer's own data", () => {
    for (const ownFirm of ['no', 'notStated'] as const)
      expect(keys(found(later, { more: { ownFirm } }))).toEqual(['notOwnData']);
  });
  it('a result that is owed, and a rule that is not held', () => {
    expect(keys(found(later, { average: null }))).toContain('resultOwed');
    expect(keys(found(later, { stateCode: 'CA' }))).toContain('ruleNotHeld');
  });
  it('every reason at once', () => {
    const all = found('2027-03-03', { more: { ownFirm: 'no', controls: 'unlike', material: 'notKnown' } });
    expect(keys(all)).toEqual(['resemblanceNotAsked', 'unlike', 'notOwnData', 'tooOld']);
  });
});

describe('(d)(7): new people, tool, control, task are asked at the start of the job', () => {
  it('not asked: it fails', () => {
    expect(keys(found(later, { shift: shiftOn(later) }))).toEqual(['changesNotAsked']);
  });
  it('a yes, or not known: it fails', () => {
    for (const said of ['yes', 'notKnown'] as const)
      expect(keys(found(later, { shift: shiftOn(later, { changes: { ...asked(), personnel: said } }) }))).toEqual([
        'changeNoted',
      ]);
  });
});

describe('the five terms, filled from the conditions of the day', () => {
  const conditionsOf = (more: Parameters<typeof shiftOn>[2]) => shiftOn(workOn, {}, more).conditions;
  const compared = (a: Parameters<typeof shiftOn>[2], b: Parameters<typeof shiftOn>[2], tasks = ['handScraping']) =>
    compareTerms(termsOn(conditionsOf(a), ['handScraping']), termsOn(conditionsOf(b), tasks));
  it('alike where everything noted is the same', () => {
    expect(new Set(Object.values(compared({}, {})))).toEqual(new Set(['alike']));
  });
  it('each condition speaks for its term', () => {
    expect(compared({}, { tool: 'power' }).processes).toBe('unlike');
    expect(compared({}, {}, ['handSanding']).processes).toBe('unlike');
    expect(compared({}, { dustCollection: 'shroudHepa' }).controls).toBe('unlike');
    expect(compared({}, { ventilation: 'exhaust' }).controls).toBe('unlike');
    expect(compared({}, { method: 'dry' }).practices).toBe('unlike');
    expect(compared({}, { weather: 'dryWindy' }).environment).toBe('unlike');
  });
  it('what nobody noted, or is only *other*, is not known', () => {
    expect(new Set(Object.values(compared({}, null)))).toEqual(new Set(['notKnown']));
    expect(compared({ tool: 'other' }, { tool: 'other' }).processes).toBe('notKnown');
    expect(compared({ paintLead: 'notKnown' }, { paintLead: 'notKnown' }).material).toBe('notKnown');
    expect(compared({ paintLead: 'tested' }, { paintLead: 'presumed' }).material).toBe('notKnown');
  });
});
