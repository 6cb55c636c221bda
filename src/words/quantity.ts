/**
 * How numbers with units, days and times are printed. Rounding happens here and nowhere before. A printed number never contradicts its
 * verdict: given the limits it is held against, it gets as many digits as it takes to stand on the right side of each.
 */
import { daysBetween, weekdayOf } from '#core/calendar.ts';
import type { Estimate } from '#core/estimate.ts';
import { displayRounded, type RoundingDirection } from '#core/rounding.ts';
import type { Unit } from '#core/units.ts';
import type { Language } from './parts.ts';

export interface FormatOptions {
  readonly language?: Language;
  /** Limits that the value is held against somewhere on the same page. */
  readonly against?: readonly number[];
  /** 'working' shows what a hand calculation needs to be repeated. */
  readonly digits?: 'print' | 'working';
}

/** Decimals in print, and how many significant digits small numbers keep. */
const printByUnit: Readonly<Record<string, { readonly decimals: number; readonly significant: number }>> = {
  'L/min': { decimals: 2, significant: 3 },
  L: { decimals: 1, significant: 3 },
  min: { decimals: 0, significant: 1 },
  µg: { decimals: 1, significant: 3 },
  'µg/m³': { decimals: 1, significant: 3 },
  'mg/m³': { decimals: 3, significant: 3 },
  kPa: { decimals: 1, significant: 1 },
  '°C': { decimals: 1, significant: 1 },
  '%': { decimals: 1, significant: 2 },
  h: { decimals: 2, significant: 1 },
  m: { decimals: 0, significant: 1 },
};

/** Significant digits at which the unit's decimals are kept and small numbers still say something. */
function digitsFor(value: number, unit: Unit, options: FormatOptions): number {
  if (options.digits === 'working') return 7;
  const print = printByUnit[unit] ?? { decimals: 3, significant: 3 };
  const whole = value === 0 ? 1 : Math.floor(Math.log10(Math.abs(value))) + 1;
  return Math.max(whole + print.decimals, Math.min(print.significant, whole + print.decimals + 4), 1);
}

/** Digits of 10 000 and more in groups of three, set apart by a narrow space that does not break. No comma: a comma may be a decimal mark. */
const grouped = (text: string): string => {
  const [whole = '', part] = text.split('.');
  const spaced = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  return part === undefined ? spaced : `${spaced}.${part}`;
};

/** The number alone, without its unit. Throws (a bug) on what is no finite number. */
export function formatNumber(
  value: number,
  unit: Unit,
  options: FormatOptions = {},
  direction: RoundingDirection = 'nearest',
): string {
  const text = displayRounded(value, options.against ?? [], digitsFor(value, unit, options), direction);
  const trimmed = options.digits === 'working' && text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed.startsWith('-') ? `\u2212${grouped(trimmed.slice(1))}` : grouped(trimmed);
}

/** Number and unit, held together by a space that does not break. */
export function formatQuantity(value: number, unit: Unit, options: FormatOptions = {}): string {
  return withUnit(formatNumber(value, unit, options), unit);
}

const withUnit = (text: string, unit: Unit): string =>
  unit === '' ? text : unit === '%' ? `${text} %` : `${text}\u00a0${unit}`;

/** As it stands in a working: enough digits to repeat the sum by hand, none of them padding. */
export const formatInWorking = (value: number, unit: Unit): string =>
  formatQuantity(value, unit, { digits: 'working' });

const boundWords = {
  en: {
    lessThan: (a: string) => `less than ${a}`,
    atLeast: (a: string) => `at least ${a}`,
    between: (a: string, b: string) => `between ${a} and ${b}`,
  },
  es: {
    lessThan: (a: string) => `menos de ${a}`,
    atLeast: (a: string) => `por lo menos ${a}`,
    between: (a: string, b: string) => `entre ${a} y ${b}`,
  },
};

