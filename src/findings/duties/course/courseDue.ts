/** When a course is due, how far its row of low occasions is, and whether doubt asks for measuring again. */
import { addDays } from '#core/calendar.ts';
import type { Band } from '../measuring/measurement.ts';
import type { Course, CourseStep, Schedule } from './course.ts';
import { belowAtEnd, type Low } from './courseChain.ts';
import type { Occasion } from './courseInput.ts';
import type { CourseRule, Repeated } from './courseRule.ts';

/** What is known after the occasions so far. */
export interface State {
  schedule: Schedule;
  steps: CourseStep[];
  /** Low occasions in a row, each far enough from the one before. */
  chain: readonly Low[];
  dueOn: string | null;
  lastMeasurementId: string | null;
  band: Band | null;
  last: Occasion | null;
  /** One that says neither high nor low came before: as many low ones in a row as after a high one; they are in `chain`. */
  unsure: boolean;
  known: boolean;
  /** An occasion against which nothing stands has decided; one of the worker's own, or in writing. */
  decided: boolean;
  decidedByOwn: boolean;
  changeOwed: Course['changeOwed'];
}

export const isRepeated = (schedule: Schedule): schedule is Repeated =>
  schedule === 'sixMonthly' || schedule === 'quarterly';
/** The row of low occasions so far; null where nothing runs. */
export function runOf({ schedule, chain }: State, rule: CourseRule): Course['run'] {
  if (!isRepeated(schedule)) return null;
  const last = chain.at(-1);
  const counted = schedule === 'sixMonthly' ? belowAtEnd(chain) : chain;
  return {
    towards: schedule === 'sixMonthly' || last?.belowActionLevel ? 'none' : 'sixMonthly',
    count: Math.min(counted.length, rule.consecutive - 1),
    of: rule.consecutive,
    nextFromOn: last ? addDays(last.on, rule.daysApart) : null,
  };
}

type Due = Pick<Course, 'due' | 'dueOn' | 'overdue'>;

/** The last occasion with a result that is not by the roster alone. */
export const inDoubt = ({ last, unsure, schedule }: State): boolean =>
  (last !== null && !last.sound) || (unsure && schedule === 'none');

/** The day passed and the tasks were not done since: before or on the first day that they are done again. */
export function dueOf(state: State, lastDoneOn: string | null, today: string): Due {
  const { schedule, dueOn, changeOwed, decided } = state;
  const now = schedule === 'undetermined' || changeOwed !== null || inDoubt(state) || (schedule !== 'none' && !decided);
  if (!isRepeated(schedule) || dueOn === null) return { due: now ? 'now' : 'none', dueOn: null, overdue: false };
  const overdue = today > dueOn && (lastDoneOn ?? '') >= dueOn;
  if (now) return { due: 'now', dueOn, overdue };
  if (today <= dueOn || overdue) return { due: 'byDate', dueOn, overdue };
  return { due: 'beforeNextTime', dueOn: null, overdue: false };
}
