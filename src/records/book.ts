/**
 * The records that the facts fold into: what screens list and findings read. Derived, disposable, rebuilt from the journal at will.
 * Every record names the facts it stands on, the corrections in conflict, and why it may be doubtful.
 */
import type { FactBody, Happened } from './fact.ts';
import type { RecordBase } from './recordBase.ts';

export type { Conflict, Photo, RecordBase, Strike } from './recordBase.ts';

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
  readonly limits?: (Omit<FactBody<'limitsChosen.v1'>, 'bookId'> & { readonly factId: string }) | null;
}
export interface SiteRecord extends RecordBase, FactBody<'siteAdded.v1'> {}
export interface PersonRecord extends RecordBase, FactBody<'personAdded.v1'> {
  /** From when to when; absent or null where nobody said. Of two that differ the longer time stands. */
  readonly employed?: { readonly fromOn: string | null; readonly toOn: string | null; readonly factId: string } | null;
}
export interface JobClassificationRecord extends RecordBase, FactBody<'jobClassificationAdded.v1'> {}
export interface PumpRecord extends RecordBase, FactBody<'pumpAdded.v1'> {}
export interface MeterRecord extends RecordBase, FactBody<'meterAdded.v1'> {}
export interface LotRecord extends RecordBase, FactBody<'lotAdded.v1'> {}
export interface LaboratoryRecord extends RecordBase, FactBody<'laboratoryAdded.v1'> {}

export interface ShiftRecord extends RecordBase {
  readonly siteId: string;
  readonly workOn: string;
  readonly openedAt: string;
  readonly conditions: FactBody<'conditionsNoted.v1'> | null;
  /** What was new when the job started; of two that differ a yes stands, then not known. */
  readonly changes?: (Omit<FactBody<'changesAsked.v1'>, 'shiftId'> & { readonly factId: string }) | null;
}

export interface FlowCheckRecord extends RecordBase, FactBody<'flowChecked.v1'> {
  readonly happened: Happened;
  readonly by: string | null;
  /** The fact that a correction of the check replaces. */
  readonly checkedFactId?: string;
}

/** A moment on the record: when, how known, and the fact that says so. */
export interface Moment {
  readonly at: string;
  readonly entry: 'tapped' | 'typed';
  readonly factId: string;
}

/**
 * One stretch of a sample's time line. `worn`: on the worker and running. `offRunning`: running off the worker. `offStopped`: neither.
 * `doubtful`: on the worker, but whether the pump ran is not known (before a fault was found).
 */
export interface Interval {
  readonly fromAt: string;
  /** null while it still runs */
  readonly toAt: string | null;
  readonly state: 'worn' | 'offRunning' | 'offStopped' | 'doubtful';
  readonly awayFromLead: boolean;
  readonly reason: string | null;
  readonly becauseFactId: string;
}

export interface SampleRecord extends RecordBase {
  readonly sampleKind: 'air' | 'blank';
  readonly sampleNumber: string;
  readonly shiftId: string;
  readonly workOn: string;
  readonly siteId: string;
  /** null for a field blank, as are the next fields of the worker and the pump */
  readonly workerId: string | null;
  readonly workdayId: string | null;
  readonly pumpId: string | null;
  readonly lotId: string;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly follows: string | null;
  readonly openedWhere: string | null;
  readonly preparedAt: string;
  /** The fact that began it: what a correction of its number, pump or tasks replaces. */
  readonly preparedFactId?: string;
  readonly fitting: (FactBody<'fittingChecked.v1'> & { readonly at: string; readonly factId?: string }) | null;
  readonly putOn: Moment | null;
  readonly stopped: (Moment & { readonly pumpMin: number | null }) | null;
  readonly intervals: readonly Interval[];
  readonly looks: readonly (FactBody<'pumpLookedAt.v1'> & Moment)[];
  readonly leadAreaAway: readonly { readonly fromAt: string; readonly toAt: string | null; readonly reason: string }[];
  readonly faults: readonly (FactBody<'pumpFaulted.v1'> & Moment)[];
  readonly mishaps: readonly (FactBody<'mishapNoted.v1'> & Moment)[];
  /** `lockedFactId`: the fact that says where it was locked in, which may be a later one. */
  readonly sealed: (FactBody<'cassetteSealed.v1'> & Moment & { readonly lockedFactId?: string }) | null;
  readonly flowDecision: {
    readonly use: 'average' | 'lower';
    readonly why: string | null;
    readonly factId: string;
    /** Flow checks that whoever decided knew of: one that came later is not settled by it. */
    readonly knew?: readonly string[];
  } | null;
  /** null also when a person who knew of the result said that it does not stay void. */
  readonly voided: { readonly why: string | null; readonly factId: string } | null;
  /** What a person said who knew of the void and of a result; two who differ leave it void. */
  readonly voidReview?: { readonly stands: boolean; readonly why: string | null; readonly factId: string } | null;
  /** A result stands against the void and nobody who knew both has said which; it stays void meanwhile. */
  readonly voidAgainstResult?: boolean;
  /** Every result ever received, newest last; the last one judges, unless results conflict. */
  readonly results: readonly (FactBody<'resultReceived.v1'> & { readonly factId: string })[];
  readonly remarks: readonly string[];
  /** Sentences of the clock: set back while the pump ran, and the like. */
  readonly clockDoubts: readonly { readonly factId: string; readonly kind: 'setBack' | 'outOfOrder' }[];
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
  readonly worked?: readonly (Omit<FactBody<'workNoted.v1'>, 'workdayId'> & { readonly factId: string })[];
  /** In writing: whom this day's measurement stands for too. Every statement counts. */
  readonly represents?: readonly { readonly workerIds: readonly string[]; readonly factId: string }[];
  readonly recordsIssued?: readonly (FactBody<'exposureRecordIssued.v1'> & Issued)[];
}

/** When a paper left the firm, and by which fact. */
export interface Issued {
  readonly factId: string;
  readonly at: string;
  readonly by: string | null;
}

/** A measurement that was reported to us. */
export interface ReportedRecord extends RecordBase, FactBody<'measurementReported.v1'> {
  readonly reportedFactId: string;
}
/** A job that rests on an earlier measurement. */
export interface RelianceRecord extends RecordBase, FactBody<'measurementReliedOn.v1'> {
  readonly reliedFactId: string;
}
export interface NoticeRecord extends RecordBase {
  readonly issued: FactBody<'noticeIssued.v1'> & Issued;
  /** Every time that it was given or posted, oldest first; `at` is when it happened. */
  readonly given: readonly (FactBody<'noticeGiven.v1'> & Issued)[];
}
export interface DeterminationRecord extends RecordBase {
  readonly written: FactBody<'determinationWritten.v1'> & Issued;
}
/** What was done of a duty. Its id tells which: findings make it of kind and subject. */
export interface DutyRecord extends RecordBase {
  /** Oldest first; those that were reopened since are left out. */
  readonly done: readonly (Omit<FactBody<'dutyDone.v1'>, 'dutyId'> & Issued)[];
}
export interface RequestRecord extends RecordBase, FactBody<'recordsRequested.v1'> {}

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
  | RequestRecord;

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
  /** Entries of other devices that are known to be missing here and that nobody accepted as lost. */
  readonly missing?: readonly MissingEntries[];
  /** A file is half taken in: nothing may be relaxed until it is whole. */
  readonly takingIn?: boolean;
}
