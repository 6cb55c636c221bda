/** The day with what its forms and tables need: the record, names, and the zone in which its times are said. */
import { wallTimeOf } from '#core/calendar.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import type { GearDoubtOf } from '#findings/gear/touched.ts';
import type { WorkdayFinding } from '#findings/workday.ts';
import type { Book, BookRecord, SampleRecord, WorkdayRecord } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';

export interface DayOn {
  readonly workdayId: string;
  readonly workOn: string;
  readonly finding: WorkdayFinding;
  /** null while nothing but samples is known of the day. */
  readonly record: WorkdayRecord | null;
  readonly samples: readonly SampleRecord[];
  readonly worker: string;
  readonly siteName: string;
  readonly zone: string;
  /** Wall time at the site, with the day when it is another one. */
  readonly clock: (at: string) => string;
  /** Gear that it rests on and that was found bad, settled or not. */
  readonly gearDoubts: readonly GearDoubtOf[];
  /** What the book shows beside the rule, and the firm's own limits; null where nothing was chosen. */
  readonly limits: NonNullable<BookRecord['limits']> | null;
}

export function dayOn(workdayId: string, book: Book, finding: WorkdayFinding): DayOn {
  const samples = [...book.samples.values()]
    .filter((sample) => sample.workdayId === workdayId)
    .sort((a, b) => (a.preparedAt < b.preparedAt ? -1 : 1));
  const site = book.sites.get(samples[0]?.siteId ?? '') ?? [...book.sites.values()][0];
  const zone = site?.zone ?? deviceZone();
  return {
    workdayId,
    workOn: finding.workOn,
    finding,
    record: book.workdays.get(workdayId) ?? null,
    samples,
    worker: book.people.get(finding.workerId)?.name ?? '',
    siteName: samples.length === 0 ? '' : (site?.name ?? ''),
    zone,
    clock: (at) => wallTimeOf(at, zone).time,
    gearDoubts: gearDoubtsOfPaper({ kind: 'measurement', id: workdayId }, book),
    limits: book.book?.limits ?? null,
  };
}
