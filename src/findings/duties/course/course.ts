/**
 * How often a worker's exposure at one kind of task must be measured again, 29 CFR 1926.62(d)(6) and (7): none, every six months,
 * quarterly. It starts, steps down and stops per worker, or per worker represented in writing.
 */
import type { Band } from '../measuring/measurement.ts';

/** `undetermined`: no measurement decides yet; what is presumed stands. */
export type Schedule = 'undetermined' | 'none' | 'sixMonthly' | 'quarterly';

/** One step of the course, in the order of days. */
export interface CourseStep {
  readonly on: string;
  readonly to: Schedule;
  readonly paragraph: string;
  /** `begins`, `stepsDown`, `stops`, `rises`, `restarts` after a change, `owed` where a result is awaited */
  readonly why: 'begins' | 'stepsDown' | 'stops' | 'rises' | 'restarts' | 'owed';
  readonly measurementIds: readonly string[];
  readonly because: readonly string[];
}

export interface Course {
  readonly workerId: string;
  readonly groupKey: string;
  readonly schedule: Schedule;
  readonly steps: readonly CourseStep[];
  /** The measurement that the next date counts from. */
  readonly lastMeasurementId: string | null;
  readonly band: Band | null;
  /** Calendar months after the sampling date; null where none is due, or where the tasks were not done since. */
  readonly dueOn: string | null;
  /** `byDate`; `beforeNextTime`: the date falls when nobody does the task, so before or on the first day it is done again. `now`: undetermined, a change was noted, or the last occasion is in doubt. */
  readonly due: 'none' | 'byDate' | 'beforeNextTime' | 'now';
  readonly overdue: boolean;
  /** The last occasion is in doubt and proves nothing low: measuring again is owed, whatever the schedule. */
  readonly measureAgain?: boolean;
  /** The run of low occasions so far: how many of how many, and from which day another one counts. */
  readonly run: {
    readonly towards: 'none' | 'sixMonthly';
    readonly count: number;
    readonly of: number;
    readonly nextFromOn: string | null;
  } | null;
  /** A change was noted that asks for additional monitoring, (d)(7). */
  readonly changeOwed: { readonly on: string; readonly because: readonly string[] } | null;
}
