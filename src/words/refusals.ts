/** Why something may not be written down now, and what to do about it: one sentence for each key of records/decide/refusal.ts. */
import type { Caution, CautionKey, Refusal, RefusalKey } from '#records/decide/refusal.ts';

type Params = Readonly<Record<string, string>>;

const named = (value: string | undefined, before = ' '): string => (value ? `${before}${value}` : '');

export const refusals: Readonly<Record<RefusalKey, (p: Params) => string>> = {
  entryNotComplete: () =>
    'Something on this page is not filled in, or not in a form that can be kept. Look at each line.',
  timeInFuture: () => 'This time has not come yet. Write the time at which it happened.',
  clockSetBack: () =>
    "The device's clock was set back while something was running. Put the clock right, then type the time from a watch.",
  endBeforeStart: () => 'The end comes before the start. Look at both times and the day.',
  piecesOverlap: () => 'Two pieces of work overlap. Change their times so that one ends before the next begins.',
  lowAboveHigh: () => 'The lowest is higher than the highest. Change the two over.',
  whyNeeded: () => 'Say why in a few words; the reason stays with the entry.',
  looksLikeSocialSecurityNumber: () =>
    'This looks like a social security number. Leave it out, or use a number of your own firm.',
  recordUnknown: () => 'This is not in the book on this device. Take in the file of the other device first, or add it.',
  alreadyInBook: () => 'This is in the book already. Choose it from the list.',
  numberUsed: (p) => `The number${named(p.sampleNumber)} stands on another cassette already. Take the next number.`,
  numberWrong: (p) => `The number${named(p.sampleNumber)} does not fit its last digit. Compare it with the cassette.`,
  pumpRunningElsewhere: (p) =>
    `This pump runs on another worker${named(p.sampleNumber, ' with sample ')}. Stop it there first, or choose another pump.`,
  workerWearsAnother: (p) =>
    `This worker wears another pump${named(p.sampleNumber, ' with sample ')}. Stop that one first.`,
  alreadyPutOn: () => 'The pump was put on already. Nothing needed to be written twice.',
  notPutOn: () => 'The pump was not put on yet. Say when it was put on first.',
  beforePutOn: () => 'This time lies before the pump was put on. Look at both times.',
  stopBeforeStart: () => 'The pump cannot stop before it was put on. Look at both times and the day.',
  stopBeforeLast: () =>
    'This time lies before something that was written down later in the run. Look at both times, or correct the other one.',
  zeroMinutes: () => 'Put on and stopped at one and the same minute. Look at both times.',
  alreadyStopped: () => 'The pump was stopped already. If that was a mistake, say so on the page of the sample.',
  afterStopped: () => 'This time lies after the pump was stopped. Look at both times.',
  notStopped: () => 'The pump was not stopped yet. Say when it was stopped first.',
  stillRunning: () => 'The pump is still on the worker. Stop it first.',
  alreadyOff: () => 'The pump is off the worker already.',
  notOff: () => 'The pump is on the worker already.',
  alreadyAway: () => 'The worker is away from the lead area already.',
  notAway: () => 'The worker is not written down as away from the lead area.',
  sealBeforeStop: () => 'The cassette is sealed after the pump has stopped. Look at both times.',
  alreadySealed: () => 'The cassette is sealed already.',
  alreadyVoid: () => 'This sample is void already.',
  sampleVoid: () => 'This sample is void. What it showed is kept; nothing more is written on it.',
  isBlank: () => 'This is a field blank: no air is drawn through it.',
  alreadyStated: () => 'This is written down already. Correct it instead, with the reason.',
  resultAlreadyIn: (p) =>
    `This result is in the book already${named(p.reportNumber, ', from report ')}. Nothing needed to be written twice.`,
  sampleInOtherBox: (p) => `The cassette${named(p.sampleNumber)} is packed in another box. Take it out there first.`,
  sampleTwiceInBox: (p) => `The cassette${named(p.sampleNumber)} stands twice in this box.`,
  sheetRevisionNotNext: () =>
    'Another revision of this sheet was issued meanwhile. Look at it, then issue the next one.',
  alreadyHandedOver: () => 'This box was handed over already.',
  factUnknown: () => 'The entry to be corrected is not on this device. Take in the file of the device that wrote it.',
  fieldUnknown: () => 'This value does not exist in the entry. Load the page again.',
  fieldFixed: () =>
    'This value cannot be corrected, because other entries hang on it. Void the entry and write a new one.',
  valueChangedMeanwhile: () => 'Somebody has corrected this value meanwhile. Look at the new value, then decide again.',
  sameValue: () => 'The new value is the old one. Nothing needed to be corrected.',
  conflictOpen: () => 'Two corrections contradict each other here. Settle them first.',
  noConflict: () => 'There is nothing left to settle here.',
  takingIn: () =>
    'A file of another device is only half taken in. Take in the rest of it first: it may hold what speaks against this.',
  voidNotOpen: () => 'There is no void here with a result that is still to be judged. Load the page again.',
  sheetNotIssued: () => 'No sheet was issued for this box, so there is none that differs.',
  sheetNotLast: () => 'A newer sheet was issued for this box meanwhile. Look at that one, then decide again.',
  notMissing: () => 'These entries are not missing here, or not any more. Load the page again.',
  dayInFuture: () => 'This day has not come yet. Look at the date.',
  alreadyStruck: () => 'This entry does not stand any more: it was struck, or another one followed it.',
  representsSelf: () => 'A measurement stands for the worker who wore it already. Name only the others.',
  actionAboveLimit: () => 'Your own action level lies above your own limit. Change the two over, or leave one out.',
  receivedBeforeWork: () => 'The report cannot have come before the day that was measured. Look at both dates.',
  measuredAfterJob: () =>
    'This was measured after the day of the job. A job rests only on what was measured before it.',
  noticeRevisionNotNext: (p) =>
    `Another revision of this paper was made meanwhile. Look at it, then make revision${named(p.next)}.`,
  notNamedInNotice: () => 'This notice is not for that worker. Make a new one that names everyone it stands for.',
  noticeNotPosted: () => 'This notice was made to be handed over, not to be posted. Make one that is posted.',
  givenBeforeIssued: () => 'This time lies before the notice was made. Look at the time and the day.',
  negativeWithoutMeasurement: () =>
    'A negative determination rests on at least one measurement. Choose it, or write a positive one.',
  notDone: () => 'This is not written down as done, so there is nothing to take back.',
  numberReserved: (p) =>
    `The number${named(p.sampleNumber)} stands on a label for another site or day. Take a label of this day, or the next number.`,
  moreThanCrew: (p) =>
    `More workers are named than do this work${named(p.crewCount, ': ')}. Put the number right, or leave some out.`,
  twiceOnDay: () => 'A worker stands twice on one day. Choose another day, or leave one out.',
  notPlanned: () => 'This worker does not stand in the plan. Load the page again.',
  pumpOnTwo: () => 'One pump is put down twice. Choose another pump for one of them.',
  ownGoesBack: () => 'Gear of your own does not go back. Say that it is rented or lent, or leave the day out.',
  dueBeforeCertificate: () => 'The next calibration comes after the day of the certificate. Look at both dates.',
  doubtUnknown: () => 'There is no such doubt about this gear here. Take in the file of the other device first.',
  onlyMeters: () => 'Only what a flow meter read is corrected by what was found. Choose another decision.',
  notWholeCents: () => 'Write the amount in dollars and whole cents.',
  sayAnew: () => 'This is not corrected by itself. Say it anew on its own page; what was said before stays to be seen.',
};

export const cautions: Readonly<Record<CautionKey, (p: Params) => string>> = {
  noFlowCheckYet: () => 'This pump has no flow check before yet.',
  fittingNotChecked: () => 'The fitting was not checked.',
  resultForVoid: () => 'This sample is void. Its result is kept, and still shows what it shows.',
  resultBeforeStop: () => 'The pump of this sample is not written down as stopped.',
  revisedReport: () => 'There was a result already. Both are kept; the newer report judges.',
  notSealed: () => 'It is not written down that the cassette was sealed.',
  voidInBox: () => 'A void sample is in the box.',
  notEmployedThen: (p) =>
    `The lists say that${named(p.name)} did not work here on that day. The entry is kept; look at the days from and to.`,
};

export const refusalSentence = ({ key, params }: Pick<Refusal, 'key' | 'params'>): string => refusals[key](params);
export const cautionSentence = ({ key, params }: Pick<Caution, 'key' | 'params'>): string => cautions[key](params);

export const en = { refusal: refusalSentence, caution: cautionSentence };
