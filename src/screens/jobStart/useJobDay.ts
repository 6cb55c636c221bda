/** The day on which a job starts, with what its pages need. */
import { type Place, placeOfShift } from '#findings/place.ts';
import type { Book } from '#records/book.ts';
import { useBookMeta, useNow, useShiftBook } from '#store/hooks.ts';

export interface JobDay {
  readonly book: Book;
  readonly place: Place;
  readonly by: string | null;
}

const renewMs = 60_000;

/** undefined while loading, null when this device does not hold the shift. */
export function useJobDay(shiftId: string): JobDay | null | undefined {
  const book = useShiftBook(shiftId);
  const now = useNow(renewMs);
  const meta = useBookMeta();
  if (book === undefined || meta === undefined) return undefined;
  const place = book === null ? null : placeOfShift(shiftId, book, now);
  return book === null || place === null ? null : { book, place, by: meta.holderPersonId };
}
