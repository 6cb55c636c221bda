/** Doubts of the whole book that bear on one day: entries of another device that are not here, and a file that is only half taken in. */
import type { Book } from '#records/book.ts';
import { type Reason, reason } from './reason.ts';

/**
 * Of a sample or a worker's day on `workOn`. What is missing was written down before the first entry after it, so it bears on nothing
 * that began later.
 */
export function bookDoubts(workOn: string, { missing = [], takingIn = false }: Book): readonly Reason[] {
  const found: Reason[] = takingIn ? [reason('takingIn')] : [];
  const bearing = missing.filter(({ untilOn }) => workOn <= untilOn);
  const entriesCount = bearing.reduce((sum, { fromCount, toCount }) => sum + toCount - fromCount + 1, 0);
  if (entriesCount > 0) found.push(reason('entriesMissing', [], { entriesCount }));
  return found;
}

/** Said once of a day, and not again of each sample of it. */
export const isOfBook = ({ key }: Reason): boolean => key === 'takingIn' || key === 'entriesMissing';
