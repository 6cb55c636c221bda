/** May this be done to this sample now? Order is free where nothing is lost by it: a flow check may come after putting on. */
import type { SampleRecord } from '../book.ts';
import { keyOf } from '../common.ts';
import type { FactKind, NewFact } from '../fact.ts';
import { checkSampleNumber } from '../sampleNumber.ts';
import { type Ask, momentParams, needsWhy } from './ask.ts';
import { refuseReserved } from './season.ts';

type OfSample = Extract<NewFact, { body: { sampleId: string } }>;

/** The sample, or a refusal that it is not in this book. */
export function knownSample({ fact, view, refuse }: Ask): SampleRecord | null {
  const id = (fact as OfSample).body.sampleId;
  const sample = view.sample(id);
  if (!sample) refuse('recordUnknown', ['body/sampleId'], { key: keyOf('sample', id) });
  return sample;
}

/** The sample with a pump; a field blank has none. */
export function airSample(ask: Ask): SampleRecord | null {
  const sample = knownSample(ask);
  if (sample?.sampleKind !== 'blank') return sample;
  ask.refuse('isBlank', ['body/sampleId'], { sampleNumber: sample.sampleNumber });
  return null;
}

/** A label must be free and rightly keyed; numbers of void samples stay used, because their cassettes exist. */
export function refuseNumber(
  ask: Ask,
  sampleNumber: string,
  field: string,
  { id: ownId, shiftId }: Pick<SampleRecord, 'id' | 'shiftId'>,
): void {
  const checked = checkSampleNumber(sampleNumber);
  if (checked.kind === 'wrong') ask.refuse('numberWrong', [field], { sampleNumber, mistake: checked.mistake });
  const others = ask.view.samples().filter((other) => other.sampleNumber === sampleNumber && other.id !== ownId);
  if (others.length > 0) ask.refuse('numberUsed', [field], { sampleNumber });
  refuseReserved(ask, sampleNumber, field, shiftId);
}

function begun(ask: Ask<'samplePrepared.v1'> | Ask<'blankOpened.v1'>): void {
  const { sampleId, sampleNumber, shiftId } = ask.fact.body;
  if (ask.view.sample(sampleId)) ask.refuse('alreadyInBook', ['body/sampleId'], { key: keyOf('sample', sampleId) });
  refuseNumber(ask as Ask, sampleNumber, 'body/sampleNumber', { id: sampleId, shiftId });
}

function prepared(ask: Ask<'samplePrepared.v1'>): void {
  begun(ask);
  const { follows } = ask.fact.body;
  if (follows !== null && !ask.view.sample(follows))
    ask.refuse('recordUnknown', ['body/follows'], { key: keyOf('sample', follows) });
}

function putOn(ask: Ask<'pumpPutOn.v1'>): void {
  const sample = airSample(ask as Ask);
  if (!sample) return;
  const { refuse, caution, fact, view } = ask;
  const { sampleNumber } = sample;
  if (sample.voided) refuse('sampleVoid', ['body/sampleId'], { sampleNumber });
  if (sample.putOn)
    refuse('alreadyPutOn', ['body/sampleId'], { sampleNumber, ...momentParams(sample.putOn.at, fact.happened.zone) });
  if (!sample.fitting) caution('fittingNotChecked', ['body/sampleId'], { sampleNumber });
  const checks = view.fresh.flowChecks;
  if (checks && !checks.some(({ pumpId, shiftId }) => pumpId === sample.pumpId && shiftId === sample.shiftId))
    caution('noFlowCheckYet', ['body/sampleId'], { sampleNumber });
}

/** The last moment on the line of a sample; the stop comes after it. */
const lastMomentOf = ({ intervals, looks, faults }: SampleRecord): string =>
  [...intervals.map(({ fromAt }) => fromAt), ...[...looks, ...faults].map(({ at }) => at)].sort().at(-1) ?? '';

function stopped(ask: Ask<'pumpStopped.v1'>): void {
  const sample = airSample(ask as Ask);
  if (!sample) return;
  const { at, zone } = ask.fact.happened;
  const { sampleNumber } = sample;
  if (!sample.putOn) {
    ask.refuse('notPutOn', ['body/sampleId'], { sampleNumber });
    return;
  }
  if (sample.stopped) {
    ask.refuse('alreadyStopped', ['body/sampleId'], { sampleNumber, ...momentParams(sample.stopped.at, zone) });
    return;
  }
  const params = { sampleNumber, ...momentParams(sample.putOn.at, zone) };
  if (at === sample.putOn.at) {
    ask.refuse('zeroMinutes', ['happened/at'], params);
    return;
  }
  if (at < sample.putOn.at) {
    ask.refuse('stopBeforeStart', ['happened/at'], params);
    return;
  }
  const last = lastMomentOf(sample);
  if (at < last) ask.refuse('stopBeforeLast', ['happened/at'], { sampleNumber, ...momentParams(last, zone) });
}

function stoppedByMistake(ask: Ask<'stoppedByMistake.v1'>): void {
  const sample = airSample(ask as Ask);
  if (!sample) return;
  const { sampleNumber } = sample;
  if (sample.stopped?.factId !== ask.fact.body.stopFactId)
    ask.refuse('notStopped', ['body/stopFactId'], { sampleNumber });
  if (sample.sealed) ask.refuse('alreadySealed', ['body/sampleId'], { sampleNumber });
}

function sealed(ask: Ask<'cassetteSealed.v1'>): void {
  const sample = knownSample(ask as Ask);
  if (!sample) return;
  const { sampleNumber } = sample;
  if (sample.sampleKind === 'air' && !sample.stopped) ask.refuse('sealBeforeStop', ['body/sampleId'], { sampleNumber });
  // Where it was locked in may be written down after it was sealed.
  const addsLock = sample.sealed?.lockedIn === null && ask.fact.body.lockedIn !== null;
  if (sample.sealed && !addsLock) ask.refuse('alreadySealed', ['body/sampleId'], { sampleNumber });
}

function voided(ask: Ask<'sampleVoided.v1'>): void {
  const sample = knownSample(ask as Ask);
  if (sample?.voided) ask.refuse('alreadyVoid', ['body/sampleId'], { sampleNumber: sample.sampleNumber });
  needsWhy(ask as Ask);
}

function flowDecided(ask: Ask<'flowDecided.v1'>): void {
  airSample(ask as Ask);
  needsWhy(ask as Ask);
}

type Cases = { readonly [K in FactKind]?: (ask: Ask<K>) => void };

export const sampleCases = {
  'samplePrepared.v1': prepared,
  'blankOpened.v1': begun,
  'fittingChecked.v1': (ask: Ask<'fittingChecked.v1'>) => void airSample(ask as Ask),
  'pumpPutOn.v1': putOn,
  'pumpStopped.v1': stopped,
  'stoppedByMistake.v1': stoppedByMistake,
  'cassetteSealed.v1': sealed,
  'sampleVoided.v1': voided,
  'flowDecided.v1': flowDecided,
  'mishapNoted.v1': (ask: Ask<'mishapNoted.v1'>) => void knownSample(ask as Ask),
  'remarkMade.v1': (ask: Ask<'remarkMade.v1'>) => void knownSample(ask as Ask),
  'clockSetBackNoticed.v1': (ask: Ask<'clockSetBackNoticed.v1'>) => void knownSample(ask as Ask),
} satisfies Cases;
