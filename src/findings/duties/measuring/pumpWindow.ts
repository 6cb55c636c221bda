/** Flow checks and other cassettes of one pump that bear on one cassette: as far back and forward as a finding looks (checks.ts). */
import type { BoxRecord, FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { type BookIndex, endOfTime, type PumpRuns, shiftOfPump } from './bookIndex.ts';

export interface Gathered {
  readonly samples: Set<SampleRecord>;
  readonly checks: Set<FlowCheckRecord>;
  readonly boxes: Set<BoxRecord>;
}

/** First place whose key is not under `key`; places are in the order of keys. */
function placeFrom<T>(list: readonly T[], keyOf: (one: T) => string, key: string, orAfter = false): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const own = keyOf(list[middle] as T);
    if (own < key || (orAfter && own === key)) low = middle + 1;
    else high = middle;
  }
  return low;
}

const checkedAt = ({ happened }: FlowCheckRecord): string => happened.at;
const putOnAt = ({ putOn }: SampleRecord): string => putOn?.at ?? '';

/** Checks ahead of put-on: back to the last one with a cassette in line, and all of that one's shift. */
function aheadOf(pumpId: string, untilAt: string, index: BookIndex): FlowCheckRecord[] {
  const ahead = index.aheadByPump.get(pumpId) ?? [];
  let place = placeFrom(ahead, checkedAt, untilAt, true) - 1;
  const found: FlowCheckRecord[] = [];
  let sinceAt: string | null = null;
  for (; place >= 0; place--) {
    const check = ahead[place] as FlowCheckRecord;
    if (sinceAt !== null && check.happened.at < sinceAt) break;
    found.push(check);
    if (sinceAt !== null || check.inLine === 'nothing') continue;
    sinceAt = check.happened.at;
    for (const other of index.aheadByShift.get(shiftOfPump(pumpId, check.shiftId)) ?? [])
      if (other.happened.at <= untilAt) found.push(other);
  }
  return found;
}

/** Checks past the stop, to the next one marked before. */
function pastOf(pumpId: string, fromAt: string, index: BookIndex): FlowCheckRecord[] {
  const checks = index.checksByPump.get(pumpId) ?? [];
  const found: FlowCheckRecord[] = [];
  let untilAt = endOfTime;
  for (let place = placeFrom(checks, checkedAt, fromAt); place < checks.length; place++) {
    const check = checks[place] as FlowCheckRecord;
    if (check.happened.at > untilAt) break;
    found.push(check);
    if (check.purpose === 'before') untilAt = check.happened.at;
  }
  return found;
}

/** The first and the last moment among the checks and one more. */
function spanOf(checks: readonly FlowCheckRecord[], andAt: string): readonly [string, string] {
  const instants = [...checks.map(checkedAt), andAt].sort();
  return [instants[0] ?? andAt, instants.at(-1) ?? andAt];
}

/** Cassettes that went on with this pump from one moment to another. */
function addPutOnWithin({ runs }: PumpRuns, fromAt: string, toAt: string, into: Set<SampleRecord>): void {
  for (let place = placeFrom(runs, putOnAt, fromAt); place < runs.length; place++) {
    const run = runs[place] as SampleRecord;
    if (putOnAt(run) > toAt) break;
    into.add(run);
  }
}

/** Cassettes whose time on this pump overlaps. */
function addOverlapping({ runs, latestStop }: PumpRuns, fromAt: string, toAt: string, into: Set<SampleRecord>): void {
  for (let place = placeFrom(runs, putOnAt, toAt) - 1; place >= 0; place--) {
    if ((latestStop[place] ?? '') <= fromAt) break;
    into.add(runs[place] as SampleRecord);
  }
}

/** Whatever may speak for a cassette because of its pump. */
export function addPump(sample: SampleRecord, index: BookIndex, into: Gathered): void {
  const { pumpId, putOn, stopped } = sample;
  if (pumpId === null) return;
  const onAt = putOn?.at ?? endOfTime;
  const before = aheadOf(pumpId, onAt, index);
  const after = stopped ? pastOf(pumpId, stopped.at, index) : [];
  for (const check of before) into.checks.add(check);
  for (const check of after) into.checks.add(check);
  const runs = index.runsByPump.get(pumpId);
  if (!runs) return;
  addPutOnWithin(runs, spanOf(before, onAt)[0], onAt, into.samples);
  if (stopped) addPutOnWithin(runs, stopped.at, spanOf(after, stopped.at)[1], into.samples);
  if (putOn) addOverlapping(runs, putOn.at, stopped?.at ?? endOfTime, into.samples);
}
