/** Respirators: the most that one may be worn in, and the least factor that an exposure needs. */
import { formula } from './formula.ts';

/**
 * Maximum use concentration: factor times the limit that holds for the day (over 8 hours the allowable average, when the average
 * over the shift is held against it). It does not hold above what is immediately dangerous. µg/m³.
 */
export const maximumUseConcentration = formula({
  symbol: 'MUC',
  name: 'maximumUseConcentration',
  unit: 'µg/m³',
  inputs: { F: { name: 'assignedProtectionFactor', unit: '' }, A: { name: 'allowableAverage', unit: 'µg/m³' } },
  expression: 'MUC = F × A',
  source: {
    title: '29 CFR 1910.134 Respiratory protection',
    section: '(b)',
    url: 'https://github.com/18F/allregs/blob/0f10affa243f1d129291dfe5109f791d42ec4920/html/sections/29CFR1910.134.html',
    edition: '2015 annual edition',
    mark: 'READ',
  },
  increasesWith: ['F', 'A'],
  compute: ({ F, A }) => F * A,
});

/** Least factor that an exposure needs: MUC = F × A solved for the factor. Not one of the table yet; it is looked up there. */
export const neededFactor = formula({
  symbol: 'F',
  name: 'neededFactor',
  unit: '',
  inputs: {
    C: { name: 'concentrationOutsideTheMask', unit: 'µg/m³' },
    A: { name: 'allowableAverage', unit: 'µg/m³' },
  },
  expression: 'F = C / A',
  source: { title: 'Maximum use concentration of 29 CFR 1910.134(b), solved for the factor', mark: 'DERIVED' },
  increasesWith: ['C'],
  decreasesWith: ['A'],
  compute: ({ C, A }) => C / A,
});
