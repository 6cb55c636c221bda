/** A duty: what the rule asks of the firm, because of which finding, for whom, by when, under which paragraph, and whether it was done. */
import type { ReadSource } from '#reference/source.ts';

/** When it is due. `by` has a day; the others are moments of the job. */
export type DueWhen =
  | 'by'
  | 'asSoonAsPossible'
  | 'beforeWorkStarts'
  | 'beforeOrOnFirstDayAgain'
  | 'whileItLasts'
  | 'atTheNextShift';

export interface Duty {
  /** kind '.' subject: the id of the record that says it was done. Letters, digits, dots and hyphens only. */
  readonly id: string;
  /** Key of shared/duties, and of its sentences. */
  readonly kind: string;
  readonly limitSetId: string;
  readonly paragraph: string;
  readonly source: ReadSource;
  readonly workerIds: readonly string[];
  readonly siteId: string | null;
  readonly groupKey: string | null;
  readonly measurementIds: readonly string[];
  /** Values for its sentence; quantities end in their unit suffix. */
  readonly params: Readonly<Record<string, string | number>>;
  readonly when: DueWhen;
  /** Day of the calendar; also set for `asSoonAsPossible`: the last day. */
  readonly dueOn: string | null;
  /** A later reading of the last day, told as a note: public holidays not counted. */
  readonly laterReadingOn: string | null;
  readonly overdue: boolean;
  /** Done late, or not yet though the day has passed: stays visible, and says how to mend it. */
  readonly late: boolean;
  /** Whose decision it is. */
  readonly decidedBy: 'firm' | 'competentPerson' | 'physician' | 'worker' | 'laboratory';
  /** The address in the app where it is fulfilled, as a kind; null: it is done elsewhere and noted. */
  readonly fulfilledBy:
    | 'notice'
    | 'measurement'
    | 'determination'
    | 'note'
    | 'respirator'
    | 'sign'
    | 'roster'
    | 'jobStart';
  readonly done: { readonly on: string; readonly byId: string | null; readonly whereItLies: string | null } | null;
  /** Presumed, not measured: it falls away when a measurement proves less. */
  readonly presumed: boolean;
  readonly because: readonly string[];
}
