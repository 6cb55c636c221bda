/** Why a figure is good, doubtful or void: one sentence for each reason of src/findings/reason.ts. Read by supervisor and office. */
import type { Params, ReasonKey } from '#findings/reason.ts';
import { formatMinutes, formatQuantity } from './quantity.ts';

const flow = (value: string | number | undefined): string => formatQuantity(Number(value), 'L/min');
const pct = (value: string | number | undefined): string => formatQuantity(Number(value), '%');
const litres = (value: string | number | undefined): string => formatQuantity(Number(value), 'L');
const min = (value: string | number | undefined): string => formatMinutes(Number(value));
const micrograms = (value: string | number | undefined): string => formatQuantity(Number(value), 'µg');

/** What somebody typed, with its full stop. */
const ended = (text: string): string => (/[.!?…]$/.test(text.trim()) ? text.trim() : `${text.trim()}.`);

const mishaps: Readonly<Record<string, string>> = {
  wet: 'The cassette got wet',
  dropped: 'The cassette was dropped',
  overloaded: 'The filter was overloaded with dust',
  inletUp: 'The inlet pointed up',
  opened: 'The cassette was opened',
  other: 'Something happened to the cassette',
};

const points: Readonly<Record<string, string>> = {
  pumpSecured: 'the pump was not secured',
  tubingSecured: 'the tubing was not secured',
  breathingZone: 'the filter was not in the breathing zone',
  outsideRespirator: 'the filter was not outside the respirator',
  insideHelmet: 'the filter was not inside the helmet',
  inletDown: 'the inlet did not point down',
  plugsOff: 'the plugs were not off',
  running: 'the pump was not running',
};

const otherWork: Readonly<Record<string, string>> = {
  callOut: 'a call-out',
  secondSite: 'a second site',
  secondEmployer: 'a second employer',
};

const gearNamed = ({ gear, gearNumber }: Params): string =>
  gear === 'pump' ? `pump ${gearNumber}` : gear === 'meter' ? `flow meter ${gearNumber}` : `lot ${gearNumber}`;
/** What somebody wrote, without the full stop that the sentence around it brings. */
const written = (value: string | number | undefined): string => String(value ?? '').replace(/[.\s]+$/, '');

