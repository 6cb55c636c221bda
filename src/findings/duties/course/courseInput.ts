/** What the course of re-monitoring is read from: measured occasions, changes noted, the rule. */

import type { Band } from '../measuring/measurement.ts';
import type { CourseRule } from './courseRule.ts';

/** One day on which the worker was measured, or was represented. Several measurements of one day are one occasion: the highest. */
export interface Occasion {
  readonly on: string;
  readonly measurementIds: readonly string[];
  /** `own` and `written` (named in writing) may step down; the `roster` alone can only begin. */
  readonly relation: 'own' | 'written' | 'roster';
  readonly band: Band;
  readonly provesBelowActionLevel: boolean;
  readonly provesNotAbovePel: boolean;
  /** Nothing stands against what it says. */
  readonly sound: boolean;
  readonly resultOwed: boolean;
  /** A result is in hand and proves nothing, also where another of that day is owed. */
  readonly doubted?: boolean;
  /** It says neither high nor low, and was sent or has a result: it may have been high. */
  readonly leftOpen?: boolean;
  readonly because: readonly string[];
}

/** Something new was noted, or not known, when the job started: equipment, process, control, personnel, task. */
export interface ChangeNoted {
  readonly on: string;
  readonly because: readonly string[];
}

export interface CourseInput {
  readonly workerId: string;
  readonly groupKey: string;
  /** In the order of days, one a day. */
  readonly occasions: readonly Occasion[];
  readonly changes: readonly ChangeNoted[];
  /** null where no rule is held complete: figures only, nothing is due. */
  readonly rule: CourseRule | null;
  /** The last day on which the worker did these tasks. */
  readonly lastDoneOn: string | null;
  readonly today: string;
}
