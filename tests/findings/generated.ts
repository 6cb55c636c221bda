/** Generated days for the properties: from a plain description that fast-check can shrink to a slice of the book. */
import * as fc from 'fast-check';
import { addMinutes } from '#core/calendar.ts';
import type { Book, FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { at, meter, site } from './sliceRegisters.ts';
import { blank, check, explained, interval, result, sample, slice, workday } from './slices.ts';

export interface GeneratedSample {
  readonly min: number;
  readonly flow: number;
  /** Flow after, in per cent of the flow before. */
  readonly afterPct: number;
  /** Concentration that the mass is made for. */
  readonly aimed: number;
  readonly lessThan: boolean;
  readonly wallDeposit: 'yes' | 'no' | 'notStated';
  readonly blankCorrected: 'yes' | 'no' | 'notStated';
  readonly pumpShortMin: number;
  readonly bounce: boolean;
  readonly decided: 'average' | 'lower' | null;
  readonly mishap: boolean;
  readonly voided: boolean;
  readonly sae: number | null;
}

export interface GeneratedDay {
  readonly samples: readonly GeneratedSample[];
  readonly gapMin: number;
  readonly gapIs: 'away' | 'sameAs' | 'unknown' | 'unexplained';
  readonly rotameter: boolean;
  readonly altitudeM: number;
  readonly barometer: boolean;
  readonly temperatureC: number;
  readonly blanksUg: readonly number[];
  readonly stateCode: 'TX' | 'CA';
  readonly doubt: 'none' | 'otherWork' | 'meterDue' | 'fitting';
}

const often = <T>(usual: T, ...others: readonly T[]): fc.Arbitrary<T> =>
  fc.oneof({ weight: 5, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: fc.constantFrom(usual, ...others) });

const generatedSample: fc.Arbitrary<GeneratedSample> = fc.record({
  min: fc.integer({ min: 100, max: 300 }),
  flow: fc.integer({ min: 120, max: 350 }).map((hundredths) => hundredths / 100),
  afterPct: fc.oneof(
    fc.integer({ min: 96, max: 104 }),
    fc.integer({ min: 91, max: 109 }),
    fc.integer({ min: 70, max: 120 }),
  ),
  aimed: fc.constantFrom(1, 2, 8, 14, 20, 27, 29, 30, 31, 45, 49, 50, 51, 70),
  lessThan: often(false, true),
  wallDeposit: often<GeneratedSample['wallDeposit']>('yes', 'no', 'notStated'),
  blankCorrected: fc.constantFrom('yes', 'no', 'notStated'),
  pumpShortMin: often(0, 1, 30, -20),
  bounce: often(false, true),
  decided: often<GeneratedSample['decided']>(null, 'average', 'lower'),
  mishap: often(false, true),
  voided: often(false, true),
  sae: often<number | null>(null, 0.1, 0.25),
});

export const generatedDay: fc.Arbitrary<GeneratedDay> = fc.record({
  samples: fc.array(generatedSample, { minLength: 1, maxLength: 3 }),
  gapMin: fc.constantFrom(0, 0, 30, 120),
  gapIs: fc.constantFrom('away', 'sameAs', 'unknown', 'unexplained'),
  rotameter: fc.boolean(),
  altitudeM: fc.integer({ min: 0, max: 2000 }),
  barometer: fc.boolean(),
  temperatureC: fc.integer({ min: -5, max: 38 }),
  blanksUg: fc.array(fc.constantFrom(0.3, 0.5, 1.2), { maxLength: 2 }),
  stateCode: often<'TX' | 'CA'>('TX', 'CA'),
  doubt: often<GeneratedDay['doubt']>('none', 'otherWork', 'meterDue', 'fitting'),
});

const sampleIdOf = (index: number): string => `c0000000000${index + 1}`;
const checkIdOf = (index: number): string => `f0000000000${index}`;

function readings(flow: number, bounce: boolean): FlowCheckRecord['readings'] {
  const [lowLPerMin, highLPerMin] = bounce ? [flow * 0.92, flow * 1.08] : [flow, flow];
  return Array.from({ length: 3 }, () => ({ lowLPerMin, highLPerMin }));
}

function sampleFrom(given: GeneratedSample, index: number, fromAt: string, doubt: GeneratedDay['doubt']): SampleRecord {
  const toAt = addMinutes(fromAt, given.min);
  const massUg = (given.aimed * given.flow * given.min) / 1000;
  const made = sample(
    fromAt,
    toAt,
    [
      result(given.lessThan ? { lessThanUg: massUg } : massUg, {
        wallDeposit: given.wallDeposit,
        blankCorrected: given.blankCorrected,
        saeFraction: given.sae,
        ...(given.lessThan ? {} : { reportingLimitUg: massUg / 20 }),
      }),
    ],
    { id: sampleIdOf(index), sampleNumber: `12000${index}` },
  );
  const mishap = { sampleId: made.id, mishap: 'wet', remark: null, at: fromAt, entry: 'tapped', factId: 'm' } as const;
  return {
    ...made,
    stopped: made.stopped && { ...made.stopped, pumpMin: given.min - given.pumpShortMin },
    intervals: [interval(fromAt, toAt)],
    flowDecision: given.decided && { use: given.decided, why: 'seen by the supervisor', factId: 'd' },
    mishaps: given.mishap ? [mishap] : [],
    voided: given.voided ? { why: 'found open', factId: 'v' } : null,
    fitting: doubt === 'fitting' ? null : made.fitting,
  };
}

/** Cassettes one after the other with five minutes between, a flow check in each gap, and a stretch of work after the last. */
export function bookOf(day: GeneratedDay): Book {
  const samples: SampleRecord[] = [];
  const checks: FlowCheckRecord[] = [];
  const air = {
    temperatureC: day.temperatureC,
    pressureKPa: day.barometer ? 101.325 * (1 - day.altitudeM / 9000) : null,
  };
  let cursor = at('06:00');
  const startAt = cursor;
  day.samples.forEach((given, index) => {
    const own = { ...air, readings: readings(given.flow, given.bounce) };
    checks.push(check(checkIdOf(2 * index), 'before', cursor, given.flow, own));
    const made = sampleFrom(given, index, cursor, day.doubt);
    samples.push(made);
    cursor = addMinutes(cursor, given.min);
    const after = (given.flow * given.afterPct) / 100;
    checks.push(
      check(checkIdOf(2 * index + 1), 'after', cursor, after, { ...air, readings: readings(after, given.bounce) }),
    );
  });
  const endAt = addMinutes(cursor, day.gapMin);
  const said =
    day.gapMin > 0 && day.gapIs !== 'unexplained'
      ? [explained(cursor, endAt, day.gapIs, { sampleId: sampleIdOf(0), reason: 'as noted by the supervisor' })]
      : [];
  const blanks = day.blanksUg.map((massUg, i) => blank(`c0000000009${i}`, [result(massUg, { reportingLimitUg: 0.2 })]));
  const pairs = [
    { readLPerMin: 0.5, trueLPerMin: 0.52 },
    { readLPerMin: 5, trueLPerMin: 4.9 },
  ];
  return slice({
    samples: [...samples, ...blanks],
    checks,
    site: site({ altitudeM: day.altitudeM, stateCode: day.stateCode }),
    meter: meter({
      meterKind: day.rotameter ? 'rotameter' : 'dryPiston',
      pairs: day.rotameter ? pairs : [],
      ...(day.doubt === 'meterDue' ? { dueOn: '2026-11-01' } : {}),
    }),
    day: workday([[startAt, endAt]], { explained: said, ...(day.doubt === 'otherWork' ? { otherWork: null } : {}) }),
  });
}
