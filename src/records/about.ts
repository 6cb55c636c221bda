/** Which records a fact touches: what goes into `about`, so that no caller has to know. */
import { keyOf, type RecordKey, type RecordKind } from './common.ts';
import type { FactKind, NewFact } from './fact.ts';

/** The body keys that name the record (its id, and its kind where that may differ), by kind of fact; null where the caller must say (names, notes, corrections). */
const subjectByKind: Readonly<
  Record<FactKind, { readonly kind: RecordKind | { readonly in: string }; readonly idIn: string } | null>
> = {
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
  'workNoted.v1': { kind: 'workday', idIn: 'workdayId' },
  'workStruck.v1': { kind: 'workday', idIn: 'workdayId' },
  'employmentStated.v1': { kind: 'person', idIn: 'personId' },
  'changesAsked.v1': { kind: 'shift', idIn: 'shiftId' },
  'representsStated.v1': { kind: 'workday', idIn: 'workdayId' },
  'measurementReported.v1': { kind: 'reported', idIn: 'reportedId' },
  'measurementReliedOn.v1': { kind: 'reliance', idIn: 'relianceId' },
  'noticeIssued.v1': { kind: 'notice', idIn: 'noticeId' },
  'noticeGiven.v1': { kind: 'notice', idIn: 'noticeId' },
  'determinationWritten.v1': { kind: 'determination', idIn: 'determinationId' },
  'exposureRecordIssued.v1': { kind: 'workday', idIn: 'workdayId' },
  'dutyDone.v1': { kind: 'duty', idIn: 'dutyId' },
  'dutyReopened.v1': { kind: 'duty', idIn: 'dutyId' },
  'limitsChosen.v1': { kind: 'book', idIn: 'bookId' },
  'recordsRequested.v1': { kind: 'request', idIn: 'requestId' },
  'measurementPlanned.v1': { kind: 'plan', idIn: 'planId' },
  'plannedDayMissed.v1': { kind: 'plan', idIn: 'planId' },
  'planDropped.v1': { kind: 'plan', idIn: 'planId' },
  'dayPrepared.v1': { kind: 'dayPlan', idIn: 'shiftId' },
  'labelsMade.v1': { kind: 'dayPlan', idIn: 'shiftId' },
  'gearHeld.v1': { kind: { in: 'gear' }, idIn: 'gearId' },
  'pumpCharged.v1': { kind: 'pump', idIn: 'pumpId' },
  'certificateEntered.v1': { kind: 'meter', idIn: 'meterId' },
  'gearDoubted.v1': { kind: { in: 'gear' }, idIn: 'gearId' },
  'gearDoubtSettled.v1': { kind: { in: 'gear' }, idIn: 'gearId' },
  'pricesStated.v1': { kind: 'book', idIn: 'bookId' },
  'moneySpent.v1': { kind: 'spending', idIn: 'spendingId' },
  'spendingStruck.v1': { kind: 'spending', idIn: 'spendingId' },
};

/** The key of the record that a fact of this kind and body is about; null for names, notes and corrections. */
export function subjectOf(fact: Pick<NewFact, 'kind' | 'body'>): RecordKey | null {
  const subject = subjectByKind[fact.kind];
  if (subject === null) return null;
  const body = fact.body as Record<string, unknown>;
  const kind = typeof subject.kind === 'string' ? subject.kind : (String(body[subject.kind.in]) as RecordKind);
  return keyOf(kind, String(body[subject.idIn]));
}
