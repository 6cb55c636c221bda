/** Derived rows into a slice of the book: typed maps by record id. Pure. */
import type {
  Book,
  BookRecord,
  BoxRecord,
  DayPlanRecord,
  DeterminationRecord,
  DutyRecord,
  FlowCheckRecord,
  JobClassificationRecord,
  LaboratoryRecord,
  LotRecord,
  MeterRecord,
  MissingEntries,
  NoticeRecord,
  PersonRecord,
  PlanRecord,
  PumpRecord,
  RelianceRecord,
  ReportedRecord,
  RequestRecord,
  SampleRecord,
  ShiftRecord,
  SiteRecord,
  SpendingRecord,
  WorkdayRecord,
} from '#records/book.ts';
import { missingWithout } from '#records/exchange.ts';
import type { RecordKind } from '#records/recordKinds.ts';
import type { DerivedRow, MetaRow } from './database.ts';

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
  reported: ReportedRecord;
  reliance: RelianceRecord;
  notice: NoticeRecord;
  determination: DeterminationRecord;
  duty: DutyRecord;
  request: RequestRecord;
  plan: PlanRecord;
  dayPlan: DayPlanRecord;
  spending: SpendingRecord;
}

/** The records of one kind among the rows, by id. */
export function ofKind<K extends RecordKind>(rows: readonly DerivedRow[], kind: K): ReadonlyMap<string, RecordOf[K]> {
  const found = new Map<string, RecordOf[K]>();
  for (const row of rows) if (row.kind === kind) found.set(row.record.id, row.record as RecordOf[K]);
  return found;
}

/** Rows beside the book that findings of a sample or a day must know: ask for them in one request, with `bulkGet`. */
export const besideKeys = ['takeIn', 'missing'] as const;
/** What `bulkGet(besideKeys)` answered. */
export type Beside = readonly (MetaRow | undefined)[];

/** A file half taken in, and what is missing without what a person gave up. */
function keptBeside([takeIn, missing]: Beside, book: BookRecord | null): Pick<Book, 'missing' | 'takingIn'> {
  const ranges = (missing?.value as readonly MissingEntries[] | undefined) ?? [];
  return { takingIn: takeIn !== undefined, missing: missingWithout(ranges, book?.accepted ?? []) };
}

/** Rows into a slice of the book. Without `beside` (lists, registers) it says nothing of missing entries. */
export function bookOf(rows: readonly DerivedRow[], beside: Beside | null = null): Book {
  const [book = null] = ofKind(rows, 'book').values();
  return {
    ...(beside === null ? {} : keptBeside(beside, book)),
    book,
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
    reported: ofKind(rows, 'reported'),
    reliances: ofKind(rows, 'reliance'),
    notices: ofKind(rows, 'notice'),
    determinations: ofKind(rows, 'determination'),
    duties: ofKind(rows, 'duty'),
    requests: ofKind(rows, 'request'),
    plans: ofKind(rows, 'plan'),
    dayPlans: ofKind(rows, 'dayPlan'),
    spendings: ofKind(rows, 'spending'),
  };
}
