/**
 * One-sided 95 % limits from a sampling and analytical error (SAE) that the laboratory gave. No SAE is made up. The comparison with
 * the limit is core/comparison.ts; here are shares of the limit.
 */
import { formula, type Source } from './formula.ts';

const book: Source = {
  title: 'Boss & Day, Air Sampling and Industrial Hygiene Engineering',
  section: '4.6.1',
  url: 'https://studfile.net/preview/10872056/page:7',
  mark: 'READ',
  note: 'Restates the OSHA Technical Manual, whose own text was not seen',
};
const share = { Y: { name: 'shareOfLimit', unit: '' }, E: { name: 'error', unit: '' } } as const;

/** Y: exposure as a share of the limit, both in the same unit. L above zero. */
export const shareOfLimit = formula({
  symbol: 'Y',
  name: 'shareOfLimit',
  unit: '',
  inputs: { X: { name: 'exposure', unit: 'µg/m³' }, L: { name: 'limit', unit: 'µg/m³' } },
  expression: 'Y = X / L',
  source: book,
  increasesWith: ['X'],
  decreasesWith: ['L'],
  compute: ({ X, L }) => X / L,
});

/** Lower limit: above 1, even the low end is above. */
export const lowerConfidence = formula({
  symbol: 'LCL',
  name: 'lowerConfidence',
  unit: '',
  inputs: share,
  expression: 'LCL = Y − E',
  source: book,
  increasesWith: ['Y'],
  decreasesWith: ['E'],
  compute: ({ Y, E }) => Y - E,
});

/** Upper limit: at or below 1, not even the high end is above. */
export const upperConfidence = formula({
  symbol: 'UCL',
  name: 'upperConfidence',
  unit: '',
  inputs: share,
  expression: 'UCL = Y + E',
  source: book,
  increasesWith: ['Y', 'E'],
  compute: ({ Y, E }) => Y + E,
});

/**
 * Error of an average over consecutive samples, as a share of the limit: the errors of the samples add as squares. P is the period
 * of the average, 480 min for an 8-hour one. For one full-period sample near the limit it comes to S itself.
 */
export const errorOfConsecutive = formula({
  symbol: 'E',
  name: 'errorOfConsecutive',
  unit: '',
  inputs: {
    S: { name: 'samplingAndAnalyticalError', unit: '', list: true },
    X: { name: 'concentrationOfSample', unit: 'µg/m³', list: true },
    t: { name: 'minutesOfSample', unit: 'min', list: true },
    L: { name: 'limit', unit: 'µg/m³' },
    P: { name: 'averagingPeriod', unit: 'min' },
  },
  expression: 'E = √(Σ (S × X × t)²) / (L × P)',
  source: {
    ...book,
    section: '4.6.3',
    note: 'One character of the scan is damaged; the form is confirmed by its dimensions. Using it for the upper limit is our reading',
  },
  increasesWith: ['S', 'X', 't'],
  decreasesWith: ['L', 'P'],
  compute: ({ S, X, t, L, P }) => {
    if (X.length !== t.length || X.length !== S.length) throw new Error('as many errors, concentrations and minutes');
    return (
      Math.sqrt(X.reduce((sum, one, index) => sum + ((S[index] ?? NaN) * one * (t[index] ?? NaN)) ** 2, 0)) / (L * P)
    );
  },
});

/** SAE from a coefficient of variation that the laboratory gave instead. */
export const saeFromVariation = formula({
  symbol: 'SAE',
  name: 'saeFromVariation',
  unit: '',
  inputs: { CV: { name: 'coefficientOfVariation', unit: '' } },
  expression: 'SAE = 1.645 × CV',
  source: { title: 'Examination question bank on sampling and analytical error', mark: 'READ-2' },
  increasesWith: ['CV'],
  compute: ({ CV }) => 1.645 * CV,
});
