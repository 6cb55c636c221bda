/**
 * Air pressure at a height, by the 1976 standard atmosphere. The height is geopotential; taking an altitude above the sea for it
 * is off by no more than 0.012 kPa to 3000 m. Used only where nobody read a barometer; weather-report pressure reduced to the sea
 * is not station pressure.
 */
import { formula } from './formula.ts';

const seaLevelKPa = 101.325;
const seaLevelK = 288.15;
const lapseKPerM = 0.0065;
/** g0 M / (R* L) with 9.80665 m/s², 28.9644 g/mol, 8.31432 J/(mol K), 6.5 K/km */
const exponent = (9.80665 * 28.9644) / (8.31432 * 6.5);

/** Holds from -5000 m to 11,000 m (the troposphere). kPa. */
export const stationPressure = formula({
  symbol: 'P',
  name: 'stationPressure',
  unit: 'kPa',
  inputs: { H: { name: 'altitude', unit: 'm' } },
  expression: 'P = 101.325 × (1 − 0.0065 × H / 288.15)^5.2559',
  source: {
    title: 'US Standard Atmosphere 1976, troposphere',
    url: 'http://scipp.ucsc.edu/outreach/balloon/atmos/1976%20Standard%20Atmosphere.htm',
    edition: '1976',
    mark: 'READ',
    note: 'The exponent is carried unrounded, g0 M / (R* L)',
  },
  decreasesWith: ['H'],
  compute: ({ H }) => seaLevelKPa * (1 - (lapseKPerM * H) / seaLevelK) ** exponent,
});
