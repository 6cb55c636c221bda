/** Wearers of a day as the plans name them: slots of that day, at that site or of no single site, still to do. */
import type { Book } from '#records/book.ts';
import { plannedOn } from './plannedOn.ts';

export interface Wearer {
  readonly workerId: string;
  readonly planId: string | null;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly pumpId: string | null;
  readonly lotId: string | null;
  readonly from: 'prepared' | 'plan';
}

/** Those whom the plans name and who are not yet among `said`. */
export function plannedWearers(book: Book, siteId: string, day: string, said: readonly Wearer[]): Wearer[] {
  const isSaid = (planId: string, workerId: string) =>
    said.some((one) => one.workerId === workerId && (one.planId === planId || one.planId === null));
  return plannedOn(book, day, siteId)
    .filter(({ planId, workerId, missed }) => missed === null && !isSaid(planId, workerId))
    .map(({ planId, workerId, taskIds, jobClassificationId }) => ({
      ...{ workerId, planId, taskIds, jobClassificationId },
      pumpId: null,
      lotId: null,
      from: 'plan' as const,
    }));
}
