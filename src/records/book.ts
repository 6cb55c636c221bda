/**
 * The records that the facts fold into: what screens list and findings read. Derived, disposable, rebuilt from the journal at will.
 * Every record names the facts it stands on, the corrections in conflict, and why it may be doubtful.
 */
import type { FactBody } from './fact.ts';
import type { RecordBase, Without } from './recordBase.ts';
import type {
  DeterminationRecord,
  DutyRecord,
  Issued,
  NoticeRecord,
  RelianceRecord,
  ReportedRecord,
  RequestRecord,
} from './recordsOfDuties.ts';
import type { FlowCheckRecord, SampleRecord } from './recordsOfSamples.ts';
import type {
  Certificate,
  Charge,
  DayPlanRecord,
  GearBeside,
  PlanRecord,
  Prices,
  SpendingRecord,
} from './recordsOfSeason.ts';

export type { Conflict, Photo, RecordBase, Strike } from './recordBase.ts';
export type {
  DeterminationRecord,
  DutyRecord,
  Issued,
  NoticeRecord,
  RelianceRecord,
  ReportedRecord,
  RequestRecord,
} from './recordsOfDuties.ts';
export type { FlowCheckRecord, Interval, Moment, SampleRecord } from './recordsOfSamples.ts';
export type {
  Certificate,
  Charge,
  DayPlanRecord,
  GearBeside,
  GearDoubt,
  Held,
  Label,
  PlanRecord,
  Prices,
  SpendingRecord,
} from './recordsOfSeason.ts';

export interface BookRecord extends RecordBase, FactBody<'bookOpened.v1'> {
  /** Missing entries that a person said will never come. */
  readonly accepted?: readonly {
    readonly writer: string;
    readonly fromCount: number;
    readonly toCount: number;
    readonly why: string | null;
    readonly factId: string;
  }[];
  /** Limits shown beside the rule, and the firm's own; of two that differ the stricter own ones stand. */
  readonly limits?: (Without<FactBody<'limitsChosen.v1'>, 'bookId'> & { readonly factId: string }) | null;
  /** The firm's own prices, those that hold from the latest day first. */
  readonly prices?: readonly Prices[];
}
export interface SiteRecord extends RecordBase, FactBody<'siteAdded.v1'> {}
export interface PersonRecord extends RecordBase, FactBody<'personAdded.v1'> {
  /** From when to when; absent or null where nobody said. Of two that differ the longer time stands. */
  readonly employed?: { readonly fromOn: string | null; readonly toOn: string | null; readonly factId: string } | null;
}
export interface JobClassificationRecord extends RecordBase, FactBody<'jobClassificationAdded.v1'> {}
export interface PumpRecord extends RecordBase, GearBeside, FactBody<'pumpAdded.v1'> {
  /** Oldest first. */
  readonly charges?: readonly Charge[];
}
export interface MeterRecord extends RecordBase, GearBeside, FactBody<'meterAdded.v1'> {
  /** Newer ones than that of its entry, oldest first. A flow check is held to the one that was in force on its day. */
  readonly certificates?: readonly Certificate[];
}
export interface LotRecord extends RecordBase, GearBeside, FactBody<'lotAdded.v1'> {}
export interface LaboratoryRecord extends RecordBase, FactBody<'laboratoryAdded.v1'> {}

export interface ShiftRecord extends RecordBase {
  readonly siteId: string;
  readonly workOn: string;
  readonly openedAt: string;
  readonly conditions: FactBody<'conditionsNoted.v1'> | null;
  /** What was new when the job started; of two that differ a yes stands, then not known. */
  readonly changes?: (Without<FactBody<'changesAsked.v1'>, 'shiftId'> & { readonly factId: string }) | null;
}

export interface WorkdayRecord extends RecordBase {
  readonly workerId: string;
  readonly workOn: string;
  readonly pieces: FactBody<'workHoursStated.v1'>['pieces'] | null;
  readonly otherWork: FactBody<'otherWorkAsked.v1'> | null;
  /** The statements that stand: what a correction of hours or of other work replaces. */
  readonly piecesFactId?: string | null;
  readonly otherWorkFactId?: string | null;
  readonly explained: readonly (FactBody<'minutesExplained.v1'> & { readonly factId: string })[];
  readonly regular: { readonly regular: 'yes' | 'no'; readonly reason: string | null; readonly factId: string } | null;
  /** The roster: what this worker did where on this day, entries that were struck left out. One entry a shift and statement. */
  readonly worked?: readonly (Without<FactBody<'workNoted.v1'>, 'workdayId'> & { readonly factId: string })[];
  /** In writing: whom this day's measurement stands for too. Every statement counts. */
  readonly represents?: readonly { readonly workerIds: readonly string[]; readonly factId: string }[];
  readonly recordsIssued?: readonly (FactBody<'exposureRecordIssued.v1'> & Issued)[];
}

