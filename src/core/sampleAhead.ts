/** Before a sample is taken: what it could leave open at best, and what it would take for less. Bounds, never figures of anybody's air. */
import { formula, type Source } from './formula.ts';

const spread: Source = {
  title: 'Sum of what each cassette may add, spread over the minutes of the shift',
  mark: 'DERIVED',
  note: 'With every minute sampled, t = T, it is n × R / (0.48 × Q)',
};
const solved: Source = { title: 'n × R / (0.48 × Q) solved for one of its parts', mark: 'DERIVED' };

const cassettes = { name: 'cassettes', unit: '' } as const;
const reportingLimit = { name: 'reportingLimit', unit: 'µg' } as const;
const flow = { name: 'averageFlow', unit: 'L/min' } as const;
const level = { name: 'levelToStayUnder', unit: 'µg/m³' } as const;

/**
 * The most that the day's 8-hour average may be if all n cassettes come back below the reporting limit R, t of the T minutes of the shift
 * were sampled, and the rest was like them. Q and t above zero, t up to T. µg/m³.
 */
export const boundOfMinutes = formula({
  symbol: 'TWA8max',
  name: 'boundOfMinutes',
  unit: 'µg/m³',
  inputs: {
    n: cassettes,
    R: reportingLimit,
    Q: flow,
    T: { name: 'minutesOfShift', unit: 'min' },
    t: { name: 'minutesSampled', unit: 'min' },
  },
  expression: 'TWA8max = n × R × T / (0.48 × Q × t)',
  source: spread,
  increasesWith: ['n', 'R', 'T'],
  decreasesWith: ['Q', 't'],
  compute: ({ n, R, Q, T, t }) => (n * R * T) / (0.48 * Q * t),
});

/** Minutes of the shift that must be sampled for that bound to come down to a level. More than the shift has: no time suffices. min. */
export const minutesForLevel = formula({
  symbol: 'tneed',
  name: 'minutesForLevel',
  unit: 'min',
  inputs: { n: cassettes, R: reportingLimit, Q: flow, T: { name: 'minutesOfShift', unit: 'min' }, L: level },
  expression: 'tneed = n × R × T / (0.48 × Q × L)',
  source: solved,
  increasesWith: ['n', 'R', 'T'],
  decreasesWith: ['Q', 'L'],
  compute: ({ n, R, Q, T, L }) => (n * R * T) / (0.48 * Q * L),
});

/** The reporting limit with which n cassettes over the whole shift come down to a level. µg. */
export const reportingLimitForLevel = formula({
  symbol: 'Rneed',
  name: 'reportingLimitForLevel',
  unit: 'µg',
  inputs: { n: cassettes, Q: flow, L: level },
  expression: 'Rneed = 0.48 × Q × L / n',
  source: solved,
  increasesWith: ['Q', 'L'],
  decreasesWith: ['n'],
  compute: ({ n, Q, L }) => (0.48 * Q * L) / n,
});

/** The flow with which n cassettes over the whole shift come down to a level. L/min. */
export const flowForLevel = formula({
  symbol: 'Qneed',
  name: 'flowForLevel',
  unit: 'L/min',
  inputs: { n: cassettes, R: reportingLimit, L: level },
  expression: 'Qneed = n × R / (0.48 × L)',
  source: solved,
  increasesWith: ['n', 'R'],
  decreasesWith: ['L'],
  compute: ({ n, R, L }) => (n * R) / (0.48 * L),
});

/** Dust on the filter after t minutes, at a guessed level of dust: what the curve of loading shows. mg. */
export const dustOnFilter = formula({
  symbol: 'M',
  name: 'dustOnFilter',
  unit: 'mg',
  inputs: { Q: flow, D: { name: 'dustInAir', unit: 'mg/m³' }, t: { name: 'minutesSampled', unit: 'min' } },
  expression: 'M = Q × D × t / 1000',
  source: { title: 'Mass on the filter is flow times time times dust', mark: 'DERIVED' },
  increasesWith: ['Q', 'D', 't'],
  compute: ({ Q, D, t }) => (Q * D * t) / 1000,
});
