/** The day of a site and of a worker. What was stated once is corrected with a reason, not stated again. */
import type { ShiftRecord, WorkdayRecord } from '../book.ts';
import { keyOf } from '../common.ts';
import type { FactBody } from '../fact.ts';
import type { Ask } from './ask.ts';
import type { RefusalKey } from './refusal.ts';

function shiftOpened(ask: Ask<'shiftOpened.v1'>): void {
  const key = keyOf('shift', ask.fact.body.shiftId);
  if (ask.view.record(key)) ask.refuse('alreadyInBook', ['body/shiftId'], { key });
}

function conditionsNoted(ask: Ask<'conditionsNoted.v1'>): void {
  const key = keyOf('shift', ask.fact.body.shiftId);
  const shift = ask.view.record(key) as ShiftRecord | null;
  if (!shift) ask.refuse('recordUnknown', ['body/shiftId'], { key });
  if (shift?.conditions) ask.refuse('alreadyStated', ['body'], { what: 'conditions' });
}

function flowChecked(ask: Ask<'flowChecked.v1'>): void {
  const { flowCheckId, readings } = ask.fact.body;
  const key = keyOf('flowCheck', flowCheckId);
  if (ask.view.record(key)) ask.refuse('alreadyInBook', ['body/flowCheckId'], { key });
  for (const [at, { lowLPerMin, highLPerMin }] of readings.entries())
    if (lowLPerMin > highLPerMin) ask.refuse('lowAboveHigh', [`body/readings/${at}/lowLPerMin`]);
}

const workdayOf = (ask: Ask, workdayId: string): WorkdayRecord | null =>
  ask.view.record(keyOf('workday', workdayId)) as WorkdayRecord | null;

function hoursStated(ask: Ask<'workHoursStated.v1'>): void {
  const { workdayId, pieces } = ask.fact.body;
  if (workdayOf(ask as Ask, workdayId)?.pieces) ask.refuse('alreadyStated', ['body/pieces'], { what: 'hours' });
  for (const { key, place } of wrongPieces(pieces)) ask.refuse(key, [`body/pieces/${place}`]);
}

type Pieces = FactBody<'workHoursStated.v1'>['pieces'];

/** A piece ends after it starts, and nobody works two of them at one time. */
export const wrongPieces = (pieces: Pieces): readonly { readonly key: RefusalKey; readonly place: string }[] =>
  pieces.flatMap((piece, at) => {
    const backwards = piece.endedAt <= piece.startedAt;
    const overlaps = pieces
      .slice(0, at)
      .some((other) => other.startedAt < piece.endedAt && piece.startedAt < other.endedAt);
    return [
      ...(backwards ? [{ key: 'endBeforeStart' as const, place: `${at}/endedAt` }] : []),
      ...(overlaps ? [{ key: 'piecesOverlap' as const, place: `${at}` }] : []),
    ];
  });

function otherWorkAsked(ask: Ask<'otherWorkAsked.v1'>): void {
  if (workdayOf(ask as Ask, ask.fact.body.workdayId)?.otherWork)
    ask.refuse('alreadyStated', ['body'], { what: 'otherWork' });
}

function dayDescribed(ask: Ask<'dayDescribed.v1'>): void {
  if (workdayOf(ask as Ask, ask.fact.body.workdayId)?.regular)
    ask.refuse('alreadyStated', ['body/regular'], { what: 'regular' });
}

function minutesExplained(ask: Ask<'minutesExplained.v1'>): void {
  const { fromAt, toAt, as, sampleId, reason } = ask.fact.body;
  if (toAt <= fromAt) ask.refuse('endBeforeStart', ['body/toAt']);
  if (as !== 'unknown' && reason === null) ask.refuse('whyNeeded', ['body/reason']);
  if (as === 'sameAs' && sampleId === null) ask.refuse('entryNotComplete', ['body/sampleId']);
}

export const dayCases = {
  'shiftOpened.v1': shiftOpened,
  'conditionsNoted.v1': conditionsNoted,
  'flowChecked.v1': flowChecked,
  'workHoursStated.v1': hoursStated,
  'otherWorkAsked.v1': otherWorkAsked,
  'dayDescribed.v1': dayDescribed,
  'minutesExplained.v1': minutesExplained,
};
