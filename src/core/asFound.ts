/** A flow meter that was found to read falsely: what it read, times what it was found to be off by. */
import { between } from './estimate.ts';
import { formula, recorded, type Term, type Working } from './formula.ts';

/** Flow by what the meter was found to read afterwards. L/min. */
export const asFoundFlow = formula({
  symbol: 'Q',
  name: 'asFoundFlow',
  unit: 'L/min',
  inputs: {
    Qr: { name: 'flowRead', unit: 'L/min' },
    f: { name: 'trueOverRead', unit: '' },
  },
  expression: 'Q = Qr × f',
  source: {
    title: 'A meter that was found off by a factor: nobody knows since when',
    mark: 'DERIVED',
    note: 'The flow lies between what was read (f = 1) and what that makes by the factor found',
  },
  increasesWith: ['Qr', 'f'],
  compute: ({ Qr, f }) => Qr * f,
});

/** What one finding says of the meter: true flow over the flow that it read, and the facts that say so. */
export interface FactorFound {
  readonly trueOverRead: number;
  readonly because: readonly string[];
}

/** Between the flow as read and as it would be by every factor found. */
export function flowWithin(Qr: Term, factors: readonly FactorFound[]): Working {
  const values = [1, ...factors.map(({ trueOverRead }) => trueOverRead)];
  const within = between(Math.min(...values), Math.max(...values));
  const because = factors.flatMap((one) => one.because);
  return asFoundFlow.of({ Qr, f: recorded('trueOverRead', '', within, because) });
}

/** The flow by one factor, as if the meter had been off all the time. */
export const flowAt = (Qr: Term, { trueOverRead, because }: FactorFound): Working =>
  asFoundFlow.of({ Qr, f: recorded('trueOverRead', '', { kind: 'exact', value: trueOverRead }, because) });
