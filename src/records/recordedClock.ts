/**
 * When a fact was recorded: a hybrid logical clock, wall time to the millisecond and a counter of four hex digits, so that it sorts as
 * text. It only breaks ties. Source of the idea: Kulkarni, Demirbas, Madappa, Avva, Leone, "Logical Physical Clocks", OPODIS 2014
 * (MEMORY); the rule about clocks far ahead is a decision of this project.
 */
import { epochMsToInstant, instantToEpochMs } from '#core/calendar.ts';

/** A remote clock further ahead of our wall than this never drags ours. */
export const dragLimitMin = 60;

const counterEnd = 0x10000;
const wallOf = (recorded: string): string => recorded.slice(0, 24);
const counterOf = (recorded: string): number => Number.parseInt(recorded.slice(25), 16);
const written = (wall: string, counter: number): string => `${wall}-${counter.toString(16).padStart(4, '0')}`;

/**
 * The next recorded time of this writer: the wall, or, where the wall stutters or went back, the last one counted up. `last` is null
 * before the first fact. A full counter moves one millisecond on.
 */
export function nextRecorded(last: string | null, wallNow: string): string {
  if (last === null || wallNow > wallOf(last)) return written(wallNow, 0);
  const counter = counterOf(last) + 1;
  if (counter < counterEnd) return written(wallOf(last), counter);
  return written(epochMsToInstant(instantToEpochMs(wallOf(last)) + 1), 0);
}

/** What ours becomes on seeing a remote recorded time: the later of the two, but never one that is far ahead of the wall. */
export function observe(last: string | null, remote: string, wallNow: string): string | null {
  const aheadMin = (instantToEpochMs(wallOf(remote)) - instantToEpochMs(wallNow)) / 60_000;
  if (aheadMin > dragLimitMin || (last !== null && last >= remote)) return last;
  return remote;
}
