/** What the home screen needs, in few rows however large the book is: the running shift, what is unfinished, and counts. */
import type { Book, SampleRecord, ShiftRecord } from '#records/book.ts';
import type { BookDatabase, DerivedRow } from './database.ts';
import { newestShifts, registerRows } from './reading.ts';
import { bookOf, ofKind } from './slices.ts';

export interface RunSheet {
  /** The newest shift of today, else the newest that still has an unfinished sample; null when there is none. */
  readonly shift: ShiftRecord | null;
  /** Registers, and the shifts shown with their flow checks, samples and workdays. */
  readonly book: Book;
  /** Prepared, running or stopped, and not sealed: oldest first. */
  readonly unfinished: readonly SampleRecord[];
  readonly unfinishedCount: number;
  readonly awaitingCount: number;
}

const unfinishedShown = 40;
const shiftsShown = 3;

async function rowsOfShifts(db: BookDatabase, shiftIds: readonly string[]): Promise<DerivedRow[]> {
  const rows = await Promise.all(shiftIds.map((id) => db.records.where('links').equals(`shift:${id}`).toArray()));
  const workdays = rows
    .flat()
    .flatMap((row) => (row.kind === 'sample' ? ((row.record as SampleRecord).workdayId ?? []) : []));
  const days = await db.records.bulkGet([...new Set(workdays)].map((id) => `workday:${id}`));
  return [...rows.flat(), ...days.filter((row) => row !== undefined)];
}

/** `today`: the calendar day at the site. */
export async function runSheet(db: BookDatabase, today: string): Promise<RunSheet> {
  const [registers, rows, newest, unfinishedCount, awaitingCount] = await Promise.all([
    registerRows(db),
    db.records.where('links').equals('unfinished').limit(unfinishedShown).toArray(),
    newestShifts(db, shiftsShown),
    db.records.where('links').equals('unfinished').count(),
    db.records.where('links').equals('awaiting').count(),
  ]);
  const unfinished = rows.sort((a, b) => (a.sort < b.sort ? -1 : 1)).map((row) => row.record as SampleRecord);
  const todays = newest.filter((shift) => shift.workOn >= today);
  const open = unfinished.map((sample) => sample.shiftId).reverse();
  const shiftIds = [...new Set([...todays.map((shift) => shift.id), ...open])].slice(0, shiftsShown);
  const slice = [...registers, ...rows, ...(await rowsOfShifts(db, shiftIds))];
  const shifts = ofKind(slice, 'shift');
  return {
    shift: shiftIds.map((id) => shifts.get(id)).find((shift) => shift !== undefined) ?? null,
    book: bookOf(slice),
    unfinished,
    unfinishedCount,
    awaitingCount,
  };
}
