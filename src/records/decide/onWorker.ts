/** What happens while the pump is on the worker, and that one pump and one worker are in one place at a time. */

import { addMinutes } from '#core/calendar.ts';
import type { Interval, SampleRecord } from '../book.ts';
import type { NewFact } from '../fact.ts';
import { type Ask, momentParams } from './ask.ts';
import { aheadLimitMin } from './entry.ts';
import type { RefusalKey } from './refusal.ts';
import { airSample } from './sample.ts';

export type OnWorker = Extract<
  NewFact,
  {
    kind:
      | 'pumpLookedAt.v1'
      | 'leadAreaLeft.v1'
      | 'leadAreaEntered.v1'
      | 'pumpTakenOff.v1'
      | 'pumpPutBackOn.v1'
      | 'pumpFaulted.v1';
  }
>;

const isOff = ({ state }: Interval): boolean => state === 'offRunning' || state === 'offStopped';

/** Why this does not follow on what the pump does now; null when it does. */
function misfit(kind: OnWorker['kind'], now: Interval): RefusalKey | null {
  switch (kind) {
    case 'leadAreaLeft.v1':
      return isOff(now) ? 'alreadyOff' : now.awayFromLead ? 'alreadyAway' : null;
    case 'leadAreaEntered.v1':
      return now.awayFromLead ? null : 'notAway';
    case 'pumpTakenOff.v1':
      return isOff(now) ? 'alreadyOff' : null;
    case 'pumpPutBackOn.v1':
      return isOff(now) || now.state === 'doubtful' ? null : 'notOff';
    default:
      return null;
  }
}

/** Between put on and stop. What was typed afterwards into the middle of the line is taken; the fold shows what does not fit. */
export function onWorker(ask: Ask<OnWorker['kind']>): void {
  const sample = airSample(ask as Ask);
  if (!sample) return;
  const { sampleNumber } = sample;
  const { at, zone } = ask.fact.happened;
  if (!sample.putOn) {
    ask.refuse('notPutOn', ['body/sampleId'], { sampleNumber });
    return;
  }
  if (at < sample.putOn.at) {
    ask.refuse('beforePutOn', ['happened/at'], { sampleNumber, ...momentParams(sample.putOn.at, zone) });
    return;
  }
  if (sample.stopped && at > sample.stopped.at) {
    ask.refuse('afterStopped', ['happened/at'], { sampleNumber, ...momentParams(sample.stopped.at, zone) });
    return;
  }
  const now = sample.intervals.at(-1);
  if (!now || now.toAt !== null || at < now.fromAt) return;
  const key = misfit(ask.fact.kind, now);
  if (key) ask.refuse(key, ['body/sampleId'], { sampleNumber, ...momentParams(now.fromAt, zone) });
}

/** A tap takes its time from the clock; after the clock went back while the pump runs, the time is typed from a watch. */
export function refuseClockSetBack(ask: Ask): void {
  const { fact, view, context } = ask;
  const id = (fact.body as { sampleId?: unknown }).sampleId;
  const sample = typeof id === 'string' ? view.sample(id) : null;
  if (fact.happened.entry !== 'tapped' || !sample?.putOn || sample.stopped) return;
  const seenAt = [sample.putOn.at, context.lastSeenAt ?? ''].sort().at(-1) ?? sample.putOn.at;
  if (addMinutes(context.now, aheadLimitMin) < seenAt)
    ask.refuse('clockSetBack', ['happened/at'], { at: seenAt, zone: fact.happened.zone });
}

const overlaps = (a: SampleRecord, b: SampleRecord): boolean =>
  (a.stopped === null || (b.putOn !== null && a.stopped.at > b.putOn.at)) &&
  (b.stopped === null || (a.putOn !== null && b.stopped.at > a.putOn.at));

/** One pump and one worker, once at a time; asked after the whole call, so that a cassette change may come in any order. */
export function refuseTwice(ask: Ask, sampleId: string): void {
  const sample = ask.view.sample(sampleId);
  if (!sample?.putOn || sample.voided) return;
  for (const other of ask.view.samples()) {
    if (other.id === sample.id || !other.putOn || other.voided || !overlaps(sample, other)) continue;
    const params = { sampleNumber: other.sampleNumber, ...momentParams(other.putOn.at, ask.fact.happened.zone) };
    if (other.pumpId === sample.pumpId) ask.refuse('pumpRunningElsewhere', ['body/sampleId'], params);
    if (other.workerId === sample.workerId) ask.refuse('workerWearsAnother', ['body/sampleId'], params);
  }
}
