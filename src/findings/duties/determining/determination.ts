/** Whether a written initial determination may be negative, 29 CFR 1926.62(d)(5), and everything that stands against it. */

export const determinationBlockKeys = [
  'noMeasurement',
  'resultOwed',
  'minutesUnknown',
  'sampleDoubtful',
  'notProvenBelow',
  'atOrAboveActionLevel',
  'irregularDay',
  'notAskedWhetherRegular',
  'wallDepositOpen',
  'unlike',
  'resemblanceNotAsked',
  'tooOld',
  'notOwnData',
  'accuracyNotStated',
  'notFullShift',
  'changeNoted',
  'changesNotAsked',
  'takingIn',
  'entriesMissing',
  'ruleNotHeld',
  'highestNotMeasured',
  'statesDiffer',
] as const;
export type DeterminationBlockKey = (typeof determinationBlockKeys)[number];

export interface DeterminationBlock {
  readonly key: DeterminationBlockKey;
  readonly measurementId: string | null;
  readonly params: Readonly<Record<string, string | number>>;
  readonly because: readonly string[];
}

export interface DeterminationFinding {
  readonly siteId: string;
  readonly groupKey: string;
  /** `positive` is never blocked by doubt; `open`: neither may be written yet. */
  readonly outcome: 'negativeMayBeWritten' | 'positive' | 'open';
  readonly blocks: readonly DeterminationBlock[];
  readonly measurementIds: readonly string[];
  readonly relianceIds: readonly string[];
  readonly monitoredIds: readonly string[];
  readonly standsForIds: readonly string[];
  /** Highest 8-hour average among them, in µg/m³, and which measurement it is. */
  readonly highest: { readonly measurementId: string; readonly upperUgPerM3: number } | null;
  readonly writtenId: string | null;
  /** It was written on other facts than there are now. */
  readonly differsFromRecord: boolean;
  readonly because: readonly string[];
}
