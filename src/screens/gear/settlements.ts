/** The decisions about a doubt that whoever decides anew has seen: the one that stands, those that it stands against, and what was before. */
import type { GearDoubt } from '#records/book.ts';
import type { GearRecord } from './gearHere.ts';

const dispute = ({ conflicts }: Pick<GearRecord, 'conflicts'>, { doubtId }: GearDoubt) =>
  conflicts.filter(({ path }) => path === `/doubts/${doubtId}`);

/** Were two decisions made without knowledge of each other, and differ? */
export const isDisputed = (record: Pick<GearRecord, 'conflicts'>, doubt: GearDoubt): boolean =>
  dispute(record, doubt).length > 0;

export function settlementsOf(record: Pick<GearRecord, 'conflicts'>, doubt: GearDoubt): string[] {
  const differing = dispute(record, doubt).flatMap(({ candidates, besides = [] }) => [
    ...candidates.map(({ correctionId }) => correctionId),
    ...besides,
  ]);
  const standing = doubt.settled === null ? [] : [doubt.settled.factId];
  return [...new Set([...standing, ...differing])];
}
