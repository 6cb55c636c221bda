/** The course of re-monitoring of every worker in every task group. */
import type { Book } from '#records/book.ts';
import type { Course } from './course.ts';
import type { Measurement } from './measurement.ts';
import type { GroupDay } from './taskGroup.ts';

export function coursesOf(
  _measurements: ReadonlyMap<string, Measurement>,
  _days: readonly GroupDay[],
  _book: Book,
  _today: string,
): readonly Course[] {
  throw new Error('not written yet');
}
