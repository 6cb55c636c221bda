/**
 * How pumps and lots stand, and a pump's flow over the months. Changes worked by hand: (1.9 - 2.0) / 2.0 = -5 %; (2.12 - 2.0) / 2.0 = 6 %;
 * (1.7 - 2.0) / 2.0 = -15 %. Field blanks by NIOSH's tenth, at least two (29 CFR states none).
 */
import { describe, expect, it } from 'vitest';
import { flowHistory } from '#findings/gear/flowHistory.ts';
import { gearStanding } from '#findings/gear/gearStanding.ts';
import type { Book, FlowCheckRecord, PumpRecord, SampleRecord } from '#records/book.ts';
import { base, factId, lot, lotId, shift } from '../sliceRegisters.ts';
import { blank, check, result, sample, slice } from '../slices.ts';

const pumpId = 'q00000000001';
const pump = (more: Partial<PumpRecord> = {}): PumpRecord => ({
  ...base('pump', pumpId),
  ...{ pumpId, serial: 'SP-4', model: 'five-litre' },
  ...more,
});

function run(
  number: number,
  workOn: string,
  flows: readonly [number, number | null],
): [SampleRecord, FlowCheckRecord[]] {
  const shiftId = `s00000000001.${workOn}`;
  const at = (time: string): string => `${workOn}T${time}:00.000Z`;
  const more = { shiftId };
  const before = check(`f${number}0000000001`, 'before', at('12:40'), flows[0], more);
  const after = flows[1] === null ? [] : [check(`f${number}0000000002`, 'after', at('21:10'), flows[1], more)];
  const worn = sample(at('13:00'), at('21:00'), [result(10)], {
    ...{ id: `c${number}0000000001`, sampleNumber: `12001${number}`, workOn, shiftId },
  });
  return [worn, [before, ...after]];
}

const runs = [
  run(1, '2026-01-20', [2, 1.9]),
  run(2, '2026-03-02', [2, 2.12]),
  run(3, '2026-06-30', [2, 1.7]),
  run(4, '2026-07-01', [2, null]),
];
function book(more: Partial<PumpRecord> = {}): Book {
  const made = slice({
    samples: runs.map(([one]) => one),
    checks: runs.flatMap(([, checks]) => checks),
    lots: [lot()],
  });
  const shifts = new Map(
    runs.map(([{ shiftId, workOn }]) => [shiftId, { ...shift({ workOn }), ...base('shift', shiftId) }]),
  );
  return { ...made, shifts, pumps: new Map([[pumpId, pump(more)]]) };
}

describe("a pump's flow over the months", () => {
  const found = flowHistory(pumpId, book());

  it('the change of each run, with its sign, held to 5 and 10 %', () => {
    expect(found.points.map(({ workOn, within }) => [workOn, within])).toEqual([
      ['2026-01-20', 'average'],
      ['2026-03-02', 'flagged'],
      ['2026-06-30', 'over'],
    ]);
    const changes = found.points.map(({ changePct }) => changePct);
    for (const [i, expected] of [-5, 6, -15].entries()) expect(changes[i]).toBeCloseTo(expected, 9);
    expect(found.withoutChangeCount).toBe(1);
  });

  it('ticks of whole months and whole steps, every point inside', () => {
    expect(found.x?.ticks.map(({ label }) => label)).toEqual([
      ...['2026-01', '2026-02', '2026-03', '2026-04', '2026-05', '2026-06', '2026-07'],
    ]);
    // January has 31 days, February 28
    expect(found.x?.ticks.slice(0, 3).map(({ at }) => at)).toEqual([0, 31, 59]);
    expect(found.y).toMatchObject({ fromPct: -15, toPct: 10 });
    expect(found.y.ticks.map(({ at }) => at)).toEqual([-15, -10, -5, 0, 5, 10]);
  });

  it('nothing of a pump that was not worn', () => {
    expect(flowHistory('q00000000009', book())).toMatchObject({ points: [], x: null });
  });
});

describe('pumps', () => {
  const standing = (more: Partial<PumpRecord> = {}, today = '2026-07-02') => gearStanding(book(more), today).pumps[0];
  const charge = (at: string, full = true) => ({ at, full, by: null, factId: factId() });

  it('charged since it was last worn, to the full', () => {
    expect(standing()).toMatchObject({ lastCharge: null, chargedSinceWorn: false, lastWornOn: '2026-07-01' });
    expect(standing({ charges: [charge('2026-07-01T20:59:00.000Z')] })?.chargedSinceWorn).toBe(false);
    expect(standing({ charges: [charge('2026-07-01T22:00:00.000Z')] })?.chargedSinceWorn).toBe(true);
    expect(standing({ charges: [charge('2026-07-01T22:00:00.000Z', false)] })?.chargedSinceWorn).toBe(false);
    const running = [...book().samples].map(([id, sample]) => [id, { ...sample, stopped: null }] as const);
    expect(gearStanding({ ...book(), samples: new Map(running) }, '2026-07-02').pumps[0]?.chargedSinceWorn).toBeNull();
    const never = gearStanding({ ...book(), samples: new Map() }, '2026-07-02').pumps[0];
    expect(never).toMatchObject({ chargedSinceWorn: null, lastWornOn: null });
  });

  it('the last changes, newest first', () => {
    expect(standing()?.lastChanges.map(({ workOn }) => workOn)).toEqual(['2026-06-30', '2026-03-02']);
  });

  it('rented until a day; one no longer in use stands last', () => {
    const held = { held: 'rented' as const, from: 'Tool Loft', backOn: '2026-07-02', retired: false, factId: factId() };
    expect(standing({ held })?.backOverdue).toBe(true);
    expect(standing({ held }, '2026-07-01')?.backOverdue).toBe(false);
    const other = pump({ ...base('pump', 'q00000000002'), serial: 'SP-5' });
    const retired = pump({ held: { ...held, held: 'owned', backOn: null, retired: true } });
    const both = { ...book(), pumps: new Map([retired, other].map((one) => [one.id, one])) };
    expect(gearStanding(both, '2026-07-02').pumps.map(({ number }) => number)).toEqual(['SP-5', 'SP-4']);
  });
});

describe('lots', () => {
  const lotOn = (today: string, expiresOn: string | null = null, blanks: readonly SampleRecord[] = []) => {
    const made = book();
    const samples = new Map([...made.samples.values(), ...blanks].map((one) => [one.id, one]));
    return gearStanding({ ...made, samples, lots: new Map([[lotId, lot({ expiresOn })]]) }, today).lots[0];
  };

  it('what was used, its field blanks, and how many there should be', () => {
    const blanks = [blank('c90000000001', []), blank('c90000000002', [])];
    expect(lotOn('2026-07-02')).toMatchObject({ usedCount: 4, blanksCount: 0, blanksNeededCount: 2 });
    expect(lotOn('2026-07-02', null, blanks)).toMatchObject({ usedCount: 4, blanksCount: 2 });
  });

  it.each([
    ['2026-06-01', '2026-07-02', 'later'],
    ['2026-06-02', '2026-07-02', 'soon'],
    ['2026-07-02', '2026-07-02', 'soon'],
    ['2026-07-03', '2026-07-02', 'passed'],
    ['2026-07-03', null, 'notKnown'],
  ] as const)('on %s one that lasts until %s: %s', (today, expiresOn, expiry) => {
    expect(lotOn(today, expiresOn)?.expiry).toBe(expiry);
  });
});
