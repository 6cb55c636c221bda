/** The list parted as it is read: passed, by date, without a day, done late, done. Nothing is left out. */
import type { Duty } from '#findings/duties/duty.ts';

export interface DutyGroups {
  readonly overdue: readonly Duty[];
  readonly dated: readonly Duty[];
  readonly undated: readonly Duty[];
  /** Done after the last day: they stay visible. */
  readonly lateDone: readonly Duty[];
  readonly done: readonly Duty[];
}

export interface Shown {
  readonly personId: string | null;
  readonly siteId: string | null;
}

/** One person's are those that name the person; what names nobody is everybody's and stays. */
export const ofShown = (duties: readonly Duty[], { personId, siteId }: Shown): readonly Duty[] =>
  duties.filter(
    (duty) =>
      (personId === null || duty.workerIds.includes(personId)) &&
      (siteId === null || duty.siteId === siteId || duty.siteId === null),
  );

export function inGroups(duties: readonly Duty[]): DutyGroups {
  const open = duties.filter(({ done }) => done === null);
  const done = duties.filter((duty) => duty.done !== null);
  return {
    overdue: open.filter(({ overdue }) => overdue),
    dated: open.filter(({ overdue, dueOn }) => !overdue && dueOn !== null),
    undated: open.filter(({ overdue, dueOn }) => !overdue && dueOn === null),
    lateDone: done.filter(({ late }) => late),
    done: done.filter(({ late }) => !late),
  };
}
