/**
 * Why a finding is what it is. A reason is data; its sentence stands in src/words/findings.ts. Its weight says what it may do:
 * `voids` the figure proves nothing low, `doubts` blocks *below* and every relaxation, `notes` is told and blocks nothing. No
 * weight blocks *at or above* (design.md section 4, the careful side).
 */
export type Weight = 'voids' | 'doubts' | 'notes';

/** Every reason, with its weight. */
export const reasonWeights = {
  // flow checks
  nothingInLine: 'voids',
  outsideCertificatePairs: 'voids',
  flowOutsideMethod: 'doubts',
  flowBounces: 'notes',
  fewReadings: 'notes',
  meterNotInBook: 'doubts',
  meterOutOfDate: 'doubts',
  meterDueNotKnown: 'doubts',
  meterCertificateNotKnown: 'doubts',
  meterCertifiedLater: 'doubts',
  temperatureBlank: 'doubts',
  pressureBlank: 'doubts',
  calibrationConditionsBlank: 'doubts',
  certificatePairsBlank: 'doubts',
  meterKindNotKnown: 'doubts',
  certificatePairsUnusable: 'doubts',
  certificatesDiffer: 'doubts',
  gearDoubted: 'doubts',
  gearAsFound: 'notes',
  gearNoEffect: 'notes',
  methodNotKnown: 'doubts',
  // one sample, in the field
  notPutOn: 'doubts',
  stillRunning: 'doubts',
  noFlowBefore: 'doubts',
  noFlowAfter: 'doubts',
  flowBeforeOfOtherDay: 'doubts',
  flowAfterOfOtherDay: 'doubts',
  flowCheckShared: 'doubts',
  flowChangedSome: 'notes',
  flowChangedMuch: 'doubts',
  flowChecksDiffer: 'doubts',
  flowDecided: 'notes',
  flowDecidedOnOneReading: 'doubts',
  decisionWithoutReason: 'doubts',
  pumpMinutesBlank: 'doubts',
  pumpMinutesFewer: 'doubts',
  pumpMinutesMore: 'notes',
  pumpMinutesNotOfRun: 'doubts',
  runNotSure: 'doubts',
  noMinutesWorn: 'voids',
  volumeBelowMethod: 'doubts',
  volumeAboveMethod: 'doubts',
  mishap: 'doubts',
  pumpFaulted: 'notes',
  flowDroppedOnTheWay: 'doubts',
  lookedNotRunning: 'doubts',
  lookedNotInPlace: 'doubts',
  fittingNotRecorded: 'doubts',
  fittingPointMissed: 'doubts',
  helmetNotStated: 'doubts',
  notSealed: 'notes',
  lotExpired: 'notes',
  lotDiffers: 'notes',
  voided: 'voids',
  numberTwice: 'doubts',
  inTwoBoxes: 'doubts',
  pumpOnAnother: 'doubts',
  clockSetBack: 'doubts',
  clockOutOfOrder: 'doubts',
  correctionsConflict: 'doubts',
  notUnderstood: 'doubts',
  entriesMissing: 'doubts',
  takingIn: 'doubts',
  voidAgainstResult: 'notes',
  // one sample, from the laboratory
  resultsDiffer: 'notes',
  reportOrderNotKnown: 'doubts',
  reportingLimitBlank: 'doubts',
  massBelowItsLimit: 'doubts',
  belowReportingLimit: 'notes',
  blankDetected: 'notes',
  blanksMissing: 'notes',
  blanksSubtracted: 'notes',
  blanksNotSubtracted: 'notes',
  wallDepositNotStated: 'notes',
  wallDepositNotIncluded: 'notes',
  wallDepositCouldMatter: 'doubts',
  laboratoryVolumeDiffers: 'doubts',
  laboratoryConcentrationDiffers: 'doubts',
  accreditationBlank: 'notes',
  saeReachesLimit: 'notes',
  // a worker's day
  noSample: 'doubts',
  resultAwaited: 'doubts',
  hoursNotStated: 'doubts',
  hoursContradict: 'doubts',
  sampledOutsideHours: 'notes',
  otherWorkNotAsked: 'doubts',
  otherWorkWithoutHours: 'doubts',
  minutesUnknown: 'doubts',
  awayWithoutReason: 'doubts',
  sameAsWithoutReason: 'doubts',
  sameAsNotUsable: 'doubts',
  samplesOverlap: 'doubts',
  explanationsDiffer: 'doubts',
  regularNotSaid: 'notes',
  notRegular: 'notes',
  stateRuleNotHeld: 'notes',
  stateNotKnown: 'doubts',
  statesDiffer: 'doubts',
  extendedShift: 'notes',
  // a measurement that was reported to us, or that stands beside another
  reportedNotFullShift: 'doubts',
  reportedAccuracyNotStated: 'doubts',
  reportedNotOwnFirm: 'notes',
  reportedWorkerNotInBook: 'notes',
  judgedBeside: 'notes',
} as const satisfies Record<string, Weight>;

export type ReasonKey = keyof typeof reasonWeights;
export type Params = Readonly<Record<string, string | number>>;

export interface Reason {
  readonly key: ReasonKey;
  /** Values for the sentence; quantities end in their unit suffix. `sampleNumber` says which sample where a day has several. */
  readonly params: Params;
  /** Ids of the facts it stands on. */
  readonly because: readonly string[];
  readonly weight: Weight;
}

export const reason = (key: ReasonKey, because: readonly string[] = [], params: Params = {}): Reason => ({
  key,
  params,
  because,
  weight: reasonWeights[key],
});

/** The reasons that keep *below* from being said. */
export const blocking = (reasons: readonly Reason[]): Reason[] => reasons.filter(({ weight }) => weight !== 'notes');
