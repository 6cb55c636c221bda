/**
 * A book of many sampled days, for speed figures and for comparing what is found again with what is found of nothing: ten crews of
 * three, two of them sampled each day, each pump with a meter of its own; sites and tasks change, a third of the samples is low.
 */
import { addDays, weekdayOf } from '#core/calendar.ts';
import type {
  Book,
  FlowCheckRecord,
  MeterRecord,
  PersonRecord,
  SampleRecord,
  ShiftRecord,
  SiteRecord,
  WorkdayRecord,
} from '#records/book.ts';
import { emptyBook } from '#records/emptyBook.ts';
import { base, factId, lot, meter, person, shift, site } from '#tests/findings/sliceRegisters.ts';
import { check, interval, result, sample } from '#tests/findings/slices.ts';

const crewsCount = 10;
const id = (letter: string, number: number): string => `${letter}${String(number).padStart(11, '0')}`;

/** Mulberry32: the same book for the same seed, on every machine. */
function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const tasks: readonly (readonly string[])[] = [
  ['handScraping'],
  ['handScraping', 'windowTakeOut'],
  ['windowTakeOut'],
  ['dustCleanup'],
];

interface Filling {
  readonly samples: SampleRecord[];
  readonly checks: FlowCheckRecord[];
  readonly workdays: WorkdayRecord[];
  readonly shifts: ShiftRecord[];
}

function aimed(next: () => number): number {
  const which = next();
  return which < 0.35 ? 3 + next() * 20 : which < 0.75 ? 31 + next() * 18 : 52 + next() * 300;
}

function addDay(into: Filling, next: () => number, crew: number, on: string, dayIndex: number, siteId: string): void {
  const shiftId = `${siteId}.${on}`;
  const taskIds = [...(tasks[(crew + Math.floor(dayIndex / 25)) % tasks.length] ?? [])];
  into.shifts.push({ ...shift({ siteId, workOn: on }), ...base('shift', shiftId) });
  const [fromAt, toAt] = [`${on}T13:00:00.000Z`, `${on}T21:00:00.000Z`];
  for (const seat of [0, 1, 2]) {
    const workerId = id('p', crew * 3 + seat + 1);
    const workdayId = `${workerId}.${on}`;
    const worked = [{ shiftId, taskIds, jobClassificationId: null, respirator: null, factId: factId() }];
    into.workdays.push({
      ...base('workday', workdayId),
      workerId,
      workOn: on,
      pieces: [{ startedAt: fromAt, endedAt: toAt, place: null, employer: null }],
      otherWork: { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' },
      explained: [],
      regular: { regular: 'yes', reason: null, factId: factId() },
      worked,
    });
    if (seat === 2) continue;
    const number = into.samples.length + 1;
    const pump = crew * 2 + seat + 1;
    const pumpId = id('q', pump);
    const receivedOn = addDays(on, 8);
    const massUg = aimed(next) * 0.96;
    into.samples.push(
      sample(fromAt, toAt, [result(massUg, { receivedOn, reportedOn: receivedOn, reportNumber: `R-${on}` })], {
        ...{ id: id('c', number), shiftId, workOn: on, siteId, workerId, workdayId, pumpId, taskIds },
        sampleNumber: String(1_000_000 + number),
        intervals: [interval(fromAt, toAt)],
      }),
    );
    const flow = (purpose: 'before' | 'after', time: string, at: number) =>
      check(id('f', number * 2 + at), purpose, time, 2, { shiftId, pumpId, meterId: id('m', pump) });
    into.checks.push(flow('before', `${on}T12:40:00.000Z`, 0), flow('after', `${on}T21:10:00.000Z`, 1));
  }
}

const byId = <T extends { readonly id: string }>(records: readonly T[]): Map<string, T> =>
  new Map(records.map((one) => [one.id, one]));

export interface Season {
  readonly book: Book;
  readonly lastOn: string;
  /** The meter that is found bad in one, and how many samples it read the flow of. */
  readonly badMeterId: string;
  readonly touchedCount: number;
}

/** `samplesCount` samples, the first on 2024-01-02; each of twenty meters read a twentieth of them. */
export function season(samplesCount = 10_000, seed = 20261125): Season {
  const next = random(seed);
  const into: Filling = { samples: [], checks: [], workdays: [], shifts: [] };
  const sites = new Map<string, SiteRecord>();
  let on = '2024-01-02';
  for (let dayIndex = 0; into.samples.length < samplesCount; on = addDays(on, 1)) {
    if (weekdayOf(on) === 0 || weekdayOf(on) === 6) continue;
    for (let crew = 0; crew < crewsCount && into.samples.length < samplesCount; crew++) {
      const siteId = id('s', crew * 100 + Math.floor(dayIndex / 50) + 1);
      if (!sites.has(siteId))
        sites.set(siteId, { ...site({ siteId, name: `Site ${siteId}` }), ...base('site', siteId) });
      addDay(into, next, crew, on, dayIndex, siteId);
    }
    dayIndex += 1;
  }
  const people: PersonRecord[] = Array.from({ length: crewsCount * 3 }, (_, i) =>
    person(id('p', i + 1), `Worker ${i + 1}`),
  );
  const meters: MeterRecord[] = Array.from({ length: crewsCount * 2 }, (_, i) => {
    const meterId = id('m', i + 1);
    return { ...meter({ meterId, certificateOn: '2023-12-01', dueOn: '2030-01-01' }), ...base('meter', meterId) };
  });
  const badMeterId = id('m', 1);
  const touched = into.checks.filter(({ meterId, purpose }) => meterId === badMeterId && purpose === 'before');
  return {
    book: {
      ...emptyBook,
      book: { ...base('book', 'b00000000001'), bookId: 'b00000000001', firmName: 'Sill and Sash', practice: false },
      sites,
      people: byId(people),
      meters: byId(meters),
      lots: byId([lot()]),
      shifts: byId(into.shifts),
      flowChecks: byId(into.checks),
      samples: byId(into.samples),
      workdays: byId(into.workdays),
    },
    lastOn: on,
    badMeterId,
    touchedCount: touched.length,
  };
}

/** The same book with the meter found bad: its certificate had run out before the first day. Everything else is the same objects. */
export function withBadMeter({ book, badMeterId }: Season): Book {
  const bad = book.meters.get(badMeterId);
  if (!bad) throw new Error('no such meter');
  const meters = new Map(book.meters);
  meters.set(badMeterId, { ...bad, certificateOn: '2022-12-01', dueOn: '2023-12-01' });
  return { ...book, meters };
}
