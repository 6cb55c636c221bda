/** Readings of a flow meter: a float that bounces between two ends, several readings of one check. All readings are kept. */
import { formula, type Source } from './formula.ts';

const bouncing: Source = {
  title: 'Common practice: a bouncing float is read as the midpoint of its ends',
  mark: 'MEMORY',
  note: 'No published source found; a steady reading has the same number at both ends',
};

/** Midpoint of a bouncing float, lo <= hi. L/min. */
export const readingMidpoint = formula({
  symbol: 'Qi',
  name: 'readingMidpoint',
  unit: 'L/min',
  inputs: { lo: { name: 'lowEnd', unit: 'L/min' }, hi: { name: 'highEnd', unit: 'L/min' } },
  expression: 'Qi = (lo + hi) / 2',
  source: bouncing,
  increasesWith: ['lo', 'hi'],
  compute: ({ lo, hi }) => (lo + hi) / 2,
});

/** Half the distance between the ends, as a share of the midpoint. %. Both ends above zero. */
export const readingHalfWidth = formula({
  symbol: 'w',
  name: 'readingHalfWidth',
  unit: '%',
  inputs: { lo: { name: 'lowEnd', unit: 'L/min' }, hi: { name: 'highEnd', unit: 'L/min' } },
  expression: 'w = (hi − lo) / (hi + lo) × 100',
  source: {
    title: 'Half-width of a bouncing float over its midpoint',
    mark: 'DERIVED',
    note: '(hi − lo) / 2 divided by (lo + hi) / 2',
  },
  compute: ({ lo, hi }) => ((hi - lo) / (hi + lo)) * 100,
});

/** Mean of the readings of one flow check, at least one. With the low ends of bouncing floats it is the protective figure. L/min. */
export const meanOfReadings = formula({
  symbol: 'Q',
  name: 'meanOfReadings',
  unit: 'L/min',
  inputs: { Qi: { name: 'reading', unit: 'L/min', list: true } },
  expression: 'Q = Σ Qi / n',
  source: {
    title: 'NIOSH Manual of Analytical Methods, Chapter D',
    section: 'page 28, step 5',
    url: 'https://en.m.wikisource.org/wiki/Page:NIOSH_Manual_of_Analytical_Methods_-_Chapter_D.pdf/12',
    edition: '4th edition',
    mark: 'READ',
  },
  increasesWith: ['Qi'],
  compute: ({ Qi }) => Qi.reduce((sum, one) => sum + one, 0) / Qi.length,
});
