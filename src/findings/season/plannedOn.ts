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

/** One for each worker and plan, in the order of plans. Plans given up are left out. */
export function plannedOn(book: Book, day: string, siteId: string): readonly PlannedWearer[] {
  void book;
  void day;
  void siteId;
  return [];
}
