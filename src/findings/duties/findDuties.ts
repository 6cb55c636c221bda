/** Everything that follows from a book on a day: measurements, task groups, courses, days, notices, determinations, duties. */
import type { Book } from '#records/book.ts';
import { coursesOf } from './course/courses.ts';
import { determinationsOf } from './determining/determinations.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import { exposureDaysOf } from './exposure/daysAtOrAbove.ts';
import { coursesAgain, determinationsAgain, dutiesAgain, exposureDaysAgain, noticesAgain } from './findAgain.ts';
import { groupDaysOf, taskGroupsOf } from './groups/taskGroups.ts';
import { dutiesOf } from './list/duties.ts';
import { notHeldOf } from './list/dutyTriggersGround.ts';
import { measurementsInSteps } from './measuring/measurements.ts';
import { atOnce, type Steps } from './steps.ts';
import { noticesOwed } from './telling/notices.ts';
import { changedSinceFound, type Earlier, listsOfDays, sameIn } from './touched.ts';

/** What a finding was made from. It only spares finding again what cannot be other than it was. */
const madeFrom = new WeakMap<DutiesOfBook, Earlier>();

/** Yields between steps, the longest of which takes some fifty milliseconds for a thousand samples on a phone. */
export function* dutiesInSteps(book: Book, today: string, before?: DutiesOfBook): Steps<DutiesOfBook> {
  const earlier = before && madeFrom.get(before);
  const measurements = yield* measurementsInSteps(book, before?.measurements);
  yield;
  const sameDays = earlier !== undefined && sameIn(earlier.book, book, listsOfDays);
  const days = sameDays ? earlier.days : groupDaysOf(book);
  const groups = sameDays ? earlier.found.groups : taskGroupsOf(days);
  yield;
  const changed = changedSinceFound(measurements, days, book, today, earlier);
  const exposureDays = changed ? exposureDaysAgain(changed) : exposureDaysOf(measurements, days, book, today);
  yield;
  const courses = changed ? coursesAgain(changed) : coursesOf(measurements, days, book, today);
  yield;
  const notices = changed ? noticesAgain(changed) : noticesOwed(measurements, book, days, today);
  yield;
  const determinations = changed ? determinationsAgain(changed) : determinationsOf(measurements, book, days, today);
  yield;
  const result = { measurements, groups, exposureDays, courses, notices, determinations };
  const parts = { ...result, days };
  const found = {
    today,
    ...result,
    duties: changed ? dutiesAgain(changed, parts) : dutiesOf(parts, book, today),
    notHeld: sameDays && earlier.found.notHeld ? earlier.found.notHeld : notHeldOf(days, book),
  };
  madeFrom.set(found, { found, book, days });
  return found;
}

/** `before`: what was found earlier of the same book; what comes out equals what comes out of nothing, and sooner. */
export const findDuties = (book: Book, today: string, before?: DutiesOfBook): DutiesOfBook =>
  atOnce(dutiesInSteps(book, today, before));
