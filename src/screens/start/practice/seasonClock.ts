/** When things happened in the season: wall times on days counted back from today, so that it is always this season. */
import { addDays, instantsOfWallTime } from '#core/calendar.ts';
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import type { PracticeClock } from '../practiceClock.ts';

export interface SeasonClock {
  readonly zone: string;
  readonly today: string;
  /** The day so many days ago. */
  readonly on: (daysAgo: number) => string;
  readonly at: (daysAgo: number, time: string) => string;
  readonly fact: <K extends FactKind>(at: string, kind: K, body: FactBody<K>) => NewFact;
}

export function seasonClock({ zone, today, fact }: PracticeClock): SeasonClock {
  const instant = (day: string, time: string): string => {
    const meaning = instantsOfWallTime(day, time, zone);
    if (meaning.kind === 'once') return meaning.at;
    return meaning.kind === 'twice' ? meaning.first.at : instant(day, meaning.clockJumpsToTime);
  };
  const on = (daysAgo: number): string => addDays(today, -daysAgo);
  return { zone, today, on, at: (daysAgo, time) => instant(on(daysAgo), time), fact };
}
