/** Averages over the work day. TWA: time-weighted average. Every minute of the day is in one of the segments. */
import { formula } from './formula.ts';

const segments = {
  C: { name: 'concentrationOfSegment', unit: 'µg/m³', list: true },
  t: { name: 'minutesOfSegment', unit: 'min', list: true },
} as const;

function dose({ C, t }: { readonly C: readonly number[]; readonly t: readonly number[] }): number {
  if (C.length !== t.length) throw new Error(`${C.length} concentrations for ${t.length} segments`);
  return C.reduce((sum, one, index) => sum + one * (t[index] ?? Number.NaN), 0);
}

/** 8-hour time-weighted average of the whole work day, however long. The action level is held against it at any length. µg/m³. */
export const twa8 = formula({
  symbol: 'TWA8',
  name: 'twa8',
  unit: 'µg/m³',
  inputs: segments,
  expression: 'TWA8 = Σ (C × t) / 480',
  source: {
    title: '29 CFR 1910.1000',
    section: '(d)(1)(i)',
    edition: '2015 annual edition',
    mark: 'READ',
    note: '480 min are the 8 hours',
  },
  increasesWith: ['C', 't'],
  compute: (inputs) => dose(inputs) / 480,
});

/** Average over the hours worked; held against the allowable average of the same hours. h above zero. µg/m³. */
export const shiftAverage = formula({
  symbol: 'Cshift',
  name: 'shiftAverage',
  unit: 'µg/m³',
  inputs: { ...segments, h: { name: 'hoursWorked', unit: 'h' } },
  expression: 'Cshift = Σ (C × t) / (60 × h)',
  source: { title: 'Time-weighted average over the hours worked in the day', mark: 'DERIVED' },
  increasesWith: ['C', 't'],
  decreasesWith: ['h'],
  compute: ({ C, t, h }) => dose({ C, t }) / (60 * h),
});

/**
 * What the average over the hours worked may be: the limit, or dose / hours where that is less (a shift over 8 hours). The limit and
 * the dose come from the limit set. The average over the shift is held against it, never TWA8. h above zero. µg/m³.
 */
export const allowableAverage = formula({
  symbol: 'A',
  name: 'allowableAverage',
  unit: 'µg/m³',
  inputs: {
    L: { name: 'limit', unit: 'µg/m³' },
    D: { name: 'allowableDose', unit: 'µg·h/m³' },
    h: { name: 'hoursWorked', unit: 'h' },
  },
  expression: 'A = min(L, D / h)',
  source: {
    title: '29 CFR 1926.62 Lead',
    section: '(c)(2)',
    url: 'https://anthonygarvan.github.io/allregs/html/sections/29CFR1926.62.html',
    edition: '2015 annual edition',
    mark: 'READ',
    note: 'Up to 8 hours D / h is no less than L, so that min says both cases',
  },
  decreasesWith: ['h'],
  increasesWith: ['L', 'D'],
  compute: ({ L, D, h }) => Math.min(L, D / h),
});

/** Hours from minutes. h. */
export const hoursWorked = formula({
  symbol: 'h',
  name: 'hoursWorked',
  unit: 'h',
  inputs: { t: { name: 'minutesWorked', unit: 'min', list: true } },
  expression: 'h = Σ t / 60',
  source: { title: 'Hours from minutes', mark: 'DERIVED' },
  increasesWith: ['t'],
  compute: ({ t }) => t.reduce((sum, one) => sum + one, 0) / 60,
});

/**
 * What the unknown minutes would have to average for the day to reach a limit: the limit's dose, less what is known, over those
 * minutes. Zero or less: the known part alone reaches it. u above zero. µg/m³.
 */
export const averageToReach = formula({
  symbol: 'Cu',
  name: 'averageToReach',
  unit: 'µg/m³',
  inputs: {
    L: { name: 'limit', unit: 'µg/m³' },
    T: { name: 'twaOfKnownMinutes', unit: 'µg/m³' },
    u: { name: 'unknownMinutes', unit: 'min' },
  },
  expression: 'Cu = (L − T) × 480 / u',
  source: { title: 'TWA8 = L solved for the unknown minutes', mark: 'DERIVED' },
  increasesWith: ['L'],
  decreasesWith: ['T'],
  compute: ({ L, T, u }) => ((L - T) * 480) / u,
});
