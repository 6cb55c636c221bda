/** Minutes that the pump ran on the worker. */
import { minutesBetween } from './calendar.ts';
import { formula } from './formula.ts';

/** Sum of the running intervals on the worker. From instants, so midnight and clock changes do not show. min. */
export const wornTime = formula({
  symbol: 't',
  name: 'wornTime',
  unit: 'min',
  inputs: { d: { name: 'interval', unit: 'min', list: true } },
  expression: 't = Σ d',
  source: {
    title: 'Sum of the running intervals on the worker',
    mark: 'DERIVED',
    note: 'No rule read on pump faults and breaks; running off the worker counts as clean air drawn',
  },
  increasesWith: ['d'],
  compute: ({ d }) => d.reduce((sum, one) => sum + one, 0),
});

/** Length of one interval. A stop before its start is refused. */
export function intervalMin(
  fromAt: string,
  toAt: string,
): { readonly kind: 'min'; readonly min: number } | { readonly kind: 'stopBeforeStart' } {
  const min = minutesBetween(fromAt, toAt);
  return min < 0 ? { kind: 'stopBeforeStart' } : { kind: 'min', min };
}
