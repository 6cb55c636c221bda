/** The sentences of a duty with the names of this book. */
import { dutyNames } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { Book } from '#records/book.ts';
import { becauseOfWhat as because, whatToDo as what } from '#words/duties.ts';

export const whatToDo = (duty: Duty, book: Book): string => what(duty, dutyNames(book, 'names'));

export const becauseOfWhat = (duty: Duty, book: Book): string => because(duty, dutyNames(book, 'names'));
