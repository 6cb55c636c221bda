/** Everything that rests on gear that was found bad, in the time of the doubt. */
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { GearKind } from './doubtsOf.ts';
import type { GearDoubtOf, GearPaper, Touched } from './touched.ts';

/** null where the book has no such doubt. */
export function touchedBy(
  _gear: GearKind,
  _gearId: string,
  _doubtId: string,
  _book: Book,
  _duties: DutiesOfBook,
): Touched | null {
  return null;
}

/** Every doubt that a paper, a measurement or a sample rests on, settled or not; `isDoubted(doubt)` tells which prove nothing low. */
export function gearDoubtsOfPaper(_paper: GearPaper, _book: Book): readonly GearDoubtOf[] {
  return [];
}
