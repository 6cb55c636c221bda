/** Plans, and books with them, for tests of the season ahead. The same invented crew as in tests of duties. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { type NextToMeasure, nextToMeasure } from '#findings/season/nextToMeasure.ts';
import type { Book, PlanRecord } from '#records/book.ts';
import { type Job, jobBook, tess } from '../duties/jobBook.ts';
import { base, factId, siteId } from '../sliceRegisters.ts';

export const planId = 'g00000000001';

export const plan = (more: Partial<PlanRecord> = {}): PlanRecord => ({
  ...base('plan', more.planId ?? planId),
  planId,
  plannedFactId: factId(),
  plannedAt: '2026-11-01T14:00:00.000Z',
  missed: [],
  dropped: null,
  jobClassificationId: null,
  setting: 'indoors',
  taskIds: ['handScraping'],
  siteId,
  season: 'winter 2026',
  crewCount: 3,
  choice: 'all',
  reason: null,
  slots: [{ workerId: tess, workOn: '2026-11-10' }],
  methodId: 'niosh-7082',
  reportingLimitUg: 2.5,
  flowLPerMin: 2,
  cassettesCount: 1,
  remark: null,
  ...more,
});

type Missed = PlanRecord['missed'][number];
export const missed = (
  workerId: string,
  workOn: string,
  because: Missed['because'],
  remark: string | null = null,
): Missed => ({
  ...{ workerId, workOn, because, remark },
  factId: factId(),
});

export interface Season {
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly list: readonly NextToMeasure[];
}

export function seasonOf(job: Job, today: string, plans: readonly PlanRecord[] = []): Season {
  const book = jobBook({ ...job, more: { ...job.more, plans: new Map(plans.map((one) => [one.id, one])) } });
  const duties = findDuties(book, today);
  return { book, duties, list: nextToMeasure(book, duties) };
}
