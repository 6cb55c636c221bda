/** When things happened in the practice book: wall times of yesterday, and today's as minutes before now. */
import { addDays, addMinutes, dayOf, instantsOfWallTime, minutesBetween, offsetMinAt } from '#core/calendar.ts';
import type { FactBody, FactKind, Happened, NewFact } from '#records/fact.ts';
import { newFact } from '#store/newFact.ts';
import { practice as words } from '#words/practice.ts';

export interface PracticeClock {
  readonly zone: string;
  readonly today: string;
  readonly yesterday: string;
  /** Instant of a wall time yesterday. */
  readonly at: (time: string) => string;
  /** Instant so many minutes ago, drawn together when the day is too young for it. */
  readonly ago: (min: number) => string;
  readonly fact: <K extends FactKind>(at: string, kind: K, body: FactBody<K>) => NewFact;
}

/** The earliest moment of today's practice shift lies this many minutes back. */
const longestAgoMin = 150;

export function practiceClock(now: string, zone: string, by: string): PracticeClock {
  const today = dayOf(now, zone);
  const yesterday = addDays(today, -1);
  const at = (time: string): string => {
    const meaning = instantsOfWallTime(yesterday, time, zone);
    if (meaning.kind === 'once') return meaning.at;
    return meaning.kind === 'twice' ? meaning.first.at : at(meaning.clockJumpsToTime);
  };
  const midnight = instantsOfWallTime(today, '00:00', zone);
  const sinceMidnightMin = midnight.kind === 'once' ? minutesBetween(midnight.at, now) : longestAgoMin;
  const share = Math.min(1, sinceMidnightMin / longestAgoMin);
  const happenedAt = (instant: string): Happened => ({
    at: instant,
    zone,
    offsetMin: offsetMinAt(instant, zone),
    entry: 'typed',
    from: words.from,
  });
  return {
    zone,
    today,
    yesterday,
    at,
    ago: (min) => addMinutes(now, -min * share),
    fact: (instant, kind, body) => newFact(kind, body, { happened: happenedAt(instant), by }),
  };
}
