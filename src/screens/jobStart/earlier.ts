/** Earlier measurements of the same work, and how they are said. */
import { daysBetween } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { relianceOf } from '#findings/duties/groups/reliance.ts';
import { groupDaysOf } from '#findings/duties/groups/taskGroups.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { Book, ShiftRecord } from '#records/book.ts';
import { taskById } from '#reference/tasks.ts';
import { formatEstimate, inSentence } from '#words/quantity.ts';
import { en as words } from '#words/reliance.ts';
import { emptyRely, relianceSoFar, type Work } from './relyDraft.ts';

export const taskNames = (taskIds: readonly string[]): readonly string[] =>
  taskIds.map((id) => inSentence(taskById(id)?.en ?? id));

/** The groups that work at this shift, by the roster and the samples. */
export function workOfShift(shiftId: string, book: Book): readonly Work[] {
  const days = groupDaysOf(book).filter((day) => day.shiftId === shiftId);
  return [...new Map(days.map((day) => [day.groupKey, day])).values()];
}

const sameTasks = (a: readonly string[], b: readonly string[]): boolean =>
  [...a].sort().join('+') === [...b].sort().join('+');

/** Of the same tasks, not after this day and not of this shift itself; newest first. */
export const earlierOf = (work: Work, { id, workOn }: ShiftRecord, found: DutiesOfBook): readonly Measurement[] =>
  [...found.measurements.values()]
    .filter((each) => sameTasks(each.taskIds, work.taskIds) && each.workOn <= workOn && !each.shiftIds.includes(id))
    .sort((a, b) => b.workOn.localeCompare(a.workOn) || a.id.localeCompare(b.id));

export const workerOf = ({ workerId }: Measurement, book: Book): string =>
  book.people.get(workerId ?? '')?.name ?? words.someone;

/** Age on the day of the job, until when it may be relied on, the average, and whose flow readings it has. */
export function ageOf(measurement: Measurement, work: Work, shift: ShiftRecord, found: DutiesOfBook, book: Book) {
  const { reliableUntilOn } = relianceSoFar(emptyRely, measurement.id, shift.id, work, found.measurements, book);
  const average = measurement.twa8UgPerM3;
  const value = average === null ? words.valueUnknown : formatEstimate(average, 'µg/m³');
  const from = measurement.from === 'sampled' ? words.sample : words.reported;
  return words.age(daysBetween(measurement.workOn, shift.workOn), reliableUntilOn, `${value}, ${from}`);
}

/** What was compared for this job already, with what it amounts to now. */
export const comparedFor = (shiftId: string, found: DutiesOfBook, book: Book) =>
  [...book.reliances.values()]
    .filter((each) => each.shiftId === shiftId)
    .map((each) => ({ reliance: each, finding: relianceOf(each, found.measurements, book) }));
