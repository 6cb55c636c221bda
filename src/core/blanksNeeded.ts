/** Field blanks that go with a set of samples. */
import { formula } from './formula.ts';

/** The least number, or a share of the samples rounded up to whole blanks. The numbers come from the blank rule. */
export const blanksNeeded = formula({
  symbol: 'nb',
  name: 'blanksNeeded',
  unit: '',
  inputs: {
    n: { name: 'samples', unit: '' },
    least: { name: 'leastBlanks', unit: '' },
    p: { name: 'blanksShare', unit: '%' },
  },
  expression: 'nb = max(least, ⌈n × p / 100⌉)',
  source: { title: 'Published counts disagree; the larger common ones', mark: 'DERIVED', note: 'See the blank rule' },
  compute: ({ n, least, p }) => Math.max(least, Math.ceil((n * p) / 100)),
});
