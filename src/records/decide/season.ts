/** What is planned and made ready. Whoever is named may be known by another device only; the site must be here, since the day hangs on it. */
import type { DayPlanRecord, PlanRecord } from '../book.ts';
import { keyOf } from '../common.ts';
import type { NewFact } from '../fact.ts';
import { checkSampleNumber } from '../sampleNumber.ts';
import { type Ask, needsWhy } from './ask.ts';
import { statedBefore } from './revised.ts';

const blank = (text: string | null): boolean => text === null || text.trim() === '';

function refuseUnknownSite(ask: Ask, siteId: string, field: string): void {
  const key = keyOf('site', siteId);
  if (!ask.view.record(key)) ask.refuse('recordUnknown', [field], { key });
}

/** Said anew it follows what it knew of, a plan given up included: then it is taken up again. */
export function planDecided(ask: Ask<'measurementPlanned.v1'>): NewFact {
  const { fact, refuse, view } = ask;
  const { planId, choice, reason, slots, siteId, crewCount } = fact.body;
  if (choice === 'highest' && blank(reason)) refuse('whyNeeded', ['body/reason']);
  if (siteId !== null) refuseUnknownSite(ask as Ask, siteId, 'body/siteId');
  const workers = new Set(slots.map(({ workerId }) => workerId));
  if (workers.size > crewCount) refuse('moreThanCrew', ['body/slots'], { crewCount: String(crewCount) });
  const seen = new Set<string>();
  slots.forEach(({ workerId, workOn }, at) => {
    const slot = `${workerId} ${workOn}`;
    if (workOn !== null && seen.has(slot)) refuse('twiceOnDay', [`body/slots/${at}`], { workerId });
    seen.add(slot);
  });
  const plan = view.record(keyOf('plan', planId));
  const factIds = plan?.factIds ?? [];
  const knew = [...statedBefore(ask as Ask, factIds), ...statedBefore(ask as Ask, factIds, 'planDropped.v1')];
  return { ...fact, body: { ...fact.body, knew: knew.slice(0, 50) } };
}

function knownPlan(ask: Ask, planId: string): PlanRecord | null {
  const key = keyOf('plan', planId);
  const plan = ask.view.record(key) as PlanRecord | null;
  if (!plan) ask.refuse('recordUnknown', ['body/planId'], { key });
  return plan;
}

function dayMissed(ask: Ask<'plannedDayMissed.v1'>): void {
  const { planId, workerId, workOn } = ask.fact.body;
  const plan = knownPlan(ask as Ask, planId);
  if (!plan) return;
  // A day that was moved meanwhile may be missed under its old date: only the worker must be planned.
  if (!plan.slots.some((slot) => slot.workerId === workerId)) ask.refuse('notPlanned', ['body/workerId']);
  if (plan.missed.some((missed) => missed.workerId === workerId && missed.workOn === workOn))
    ask.refuse('alreadyStated', ['body/workOn'], { what: 'missed' });
}

export function dropDecided(ask: Ask<'planDropped.v1'>): NewFact {
  const { fact } = ask;
  needsWhy(ask as Ask);
  const plan = knownPlan(ask as Ask, fact.body.planId);
  if (plan?.dropped) ask.refuse('alreadyStated', ['body/planId'], { what: 'dropped' });
  const knew = statedBefore(ask as Ask, plan?.factIds ?? [], 'measurementPlanned.v1');
  return { ...fact, body: { ...fact.body, knew } };
}

/** One pump is worn by one worker; one worker may wear two, for two tasks. */
export function dayPreparedDecided(ask: Ask<'dayPrepared.v1'>): NewFact {
  const { fact, refuse, view } = ask;
  const { shiftId, wearers, sparePumpIds } = fact.body;
  refuseUnknownSite(ask as Ask, shiftId.slice(0, 12), 'body/shiftId');
  const wornBy = new Map<string, string>();
  wearers.forEach(({ pumpId, workerId }, at) => {
    if (pumpId === null) return;
    const other = wornBy.get(pumpId);
    if (other !== undefined && other !== workerId) refuse('pumpOnTwo', [`body/wearers/${at}/pumpId`], { pumpId });
    wornBy.set(pumpId, workerId);
  });
  sparePumpIds.forEach((pumpId, at) => {
    if (wornBy.has(pumpId)) refuse('pumpOnTwo', [`body/sparePumpIds/${at}`], { pumpId });
  });
  const day = view.record(keyOf('dayPlan', shiftId));
  return { ...fact, body: { ...fact.body, knew: statedBefore(ask as Ask, day?.factIds ?? []) } };
}

/** The book gives the numbers (see store/append.ts); here only that none stands twice. */
function labelsMade(ask: Ask<'labelsMade.v1'>): void {
  const { shiftId, labels } = ask.fact.body;
  refuseUnknownSite(ask as Ask, shiftId.slice(0, 12), 'body/shiftId');
  const day = ask.view.record(keyOf('dayPlan', shiftId)) as DayPlanRecord | null;
  const used = new Set((day?.labels ?? []).map(({ sampleNumber }) => sampleNumber));
  labels.forEach(({ sampleNumber }, at) => {
    const field = `body/labels/${at}/sampleNumber`;
    const checked = checkSampleNumber(sampleNumber);
    if (checked.kind === 'wrong') ask.refuse('numberWrong', [field], { sampleNumber, mistake: checked.mistake });
    if (used.has(sampleNumber)) ask.refuse('numberUsed', [field], { sampleNumber });
    used.add(sampleNumber);
  });
}

/** A label belongs to its site and day: a cassette of another one takes another number. */
export function refuseReserved(ask: Ask, sampleNumber: string, field: string, shiftId: string | null): void {
  const isDayPlan = (key: string): boolean => key.startsWith('dayPlan:');
  const days = ask.view.all().filter(({ key }) => isDayPlan(key)) as readonly DayPlanRecord[];
  const other = days.find(
    ({ id, labels }) => id !== shiftId && labels.some((one) => one.sampleNumber === sampleNumber),
  );
  const own = days.some(({ id, labels }) => id === shiftId && labels.some((one) => one.sampleNumber === sampleNumber));
  if (other !== undefined && !own) ask.refuse('numberReserved', [field], { sampleNumber, day: other.workOn });
}

export const seasonCases = { 'plannedDayMissed.v1': dayMissed, 'labelsMade.v1': labelsMade };
