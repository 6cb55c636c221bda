/** Derived rows into a slice of the book: typed maps by record id. Pure. */
import type {
  Book,
  BookRecord,
  BoxRecord,
  FlowCheckRecord,
  JobClassificationRecord,
  LaboratoryRecord,
  LotRecord,
  MeterRecord,
  PersonRecord,
  PumpRecord,
  SampleRecord,
  ShiftRecord,
  SiteRecord,
  WorkdayRecord,
} from '#records/book.ts';
import type { RecordKind } from '#records/common.ts';
import type { DerivedRow } from './database.ts';

interface RecordOf {
  book: BookRecord;
  site: SiteRecord;
  person: PersonRecord;
  jobClassification: JobClassificationRecord;
  pump: PumpRecord;
  meter: MeterRecord;
  lot: LotRecord;
  laboratory: LaboratoryRecord;
  shift: ShiftRecord;
  flowCheck: FlowCheckRecord;
  sample: SampleRecord;
  workday: WorkdayRecord;
  box: BoxRecord;
}

/** The records of one kind among the rows, by id. */
export function ofKind<K extends RecordKind>(rows: readonly DerivedRow[], kind: K): ReadonlyMap<string, RecordOf[K]> {
  const found = new Map<string, RecordOf[K]>();
  for (const row of rows) if (row.kind === kind) found.set(row.record.id, row.record as RecordOf[K]);
  return found;
}

/** Rows into a slice of the book. */
export function bookOf(rows: readonly DerivedRow[]): Book {
  const books = [...ofKind(rows, 'book').values()];
  return {
    book: books[0] ?? null,
    sites: ofKind(rows, 'site'),
    people: ofKind(rows, 'person'),
    jobClassifications: ofKind(rows, 'jobClassification'),
    pumps: ofKind(rows, 'pump'),
    meters: ofKind(rows, 'meter'),
    lots: ofKind(rows, 'lot'),
    laboratories: ofKind(rows, 'laboratory'),
    shifts: ofKind(rows, 'shift'),
    flowChecks: ofKind(rows, 'flowCheck'),
    samples: ofKind(rows, 'sample'),
    workdays: ofKind(rows, 'workday'),
    boxes: ofKind(rows, 'box'),
  };
}
