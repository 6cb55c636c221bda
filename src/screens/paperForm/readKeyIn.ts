/** Everything typed from one paper form, read once for saving: values without ids, or the sentences of what stands in the way. */
import { readFloats } from '#parts/FloatReadings.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { readLot } from '#parts/LotLines.tsx';
import { type MeterKind, pressureRange, readMeter, temperatureRange } from '#parts/meterText.ts';
import { readPerson } from '#parts/PersonFields.tsx';
import { addingNew } from '#parts/PickOrAdd.tsx';
import { readPump } from '#parts/PumpLines.tsx';
import type { MomentPlace } from '#parts/parseMoment.ts';
import { readSite } from '#parts/SiteLines.tsx';
import { en as afterWords } from '#words/after.ts';
import { conditionKeys, en as conditionWords } from '#words/conditions.ts';
import { en as flowWords } from '#words/flow.ts';
import { en as gear } from '#words/gear.ts';
import { en as words } from '#words/keyIn.ts';
import { en as partsWords } from '#words/parts.ts';
import { en as workerWords } from '#words/worker.ts';
import type { FlowText, KeyInDraft } from './keyInDraft.ts';
import { readMoments } from './readMoments.ts';

/** What the book holds of that day already, and is not asked again. */
export interface Held {
  readonly conditions: boolean;
  readonly regular: boolean;
  readonly roster: boolean;
  readonly meterKind: MeterKind | null;
}

const optional = { optional: true } as const;

/** Only a float in a tube reads differently in warm, cold or thin air. */
export const asksForAir = (kind: MeterKind | null): boolean => kind === 'rotameter' || kind === 'other';

function readGear(read: FieldReader, draft: KeyInDraft, today: string) {
  const wantsMeter = !(draft.before.none && draft.after.none);
  if (wantsMeter) read.chosen('meter', gear.meter.pick, draft.meterId);
  read.chosen('lot', gear.lot.pick, draft.lotId);
  read.chosen('worker', gear.person.pick, draft.workerId);
  read.chosen('pump', gear.pump.pick, draft.pumpId);
  return {
    meter: wantsMeter && draft.meterId === addingNew ? readMeter(read, draft.meter, today) : null,
    lot: draft.lotId === addingNew ? readLot(read, draft.lot, today) : null,
    worker: draft.workerId === addingNew ? readPerson(read, 'worker', draft.worker) : null,
    pump: draft.pumpId === addingNew ? readPump(read, draft.pump) : null,
  };
}

/** One flow check without its time; null where the paper has none. */
function readFlow(read: FieldReader, side: 'before' | 'after', flow: FlowText, kind: MeterKind | null) {
  if (flow.none) return null;
  const before = read.errors.length;
  const readings = readFloats(read, flow.readings, `${side}-reading`);
  if (readings.length === 0 && read.errors.length === before) read.add(`${side}-reading-0`, words.noReadings[side]);
  const air = asksForAir(kind);
  const temperature = { ...temperatureRange, ...optional };
  const pressure = { ...pressureRange, ...optional };
  return {
    readings,
    temperatureC: air
      ? read.quantity(`${side}-temperature`, flowWords.temperature, '°C', flow.temperature, temperature)
      : null,
    pressureKPa: air ? read.quantity(`${side}-pressure`, flowWords.pressure, 'kPa', flow.pressure, pressure) : null,
  };
}

const longestInitials = 8;

function readInitials(read: FieldReader, { fitting }: KeyInDraft): void {
  if (fitting.initials.trim().length > longestInitials) read.add('initials', workerWords.initialsLong);
}

function readSeal(read: FieldReader, draft: KeyInDraft) {
  const isSealed = draft.sealed.time.trim() !== '';
  if (isSealed && draft.labelled === null) read.add('labelled', words.labelledMissing);
  const lockedIn = read.text('lockedIn', words.lockedIn, draft.lockedIn, optional);
  return { labelled: draft.labelled === 'yes', lockedIn };
}

function readDay(read: FieldReader, draft: KeyInDraft, held: Held) {
  if (!held.conditions)
    for (const key of conditionKeys) read.chosen(key, conditionWords.labels[key], draft.conditions[key]);
  const remark = read.text('remark', conditionWords.remark, draft.conditionsRemark, { most: 2000, ...optional });
  const regular = held.regular ? null : read.chosen('regular', words.regular, draft.regular);
  const reason = draft.regularReason.trim();
  if (regular === 'no' && reason === '') read.add('regularReason', afterWords.regular.reasonMissing);
  const described = regular === null || regular === 'notStated' ? null : regular;
  return { remark, described, reason: described === 'no' ? reason : null };
}

export function readKeyIn(draft: KeyInDraft, held: Held, place: MomentPlace) {
  const read = fieldReader(partsWords);
  const { today } = place;
  const from = read.text('from', words.from, draft.from);
  read.chosen('site', words.site, draft.siteId);
  const site = draft.siteId === addingNew ? readSite(read, draft.site) : null;
  const workOn = read.day('day', words.day, draft.day, today, { past: true });
  const registers = readGear(read, draft, today);
  const meterKind = registers.meter?.meterKind ?? held.meterKind;
  readInitials(read, draft);
  const moments = readMoments(read, draft, workOn, place);
  const before = readFlow(read, 'before', draft.before, meterKind);
  const after = readFlow(read, 'after', draft.after, meterKind);
  const sampleNumber = draft.number.replace(/\s/g, '');
  if (!/^(\d{4,10})?$/.test(sampleNumber)) read.add('number', words.numberWrong);
  const minutes = { most: 6000, ...optional };
  const pumpMin = read.quantity('pumpMin', afterWords.pumpMin.label, 'min', draft.pumpMin, minutes);
  const seal = readSeal(read, draft);
  if (draft.taskIds.length === 0) read.add('find', words.taskMissing);
  const day = readDay(read, draft, held);
  return {
    errors: read.errors,
    from,
    site,
    workOn,
    ...registers,
    moments,
    before,
    after,
    sampleNumber,
    pumpMin,
    seal,
    day,
  };
}

export type ReadKeyIn = ReturnType<typeof readKeyIn>;
