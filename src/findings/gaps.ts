/** Why something cannot be made yet: a custody sheet, a day's finding. Keys and values; sentences stand in src/words/findings.ts. */
import type { Book } from '#records/book.ts';

export type GapKey =
  | 'boxNotPacked'
  | 'siteMissing'
  | 'laboratoryMissing'
  | 'samplerMissing'
  | 'firmMissing'
  | 'sampleMissing'
  | 'sampleOpen'
  | 'sampleNotStarted'
  | 'numberTwice'
  | 'lotMissing'
  | 'blanksMissing'
  | 'blankLotMissing'
  | 'methodNotStated'
  | 'reportingLimitNotStated'
  | 'flowBeforeMissing'
  | 'flowAfterMissing'
  | 'notSealed'
  | 'notLabelled'
  | 'identifierMissing'
  | 'accreditationMissing'
  | 'addressMissing'
  | 'noSample'
  | 'hoursNotStated'
  | 'otherWorkNotAsked'
  | 'resultAwaited'
  | 'minutesUnknown'
  | 'regularNotSaid'
  | 'conditionsMissing';

export interface Gap {
  readonly key: GapKey;
  /** `stops`: it cannot be made; `open`: it can, and says what is missing. */
  readonly weight: 'stops' | 'open';
  readonly recordKey: string | null;
  readonly params: Readonly<Record<string, string | number>>;
}

/** What is missing for the custody sheet of a box. */
export function custodyGaps(_boxId: string, _book: Book): Gap[] {
  throw new Error('being written');
}

/** What is missing for a worker's day. */
export function workdayGaps(_workdayId: string, _book: Book): Gap[] {
  throw new Error('being written');
}
