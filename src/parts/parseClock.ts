/** Reads a time of day as people type it, to '07:12'. A bare hour is asked about, never completed. */
import type { TimeErrorKey } from '#words/parts.ts';

export type ParsedClock =
  | { readonly kind: 'value'; readonly value: string }
  | { readonly kind: 'empty' }
  | { readonly kind: 'error'; readonly key: TimeErrorKey };

const error = (key: TimeErrorKey): ParsedClock => ({ kind: 'error', key });
const two = (n: number): string => String(n).padStart(2, '0');

/** '07:12', '7.12', '712', '0712', '7:12 am', '7 pm' to a 24-hour time, or the reason why not. */
export function parseClock(text: string): ParsedClock {
  const typed = text
    .normalize('NFKC')
    .trim()
    .toLowerCase()
    .replace(/\s+/g, '')
    .replace(/([ap])\.?m\.?$/, '$1m');
  if (typed === '') return { kind: 'empty' };
  const match = /^(\d{1,2})(?:[:.h,]?(\d{2}))?(am|pm|h)?$/.exec(typed);
  if (!match) return error('notATime');
  const [, hourText, minuteText, half] = match;
  if (minuteText === undefined && (half === undefined || half === 'h')) return error('incomplete');
  const minute = Number(minuteText ?? 0);
  const hour = hourOf(Number(hourText), half);
  return hour === null || hour > 23 || minute > 59
    ? error('noSuchTime')
    : { kind: 'value', value: `${two(hour)}:${two(minute)}` };
}

function hourOf(hour: number, half: string | undefined): number | null {
  if (half !== 'am' && half !== 'pm') return hour;
  if (hour < 1 || hour > 12) return null;
  return (hour % 12) + (half === 'pm' ? 12 : 0);
}
