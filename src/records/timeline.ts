/**
 * The time line of one sample, from the facts of the day. Ordered by when things happened, because times may be typed afterwards in
 * any order. What is not known to have been running is `doubtful`, never worn.
 */
import type { Interval } from './book.ts';
import type { Fact } from './fact.ts';
import { awayOf, closeAt, currentOf, emptyLine, type Line, openWith, restate, stoppedByDisplay } from './line.ts';

export type TimelineKind =
  | 'pumpPutOn.v1'
  | 'pumpPutBackOn.v1'
  | 'leadAreaEntered.v1'
  | 'pumpLookedAt.v1'
  | 'pumpFaulted.v1'
  | 'leadAreaLeft.v1'
  | 'pumpTakenOff.v1'
  | 'pumpStopped.v1';

/** At one and the same minute things are taken in this order. */
const rank: Readonly<Record<TimelineKind, number>> = {
  'pumpPutOn.v1': 0,
  'pumpPutBackOn.v1': 1,
  'leadAreaEntered.v1': 2,
  'pumpLookedAt.v1': 3,
  'pumpFaulted.v1': 4,
  'leadAreaLeft.v1': 5,
  'pumpTakenOff.v1': 6,
  'pumpStopped.v1': 7,
};

type TimelineFact = Fact<TimelineKind>;
const isOfTimeline = (fact: Fact): fact is TimelineFact => Object.hasOwn(rank, fact.kind);

export interface Timeline {
  readonly intervals: readonly Interval[];
  /** Facts that do not fit where they stand: put on twice, before it was put on, after it was stopped. */
  readonly outOfOrder: readonly string[];
  readonly putOn: Fact<'pumpPutOn.v1'> | null;
  readonly stopped: Fact<'pumpStopped.v1'> | null;
}

const here = { awayFromLead: false, reason: null };

/** Found standing still: since it was last seen running nobody knows, unless its display tells the minute. */
function foundStopped(line: Line, fact: TimelineFact, pumpMin: number | null): void {
  const stoppedAt = pumpMin === null ? null : stoppedByDisplay(line, pumpMin, fact.happened.at);
  // A display that contradicts the last look leaves the doubt, and makes it longer.
  if (stoppedAt !== null && stoppedAt >= line.lastSureAt) restate(line, stoppedAt, 'offStopped', fact.id);
  else restate(line, stoppedAt ?? line.lastSureAt, 'doubtful', fact.id);
  openWith(line, fact, 'offStopped', awayOf(line));
}

function lookedAt(line: Line, fact: Fact<'pumpLookedAt.v1'>): void {
  const { running, inPlace } = fact.body;
  if (!line.onWorker) return;
  if (!running) {
    if (currentOf(line)?.state !== 'offStopped') foundStopped(line, fact, null);
    return;
  }
  if (!inPlace) restate(line, line.lastSureAt, 'doubtful', fact.id);
  if (!inPlace || currentOf(line)?.state !== 'worn') openWith(line, fact, 'worn', awayOf(line));
  line.lastSureAt = fact.happened.at;
}

function faulted(line: Line, fact: Fact<'pumpFaulted.v1'>): void {
  const { fault, pumpMin } = fact.body;
  // A flow that dropped is told by the flow check afterwards; the pump ran.
  if (!line.onWorker || fault === 'flowDropped') return;
  if (fault === 'stopped') {
    foundStopped(line, fact, pumpMin);
    return;
  }
  restate(line, line.lastSureAt, 'doubtful', fact.id);
  openWith(line, fact, 'doubtful', awayOf(line));
}

function takenOff(line: Line, fact: Fact<'pumpTakenOff.v1'>): void {
  const { stillRunning, awayFromLead, reason } = fact.body;
  if (!line.onWorker) line.outOfOrder.push(fact.id);
  openWith(line, fact, stillRunning ? 'offRunning' : 'offStopped', { awayFromLead, reason });
  line.onWorker = false;
}

function putBackOn(line: Line, fact: Fact<'pumpPutBackOn.v1'>): void {
  if (line.onWorker && currentOf(line)?.state === 'worn') line.outOfOrder.push(fact.id);
  else openWith(line, fact, 'worn', here);
  line.onWorker = true;
  line.lastSureAt = fact.happened.at;
}

function crossed(line: Line, fact: Fact<'leadAreaLeft.v1'> | Fact<'leadAreaEntered.v1'>): void {
  const reason = fact.kind === 'leadAreaLeft.v1' ? fact.body.reason : null;
  const current = currentOf(line);
  if (!line.onWorker || !current || current.awayFromLead === (reason !== null)) line.outOfOrder.push(fact.id);
  else openWith(line, fact, current.state, { awayFromLead: reason !== null, reason });
}

function putOn(line: Line, fact: Fact<'pumpPutOn.v1'>): void {
  openWith(line, fact, 'worn', here);
  line.onWorker = true;
  line.lastSureAt = fact.happened.at;
}

/** One fact between the first put on and the stop. */
function step(line: Line, fact: TimelineFact): void {
  switch (fact.kind) {
    case 'pumpLookedAt.v1':
      lookedAt(line, fact);
      break;
    case 'pumpFaulted.v1':
      faulted(line, fact);
      break;
    case 'pumpTakenOff.v1':
      takenOff(line, fact);
      break;
    case 'pumpPutBackOn.v1':
      putBackOn(line, fact);
      break;
    case 'leadAreaLeft.v1':
    case 'leadAreaEntered.v1':
      crossed(line, fact);
      break;
    case 'pumpPutOn.v1':
    case 'pumpStopped.v1':
      line.outOfOrder.push(fact.id);
      break;
    default:
      fact satisfies never;
  }
}

const before = (a: TimelineFact, b: TimelineFact): number =>
  a.happened.at < b.happened.at ? -1 : a.happened.at > b.happened.at ? 1 : rank[a.kind] - rank[b.kind];

/** Draws the line. A stop that was tapped by mistake is no stop. Of two the first counts: the shorter run is the careful one. */
export function timelineOf(facts: readonly Fact[]): Timeline {
  const mistaken = new Set(facts.flatMap((f) => (f.kind === 'stoppedByMistake.v1' ? [f.body.stopFactId] : [])));
  const moments = facts.filter(isOfTimeline).filter(({ id }) => !mistaken.has(id));
  const line = emptyLine();
  let first: Fact<'pumpPutOn.v1'> | null = null;
  let stopped: Fact<'pumpStopped.v1'> | null = null;
  for (const fact of moments.sort(before)) {
    if (stopped) line.outOfOrder.push(fact.id);
    else if (first && fact.kind === 'pumpStopped.v1') {
      stopped = fact;
      closeAt(line, fact.happened.at);
    } else if (!first && fact.kind === 'pumpPutOn.v1') {
      first = fact;
      putOn(line, fact);
    } else if (first) step(line, fact);
    else line.outOfOrder.push(fact.id);
  }
  return { intervals: line.intervals, outOfOrder: line.outOfOrder, putOn: first, stopped };
}
