/** Records of what follows from figures: measurements of others, papers that tell, what was done of what the rule asks. */
import type { FactBody } from './fact.ts';
import type { RecordBase, Without } from './recordBase.ts';

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
  readonly done: readonly (Without<FactBody<'dutyDone.v1'>, 'dutyId'> & Issued)[];
}
export interface RequestRecord extends RecordBase, FactBody<'recordsRequested.v1'> {}
