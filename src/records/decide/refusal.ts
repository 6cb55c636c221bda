/** Reasons why something may not be written down now: keys with parameters; the sentences are in src/words/refusals.ts. */

export const refusalKeys = [
  'entryNotComplete',
  'timeInFuture',
  'clockSetBack',
  'endBeforeStart',
  'piecesOverlap',
  'lowAboveHigh',
  'whyNeeded',
  'looksLikeSocialSecurityNumber',
  'recordUnknown',
  'alreadyInBook',
  'numberUsed',
  'numberWrong',
  'pumpRunningElsewhere',
  'workerWearsAnother',
  'alreadyPutOn',
  'notPutOn',
  'beforePutOn',
  'stopBeforeStart',
  'stopBeforeLast',
  'zeroMinutes',
  'alreadyStopped',
  'afterStopped',
  'notStopped',
  'stillRunning',
  'alreadyOff',
  'notOff',
  'alreadyAway',
  'notAway',
  'sealBeforeStop',
  'alreadySealed',
  'alreadyVoid',
  'sampleVoid',
  'isBlank',
  'alreadyStated',
  'resultAlreadyIn',
  'sampleInOtherBox',
  'sampleTwiceInBox',
  'sheetRevisionNotNext',
  'alreadyHandedOver',
  'factUnknown',
  'fieldUnknown',
  'fieldFixed',
  'valueChangedMeanwhile',
  'sameValue',
  'conflictOpen',
  'noConflict',
  'takingIn',
  'voidNotOpen',
  'sheetNotIssued',
  'sheetNotLast',
  'notMissing',
  'dayInFuture',
  'alreadyStruck',
  'representsSelf',
  'actionAboveLimit',
  'receivedBeforeWork',
  'measuredAfterJob',
  'noticeRevisionNotNext',
  'notNamedInNotice',
  'noticeNotPosted',
  'givenBeforeIssued',
  'negativeWithoutMeasurement',
  'notDone',
  'numberReserved',
  'moreThanCrew',
  'twiceOnDay',
  'notPlanned',
  'pumpOnTwo',
  'ownGoesBack',
  'dueBeforeCertificate',
  'doubtUnknown',
  'onlyMeters',
  'notWholeCents',
  'sayAnew',
] as const;
export type RefusalKey = (typeof refusalKeys)[number];

export type Params = Readonly<Record<string, string>>;

export interface Refusal {
  readonly key: RefusalKey;
  /** Places in the wanted facts: `0/body/sampleNumber`, `1/happened/at`. */
  readonly fields: readonly string[];
  readonly params: Params;
}

/** Allowed, and said at once. */
export const cautionKeys = [
  'noFlowCheckYet',
  'fittingNotChecked',
  'resultForVoid',
  'resultBeforeStop',
  'revisedReport',
  'notSealed',
  'voidInBox',
  'notEmployedThen',
] as const;
export type CautionKey = (typeof cautionKeys)[number];

export interface Caution {
  readonly key: CautionKey;
  readonly fields: readonly string[];
  readonly params: Params;
}
