/**
 * The duties with a day as a calendar file, RFC 5545: an entry for the whole day each, with the duty's id as its UID, so that a later
 * file moves an entry and doubles none. Workers are not named unless asked for.
 */
import { addDays } from '#core/calendar.ts';
import { type CalendarDate, calendarDates, dutyNames, type ShownAs } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/calendarFile.ts';
import {
  becauseOfWhat,
  byWhen,
  type DutyNames,
  en as duties,
  presumedNote,
  whatFulfils,
  whatToDo,
  whoseDecision,
} from '#words/duties.ts';
import { dateValue, escaped, folded, instantValue } from './calendarLines.ts';

export interface CalendarFile {
  readonly duties: readonly Duty[];
  readonly book: Book;
  /** When the file is made: an ISO instant in UTC. */
  readonly madeAt: string;
  readonly shownAs: ShownAs;
}

/** Capital first: a duty's sentence goes on with by when. */
const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

function descriptionOf({ duty, cited }: CalendarDate, names: DutyNames): string {
  const note = presumedNote(duty);
  return [
    sentence(`${whatToDo(duty, names)}, ${byWhen(duty)}`),
    becauseOfWhat(duty, names),
    ...(duty.presumed ? [duties.presumed] : []),
    ...(note === null ? [] : [note]),
    whatFulfils(duty),
    whoseDecision(duty),
    ...(cited ? [words.under(duty.source.title, duty.paragraph)] : []),
    ...(duty.laterReadingOn === null ? [] : [duties.laterReading(duty.laterReadingOn)]),
    words.caution,
  ].join('\n');
}

function eventOf(date: CalendarDate, names: DutyNames, { book, madeAt }: CalendarFile): readonly string[] {
  const what = whatToDo(date.duty, names);
  return [
    'BEGIN:VEVENT',
    `UID:${date.uid}`,
    `DTSTAMP:${instantValue(madeAt)}`,
    `DTSTART;VALUE=DATE:${dateValue(date.on)}`,
    `DTEND;VALUE=DATE:${dateValue(addDays(date.on, 1))}`,
    `SUMMARY:${escaped(book.book?.practice ? words.example(what) : what)}`,
    `DESCRIPTION:${escaped(descriptionOf(date, names))}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/** The whole file as text; its bytes are UTF-8. */
export function calendarFile(file: CalendarFile): string {
  const names = dutyNames(file.book, file.shownAs);
  const firm = file.book.book?.firmName ?? null;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Fullshift//To do//EN',
    'CALSCALE:GREGORIAN',
    `X-WR-CALNAME:${escaped(words.name(firm))}`,
    ...calendarDates(file.duties).flatMap((date) => eventOf(date, names, file)),
    'END:VCALENDAR',
  ];
  return lines.map(folded).join('');
}