/** One sentence, with a capital and a full stop. */
export const reasonSentences: Readonly<Record<ReasonKey, (p: Params) => string>> = {
  nothingInLine: () => 'Nothing was in line, so this is not a flow check.',
  outsideCertificatePairs: (p) =>
    `The reading ${flow(p.readLPerMin)} lies outside the certificate of the flow meter (${flow(p.fromLPerMin)} to ${flow(p.toLPerMin)}): no flow from it.`,
  flowOutsideMethod: (p) =>
    `${flow(p.flowLPerMin)} lies outside what the method allows (${flow(p.fromLPerMin)} to ${flow(p.toLPerMin)}).`,
  flowBounces: (p) =>
    `The float bounces ${pct(p.halfWidthPct)} to either side of its middle, more than ${pct(p.upToPct)}; the low end is the protective figure.`,
  fewReadings: (p) => `Readings taken: ${p.readingsCount}. Good practice is ${p.wantedCount}.`,
  meterNotInBook: () => 'The flow meter is not in the book.',
  meterOutOfDate: (p) => `The flow meter was due for calibration on ${p.dueOn}.`,
  meterDueNotKnown: () => 'It is not written down when the flow meter is next due for calibration.',
  meterCertificateNotKnown: () => "The date of the flow meter's certificate is not written down.",
  meterCertifiedLater: (p) => `The flow meter's certificate is of ${p.certificateOn}, after this check.`,
  temperatureBlank: () =>
    'The temperature at the flow check is not written down; this meter reads differently in warm and cold air.',
  pressureBlank: () =>
    'Neither station pressure nor the altitude of the site is written down; this meter reads differently in thin air.',
  calibrationConditionsBlank: () =>
    'Temperature and pressure at which the flow meter was calibrated are not written down.',
  certificatePairsBlank: () => "The read and true flows of the flow meter's certificate are not written down.",
  meterKindNotKnown: () =>
    'The flow meter is of another kind than soap-film, dry piston or rotameter; how it reads in the air of the site is not known.',
  certificatePairsUnusable: () =>
    "The pairs of the flow meter's certificate contradict each other; the reading stands as read.",
  certificatesDiffer: (p) =>
    `Two certificates of the flow meter may hold on this day and differ${p.certificateOn === '' ? '' : ` (${p.certificateOn})`}: the lower flow and the earlier due day judge, and a low figure proves nothing.`,
  gearDoubted: (p) =>
    `Rests on ${gearNamed(p)}, which was found bad: ${written(p.found)}. A low figure proves nothing.`,
  gearAsFound: (p) =>
    `Rests on ${gearNamed(p)}, which was found bad: ${written(p.found)}. True flow is ${p.trueOverRead} times what it read; the flow lies between the two.`,
  gearNoEffect: (p) =>
    `Rests on ${gearNamed(p)}, of which was found: ${written(p.found)}. Settled as without effect: ${written(p.why)}.`,
  methodNotKnown: () => 'The analytical method is not written down, so its flow and volume cannot be checked.',
  notPutOn: () => 'The pump was not put on.',
  stillRunning: () => 'The pump is not stopped.',
  noFlowBefore: () => 'There is no flow before.',
  noFlowAfter: () => 'There is no flow after.',
  flowBeforeOfOtherDay: (p) => `The flow before is of another day (${p.checkedOn}).`,
  flowAfterOfOtherDay: (p) => `The flow after is of another day (${p.checkedOn}).`,
  flowCheckShared: () =>
    'Another cassette was worn between this one and its flow check; the flow was not read in between.',
  flowChangedSome: (p) =>
    `The flow changed by ${pct(p.changePct)}, more than ${pct(p.upToPct)}: the average stands, and the lower flow judges where the two differ.`,
  flowChecksDiffer: (p) =>
    `Two devices checked the flow for this run and read ${pct(p.changePct)} apart, more than ${pct(p.upToPct)}.`,
  flowChangedMuch: (p) => `The flow changed by ${pct(p.changePct)}, more than ${pct(p.upToPct)}: no average is formed.`,
  flowDecided: (p) =>
    `Somebody decided to use ${p.use === 'average' ? 'the average flow' : 'the lower flow'}: ${p.why}`,
  flowDecidedOnOneReading: () => 'The decision rests on one flow reading; the other is missing and is not filled in.',
  decisionWithoutReason: () => 'A decision about the flow has no reason, so it does not count.',
  pumpMinutesBlank: () => "The pump's own minutes are not written down.",
  pumpMinutesFewer: (p) =>
    `The pump shows ${min(p.pumpMin)}, the record ${min(p.recordedMin)}: the rest counts as not sampled.`,
  pumpMinutesMore: (p) => `The pump shows ${min(p.pumpMin)}, the record only ${min(p.recordedMin)}.`,
  pumpMinutesNotOfRun: (p) =>
    `The pump shows ${min(p.pumpMin)}, the record only ${min(p.recordedMin)}: the display was not set back, and shows nothing of this run.`,
  runNotSure: (p) => `Whether air went through the filter is not known for ${min(p.unsureMin)}.`,
  noMinutesWorn: () => 'There are no minutes on the worker with the pump running.',
  volumeBelowMethod: (p) =>
    `${litres(p.volumeL)} is less than the method's least volume, ${litres(p.leastL)}: a low result proves nothing.`,
  volumeAboveMethod: (p) =>
    `${litres(p.volumeL)} is more than the method's largest volume, ${litres(p.mostL)}: a low result proves nothing.`,
  mishap: (p) => `${mishaps[String(p.mishap)] ?? mishaps.other}: a low result proves nothing.`,
  pumpFaulted: () => 'A pump fault is noted.',
  flowDroppedOnTheWay: () =>
    'The flow dropped while the pump was worn. Less air was drawn than the flow checks say: at least this much.',
  lookedNotRunning: () => 'At a look the pump was not running.',
  lookedNotInPlace: () => 'At a look the filter was not in its place.',
  fittingNotRecorded: () => 'The fitting was not checked, or it is not written down.',
  fittingPointMissed: (p) => `At the fitting ${points[String(p.point)] ?? 'a point was not met'}.`,
  helmetNotStated: () => 'Hot work: it is not written down whether the filter was inside the helmet.',
  notSealed: () => 'It is not written down that the cassette was sealed.',
  lotExpired: (p) => `The cassette's lot ran out on ${p.expiresOn}.`,
  lotDiffers: () => "The cassette in line at the flow check was not of the sample's lot.",
  voided: (p) => `Void: ${p.why === '' ? 'no reason written' : p.why}`,
  numberTwice: (p) => `Two cassettes carry the number ${p.sampleNumber}.`,
  inTwoBoxes: (p) => `This cassette was packed into ${p.boxesCount} boxes. Which of them it went with is not known.`,
  pumpOnAnother: (p) => `The same pump is written down on another cassette, ${p.otherNumber}, at the same time.`,
  clockSetBack: () => 'The clock of the phone was set back while the pump ran.',
  clockOutOfOrder: () => 'The times are out of order.',
  correctionsConflict: () =>
    'Two corrections contradict each other; the more careful one stands until somebody settles it.',
  entriesMissing: ({ entriesCount }) =>
    `${entriesCount === 1 ? '1 entry' : `${entriesCount} entries`} of another device ${entriesCount === 1 ? 'is' : 'are'} not here and may bear on this day: a low figure proves nothing until they come, or until somebody says that they never will.`,
  takingIn: () =>
    'A file of another device is only half taken in: a low figure proves nothing until the rest of it is here.',
  voidAgainstResult: () =>
    'It was declared void, and a result came in: it stays void until somebody who knows both says otherwise.',
  notUnderstood: () => 'A newer version of Fullshift wrote something here that this version does not understand.',
  resultsDiffer: () => 'Another report gave another figure for this cassette.',
  reportOrderNotKnown: () =>
    'Two reports differ, and their dates do not show which replaces which; the heavier one judges.',
  reportingLimitBlank: () => "The laboratory's reporting limit is not written down.",
  massBelowItsLimit: (p) =>
    `The laboratory's ${micrograms(p.massUg)} is less than its own reporting limit, ${micrograms(p.reportingLimitUg)}.`,
  belowReportingLimit: (p) =>
    `Less than the reporting limit, ${micrograms(p.reportingLimitUg)}: carried as bounds, 0 and that limit.`,
  blankDetected: (p) => `Lead was found on field blank ${p.blankNumber}: ${micrograms(p.massUg)}.`,
  blanksMissing: () => 'No field blank goes with this sample.',
  blanksSubtracted: (p) => `The mean of the field blanks, ${micrograms(p.blankUg)}, is subtracted.`,
  blanksNotSubtracted: () => 'Nothing is subtracted for field blanks.',
  wallDepositNotStated: () => 'The laboratory does not say whether the deposit on the inner wall is included.',
  wallDepositNotIncluded: () => 'The deposit on the inner wall is not included in the result.',
  wallDepositCouldMatter: (p) =>
    `The deposit on the inner wall is not shown to be included; with ${pct(p.sharePct)} of the lead there, the limit could be reached.`,
  laboratoryVolumeDiffers: (p) =>
    `The laboratory reckoned with ${litres(p.laboratoryL)}, we with ${litres(p.ownL)}: ${pct(p.differencePct)} apart.`,
  laboratoryConcentrationDiffers: (p) =>
    `The laboratory gives ${formatQuantity(Number(p.laboratoryUgPerM3), 'µg/m³')}, we ${formatQuantity(Number(p.ownUgPerM3), 'µg/m³')}: ${pct(p.differencePct)} apart.`,
  accreditationBlank: () => "The laboratory's accreditation is not written down.",
  saeReachesLimit: (p) =>
    `With the laboratory's error of sampling and analysis the upper 95 % limit reaches ${formatQuantity(Number(p.limitUgPerM3), 'µg/m³')}.`,
  noSample: () => 'Nothing was sampled on this day.',
  resultAwaited: () => 'A result is not in yet.',
  hoursNotStated: () => 'The hours worked are not written down.',
  hoursContradict: () =>
    'The hours written down contradict each other or the samples: hours that were worked may be missing.',
  sampledOutsideHours: (p) => `${min(p.outsideMin)} were sampled outside the hours written down; they count as worked.`,
  otherWorkNotAsked: () => 'Call-outs, a second site and a second employer were not asked about.',
  otherWorkWithoutHours: (p) =>
    `There was ${otherWork[String(p.which)] ?? 'other work'}, and its hours are not written down.`,
  minutesUnknown: (p) => `${min(p.unknownMin)} of the day are unknown.`,
  awayWithoutReason: (p) => `${min(p.durationMin)} away from the lead area have no reason and count as unknown.`,
  sameAsWithoutReason: (p) => `${min(p.durationMin)} said to be like a sample have no reason and count as unknown.`,
  sameAsNotUsable: (p) =>
    `${min(p.durationMin)} are said to be like a sample that shows nothing; they count as unknown.`,
  samplesOverlap: () => 'Two samples of this worker overlap; the higher one stands for those minutes.',
  explanationsDiffer: () =>
    'Two people say different things of the same minutes; what leaves the most lead stands until one of them is put right.',
  regularNotSaid: () => 'It is not said whether this was a regular day.',
  notRegular: (p) =>
    `Not a regular day: ${ended(p.why === '' ? 'no reason written' : String(p.why))} The figure stands; it supports no step-down.`,
  stateRuleNotHeld: (p) =>
    `In ${p.stateCode} another rule may govern than the one held here; the figures are shown without a list of duties.`,
  stateNotKnown: () => 'The state of the site is not known, so nobody can say whose rule governs.',
  statesDiffer: () => 'The day was worked in two states with different limits; the lower ones are shown.',
  extendedShift: (p) =>
    `More than 8 hours: the average over the shift may reach ${formatQuantity(Number(p.allowableUgPerM3), 'µg/m³')}; the action level is not adjusted.`,
  reportedNotFullShift: () => 'It is not stated that the samples represent a full shift.',
  reportedAccuracyNotStated: () => 'It is not stated how accurate the method is.',
  reportedNotOwnFirm: () => "It is not stated that these were this firm's own workers in its own work.",
  reportedWorkerNotInBook: () => 'The worker who was measured is not in the book.',
  judgedBeside: () => 'Another measurement of this worker and day is higher; it stands for both.',
};

export const reasonSentence = (reason: { readonly key: ReasonKey; readonly params: Params }): string => {
  const sentence = reasonSentences[reason.key](reason.params);
  const { ofSampleNumber } = reason.params;
  return ofSampleNumber === undefined ? sentence : `Sample ${ofSampleNumber}: ${sentence}`;
};

export const en = { reason: reasonSentence };
