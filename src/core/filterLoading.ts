/** Minutes until the filter holds as much dust as the method allows. */
import { formula } from './formula.ts';

/** For planning, with a guessed dust concentration; a look at the filter decides. Q and D above zero. min. */
export const filterLoading = formula({
  symbol: 'tload',
  name: 'filterLoading',
  unit: 'min',
  inputs: {
    M: { name: 'mostDustOnFilter', unit: 'mg' },
    Q: { name: 'averageFlow', unit: 'L/min' },
    D: { name: 'dustInAir', unit: 'mg/m³' },
  },
  expression: 'tload = M / (Q × D) × 1000',
  source: { title: 'Mass on the filter is flow times time times dust', mark: 'DERIVED' },
  increasesWith: ['M'],
  decreasesWith: ['Q', 'D'],
  compute: ({ M, Q, D }) => (M * 1000) / (Q * D),
});
