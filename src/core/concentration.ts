/** Lead in the air that the worker breathed, over the sample; and the volume that a reporting limit needs. */
import { formula, type Source } from './formula.ts';

const massOverVolume: Source = {
  title: '29 CFR 1910.1027 Appendix E (OSHA ID-189, the same filter train)',
  section: '3.12.6',
  edition: '2015 annual edition',
  mark: 'READ',
  note: 'µg/L is mg/m³; times 1000 for µg/m³',
};

/** A mass below the reporting limit comes in as bounds and stays bounds. V above zero. µg/m³. */
export const concentration = formula({
  symbol: 'C',
  name: 'concentration',
  unit: 'µg/m³',
  inputs: { m: { name: 'massOfLead', unit: 'µg' }, V: { name: 'sampledVolume', unit: 'L' } },
  expression: 'C = m / V × 1000',
  source: massOverVolume,
  increasesWith: ['m'],
  decreasesWith: ['V'],
  compute: ({ m, V }) => (m * 1000) / V,
});

/**
 * Volume in which a mass m, usually the reporting limit, makes the share s of a limit L: with less air, *below* cannot be shown.
 * s above 0 to 1, said by the caller. L.
 */
export const volumeNeeded = formula({
  symbol: 'Vmin',
  name: 'volumeNeeded',
  unit: 'L',
  inputs: {
    m: { name: 'reportingLimit', unit: 'µg' },
    L: { name: 'limit', unit: 'µg/m³' },
    s: { name: 'shareOfLimit', unit: '' },
  },
  expression: 'Vmin = m / (s × L) × 1000',
  source: massOverVolume,
  increasesWith: ['m'],
  decreasesWith: ['L', 's'],
  compute: ({ m, L, s }) => (m * 1000) / (s * L),
});
