/** One measurement with all that its notice needs, taken from the book and from what follows from it. */
import type { Course } from '#findings/duties/course/course.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { NoticeOwed } from '#findings/duties/telling/notice.ts';
import { type Telling, tellingsOf } from '#findings/duties/telling/noticesTold.ts';
import type { Book, NoticeRecord } from '#records/book.ts';

export interface NoticeHere {
  readonly book: Book;
  readonly today: string;
  readonly measurement: Measurement;
  readonly owed: NoticeOwed;
  readonly siteName: string | null;
  readonly worker: string | null;
  /** Zone of the site; null for a measurement of no site here. */
  readonly zone: string | null;
  readonly tellings: readonly Telling[];
  /** The newest notice that tells everything as it is now; null: one is to be made. */
  readonly current: NoticeRecord | null;
  readonly next: Course | null;
  /** Counted from 1; the one that would be made now. */
  readonly revision: string;
}

/** null: there is nothing to tell of it. */
export function noticeHere(measurementId: string, duties: DutiesOfBook, book: Book): NoticeHere | null {
  const measurement = duties.measurements.get(measurementId);
  const owed = duties.notices.find((one) => one.measurementId === measurementId);
  if (measurement === undefined || owed === undefined) return null;
  const made = [...book.notices.values()].filter(({ issued }) => issued.measurementId === measurementId);
  const tellings = tellingsOf(measurement, made, book);
  const site = book.sites.get(measurement.siteId ?? '');
  return {
    book,
    today: duties.today,
    measurement,
    owed,
    siteName: site?.name ?? null,
    zone: site?.zone ?? null,
    worker: book.people.get(measurement.workerId ?? '')?.name ?? null,
    tellings,
    current: tellings.findLast(({ whole }) => whole)?.notice ?? null,
    next:
      duties.courses.find(
        ({ workerId, groupKey }) => workerId === measurement.workerId && groupKey === measurement.groupKey,
      ) ?? null,
    revision: String(1 + Math.max(0, ...made.map(({ issued }) => Number(issued.revision)))),
  };
}
