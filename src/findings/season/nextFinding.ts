/** What is known of a task group, and what it needs next. */
import type { Presumption } from '#reference/presumption.ts';
import type { Course } from '../duties/course/course.ts';
import type { DeterminationBlock } from '../duties/determining/determination.ts';
import type { NotHeld } from '../duties/list/notHeld.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import type { Reason } from '../reason.ts';
import type { Need } from './need.ts';
import type { PublishedHint } from './publishedExposures.ts';

export interface WorkerOfGroup {
  readonly workerId: string;
  readonly course: Course | null;
  /** This worker's own last measurement in this group. */
  readonly lastMeasurementId: string | null;
  readonly lastMeasuredOn: string | null;
  /** Last day on which this worker did this work; null: only planned. */
  readonly lastDoneOn: string | null;
}

export interface PlanOfGroup {
  readonly planId: string;
  readonly openCount: number;
  readonly slotsCount: number;
}

export interface NextToMeasure {
  readonly groupKey: string;
  readonly taskIds: readonly string[];
  readonly jobClassificationId: string | null;
  readonly setting: 'indoors' | 'outdoors';
  /** The most pressing one, by which it stands in the list. */
  readonly need: Need;
  /** All of them, in order; the first is `need`. */
  readonly needs: readonly Need[];
  /** What is presumed of these tasks until they are measured, by the federal list. */
  readonly presumption: Presumption;
  /** Sites of this work whose own rule is not held complete: no duties are listed for them. */
  readonly notHeld: readonly NotHeld[];
  /** No site of this work has a rule that is held: figures only. */
  readonly ruleHeld: boolean;
  /** The youngest measurement that bears on it, whatever it says; its band and proofs tell its standing. */
  readonly last: Measurement | null;
  /** The youngest one against which nothing stands, and until when a job may rest on it. */
  readonly reliable: { readonly measurementId: string; readonly untilOn: string; readonly past: boolean } | null;
  /** The first day on which a course asks for another one. */
  readonly dueOn: string | null;
  readonly overdue: boolean;
  /** What keeps the youngest measurement from proving anything low. */
  readonly reasons: readonly Reason[];
  /** What stands against a negative determination, where neither may be written yet. */
  readonly blocks: readonly (DeterminationBlock & { readonly siteId: string })[];
  readonly siteIds: readonly string[];
  readonly workers: readonly WorkerOfGroup[];
  readonly plans: readonly PlanOfGroup[];
  readonly openCount: number;
  /** Last day on which anybody did this work; null: only planned or reported. */
  readonly lastDoneOn: string | null;
  /** Hints that prove nothing. */
  readonly published: readonly PublishedHint[];
}
