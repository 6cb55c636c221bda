/** A place of a plan in an address: the worker and the day. Two open days of one worker are alike. */
import type { PlanRecord } from '#records/book.ts';

type Slot = Pick<PlanRecord['slots'][number], 'workerId' | 'workOn'>;

export const placeKey = ({ workerId, workOn }: Slot): string => `${workerId}.${workOn ?? 'open'}`;

/** The first place of that name; -1 when the plan has none. */
export const placeIn = (plan: PlanRecord, key: string): number =>
  plan.slots.findIndex((slot) => placeKey(slot) === key);
