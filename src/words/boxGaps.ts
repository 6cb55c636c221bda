/** What is missing for the custody sheet of a box: one sentence for each key of findings/gaps.ts. */
import type { GapKey } from '#findings/gaps.ts';

type Params = Readonly<Record<string, string | number>>;
/** Gaps of a day are told on the day's page. */
export type BoxGapKey = Exclude<
  GapKey,
  | 'noSample'
  | 'hoursNotStated'
  | 'otherWorkNotAsked'
  | 'resultAwaited'
  | 'minutesUnknown'
  | 'regularNotSaid'
  | 'conditionsMissing'
>;

const blanks = (count: number): string => (count === 1 ? 'one field blank' : `${count} field blanks`);

export const gapSentences: Readonly<Record<BoxGapKey, (p: Params) => string>> = {
  boxNotPacked: () => 'This box is not in the book on this device.',
  siteMissing: () => 'The site of this box is not in the book on this device. Take in the file of the other device.',
  laboratoryMissing: () => 'The laboratory is not in the book on this device. Take in the file of the other device.',
  samplerMissing: () => 'Who sampled is not in the book on this device. Take in the file of the other device.',
  firmMissing: () => 'The firm has no name in this book.',
  methodNotStated: () => 'No method is asked for: the laboratory will choose one.',
  reportingLimitNotStated: () =>
    'No reporting limit is asked for: a low result may come back too coarse to prove anything.',
  accreditationMissing: () => 'The accreditation of the laboratory is not written down.',
  addressMissing: () => 'The address of the laboratory is not written down.',
  sampleMissing: (p) =>
    `${Number(p.missingCount) === 1 ? 'One cassette' : `${p.missingCount} cassettes`} of this box are not in the book on this device. Take in the file of the other device.`,
  numberTwice: (p) => `Two cassettes in this box bear the number ${p.sampleNumber}. Give one of them another number.`,
  sampleNotStarted: (p) =>
    `${p.sampleNumber} was never put on. Take it out of the box, or write down when it was put on.`,
  sampleOpen: (p) => `${p.sampleNumber} still runs on the worker. Write down when it was stopped.`,
  flowBeforeMissing: (p) => `${p.sampleNumber}: no flow before. The sheet says "not taken" and gives no volume.`,
  flowAfterMissing: (p) => `${p.sampleNumber}: no flow after. The sheet says "not taken" and gives no volume.`,
  identifierMissing: (p) => `${p.sampleNumber}: this worker has no number of the firm. The sheet says "not stated".`,
  lotMissing: (p) =>
    `${p.sampleNumber}: its lot is not in the book on this device. Take in the file of the other device.`,
  notSealed: (p) => `${p.sampleNumber}: not written down as sealed.`,
  notLabelled: (p) => `${p.sampleNumber}: not written down as labelled.`,
  blanksMissing: (p) =>
    Number(p.blanksCount) === 0
      ? `No field blank is in this box; ${blanks(Number(p.wantedCount))} should go with it.`
      : `${blanks(Number(p.blanksCount))} in this box; ${p.wantedCount} should go with it.`,
  blankLotMissing: () => 'No field blank is of the same lot as some of the samples.',
};
