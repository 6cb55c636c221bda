/** Were two decisions about this doubt made without knowledge of each other, and differ? The more careful one stands meanwhile. */
import type { GearDoubt } from '#records/book.ts';
import type { GearRecord } from './gearHere.ts';

export const isDisputed = ({ conflicts }: Pick<GearRecord, 'conflicts'>, { doubtId }: GearDoubt): boolean =>
  conflicts.some(({ path }) => path === `/doubts/${doubtId}`);
