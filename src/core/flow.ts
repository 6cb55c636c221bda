/** Flow over the sample, from the check before and the check after. A missing reading is never filled in. */
import { formula } from './formula.ts';

const inputs = {
  Qb: { name: 'flowBefore', unit: 'L/min' },
  Qa: { name: 'flowAfter', unit: 'L/min' },
} as const;

/** Average of before and after; holds where the change is within the tolerance, or where someone decided so. L/min. */
export const averageFlow = formula({
  symbol: 'Q',
  name: 'averageFlow',
  unit: 'L/min',
  inputs,
  expression: 'Q = (Qb + Qa) / 2',
  source: {
    title: '40 CFR 50 Appendix B',
    section: '10.1.1-10.2',
    edition: '2015 annual edition',
    mark: 'READ',
    note: 'Written for ambient particulate; also in lead training slides',
  },
  increasesWith: ['Qb', 'Qa'],
  compute: ({ Qb, Qa }) => (Qb + Qa) / 2,
});

/** The lower of before and after: gives the higher concentration, the protective one. L/min. */
export const lowerFlow = formula({
  symbol: 'Qlow',
  name: 'lowerFlow',
  unit: 'L/min',
  inputs,
  expression: 'Qlow = min(Qb, Qa)',
  source: { title: 'Protective figure: less air drawn gives a higher concentration', mark: 'DERIVED' },
  increasesWith: ['Qb', 'Qa'],
  compute: ({ Qb, Qa }) => Math.min(Qb, Qa),
});

/** Change of the flow as a share of the flow before. %. Qb above zero. */
export const flowChange = formula({
  symbol: 'ΔQ',
  name: 'flowChange',
  unit: '%',
  inputs,
  expression: 'ΔQ = |Qa − Qb| / Qb × 100',
  source: {
    title: 'Change over the flow before; published practice disagrees on the denominator',
    mark: 'DERIVED',
    note: 'The tolerance it is held against is a setting with its sources',
  },
  compute: ({ Qb, Qa }) => (Math.abs(Qa - Qb) / Qb) * 100,
});
