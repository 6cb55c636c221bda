/**
 * Reads a quantity as people type it: comma or point, spaces, the unit pasted along. Nothing is guessed: a text that can be read in
 * two ways, or that names another unit, is an error with a reason key, never a number (and an empty text is never 0).
 */
import type { Unit } from '#core/units.ts';
import type { QuantityErrorKey } from '#words/parts.ts';

export type ParsedQuantity =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'empty' }
  | {
      readonly kind: 'error';
      readonly key: QuantityErrorKey;
      /** The unit that was typed, when it is the wrong one. */
      readonly found?: string;
      readonly least?: number;
      readonly most?: number;
    };

export interface QuantityRange {
  readonly least?: number;
  readonly most?: number;
  /** Set where a number below zero has a meaning (temperature, metres of altitude). */
  readonly negative?: boolean;
}

/** How each unit may be typed, lower case and without spaces. A spelling that belongs to another unit names that unit. */
const spellingsByUnit: Readonly<Record<string, readonly string[]>> = {
  'L/min': [
    'l/min',
    'lpm',
    'l/m',
    'l/min.',
    'lmin-1',
    'liter/min',
    'liters/min',
    'litersperminute',
    'litresperminute',
    'literperminute',
  ],
  'mL/min': ['ml/min', 'cc/min', 'ccm', 'sccm', 'mlpm'],
  L: ['l', 'liter', 'liters', 'litre', 'litres', 'litro', 'litros'],
  mL: ['ml', 'cc'],
  min: ['min', 'min.', 'mins', 'minute', 'minutes', 'minuto', 'minutos'],
  h: ['h', 'hr', 'hrs', 'hour', 'hours', 'hora', 'horas'],
  s: ['s', 'sec', 'secs', 'second', 'seconds'],
  µg: [
    'µg',
    'ug',
    'mcg',
    'microgram',
    'micrograms',
    'microgramo',
    'microgramos',
    'ug/sample',
    'µg/sample',
    'ug/filter',
    'µg/filter',
  ],
  mg: ['mg', 'milligram', 'milligrams', 'miligramos', 'mg/sample', 'mg/filter'],
  ng: ['ng', 'nanogram', 'nanograms'],
  g: ['g', 'gram', 'grams'],
  'µg/m³': ['µg/m3', 'ug/m3', 'mcg/m3', 'ug/cum', 'µg/cum'],
  'mg/m³': ['mg/m3', 'mg/cum'],
  'm³': ['m3', 'cum', 'cubicmeters', 'cubicmetres'],
  'm²': ['m2', 'sqm'],
  kPa: ['kpa'],
  hPa: ['hpa', 'mbar', 'mb'],
  mmHg: ['mmhg', 'torr'],
  inHg: ['inhg', '"hg', 'in.hg'],
  '°C': ['°c', 'c', 'degc', 'celsius', 'ºc'],
  '°F': ['°f', 'f', 'degf', 'fahrenheit', 'ºf'],
  K: ['k', 'kelvin'],
  m: ['m', 'meter', 'meters', 'metre', 'metres', 'metro', 'metros'],
  ft: ['ft', 'ft.', 'feet', 'foot', "'"],
  ppm: ['ppm'],
  '%': ['%', 'percent', 'pct', 'porciento'],
  d: ['d', 'day', 'days', 'dia', 'dias', 'días'],
  months: ['month', 'months', 'mes', 'meses'],
  years: ['year', 'years', 'yr', 'yrs', 'año', 'años'],
};

/** The unit a typed ending names, or null when it is no unit we know. */
function unitTyped(ending: string): string | null {
  const plain = ending.replace(/\s+/g, '').toLowerCase();
  for (const [unit, spellings] of Object.entries(spellingsByUnit)) if (spellings.includes(plain)) return unit;
  return null;
}

const error = (key: QuantityErrorKey): ParsedQuantity => ({ kind: 'error', key });

/** Reads the digits alone: '2,5' is 2.5; '1,234' can be two things and is asked about; '1 234' is two numbers. */
function parseDigits(digits: string): ParsedQuantity {
  if (/\d\s+\d/.test(digits)) return error('twoNumbers');
  const tight = digits.replace(/\s+/g, '').replace(/[.,]$/, '');
  if ((tight.match(/[.,]/g) ?? []).length > 1) return error('twoMarks');
  if (/^-?[1-9]\d{0,2},\d{3}$/.test(tight)) return error('thousands');
  const normal = tight.replace(',', '.');
  if (!/^-?(\d+\.?\d*|\.\d+)$/.test(normal)) return error('letters');
  return { kind: 'value', value: Number(normal) };
}

/** An ending that is not this unit: the reason. A second number hidden in it is named as such. */
function endingError(ending: string, unit: Unit): ParsedQuantity | null {
  if (ending === '') return null;
  const found = /^[\d-]/.test(ending) ? null : unitTyped(ending);
  if (found === unit) return null;
  if (found !== null) return { kind: 'error', key: 'wrongUnit', found };
  return error(/\d/.test(ending.replace(/m[23]/i, '')) ? 'twoNumbers' : 'letters');
}

/** Text as typed in, a value in `unit`, nothing, or a reason out. Never throws. */
export function parseQuantity(text: string, unit: Unit, range: QuantityRange = {}): ParsedQuantity {
  const typed = text
    .normalize('NFKC')
    .replace(/μ/g, 'µ')
    .replace(/[\u2212\u2013]/g, '-')
    .trim();
  if (typed === '') return { kind: 'empty' };
  if (/^(<|≤|less than|menos de)/i.test(typed)) return error('lessThan');
  const match = /^(-?[\d.,][\d.,\s]*)(.*)$/.exec(typed.replace(/^\+/, ''));
  if (!match) return error('letters');
  const [, digits = '', ending = ''] = match;
  const parsed = endingError(ending.trim(), unit) ?? parseDigits(digits.trim());
  return parsed.kind === 'value' ? within(parsed, range) : parsed;
}

function within(parsed: { readonly kind: 'value'; readonly value: number }, range: QuantityRange): ParsedQuantity {
  if (!Number.isFinite(parsed.value)) return error('letters');
  if (parsed.value < 0 && !range.negative) return error('negative');
  if (range.least !== undefined && parsed.value < range.least)
    return { kind: 'error', key: 'tooLow', least: range.least };
  if (range.most !== undefined && parsed.value > range.most) return { kind: 'error', key: 'tooHigh', most: range.most };
  return { kind: 'value', value: parsed.value };
}
