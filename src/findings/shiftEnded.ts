/** When a shift was over for the crew: every cassette of it is back, sealed and locked in. Then the day's file can go. */
import type { Book } from '#records/book.ts';

/** The last moment of it, as an instant; null while something is still open, or where no pump was put on. */
export function shiftEndedAt(book: Book, shiftId: string): string | null {
  const air = [...book.samples.values()].filter(
    ({ shiftId: own, sampleKind, voided }) => own === shiftId && sampleKind === 'air' && voided === null,
  );
  const worn = air.filter(({ putOn }) => putOn !== null);
  if (worn.length === 0 || air.some(({ stopped, sealed }) => stopped === null || sealed === null)) return null;
  const last = worn.flatMap(({ stopped, sealed }) => [stopped?.at ?? '', sealed?.at ?? '']).sort();
  return last.at(-1) ?? null;
}

/** Ended shifts of these whose end lies after the last file that left: their day's file is still here. */
export const unsentShifts = (book: Book, shiftIds: readonly string[], lastSentAt: string | null): readonly string[] =>
  shiftIds.filter((id) => {
    const endedAt = shiftEndedAt(book, id);
    return endedAt !== null && (lastSentAt === null || lastSentAt < endedAt);
  });
