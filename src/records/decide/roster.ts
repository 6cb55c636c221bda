/** Who did what where; who works here; what is new; whom a measurement stands for. What was noted wrongly is struck or corrected. */
import { dayOf } from '#core/calendar.ts';
import type { PersonRecord, ShiftRecord, WorkdayRecord } from '../book.ts';
import { readFact } from '../canonical.ts';
import { keyOf } from '../common.ts';
import type { NewFact } from '../fact.ts';
import { type Ask, needsWhy } from './ask.ts';

/** `site.day` and `worker.day` */
const dayIn = (id: string): string => id.slice(13);

/** A calendar day that has not come yet at the place of the entry. */
export function refuseLaterDay({ fact, context, refuse }: Ask, field: string, day: string): void {
  const today = dayOf(context.now, fact.happened.zone);
  if (day > today) refuse('dayInFuture', [field], { day, today });
}

const workdayIn = (ask: Ask, id: string): WorkdayRecord | null =>
  ask.view.record(keyOf('workday', id)) as WorkdayRecord | null;

/** The person, or a refusal that nobody of that name is in this book. */
export function knownPerson(ask: Ask, personId: string, field: string): PersonRecord | null {
  const key = keyOf('person', personId);
  const person = ask.view.record(key) as PersonRecord | null;
  if (!person) ask.refuse('recordUnknown', [field], { key });
  return person;
}

/** The shift itself may have been opened on another device: its id tells site and day. */
function workNoted(ask: Ask<'workNoted.v1'>): void {
  const { workdayId, shiftId } = ask.fact.body;
  const day = dayIn(workdayId);
  if (day !== dayIn(shiftId)) ask.refuse('entryNotComplete', ['body/shiftId']);
  refuseLaterDay(ask as Ask, 'body/workdayId', day);
  const person = knownPerson(ask as Ask, workdayId.slice(0, 12), 'body/workdayId');
  const { fromOn = null, toOn = null } = person?.employed ?? {};
  if ((fromOn !== null && day < fromOn) || (toOn !== null && day > toOn))
    ask.caution('notEmployedThen', ['body/workdayId'], { name: person?.name ?? '', day });
  if (workdayIn(ask as Ask, workdayId)?.worked?.some((entry) => entry.shiftId === shiftId))
    ask.refuse('alreadyStated', ['body/shiftId'], { what: 'work' });
}

/** The roster entry as it was written; null, and a refusal, where this day has none of that id. */
function notedFact({ fact, view, refuse }: Ask<'workStruck.v1'>): boolean {
  const { noted, workdayId } = fact.body;
  const read = readFact(view.fresh.facts.get(noted) ?? '');
  const isHere = read.kind === 'known' && read.fact.kind === 'workNoted.v1' && read.fact.body.workdayId === workdayId;
  if (!isHere) refuse('factUnknown', ['body/noted'], { factId: noted });
  return isHere;
}

/** A strike names the corrections that it knew of, so that one made elsewhere meanwhile keeps the entry. */
export function strikeDecided(ask: Ask<'workStruck.v1'>): NewFact {
  const { fact } = ask;
  needsWhy(ask as Ask);
  const { noted, workdayId } = fact.body;
  if (!notedFact(ask)) return fact;
  const workday = workdayIn(ask as Ask, workdayId);
  if (!workday?.worked?.some(({ factId }) => factId === noted)) ask.refuse('alreadyStruck', ['body/noted']);
  const knew = (workday?.strikes ?? []).flatMap(({ factId, correctionId }) => (factId === noted ? [correctionId] : []));
  return { ...fact, body: { ...fact.body, knew } };
}

function changesAsked(ask: Ask<'changesAsked.v1'>): void {
  const key = keyOf('shift', ask.fact.body.shiftId);
  const shift = ask.view.record(key) as ShiftRecord | null;
  if (!shift) ask.refuse('recordUnknown', ['body/shiftId'], { key });
  if (shift?.changes) ask.refuse('alreadyStated', ['body'], { what: 'changes' });
}

/** Others than the one who was measured. Whoever is named may be known by another device only. */
function representsStated(ask: Ask<'representsStated.v1'>): void {
  const { workdayId, workerIds } = ask.fact.body;
  refuseLaterDay(ask as Ask, 'body/workdayId', dayIn(workdayId));
  knownPerson(ask as Ask, workdayId.slice(0, 12), 'body/workdayId');
  const own = workerIds.indexOf(workdayId.slice(0, 12));
  if (own >= 0) ask.refuse('representsSelf', [`body/workerIds/${own}`]);
}

export const rosterCases = {
  'workNoted.v1': workNoted,
  'changesAsked.v1': changesAsked,
  'representsStated.v1': representsStated,
};
