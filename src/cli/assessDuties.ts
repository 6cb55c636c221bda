/** The duties that follow from the days of a file, as text for the command line. */

import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import { calendarDates, dutyNames } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { Book } from '#records/book.ts';
import { isCitable } from '#reference/source.ts';
import { en as words } from '#words/assessDuties.ts';
import {
  becauseOfWhat,
  byWhen,
  type DutyNames,
  en as dutyWords,
  presumedNote,
  whatFulfils,
  whatToDo,
  whereItLies,
  whoseDecision,
} from '#words/duties.ts';
import { formatDay } from '#words/quantity.ts';
import { bookOfDays } from './dayBook.ts';
import type { DayFile } from './dayFile.ts';

export interface FollowingDuties {
  readonly book: Book;
  readonly found: DutiesOfBook;
}

export function dutiesOfDays(file: DayFile, today: string): FollowingDuties {
  const book = bookOfDays(file);
  return { book, found: findDuties(book, today) };
}

const indent = '  ';

function linesOf(duty: Duty, names: DutyNames): string[] {
  const note = presumedNote(duty);
  const lies = whereItLies(duty);
  const later = duty.laterReadingOn === null ? [] : [dutyWords.laterReading(formatDay(duty.laterReadingOn))];
  return [
    `- ${whatToDo(duty, names)}, ${byWhen(duty)}.`,
    ...[
      becauseOfWhat(duty, names),
      ...(duty.presumed ? [dutyWords.presumed] : []),
      ...(note === null ? [] : [note]),
      ...later,
      ...(isCitable(duty.source) ? [words.cited(duty.source.title, duty.paragraph)] : []),
      words.fulfils(whatFulfils(duty)),
      whoseDecision(duty),
      ...(lies === null ? [] : [words.lies(lies)]),
      words.id(duty.id),
    ].map((line) => `${indent}${line}`),
  ];
}

/** What follows from all days of the file, by date; where no list is held, whose rule governs. */
export function dutyLines({ book, found }: FollowingDuties): string[] {
  const names = dutyNames(book, 'names');
  const title = words.heading(formatDay(found.today));
  const notHeld = found.notHeld ?? [];
  return [
    title,
    '='.repeat(title.length),
    ...(found.duties.length === 0 ? [words.none] : [words.notInFile]),
    ...found.duties.flatMap((duty) => ['', ...linesOf(duty, names)]),
    ...(notHeld.length === 0
      ? []
      : [
          '',
          words.noList,
          ...notHeld.map(
            ({ siteId, stateCode, governs }) => `- ${words.governs(governs, names.site(siteId), stateCode)}`,
          ),
        ]),
    '',
  ];
}

/** As data: the duties, those with a day, and the sites without a list. */
export const dutiesAsData = ({ found }: FollowingDuties) => ({
  today: found.today,
  duties: found.duties,
  dates: calendarDates(found.duties).map(({ uid, on }) => ({ uid, on })),
  notHeld: found.notHeld ?? [],
});
