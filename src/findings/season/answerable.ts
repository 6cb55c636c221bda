/**
 * What stands against a figure and goes away by answering or entering something at a desk. Everything else asks for another measurement.
 * It moves a line in the list of what to measure next and nothing more: the duty to measure again stands until it is answered.
 */
import type { DeterminationBlockKey } from '../duties/determining/determination.ts';
import { type ReasonKey, reasonWeights } from '../reason.ts';

const blockKeys: ReadonlySet<string> = new Set([
  'notAskedWhetherRegular',
  'wallDepositOpen',
  'resemblanceNotAsked',
  'notOwnData',
  'accuracyNotStated',
  'notFullShift',
  'changesNotAsked',
  'takingIn',
  'entriesMissing',
  'ruleNotHeld',
  'statesDiffer',
] satisfies DeterminationBlockKey[]);

const reasonKeys: ReadonlySet<string> = new Set([
  'regularNotSaid',
  'hoursNotStated',
  'otherWorkNotAsked',
  'otherWorkWithoutHours',
  'awayWithoutReason',
  'sameAsWithoutReason',
  'explanationsDiffer',
  'minutesUnknown',
  'wallDepositCouldMatter',
  'meterDueNotKnown',
  'meterCertificateNotKnown',
  'temperatureBlank',
  'pressureBlank',
  'calibrationConditionsBlank',
  'methodNotKnown',
  'reportingLimitBlank',
  'decisionWithoutReason',
  'correctionsConflict',
  'reportOrderNotKnown',
  'stateNotKnown',
  'entriesMissing',
  'takingIn',
] satisfies ReasonKey[]);

/** Blocks of a determination, all of them. */
export const areBlocksAnswerable = (keys: readonly DeterminationBlockKey[]): boolean =>
  keys.length > 0 && keys.every((key) => blockKeys.has(key));

const weights: Readonly<Record<string, string>> = reasonWeights;
/** Only told; but for these two, which keep a day from proving anything low (findings/duties/measuring/sampledDay.ts). */
const isToldOnly = (key: string): boolean =>
  weights[key] === 'notes' && key !== 'regularNotSaid' && key !== 'notRegular';

/** Reasons as a duty names them, joined by a plus: all that stand against it. */
export function areReasonsAnswerable(joined: string): boolean {
  const keys = joined.split('+').filter((key) => key !== '' && !isToldOnly(key));
  return keys.length > 0 && keys.every((key) => reasonKeys.has(key));
}
