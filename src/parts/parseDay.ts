/** Reads a calendar day as people type it. `today` is handed in; nothing here reads the clock. */
import { addDays, isDay } from '#core/calendar.ts';
import type { DateErrorKey } from '#words/parts.ts';

export type ParsedDay =
  | { readonly kind: 'value'; readonly value: string }
  | { readonly kind: 'empty' }
  | { readonly kind: 'error'; readonly key: DateErrorKey };

const monthByStem: Readonly<Record<string, number>> = {
  jan: 1,
  ene: 1,
  feb: 2,
  mar: 3,
  apr: 4,
  abr: 4,
  may: 5,
  jun: 6,
  jul: 7,
  aug: 8,
  ago: 8,
  sep: 9,
  oct: 10,
  nov: 11,
  dec: 12,
  dic: 12,
};

const wordsForDay: Readonly<Record<string, number>> = {
  today: 0,
  hoy: 0,
  yesterday: -1,
  ayer: -1,
  tomorrow: 1,
  mañana: 1,
};

const error = (key: DateErrorKey): ParsedDay => ({ kind: 'error', key });

function dayOf(year: number, month: number, dayOfMonth: number): ParsedDay {
  const iso = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
  return isDay(iso) && year >= 1900 && year <= 2199 ? { kind: 'value', value: iso } : error('noSuchDay');
}

const fullYear = (year: string): number => (year.length === 2 ? 2000 + Number(year) : Number(year));

function numericDay(text: string): ParsedDay | null {
  const iso = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})$/.exec(text);
  if (iso) return dayOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const us = /^(\d{1,2})[-./](\d{1,2})[-./](\d{2}|\d{4})$/.exec(text);
  if (us)
    return Number(us[1]) > 12 && Number(us[2]) <= 12
      ? error('dayFirst')
      : dayOf(fullYear(us[3] ?? ''), Number(us[1]), Number(us[2]));
  return /^\d{1,2}[-./]\d{1,2}$/.test(text) ? error('noYear') : null;
}

function namedDay(text: string): ParsedDay | null {
  const dayFirst = /^(\d{1,2})(?:st|nd|rd|th)? (?:de )?([a-zñ]{3,})\.? ?(?:de )?(\d{4})?$/.exec(text);
  const monthFirst = /^([a-zñ]{3,})\.? (\d{1,2})(?:st|nd|rd|th)?(?: (\d{4}))?$/.exec(text);
  const name = dayFirst?.[2] ?? monthFirst?.[1];
  if (name === undefined) return null;
  const month = monthByStem[name.slice(0, 3)];
  if (month === undefined) return null;
  const year = dayFirst?.[3] ?? monthFirst?.[3];
  if (year === undefined) return error('noYear');
  return dayOf(Number(year), month, Number(dayFirst?.[1] ?? monthFirst?.[2]));
}

/** '2026-11-25', '11/25/2026', '25 Nov 2026', 'today', 'yesterday' (also in Spanish) to an ISO day, or the reason why not. */
export function parseDay(text: string, today: string, options: { readonly past?: boolean } = {}): ParsedDay {
  const typed = text
    .normalize('NFKC')
    .trim()
    .toLowerCase()
    .replace(/,/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/[.;]$/, '');
  if (typed === '') return { kind: 'empty' };
  const shift = wordsForDay[typed];
  const parsed =
    shift === undefined
      ? (numericDay(typed.replace(/\s*([-./])\s*/g, '$1')) ?? namedDay(typed) ?? error('notADate'))
      : ({ kind: 'value', value: addDays(today, shift) } as const);
  return parsed.kind === 'value' && options.past && parsed.value > today ? error('future') : parsed;
}
