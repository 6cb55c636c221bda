/** Who is planned for a day at a site: what the evening before begins with. */
import type { Book, PlanRecord } from '#records/book.ts';

export interface PlannedWearer
  extends Pick<
    PlanRecord,
    'taskIds' | 'jobClassificationId' | 'methodId' | 'reportingLimitUg' | 'flowLPerMin' | 'cassettesCount'
  > {
  readonly planId: string;
  readonly workerId: string;
  /** The plan names no site: the work may be at another one that day. */
  readonly anySite: boolean;
  /** It was said already that it does not come about. */
  readonly missed: PlanRecord['missed'][number] | null;
}

/** A plan of no site goes where its setting is; a site that is not in the book may be of either. */
function isHere(plan: PlanRecord, siteId: string, book: Book): boolean {
  if (plan.siteId !== null) return plan.siteId === siteId;
  const site = book.sites.get(siteId);
  return !site || site.setting === plan.setting;
}

/** One for each worker and plan, in the order of plans. Plans given up are left out. */
export function plannedOn(book: Book, day: string, siteId: string): readonly PlannedWearer[] {
  return [...book.plans.values()].flatMap((plan) => {
    if (plan.dropped !== null || !isHere(plan, siteId, book)) return [];
    const { taskIds, jobClassificationId, methodId, reportingLimitUg, flowLPerMin, cassettesCount } = plan;
    const workerIds = new Set(plan.slots.filter(({ workOn }) => workOn === day).map(({ workerId }) => workerId));
    return [...workerIds].map((workerId) => ({
      planId: plan.id,
      workerId,
      ...{ taskIds, jobClassificationId, methodId, reportingLimitUg, flowLPerMin, cassettesCount },
      anySite: plan.siteId === null,
      missed: plan.missed.findLast((one) => one.workerId === workerId && one.workOn === day) ?? null,
    }));
  });
}
