/**
 * Generated books in which workers' days get into each other's way: few pumps over several days, checks at all hours, cassettes in two boxes,
 * one number twice, blanks, voids, cassettes that were never put on. From plain numbers that fast-check can shrink.
 */
import * as fc from 'fast-check';
import { addMinutes } from '#core/calendar.ts';
import type { Book, BoxRecord, FlowCheckRecord, SampleRecord, WorkdayRecord } from '#records/book.ts';
import { base, lot, meter, person, site, siteId } from '../sliceRegisters.ts';
import { blank, box, check, interval, result, sample } from '../slices.ts';
import { shiftOn, worked } from './jobBook.ts';

const number = (max: number): fc.Arbitrary<number> => fc.integer({ min: 0, max });

const someSample = fc.record({
  worker: number(2),
  day: number(3),
  pump: number(1),
  startMin: number(300),
  wornMin: fc.constantFrom(0, 60, 240, 480),
  fate: fc.constantFrom('worn', 'worn', 'worn', 'running', 'neverOn', 'void'),
  averageUgPerM3: fc.constantFrom(null, 5, 20, 30, 40, 60),
  numberTwice: fc.boolean(),
});
const someCheck = fc.record({
  pump: number(1),
  day: number(3),
  atMin: number(900),
  purpose: fc.constantFrom<FlowCheckRecord['purpose']>('before', 'after', 'between'),
  inLine: fc.constantFrom<FlowCheckRecord['inLine']>('representativeCassette', 'representativeCassette', 'nothing'),
  flowPct: fc.constantFrom(100, 100, 104, 92),
  meter: number(1),
  hand: fc.constantFrom('wwwwwwwwwwww', 'zzzzzzzzzzz1'),
});

export const someBook = fc.record({
  samples: fc.array(someSample, { minLength: 1, maxLength: 7 }),
  checks: fc.array(someCheck, { maxLength: 14 }),
  blanks: fc.array(fc.record({ day: number(3), numberTwice: fc.boolean() }), { maxLength: 3 }),
  boxes: fc.array(fc.array(number(9), { maxLength: 5 }), { maxLength: 3 }),
  missing: fc.boolean(),
});
export type SomeBook = typeof someBook extends fc.Arbitrary<infer T> ? T : never;

const dayOn = (day: number): string => `2026-11-2${day}`;
const at = (day: number, min: number): string => addMinutes(`${dayOn(day)}T06:00:00.000Z`, min);
const workerId = (worker: number): string => `p0000000000${worker + 1}`;
const pumpId = (pump: number): string => `q0000000000${pump + 1}`;

function sampleFrom(given: SomeBook['samples'][number], index: number): SampleRecord {
  const { worker, day, startMin, wornMin, fate, averageUgPerM3 } = given;
  const [fromAt, toAt] = [at(day, startMin), at(day, startMin + wornMin)];
  const id = `c0000000000${index}`;
  const massUg = ((averageUgPerM3 ?? 0) * 2 * Math.max(60, wornMin)) / 1000;
  const workdayId = `${workerId(worker)}.${dayOn(day)}`;
  const made = sample(fromAt, toAt, averageUgPerM3 === null ? [] : [result(massUg)], {
    ...{ id, workdayId, workerId: workerId(worker), workOn: dayOn(day), pumpId: pumpId(given.pump) },
    shiftId: `${siteId}.${dayOn(day)}`,
    sampleNumber: given.numberTwice ? '777777' : `12000${index}`,
  });
  if (fate === 'neverOn') return { ...made, putOn: null, stopped: null, intervals: [] };
  if (fate === 'running') return { ...made, stopped: null, intervals: [interval(fromAt, null)] };
  return fate === 'void' ? { ...made, voided: { why: 'found open', factId: 'v' } } : made;
}

const checkFrom = (given: SomeBook['checks'][number], index: number): FlowCheckRecord =>
  check(`f0000000000${index}`, given.purpose, at(given.day, given.atMin), (2 * given.flowPct) / 100, {
    ...{ pumpId: pumpId(given.pump), shiftId: `${siteId}.${dayOn(given.day)}`, inLine: given.inLine },
    ...{ meterId: `m0000000000${given.meter + 1}`, checkedFactId: `${given.hand}.0000000${index}` },
  });

const byId = <T extends { readonly id: string }>(records: readonly T[]): Map<string, T> =>
  new Map(records.map((one) => [one.id, one]));

function workdayFrom(id: string): WorkdayRecord {
  const [worker = '', workOn = ''] = id.split('.');
  const piece = {
    startedAt: `${workOn}T06:00:00.000Z`,
    endedAt: `${workOn}T14:00:00.000Z`,
    place: null,
    employer: null,
  };
  return {
    ...base('workday', id),
    ...{ workerId: worker, workOn, pieces: [piece], explained: [], worked: [worked(workOn)] },
    otherWork: { workdayId: id, callOut: 'no', secondSite: 'no', secondEmployer: 'no' },
    regular: { regular: 'yes', reason: null, factId: 'r' },
  };
}

export function bookFrom(given: SomeBook): Book {
  const air = given.samples.map(sampleFrom);
  const blanks = given.blanks.map(({ day, numberTwice }, i) =>
    blank(`c0000000009${i}`, [result(0.4)], {
      ...{ workOn: dayOn(day), shiftId: `${siteId}.${dayOn(day)}`, sampleNumber: numberTwice ? '777777' : `9000${i}` },
    }),
  );
  const samples = [...air, ...blanks];
  const boxes = given.boxes.map((indexes, i): BoxRecord => {
    const ids = [...new Set(indexes)].map((index) => samples[index]?.id ?? `c0000000008${index}`);
    const made = box(ids);
    return { ...made, id: `x0000000000${i}`, packed: { ...made.packed, boxId: `x0000000000${i}` } };
  });
  const ids = new Set(air.flatMap((one) => one.workdayId ?? []));
  return {
    book: { ...base('book', 'b00000000001'), bookId: 'b00000000001', firmName: 'Sill and Sash', practice: false },
    sites: byId([site()]),
    people: byId([0, 1, 2].map((worker) => person(workerId(worker), `Worker ${worker}`))),
    jobClassifications: new Map(),
    pumps: new Map(),
    meters: byId([meter(), { ...meter(), id: 'm00000000002', meterId: 'm00000000002', dueOn: null }]),
    lots: byId([lot()]),
    laboratories: new Map(),
    shifts: byId([0, 1, 2, 3].map((day) => shiftOn(dayOn(day)))),
    flowChecks: byId(given.checks.map(checkFrom)),
    samples: byId(samples),
    workdays: byId([...ids].map(workdayFrom)),
    boxes: byId(boxes),
    reported: new Map(),
    reliances: new Map(),
    notices: new Map(),
    determinations: new Map(),
    duties: new Map(),
    requests: new Map(),
    plans: new Map(),
    dayPlans: new Map(),
    spendings: new Map(),
    ...(given.missing
      ? { missing: [{ writer: 'wwwwwwwwwwww', fromCount: 1, toCount: 2, untilOn: '2026-11-21' }] }
      : {}),
  };
}
