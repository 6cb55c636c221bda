/** Which duties stand on a day of the calendar: those with a day that are not done. A yearly one stands on its next day. */
import type { Book } from '#records/book.ts';
import { isCitable } from '#reference/source.ts';
import { taskById } from '#reference/tasks.ts';
import type { Duty } from './duty.ts';

export interface CalendarDate {
  /** The duty's own id, so that a later file moves the same entry. */
  readonly uid: string;
  readonly on: string;
  readonly duty: Duty;
  /** Only what was read is cited. */
  readonly cited: boolean;
}

/** In the order of days. */
export function calendarDates(duties: readonly Duty[]): readonly CalendarDate[] {
  return duties
    .flatMap((duty): CalendarDate[] =>
      duty.done || duty.dueOn === null ? [] : [{ uid: duty.id, on: duty.dueOn, duty, cited: isCitable(duty.source) }],
    )
    .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.uid < b.uid ? -1 : 1));
}

/** How workers are called outside the book: not at all, by the firm's own identifier, by name. */
export type ShownAs = 'none' | 'identifiers' | 'names';

/** What ids are called in sentences about duties. A worker without an identifier is not named. */
export const dutyNames = (book: Book, shownAs: ShownAs) => ({
  worker: (id: string): string | null => {
    const person = book.people.get(id);
    if (shownAs === 'names') return person?.name ?? id;
    return shownAs === 'identifiers' ? (person?.identifier ?? null) : null;
  },
  site: (id: string): string => book.sites.get(id)?.name ?? id,
  task: (id: string): string => taskById(id)?.en ?? id,
  hidesNames: shownAs !== 'names',
});
