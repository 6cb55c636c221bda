/** Units as printed, and the suffix that every stored or passed quantity of that unit ends in. */
export const unitBySuffix = {
  LPerMin: 'L/min',
  L: 'L',
  Min: 'min',
  Ug: 'µg',
  UgPerM3: 'µg/m³',
  KPa: 'kPa',
  C: '°C',
  M: 'm',
  Pct: '%',
  Fraction: '',
  Hours: 'h',
  Days: 'd',
  Months: 'months',
  Years: 'years',
  Count: '',
  Px: 'px',
  MgPerM3: 'mg/m³',
  M2: 'm²',
  Mg: 'mg',
  UgHoursPerM3: 'µg·h/m³',
  Usd: '$',
} as const;

export type UnitSuffix = keyof typeof unitBySuffix;
export type Unit = (typeof unitBySuffix)[UnitSuffix] | 'K' | 'm³' | 'µg·min/m³';
