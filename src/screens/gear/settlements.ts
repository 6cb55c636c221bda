/** The decisions about a doubt that whoever decides anew has seen: the one that stands, and those that it stands against. */
import type { GearDoubt } from '#records/book.ts';
import type { GearRecord } from './gearHere.ts';

export function settlementsOf({ conflicts }: Pick<GearRecord, 'conflicts'>, doubt: GearDoubt): string[] {
  const differing = conflicts
    .filter(({ path }) => path.includes(doubt.doubtId))
    .flatMap(({ candidates }) => candidates.map(({ correctionId }) => correctionId));
  const standing = doubt.settled === null ? [] : [doubt.settled.factId];
  return [...new Set([...standing, ...differing])];
}
