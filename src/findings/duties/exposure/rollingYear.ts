/** Any twelve consecutive months of the calendar, as windows that end on a day. */
import { addDays, addMonths } from '#core/calendar.ts';

export interface CountedDay {
  readonly on: string;
  readonly presumed: boolean;
}

/** First day of the months that end on a day: those that end on 28 February 2027 begin on 1 March 2026. */
export const windowFrom = (toOn: string, months: number): string => addDays(addMonths(toOn, -months), 1);

export interface Window {
  readonly fromOn: string;
  readonly toOn: string;
  readonly count: number;
  readonly presumedCount: number;
}

const windowOf = (counted: readonly CountedDay[], fromOn: string, toOn: string): Window => ({
  fromOn,
  toOn,
  count: counted.length,
  presumedCount: counted.filter(({ presumed }) => presumed).length,
});

/** The window with the most days, the first of several; null where no day counts. `days` in order, each once. */
export function mostWithin(days: readonly CountedDay[], months: number): Window | null {
  let most: Window | null = null;
  let first = 0;
  for (const [place, { on }] of days.entries()) {
    const fromOn = windowFrom(on, months);
    while ((days[first]?.on ?? on) < fromOn) first++;
    if (place - first + 1 > (most?.count ?? 0)) most = windowOf(days.slice(first, place + 1), fromOn, on);
  }
  return most;
}

/** The months that end on a day. */
export function runningWithin(days: readonly CountedDay[], months: number, toOn: string): Window {
  const fromOn = windowFrom(toOn, months);
  return windowOf(
    days.filter(({ on }) => fromOn <= on && on <= toOn),
    fromOn,
    toOn,
  );
}
