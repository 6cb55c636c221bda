/** One site's day with all that its pages need. */
import { type Place, placeOfShift } from '#findings/place.ts';
import type { Book } from '#records/book.ts';
import { useBookMeta, useNow, useShiftBook } from '#store/hooks.ts';

export interface ShiftDay {
  readonly book: Book;
  readonly place: Place;
  readonly by: string | null;
}

const renewMs = 30_000;

/** undefined while loading, null when this device does not hold the shift. */
export function useShift(shiftId: string): ShiftDay | null | undefined {
  const book = useShiftBook(shiftId);
  const now = useNow(renewMs);
  const meta = useBookMeta();
  if (book === undefined || meta === undefined) return undefined;
  const place = book === null ? null : placeOfShift(shiftId, book, now);
  return book === null || place === null ? null : { book, place, by: meta.holderPersonId };
}
