/** How far like figures lie apart, as a factor. */
import { formula } from './formula.ts';

/** Geometric standard deviation with n − 1, of at least two figures above zero. 1 when all are alike. */
export const geometricSd = formula({
  symbol: 'GSD',
  name: 'geometricSd',
  unit: '',
  inputs: { C: { name: 'concentration', unit: 'µg/m³', list: true } },
  expression: 'GSD = exp(√(Σ (ln C − mean ln C)² / (n − 1)))',
  source: { title: 'Standard deviation of the logarithms, taken back', mark: 'DERIVED' },
  compute: ({ C }) => {
    const logs = C.map(Math.log);
    const mean = logs.reduce((sum, one) => sum + one, 0) / logs.length;
    return Math.exp(Math.sqrt(logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (logs.length - 1)));
  },
});
