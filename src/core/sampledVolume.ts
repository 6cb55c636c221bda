/** Volume of air drawn through the filter. */
import { formula } from './formula.ts';

/** Holds for a constant-flow pump; an interrupted one brings the sum of its intervals. Local volume, never reduced to 25 °C. L. */
export const sampledVolume = formula({
  symbol: 'V',
  name: 'sampledVolume',
  unit: 'L',
  inputs: { Q: { name: 'averageFlow', unit: 'L/min' }, t: { name: 'wornTime', unit: 'min' } },
  expression: 'V = Q × t',
  source: { title: '40 CFR 50 Appendix B', section: '10.2', edition: '2015 annual edition', mark: 'READ' },
  increasesWith: ['Q', 't'],
  compute: ({ Q, t }) => Q * t,
});
