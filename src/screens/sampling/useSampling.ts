/** One sample with all that its pages need: the book around it, where and when it is, and whose hands the phone is in. */
import { type Place, placeOfShift } from '#findings/place.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { useBookMeta, useNow, useSampleBook } from '#store/hooks.ts';

export interface Sampling {
  readonly book: Book;
  readonly sample: SampleRecord;
  readonly place: Place;
  readonly worker: string;
  readonly pump: string;
  /** Person id of whoever holds the device. */
  readonly by: string | null;
  readonly holderName: string | null;
}

const renewMs = 15_000;

/** undefined while loading, null when this device does not hold the sample. */
export function useSampling(sampleId: string): Sampling | null | undefined {
  const book = useSampleBook(sampleId);
  const now = useNow(renewMs);
  const meta = useBookMeta();
  if (book === undefined || meta === undefined) return undefined;
  const sample = book?.samples.get(sampleId);
  const place = book && sample ? placeOfShift(sample.shiftId, book, now) : null;
  if (!book || !sample || !place) return null;
  return {
    book,
    sample,
    place,
    worker: book.people.get(sample.workerId ?? '')?.name ?? '',
    pump: book.pumps.get(sample.pumpId ?? '')?.serial ?? '',
    by: meta.holderPersonId,
    holderName: meta.holderName,
  };
}
