/**
 * What of a whole book bears on which worker's day, so that each day gets a small slice and ten thousand samples are read at speed. The
 * order of every list is the order of the book: where a finding takes the first of several, it takes the same one from the slice.
 */
import type { Book, BoxRecord, FlowCheckRecord, ReportedRecord, SampleRecord } from '#records/book.ts';

/** Above every instant. */
export const endOfTime = '\uffff';

/** Cassettes of one pump by the moment they went on. */
export interface PumpRuns {
  readonly runs: readonly SampleRecord[];
  /** By place in `runs`: the latest stop among it and those before; `endOfTime` where one still runs. */
  readonly latestStop: readonly string[];
}

export interface BookIndex {
  readonly airByWorkday: ReadonlyMap<string, readonly SampleRecord[]>;
  readonly blanksByShift: ReadonlyMap<string, readonly SampleRecord[]>;
  readonly byNumber: ReadonlyMap<string, readonly SampleRecord[]>;
  readonly boxesBySample: ReadonlyMap<string, readonly BoxRecord[]>;
  readonly runsByPump: ReadonlyMap<string, PumpRuns>;
  /** Marked before or between, and marked after or before or between: by time, then id. */
  readonly checksByPump: ReadonlyMap<string, readonly FlowCheckRecord[]>;
  readonly aheadByPump: ReadonlyMap<string, readonly FlowCheckRecord[]>;
  /** Marked before or between, by pump and shift. */
  readonly aheadByShift: ReadonlyMap<string, readonly FlowCheckRecord[]>;
  /** Reported ones of a worker of the book, by work day id. */
  readonly reportedByWorkday: ReadonlyMap<string, readonly ReportedRecord[]>;
  /** Place in the book of a sample, a check or a box. */
  readonly placeOf: ReadonlyMap<SampleRecord | FlowCheckRecord | BoxRecord, number>;
}

export const shiftOfPump = (pumpId: string, shiftId: string): string => `${pumpId} ${shiftId}`;

function add<T>(byKey: Map<string, T[]>, key: string, one: T): void {
  const found = byKey.get(key);
  if (found) found.push(one);
  else byKey.set(key, [one]);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const byTime = (a: FlowCheckRecord, b: FlowCheckRecord): number =>
  compare(a.happened.at, b.happened.at) || compare(a.id, b.id);
const byPutOn = (a: SampleRecord, b: SampleRecord): number =>
  compare(a.putOn?.at ?? '', b.putOn?.at ?? '') || compare(a.id, b.id);

/** Written down in the order of time, as nearly always, it is left as it is. */
function ordered<T>(list: T[], compareTwo: (a: T, b: T) => number): T[] {
  for (let i = 1; i < list.length; i++)
    if (compareTwo(list[i - 1] as T, list[i] as T) > 0) return list.sort(compareTwo);
  return list;
}

function runsOf(samples: SampleRecord[]): PumpRuns {
  const runs = ordered(samples, byPutOn);
  const latestStop: string[] = [];
  let latest = '';
  for (const { stopped } of runs) {
    const at = stopped?.at ?? endOfTime;
    if (at > latest) latest = at;
    latestStop.push(latest);
  }
  return { runs, latestStop };
}

const mapped = <T, U>(byKey: ReadonlyMap<string, T>, make: (one: T) => U): Map<string, U> =>
  new Map([...byKey].map(([key, one]) => [key, make(one)]));

function samplesIn(book: Book, placeOf: Map<object, number>) {
  const airByWorkday = new Map<string, SampleRecord[]>();
  const blanksByShift = new Map<string, SampleRecord[]>();
  const byNumber = new Map<string, SampleRecord[]>();
  const onPump = new Map<string, SampleRecord[]>();
  for (const sample of book.samples.values()) {
    placeOf.set(sample, placeOf.size);
    add(byNumber, sample.sampleNumber, sample);
    if (sample.pumpId !== null && sample.putOn) add(onPump, sample.pumpId, sample);
    if (sample.sampleKind === 'blank') add(blanksByShift, sample.shiftId, sample);
    else if (sample.workdayId !== null) add(airByWorkday, sample.workdayId, sample);
  }
  return { airByWorkday, blanksByShift, byNumber, runsByPump: mapped(onPump, runsOf) };
}

function checksIn(book: Book, placeOf: Map<object, number>) {
  const checksByPump = new Map<string, FlowCheckRecord[]>();
  const aheadByPump = new Map<string, FlowCheckRecord[]>();
  const aheadByShift = new Map<string, FlowCheckRecord[]>();
  for (const check of book.flowChecks.values()) {
    placeOf.set(check, placeOf.size);
    add(checksByPump, check.pumpId, check);
    if (check.purpose === 'after') continue;
    add(aheadByPump, check.pumpId, check);
    add(aheadByShift, shiftOfPump(check.pumpId, check.shiftId), check);
  }
  for (const checks of checksByPump.values()) ordered(checks, byTime);
  for (const checks of aheadByPump.values()) ordered(checks, byTime);
  return { checksByPump, aheadByPump, aheadByShift };
}

export function bookIndexOf(book: Book): BookIndex {
  const placeOf = new Map<SampleRecord | FlowCheckRecord | BoxRecord, number>();
  const samples = samplesIn(book, placeOf);
  const checks = checksIn(book, placeOf);
  const boxesBySample = new Map<string, BoxRecord[]>();
  for (const box of book.boxes.values()) {
    placeOf.set(box, placeOf.size);
    for (const id of new Set(box.packed.sampleIds)) add(boxesBySample, id, box);
  }
  const reportedByWorkday = new Map<string, ReportedRecord[]>();
  for (const one of book.reported.values())
    if (one.workerId !== null) add(reportedByWorkday, `${one.workerId}.${one.workOn}`, one);
  return { ...samples, ...checks, boxesBySample, reportedByWorkday, placeOf };
}
