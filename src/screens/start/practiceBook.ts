/**
 * Writes the practice book: a season, two workers' finished shift of yesterday with a cassette change, field blanks and results, and
 * today's shift with one pump running. Loaded only when asked for; its facts go through the same door as any other.
 */
import { dayOf } from '#core/calendar.ts';
import type { NewFact } from '#records/fact.ts';
import { deviceZone, newId, now } from '#store/device.ts';
import { setHolder } from '#store/holder.ts';
import { newBook } from '#store/opening.ts';
import { type FailedWhy, write } from '#store/write.ts';
import { practice as words } from '#words/practice.ts';
import { type PracticeClock, practiceClock } from './practiceClock.ts';
import { practiceRegisters } from './practiceRegisters.ts';
import { practiceBox, practiceResults } from './practiceResults.ts';
import { practiceToday } from './practiceToday.ts';
import { practiceYesterday } from './practiceYesterday.ts';

/** Ids of everything the practice book names, drawn anew each time. */
export function practiceIds() {
  const drawn = (): string => newId();
  return {
    site: drawn(),
    supervisor: drawn(),
    first: drawn(),
    second: drawn(),
    restorer: drawn(),
    painter: drawn(),
    pumpOne: drawn(),
    pumpTwo: drawn(),
    pumpThree: drawn(),
    piston: drawn(),
    tube: drawn(),
    lot: drawn(),
    laboratory: drawn(),
    morning: drawn(),
    afternoon: drawn(),
    wholeDay: drawn(),
    blankOne: drawn(),
    blankTwo: drawn(),
    today: drawn(),
    box: drawn(),
  };
}
export type PracticeIds = ReturnType<typeof practiceIds>;

export interface Began {
  /** null when it is written; else why not. */
  readonly why: FailedWhy | null;
  /** Written after the two days. */
  readonly later: readonly NewFact[];
}
/** Writes what comes between the registers and the two days. */
export type Before = (ids: PracticeIds, clock: PracticeClock) => Promise<Began>;

async function put(facts: readonly NewFact[]): Promise<FailedWhy | null> {
  const written = await write(facts);
  if (written.kind === 'written') return null;
  return written.kind === 'failed' ? written.why : 'unknown';
}

/** `before`: the season, or nothing. null when it is written and open; else why not. */
export async function writePracticeBook(
  before: Before = async () => ({ why: null, later: [] }),
): Promise<FailedWhy | null> {
  const begun = await newBook({ firmName: words.firm, practice: true });
  if (begun.kind !== 'written') return begun.kind === 'failed' ? begun.why : 'unknown';
  const ids = practiceIds();
  const zone = deviceZone();
  const clock = practiceClock(now(), zone, ids.supervisor);
  const today = dayOf(now(), zone);
  const registered = await put(practiceRegisters(ids, clock, today));
  if (registered !== null) return registered;
  const { why, later } = await before(ids, clock);
  const failed =
    why ??
    (await put([
      ...practiceYesterday(ids, clock),
      ...practiceBox(ids, clock),
      ...practiceResults(ids, clock),
      ...practiceToday(ids, clock),
      ...later,
    ]));
  if (failed !== null) return failed;
  await setHolder(ids.supervisor);
  return null;
}