export interface BoxRecord extends RecordBase {
  readonly packed: FactBody<'boxPacked.v1'>;
  /** The fact that corrections of what is asked replace. */
  readonly packedFactId: string;
  readonly packedAt: string;
  readonly issues: readonly (FactBody<'custodySheetIssued.v1'> & {
    readonly factId: string;
    readonly at: string;
    readonly why: string | null;
  })[];
  readonly handedOver: (FactBody<'boxHandedOver.v1'> & { readonly at: string }) | null;
  readonly arrivedAt: string | null;
  /** Differences between sheet and record that a person left as they are. */
  readonly keptDifferences?: readonly (Pick<FactBody<'sheetDifferenceKept.v1'>, 'revision' | 'recordHash'> & {
    readonly why: string | null;
    readonly factId: string;
  })[];
}

/** Entries of one writer that this device does not hold though later ones of that writer are here. */
export interface MissingEntries {
  readonly writer: string;
  readonly fromCount: number;
  readonly toCount: number;
  /** Calendar day (UTC) on which the first entry after them was recorded: what is missing can bear on nothing that began later. */
  readonly untilOn: string;
}

export type AnyRecord =
  | BookRecord
  | SiteRecord
  | PersonRecord
  | JobClassificationRecord
  | PumpRecord
  | MeterRecord
  | LotRecord
  | LaboratoryRecord
  | ShiftRecord
  | FlowCheckRecord
  | SampleRecord
  | WorkdayRecord
  | BoxRecord
  | ReportedRecord
  | RelianceRecord
  | NoticeRecord
  | DeterminationRecord
  | DutyRecord
  | RequestRecord
  | PlanRecord
  | DayPlanRecord
  | SpendingRecord;

/**
 * A slice of the book, enough for findings about it: one day at one site, one worker's day, one box. Maps are by record id.
 * What is not in the slice is not known; findings never reach for more.
 */
export interface Book {
  readonly book: BookRecord | null;
  readonly sites: ReadonlyMap<string, SiteRecord>;
  readonly people: ReadonlyMap<string, PersonRecord>;
  readonly jobClassifications: ReadonlyMap<string, JobClassificationRecord>;
  readonly pumps: ReadonlyMap<string, PumpRecord>;
  readonly meters: ReadonlyMap<string, MeterRecord>;
  readonly lots: ReadonlyMap<string, LotRecord>;
  readonly laboratories: ReadonlyMap<string, LaboratoryRecord>;
  readonly shifts: ReadonlyMap<string, ShiftRecord>;
  readonly flowChecks: ReadonlyMap<string, FlowCheckRecord>;
  readonly samples: ReadonlyMap<string, SampleRecord>;
  readonly workdays: ReadonlyMap<string, WorkdayRecord>;
  readonly boxes: ReadonlyMap<string, BoxRecord>;
  readonly reported: ReadonlyMap<string, ReportedRecord>;
  readonly reliances: ReadonlyMap<string, RelianceRecord>;
  readonly notices: ReadonlyMap<string, NoticeRecord>;
  readonly determinations: ReadonlyMap<string, DeterminationRecord>;
  readonly duties: ReadonlyMap<string, DutyRecord>;
  readonly requests: ReadonlyMap<string, RequestRecord>;
  readonly plans: ReadonlyMap<string, PlanRecord>;
  /** By the id of the shift. */
  readonly dayPlans: ReadonlyMap<string, DayPlanRecord>;
  readonly spendings: ReadonlyMap<string, SpendingRecord>;
  /** Entries of other devices that are known to be missing here and that nobody accepted as lost. */
  readonly missing?: readonly MissingEntries[];
  /** A file is half taken in: nothing may be relaxed until it is whole. */
  readonly takingIn?: boolean;
}
