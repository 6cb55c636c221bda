/**
 * How many distinct worker's days a second the findings assess on one core, with full workings: one full-shift cassette, on two days of
 * five a change at lunch; a field blank, an explained gap, a rotameter on every fourth day. Days are made beforehand; only the finding is timed.
 */
import { loadavg } from 'node:os';
import { lowerOf } from '#core/estimate.ts';
import { findWorkday } from '#findings/workday.ts';
import type { Book } from '#records/book.ts';
import { bookOf, type GeneratedDay, type GeneratedSample } from '#tests/findings/generated.ts';
import { workdayId } from '#tests/findings/sliceRegisters.ts';

export interface Measured {
  readonly name: string;
  readonly unit: string;
  readonly median: number;
  /** The same over the processor's seconds, all threads together: what other work on the machine cannot blur. */
  readonly medianOfProcessorTime: number;
  readonly least: number;
  readonly most: number;
  readonly goal: number;
  readonly loadAverage: number;
  readonly distinct: number;
}

/** Mulberry32: the same days for the same seed, on every machine. */
function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

function sampleOf(next: () => number): GeneratedSample {
  return {
    min: 180 + Math.floor(next() * 80),
    flow: 1.5 + Math.round(next() * 15_000) / 10_000,
    afterPct: 96 + next() * 8,
    aimed: 1 + next() * 70,
    lessThan: next() < 0.15,
    wallDeposit: next() < 0.8 ? 'yes' : 'notStated',
    blankCorrected: 'no',
    pumpShortMin: 0,
    bounce: next() < 0.1,
    decided: null,
    mishap: next() < 0.05,
    voided: next() < 0.03,
    sae: null,
  };
}

function dayOf(next: () => number, index: number): GeneratedDay {
  return {
    samples: next() < 0.4 ? [sampleOf(next), sampleOf(next)] : [{ ...sampleOf(next), min: 440 }],
    gapMin: 30,
    gapIs: index % 10 === 0 ? 'unknown' : 'away',
    rotameter: index % 4 === 0,
    altitudeM: Math.floor(next() * 1500),
    barometer: next() < 0.5,
    temperatureC: Math.floor(next() * 30),
    blanksUg: [0.3],
    stateCode: 'TX',
    doubt: 'none',
  };
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** The whole finding is made; of it one figure is kept, so that the next day finds the memory free, as it does on the page of a day. */
function figureOf(book: Book | undefined): number {
  if (!book) return Number.NaN;
  const { twa8, standings } = findWorkday(workdayId, book);
  if (!twa8 || standings.length !== 2) throw new Error('a day without a standing');
  return lowerOf(twa8.estimate);
}

const warmUpRounds = 4;

/** Where the run allows it (--expose-gc): what the making of the days left behind is not swept up on the findings' time. */
const sweep = (): void => (globalThis as { readonly gc?: () => void }).gc?.();

/** Days a second: `count` days in each of `rounds` timed rounds. Every day is made beforehand, and assessed once. */
export function findingsRate(count = 600, rounds = 21, seed = 20261125): Measured {
  const next = random(seed);
  const rates: number[] = [];
  const cpuRates: number[] = [];
  const figures = new Set<number>();
  const days: Book[][] = Array.from({ length: warmUpRounds + rounds }, () =>
    Array.from({ length: count }, (_, i) => bookOf(dayOf(next, i))),
  );
  const twa = new Float64Array(count);
  sweep();
  for (const [round, books] of days.entries()) {
    const before = process.cpuUsage();
    const from = process.hrtime.bigint();
    for (let i = 0; i < count; i++) twa[i] = figureOf(books[i]);
    const seconds = Number(process.hrtime.bigint() - from) / 1e9;
    const spent = process.cpuUsage(before);
    for (const figure of twa) figures.add(figure);
    if (round < warmUpRounds) continue;
    rates.push(count / seconds);
    cpuRates.push(count / ((spent.user + spent.system) / 1e6));
  }
  return {
    name: "worker's days assessed with full workings, one core",
    unit: 'days/s',
    median: median(rates),
    medianOfProcessorTime: median(cpuRates),
    least: Math.min(...rates),
    most: Math.max(...rates),
    goal: 20_000,
    loadAverage: loadavg()[0] ?? Number.NaN,
    distinct: figures.size,
  };
}

if (process.argv[1]?.replaceAll('\\', '/').endsWith('tests/bench/findingsRate.ts')) {
  const { name, median: mid, medianOfProcessorTime, least, most, goal, loadAverage, distinct } = findingsRate();
  console.info(
    `${name}: median ${Math.round(mid)} a second (${Math.round(least)} to ${Math.round(most)}), goal ${goal}; by processor time ${Math.round(medianOfProcessorTime)}; ${distinct} distinct figures; load ${loadAverage.toFixed(2)}`,
  );
}
