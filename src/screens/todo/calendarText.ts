/** The calendar file of a list: its maker is fetched when one is first asked for. */
import type { ShownAs } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { Book } from '#records/book.ts';

export interface CalendarWish {
  readonly duties: readonly Duty[];
  readonly book: Book;
  readonly madeAt: string;
  readonly shownAs: ShownAs;
}

export async function calendarText(wish: CalendarWish): Promise<string> {
  const { calendarFile } = await import('#documents/calendar.ts');
  return calendarFile(wish);
}
