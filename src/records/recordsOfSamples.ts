/** Records of the sampling itself: flow checks, and samples with their time line. */
import type { FactBody, Happened } from './fact.ts';
import type { RecordBase } from './recordBase.ts';

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
