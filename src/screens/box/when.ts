/** A moment at the site, as it is said on the pages of a box. */
import { wallTimeOf } from '#core/calendar.ts';
import { formatDay } from '#words/quantity.ts';

export function whenOf(at: string, zone: string): string {
  const { day, time } = wallTimeOf(at, zone);
  return `${formatDay(day)}, ${time}`;
}
