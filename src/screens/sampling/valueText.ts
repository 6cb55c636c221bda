/** A corrected value as printed: times at the site, minutes, flows, names instead of ids. */
import { isInstant, wallTimeOf } from '#core/calendar.ts';
import type { Book } from '#records/book.ts';
import { formatMinutes, formatQuantity } from '#words/quantity.ts';
import { en as words } from '#words/story.ts';

const nameOf = (id: string, book: Book): string | undefined =>
  book.people.get(id)?.name ?? book.pumps.get(id)?.serial ?? book.lots.get(id)?.lotNumber;

export function valueText(path: string, value: unknown, book: Book, zone: string): string {
  if (value === null || value === undefined) return '';
  if (path.endsWith('Min') && typeof value === 'number') return formatMinutes(value);
  if (path.endsWith('LPerMin') && typeof value === 'number') return formatQuantity(value, 'L/min');
  if (typeof value !== 'string') return JSON.stringify(value);
  return isInstant(value) ? wallTimeOf(value, zone).time : (nameOf(value, book) ?? value);
}

const ends: readonly (readonly [string, string])[] = [
  ['/happened/at', words.labels.time],
  ['/pumpMin', words.labels.pumpMin],
  ['/reason', words.labels.reason],
  ['/remark', words.labels.remark],
  ['/openedWhere', words.labels.openedWhere],
  ['/lockedIn', words.labels.lockedIn],
  ['/pumpId', words.labels.pump],
  ['/lotId', words.labels.lot],
  ['/workerId', words.labels.worker],
];

/** What a corrected value is called. */
export function labelOf(path: string): string {
  const reading = /^\/readings\/(\d+)\/(low|high)/.exec(path);
  if (reading) return words.labels[reading[2] === 'low' ? 'low' : 'high'](Number(reading[1]) + 1);
  return ends.find(([end]) => end === path)?.[1] ?? words.labels.other;
}
