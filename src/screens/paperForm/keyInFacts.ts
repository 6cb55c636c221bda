/** A read form as the facts of a shift, in the order in which they happened; each with the field that a refusal of it belongs to. */

import { pointsFor, pointsOf } from '#findings/fittingPoints.ts';
import { addingNew } from '#parts/PickOrAdd.tsx';
import { notNoted } from '#parts/RespiratorField.tsx';
import type { FactBody, Happened, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { nextFreeNumber } from '#store/write.ts';
import type { KeyInDraft, LookHow } from './keyInDraft.ts';
import type { Held, ReadKeyIn } from './readKeyIn.ts';

export interface PlacedFact {
  readonly field: string;
  readonly fact: NewFact;
}

export interface KeyInFacts {
  readonly facts: readonly PlacedFact[];
  readonly shiftId: string;
  readonly workdayId: string;
  readonly sampleId: string;
  readonly siteId: string;
  readonly meterId: string | null;
  readonly lotId: string;
}

/** What the form is written beside. */
export interface Beside {
  readonly draft: KeyInDraft;
  readonly held: Held & { readonly shift: boolean };
  readonly by: string | null;
  /** The language that the worker reads, in which the fitting was gone through. */
  readonly language: 'en' | 'es';
  /** Registers and what belongs to the day are written down now; only moments of the paper have its times. */
  readonly now: Happened;
}

const idOf = (picked: string | null): string => (picked === null || picked === addingNew ? newId() : picked);

const looked: Readonly<Record<LookHow, { readonly running: boolean; readonly inPlace: boolean }>> = {
  good: { running: true, inPlace: true },
  notRunning: { running: false, inPlace: true },
  notInPlace: { running: true, inPlace: false },
};

/** null when something that had to be there is not: its sentence is in the errors of the reading. */
export function keyInFacts(read: ReadKeyIn, beside: Beside): KeyInFacts | null {
  const { draft, held } = beside;
  const { moments, workOn, from } = read;
  if (read.errors.length > 0 || workOn === null || moments.putOn === null || moments.stopped === null) return null;
  const ids = {
    siteId: idOf(draft.siteId),
    workerId: idOf(draft.workerId),
    pumpId: idOf(draft.pumpId),
    lotId: idOf(draft.lotId),
    meterId: draft.meterId === null ? null : idOf(draft.meterId),
    sampleId: newId(),
  };
  const shiftId = `${ids.siteId}.${workOn}`;
  const workdayId = `${ids.workerId}.${workOn}`;
  const later: Entry = { happened: { ...beside.now, entry: 'typed', from }, by: beside.by };
  const at = (happened: Happened): Entry => ({ happened: { ...happened, from }, by: beside.by });
  const facts: PlacedFact[] = registersOf(read, ids, later);
  const add = (field: string, fact: NewFact): void => void facts.push({ field, fact });
  const first = at(moments.before ?? moments.putOn);
  const work = { taskIds: [...draft.taskIds], jobClassificationId: draft.jobId };
  if (!held.shift) add('day', newFact('shiftOpened.v1', { shiftId, siteId: ids.siteId, workOn }, first));
  const check = (purpose: 'before' | 'after') => flowCheck(purpose, read, { ...ids, shiftId, inLine: draft.inLine });
  const before = check('before');
  if (before && moments.before) add('before-time', newFact('flowChecked.v1', before, at(moments.before)));
  const putOn = at(moments.putOn);
  add('number', newFact('samplePrepared.v1', { ...prepared(read, ids), shiftId, ...work, follows: null }, putOn));
  const { respirator } = draft;
  const noted = { workdayId, shiftId, ...work, respirator: respirator === notNoted ? null : respirator };
  if (!held.roster) add('worker', newFact('workNoted.v1', noted, putOn));
  const { sampleId } = ids;
  const fitting = fittingOf(beside, sampleId);
  if (fitting) add('fitting-mode', newFact('fittingChecked.v1', fitting, putOn));
  add('putOn-time', newFact('pumpPutOn.v1', { sampleId }, putOn));
  for (const { how, happened, field } of moments.looks)
    add(field, newFact('pumpLookedAt.v1', { sampleId, ...looked[how], remark: null }, at(happened)));
  add('stopped-time', newFact('pumpStopped.v1', { sampleId, pumpMin: read.pumpMin }, at(moments.stopped)));
  const after = check('after');
  if (after && moments.after) add('after-time', newFact('flowChecked.v1', after, at(moments.after)));
  const seal = { sampleId, ...read.seal, lockedById: null };
  if (moments.sealed) add('sealed-time', newFact('cassetteSealed.v1', seal, at(moments.sealed)));
  facts.push(...dayFacts(read, beside, { shiftId, workdayId }, at(moments.stopped)));
  return { facts, shiftId, workdayId, sampleId, siteId: ids.siteId, meterId: ids.meterId, lotId: ids.lotId };
}

/** As ticked on the paper; null where the paper does not say who fitted it. */
function fittingOf({ draft, language }: Beside, sampleId: string): FactBody<'fittingChecked.v1'> | null {
  const { mode, ticked, initials } = draft.fitting;
  if (mode === null || mode === 'notStated') return null;
  const points = pointsOf(pointsFor(draft.taskIds), ticked);
  const observationOffered = ticked.includes('offered');
  return { sampleId, mode, points, observationOffered, initials: initials.trim() || null, language };
}

interface Ids {
  readonly siteId: string;
  readonly workerId: string;
  readonly pumpId: string;
  readonly lotId: string;
  readonly meterId: string | null;
  readonly sampleId: string;
}

/** What is new in the registers comes first. */
function registersOf(read: ReadKeyIn, ids: Ids, entry: Entry): PlacedFact[] {
  const { site, meter, lot, worker, pump } = read;
  const { siteId, workerId: personId, pumpId, lotId, meterId } = ids;
  const facts: PlacedFact[] = [];
  if (site) facts.push({ field: 'site-name', fact: newFact('siteAdded.v1', { siteId, ...site }, entry) });
  if (meter && meterId)
    facts.push({ field: 'meter-serial', fact: newFact('meterAdded.v1', { meterId, ...meter }, entry) });
  if (lot) facts.push({ field: 'lot-number', fact: newFact('lotAdded.v1', { lotId, ...lot }, entry) });
  if (worker) {
    const person = { personId, ...worker, jobClassificationId: null };
    facts.push({ field: 'worker-name', fact: newFact('personAdded.v1', person, entry) });
  }
  if (pump) facts.push({ field: 'pump-serial', fact: newFact('pumpAdded.v1', { pumpId, ...pump }, entry) });
  return facts;
}

const prepared = ({ sampleNumber }: ReadKeyIn, { sampleId, workerId, pumpId, lotId }: Ids) => ({
  sampleId,
  sampleNumber: sampleNumber === '' ? nextFreeNumber : sampleNumber,
  workerId,
  pumpId,
  lotId,
});

type InLine = FactBody<'flowChecked.v1'>['inLine'];

function flowCheck(
  purpose: 'before' | 'after',
  read: ReadKeyIn,
  { shiftId, pumpId, meterId, lotId, inLine }: Ids & { readonly shiftId: string; readonly inLine: InLine },
): FactBody<'flowChecked.v1'> | null {
  const flow = read[purpose];
  if (flow === null || meterId === null) return null;
  const lotInLine = inLine === 'nothing' ? null : lotId;
  const named = { flowCheckId: newId(), shiftId, pumpId, meterId, lotId: lotInLine, inLine, purpose };
  return { ...named, ...flow, remark: null };
}

function dayFacts(
  { day }: ReadKeyIn,
  { draft, held }: Beside,
  { shiftId, workdayId }: { readonly shiftId: string; readonly workdayId: string },
  entry: Entry,
): readonly PlacedFact[] {
  const conditions = { shiftId, ...draft.conditions, remark: day.remark } as FactBody<'conditionsNoted.v1'>;
  const facts: PlacedFact[] = [];
  if (!held.conditions) facts.push({ field: 'tool', fact: newFact('conditionsNoted.v1', conditions, entry) });
  if (day.described !== null) {
    const body = { workdayId, regular: day.described, reason: day.reason };
    facts.push({ field: 'regular', fact: newFact('dayDescribed.v1', body, entry) });
  }
  return facts;
}
