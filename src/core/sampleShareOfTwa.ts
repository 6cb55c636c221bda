/** Checks and bounds that need no concentration: what a cassette adds to the 8-hour average by its mass and flow alone. */
import { formula } from './formula.ts';

/**
 * A sample that carries its own minutes adds this to TWA8, whatever the minutes are: (m / (Q t)) × t / 480. A second way to the
 * same figure, shown beside it on every day. Q above zero. µg/m³.
 */
export const sampleShareOfTwa = formula({
  symbol: 'ΔTWA8',
  name: 'sampleShareOfTwa',
  unit: 'µg/m³',
  inputs: { m: { name: 'massOfLead', unit: 'µg' }, Q: { name: 'averageFlow', unit: 'L/min' } },
  expression: 'ΔTWA8 = m / (0.48 × Q)',
  source: {
    title: 'TWA8 with C = m / (Q × t)',
    mark: 'DERIVED',
    note: 'The minutes cancel; 0.48 is 480 min over 1000 L/m³',
  },
  increasesWith: ['m'],
  decreasesWith: ['Q'],
  compute: ({ m, Q }) => m / (0.48 * Q),
});

/** The most that n cassettes, all below the reporting limit R, leave open for the day: splitting a day costs proof. µg/m³. */
export const dayBound = formula({
  symbol: 'TWA8max',
  name: 'dayBound',
  unit: 'µg/m³',
  inputs: {
    n: { name: 'cassettes', unit: '' },
    R: { name: 'reportingLimit', unit: 'µg' },
    Q: { name: 'averageFlow', unit: 'L/min' },
  },
  expression: 'TWA8max = n × R / (0.48 × Q)',
  source: { title: 'Sum of what each cassette may add to TWA8', mark: 'DERIVED' },
  increasesWith: ['n', 'R'],
  decreasesWith: ['Q'],
  compute: ({ n, R, Q }) => (n * R) / (0.48 * Q),
});
