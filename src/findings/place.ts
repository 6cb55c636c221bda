/** Where and when a shift is: its site, the zone of its clock, the day there now. */
import { dayOf } from '#core/calendar.ts';
import type { Book, ShiftRecord, SiteRecord } from '#records/book.ts';

export interface Place {
  readonly shift: ShiftRecord;
  readonly site: SiteRecord;
  /** IANA zone of the site. */
  readonly zone: string;
  readonly now: string;
  /** The calendar day at the site. */
  readonly today: string;
}

/** null when the shift or its site is not in the slice. */
export function placeOfShift(shiftId: string, book: Book, now: string): Place | null {
  const shift = book.shifts.get(shiftId);
  const site = shift === undefined ? undefined : book.sites.get(shift.siteId);
  if (shift === undefined || site === undefined) return null;
  return { shift, site, zone: site.zone, now, today: dayOf(now, site.zone) };
}
