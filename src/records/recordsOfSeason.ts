/** Records of the season ahead: plans, days made ready, money; and what pumps, meters and lots have besides what they were entered with. */
import type { FactBody } from './fact.ts';
import type { RecordBase, Without } from './recordBase.ts';

export interface PlanRecord extends RecordBase, Without<FactBody<'measurementPlanned.v1'>, 'knew'> {
  readonly plannedFactId: string;
  /** Instant at which it was first said: what was measured before its day is no part of it. */
  readonly plannedAt?: string;
  /** Planned measurements that did not come about, oldest first. They stay to do. */
  readonly missed: readonly (Without<FactBody<'plannedDayMissed.v1'>, 'planId'> & { readonly factId: string })[];
  readonly dropped: { readonly why: string | null; readonly factId: string } | null;
}

export interface Label {
  readonly sampleNumber: string;
  /** null = a spare or a field blank */
  readonly workerId: string | null;
  readonly blank: boolean;
  readonly factId: string;
}
/** Its id is that of the shift: the site and the day. */
export interface DayPlanRecord extends RecordBase {
  readonly siteId: string;
  readonly workOn: string;
  /** What was said last. Of two that did not know of each other, wearers of both stand until somebody says anew. */
  readonly prepared: (Without<FactBody<'dayPrepared.v1'>, 'shiftId' | 'knew'> & { readonly factId: string }) | null;
  readonly labels: readonly Label[];
}

export interface SpendingRecord extends RecordBase, FactBody<'moneySpent.v1'> {
  readonly spentFactId: string;
  readonly struck: { readonly why: string | null; readonly factId: string } | null;
}

export type Held = Without<FactBody<'gearHeld.v1'>, 'gear' | 'gearId' | 'knew'> & { readonly factId: string };
export type Certificate = Without<FactBody<'certificateEntered.v1'>, 'meterId' | 'knew'> & { readonly factId: string };
export interface Charge {
  readonly at: string;
  readonly full: boolean;
  readonly by: string | null;
  readonly factId: string;
}
export interface GearDoubt extends FactBody<'gearDoubted.v1'> {
  readonly factId: string;
  /** Of a flow meter: the day of its first certificate newer than what was found. Absent: there is none. */
  readonly renewedOn?: string;
  /** The decision that stands: of two that did not know of each other the more careful one. Null = open. */
  readonly settled: {
    readonly decision: FactBody<'gearDoubtSettled.v1'>['decision'];
    readonly trueOverRead: number | null;
    readonly why: string | null;
    readonly factId: string;
    /** Day on which it was settled. Absent: nobody knows. */
    readonly onDay?: string;
  } | null;
}
/** What gear has besides its entry; absent where nothing was said. */
export interface GearBeside {
  readonly held?: Held | null;
  readonly doubts?: readonly GearDoubt[];
}
/** The prices that hold, newest first: those of a day are the first whose `fromOn` is not later. */
export type Prices = Without<FactBody<'pricesStated.v1'>, 'bookId' | 'knew'> & { readonly factId: string };
