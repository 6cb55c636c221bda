/**
 * Correction of a rotameter read away from its calibration conditions, by the square root of the air's density. Volumes stay local.
 * A soap-film or dry-piston meter at the site gives local volume and is not corrected. The rotameter must stand at air pressure
 * (before the filter), not at the pump's suction.
 */
import { formula } from './formula.ts';

/** Thermodynamic temperature. Above -273.15 °C. */
export const kelvin = formula({
  symbol: 'T',
  name: 'kelvin',
  unit: 'K',
  inputs: { θ: { name: 'temperature', unit: '°C' } },
  expression: 'T = θ + 273.15',
  source: { title: 'Definition of the degree Celsius', mark: 'DERIVED' },
  increasesWith: ['θ'],
  compute: ({ θ }) => θ + 273.15,
});

/**
 * True local flow from what a rotameter reads. Thinner air (lower pressure, warmer) flows faster than the float shows. L/min.
 * Pressures are station pressures, not reduced to sea level.
 */
export const rotameterFlow = formula({
  symbol: 'Q',
  name: 'rotameterFlow',
  unit: 'L/min',
  inputs: {
    Qr: { name: 'flowRead', unit: 'L/min' },
    Pcal: { name: 'calibrationPressure', unit: 'kPa' },
    Tcal: { name: 'calibrationTemperature', unit: 'K' },
    Pact: { name: 'sitePressure', unit: 'kPa' },
    Tact: { name: 'siteTemperature', unit: 'K' },
  },
  expression: 'Q = Qr × √(Pcal × Tact / (Pact × Tcal))',
  source: {
    title: '29 CFR 1910.1001 Appendix B (asbestos), Sampling Pump Flow Rate Corrections; NIOSH Manual, Chapter D',
    section: 'page 28, step 7',
    url: 'https://en.m.wikisource.org/wiki/Page:NIOSH_Manual_of_Analytical_Methods_-_Chapter_D.pdf/12',
    edition: '2015 annual edition; 4th edition',
    mark: 'READ',
    note: 'Direction checked by derivation: at one height of the float the flow goes as one over the root of the density',
  },
  increasesWith: ['Qr', 'Pcal', 'Tact'],
  decreasesWith: ['Pact', 'Tcal'],
  compute: ({ Qr, Pcal, Tcal, Pact, Tact }) => Qr * Math.sqrt((Pcal * Tact) / (Pact * Tcal)),
});
