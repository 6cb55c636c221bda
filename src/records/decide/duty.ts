/** What was done of what the rule asks, and who asked for records. */
import type { DutyRecord } from '../book.ts';
import { keyOf } from '../common.ts';
import type { NewFact } from '../fact.ts';
import { type Ask, needsWhy } from './ask.ts';
import { knownPerson, refuseLaterDay } from './roster.ts';

/** Something may be done again, on another day. Who did it may be known by another device only. */
function dutyDone(ask: Ask<'dutyDone.v1'>): void {
  const { dutyId, doneOn, doneById } = ask.fact.body;
  refuseLaterDay(ask as Ask, 'body/doneOn', doneOn);
  const duty = ask.view.record(keyOf('duty', dutyId)) as DutyRecord | null;
  if (duty?.done.some((done) => done.doneOn === doneOn && done.doneById === doneById))
    ask.refuse('alreadyStated', ['body/doneOn'], { what: 'done' });
}

/** A reopening names what it takes back, so that what is done afterwards, or elsewhere meanwhile, counts. */
export function reopeningDecided(ask: Ask<'dutyReopened.v1'>): NewFact {
  const { fact } = ask;
  needsWhy(ask as Ask);
  const duty = ask.view.record(keyOf('duty', fact.body.dutyId)) as DutyRecord | null;
  const knew = (duty?.done ?? []).map(({ factId }) => factId);
  if (knew.length === 0) ask.refuse('notDone', ['body/dutyId']);
  return { ...fact, body: { ...fact.body, knew: knew.slice(-200) } };
}

function requested(ask: Ask<'recordsRequested.v1'>): void {
  const { requestId, askedOn, personId } = ask.fact.body;
  const key = keyOf('request', requestId);
  if (ask.view.record(key)) ask.refuse('alreadyInBook', ['body/requestId'], { key });
  refuseLaterDay(ask as Ask, 'body/askedOn', askedOn);
  if (personId !== null) knownPerson(ask as Ask, personId, 'body/personId');
}

export const dutyCases = { 'dutyDone.v1': dutyDone, 'recordsRequested.v1': requested };