/** The words and number apart from the unit, for large type: 'at least 31.2'. Bounds are rounded outwards, so print never claims more. */
export function formatEstimateNumber(estimate: Estimate, unit: Unit, options: FormatOptions = {}): string {
  const words = boundWords[options.language ?? 'en'];
  if (estimate.kind === 'exact') return formatNumber(estimate.value, unit, options);
  const low = formatNumber(estimate.lower, unit, options, 'down');
  if (estimate.kind === 'atLeast') return words.atLeast(low);
  const high = formatNumber(estimate.upper, unit, options, 'up');
  if (estimate.lower === estimate.upper) return formatNumber(estimate.upper, unit, options);
  return estimate.lower === 0 ? words.lessThan(high) : words.between(low, high);
}

/** 'less than 5.00 µg', 'at least 31.2 µg/m³', '31.2 µg/m³'. */
export const formatEstimate = (estimate: Estimate, unit: Unit, options: FormatOptions = {}): string =>
  withUnit(formatEstimateNumber(estimate, unit, options), unit);

/** Minutes as they are said: '6 h 42 min', '42 min'. */
export function formatMinutes(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 60) return `${whole}\u00a0min`;
  const rest = whole % 60;
  const hours = `${(whole - rest) / 60}\u00a0h`;
  return rest === 0 ? hours : `${hours} ${rest}\u00a0min`;
}

const monthNames = {
  en: 'January February March April May June July August September October November December'.split(' '),
  es: 'enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre'.split(' '),
};
const weekdayNames = {
  en: 'Sunday Monday Tuesday Wednesday Thursday Friday Saturday'.split(' '),
  es: 'domingo lunes martes miércoles jueves viernes sábado'.split(' '),
};

export type DayStyle = 'iso' | 'long' | 'weekday' | 'short';

/** An ISO day in words: '25 November 2026'; 'weekday' puts the weekday first, 'short' leaves the year out. */
export function formatDay(day: string, language: Language = 'en', style: DayStyle = 'long'): string {
  if (style === 'iso') return day;
  const month = monthNames[language][Number(day.slice(5, 7)) - 1] ?? '';
  const dayOfMonth = Number(day.slice(8, 10));
  const year = day.slice(0, 4);
  const weekday = weekdayNames[language][weekdayOf(day)] ?? '';
  if (language === 'es') {
    const text = `${dayOfMonth} de ${month}`;
    return style === 'short' ? text : `${style === 'weekday' ? `${weekday} ` : ''}${text} de ${year}`;
  }
  const text = `${dayOfMonth} ${month}`;
  return style === 'short' ? text : `${style === 'weekday' ? `${weekday} ` : ''}${text} ${year}`;
}

/** 'today', 'yesterday', '3 days ago', 'in 12 days' and further off the day itself. */
export function formatDayFrom(today: string, day: string, language: Language = 'en'): string {
  const days = daysBetween(today, day);
  const near = { en: ['yesterday', 'today', 'tomorrow'], es: ['ayer', 'hoy', 'mañana'] }[language][days + 1];
  if (near !== undefined) return near;
  if (Math.abs(days) > 30) return formatDay(day, language);
  if (language === 'es') return days < 0 ? `hace ${-days} días` : `en ${days} días`;
  return days < 0 ? `${-days} days ago` : `in ${days} days`;
}

/** '07:12' on a 24-hour clock, with the half of the day in words: '07:12 in the morning'. */
export function formatClock(time: string, language: Language = 'en'): string {
  const hour = Number(time.slice(0, 2));
  const half = hour < 5 ? 0 : hour < 12 ? 1 : hour < 18 ? 2 : 3;
  const halves = {
    en: ['at night', 'in the morning', 'in the afternoon', 'in the evening'],
    es: ['de la madrugada', 'de la mañana', 'de la tarde', 'de la noche'],
  };
  return `${time} ${halves[language][half]}`;
}

/** The name of a task inside a sentence: its first letter small, initials such as HEPA as they are. */
export const inSentence = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** A list in a sentence: 'a, b and c'. */
export function formatList(items: readonly string[], language: Language = 'en'): string {
  const and = language === 'es' ? 'y' : 'and';
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${and} ${items.at(-1)}`;
}

/** 'averageFlow' as words: 'average flow'. Names that are initials keep their capitals: 'TWA8', 'PEL'. */
export const nameInWords = (name: string): string =>
  name
    .replace(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
    .replace(/\b(twa8?|pel|sae)\b/gi, (initials) => initials.toUpperCase());
