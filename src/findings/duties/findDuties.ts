/** Everything that follows from a book on a day: measurements, task groups, courses, days, notices, determinations, duties. */
import type { Book } from '#records/book.ts';
import { coursesOf } from './courses.ts';
import { exposureDaysOf } from './daysAtOrAbove.ts';
import { determinationsOf } from './determinations.ts';
import { dutiesOf } from './duties.ts';
import type { DutiesOfBook } from './dutiesOfBook.ts';
import { notHeldOf } from './dutyTriggersGround.ts';
import {
  type Changed,
  changedIds,
  coursesAgain,
  determinationsAgain,
  type Earlier,
  listsOfDays,
  noticesAgain,
  sameBesides,
  sameIn,
} from './findAgain.ts';
import type { Measurement } from './measurement.ts';
import { measurementsOf } from './measurements.ts';
import { noticesOwed } from './notices.ts';
import type { GroupDay } from './taskGroup.ts';
import { groupDaysOf, taskGroupsOf } from './taskGroups.ts';

/** What a finding was made from. It only spares finding again what cannot be other than it was. */
const madeFrom = new WeakMap<DutiesOfBook, Earlier>();

type Stage = Pick<DutiesOfBook, 'courses' | 'notices' | 'determinations'>;

function stageOf(measurements: ReadonlyMap<string, Measurement>, days: readonly GroupDay[], book: Book, today: string) {
  return {
    courses: coursesOf(measurements, days, book, today),
    notices: noticesOwed(measurements, book, days, today),
    determinations: determinationsOf(measurements, book, days, today),
  };
}

const stageAgain = (changed: Changed): Stage => ({
  courses: coursesAgain(changed),
  notices: noticesAgain(changed),
  determinations: determinationsAgain(changed),
});

/** Where some measurements are other ones and nothing else is: which. null: all is found anew. */
function onlyChanged(
  measurements: ReadonlyMap<string, Measurement>,
  days: readonly GroupDay[],
  book: Book,
  today: string,
  earlier: Earlier | undefined,
): Changed | null {
  if (!earlier || earlier.found.today !== today || earlier.days !== days || !sameBesides(earlier.book, book))
    return null;
  const ids = changedIds(earlier.found.measurements, measurements);
  return ids && { ids, measurements, earlier, book, days, today };
}

/** `before`: what was found earlier of the same book; what comes out equals what comes out of nothing, and sooner. */
export function findDuties(book: Book, today: string, before?: DutiesOfBook): DutiesOfBook {
  const earlier = before && madeFrom.get(before);
  const measurements = measurementsOf(book, before?.measurements);
  const sameDays = earlier !== undefined && sameIn(earlier.book, book, listsOfDays);
  const days = sameDays ? earlier.days : groupDaysOf(book);
  const changed = onlyChanged(measurements, days, book, today, earlier);
  const parts = {
    measurements,
    days,
    groups: sameDays ? earlier.found.groups : taskGroupsOf(days),
    exposureDays: exposureDaysOf(measurements, days, book, today),
    ...(changed ? stageAgain(changed) : stageOf(measurements, days, book, today)),
  };
  const { days: _, ...result } = parts;
  const found = {
    today,
    ...result,
    duties: dutiesOf(parts, book, today),
    notHeld: sameDays && earlier.found.notHeld ? earlier.found.notHeld : notHeldOf(days, book),
  };
  madeFrom.set(found, { found, book, days });
  return found;
}
