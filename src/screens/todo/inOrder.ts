/** The list parted as it is read: passed, day by day, as soon as possible, what lasts with the work, done late, done. Nothing is left out. */
import type { Duty } from '#findings/duties/list/duty.ts';

export interface DutyGroups {
  readonly overdue: readonly Duty[];
  /** By day of the calendar, the first day first. */
  readonly dated: ReadonlyMap<string, readonly Duty[]>;
  readonly soon: readonly Duty[];
  /** By site; '' where it is of none. Nobody is at these tasks now. */
  readonly again: ReadonlyMap<string, readonly Duty[]>;
  /** By site; '' where it is of none. */
  readonly lasting: ReadonlyMap<string, readonly Duty[]>;
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

function by(key: (duty: Duty) => string, duties: readonly Duty[]): ReadonlyMap<string, readonly Duty[]> {
  const parts = new Map<string, Duty[]>();
  for (const duty of duties) parts.set(key(duty), [...(parts.get(key(duty)) ?? []), duty]);
  return parts;
}

const siteOf = ({ siteId }: Duty): string => siteId ?? '';

const partOf = ({ overdue, when, dueOn }: Duty): 'overdue' | 'again' | 'dated' | 'lasting' | 'soon' => {
  if (overdue) return 'overdue';
  if (when === 'beforeOrOnFirstDayAgain') return 'again';
  if (dueOn !== null) return 'dated';
  return when === 'whileItLasts' ? 'lasting' : 'soon';
};

export function inGroups(duties: readonly Duty[]): DutyGroups {
  const open = duties.filter(({ done }) => done === null);
  const done = duties.filter((duty) => duty.done !== null);
  const part = (name: ReturnType<typeof partOf>) => open.filter((duty) => partOf(duty) === name);
  const dated = part('dated').toSorted((a, b) =>
    (a.dueOn ?? '') < (b.dueOn ?? '') ? -1 : a.dueOn === b.dueOn ? 0 : 1,
  );
  return {
    overdue: part('overdue'),
    dated: by(({ dueOn }) => dueOn ?? '', dated),
    soon: part('soon'),
    again: by(siteOf, part('again')),
    lasting: by(siteOf, part('lasting')),
    lateDone: done.filter(({ late }) => late),
    done: done.filter(({ late }) => !late),
  };
}

/** The first open one as it is read. */
export const firstOf = ({ overdue, dated, soon, again, lasting }: DutyGroups): Duty | undefined =>
  [overdue, ...dated.values(), soon, ...again.values(), ...lasting.values()].find(
    ([first]) => first !== undefined,
  )?.[0];
