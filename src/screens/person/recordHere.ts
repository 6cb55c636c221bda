/** One worker's day with all that its exposure record needs. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import type { Book, WorkdayRecord } from '#records/book.ts';
import { respirators } from '#reference/respirators.ts';
import { deviceZone } from '#store/device.ts';
import { noneWorn, wornText } from '#words/worn.ts';

export interface RecordHere {
  /** The slice that the finding is made from. */
  readonly slice: Book;
  /** The whole book: names of everyone it stands for. */
  readonly book: Book;
  readonly finding: WorkdayFinding;
  readonly workerId: string;
  readonly worker: string;
  readonly siteName: string;
  readonly zone: string;
  readonly standsForIds: readonly string[];
  /** What was worn, in words; null where nobody noted it. */
  readonly respirator: string | null;
  readonly issued: NonNullable<WorkdayRecord['recordsIssued']>;
  readonly revision: string;
}

function wornOn(day: WorkdayRecord | undefined): string | null {
  const id = (day?.worked ?? []).map(({ respirator }) => respirator).find((worn) => worn !== null);
  if (id === 'none') return noneWorn.en;
  const found = respirators().find((one) => one.id === id);
  return found === undefined ? null : wornText(found);
}

/** null: the day names no worker of this book. */
export function recordHere(workdayId: string, slice: Book, duties: DutiesOfBook, book: Book): RecordHere | null {
  const workerId = workdayId.slice(0, workdayId.indexOf('.'));
  const person = book.people.get(workerId);
  if (person === undefined) return null;
  const day = slice.workdays.get(workdayId);
  const finding = findWorkday(workdayId, slice);
  const shift = [...slice.samples.values()].find((sample) => sample.workdayId === workdayId)?.shiftId ?? '';
  const site = slice.sites.get(slice.shifts.get(shift)?.siteId ?? '');
  const owed = duties.notices.find(({ measurementId }) => measurementId === workdayId);
  const issued = day?.recordsIssued ?? [];
  return {
    slice,
    book,
    finding,
    workerId,
    worker: person.name,
    siteName: site?.name ?? '',
    zone: site?.zone ?? deviceZone(),
    standsForIds: owed?.affectedIds ?? [workerId],
    respirator: wornOn(day),
    issued,
    revision: String(1 + Math.max(0, ...issued.map(({ revision }) => Number(revision)))),
  };
}
