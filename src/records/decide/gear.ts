/** Whose gear it is, charges, certificates, and gear found bad: a doubt needs no proof, and what takes it away needs its reason. */
import { subjectOf } from '../about.ts';
import type { AnyRecord, LotRecord, MeterRecord, PumpRecord } from '../book.ts';
import type { FactBody, FactKind, NewFact } from '../fact.ts';
import { type Ask, needsWhy } from './ask.ts';
import { same, statedBefore } from './revised.ts';
import { refuseLaterDay } from './roster.ts';

type GearRecord = PumpRecord | MeterRecord | LotRecord;

/** The gear that it is about, or a refusal that it is not in this book. */
function knownGear(ask: Ask, field: string): GearRecord | null {
  const key = subjectOf(ask.fact) ?? '';
  const record: AnyRecord | null = ask.view.record(key);
  if (!record) ask.refuse('recordUnknown', [field], { key });
  return record as GearRecord | null;
}

export function heldDecided(ask: Ask<'gearHeld.v1'>): NewFact {
  const { fact, refuse } = ask;
  const gear = knownGear(ask as Ask, 'body/gearId');
  const { held, from, backOn, retired } = fact.body;
  if (held === 'owned' && backOn !== null) refuse('ownGoesBack', ['body/backOn']);
  if (gear?.conflicts.length === 0 && same(gear.held, { held, from, backOn, retired })) refuse('sameValue', ['body']);
  return { ...fact, body: { ...fact.body, knew: statedBefore(ask as Ask, gear?.factIds ?? []) } };
}

export const certificateFault = ({
  certificateOn,
  dueOn,
}: FactBody<'certificateEntered.v1'>): 'dueBeforeCertificate' | null =>
  dueOn !== null && dueOn <= certificateOn ? 'dueBeforeCertificate' : null;

export function certificateDecided(ask: Ask<'certificateEntered.v1'>): NewFact {
  const { fact, refuse } = ask;
  const meter = knownGear(ask as Ask, 'body/meterId');
  refuseLaterDay(ask as Ask, 'body/certificateOn', fact.body.certificateOn);
  const fault = certificateFault(fact.body);
  if (fault) refuse(fault, ['body/dueOn']);
  return { ...fact, body: { ...fact.body, knew: statedBefore(ask as Ask, meter?.factIds ?? []) } };
}

export const windowFault = ({ fromOn, untilOn }: FactBody<'gearDoubted.v1'>): 'endBeforeStart' | null =>
  fromOn !== null && untilOn !== null && untilOn < fromOn ? 'endBeforeStart' : null;

function doubted(ask: Ask<'gearDoubted.v1'>): void {
  const { fact, refuse } = ask;
  const { doubtId, foundOn } = fact.body;
  const gear = knownGear(ask as Ask, 'body/gearId');
  refuseLaterDay(ask as Ask, 'body/foundOn', foundOn);
  const fault = windowFault(fact.body);
  if (fault) refuse(fault, ['body/untilOn']);
  if (gear?.doubts?.some((doubt) => doubt.doubtId === doubtId))
    refuse('alreadyInBook', ['body/doubtId'], { key: gear.key });
}

const isSettling = /"kind":\s*"gearDoubtSettled\.v1"/;

/** Settlements of this doubt that are in the book, newest first. */
function settlementsOf({ view }: Ask, gear: GearRecord | null, doubtId: string): string[] {
  const of = (gear?.factIds ?? []).filter((id) => {
    const text = view.fresh.facts.get(id) ?? '';
    return isSettling.test(text) && text.includes(`"${doubtId}"`);
  });
  return of.reverse().slice(0, 50);
}

export function settlingDecided(ask: Ask<'gearDoubtSettled.v1'>): NewFact {
  const { fact, refuse } = ask;
  const { gear: kind, doubtId, decision, trueOverRead } = fact.body;
  needsWhy(ask as Ask);
  const gear = knownGear(ask as Ask, 'body/gearId');
  if (gear && !gear.doubts?.some((doubt) => doubt.doubtId === doubtId)) refuse('doubtUnknown', ['body/doubtId']);
  if (decision === 'asFound' && kind !== 'meter') refuse('onlyMeters', ['body/decision']);
  if (decision === 'asFound' && trueOverRead === null) refuse('entryNotComplete', ['body/trueOverRead']);
  if (decision !== 'asFound' && trueOverRead !== null) refuse('entryNotComplete', ['body/trueOverRead']);
  return { ...fact, body: { ...fact.body, knew: settlementsOf(ask as Ask, gear, doubtId) } };
}

type Cases = { readonly [K in FactKind]?: (ask: Ask<K>) => void };

export const gearCases = {
  'pumpCharged.v1': (ask: Ask<'pumpCharged.v1'>) => void knownGear(ask as Ask, 'body/pumpId'),
  'gearDoubted.v1': doubted,
} satisfies Cases;
