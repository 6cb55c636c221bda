/** Everything that follows from a book on a day: measurements, task groups, courses, days, notices, determinations, duties. */
import type { Book } from '#records/book.ts';
import { coursesOf } from './courses.ts';
import { exposureDaysOf } from './daysAtOrAbove.ts';
import { determinationsOf } from './determinations.ts';
import { dutiesOf } from './duties.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import { notHeldOf } from './dutyTriggersGround.ts';
import { measurementsOf } from './measurements.ts';
import { noticesOwed } from './notices.ts';
import { groupDaysOf, taskGroupsOf } from './taskGroups.ts';

/**
 * `before`: what was found earlier of the same book. It spares making measurements again whose records are the same objects, which is
 * nearly all of the work; everything else is found anew, so what comes out equals what comes out of nothing.
 */
export function findDuties(book: Book, today: string, before?: DutiesOfBook): DutiesOfBook {
  const measurements = measurementsOf(book, before?.measurements);
  const days = groupDaysOf(book);
  const parts = {
    measurements,
    days,
    groups: taskGroupsOf(days),
    courses: coursesOf(measurements, days, book, today),
    exposureDays: exposureDaysOf(measurements, days, book, today),
    notices: noticesOwed(measurements, book, days, today),
    determinations: determinationsOf(measurements, book, days, today),
  };
  const { days: _, ...found } = parts;
  return { today, ...found, duties: dutiesOf(parts, book, today), notHeld: notHeldOf(days, book) };
}
