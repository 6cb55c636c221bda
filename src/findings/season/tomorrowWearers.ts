/** Wearers of a day as the plans name them: slots of that day, at that site or of no single site, still to do. */
import type { Book, PlanRecord } from '#records/book.ts';

export interface Wearer {
  readonly workerId: string;
  readonly planId: string | null;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly pumpId: string | null;
  readonly lotId: string | null;
  readonly from: 'prepared' | 'plan';
}

const isOf = (plan: PlanRecord, siteId: string): boolean =>
  plan.dropped === null && (plan.siteId === null || plan.siteId === siteId);

/** Those whom the plans name and who are not yet among `said`. */
export function plannedWearers(book: Book, siteId: string, day: string, said: readonly Wearer[]): Wearer[] {
  const isSaid = (planId: string, workerId: string) =>
    said.some((one) => one.workerId === workerId && (one.planId === planId || one.planId === null));
  return [...book.plans.values()]
    .filter((plan) => isOf(plan, siteId))
    .flatMap((plan) =>
      plan.slots
        .filter(({ workerId, workOn }) => workOn === day && !isSaid(plan.id, workerId))
        .filter(({ workerId }) => !plan.missed.some((one) => one.workerId === workerId && one.workOn === day))
        .map(({ workerId }) => ({
          workerId,
          planId: plan.id,
          taskIds: plan.taskIds,
          jobClassificationId: plan.jobClassificationId,
          pumpId: null,
          lotId: null,
          from: 'plan' as const,
        })),
    );
}
