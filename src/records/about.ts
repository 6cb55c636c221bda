/** Which records a fact touches: what goes into `about`, so that no caller has to know. */
import { keyOf, type RecordKey, type RecordKind } from './common.ts';
import type { FactKind, NewFact } from './fact.ts';

/** The body key that names the record, by kind of fact; null where the caller must say (names, notes, corrections). */
const subjectByKind: Readonly<Record<FactKind, { readonly kind: RecordKind; readonly idIn: string } | null>> = {
  'bookOpened.v1': { kind: 'book', idIn: 'bookId' },
  'siteAdded.v1': { kind: 'site', idIn: 'siteId' },
  'personAdded.v1': { kind: 'person', idIn: 'personId' },
  'jobClassificationAdded.v1': { kind: 'jobClassification', idIn: 'jobClassificationId' },
  'pumpAdded.v1': { kind: 'pump', idIn: 'pumpId' },
  'meterAdded.v1': { kind: 'meter', idIn: 'meterId' },
  'lotAdded.v1': { kind: 'lot', idIn: 'lotId' },
  'laboratoryAdded.v1': { kind: 'laboratory', idIn: 'laboratoryId' },
  'nameChanged.v1': null,
  'noteMade.v1': null,
  'shiftOpened.v1': { kind: 'shift', idIn: 'shiftId' },
  'flowChecked.v1': { kind: 'flowCheck', idIn: 'flowCheckId' },
  'conditionsNoted.v1': { kind: 'shift', idIn: 'shiftId' },
  'samplePrepared.v1': { kind: 'sample', idIn: 'sampleId' },
  'fittingChecked.v1': { kind: 'sample', idIn: 'sampleId' },
  'pumpPutOn.v1': { kind: 'sample', idIn: 'sampleId' },
  'pumpLookedAt.v1': { kind: 'sample', idIn: 'sampleId' },
  'leadAreaLeft.v1': { kind: 'sample', idIn: 'sampleId' },
  'leadAreaEntered.v1': { kind: 'sample', idIn: 'sampleId' },
  'pumpTakenOff.v1': { kind: 'sample', idIn: 'sampleId' },
  'pumpPutBackOn.v1': { kind: 'sample', idIn: 'sampleId' },
  'pumpFaulted.v1': { kind: 'sample', idIn: 'sampleId' },
  'mishapNoted.v1': { kind: 'sample', idIn: 'sampleId' },
  'pumpStopped.v1': { kind: 'sample', idIn: 'sampleId' },
  'stoppedByMistake.v1': { kind: 'sample', idIn: 'sampleId' },
  'cassetteSealed.v1': { kind: 'sample', idIn: 'sampleId' },
  'blankOpened.v1': { kind: 'sample', idIn: 'sampleId' },
  'flowDecided.v1': { kind: 'sample', idIn: 'sampleId' },
  'sampleVoided.v1': { kind: 'sample', idIn: 'sampleId' },
  'remarkMade.v1': { kind: 'sample', idIn: 'sampleId' },
  'clockSetBackNoticed.v1': { kind: 'sample', idIn: 'sampleId' },
  'workHoursStated.v1': { kind: 'workday', idIn: 'workdayId' },
  'otherWorkAsked.v1': { kind: 'workday', idIn: 'workdayId' },
  'minutesExplained.v1': { kind: 'workday', idIn: 'workdayId' },
  'dayDescribed.v1': { kind: 'workday', idIn: 'workdayId' },
  'resultReceived.v1': { kind: 'sample', idIn: 'sampleId' },
  'boxPacked.v1': { kind: 'box', idIn: 'boxId' },
  'custodySheetIssued.v1': { kind: 'box', idIn: 'boxId' },
  'boxHandedOver.v1': { kind: 'box', idIn: 'boxId' },
  'boxArrived.v1': { kind: 'box', idIn: 'boxId' },
  'valueCorrected.v1': null,
  'correctionSettled.v1': null,
  'photoTaken.v1': null,
  'voidReviewed.v1': { kind: 'sample', idIn: 'sampleId' },
  'sheetDifferenceKept.v1': { kind: 'box', idIn: 'boxId' },
  'missingEntriesAccepted.v1': { kind: 'book', idIn: 'bookId' },
};

/** The key of the record that a fact of this kind and body is about; null for names, notes and corrections. */
export function subjectOf(fact: Pick<NewFact, 'kind' | 'body'>): RecordKey | null {
  const subject = subjectByKind[fact.kind];
  return subject === null ? null : keyOf(subject.kind, String((fact.body as Record<string, unknown>)[subject.idIn]));
}
