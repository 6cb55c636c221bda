/** A trigger that is met: what a duty is about, since when, and what is known of it. */
import type { DutyRow, DutyTrigger } from '#reference/duties.ts';
import type { ExposureDay, ExposureDays } from '../exposure/exposureDays.ts';
import type { DueWhen, Duty } from './duty.ts';
import type { Ground } from './dutyTriggersGround.ts';
import type { Level } from './dutyTriggersLevels.ts';

export interface Met {
  /** What the id is made of, after the kind. */
  readonly subjects: readonly string[];
  readonly workerIds: readonly string[];
  readonly siteId: string | null;
  readonly groupKey: string | null;
  readonly measurementIds: readonly string[];
  readonly params: Duty['params'];
  readonly presumed: boolean;
  readonly because: readonly string[];
  /** First day on which it holds, or on which the firm could know; the last day for what is owed before work starts. */
  readonly startsOn: string | null;
  /** Last day of work that met it; null where no work day is meant. */
  readonly lastOn: string | null;
  /** The day on which the highest result behind it was there: what was done before that was done for less, and is done again. */
  readonly newSince?: string | null;
  /** Where the trigger itself has a day, or was fulfilled: a course, a notice, a request. */
  readonly due?: {
    readonly when: DueWhen;
    readonly dueOn: string | null;
    readonly laterReadingOn?: string | null;
    readonly overdue: boolean;
    readonly late?: boolean;
    readonly done?: Duty['done'];
  };
}

export type Trigger = (sight: Sight, row: DutyRow) => readonly Met[];
export type Triggers = Partial<Record<DutyTrigger, Trigger>>;

/** What triggers see: the ground, and what was worked out of it once. */
export interface Sight {
  readonly ground: Ground;
  readonly levels: readonly Level[];
  /** Each worker's days at or above the action level where the rule is held, oldest first. */
  readonly daysAt: ReadonlyMap<string, DaysAt>;
}

export interface DaysAt {
  readonly days: readonly ExposureDay[];
  /** The consecutive months with the most of them. */
  readonly most: ExposureDays['most'];
  /** All of them only by the firm's own lower action level. */
  readonly byOwn: boolean;
}

/** A few ids are enough to find one's way back; thousands would be carried for nothing. */
export const fewOf = (ids: readonly string[]): readonly string[] => [...new Set(ids)].slice(0, 24);

export const earliest = (days: readonly string[]): string | null =>
  days.reduce<string | null>((first, on) => (first === null || on < first ? on : first), null);
export const latest = (days: readonly string[]): string | null =>
  days.reduce<string | null>((last, on) => (last === null || on > last ? on : last), null);
